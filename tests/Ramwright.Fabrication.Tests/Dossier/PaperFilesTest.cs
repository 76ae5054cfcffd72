using System.Globalization;
using System.Text;
using System.Text.Json;
using Ramwright.Files;
using Ramwright.Files.Dossier;
using Ramwright.Files.Making;
using Ramwright.Ladders;
using Ramwright.Quantities;

namespace Ramwright.Tests.Dossier;

public class PaperFilesTest
{
    private static MakeOf Of(string example, params (string, string)[] changes)
    {
        PressOnDisk press = Tests.Presses.Open(example, changes);
        return new MakeOf(press, PressCheck.Of(press.Rig!), press.Reading.Units) { Day = new DateOnly(2026, 11, 28) };
    }

    private static List<List<string>> Rows(OutFile file)
    {
        var rows = new List<List<string>>();
        var row = new List<string>();
        var cell = new StringBuilder();
        bool quoted = false;
        foreach (char c in Encoding.UTF8.GetString(file.Bytes))
        {
            if (c == '"')
                quoted = !quoted;
            else if (c == ',' && !quoted)
            {
                row.Add(cell.ToString());
                cell.Clear();
            }
            else if (c == '\n' && !quoted)
            {
                row.Add(cell.ToString());
                cell.Clear();
                rows.Add(row);
                row = [];
            }
            else
                cell.Append(c);
        }

        return rows;
    }

    [Fact]
    public void EveryTableHasAsManyCellsInEachRowAsInItsHead()
    {
        OutFile[] files = [.. PaperFiles.Make(Of("railing-shop", Tests.Presses.ArmsOf("S355")))];
        Assert.Equal(["dossier.pdf", "dossier.html", "weld-plan.csv", "drilling.csv", "costs.csv", "circuit.svg", "rating-plate.svg", "rating-plate.dxf", "rating-plate.pdf", "gauge-chart.svg", "gauge-chart.pdf"], files.Select(f => f.Name));
        foreach (OutFile table in files.Where(f => f.Name.EndsWith(".csv", StringComparison.Ordinal)))
        {
            List<List<string>> rows = Rows(table);
            Assert.True(rows.Count > 1, table.Name);
            Assert.All(rows, r => Assert.Equal(rows[0].Count, r.Count));
        }
    }

    [Fact]
    public void TheTablesAddUpToThePlans()
    {
        MakeOf of = Of("railing-shop", [.. Tests.Presses.ArmsOf("S355"), ("jobs:\n", "costs: { currency: crowns, steel-per-kg: 2, filler-per-kg: 8, an-hour: 30 }\njobs:\n")]);
        var papers = new Papers(of);
        OutFile[] files = [.. PaperFiles.Make(of)];
        double Number(string cell) => double.Parse(cell, CultureInfo.InvariantCulture);

        List<List<string>> welds = Rows(files.First(f => f.Name == "weld-plan.csv"));
        int filler = welds[0].IndexOf("filler kg");
        Near.Absolute(papers.Welds.Filler, welds.Skip(1).Sum(r => Number(r[filler])), 0.0015 * welds.Count);

        List<List<string>> costs = Rows(files.First(f => f.Name == "costs.csv"));
        int total = costs[0].IndexOf("total");
        double lines = costs.Skip(1).Where(r => r[0] != "sum" && r[total].Length > 0).Sum(r => Number(r[total]));
        Near.Absolute(lines, Number(costs[^1][total]), 0.001 * costs.Count);
        Assert.All(costs.Skip(1), r => Assert.Equal("crowns", r[costs[0].IndexOf("currency")]));
    }

    [Fact]
    public void TheJsonSaysTheSame()
    {
        MakeOf of = Of("railing-shop", Tests.Presses.ArmsOf("S355"));
        var papers = new Papers(of);
        using JsonDocument json = JsonDocument.Parse(MakeJson.Text(of, []));
        JsonElement root = json.RootElement;
        Assert.Equal(papers.Welds.Lines.Count, root.GetProperty("welds").GetArrayLength());
        JsonElement first = root.GetProperty("welds")[0];
        Near.Relative(papers.Welds.Lines[0].Preheating.Temperature!.Value, first.GetProperty("preheatC").GetDouble(), 1e-9);
        Assert.Equal("preheat", first.GetProperty("advice").GetString());
        Assert.Equal(papers.Drilling.Bolts.Count, root.GetProperty("bolts").GetArrayLength());
        Assert.Equal(papers.Circuit.Components.Count, root.GetProperty("circuit").GetArrayLength());
        Assert.Equal(papers.Costs.WithoutPrice.Count, root.GetProperty("costs").GetProperty("withoutPrice").GetInt32());
    }

    [Fact]
    public void APressWithNothingWeldedHasNoWeldPlanFile() =>
        Assert.DoesNotContain(PaperFiles.Make(Of("wherry-yard")), f => f.Name == "weld-plan.csv");

    [Fact]
    public void WithoutADayThePapersLeaveRoomForIt()
    {
        PressOnDisk press = Tests.Presses.Open("salvage");
        var papers = new Papers(new MakeOf(press, PressCheck.Of(press.Rig!), UnitSystem.Imperial));
        Assert.Contains("date: ____", papers.Stamp, StringComparison.Ordinal);
        Assert.NotEmpty(PdfBook.Write(DossierBook.Of(papers), null));
    }
}
