using System.Globalization;
using System.Text;
using Ramwright.Presses;
using Ramwright.Tests;

namespace Ramwright.Solid.Tests.Frames;

/// <summary>docs/solids.md, made from the committed solids and the beams of today; the words stand in solids-words.md beside it.</summary>
public static class SolidsPage
{
    /// <summary>The file.</summary>
    public static string File => Path.Combine(Repository.Folder("docs"), "solids.md");

    /// <summary>The page.</summary>
    public static string Text()
    {
        var page = new StringBuilder(System.IO.File.ReadAllText(Path.Combine(Repository.Folder("docs"), "solids-words.md")).TrimEnd());
        void Line(FormattableString text) => page.Append(text.ToString(CultureInfo.InvariantCulture)).Append('\n');
        Line($"\n\n## The numbers\n");
        Line($"CalculiX {string.Join(", ", Committed.AllVersions.Concat(DrawnTable.Committed.Select(r => r.Version)).Distinct())}. Opening in nm for each newton at the ram; difference is beam over solid, less one.");
        foreach (IGrouping<string, Study> kind in Studies.All.GroupBy(s => s.Class))
        {
            Line($"\n### {kind.Key[..1].ToUpperInvariant()}{kind.Key[1..]}\n");
            Line($"| id | frame | beam | solid | difference | sections turn | stress, worst difference | bricks, nodes |");
            Line($"|---|---|---:|---:|---:|---:|---|---:|");
            foreach (Study study in kind)
            {
                Answer solid = Committed.Of(study), beam = Answer.OfBeams(study, solid.Stresses);
                (Stress s, Stress b) = solid.Stresses.Zip(beam.Stresses).MaxBy(p => Math.Abs(p.Second.Value / p.First.Value - 1));
                string turn = study.Frame is RigOpenFrontFrame ? Off(beam.SectionTurn, solid.SectionTurn) : "";
                Line($"| {study.Id} | {study.Words} | {beam.Opening * 1e9:F3} | {solid.Opening * 1e9:F3} | {Off(beam.Opening, solid.Opening)}{(study.Within is null ? ", no rule" : "")} | {turn} | {Off(b.Value, s.Value)}, {s.Where} | {solid.Mesh.Bricks}, {solid.Mesh.Nodes} |");
            }
        }

        Line($"\n### Smaller bricks\n");
        Line($"The longest brick allowed is half as long; in T-01 a third, because gaps beside the rods set many bricks already.\n");
        Line($"| id | bricks | opening | finer: bricks | opening | change |");
        Line($"|---|---:|---:|---:|---:|---:|");
        foreach (string id in Studies.Refined)
        {
            Answer plain = Committed.Of(Studies.Named(id)), fine = Committed.Of(Studies.Named(id), "fine");
            Line($"| {id} | {plain.Mesh.Bricks} | {plain.Opening * 1e9:F3} | {fine.Mesh.Bricks} | {fine.Opening * 1e9:F3} | {Off(fine.Opening, plain.Opening)} |");
        }

        OwnCells(Line);
        Line($"\n### Pins, washers, sleeves, points and bars, and work to one side\n");
        Line($"As `ramwright solid` draws them. CalculiX has the same coarse grid, with C3D8I bricks; the opening from two finer grids is held against the beams. Under work to one side the");
        Line($"opening is still that in the middle, and the turn, in nrad for each newton, that of the whole sections in the middle.\n");
        Line($"| id | frame | unknowns, turns of the solver | opening | CalculiX | from two grids | beams | difference |");
        Line($"|---|---|---:|---:|---:|---:|---:|---:|");
        foreach (DrawnTable.Row r in DrawnTable.Committed)
            Line($"| {r.Id} | {Drawn.All.Single(d => d.Id == r.Id).Words} | {r.Unknowns}, {r.Turns} | {r.Opening * 1e9:F4} | {r.Calculix * 1e9:F4} | {r.Limit * 1e9:F3} | {r.Beams * 1e9:F3} | {Off(r.Beams, r.Limit)} |");
        Line($"\n| id | pressed where the work stands: opening, turn | CalculiX: turn | in the middle with a moment: opening, turn | beams: opening, turn |");
        Line($"|---|---:|---:|---:|---:|");
        foreach (DrawnTable.Row r in DrawnTable.Committed.Where(r => Drawn.All.Single(d => d.Id == r.Id).Aside > 0))
            Line($"| {r.Id} | {r.Opening * 1e9:F3}, {Math.Abs(r.Turn) * 1e9:F3} | {Math.Abs(r.CalculixTurn) * 1e9:F3} | {r.ByMoment * 1e9:F3}, {Math.Abs(r.TurnByMoment) * 1e9:F3} | {r.Beams * 1e9:F3}, {r.BeamsTurn * 1e9:F3} |");

        Line($"\n### Beams on springs from solids of the joints\n");
        Line($"Each joint is cut out with a length of its members and solved by itself; what it gives beyond beams becomes the springs of the beam model. The full solid is drawn as");
        Line($"`ramwright solid` draws it: columns end with their arms but for slots, slots are joined along fillets only; so openings differ from those above.\n");
        Line($"| id | frame | full solid | grid | beams by rule | difference | beams on local springs | difference |");
        Line($"|---|---|---:|---:|---:|---:|---:|---:|");
        string[] kinds = [.. AnyFrame.Kinds.Select(k => k.Kind)];
        ILookup<string, JointTable.Row> byKind = JointTable.Committed.ToLookup(r => kinds.FirstOrDefault(k => r.Id.StartsWith(k + " ", StringComparison.Ordinal)) ?? "");
        foreach (JointTable.Row r in byKind[""])
            Line($"| {r.Id} | {Studies.Named(r.Id).Words} | {r.Solid * 1e9:F3} | ±{r.GridError * 100:F1} % | {r.Rule * 1e9:F3} | {Off(r.Rule, r.Solid)} | {r.Local * 1e9:F3} | {Off(r.Local, r.Solid)} |");
        Line($"\n### The same of frames made up at random\n");
        Line($"Spans of two depths or more, walls that belong together, bolts in steel (`AnyFrame`); each frame stands in solids-joints.csv. Without a rule: ends that stand on a box's face between its webs, and");
        Line($"boxes whose webs hang beside a bar.\n");
        Line($"| kind | frames | grid, at most | beams by rule | without a rule | beams on local springs |");
        Line($"|---|---:|---:|---:|---:|---:|");
        foreach (string kind in kinds)
        {
            JointTable.Row[] rows = [.. byKind[kind]], ruled = [.. rows.Where(r => JointTable.ByRule(r.Id) is not null)];
            string Range(IEnumerable<JointTable.Row> of, Func<JointTable.Row, double> beams) =>
                of.Any() ? $"{Off(of.Min(r => beams(r) / r.Solid), 1)} to {Off(of.Max(r => beams(r) / r.Solid), 1)}" : "";
            Line($"| {AnyFrame.Words(kind)} | {rows.Length} | ±{rows.Max(r => r.GridError) * 100:F1} % | {Range(ruled, r => r.Rule)} | {rows.Length - ruled.Length} | {Range(rows, r => r.Local)} |");
        }

        Line($"\n### Hot spots at the toes of welds\n");
        Line($"The worst toe of each frame, work in the middle: stress of the full solid carried on to the toe, and the same from the stress factors of the joint's own solid and the forces that the beams");
        Line($"on its springs pass on. Plain stress is that of the part beside the joint; MPa for 1 kN at the ram. Off by most: over all toes of the frame, as a share of its worst. An f: the same");
        Line($"frame with 6 mm throats in place of whole welds. `RAMWRIGHT_TOES=renew dotnet test tests/Ramwright.Solid.Tests --filter ToeTest` solves all again.\n");
        Line($"| id | worst toe | plain | full solid | over plain | by factors | difference | off by most |");
        Line($"|---|---|---:|---:|---:|---:|---:|---:|");
        foreach (IGrouping<string, ToeTable.Row> frame in ToeTable.Committed.GroupBy(r => r.Id))
        {
            ToeTable.Row worst = frame.MaxBy(r => r.Full)!;
            Line($"| {frame.Key} | {worst.Toe} | {worst.Plain / 1e3:F3} | {worst.Full / 1e3:F3} | {worst.Full / worst.Plain:F1} | {worst.Factors / 1e3:F3} | {Off(worst.Factors, worst.Full)} | {frame.Max(r => Math.Abs(r.Factors - r.Full)) / worst.Full * 100:F1} % |");
        }

        return page.ToString();
    }

