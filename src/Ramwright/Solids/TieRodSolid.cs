using Ramwright.Frame;
using Ramwright.Geometry;
using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Stock;
using Ramwright.Workings;

namespace Ramwright.Solids;

/// <summary>
/// A frame on tie rods as a solid: each rod a bar of four sides with the area and, across the press, the second moment of the round of its thread's stress area, free in a square
/// hole; its nuts are one with the faces under them.
/// </summary>
internal static class TieRodSolid
{
    private const double Rim = 0.015;

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
                double s = plate.Hole * RodEnds.Square;
                drawing.Cut(part, [Cuboid.Everywhere with { X0 = -s, X1 = s, Y0 = -s, Y1 = s }]);
                drawing.Note("Round holes are drawn square, with the same area.");
            }
        }

        foreach (int side in (int[])[-1, 1])
            foreach (double y in frame.RodsDeep > 0 ? [-frame.RodsDeep / 2, frame.RodsDeep / 2] : (double[])[0])
                Rod(drawing, frame, rig, ends, $"{(side < 0 ? "left" : "right")}{(y < 0 ? " front" : y > 0 ? " back" : "")}", new RodEnds(frame.Rod, side * frame.RodsAcross / 2, y),
                    (foot, b.Top, height - c.Bottom, top));
        IReadOnlyList<DieFace> upper = drawing.Die(frame.Crown, -1, Under(frame.CrownPlate), null, "plate under the crown"), lower = drawing.Die(frame.Bed, 1, Under(frame.BedPlate), frame.Bolster, "bolster");
        return new PressSolid(drawing.Parts, drawing.Bonds, upper, lower, drawing.Notes)
        {
            Shut = drawing.Shut,
            Yields = drawing.Yields,
            Members = drawing.Members,
            Sections = (new DieSection(drawing.Of(frame.Crown), 0, 0), new DieSection(drawing.Of(frame.Bed), 0, 0)),
            UpperAt = new Vector(0, 0, upper[0].At),
            LowerAt = new Vector(0, 0, lower[0].At),
        };

        // a die that is smaller than the hole under it presses on the hole's edge
        Cuboid Under(RigEndPlate? plate)
        {
            double hole = (plate?.Hole ?? 0) * RodEnds.Square, least = hole > 0 ? hole + Rim : 0;
            double die = Math.Max(drawing.HalfDie(frame.DieWidth), least), deep = frame.DieDepth > 0 ? Math.Max(frame.DieDepth / 2, least) : double.PositiveInfinity;
            if (least > frame.DieWidth / 2)
                drawing.Note(new Remark("A die over a hole that is larger presses on a rim {0} wide round it.", Remark.Of(Rim, Dimension.Length)));
            return Cuboid.Everywhere with { X0 = -die, X1 = die, Y0 = -deep, Y1 = deep };
        }
    }

    // from the bed's underside and upper face to the crown's underside and upper face
    private static void Rod(SolidDrawing drawing, RigTieRodFrame frame, Rig rig, int[] ends, string where, RodEnds at, (double Foot, double Bed, double Crown, double Top) faces)
    {
        RigTieRod rod = frame.Rod;
        // a plain part that is nearly as thick as the thread would leave slivers: then both are drawn as thick as the plain part, which is the longer
        bool alike = rod.Shank is { } plain && Math.Abs(plain / rod.StressDiameter - 1) < 0.05;
        if (alike)
            drawing.Note("The rods' threads are drawn as thick as their plain parts, which differ from them by less than a twentieth.");
        double d = alike ? rod.Shank!.Value : rod.StressDiameter, hole = at.Hole, top = faces.Top + at.Washer, foot = faces.Foot - at.Washer;
        bool clamped = rod.Seat != RodSeat.Sleeve && rod.PreloadLeast > 0, sleeved = rod.Seat == RodSeat.Sleeve && TieRodPlan.HoldsClosed(frame, RodStiffness.Of(frame), rig.Wanted);
        var blocks = new List<Cuboid> { at.NutOn(top, 1), at.NutOn(foot, -1) };
        (double low, double high) = (faces.Bed + rod.FreeThread, faces.Crown - rod.FreeThread);
        if (!alike && rod.Shank is { } shank && shank * Math.PI / (2 * Math.Sqrt(3)) < hole * 2 && high - low > rod.Thread.D)
            blocks.AddRange([at.Bar(d, foot, low), at.Bar(shank, low, high), at.Bar(d, high, top)]);
        else
            blocks.Add(at.Bar(d, foot, top));
        if (clamped)
            blocks.AddRange([at.NutOn(faces.Bed, 1), at.NutOn(faces.Crown, -1)]);
        int bar = drawing.Add($"{where} tie rod", rod.Proof, blocks);
        foreach (int part in ends)
        {
            drawing.Cut(part, [at.Block(hole, double.NegativeInfinity, double.PositiveInfinity)]);
            bool above = drawing.Parts[part].Blocks[0].Middle(2) > (faces.Bed + faces.Crown) / 2;
            (double outer, double inner, int outward) = above ? (faces.Top, faces.Crown, 1) : (faces.Foot, faces.Bed, -1);
            if (rod.Washer is { } washer)
                UnderNut(drawing, $"washer of {where} tie rod, {(above ? "above" : "below")}", washer, at, bar, part, outer, outward);
            else
                drawing.JoinIn(bar, part, Cuboid.Everywhere with { Z0 = outer, Z1 = outer });
            if (clamped)
                drawing.JoinIn(bar, part, Cuboid.Everywhere with { Z0 = inner, Z1 = inner });
        }

        if (sleeved)
        {
            int sleeve = drawing.Add($"{where} sleeve", at.Sleeve(new CircularHollow(rod.SleeveOutside, (rod.SleeveOutside - rod.SleeveInside) / 2, false) { Name = "sleeve", Source = SectionText.AsGiven }, faces.Bed, faces.Crown));
            foreach (int part in ends)
                drawing.JoinWhole(sleeve, part);
            double pressure = rod.PreloadLeast / (Math.PI / 4 * (rod.SleeveOutside * rod.SleeveOutside - rod.SleeveInside * rod.SleeveInside));
            drawing.Shut.AddRange([new ShutFace(sleeve, faces.Bed, pressure), new ShutFace(sleeve, faces.Crown, pressure)]);
        }

        drawing.Note("Rods are drawn four-sided; their outer nuts are one with the faces they stand on.");
        drawing.Note((rod.Seat, rod.PreloadLeast > 0) switch
        {
            (RodSeat.Sleeve, _) when sleeved => "Preload holds crown and bed on the sleeves at the wanted force, so that they are one; sleeves are drawn square, with the same area and stiffness in bending.",
            (RodSeat.Sleeve, true) => "The preload does not last to the wanted force: crown and bed lift off their sleeves, which are left out, as they then carry nothing.",
            (RodSeat.Sleeve, false) => "Without preload the sleeves carry nothing and are left out.",
            (_, true) => "Crown and bed are clamped on the rods by a preload that is taken to last: inner nuts, or shoulders drawn as large, are one with the faces they stand on.",
            _ => "Rods are without preload, held by their outer nuts; inner nuts or shoulders are left out.",
        });
    }

    // one washer for each end, though it may stand on both halves of a pair
    private static void UnderNut(SolidDrawing drawing, string name, RigRodWasher washer, RodEnds at, int bar, int part, double face, int outward)
    {
        int disc = Enumerable.Range(0, drawing.Parts.Count).FirstOrDefault(i => drawing.Parts[i].Name == name, -1);
        if (disc < 0)
        {
            disc = drawing.Add(name, washer.Steel.Fy(washer.Thickness), [at.WasherOn(face, outward)]);
            drawing.Cut(disc, [at.Block(at.Hole, double.NegativeInfinity, double.PositiveInfinity)]);
            double nut = face + outward * washer.Thickness;
            drawing.JoinIn(bar, disc, Cuboid.Everywhere with { Z0 = nut, Z1 = nut });
            drawing.Note("Washers are drawn square, with the same area, and are one with nut and face: they do not lift at their edges.");
        }

        drawing.JoinIn(disc, part, Cuboid.Everywhere with { Z0 = face, Z1 = face });
    }
}
