using Ramwright.Files;
using Ramwright.Ladders;
using Ramwright.Presses;
using Ramwright.Stock;
using Ramwright.Workings;

namespace Ramwright.Tests.Ladders;

/// <summary>What holds the cylinder, what hangs on the ram, what carries a pull.</summary>
public class FittingRungsTest
{
    private const string Flange = "mount: { kind: flange, thread: M20, class: 8.8, count: 8, circle: 170 mm, outside: 220 mm, plate: 18 mm, steel: S355, engagement: 20 mm }";
    private const string Foot = "mount: { kind: foot, outside: 120 mm, hole: 40 mm, plate: 40 mm, width: 200 mm, span: 160 mm, steel: S275 }";
    private const string Cradle = "mount: { kind: cradle, cheek: 20 mm, cheek-width: 160 mm, cheek-hole: 30 mm, apart: 130 mm, cross: 40 mm, hole: 60 mm, seat: 120 mm, steel: S275, weld: { leg: 10 mm } }";
    private const string Bracket = "mount: { kind: bracket, carries: pull, plate: 20 mm, width: 150 mm, reach: 60 mm, thread: M16, class: 8.8, count: 2, steel: S275, engagement: 16 mm }";
    private const string Collar = "mount: { kind: threaded-collar, thread: M120x3, engagement: 30 mm, plate: 40 mm, width: 240 mm, span: 180 mm, steel: S275 }";

    private const string Ram = """
        ram:
          die-holder: { thread: M16, class: 8.8, count: 4, engagement: 14 mm, face: 60 mm, set-screw: M12, set-screws: 2 }
          anti-twist: { length: 160 mm, depth: 12 mm, height: 40 mm, steel: S235, twist: 2 mm, weld: { leg: 5 mm }, guide-depth: 15 mm, guide-width: 40 mm, guide-span: 400 mm }
          saddle: { diameter: 45 mm, hole: 20 mm, steel: C45+QT }
        """;

    private const string Pull = """
        pull:
          thread: M36
          class: 8.8
          nut: 30 mm
          nut-steel: S355
          washer: { thickness: 20 mm, steel: S355 }
          chair: { legs: 4, section: SHS 50x5, length: 250 mm, plate: 30 mm, circle: 200 mm, hole: 60 mm, steel: S235 }
          coupler: { engagement: 36 mm, outside: 60 mm, steel: S355 }
        """;

    private static string Press(string mount = "", string more = "", string cylinder = "kind: double-acting, bore: 100 mm, rod: 56 mm, stroke: 250 mm, barrel-outside: 120 mm") => $$"""
        wanted: 10 t
        cylinder: { {{cylinder}}{{(mount.Length > 0 ? ", " + mount : "")}} }
        pump: { kind: electric, motor: 2.2 kW }
        frame: { kind: closed, daylight: 600 mm, width: 600 mm, steel: S275, section: HEB 200 }
        {{more}}
        """;

    private const string Hollow = "kind: hollow-plunger, bore: 110 mm, rod: 95 mm, centre-tube: 60 mm, hole: 54 mm, stroke: 75 mm, barrel-outside: 150 mm, rated-pressure: 700 bar";

    private static PressCheck Check(string yaml)
    {
        PressReading reading = PressFile.Read(yaml, "test.press.yaml", StockTables.Built);
        Assert.True(reading.Faults.Count == 0, FaultText.All(reading.Faults));
        return PressCheck.Of(Resolver.Resolve(reading.Press!, StockTables.Built));
    }

    private static IReadOnlyList<string> Ids(PressCheck check) => [.. check.Ladder.Rungs.Select(r => r.Id).Order(StringComparer.Ordinal)];

    private static Rung Rung(PressCheck check, string id) => check.Ladder.Rungs.Single(r => r.Id == id);

