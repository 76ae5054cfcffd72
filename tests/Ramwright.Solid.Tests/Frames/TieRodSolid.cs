using Ramwright.Frame;
using Ramwright.Geometry;
using Ramwright.Presses;
using Ramwright.Solid.Tests.Bricks;
using Ramwright.Solids;
using Ramwright.Solid.Tests.Calculix;
using Ramwright.Stock;

namespace Ramwright.Solid.Tests.Frames;

/// <summary>
/// The right front eighth of a frame on two or four tie rods, crown and bed alike. A rod is a bar of four sides with the area and, across the press, the second moment
/// of the round that has the thread's stress area; it stands free in its hole, and its nut is one with the face under it.
/// </summary>
internal static class TieRodSolid
{
    private const int Crown = 0, Rod = 1;

    /// <summary>How far the crown runs on past the rods' centres, in rod diameters.</summary>
    private const double Past = 2;

    /// <summary>Side of a square as large as a round, over its diameter.</summary>
    private static readonly double Square = Math.Sqrt(Math.PI) / 2;

    public static SolidFrame Of(Study study, RigTieRodFrame frame)
    {
        if (frame.Crown.Shape != frame.Bed.Shape)
            throw new ArgumentException("only frames with like crown and bed are drawn");
        SectionProperties crown = frame.Crown.Shape.Properties;
        double height = crown.Top + frame.Daylight + frame.RamDrop + crown.Bottom, middle = height / 2, face = height + crown.Top + study.Washer;
        double x = frame.RodsAcross / 2, y = frame.RodsDeep / 2, d = frame.Rod.StressDiameter, D = frame.Rod.Thread.D, reach = x + Past * D;
        var front = Cuboid.Everywhere with { X0 = 0, Y0 = 0, Z0 = middle };

        // A = b h and I = b h³/12 are those of the round where h = d √3/2
        double h = d * Math.Sqrt(3) / 2, b = Math.PI * d / (2 * Math.Sqrt(3));
        double hole = ScrewThread.UsualHole(D) * Square, nut = RodJoint.WasherFace * D * Square;
        Cuboid Round(double across, double deep, double from, double to) => new(x - across / 2, x + across / 2, y - deep / 2, y + deep / 2, from, to);

        IReadOnlyList<Wall> walls = Wall.Of(frame.Crown.Shape);
        var blocks = new List<(int Body, Cuboid Box)>();
        void Add(int body, IEnumerable<Cuboid> boxes) =>
            blocks.AddRange(boxes.Select(box => box.And(front)).Where(box => box.IsSolid).Select(box => (body, box)));
        Add(Crown, walls.Select(w => w.AlongX(0, reach, height)));
        if (study.Washer > 0)
            Add(Crown, [new Cuboid(2 * x - reach, reach, -crown.Left, crown.Right, height + crown.Top, face)]);
        Add(Rod, [Round(h, b, middle, face), Round(nut, nut, face, face + frame.Rod.NutHeight)]);

        double die = frame.DieWidth / 2, deep = frame.DieDepth > 0 ? frame.DieDepth / 2 : double.PositiveInfinity, below = height - crown.Bottom;
        Cuboid[] on = [.. walls.Where(w => w.IsWeb).Select(w => Cuboid.Everywhere with { X0 = -die, X1 = die, Y0 = Math.Max(w.Y0, -deep), Y1 = Math.Min(w.Y1, deep) })];
        var mesh = new BrickMesh(
            blocks, [(Crown, Round(hole, hole, double.NegativeInfinity, double.PositiveInfinity))], [new Bond(Rod, Crown, Cuboid.Everywhere with { Z0 = face, Z1 = face })],
            on, study.Fine, study.Coarse, study.Middles);
        var model = new SolidModel(mesh);
        model.HoldPlane(0, 0, 0);
        model.HoldPlane(1, 0, 1);
        model.HoldPlane(2, middle, 2);
        var upper = new Dictionary<int, double>();
        foreach (Cuboid web in on.Where(web => web.Y1 > 0))
            foreach ((int node, double share) in mesh.Face(Crown, 2, below, web))
                upper[node] = upper.GetValueOrDefault(node) + share;
        model.Push(upper, 0.25 * Vector.Up);

        RigMember rod = Rigs.Rod(frame.Rod);
        Place[] places =
        [
            new("crown, at mid-span", new Cut("CROWN", Crown, 0, 1e-6), 2, 1, frame.Crown, new Vector(1e-6, 0, height)),
            new("tie rod, at half height", new Cut("ROD", Rod, 2, middle + 1e-6), 0, 1, rod, new Vector(x, y, middle)) { Whole = y > 0 ? 1 : 2 },
        ];
        model.Cuts.AddRange(places.Select(p => p.Cut));
        return new SolidFrame
        {
            Model = model,
            Upper = upper,
            UpperSection = mesh.Face(Crown, 0, 0, Cuboid.Everywhere),
            Turning = 0,
            Places = places,
        };
    }
}
