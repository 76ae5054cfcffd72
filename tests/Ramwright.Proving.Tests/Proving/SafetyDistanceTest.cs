using Ramwright.Presses;
using Ramwright.Proving;
using Ramwright.Workings;

namespace Ramwright.Tests.Proving;

public class SafetyDistanceTest
{
    [Fact]
    public void TwoHandControl()
    {
        var row = new Reference("UP-15", "EN ISO 13855:2010, clause 8: S = 1600 T + 250", Trust.FromMemoryAndRecomputed);
        var w = new Working();
        row.Within("T 0.25 s, mm", 650, SafetyDistance.TwoHand(0.25, w: w) * 1e3, 1e-9);
        row.Within("shrouded, never below 100 mm", 100, SafetyDistance.TwoHand(0.03, shrouded: true) * 1e3, 1e-9);
        WorkingCheck.Holds(w);
    }

    [Theory]
    [InlineData("UP-16", 0.15, 30, 428)]
    [InlineData("UP-17", 0.20, 30, 500)]
    [InlineData("UP-18", 0.32, 14, 512)]
    public void LightCurtain(string id, double T, double d, double S)
    {
        var row = new Reference(id, "EN ISO 13855:2010 as in product manuals", Trust.FoundAndRecomputed);
        var w = new Working();
        row.Within($"T {T} s, d {d} mm: S, mm", S, SafetyDistance.Curtain(T, d / 1e3, w) * 1e3, 0.01);
        WorkingCheck.Holds(w);
    }

    [Fact]
    public void Beams()
    {
        var row = new Reference("UP-19", "EN ISO 13855:2010", Trust.FoundAndRecomputed);
        row.Within("several beams, T 0.30 s, mm", 1330, SafetyDistance.Beams(0.30, 3) * 1e3, 1e-9);
        row.Within("one beam, mm", 1680, SafetyDistance.Beams(0.30, 1) * 1e3, 1e-9);
    }

    [Fact]
    public void AFastRamWithoutAGuardIsCautioned()
    {
        var row = new Reference("UP-20", "EN ISO 16092-3:2018: hold-to-run up to 10 mm/s", Trust.FromMemory);
        const string Guard = "guard: { kind: light-curtain, stop-time: 0.2 s, resolution: 30 mm }\n", Gauge = "gauge: { range: 400 bar, class: 1.6 }";
        var fast = ProvedPress.Press("wherry-yard");
        Assert.True(fast.Power.ApproachSpeed > 0.010);
        row.Exactly("25 mm/s, nothing but the operator's hold", true, TestPlan.Of(fast).Stand[0].Contains("10 mm/s", StringComparison.Ordinal));
        row.Exactly("the same behind a light curtain", false, TestPlan.Of(ProvedPress.Press("wherry-yard", Gauge, Guard + Gauge)).Stand[0].Contains("10 mm/s", StringComparison.Ordinal));
        var slow = ProvedPress.Press("railing-shop");
        row.Exactly("a slow air pump", slow.Power.ApproachSpeed > 0.010, TestPlan.Of(slow).Stand[0].Contains("10 mm/s", StringComparison.Ordinal));
    }

    [Fact]
    public void ACurtainTooCoarseIsRefused() => Assert.Throws<ArgumentOutOfRangeException>(() => SafetyDistance.Curtain(0.2, 0.05));

    [Fact]
    public void AGuardInThePressFileGivesItsDistance()
    {
        var check = ProvedPress.Press("wherry-yard", "gauge: { range: 400 bar, class: 1.6 }", "gauge: { range: 400 bar, class: 1.6 }\nguard: { kind: two-hand, stop-time: 0.25 s }");
        SafetyDistance distance = Assert.Single(TestPlan.Of(check).Distances);
        Near.Relative(0.650, distance.S, 1e-12, "S");
        Assert.IsType<RigTwoHandControl>(check.Rig.Guard);
        Assert.Empty(TestPlan.Of(ProvedPress.Press("wherry-yard")).Distances);
    }
}
