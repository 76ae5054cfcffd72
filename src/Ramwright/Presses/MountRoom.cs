using Ramwright.Geometry;
using Ramwright.Quantities;
using Ramwright.Stock;
using Ramwright.Workings;

namespace Ramwright.Presses;

/// <summary>Whether cylinder and bolts find room in the beam that holds them, and the stroke in the opening.</summary>
internal static class MountRoom
{
    /// <summary>Room round a barrel that passes between two halves, both sides together, m; common practice.</summary>
    private const double Room = 2e-3;

    /// <summary>A stroke so many times the daylight is asked about; tools and work never need it.</summary>
    private const double FarTooLong = 1.5;

    public static void Check(RigCylinder cylinder, RigFrame frame, bool pulls, Assumptions assume)
    {
        if (!pulls && cylinder.Hole == 0 && cylinder.Stroke > FarTooLong * frame.Daylight)
        {
            assume.Caution(new Remark("The ram travels {0} and the dies open {1}: no more than that of the stroke can be used. Are numbers and units of stroke and daylight as you mean them?",
                Remark.Of(cylinder.Stroke, Dimension.Length), Remark.Of(frame.Daylight, Dimension.Length)));
        }

        RigMember? beam = frame switch
        {
            RigClosedFrame closed => closed.Crown,
            RigOpenFrontFrame open => open.UpperArm,
            RigTieRodFrame { CrownPlate: null } rods => rods.Crown,
            _ => null,
        };
        if (beam is null || cylinder is not { Mount: RigFlangeMount flange, Count: 1 })
            return;
        Barrel(beam, cylinder, frame, flange, assume);
        Bolts(beam, flange, assume);
    }

    // a ram that ends less than its stroke below the beam has its barrel in the beam
    private static void Barrel(RigMember beam, RigCylinder cylinder, RigFrame frame, RigFlangeMount flange, Assumptions assume)
    {
        if (beam.Shape is not Pair { Apart: > 0 } pair || frame.RamDrop >= cylinder.Stroke || pair.Apart >= flange.Barrel + Room)
            return;
        assume.Caution(new Remark($"The ram ends {{0}} below the {beam.Part} and travels {{1}}, so its barrel stands up between the halves; {{2}} thick, it does not go through a gap of {{3}}. "
            + $"Say {beam.Key}.apart: {{4}} or more, or a longer frame.ram-drop with the whole cylinder below.",
            Remark.Of(frame.RamDrop, Dimension.Length), Remark.Of(cylinder.Stroke, Dimension.Length), Remark.Of(flange.Barrel, Dimension.Length),
            Remark.Of(pair.Apart, Dimension.Length), Remark.Of(flange.Barrel + Room, Dimension.Length)));
    }

    // as the ring is drawn, one bolt stands square to the run of the beam
    private static void Bolts(RigMember beam, RigFlangeMount flange, Assumptions assume)
    {
        (double From, double To)[] walls = Walls(beam.Shape);
        if (Cut(0) is not { } cut)
            return;
        string turned = Cut(0.5) is null ? "Turn the ring by half the space between two bolts, or say" : "Say";
        assume.Caution(new Remark($"Bolts of the cylinder's flange run into the webs of the {beam.Part}: on a circle of {{0}} one stands {{1}} beside the middle, and a web from {{2}} to {{3}}. "
            + turned + " another cylinder.mount.circle or count.",
            Remark.Of(flange.Circle, Dimension.Length), Remark.Of(cut.At, Dimension.Length), Remark.Of(cut.From, Dimension.Length), Remark.Of(cut.To, Dimension.Length)));

        // the first hole that cuts a wall's side, with the ring turned by a part of its spacing
        (double At, double From, double To)? Cut(double turn)
        {
            double r = ScrewThread.UsualHole(flange.Bolts.Thread.D) / 2 - 1e-6;
            for (int i = 0; i < flange.Bolts.Count; i++)
            {
                double y = flange.Circle / 2 * Math.Cos(2 * Math.PI * (i + turn) / flange.Bolts.Count);
                foreach ((double from, double to) in walls)
                {
                    if (y >= 0 && to > y - r && from < y + r && (from > y - r || to < y + r))
                        return (y, from, to);
                }
            }

            return null;
        }
    }

    // what a level line at half depth goes through
    private static (double, double)[] Walls(Shape shape)
    {
        var at = new List<double>();
        foreach ((double Y, double Z)[] loop in shape.CentredOutline.Polygons(1e-5))
        {
            for (int i = 0; i < loop.Length; i++)
            {
                ((double ya, double za), (double yb, double zb)) = (loop[i], loop[(i + 1) % loop.Length]);
                if (za < 0 != zb < 0)
                    at.Add(ya + za / (za - zb) * (yb - ya));
            }
        }

        at.Sort();
        return [.. Enumerable.Range(0, at.Count / 2).Select(i => (at[2 * i], at[2 * i + 1]))];
    }
}
