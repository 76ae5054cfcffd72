using Ramwright.Frame;
using Ramwright.Geometry;
using Ramwright.Presses;

namespace Ramwright.Solids;

/// <summary>
/// One joint cut out of a frame: the end of a beam or arm and a length of the upright, column or rods that it is joined to. What it gives beyond what the two would give as beams is what
/// the springs of the beam model have to give.
/// </summary>
/// <remarks>
/// Two loads that balance by themselves: a moment on the beam's cut end, and a shear force there, each met at the upright's cut end by its own force and moment, all spread as a long
/// beam would spread them. Where the beam reaches to the middle of the press it is held there as its other half holds it, and the shear comes from the die. <see cref="JointFit"/> makes
/// springs of the work that one load does on the movement of the other.
/// </remarks>
internal sealed class LocalJoint
{
    // shares of the time, about as measured: of both grids without toes, and of those two where toes are read besides
    private const double RoughTime = 0.2, GivesTime = 0.25;

    private readonly PressSolid _solid;
    private readonly int[] _beam, _upright;
    private readonly JointPlace _place;
    private readonly double _tip, _end;

    private LocalJoint(PressSolid solid, int[] beam, int[] upright, JointPlace place, double tip, double end)
    {
        (_solid, _beam, _upright, _place, _tip, _end) = (solid, beam, upright, place, tip, end);
    }

    /// <summary>The springs of a joint, and what the toes of its welds feel.</summary>
    /// <param name="whole">The frame that it is cut out of.</param>
    /// <param name="place">The joint.</param>
    /// <param name="progress">Told how far it is, 0 to 1.</param>
    /// <param name="stop">Ends it early.</param>
    public static RigSpring Of(PressSolid whole, JointPlace place, Action<double> progress, CancellationToken stop)
    {
        double size = Math.Max(place.Beam.Shape.Properties.Height, place.Upright.Member?.Shape.Properties.Height ?? 2 * place.Upright.Rods!.Thread.D);
        // a plate between rods is solved whole, and its dents are as large as the nuts
        var cells = place.Upright.Rods is null ? new CellSizes(size / 20, size / 10) : new CellSizes(size / 12, size / 5);
        LocalJoint joint = CutOut(whole with { Toes = [] }, place);
        // stress needs cells half as long, and is read where the joint ends before the die
        LocalJoint read = CutOut(whole, place with { Die = null });
        bool hasToes = read._solid.Toes.Count > 0;
        double gives = hasToes ? GivesTime : 1;
        JointWork rough = joint.Gives(cells.Over(0.5), share => progress(gives * RoughTime * share), stop);
        JointWork fine = joint.Gives(cells, share => progress(gives * (RoughTime + (1 - RoughTime) * share)), stop);
        // the error falls as the cells do
        RigSpring spring = JointFit.Springs(place, new JointWork(2 * fine.MM - rough.MM, 2 * fine.MV - rough.MV, 2 * fine.VV - rough.VV));
        return hasToes ? spring with { Toes = read.Toes(cells.Over(2), share => progress(gives + (1 - gives) * share), stop) } : spring;
    }

    private static LocalJoint CutOut(PressSolid whole, JointPlace place)
    {
        double tip = place.Face - place.KeptBeam, end = place.Edge - place.Up * place.KeptUpright;
        Cuboid box = Cuboid.Everywhere.With(place.Along, tip, double.PositiveInfinity)
            .With(2, place.Up > 0 ? end : double.NegativeInfinity, place.Up > 0 ? double.PositiveInfinity : end);
        PressSolid cut = Cut(whole, place, box, out int[] numbers);
        int[] Of(Func<int, bool> old) => [.. Enumerable.Range(0, numbers.Length).Where(now => old(numbers[now]))];
        int[] beam = Of(p => whole.Members[p] == place.Beam);
        int[] upright = place.Upright.Member is { } member ? Of(p => whole.Members[p] == member) : Of(p => whole.Members[p] is null && !IsDie(whole, p));
        return new LocalJoint(place.Die is null ? cut with { Toes = LocalToes.Of(whole, box, numbers) } : cut, beam, upright, place, tip, end);
    }

    // what stands for dies belongs to the frame, not to the joint, unless the joint reaches to the middle
    private static bool IsDie(PressSolid whole, int part) => whole.Members[part] is null && whole.Upper.Concat(whole.Lower).Any(f => f.Part == part);

