using CsCheck;
using Ramwright.Files;
using Ramwright.Ladders;
using Ramwright.Presses;
using Ramwright.Stock;
using Ramwright.Workings;

namespace Ramwright.Tests.Ladders;

public class FatigueRungsTest
{
    private static readonly Shelf Shelf = StockTables.Built;

    public static TheoryData<string> Joints() =>
    [
        "kind: weld, weld: { leg: 8 mm }",
        "kind: weld, weld: { kind: butt }",
        "kind: weld, fit: over, weld: { leg: 8 mm }",
        "kind: bolt, fit: between, thread: M36, class: 8.8, count: 4, pitch: 200 mm, gauge: 160 mm",
    ];

    private static PressCheck Check(string joint, double squeezes, string more = "", string wanted = "10 t") => Read($$"""
        wanted: {{wanted}}
        cylinder: { kind: double-acting, bore: 100 mm }
        pump: { kind: electric, motor: 2.2 kW }
        frame:
          kind: closed
          daylight: 600 mm
          width: 500 mm
          steel: S275
          section: HEB 160
          crown: { openings: [{ through: web, width: 30 mm }] }
          crown-joint: { {{joint}} }
          bed-joint: { {{joint}} }
        loading: { squeezes: {{squeezes:0}}{{more}} }
        """);

    private static PressCheck Read(string yaml)
    {
        PressReading reading = PressFile.Read(yaml, "test.press.yaml", Shelf);
        Assert.True(reading.Faults.Count == 0, FaultText.All(reading.Faults));
        return PressCheck.Of(Resolver.Resolve(reading.Press!, Shelf));
    }

    private static Rung[] Cracks(PressCheck check) => [.. check.Ladder.Rungs.Where(r => r.Fatigue is not null)];

    [Theory, MemberData(nameof(Joints))]
    public void WorkingFollowsFromItsText(string joint)
    {
        foreach (double squeezes in (double[])[100, 20_000, 2e7])
        {
            foreach (Rung rung in Cracks(Check(joint, squeezes)))
            {
                var w = new Working();
                rung.Work(w);
                WorkingCheck.Holds(w);
                Assert.Contains(w.Steps, s => Math.Abs(s.Si - rung.SafeTo) <= 1e-9 * rung.SafeTo);
            }
        }
    }

    [Theory, MemberData(nameof(Joints))]
    public void MoreSqueezesNeverRaiseARung(string joint)
    {
        Rung[] few = Cracks(Check(joint, 1000));
        foreach (double squeezes in (double[])[1e4, 1e5, 1e6, 1e7, 9e8])
        {
            Rung[] many = Cracks(Check(joint, squeezes));
            Assert.Equal(few.Select(r => r.Id).Order(), many.Select(r => r.Id).Order());
            foreach (Rung rung in many)
                Assert.True(rung.SafeTo <= few.Single(r => r.Id == rung.Id).SafeTo * (1 + 1e-12), rung.Id);
            few = many;
        }
    }

    [Theory, MemberData(nameof(Joints))]
    public void TheSqueezesAgreeWithTheLadder(string joint)
    {
        foreach (string wanted in (string[])["2 t", "10 t", "25 t", "60 t"])
        {
            PressCheck check = Check(joint, 20_000, wanted: wanted);
            bool all = Cracks(check).All(r => r.SafeTo >= check.Rig.Wanted);
            double least = check.SqueezesUntilInspection!.Squeezes ?? double.PositiveInfinity;

            Assert.Equal(all, least >= 20_000 * (1 - 1e-9));
            Assert.Equal(least, Cracks(check).Min(r => r.Fatigue!.Squeezes ?? double.PositiveInfinity));
        }
    }

