using System.Globalization;
using System.Text;
using Ramwright.Fabrication.Bars;

namespace Ramwright.Files.Making;

/// <summary>What is sawn from which bar, as a table: millimetres.</summary>
public static class BarFiles
{
    /// <summary>Makes <c>bars.csv</c>.</summary>
    public static IEnumerable<OutFile> Make(MakeOf of)
    {
        ArgumentNullException.ThrowIfNull(of);
        if (of.Bars.Groups.Count > 0)
            yield return OutFile.OfText("bars.csv", Csv(of.Bars));
    }

    private static string Csv(BarPlan plan)
    {
        var text = new StringBuilder("bar,section,steel,bar length mm,bought,cut in this order,left mm\n");
        int number = 0;
        foreach (BarGroup group in plan.Groups)
        {
            foreach (SawnBar bar in group.Bars)
            {
                number++;
                string[] cells = [Number(number), group.Section.Name, bar.Bar.Steel.Name, Mm(bar.Bar.Length), bar.Bar.Buy ? "yes" : "no", Pieces(bar), Mm(bar.Left)];
                text.AppendJoin(',', cells.Select(PartFiles.Quoted)).Append('\n');
            }

            foreach ((Fabrication.LengthPart part, int count) in group.Without)
            {
                string[] cells = ["none", group.Section.Name, group.Steel?.Name ?? "", "", "", $"{count} x {part.Mark} {Mm(part.Length)}: no bar is left that is long enough", ""];
                text.AppendJoin(',', cells.Select(PartFiles.Quoted)).Append('\n');
            }
        }

        return text.ToString();
    }

    /// <summary>What is sawn from a bar, in words: <c>2 x L1 970, 1 x L3 400</c>.</summary>
    public static string Pieces(SawnBar bar)
    {
        ArgumentNullException.ThrowIfNull(bar);
        return string.Join("; ", bar.Pieces.GroupBy(p => p.Mark).Select(g => $"{g.Count()} x {g.Key} {Mm(g.First().Length)}"));
    }

    private static string Mm(double metres) => Number(Math.Round(metres * 1000, 1));

    private static string Number(double value) => value.ToString(CultureInfo.InvariantCulture);
}
