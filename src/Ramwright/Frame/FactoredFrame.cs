using Ramwright.Geometry;

namespace Ramwright.Frame;

/// <summary>A frame made ready: its matrix is factored, so that each load case costs two substitutions. Safe to share between threads.</summary>
public sealed class FactoredFrame
{
    /// <summary>Share of its diagonal below which a pivot is counted again from the members.</summary>
    private const double Doubtful = 1e-7;
    /// <summary>Energy of a movement, as a share of what it would be with every other movement held, that counts as none.</summary>
    private const double Nothing = 1e-13;
    /// <summary>Stiffness, as a share of the frame's greatest of its kind, that is rounding and not a spring.</summary>
    private const double Rounding = 1e-18;

    private readonly Beam[] _beams;
    private readonly double[] _B, _L, _D;
    private readonly Unknowns _unknowns;

    /// <summary>The frame.</summary>
    public FrameModel Model { get; }

    internal ReadOnlySpan<Beam> Beams => _beams;

    /// <summary>Checks, assembles and factors a frame.</summary>
    /// <param name="model">The frame.</param>
    /// <exception cref="ArgumentException">
    /// A member with no length, along its Up, let go so far that it can move by itself, or on a node that does not exist;
    /// a support on such a node; a number that is not finite or out of range.
    /// </exception>
    /// <exception cref="FrameMovesException">Something can move freely.</exception>
    public FactoredFrame(FrameModel model)
    {
        FrameCheck.Model(model);
        Model = model;
        int members = model.Members.Count;
        _beams = new Beam[members];
        _B = new double[members * Beam.Modes * Beam.Moves];
        for (int i = 0; i < members; i++)
        {
            FrameMember m = model.Members[i];
            _beams[i] = new Beam(m, MemberAxes.Of(i, m, model.Nodes[m.From].At, model.Nodes[m.To].At));
            _beams[i].Compatibility(B(i));
        }
        _unknowns = new Unknowns(model);
        _L = Assemble();
        _D = new double[_unknowns.Count];
        FactorAll();
    }

    private Span<double> B(int member) => _B.AsSpan(member * Beam.Modes * Beam.Moves, Beam.Modes * Beam.Moves);

    private double[] Assemble()
    {
        double[] K = new double[_unknowns.Entries];
        Span<double> k = stackalloc double[Beam.Moves * Beam.Moves], scratch = stackalloc double[Beam.Modes * Beam.Moves];
        for (int i = 0; i < _beams.Length; i++)
        {
            ref readonly Beam beam = ref _beams[i];
            beam.Stiffness(B(i), k, scratch);
            Assembly.Add(_unknowns, k, beam.From, beam.To, K);
        }
        return K;
    }

    private void FactorAll()
    {
        (double along, double about) = Greatest();
        (double, double) least = (Rounding * along, Rounding * about);
        for (int row = 0; ; row++)
        {
            row = Factor.Rows(_unknowns, _L, _D, row, Doubtful, least);
            if (row == _D.Length)
                return;
            _D[row] = CountAgain(row, _unknowns.Movement[row] % Unknowns.PerNode < 3 ? least.Item1 : least.Item2);
        }
    }

    private (double Along, double About) Greatest()
    {
        double along = 0, about = 0;
        for (int i = 0; i < _D.Length; i++)
        {
            double k = _L[_unknowns.Row[i] + i];
            if (_unknowns.Movement[i] % Unknowns.PerNode < 3)
                along = Math.Max(along, k);
            else
                about = Math.Max(about, k);
        }
        return (along, about);
    }

    /// <summary>
    /// A pivot is what it costs to move its unknown by one while those before it follow and those after it stay. Where
    /// subtraction has eaten it, it is summed over the members, which loses nothing; where it is nothing, the frame moves.
    /// </summary>
    private double CountAgain(int row, double least)
    {
        double[] x = new double[row + 1];
        x[row] = 1;
        Substitution.Back(_unknowns, _L, x);
        double[] d = new double[_unknowns.Of.Length];
        double held = 0;
        for (int i = 0; i <= row; i++)
        {
            d[_unknowns.Movement[i]] = x[i];
            held += _L[_unknowns.Row[i] + i] * x[i] * x[i];
        }
        double energy = 0;
        Span<double> e = stackalloc double[Beam.Modes], s = stackalloc double[Beam.Modes];
        for (int i = 0; i < _beams.Length; i++)
        {
            Deform(i, d, e);
            _beams[i].Resist(e, s);
            energy += Products.Dot(e, s);
        }
        if (!(energy > Nothing * held && energy > least))
            throw FreeMovement.Describe(Model, d);
        return energy;
    }

    /// <summary>Deformations of a member from the movements of all nodes.</summary>
    private void Deform(int member, ReadOnlySpan<double> d, Span<double> e)
    {
        ref readonly Beam beam = ref _beams[member];
        Span<double> own = stackalloc double[Beam.Moves];
        d.Slice(beam.From * Unknowns.PerNode, Unknowns.PerNode).CopyTo(own);
        d.Slice(beam.To * Unknowns.PerNode, Unknowns.PerNode).CopyTo(own[Unknowns.PerNode..]);
        ReadOnlySpan<double> b = B(member);
        for (int r = 0; r < Beam.Modes; r++)
            e[r] = Products.Dot(own, b[(r * Beam.Moves)..]);
    }