    private static PressSolid Cut(PressSolid whole, JointPlace place, Cuboid box, out int[] numbers)
    {
        var kept = new List<int>();
        var parts = new List<SolidPart>();
        for (int p = 0; p < whole.Parts.Count; p++)
        {
            Cuboid[] blocks = [.. whole.Parts[p].Blocks.Select(b => b.And(box)).Where(b => b.IsSolid)];
            if (blocks.Length == 0 || place.Die is null && IsDie(whole, p))
                continue;
            kept.Add(p);
            parts.Add(whole.Parts[p] with { Blocks = blocks });
        }

        numbers = [.. kept];
        Bond[] bonds = [.. whole.Bonds.Where(b => kept.Contains(b.A) && kept.Contains(b.B)).Select(b => new Bond(kept.IndexOf(b.A), kept.IndexOf(b.B), b.Where))
            .Where(b => Contact.Between(parts[b.A].Blocks, parts[b.B].Blocks).Any(c => b.Where.And(c.Where) is var w && w.X1 >= w.X0 && w.Y1 >= w.Y0 && w.Z1 >= w.Z0) || parts[b.A].Cuts.Count + parts[b.B].Cuts.Count > 0)];
        IReadOnlyList<DieFace> die = place.Die is null ? [] : [.. (place.Up > 0 ? whole.Upper : whole.Lower)
            .Select(f => new DieFace(kept.IndexOf(f.Part), f.At, [.. f.On.Select(on => on.And(box with { Z0 = on.Z0, Z1 = on.Z1 })).Where(on => on.X1 > on.X0 && on.Y1 > on.Y0)]))];
        return new PressSolid(parts, bonds, die, [], []) { Sections = DieSection.None };
    }

    private JointWork Gives(CellSizes cells, Action<double> progress, CancellationToken stop)
    {
        (SolidSolver solver, _, _, Dictionary<int, Vector> moment, Dictionary<int, Vector> shear) = Loaded(cells, stop);
        SolidSolution byMoment = Solved(solver, moment, 0, 2, progress, stop), byShear = Solved(solver, shear, 1, 2, progress, stop);
        return new JointWork(Work(moment, byMoment), Work(moment, byShear), Work(shear, byShear));
    }

    // cells and hierarchy take about as long as one load
    private static SolidSolution Solved(SolidSolver solver, Dictionary<int, Vector> load, int number, int of, Action<double> progress, CancellationToken stop) =>
        solver.Solve(load, 1e-6, p => progress((1 + number + p.Share) / (1 + of)), stop);

    // a third load besides: a pull along the beam, met by a force across the upright and the moment of the two
    private IReadOnlyList<RigToe> Toes(CellSizes cells, Action<double> progress, CancellationToken stop)
    {
        (SolidSolver solver, Section? tip, Section end, Dictionary<int, Vector> moment, Dictionary<int, Vector> shear) = Loaded(cells, stop);
        Vector along = Math.Sign(_tip - _place.Axis) * (_place.Along == 0 ? Vector.Across : Vector.Deep);
        Dictionary<int, Vector> pull = [];
        tip!.Pull(along, pull);
        end.Shear(-along, pull);
        end.Bend((_end - _place.Height) * Vector.Up.Cross(along), pull);
        SolidSolution By(Dictionary<int, Vector> load, int number) => Solved(solver, load, number, 3, progress, stop);
        return LocalToes.Factors(_solid.Toes, _beam, _place.Up, _place.KeptBeam, By(moment, 0), By(shear, 1), By(pull, 2));
    }

    // the two loads; no section at the tip where the joint reaches to the middle
    private (SolidSolver Solver, Section? Tip, Section End, Dictionary<int, Vector> Moment, Dictionary<int, Vector> Shear) Loaded(CellSizes cells, CancellationToken stop)
    {
        SolidMesh mesh = _solid.Mesh(cells);
        int along = _place.Along;
        var held = new Supports();
        if (_place.Die is not null)
            held.HoldPlane(mesh, along, _tip, along);
        // halves of a pair that is cut short are tied further on, so that they neither twist nor part there
        if (_place.Die is null && _beam.Length > 1)
            held.HoldPlane(mesh, along, _tip, 1 - along);
        if (_place.Upright.Member is not null && _upright.Length > 1)
            held.HoldPlane(mesh, 2, _end, 1 - along);
        var solver = new SolidSolver(mesh, held, null, stop);
        Section end = new(mesh, _upright, 2, _end, along);
        double force = _tip + (_place.Die?.Width ?? 0) / 4, away = Math.Sign(_tip - _place.Axis), lever = Math.Abs(force - _place.Axis);
        // a moment that lifts the beam's end, and the same of a lifting force; what meets them at the upright's end
        Dictionary<int, Vector> moment = [], shear = [];
        Vector turn = Turn(1), against = Turn(-1);
        end.Bend(against, moment);
        end.Pull(-Vector.Up, shear);
        end.Bend(lever * against, shear);
        Section? tip = null;
        if (_place.Die is null)
        {
            tip = new Section(mesh, _beam, along, _tip, 2);
            tip.Bend(turn, moment);
            tip.Shear(Vector.Up, shear);
        }
        else
        {
            Dictionary<int, double> shares = PressSolid.Shares(mesh, _solid.Upper);
            double all = shares.Values.Sum();
            foreach ((int node, double share) in shares)
                shear[node] = shear.GetValueOrDefault(node) + share / all * Vector.Up;
        }

        return (solver, tip, end, moment, shear);

        // the moment about the level axis square to the frame that a lifting force at the tip makes about the upright
        Vector Turn(double size) => size * (along == 0 ? new Vector(away, 0, 0) : new Vector(0, away, 0)).Cross(Vector.Up);
    }

    private static double Work(Dictionary<int, Vector> forces, SolidSolution moved) => forces.Sum(f => f.Value.Dot(moved.Displacement(f.Key)));
}
