using Ramwright.Fabrication.Drilling;
using Ramwright.Quantities;

namespace Ramwright.Files.Dossier;

/// <summary>Holes, threads, torque.</summary>
internal static class DrillingChapter
{
    public static Chapter Of(Papers p)
    {
        DrillingTable table = p.Drilling;
        var blocks = new List<Block>();
        if (table.Bolts.Count == 0 && table.Pins.Count == 0)
            return new Chapter("Drilling, threads and torque", [new Prose("The file names no bolts, screws or pins.")]);
        if (table.Bolts.Count > 0)
        {
            blocks.Add(new Grid([new("where", 2.8), new("off", 0.5, true), new("thread", 1.3), new("class", 0.9), new("hole", 0.9, true), new("tap drill", 1, true), new("thread deep", 1.1, true), new("drilled deep", 1.1, true)],
                [.. table.Bolts.Select(b => (IReadOnlyList<string>)[b.Where, $"{b.Count}", b.Thread.Name, b.Grade, Size(p, b.Hole), Size(p, b.TapDrill), Size(p, b.ThreadDepth), Size(p, b.HoleDepth)])])
            {
                Caption = "Holes",
            });
            if (table.Bolts.Any(b => b.Setting is not null))
                Torques(p, table, blocks);
            foreach (BoltRow bolt in table.Bolts.Where(b => b.Notes.Count > 0))
                blocks.Add(new Items([.. bolt.Notes.Select(n => $"{bolt.Where}: {n}.")]));
            blocks.Add(new Prose("A hole deeper than the thread lets the tap's lead run out (DIN 76-1). Drill pilot holes first; never burn a bolt hole to its final size. Clamp the work: a drill that catches turns it.", Tone.Quiet));
        }

        if (table.Pins.Count > 0)
        {
            blocks.Add(new Grid([new("where", 3), new("off", 0.5, true), new("pin", 1, true), new("steel", 1.4), new("hole", 1, true), new("through", 1.2, true)],
                [.. table.Pins.Select(pin => (IReadOnlyList<string>)[pin.Where, $"{pin.Count}", p.T(pin.Diameter, Dimension.Length), pin.Steel, p.T(pin.Hole, Dimension.Length, 4), pin.Grip is { } grip ? p.T(grip, Dimension.Length) : Papers.Open])])
            {
                Caption = "Pins",
            });
        }

        return new Chapter("Drilling, threads and torque", blocks);
    }

    private static void Torques(Papers p, DrillingTable table, List<Block> blocks)
    {
        blocks.Add(new Grid([new("where", 2.8), new("thread", 1.3), new("class", 0.9), new("torque", 1.2, true), new("preload, least", 1.4, true), new("usual", 1.2, true), new("most", 1.2, true)],
            [.. table.Bolts.Where(b => b.Setting is not null).Select(b => (IReadOnlyList<string>)[b.Where, b.Thread.Name, b.Grade, p.Torque(b.Setting!.Torque), p.T(b.Setting.Least, Dimension.Force), p.T(b.Setting.Usual, Dimension.Force), p.T(b.Setting.Most, Dimension.Force)])])
        {
            Caption = "Torque, threads and heads lightly oiled",
        });
        blocks.Add(new Prose($"Friction {Tightening.LeastFriction:0.00} to {Tightening.MostFriction:0.00}, usual {Tightening.UsualFriction:0.00}, wrench within {Tightening.Wrench * 100:0} %. The torque is the one at which the slipperiest bolt and a wrench that strays upward stay within {Tightening.Use * 100:0} % of the bolt's yield strength (VDI 2230). "
            + "Dry, rusty or zinced threads give less, greased or waxed ones more: then this torque does not hold. Stay out of the line of a bolt while you tighten it.", Tone.Quiet));
    }

    private static string Size(Papers p, double? metres) => metres is { } m ? p.T(m, Dimension.Length, 4) : "–";
}
