using Ramwright.Ladders;
using Ramwright.Presses;
using Ramwright.Solid.Tests.Frames;
using Ramwright.Solids;
using Ramwright.Tests;
using Ramwright.Workings;

namespace Ramwright.Solid.Tests;

/// <summary>Hot-spot stress from a joint's own solid and the beams, against that of the full solid at the same toe.</summary>
public class ToeTest
{
    /// <summary>Frames whose factors come out further off, on the low side: faces of columns beside slots.</summary>
    private static readonly Dictionary<string, double> Wider = new() { ["slot 1"] = 0.051, ["slot 5"] = 0.056 };

    public static TheoryData<string> Ids() => [.. ToeTable.Frames.Select(f => f.Id)];

    /// <summary>As a share of the greatest stress at a toe of the frame: where others are small beside it, both are rounding of the grid.</summary>
    [Theory, MemberData(nameof(Ids))]
    public void FactorsComeNearTheFullSolid(string id)
    {
        ToeTable.Row[] rows = [.. ToeTable.Committed.Where(r => r.Id == id)];
        double most = rows.Max(r => r.Full), within = Wider.GetValueOrDefault(id, 0.05);

        Assert.True(rows.Length >= 2, $"{rows.Length} toes");
        Assert.All(rows, r => Near.Absolute(r.Full / most, r.Factors / most, within, $"{id}, {r.Toe}, of the worst toe"));
        Near.Relative(most, rows.Max(r => r.Factors), within, $"{id}, the worst toe");
    }

    [Theory, InlineData("C-02"), InlineData("O-10"), InlineData("O-09f")]
    public void StillDo(string id)
    {
        foreach (ToeTable.Row now in ToeTable.Of(id, ToeTable.Frames.Single(f => f.Id == id).Frame, 0.016))
        {
            ToeTable.Row then = ToeTable.Committed.Single(r => r.Id == id && r.Toe == now.Toe);
            Near.Relative(then.Factors, now.Factors, 0.01, $"{id}, {now.Toe}");
        }
    }

    /// <summary>
    /// The rungs' own stress with work off to the side and to the front, against the full solid's cases, at the worst toe of each joint: bending square to the frame is estimated,
    /// so it may be well above, but not below.
    /// </summary>
    [Theory, InlineData("C-02"), InlineData("C-06"), InlineData("C-16"), InlineData("O-10"), InlineData("O-09f"), InlineData("O-01")]
    public void TheRungCoversWorkOffCentre(string id)
    {
        Rig rig = Rigs.With(ToeTable.Frames.Single(f => f.Id == id).Frame);
        rig = rig with { Loading = rig.Loading with { Across = 0.02, Deep = 0.01, Squeezes = 20_000, AllowedOpening = 1e-3 } };
        SolidCheck solid = SolidCheck.Of(rig, all: true);
        PressCheck check = PressCheck.Of(rig with { Springs = solid.Springs });
        foreach (bool upper in (bool[])[true, false])
        {
            double full = solid.Cases.SelectMany(c => c.HotSpots).Where(h => ToeTable.IsUpper(h.Toe, rig.Frame) == upper).Max(h => Math.Abs(h.Stress));
            double rung = check.Ladder.Rungs.Where(r => HotSpotRungs.ByPlainStress(r.Id) is not null && IsUpper(r) == upper).Max(Stress);
            Assert.InRange(rung / full, 1.0, 1.55);
        }

        static bool IsUpper(Rung rung) => rung.Id.StartsWith("crown", StringComparison.Ordinal) || rung.Id.StartsWith("upper", StringComparison.Ordinal);
    }

    /// <summary>Work in the middle only: the rung is what its factors come to.</summary>
    [Theory, InlineData("C-07"), InlineData("O-13f")]
    public void TheRungOfWorkInTheMiddleIsTheTables(string id)
    {
        Rig rig = Rigs.With(ToeTable.Frames.Single(f => f.Id == id).Frame);
        rig = rig with { Loading = rig.Loading with { Across = 0, Deep = 0, SideLoad = 0, Squeezes = 20_000, AllowedOpening = 1e-3 } };
        PressCheck check = PressCheck.Of(rig with { Springs = new JointBook().Of(rig) });
        Rung[] rungs = [.. check.Ladder.Rungs.Where(r => HotSpotRungs.ByPlainStress(r.Id) is not null)];

        Assert.Equal(4, rungs.Length);
        foreach (bool onBeam in (bool[])[true, false])
            Near.Relative(ToeTable.Committed.Where(r => r.Id == id && r.Toe.Contains(onBeam ? "beam" : "upright", StringComparison.Ordinal)).Max(r => r.Factors),
                rungs.Where(r => r.Id.Contains("-toe-", StringComparison.Ordinal) == (onBeam != ToeTable.IsOver(rig.Frame))).Max(Stress), 0.01, $"{id}, {(onBeam ? "beam" : "upright")}");
    }

    private static double Stress(Rung rung)
    {
        var w = new Working();
        rung.Work(w);
        return w.Steps.Single(s => s.Symbol == "Δσ_1").Si;
    }

    /// <summary>Solves all frames again: <c>RAMWRIGHT_TOES=renew dotnet test tests/Ramwright.Solid.Tests --filter ToeTest</c>, a matter of minutes.</summary>
    [AskedFact("RAMWRIGHT_TOES")]
    public void SolvesAllWhenAsked() => ToeTable.Renew();
}
