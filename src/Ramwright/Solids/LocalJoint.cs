using Ramwright.Frame;
using Ramwright.Geometry;
using Ramwright.Presses;
using Ramwright.Stock;

namespace Ramwright.Solids;

/// <summary>
/// One joint cut out of a frame: the end of a beam or arm and a length of the upright or column that it is joined to. What it gives beyond what the two would give as beams is what
/// the springs of the beam model have to give.
/// </summary>
/// <remarks>
/// Two loads that balance by themselves: a moment on the beam's cut end, and a shear force there, each met at the upright's cut end by its own force and moment, all spread as a long
/// beam would spread them. The work of one load on the movement of the other, less what the two lengths do as beams, is c_b M_b M_b' + c_u M_u M_u' + c_N N N', with the moments where
/// beam and upright enter the joint and the force that goes over. The moment alone gives c_b + c_u; moment with shear, whose M_u is larger than its M_b by the upright's half depth,
/// tells them apart; shear alone gives c_N.
/// </remarks>
internal sealed class LocalJoint
{
    private readonly PressSolid _solid;
    private readonly int[] _beam, _upright;
    private readonly double _tip, _end, _axis;
    private readonly int _along;

    private LocalJoint(PressSolid solid, int[] beam, int[] upright, int along, double tip, double end, double axis)
    {
        (_solid, _beam, _upright, _along, _tip, _end, _axis) = (solid, beam, upright, along, tip, end, axis);
    }

    /// <summary>The springs of a joint.</summary>
    /// <param name="whole">The frame that it is cut out of.</param>
    /// <param name="place">The joint.</param>
    /// <param name="stop">Ends it early.</param>
    public static RigSpring Of(PressSolid whole, JointPlace place, CancellationToken stop)
    {
        (RigMember beam, RigMember upright, int along, int up) = (place.Beam, place.Upright, place.Along, place.Up);
        SectionProperties b = beam.Shape.Properties, u = upright.Shape.Properties;
        double kept = place.KeptBeam, keptUp = place.KeptUpright;
        double tip = place.Face - kept, edge = place.Height - up * (up > 0 ? b.Bottom : b.Top), end = edge - up * keptUp;
        Cuboid box = Cuboid.Everywhere.With(along, tip, double.PositiveInfinity)
            .With(2, up > 0 ? end : double.NegativeInfinity, up > 0 ? double.PositiveInfinity : end);
        PressSolid cut = Cut(whole, box, out int[] numbers);
        int[] Of(RigMember member) => [.. numbers.Select((old, now) => (old, now)).Where(n => whole.Members[n.old] == member).Select(n => n.now)];
        var joint = new LocalJoint(cut, Of(beam), Of(upright), along, tip, end, place.Axis);

        double size = Math.Max(b.Height, u.Height);
        var cells = new CellSizes(size / 20, size / 10);
        Give rough = joint.Gives(cells.Over(0.5), stop), fine = joint.Gives(cells, stop);
        // the error falls as the cells do
        Give give = new(2 * fine.MM - rough.MM, 2 * fine.MV - rough.MV, 2 * fine.VV - rough.VV);
        double E = 210e9, G = E / 2.6, lever = Math.Abs(place.Axis - place.Face);
        double bM = kept / (E * b.Iy) + keptUp / (E * u.Iy);
        double bMV = kept * kept / (2 * E * b.Iy) + (kept + lever) * keptUp / (E * u.Iy);
        double bVV = Math.Pow(kept, 3) / (3 * E * b.Iy) + kept / (G * b.Asz) + (kept + lever) * (kept + lever) * keptUp / (E * u.Iy) + keptUp / (E * u.A);
        double rM = give.MM - bM, rMV = give.MV - bMV, rVV = give.VV - bVV;
        double cu = Math.Clamp((rMV - kept * rM) / lever, 0, Math.Max(0, rM)), cb = Math.Max(0, rM - cu);
        double cn = Math.Max(0, rVV - cb * kept * kept - cu * (kept + lever) * (kept + lever));
        PressSolid read = cut with { Toes = LocalToes.Of(whole, box, numbers) };
        return new RigSpring(1 / cb, 1 / cu, 1 / cn) { Toes = read.Toes.Count == 0 ? [] : new LocalJoint(read, joint._beam, joint._upright, along, tip, end, place.Axis).Toes(place, cells.Over(2), stop) };
    }

    private readonly record struct Give(double MM, double MV, double VV);

