using System.Diagnostics;
using Ramwright.Fabrication.Nesting;
using Ramwright.Files;
using Ramwright.Files.Making;
using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Tests.Fabrication.Nesting;

namespace Ramwright.Tests.Fabrication.Making;

/// <summary>Whatever a press file may say, all its files can be made: presses made up at random, their own parts, sheets and bars among them.</summary>
public class MadeUpFilesTest
{
    [Fact]
    public void EveryPressThatCanBeCheckedCanBeMade()
    {
        int made = 0, nests = 0;
        var watch = Stopwatch.StartNew();
        for (uint seed = 1; seed <= Seeds && (watch.Elapsed < TimeSpan.FromSeconds(40) || made <= 20); seed++)
        {
            string text = MadeUpPress.Text(new MadeUpPress(seed, StockTables.Built).ThatCouldBe());
            CheckedPress press = CheckedPress.Of(PressOnDisk.Read(text, "made-up.press.yaml", "made up"));
            if (press.Check is not { } check)
                continue;
            try
            {
                var of = new MakeOf(press.Press, check, seed % 2 == 0 ? UnitSystem.Metric : UnitSystem.Imperial);
                IReadOnlyList<OutFile> files = Makers.Files(of);
                Assert.NotEmpty(MakeJson.Text(of, files));
                Assert.DoesNotContain("NaN", MakeJson.Text(of, files), StringComparison.Ordinal);
                // sheets of a made-up press seldom are as thick as its plates: let them be
                RigSheet[] sheets = [.. of.Rig.Sheets.Zip(of.Parts.Plates, (s, p) => s with { Thickness = p.Thickness, Steel = p.Steel ?? s.Steel })];
                // most list none at all: one to be bought is made up for the first plate
                if (sheets.Length == 0 && of.Parts.Plates.FirstOrDefault() is { } first)
                    sheets = [Puzzle.Sheet(3, 1.5, 0, buy: true) with { Thickness = first.Thickness, Steel = first.Steel ?? Puzzle.S275 }];
                foreach (NestGroup group in NestPlan.Of(of.Parts, of.Rig with { Sheets = sheets }, new NestEffort(2)).Groups)
                {
                    Apart.Holds(group, of.Rig.Cutting.PartGap, of.Rig.Cutting.EdgeGap);
                    nests += group.Nests.Count;
                }

                Assert.Equal(of.Parts.Plates.Sum(p => p.Count), of.Nests.Groups.Sum(g => g.Nests.Sum(n => n.Parts.Count) + g.Without.Sum(w => w.Count)));
                Assert.Equal(of.Parts.Lengths.Sum(l => l.Count), of.Bars.Groups.Sum(g => g.Bars.Sum(b => b.Pieces.Count) + g.Without.Sum(w => w.Count)));
                made++;
            }
            catch (Exception e) when (e is not Xunit.Sdk.XunitException)
            {
                Assert.Fail($"seed {seed}: {e}\n{text}");
            }
        }

        Assert.True(made > 20 && nests > 0, $"only {made} presses were made, {nests} sheets cut");
    }

    private const uint Seeds = 200;
}