    public static TheoryData<string, string> EveryKind() => new()
    {
        { Press(Flange), "mount-bolt-pull mount-flange mount-thread" },
        { Press(Flange.Replace("flange,", "flange, carries: pull,")), "mount-bolt-pull mount-flange mount-thread" },
        { Press(Foot), "mount-bearing mount-plate" },
        { Press("mount: { kind: foot }"), "mount-bearing" },
        { Press(Cradle), "mount-cross-plate mount-cheek mount-weld" },
        { Press(Bracket), "mount-bend mount-bolt-prying mount-thread" },
        { Press(Bracket.Replace("carries: pull", "carries: thrust")), "mount-bend mount-bolt-prying mount-thread" },
        { Press(Collar), "mount-thread mount-plate" },
        { Press("mount: { kind: threaded-collar, diameter: 3-5/16 in, pitch: 2.117 mm, plate: 40 mm }"), "mount-thread" },
        { Press("", Ram), "die-holder-screws die-holder-thread die-holder-set-screws anti-twist-arm anti-twist-weld anti-twist-guide saddle-bearing" },
        { Press("", Pull, Hollow), "pull-rod pull-nut pull-washer pull-washer-bearing pull-coupler-thread pull-coupler pull-chair-legs pull-chair-plate" },
        { Press("", Pull.Replace("class: 8.8", "steel: C45+QT"), Hollow), "pull-rod pull-nut pull-coupler-thread" },
        { Press("", "loading: { off-centre-across: 20 mm, off-centre-deep: 10 mm, side-load: 3 % }"), "rod-bending gland-side-load" },
    };

    [Theory, MemberData(nameof(EveryKind))]
    public void EveryPartHasItsRungAndItsWorkingHolds(string yaml, string ids)
    {
        PressCheck check = Check(yaml);
        IReadOnlyList<string> before = Ids(Check(Press(cylinder: yaml.Contains("hollow") ? Hollow : "kind: double-acting, bore: 100 mm, rod: 56 mm, stroke: 250 mm, barrel-outside: 120 mm")));

        Assert.All(ids.Split(' '), id => Assert.Contains(id, Ids(check)));
        foreach (Rung rung in check.Ladder.Rungs)
        {
            if (before.Contains(rung.Id) && !ids.Contains(rung.Id))
                continue;
            var w = new Working();
            rung.Work(w);
            WorkingCheck.Holds(w);
            Assert.Contains(w.Steps, s => Math.Abs(s.Si - rung.SafeTo) <= 1e-9 * rung.SafeTo);
            Assert.Contains(w.Steps, s => Math.Abs(s.Si - rung.GivesAt) <= 1e-9 * rung.GivesAt);
            Assert.NotEmpty(rung.Saying);
        }
    }

    [Fact]
    public void WhatIsNotSaidHasNoRung()
    {
        PressCheck check = Check(Press());

        Assert.DoesNotContain(Ids(check), id => id.StartsWith("mount", StringComparison.Ordinal) || id.StartsWith("pull", StringComparison.Ordinal)
            || id.StartsWith("die-holder", StringComparison.Ordinal) || id.StartsWith("anti-twist", StringComparison.Ordinal));
        Assert.Single(check.Cautions(), c => c.Contains("How the cylinder is held is not described"));
        Assert.DoesNotContain(Check(Press(Foot)).Cautions(), c => c.Contains("How the cylinder is held is not described"));
    }

    [Fact]
    public void AFlangeOverTheCrownHangsOnItsBolts()
    {
        // guided: no moment, so the eight bolts share the thrust alike
        string guided = "kind: double-acting, bore: 100 mm, rod: 56 mm, stroke: 250 mm, barrel-outside: 120 mm, guide: guided";
        Rung thrust = Rung(Check(Press(Flange, "", guided)), "mount-bolt-pull");
        Rung pull = Rung(Check(Press(Flange.Replace("flange,", "flange, carries: pull,"), "", guided)), "mount-bolt-pull");

        new Reference("P-11", "8 M20 8.8 of EN 1993-1-8 table 3.4 (F-21, 141.1 kN each) under the whole thrust, load factor 1.5", Trust.OwnNumbers)
            .Near("safe to, kN", 8 * 141.1 / 1.5, thrust.SafeTo / 1e3, 0.003);
        // in the return only the ring around the rod pulls: (100² − 56²)/100²
        Near.Relative(1 - 0.56 * 0.56, thrust.SafeTo / pull.SafeTo, 1e-9);
    }