    private static PressSolid Cut(PressSolid whole, Cuboid box, out int[] numbers)
    {
        var kept = new List<int>();
        var parts = new List<SolidPart>();
        for (int p = 0; p < whole.Parts.Count; p++)
        {
            Cuboid[] blocks = [.. whole.Parts[p].Blocks.Select(b => b.And(box)).Where(b => b.IsSolid)];
            // what stands for dies belongs to the frame, not to the joint
            if (blocks.Length == 0 || whole.Upper.Concat(whole.Lower).Any(f => f.Part == p && whole.Members[p] is null))
                continue;
            kept.Add(p);
            parts.Add(whole.Parts[p] with { Blocks = blocks });
        }

        numbers = [.. kept];
        Bond[] bonds = [.. whole.Bonds.Where(b => kept.Contains(b.A) && kept.Contains(b.B)).Select(b => new Bond(kept.IndexOf(b.A), kept.IndexOf(b.B), b.Where))
            .Where(b => Contact.Between(parts[b.A].Blocks, parts[b.B].Blocks).Any(c => b.Where.And(c.Where) is var w && w.X1 >= w.X0 && w.Y1 >= w.Y0 && w.Z1 >= w.Z0) || parts[b.A].Cuts.Count + parts[b.B].Cuts.Count > 0)];
        return new PressSolid(parts, bonds, [], [], []) { Sections = DieSection.None };
    }

    private Give Gives(CellSizes cells, CancellationToken stop)
    {
        (SolidSolver solver, _, _, Dictionary<int, Vector> moment, Dictionary<int, Vector> shear) = Loaded(cells, stop);
        SolidSolution byMoment = solver.Solve(moment, 1e-6, stop: stop), byShear = solver.Solve(shear, 1e-6, stop: stop);
        return new Give(Work(moment, byMoment), Work(moment, byShear), Work(shear, byShear));
    }

    // stress needs cells half as long as the springs do, and a third load: a pull along the beam, met by a force across the upright and the moment of the two
    private IReadOnlyList<RigToe> Toes(JointPlace place, CellSizes cells, CancellationToken stop)
    {
        (SolidSolver solver, Section tip, Section end, Dictionary<int, Vector> moment, Dictionary<int, Vector> shear) = Loaded(cells, stop);
        Vector along = Math.Sign(_tip - _axis) * (_along == 0 ? Vector.Across : Vector.Deep);
        Dictionary<int, Vector> pull = [];
        tip.Pull(along, pull);
        end.Shear(-along, pull);
        end.Bend((_end - place.Height) * Vector.Up.Cross(along), pull);
        SolidSolution By(Dictionary<int, Vector> load) => solver.Solve(load, 1e-6, stop: stop);
        return LocalToes.Factors(_solid.Toes, _beam, place.Up, place.KeptBeam, By(moment), By(shear), By(pull));
    }

    private (SolidSolver Solver, Section Tip, Section End, Dictionary<int, Vector> Moment, Dictionary<int, Vector> Shear) Loaded(CellSizes cells, CancellationToken stop)
    {
        SolidMesh mesh = _solid.Mesh(cells);
        // the halves of a pair are tied further on, so that they neither twist nor part where they are cut
        var tied = new Supports();
        if (_beam.Length > 1)
            tied.HoldPlane(mesh, _along, _tip, 1 - _along);
        if (_upright.Length > 1)
            tied.HoldPlane(mesh, 2, _end, 1 - _along);
        var solver = new SolidSolver(mesh, tied, null, stop);
        Section tip = new(mesh, _beam, _along, _tip, 2), end = new(mesh, _upright, 2, _end, _along);
        double away = Math.Sign(_tip - _axis), lever = Math.Abs(_tip - _axis);
        // a moment that lifts the beam's end, and the same of a lifting force; what meets them at the upright's end
        Dictionary<int, Vector> moment = [], shear = [];
        Vector turn = Turn(1), against = Turn(-1);
        tip.Bend(turn, moment);
        end.Bend(against, moment);
        tip.Shear(Vector.Up, shear);
        end.Pull(-Vector.Up, shear);
        end.Bend(lever * against, shear);
        return (solver, tip, end, moment, shear);

        // the moment about the level axis square to the frame that a lifting force at the tip makes about the upright
        Vector Turn(double size) => size * (_along == 0 ? new Vector(away, 0, 0) : new Vector(0, away, 0)).Cross(Vector.Up);
    }

    private static double Work(Dictionary<int, Vector> forces, SolidSolution moved) => forces.Sum(f => f.Value.Dot(moved.Displacement(f.Key)));
}