    [Fact]
    public void EachWeakSpotHasItsRung()
    {
        Assert.Subset(
            Ids(Check("kind: weld, weld: { leg: 8 mm }", 2e4)),
            new HashSet<string> { "crown-fatigue", "crown-openings-fatigue", "upright-fatigue", "crown-root-fatigue", "crown-toe-fatigue", "crown-face-fatigue" });
        HashSet<string> butt = Ids(Check("kind: weld, weld: { kind: butt }", 2e4));
        Assert.DoesNotContain("crown-root-fatigue", butt);
        Assert.Contains("crown-toe-fatigue", butt);
        Assert.Subset(Ids(Check("kind: bolt, fit: between, thread: M36, class: 8.8, count: 4, pitch: 200 mm, gauge: 160 mm", 2e4)),
            new HashSet<string> { "crown-bolt-fatigue", "crown-thread-fatigue" });

        static HashSet<string> Ids(PressCheck check) => [.. Cracks(check).Select(r => r.Id)];
    }

    [Fact]
    public void PinsAndTheirHolesHaveRungs()
    {
        PressCheck check = Read("""
            wanted: 10 t
            cylinder: { kind: double-acting, bore: 100 mm }
            pump: { kind: electric, motor: 2.2 kW }
            frame:
              kind: closed
              daylight: 600 mm
              width: 500 mm
              steel: S275
              crown: { section: 2 x UPN 200, apart: 160 mm }
              bed: { section: 2 x UPN 200, apart: 160 mm }
              upright: { section: HEB 160 }
              crown-joint: { kind: pin, diameter: 50 mm, steel: C45+QT }
              bed-joint: { kind: weld, fit: lapped, weld: { leg: 8 mm } }
            loading: { squeezes: 50000, squeezes-a-day: 25 }
            """);

        Rung pin = check.Ladder.Rungs.Single(r => r.Id == "crown-pin-fatigue");
        double tau = 100e6 * Math.Pow(2e6 / 5e4, 0.2) / 1.35, share = 1 / pin.SafeTo * tau * 2 * Math.PI / 4 * 0.05 * 0.05;
        Assert.InRange(share, 0.5, 1);      // half of the ram force on each side, more for work off centre
        Assert.Contains(check.Ladder.Rungs, r => r.Id == "upright-holes-fatigue");
        Assert.Contains(check.Ladder.Rungs, r => r.Id == "bed-toe-fatigue" && r.Source.Clause.Contains("detail 5"));
        Assert.Equal(25, check.Rig.Loading.SqueezesADay);
        foreach (Rung rung in Cracks(check))
        {
            var w = new Working();
            rung.Work(w);
            WorkingCheck.Holds(w);
        }
    }

    [Fact]
    public void CracksAreJudgedAgainstTheWantedForceOnly() =>
        Assert.All(Cracks(Check("kind: weld, weld: { leg: 8 mm }", 2e4)), r => Assert.False(r.MustSurvive));

    [Fact]
    public void AThickerFilletNeverCracksSooner()
    {
        double before = 0;
        foreach (int leg in (int[])[5, 6, 8, 10, 12])
        {
            double safe = Check($"kind: weld, weld: {{ leg: {leg} mm }}", 2e4).Ladder.Rungs.Single(r => r.Id == "crown-root-fatigue").SafeTo;
            Assert.True(safe > before);
            before = safe;
        }
    }

    [Fact]
    public void WhatIsNotSaidIsAssumedOpenly()
    {
        PressCheck check = Read("""
            wanted: 20 t
            cylinder: { kind: double-acting, bore: 100 mm }
            pump: { kind: electric, motor: 3 hp }
            frame: { kind: closed, daylight: 600 mm, width: 500 mm, section: HEB 160 }
            """);

        foreach (string key in (string[])["loading.squeezes", "factors.fatigue", "factors.fatigue-load"])
            Assert.Contains(check.Rig.Assumed, a => a.What == key);
        Assert.Equal(20_000, check.Rig.Loading.Squeezes);
    }

    [Fact]
    public void SnapThroughIsThatOfThePressesOwnFrameAndOil()
    {
        PressCheck check = Check("kind: weld, weld: { leg: 8 mm }", 2e4);
        double atTrue = check.Power.OilEnergy * Math.Pow(check.Power.MostPossiblePressure / check.Power.TruePressure, 2);

        Near.Relative(atTrue, check.SnapThrough.InOil, 1e-9, "oil, at the most possible pressure");
        Near.Relative(Math.Pow(check.Power.MostPossibleForce, 2) / 2 / check.Response.Stiffness, check.SnapThrough.InFrame, 1e-9, "frame");
    }
}