    [Fact]
    public void AFlangeIsNamedOnlyWhereItGivesBeforeItsBolts()
    {
        Assert.DoesNotContain("mount-flange", Ids(Check(Press(Flange.Replace("plate: 18 mm", "plate: 60 mm")))));
        PressCheck thin = Check(Press(Flange.Replace("plate: 18 mm", "plate: 8 mm"))), thick = Check(Press(Flange));
        Assert.Contains("bends between bolts and barrel", Rung(thin, "mount-flange").Mode);
        Assert.Contains("prises its bolts apart", Rung(thick, "mount-flange").Mode);
        Assert.True(Rung(thick, "mount-flange").SafeTo < Rung(thick, "mount-bolt-pull").SafeTo);
    }

    [Fact]
    public void TiltPullsOneSideOfTheFlangeMore()
    {
        double Safe(string loading) => Rung(Check(Press(Flange, loading)), "mount-bolt-pull").SafeTo;

        // P/n + e R/(Σ z²), Σ z² = n R²/2: 1/8 + 0.03 · 2/(8 · 0.085)
        double centred = 1 / 8.0, tilted = centred + 0.03 * 2 / (8 * 0.085);
        new Reference("P-12", "ring of bolts under force and moment: P/n + 2 M/(n R)", Trust.Recomputed)
            .Near("ratio", tilted / centred, Safe("loading: { off-centre-across: 0 mm, off-centre-deep: 0 mm, side-load: 0 % }") / Safe("loading: { off-centre-across: 30 mm, side-load: 0 % }"), 1e-9);
    }

    [Fact]
    public void AShallowThreadStripsFirst()
    {
        double At(string mesh) => Rung(Check(Press(Collar.Replace("engagement: 30 mm", $"engagement: {mesh}"))), "mount-thread").SafeTo;

        Near.Relative(2, At("30 mm") / At("15 mm"), 1e-9);
    }

    [Fact]
    public void ATappedEndPlateIsCheckedForItsThread()
    {
        string Joint(string mesh) => Press().Replace("section: HEB 200", $"section: HEB 200, crown-joint: {{ kind: bolt, fit: between, thread: M20, class: 8.8, count: 4, pitch: 80 mm, gauge: 100 mm{mesh} }}");
        PressCheck nuts = Check(Joint("")), tapped = Check(Joint(", engagement: 12 mm"));
        Rung strips = Rung(tapped, "crown-joint-bolt-thread");
        var w = new Working();
        strips.Work(w);

        Assert.DoesNotContain("crown-joint-bolt-thread", Ids(nuts));
        WorkingCheck.Holds(w);
        // F-15: the tapped plate is the weaker thread until about 0.9 of the diameter is in mesh
        Assert.True(strips.SafeTo < Rung(tapped, "crown-joint-bolt-pull").SafeTo);
    }

    [Fact]
    public void SlidesTakeTheSidePushOffTheRod()
    {
        string Guided(string how) => Press(cylinder: $"kind: double-acting, bore: 100 mm, rod: 56 mm, stroke: 250 mm, guide: {how}",
            more: "loading: { off-centre-across: 20 mm, side-load: 3 % }");
        PressCheck free = Check(Guided("free")), pinned = Check(Guided("pinned")), guided = Check(Guided("guided"));

        Assert.DoesNotContain("rod-bending", Ids(guided));
        Assert.DoesNotContain("gland-side-load", Ids(guided));
        Assert.True(Rung(pinned, "gland-side-load").SafeTo > Rung(free, "gland-side-load").SafeTo);
        // 20 mm off centre, rod 56 in C45+N: A 2463.0 mm², W 17 241 mm³, fy 305 MPa
        new Reference("P-13", "rod 56 pushed 20 mm off centre: F (1/A + e/W)", Trust.Recomputed)
            .Near("bends at, kN", 305 / (1 / 2463.01 + 20 / 17241.1) / 1e3, Rung(pinned, "rod-bending").GivesAt / 1e3, 1e-4);
    }

