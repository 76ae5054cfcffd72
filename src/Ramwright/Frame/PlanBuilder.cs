using Ramwright.Geometry;
using Ramwright.Presses;
using Ramwright.Stock;

namespace Ramwright.Frame;

/// <summary>Collects the nodes and beams of a plan. A part of several strands becomes as many beams, tied at the nodes.</summary>
internal sealed class PlanBuilder
{
    private readonly List<Node> _nodes = [];
    private readonly List<FrameMember> _beams = [];
    private readonly List<(double Warp, bool Mirrored)> _strands = [];

    public IReadOnlyList<Node> Nodes => _nodes;

    public FrameModel Model(params Support[] supports) => new([.. _nodes], [.. _beams], supports);

    public int Node(string name, Vector at)
    {
        _nodes.Add(new Node(name, at));
        return _nodes.Count - 1;
    }

    /// <summary>Adds a stretch of a part.</summary>
    /// <param name="part">The part.</param>
    /// <param name="from">Node at its first end.</param>
    /// <param name="to">Node at its second end.</param>
    /// <param name="up">Where its section's z points.</param>
    /// <param name="torsion">How it twists.</param>
    /// <param name="start">Rigid arm at its first end.</param>
    /// <param name="end">Rigid arm at its second end.</param>
    /// <param name="holdStart">Hold at its first end.</param>
    /// <param name="holdEnd">Hold at its second end.</param>
    /// <param name="giving">Whether, out of the frame's plane and in twist, the arms give as the beam itself would: nothing is known there of what the joint gives.</param>
    /// <returns>Numbers of its beams, one a strand.</returns>
    public int[] Beam(
        RigMember part, int from, int to, Vector up, Twist torsion, Vector start = default, Vector end = default,
        EndFixity? holdStart = null, EndFixity? holdEnd = null, bool giving = false)
    {
        IReadOnlyList<Strand> strands = part.Shape.Strands;
        Vector x = (_nodes[to].At + end - _nodes[from].At - start).Unit, y = up.Cross(x);
        var numbers = new int[strands.Count];
        for (int i = 0; i < numbers.Length; i++)
        {
            Strand strand = strands[i];
            SectionProperties s = strand.Shape.Properties;
            Vector aside = strand.Y * y + strand.Z * up;
            s = s with { It = torsion.Constant(s) };
            EndFixity first = Share(holdStart ?? EndFixity.Rigid, numbers.Length), second = Share(holdEnd ?? EndFixity.Rigid, numbers.Length);
            _beams.Add(new FrameMember
            {
                Part = part.Part,
                From = from,
                To = to,
                Section = s,
                Up = up,
                ArmFrom = start + aside,
                ArmTo = end + aside,
                InJoints = giving ? start.Dot(x) - end.Dot(x) : 0,
                FixityFrom = giving ? Give(first, s, start.Dot(x)) : first,
                FixityTo = giving ? Give(second, s, -end.Dot(x)) : second,
            });
            _strands.Add((torsion.Moment(strand.Shape.Properties), strand.Mirrored));
            numbers[i] = _beams.Count - 1;
        }

        return numbers;
    }

    /// <summary>Adds a bar that is one strand and does not warp.</summary>
    /// <param name="part">What it is.</param>
    /// <param name="section">Its section; its area may stand for a stiffness.</param>
    /// <param name="from">Node at its first end.</param>
    /// <param name="to">Node at its second end.</param>
    /// <param name="up">Where its section's z points.</param>
    /// <param name="start">Rigid arm at its first end.</param>
    /// <param name="end">Rigid arm at its second end.</param>
    /// <param name="holdStart">Hold at its first end.</param>
    /// <param name="holdEnd">Hold at its second end.</param>
    /// <returns>Its number.</returns>
    public int Bar(string part, SectionProperties section, int from, int to, Vector up, Vector start, Vector end, EndFixity? holdStart = null, EndFixity? holdEnd = null)
    {
        _beams.Add(new FrameMember
        {
            Part = part,
            From = from,
            To = to,
            Section = section,
            Up = up,
            ArmFrom = start,
            ArmTo = end,
            FixityFrom = holdStart ?? EndFixity.Rigid,
            FixityTo = holdEnd ?? EndFixity.Rigid,
        });
        _strands.Add((0, false));
        return _beams.Count - 1;
    }

    /// <summary>A place of a stretch that is looked at, in each of its strands.</summary>
    /// <param name="beams">The stretch.</param>
    /// <param name="x">Metres from its first node; a place within a rigid arm is taken at the arm's end.</param>
    /// <param name="where">In words.</param>
    /// <param name="cut">What is cut there.</param>
    /// <param name="warps">Whether the flanges bend sideways here under torque.</param>
    public IEnumerable<PlanStation> At(int[] beams, double x, string where, PlanCut cut, bool warps)
    {
        foreach (int beam in beams)
            yield return new PlanStation(beam, Along(beam, x), where, cut, warps ? _strands[beam].Warp : 0, _strands[beam].Mirrored);
    }

    /// <summary>Metres from a beam's own first end for metres from its first node, no less than none and no more than its length.</summary>
    public double Along(int beam, double x)
    {
        FrameMember b = _beams[beam];
        Vector way = (_nodes[b.To].At - _nodes[b.From].At).Unit, start = b.ArmFrom, end = b.ArmTo;
        double length = (_nodes[b.To].At + end - _nodes[b.From].At - start).Dot(way);
        return Math.Clamp(x - start.Dot(way), 0, length);
    }

    private static EndFixity Give(EndFixity hold, SectionProperties s, double arm)
    {
        const double E = 210e9, G = E / 2.6;
        return arm > 0 ? hold with { T = Series(hold.T, G * s.It / arm), Mz = Series(hold.Mz, E * s.Iz / arm) } : hold;
    }

    private static double Series(double a, double b) => 1 / (1 / a + 1 / b);

    // a spring of the whole part is shared by its strands
    private static EndFixity Share(EndFixity hold, int strands) =>
        strands == 1 ? hold : new(hold.N / strands, hold.Vy / strands, hold.Vz / strands, hold.T / strands, hold.My / strands, hold.Mz / strands);
}

/// <summary>How a part twists: between two held ends, or from a held root to a free tip.</summary>
/// <param name="Length">Length from end to end, m.</param>
/// <param name="Cantilever">Whether one end is free.</param>
internal readonly record struct Twist(double Length, bool Cantilever)
{
    public double Constant(SectionProperties s) =>
        Cantilever ? WarpingTorsion.Cantilever(s, Length) : WarpingTorsion.Between(s, Length);

    public double Moment(SectionProperties s) =>
        Cantilever ? WarpingTorsion.MomentCantilever(s, Length) : WarpingTorsion.MomentBetween(s, Length);
}
