using Ramwright.Files;
using Ramwright.Ladders;
using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Stock;

namespace Ramwright.Tests.Ladders;

public class LiftTest
{
    private static readonly Shelf Shelf = StockTables.Built;

    private static Press Read(string yaml)
    {
        PressReading reading = PressFile.Read(yaml, "test.press.yaml", Shelf);
        Assert.True(reading.Faults.Count == 0, FaultText.All(reading.Faults));
        return reading.Press!;
    }

    private static Press Example(string name) => PressOnDisk.Open(Path.Combine(Repository.Folder("examples"), name)).Reading.Press!;

    /// <summary>Holds but for its crown and bed, which one section up each would mend.</summary>
    private static Press WeakBeams(string wanted = "15 t") => Read($$"""
        wanted: {{wanted}}
        price-per-kg: 2
        cylinder: { kind: double-acting, bore: 100 mm, rated-pressure: 250 bar, guide: guided }
        pump: { kind: electric, motor: 3 hp, relief: 195 bar }
        frame: { kind: closed, daylight: 600 mm, width: 800 mm, section: HEB 140, steel: S275, die-width: 60 mm,
          crown: { stiffened: { thickness: 12 mm } }, bed: { stiffened: { thickness: 12 mm } } }
        """);

    public static TheoryData<string> Presses() => ["railing", "beams", "six"];

    private static Press Named(string name) => name switch
    {
        "railing" => Example("railing-shop.press.yaml"),
        "beams" => WeakBeams(),
        _ => Read("""
            wanted: 20 t
            cylinder: { kind: double-acting, bore: 100 mm }
            pump: { kind: electric, motor: 3 hp }
            frame: { kind: closed, daylight: 600 mm, width: 500 mm, section: HEB 160 }
            """),
    };

    private static readonly System.Collections.Concurrent.ConcurrentDictionary<string, Lazy<Lift>> Found = new();

    /// <summary>Searched once for all tests.</summary>
    private static Lift Lifted(string name) => Found.GetOrAdd(name, n => new Lazy<Lift>(() => Lift.Of(Named(n), Shelf))).Value;

    private static PressCheck Check(Press press) => PressCheck.Of(Resolver.Resolve(press, Shelf));

    private static bool Enough(PressCheck check) => check.MeetsWanted && check.AgainstMostPossible == Verdict.Holds;

    [Theory, MemberData(nameof(Presses))]
    public void EveryWayIsEnoughWhenItsEditsAreMadeOneByOne(string name)
    {
        Press press = Named(name);
        Assert.False(Enough(Check(press)));

        Lift lift = Lifted(name);

        Assert.NotEmpty(lift.Ways);
        foreach (LiftWay way in lift.Ways)
        {
            Press changed = way.Changes.Aggregate(press, (p, change) => change.On(p));
            PressCheck check = Check(changed);

            Assert.True(Enough(check));
            Assert.Empty(PressRules.Of(changed, Shelf));
            Near.Relative(check.Ladder.SafeRating, way.Check.Ladder.SafeRating, 1e-12, "safe rating");
        }
    }

    [Theory, MemberData(nameof(Presses))]
    public void NoChangeOfAWayCanBeLeftOut(string name)
    {
        Press press = Named(name);
        foreach (LiftWay way in Lifted(name).Ways)
        {
            foreach (LiftChange left in way.Changes)
            {
                Press less = way.Changes.Where(c => c != left).Aggregate(press, (p, change) => change.On(p));

                Assert.False(Enough(Check(less)), string.Join(", ", left.Edits.Select(e => e.Path)));
            }
        }
    }

    [Fact]
    public void TheSectionItNamesIsTheLightestOfItsSeriesThatIsEnough()
    {
        Press press = WeakBeams();
        LiftWay way = Lifted("beams").Ways.First(w => w.Edits is [{ Path: "frame.section" }]);
        string[] series = ["HEB 160", "HEB 180", "HEB 200", "HEB 220", "HEB 240", "HEB 260"];

        string first = series.First(s => Enough(Check(PressKeys.With(press, "frame.section", s))));

        Assert.Equal(first, way.Edits[0].New);
    }

    [Theory, MemberData(nameof(Presses))]
    public void WhatAnEditSaysIsReadBackAsWhatItSets(string name)
    {
        foreach (PressEdit edit in Lifted(name).Ways.SelectMany(w => w.Edits))
        {
            if (edit.Value is not double si)
                continue;
            Dimension dimension = edit.Path.Split('.')[^1] switch
            {
                "relief" or "air-pressure" or "rating" => Dimension.Pressure,
                "motor" => Dimension.Power,
                "allowed-opening" => Dimension.Slope,
                "count" => Dimension.Count,
                _ => Dimension.Length,
            };
            Assert.True(QuantityText.TryRead(edit.New!, dimension, out Quantity read, out _), edit.New);
            Near.Relative(si, read.Si, 1e-5, edit.Path);
        }
    }