    /// <summary>Solves load cases.</summary>
    /// <param name="cases">The cases.</param>
    /// <returns>One solution a case, in order.</returns>
    /// <exception cref="ArgumentException">A load on a node or member that does not exist, off the beam's end, or not finite.</exception>
    public IReadOnlyList<FrameSolution> Solve(IReadOnlyList<LoadCase> cases)
    {
        ArgumentNullException.ThrowIfNull(cases);
        var solutions = new FrameSolution[cases.Count];
        double[] scratch = new double[_unknowns.Count];
        for (int i = 0; i < solutions.Length; i++)
            solutions[i] = Solve(cases[i], scratch);
        return solutions;
    }

    private SolvedCase Solve(LoadCase c, Span<double> x)
    {
        FrameCheck.Case(Model, c);
        int movements = _unknowns.Of.Length, members = _beams.Length;
        double[] on = new double[movements];               // what acts on each node: loads, less what fixed ends carry
        for (int i = 0; i < c.OnNodes.Count; i++)
        {
            NodalLoad p = c.OnNodes[i];
            Add(on, p.Node, p.Force, p.Moment);
        }
        BeamLoads loads = c.OnMembers.Count == 0 ? BeamLoads.None : new BeamLoads(_beams, c.OnMembers);
        double[] first = new double[members * Unknowns.PerNode];
        HoldEnds(loads, on, first);

        for (int i = 0; i < x.Length; i++)
            x[i] = on[_unknowns.Movement[i]];
        Substitution.Solve(_unknowns, _L, _D, x);
        double[] d = new double[movements];
        for (int i = 0; i < x.Length; i++)
            d[_unknowns.Movement[i]] = x[i];

        FirstEnds(d, first, on);
        for (int i = 0; i < movements; i++)
            on[i] = _unknowns.Of[i] < 0 ? -on[i] : 0;      // what is left over at a support is its reaction
        if (!IsFinite(d) || !IsFinite(first) || !IsFinite(on))
            throw new ArgumentException($"Case '{c.Name}': its loads are too great to compute with.");
        return new SolvedCase(this, c, d, first, on, loads);
    }

    /// <summary>Loads along members, as still nodes would carry them.</summary>
    private void HoldEnds(BeamLoads loads, double[] on, double[] first)
    {
        Span<double> f = stackalloc double[Beam.Moves];
        for (int i = 0; i < _beams.Length; i++)
        {
            int load = loads.First(i);
            if (load < 0)
                continue;
            ref readonly Beam beam = ref _beams[i];
            f.Clear();
            for (; load >= 0; load = loads[load].Next)
                beam.AddFixedEnds(loads[load], f);
            beam.TakeFromNodes(f, Six(on, beam.From), Six(on, beam.To));
            f[..Unknowns.PerNode].CopyTo(Six(first, i));
        }
    }

    /// <summary>Forces on the first end of each beam, and what they leave over at the nodes.</summary>
    private void FirstEnds(double[] d, double[] first, double[] on)
    {
        Span<double> e = stackalloc double[Beam.Modes], s = stackalloc double[Beam.Modes], f = stackalloc double[Unknowns.PerNode];
        for (int i = 0; i < _beams.Length; i++)
        {
            ref readonly Beam beam = ref _beams[i];
            Deform(i, d, e);
            beam.Resist(e, s);
            beam.FirstEnd(s, f);
            Span<double> own = Six(first, i);
            for (int k = 0; k < f.Length; k++)
                own[k] += f[k];
            TakeModes(B(i), s, Six(on, beam.From), Six(on, beam.To));
        }
    }

    /// <summary>Takes Bᵀ s from what acts on the two nodes.</summary>
    private static void TakeModes(ReadOnlySpan<double> B, ReadOnlySpan<double> s, Span<double> onFrom, Span<double> onTo)
    {
        for (int r = 0; r < Beam.Modes; r++)
        {
            Products.Subtract(s[r], B.Slice(r * Beam.Moves, Unknowns.PerNode), onFrom);
            Products.Subtract(s[r], B.Slice(r * Beam.Moves + Unknowns.PerNode, Unknowns.PerNode), onTo);
        }
    }

    private static Span<double> Six(double[] values, int i) => values.AsSpan(i * Unknowns.PerNode, Unknowns.PerNode);

    private static void Add(double[] on, int node, Vector F, Vector M)
    {
        Span<double> p = Six(on, node);
        p[0] += F.X;
        p[1] += F.Y;
        p[2] += F.Z;
        p[3] += M.X;
        p[4] += M.Y;
        p[5] += M.Z;
    }

    private static bool IsFinite(ReadOnlySpan<double> values)
    {
        double sum = 0;
        foreach (double v in values)
            sum += v * 0;
        return sum == 0;
    }
}
