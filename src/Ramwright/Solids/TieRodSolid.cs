using Ramwright.Frame;
using Ramwright.Geometry;
using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Stock;

namespace Ramwright.Solids;

/// <summary>
/// A frame on tie rods as a solid: each rod a bar of four sides with the area and, across the press, the second moment of the round of its thread's stress area, free in a square
/// hole; its nuts are one with the faces under them.
/// </summary>
internal static class TieRodSolid
{
    private const double Rim = 0.015;
    private static readonly double Square = Math.Sqrt(Math.PI) / 2;

    public static PressSolid Of(RigTieRodFrame frame, Rig rig)
    {
        var drawing = new SolidDrawing();
        SectionProperties c = frame.Crown.Shape.Properties, b = frame.Bed.Shape.Properties;
        double height = b.Top + frame.Daylight + frame.RamDrop + c.Bottom, top = height + c.Top, foot = -b.Bottom;
        foreach (Piece piece in FrameBody.Of(rig).Pieces.Where(p => p.Member == frame.Crown || p.Member == frame.Bed))
            drawing.Add(piece);
        int[] ends = [.. Enumerable.Range(0, drawing.Parts.Count)];
        foreach (int part in ends)
        {
            bool high = drawing.Parts[part].Blocks[0].Middle(2) > height / 2;
            if ((high ? frame.CrownPlate : frame.BedPlate) is { Hole: > 0 } plate)
            {
                double s = plate.Hole * Square / 2;
                drawing.Cut(part, [Cuboid.Everywhere with { X0 = -s, X1 = s, Y0 = -s, Y1 = s }]);
                drawing.Note("Round holes are drawn square, with the same area.");
            }
        }

        RigTieRod rod = frame.Rod;
        // a plain part that is nearly as thick as the thread would leave slivers: then both are drawn as thick as the plain part, which is the longer
        bool alike = rod.Shank is { } plain && Math.Abs(plain / rod.StressDiameter - 1) < 0.05;
        if (alike)
            drawing.Note("The rods' threads are drawn as thick as their plain parts, which differ from them by less than a twentieth.");
        double d = alike ? rod.Shank!.Value : rod.StressDiameter, D = rod.Thread.D, hole = ScrewThread.UsualHole(D) * Square / 2, nut = RodJoint.WasherFace * D * Square / 2;
        bool clamped = rod.Seat == RodSeat.Nut && rod.PreloadLeast > 0;
        double[] depths = frame.RodsDeep > 0 ? [-frame.RodsDeep / 2, frame.RodsDeep / 2] : [0];
        foreach (int side in (int[])[-1, 1])
            foreach (double y in depths)
            {
                double x = side * frame.RodsAcross / 2;
                Cuboid Round(double across, double deep, double from, double to) => new(x - across, x + across, y - deep, y + deep, from, to);
                string where = $"{(side < 0 ? "left" : "right")}{(y < 0 ? " front" : y > 0 ? " back" : "")} tie rod";
                var blocks = new List<Cuboid> { Round(nut, nut, top, top + rod.NutHeight), Round(nut, nut, foot - rod.NutHeight, foot) };
                (double low, double high) = (b.Top + rod.FreeThread, height - c.Bottom - rod.FreeThread);
                if (!alike && rod.Shank is { } shank && shank * Math.PI / (2 * Math.Sqrt(3)) < hole * 2 && high - low > D)
                    blocks.AddRange([Bar(d, foot, low), Bar(shank, low, high), Bar(d, high, top)]);
                else
                    blocks.Add(Bar(d, foot, top));
                Cuboid Bar(double size, double from, double to) => Round(size * Math.Sqrt(3) / 4, Math.PI * size / (4 * Math.Sqrt(3)), from, to);
                if (clamped)
                    blocks.AddRange([Round(nut, nut, b.Top, b.Top + rod.NutHeight), Round(nut, nut, height - c.Bottom - rod.NutHeight, height - c.Bottom)]);
                int bar = drawing.Add(where, rod.Proof, blocks);
                foreach (int part in ends)
                {
                    drawing.Cut(part, [Round(hole, hole, double.NegativeInfinity, double.PositiveInfinity)]);
                    bool above = drawing.Parts[part].Blocks[0].Middle(2) > height / 2;
                    drawing.JoinIn(bar, part, Cuboid.Everywhere with { Z0 = above ? top : foot, Z1 = above ? top : foot });
                    double inner = above ? height - c.Bottom : b.Top;
                    if (clamped)
                        drawing.JoinIn(bar, part, Cuboid.Everywhere with { Z0 = inner, Z1 = inner });
                }
            }

        drawing.Note(clamped
            ? "Rods are drawn four-sided; crown and bed are clamped between nuts whose preload is taken to last: outer and inner nuts are one with the faces they stand on."
            : "Rods are drawn four-sided and without preload, held by their outer nuts; inner nuts, sleeves and washers are left out.");
        IReadOnlyList<DieFace> upper = drawing.Die(frame.Crown, -1, Under(frame.CrownPlate), null, "plate under the crown"), lower = drawing.Die(frame.Bed, 1, Under(frame.BedPlate), frame.Bolster, "bolster");
        return new PressSolid(drawing.Parts, drawing.Bonds, upper, lower, drawing.Notes)
        {
            Yields = drawing.Yields,
            Members = drawing.Members,
            Sections = (new DieSection(drawing.Of(frame.Crown), 0, 0), new DieSection(drawing.Of(frame.Bed), 0, 0)),
            UpperAt = new Vector(0, 0, upper[0].At),
            LowerAt = new Vector(0, 0, lower[0].At),
        };

        // a die that is smaller than the hole under it presses on the hole's edge
        Cuboid Under(RigEndPlate? plate)
        {
            double hole = (plate?.Hole ?? 0) * Square / 2, least = hole > 0 ? hole + Rim : 0;
            double die = Math.Max(Math.Max(frame.DieWidth, 0.02) / 2, least), deep = frame.DieDepth > 0 ? Math.Max(frame.DieDepth / 2, least) : double.PositiveInfinity;
            if (least > frame.DieWidth / 2)
                drawing.Note($"A die over a hole that is larger presses on a rim {Readout.Text(Rim, Dimension.Length)} wide round it.");
            return Cuboid.Everywhere with { X0 = -die, X1 = die, Y0 = -deep, Y1 = deep };
        }
    }
}
