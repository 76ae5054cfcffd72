using Ramwright.Ladders;
using Ramwright.Presses;
using Ramwright.Quantities;

namespace Ramwright.Fabrication.Welding;

/// <summary>In which order a press is tacked and welded, so that it stays square; common practice of frame builders.</summary>
public static class WeldSequence
{
    /// <summary>The steps, first to last; empty where nothing is welded.</summary>
    public static IReadOnlyList<string> Of(PressCheck check, IReadOnlyList<WeldLine> lines, UnitSystem units = UnitSystem.Metric)
    {
        ArgumentNullException.ThrowIfNull(check);
        ArgumentNullException.ThrowIfNull(lines);
        if (lines.Count == 0)
            return [];
        string Length(double m) => Readout.Text(m, Dimension.Length, units, 2);
        var steps = new List<string>
        {
            $"Grind scale, rust, paint and zinc off for {Length(0.025)} beside every seam, to bright metal. Zinc and chrome give poisonous fumes: take them off first, not with the arc.",
        };
        steps.AddRange(Setting(check.Rig.Frame, Length, m => Readout.Text(m, Dimension.Length, units, 4)));
        double longest = lines.Max(l => l.Seam.Length / Math.Max(1, l.Seam.Kind == WeldKind.Butt ? 1 : 2)), thick = lines.Max(l => l.Seam.Thicker);
        steps.Add($"Tack opposite corners in turn, each tack {Length(Math.Max(0.03, Math.Min(0.06, 4 * thick)))} long and full: a short tack on thick steel is a chilled crack. Where preheat is named, it is for the tacks too.");
        steps.Add("Measure again after tacking. Then weld one short run at one corner, one at the corner across from it, and so on round: never one corner from end to end.");
        if (longest > 0.3)
            steps.Add($"Lay runs longer than {Length(0.3)} in steps of {Length(0.1)} to {Length(0.15)} backwards: each step begins ahead and ends where the last began.");
        if (lines.Any(l => l.Runs > 1))
            steps.Add("Lay the first run of every seam all round before the second of any; clean off slag to bright metal between runs.");
        steps.AddRange(Order(check.Rig.Frame, lines));
        foreach (Seam butt in lines.Select(l => l.Seam).Where(m => m.Kind == WeldKind.Butt))
            steps.Add($"Each butt of the {butt.Name} pulls about {Length(Shrinkage.Across(butt.Area, butt.Throat))} across itself as it cools (Blodgett, from memory): set the parts that much further apart.");
        if (lines.Any(l => l.Seam.Kind == WeldKind.Fillet))
            steps.Add($"A fillet pulls about {Length(0.0008)} across itself (common practice): leave that much where two parts stand between two others, or close it with a wedge, not with the press.");
        steps.Add("Start and stop no run at a corner of a beam or at a gusset's toe: carry it round. Fill every crater.");
        steps.Add("Dress the toes of gusset welds and of the welds inside the frame's corners smooth along the force: that is where cracks begin.");
        if (lines.Any(l => l.Preheating.Temperature is not null))
            steps.Add("Let preheated joints cool under dry mineral wool or in dry sand, out of the draught. Never quench with water or air.");
        steps.Add("Look at every weld when it is cold and again after two days: cracks by hydrogen come late. Dye on all that carry the force.");
        return steps;
    }

    private static IEnumerable<string> Setting(RigFrame frame, Func<double, string> length, Func<double, string> Exact)
    {
        switch (frame)
        {
            case RigClosedFrame closed:
                double diagonal = Math.Sqrt(closed.Width * closed.Width + closed.Daylight * closed.Daylight);
                yield return $"Lay the frame flat on a level floor or on beams. Set the uprights {Exact(closed.Width)} apart in the clear, and measure both diagonals of the opening: about {Exact(diagonal)}, alike to {length(0.001)}.";
                yield return "Clamp a stiff spacer between the uprights near crown and near bed, and leave it in until all is cold.";
                break;
            case RigOpenFrontFrame:
                yield return $"Lay column and arms flat. The faces that carry cylinder and lower die must be parallel: set them with a bar cut to the daylight, front and back alike to {length(0.0005)}.";
                yield return "Clamp that bar between the arms near their tips, and leave it in until all is cold: welds at the column pull the arms together.";
                break;
            default:
                yield return "Set the parts on a level floor, measure both diagonals, and clamp what could move.";
                break;
        }
    }

    private static IEnumerable<string> Order(RigFrame frame, IReadOnlyList<WeldLine> lines)
    {
        string[] names = [.. lines.Where(l => l.Preheating.Advice is WeldAdvice.Weld or WeldAdvice.Preheat).OrderBy(Rank).ThenByDescending(l => l.Seam.Throat).Select(l => l.Seam.Name)];
        if (names.Length > 1)
            yield return "Order: " + string.Join("; ", names) + ". Seams that shrink most come first, while the rest can still give.";
        if (frame is RigClosedFrame)
            yield return "Turn the frame over after each round, so that front and back pull alike.";
    }

    private static int Rank(WeldLine line) => line.Seam.Kind == WeldKind.Butt ? 0 : line.Seam.Name.StartsWith("gussets", StringComparison.Ordinal) ? 2 : 1;
}
