using Ramwright.FaultFinding;
using Ramwright.Files;
using Ramwright.Files.Readings;
using Ramwright.Frame;
using Ramwright.Ladders;
using Ramwright.Presses;
using Ramwright.Proving;
using Ramwright.Quantities;

namespace Ramwright.Tests.Proving;

/// <summary>Whatever press can be checked can be proved: a plan with numbers, no step beyond what breaks a part, a search for its faults.</summary>
public class AnyPressProvedTest
{
    [Fact]
    public void EveryPressThatCanBeCheckedHasAPlan()
    {
        int proved = 0;
        for (uint seed = 1; seed <= 220; seed++)
        {
            if (Checked(seed) is not { } check)
                continue;
            proved++;
            try
            {
                Proved(check, seed);
            }
            catch (Exception e) when (e is not Xunit.Sdk.XunitException)
            {
                Assert.Fail($"seed {seed}: {e}");
            }
        }

        Assert.True(proved > 30, $"only {proved} presses were proved");
    }

    private static void Proved(PressCheck check, uint seed)
    {
        UnitSystem units = seed % 2 == 0 ? UnitSystem.Metric : UnitSystem.Imperial;
        var proof = new Proof(check, ReadingLog.Read("2026-05-09 W top-pressure 100 bar\n2026-05-09 W dial 0.1 mm at=opening pressure=50 bar\n", "x"), units, new DateOnly(2026, 9, 1));
        string text = ProveJson.Text(proof) + PlanSheet.Html(proof) + Certificate.Html(proof);
        Assert.True(!text.Contains("NaN", StringComparison.Ordinal) && !text.Contains("Infinity", StringComparison.Ordinal) && !text.Contains('∞'), $"seed {seed}");
        foreach (Rung rung in check.Ladder.Rungs.Where(r => r.MustSurvive))
            Assert.All(proof.Plan.Steps, s => Assert.True(s.Thrust <= rung.GivesAt * rung.PressureScale / 1.1 * (1 + 1e-9), $"seed {seed}: {rung.Id}"));

        FaultSearch faults = FaultSearch.Of(check.Rig, FaultFiles.Built, [new Seen("low-pressure", true)]);
        Assert.NotEmpty(faults.Tests);
        Assert.NotEmpty(ModelChange.Of(check.Response));
    }

    private static PressCheck? Checked(uint seed)
    {
        Press press = new MadeUpPress(seed, StockTables.Built).ThatCouldBe();
        if (PressRules.Of(press, StockTables.Built).Any())
            return null;
        try
        {
            return PressCheck.Of(Resolver.Resolve(press, StockTables.Built));
        }
        catch (Exception refused) when (refused is PressFaultsException or FrameMovesException or ArgumentException)
        {
            return null;        // what cannot be built is refused elsewhere
        }
    }
}