    private static void OwnCells(Action<FormattableString> line)
    {
        line($"\n### The engine's own cells\n");
        line($"Cells of eight nodes as CalculiX's C3D8I, on four grids or five, each with cells half as long as the last; what two of them point to is twice the finer less the coarser. CalculiX ({string.Join(", ", Studies.Refined.Select(id => OwnGrids.Of(Studies.Named(id))[0].Version).Distinct())})");
        line($"on the first grid gives the same to within 1e-6. Order: the power of the cells' length with which the error falls, over the first three grids and the last three. Refined are the bricks of twenty nodes of the table above.\n");
        line($"| id | unknowns | opening | half as long | a quarter | an eighth | a sixteenth | order | from the first two | from the last two | refined | difference |");
        line($"|---|---|---:|---:|---:|---:|---:|---:|---:|---:|---:|---:|");
        foreach (string id in Studies.Refined)
        {
            IReadOnlyList<OwnGrids.Grid> g = OwnGrids.Of(Studies.Named(id));
            double refined = Committed.Of(Studies.Named(id), "fine").Opening, early = OwnGrids.Limit(g[0], g[1]), last = OwnGrids.Limit(g[^2], g[^1]);
            string openings = string.Join(" | ", Enumerable.Range(0, 5).Select(i => i < g.Count ? (g[i].Opening * 1e9).ToString("F3", CultureInfo.InvariantCulture) : ""));
            line($"| {id} | {g[0].Unknowns} to {g[^1].Unknowns} | {openings} | {OwnGrids.Order(g[0], g[1], g[2]):F2}, {OwnGrids.Order(g[^3], g[^2], g[^1]):F2} | {early * 1e9:F3} | {last * 1e9:F3} | {refined * 1e9:F3} | {Off(early, refined)}, {Off(last, refined)} |");
        }

        IReadOnlyList<GridTable.Row> rows = GridTable.Committed;
        line($"\n### How far two grids are to be trusted\n");
        line($"Frames as `ramwright solid` draws them, on its two usual grids and on finer ones: a third, and a fourth where the halvings brought about as much as one another. Shown is what two point to, with its ±;");
        line($"missed is how far that is from what all grids together point to. The ± shown is twice what the halving still brought: it held in {rows.Count(r => Math.Abs(r.Limit / r.Shown.Opening - 1) <= r.Shown.GridError)} of {rows.Count} frames, once as much in {rows.Count(r => r.Missed <= 1)}.\n");
        line($"| id | unknowns | shown | ± | missed | in halvings | first halving over second |");
        line($"|---|---|---:|---:|---:|---:|---:|");
        foreach (GridTable.Row r in rows)
            line($"| {r.Id} | {string.Join(", ", r.Grids.Select(g => g.Unknowns))} | {r.Shown.Opening * 1e9:F3} | {r.Shown.GridError * 100:F1} % | {Off(r.Limit, r.Shown.Opening)} | {r.Missed:F2} | {r.Falls:F2} |");
    }

    private static string Off(double of, double from)
    {
        double percent = Math.Round((of / from - 1) * 100, 1);
        return (percent == 0 ? "0.0" : percent.ToString("+0.0;−0.0", CultureInfo.InvariantCulture)) + " %";
    }
}