    [Fact]
    public void AddedSteelIsWeighedAndPriced()
    {
        LiftWay way = Lifted("beams").Ways.First(w => w.Edits is [{ Path: "frame.section" }]);
        Assert.True(SectionText.TryRead(way.Edits[0].New!, Shelf, out Shape? now, out _));
        Assert.True(SectionText.TryRead("HEB 140", Shelf, out Shape? was, out _));

        // centre line to centre line: two beams as long as the clear width and half a depth at each end, two uprights likewise
        double Mass(Shape s) => 7850 * s.Properties.A * (2 * (0.8 + s.Properties.Height) + 2 * (0.6 + 0.1 + s.Properties.Height));

        new Reference("LF-01", "statics: area times length times density, EN 1991-1-1 table A.4", Trust.FromMemoryAndRecomputed)
            .Near("added steel, kg", Mass(now!) - Mass(was!), way.AddedMass, 1e-9);
        Near.Relative(2 * way.AddedMass, way.AddedPrice!.Value, 1e-12, "price");
    }

    [Fact]
    public void APressThatIsEnoughNeedsNothing()
    {
        Lift lift = Lift.Of(Example("wherry-yard.press.yaml"), Shelf);

        Assert.True(lift.IsEnough);
        Assert.Empty(lift.Ways);
        Assert.Equal(0, lift.Looked);
    }

    [Fact]
    public void WhereNothingIsEnoughTheNearestIsBetterThanWhatThereIs()
    {
        Press press = WeakBeams("400 t");

        Lift lift = Lift.Of(press, Shelf);

        Assert.Empty(lift.Ways);
        Assert.True(lift.Nearest!.Check.Ladder.SafeRating > lift.Before.Ladder.SafeRating);
    }

    [Fact]
    public void WhereOnlyTheMostPossibleBreaksItTheReliefComesDown()
    {
        Press press = WeakBeams("9 t");
        PressCheck before = Check(press);
        Assert.True(before.MeetsWanted);
        Assert.NotEqual(Verdict.Holds, before.AgainstMostPossible);

        LiftWay way = Lift.Of(press, Shelf).Ways[0];

        PressEdit edit = Assert.Single(way.Edits);
        Assert.Equal("pump.relief", edit.Path);
        Assert.True((double)edit.Value! < 195e5);
    }

    [Fact]
    public void WebsThatBendAsideAreStiffened()
    {
        Press press = Read("""
            wanted: 12 t
            cylinder: { kind: double-acting, bore: 100 mm, rated-pressure: 250 bar, guide: guided }
            pump: { kind: electric, motor: 3 hp, relief: 155 bar }
            frame: { kind: closed, daylight: 600 mm, width: 600 mm, section: HEB 160, steel: S275, die-width: 100 mm }
            """);
        PressCheck before = Check(press);
        Assert.EndsWith("web-aside-fatigue", before.Ladder.Governing.Id, StringComparison.Ordinal);

        LiftWay way = Lift.Of(press, Shelf).Ways.First(w => w.Edits.All(e => e.Path.EndsWith(".stiffened.thickness", StringComparison.Ordinal)));

        Assert.True(Enough(way.Check));
        Assert.DoesNotContain(way.Check.Ladder.Rungs, r => r.Id.EndsWith("web-aside-fatigue", StringComparison.Ordinal));
    }

    [Fact]
    public void TwoSearchesFindTheSame()
    {
        Assert.Equal(LiftJson.Text(Lifted("beams")), LiftJson.Text(Lift.Of(WeakBeams(), Shelf)));
    }

    [Fact]
    public void EveryKeyOfTheFrameThatABuilderChoosesIsTried()
    {
        Press press = Example("wherry-yard.press.yaml");
        string[] tried = [.. LiftNeighbours.Of(press, Check(press), Shelf).SelectMany(c => c.Edits).Select(e => e.Path).Distinct()];

        string[] expected =
        [
            "frame.daylight", "frame.width", "frame.die-width", "frame.crown.section", "frame.crown.apart", "frame.crown.steel", "frame.crown.turned",
            "frame.bed.section", "frame.upright.section", "frame.crown-joint.thread", "frame.crown-joint.class", "frame.crown-joint.count",
            "frame.crown-joint.pitch", "frame.crown-joint.gauge", "frame.crown-joint.edge", "frame.crown-joint.plate", "pump.relief", "pump.motor",
            "cylinder.guide", "cylinder.rod", "cylinder.bore", "cylinder.stroke", "lines.0.type", "loading.off-centre-across", "loading.allowed-opening",
        ];
        Assert.All(expected, key => Assert.Contains(key, tried));
    }

    [Fact]
    public void AnUnsaidJointIsTriedAsTheWeldItIsTakenFor()
    {
        Press press = WeakBeams();
        LiftChange change = LiftNeighbours.Of(press, Check(press), Shelf).First(c => c.Edits[^1].Path == "frame.crown-joint.weld.leg");

        var joint = (WeldedJoint)((ClosedFrame)change.On(press).Frame!).CrownJoint!;

        Assert.True(joint.Weld!.Leg > 0);
        Assert.Equal("frame.crown-joint.kind", change.Edits[0].Path);
    }
}
