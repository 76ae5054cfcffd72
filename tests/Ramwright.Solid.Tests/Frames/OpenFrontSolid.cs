using Ramwright.Geometry;
using Ramwright.Presses;
using Ramwright.Solid.Tests.Bricks;
using Ramwright.Solids;
using Ramwright.Solid.Tests.Calculix;
using Ramwright.Stock;

namespace Ramwright.Solid.Tests.Frames;

/// <summary>The right upper quarter of an open-front frame with like arms. The column runs a little past the arms, as such frames are built.</summary>
internal static class OpenFrontSolid
{
    private const int Arm = 0, Column = 1;
    private const double Past = 0.05, Tail = 0.02;

    public static SolidFrame Of(Study study, RigOpenFrontFrame frame)
    {
        if (frame.UpperArm.Shape != frame.LowerArm.Shape)
            throw new ArgumentException("only frames with like arms are drawn");
        SectionProperties column = frame.Column.Shape.Properties, arm = frame.UpperArm.Shape.Properties;
        double height = arm.Top + frame.Daylight + frame.RamDrop + arm.Bottom, middle = height / 2, back = column.Height;
        bool slotted = frame.ArmJoint is RigSlottedJoint;
        var quarter = Cuboid.Everywhere with { X0 = 0, Z0 = middle };
        IReadOnlyList<Wall> arms = Wall.Of(frame.UpperArm.Shape), columns = Wall.Of(frame.Column.Shape);
        List<(int Body, Cuboid Box)> blocks =
        [
            .. arms.Select(w => (Arm, w.AlongY(-frame.ArmReach, slotted ? back + Tail : 0, height).And(quarter))).Where(b => b.Item2.IsSolid),
            .. columns.Select(w => (Column, w.Column(0, height + arm.Top + Past, column.Top).And(quarter))).Where(b => b.Item2.IsSolid),
        ];
        // the slot takes the web with it, over the bar's height
        (int Body, Cuboid Box)[] cuts = slotted ? [.. arms.Select(w => (Column, w.AlongY(0, back, height)))] : [];
        double flange = slotted ? columns.Where(w => !w.IsWeb).Min(w => w.Z1 - w.Z0) : 0, a = study.Strip;
        Bond On(double y0, double y1) => new(Arm, Column, Cuboid.Everywhere with { Y0 = y0, Y1 = y1 });
        Bond[] bonds = (slotted, study.Joining) switch
        {
            (true, Joining.Whole) => [On(0, flange), On(back - flange, back)],
            (true, _) => [On(0, a), On(back - a, back)],
            (false, Joining.Whole) => [On(0, 0)],
            _ => [.. arms.SelectMany(w => ClosedSolid.Edges(w.Y0, w.Y1, w.Z0, w.Z1, a)).Where(e => e.A1 > 0).Select(e =>
                new Bond(Arm, Column, Cuboid.Everywhere with { X0 = e.A0, X1 = e.A1, Z0 = height + e.B0, Z1 = height + e.B1 }))],
        };

        double die = frame.DieWidth / 2, face = height - arm.Bottom;
        Cuboid[] on = [.. arms.Where(w => w.IsWeb).Select(w =>
            Cuboid.Everywhere with { X0 = w.Y0, X1 = w.Y1, Y0 = -frame.Throat - die, Y1 = -frame.Throat + die })];
        Cuboid[] lines = [.. on, Cuboid.Everywhere with { Y0 = -frame.Throat }];
        var mesh = new BrickMesh(blocks, cuts, bonds, lines, study.Fine, study.Coarse, study.Middles);
        var model = new SolidModel(mesh);
        model.HoldPlane(0, 0, 0);
        model.HoldPlane(2, middle, 2);
        model.Held.Add((mesh.Face(Column, 2, middle, Cuboid.Everywhere).Keys.Min(), 1));
        var upper = new Dictionary<int, double>();
        foreach (Cuboid web in on.Where(b => b.X1 > 0))
            foreach ((int node, double share) in mesh.Face(Arm, 2, face, web))
                upper[node] = upper.GetValueOrDefault(node) + share;
        model.Push(upper, 0.5 * Vector.Up);

        double armAt = -(frame.Throat - die) / 2, columnAt = middle + 1e-6;
        Place[] places =
        [
            new("arm, between die and column", new Cut("ARM", Arm, 1, armAt), 2, 1, frame.UpperArm, new Vector(0, armAt, height)),
            new("column, at half height", new Cut("COLUMN", Column, 2, columnAt), 1, -1, frame.Column, new Vector(0, column.Top, columnAt)),
        ];
        model.Cuts.AddRange(places.Select(p => p.Cut));
        return new SolidFrame
        {
            Model = model,
            Upper = upper,
            UpperSection = mesh.Face(Arm, 1, -frame.Throat, Cuboid.Everywhere),
            Turning = 1,
            Places = places,
        };
    }
}
