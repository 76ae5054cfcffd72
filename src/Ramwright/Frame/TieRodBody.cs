using Ramwright.Geometry;
using Ramwright.Presses;
using Ramwright.Stock;

namespace Ramwright.Frame;

/// <summary>The steel of a tie-rod frame. The origin is the bed's centroid under the ram, as in <see cref="TieRodPlan"/>.</summary>
internal static class TieRodBody
{
    /// <summary>How far beams run on past the rods' centres, in rod diameters.</summary>
    private const double PastRods = 2;

    public static FrameBody Of(RigTieRodFrame frame)
    {
        SectionProperties crown = frame.Crown.Shape.Properties, bed = frame.Bed.Shape.Properties;
        RigTieRod rod = frame.Rod;
        double height = bed.Top + frame.Daylight + frame.RamDrop + crown.Bottom;
        // two nuts' height beyond each face: the nut, and threads to spare
        double foot = -bed.Bottom - 2 * rod.NutHeight, head = height + crown.Top + 2 * rod.NutHeight;
        RigMember bar = new("tie rod", new Round(rod.Shank ?? rod.Thread.D) { Name = rod.Thread.Name, Source = rod.Thread.Form.StressArea }, null, Rod(rod));

        var pieces = new List<Piece>();
        pieces.AddRange(End(FrameWords.Crown(frame), frame.Crown, frame.CrownPlate, height));
        pieces.AddRange(End(FrameWords.Bed(frame), frame.Bed, frame.BedPlate, 0));
        double[] depths = frame.RodsDeep > 0 ? [-frame.RodsDeep / 2, frame.RodsDeep / 2] : [0];
        foreach (int side in (int[])[-1, 1])
        {
            foreach (double y in depths)
            {
                string where = (side < 0 ? "left" : "right") + (y < 0 ? " front" : y > 0 ? " back" : "");
                double x = side * frame.RodsAcross / 2;
                pieces.AddRange(Piece.Of($"{where} tie rod", bar, new Vector(x, y, foot), new Vector(x, y, head), side * Vector.Across));
                if (rod.Seat == RodSeat.Sleeve)
                    pieces.AddRange(Piece.Of($"{where} sleeve", Sleeve(rod, bar), new Vector(x, y, bed.Top), new Vector(x, y, height - crown.Bottom), side * Vector.Across));
            }
        }

        return new FrameBody(pieces, new Vector(0, 0, bed.Top + frame.Daylight), new Vector(0, 0, bed.Top));

        IEnumerable<Piece> End(string name, RigMember member, RigEndPlate? plate, double z)
        {
            double end = plate is { } p ? p.Length / 2 : frame.RodsAcross / 2 + PastRods * rod.Thread.D;
            return Piece.Of(name, member, new Vector(-end, 0, z), new Vector(end, 0, z), Vector.Up);
        }
    }

    private static RigMember Sleeve(RigTieRod rod, RigMember bar) => bar with
    {
        Part = "sleeve",
        Shape = new CircularHollow(rod.SleeveOutside, (rod.SleeveOutside - rod.SleeveInside) / 2, false) { Name = "sleeve", Source = SectionText.AsGiven },
    };

    private static Steel Rod(RigTieRod rod) => new()
    {
        Name = rod.Grade,
        Bands = [new StrengthBand(double.MaxValue, rod.Proof, rod.Fu)],
        Source = rod.Thread.Form.StressArea,
    };
}