    [Fact]
    public void WorkOffCentreBendsTheRodAlikeAssumedOrSaid()
    {
        PressCheck assumed = Check(Press());
        RigLoading loading = assumed.Rig.Loading;

        Assert.Equal("off to one side", Rung(assumed, "rod-bending").Load);
        Assert.Contains(assumed.Assumed, a => a.What == "loading.off-centre-across");
        Assert.Equal(Rung(assumed, "rod-bending").SafeTo, Rung(assumed.Loaded(loading with { Across = loading.Across }), "rod-bending").SafeTo);
        Assert.True(Rung(assumed.Loaded(loading with { Across = loading.Across / 2, Deep = 0 }), "rod-bending").SafeTo > Rung(assumed, "rod-bending").SafeTo);
    }

    [Fact]
    public void TheRodOfAPullingRig()
    {
        new Reference("P-14", "M36 8.8: proof 490 kN (F-13), design tension 470.6 kN (F-24), load factor 1.5", Trust.OwnNumbers)
            .Near("safe to, kN", 470.6 / 1.5, Rung(Check(Press("", Pull, Hollow)), "pull-rod").SafeTo / 1e3, 0.003);
    }

    [Fact]
    public void WorkBeyondTheHoldersFacePrisesItOff()
    {
        string At(string off) => Press("", Ram.Replace("face: 60 mm", "face: 40 mm") + $"\nloading: {{ off-centre-across: {off}, off-centre-deep: 0 mm }}");

        Assert.Contains("stuck die", Rung(Check(At("10 mm")), "die-holder-screws").Mode);
        Assert.Contains("prised off", Rung(Check(At("30 mm")), "die-holder-screws").Mode);
        // strip 10 % against 2 · 30/40 − 1 = 50 %
        Near.Relative(5, Rung(Check(At("10 mm")), "die-holder-screws").SafeTo / Rung(Check(At("30 mm")), "die-holder-screws").SafeTo, 1e-9);
    }

    [Theory]
    [InlineData("mount: { kind: flange, thread: M20, count: 8, circle: 100 mm, plate: 30 mm }", "cylinder.mount.circle")]
    [InlineData("mount: { kind: flange, thread: M20, count: 40, circle: 170 mm, plate: 30 mm }", "cylinder.mount.count")]
    [InlineData("mount: { kind: flange, thread: M20, count: 8, circle: 170 mm, outside: 160 mm, plate: 30 mm }", "cylinder.mount.outside")]
    [InlineData("mount: { kind: threaded-collar, plate: 30 mm }", "cylinder.mount.thread")]
    [InlineData("mount: { kind: threaded-collar, thread: M120x3, plate: 30 mm, engagement: 40 mm }", "cylinder.mount.engagement")]
    [InlineData("mount: { kind: foot, outside: 60 mm, hole: 70 mm }", "cylinder.mount.hole")]
    [InlineData("mount: { kind: foot, span: 160 mm }", "cylinder.mount.span")]
    public void WhatCannotBeIsRefused(string mount, string path)
    {
        PressReading reading = PressFile.Read(Press(mount), "test.press.yaml", StockTables.Built);

        Assert.Contains(reading.Faults, f => f.Path == path);
    }

    [Fact]
    public void ARodThickerThanTheHoleIsRefused()
    {
        PressReading reading = PressFile.Read(Press("", "pull: { thread: M64 }", Hollow), "test.press.yaml", StockTables.Built);

        Assert.Contains("pull.thread", Assert.Throws<PressFaultsException>(() => Resolver.Resolve(reading.Press!, StockTables.Built)).Faults.Select(f => f.Path));
    }
}
