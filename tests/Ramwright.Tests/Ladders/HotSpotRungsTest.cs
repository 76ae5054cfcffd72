using CsCheck;
using Ramwright.Files;
using Ramwright.Ladders;
using Ramwright.Presses;
using Ramwright.Stock;
using Ramwright.Workings;

namespace Ramwright.Tests.Ladders;

/// <summary>Rungs by hot-spot stress, on stress factors made up for the purpose; docs/solids-toes.csv holds true ones against full solids.</summary>
public class HotSpotRungsTest
{
    private static readonly Shelf Shelf = StockTables.Built;
    private static readonly ToeLine Beam = new(5e3, 40, 600), Upright = new(6e3, 900, -1000);

    private static Rig Press(string joint = "kind: weld, weld: { leg: 8 mm }", double squeezes = 20_000, string more = "") => Read($$"""
        wanted: 10 t
        cylinder: { kind: double-acting, bore: 100 mm }
        pump: { kind: electric, motor: 2.2 kW }
        frame:
          kind: closed
          daylight: 600 mm
          width: 500 mm
          steel: S275
          section: HEB 160
          crown-joint: { {{joint}} }
          bed-joint: { {{joint}} }
        loading: { squeezes: {{squeezes:0}}{{more}} }
        """);

    private static Rig Read(string yaml)
    {
        PressReading reading = PressFile.Read(yaml, "test.press.yaml", Shelf);
        Assert.True(reading.Faults.Count == 0, FaultText.All(reading.Faults));
        return Resolver.Resolve(reading.Press!, Shelf);
    }

    private static Rig Sprung(Rig rig, double times = 1, double thick = 0.013, bool onEdge = false)
    {
        ToeLine Of(ToeLine l) => new(times * l.M, times * l.V, times * l.N);
        RigToe[] toes = [new(true, true, thick, [Of(Beam)]), new(true, false, thick, [Of(new ToeLine(-4e3, 0, 300))]), new(false, true, thick, [Of(Upright)])];
        toes = [.. toes.Select(t => t with { OnEdge = onEdge })];
        // stiff beyond what moves the frame's forces
        var spring = new RigSpring(1e12, 1e12, 1e15) { Toes = toes };
        return rig with { Springs = new RigSprings(spring, spring) };
    }

    private static Rung[] Spots(Rig rig) => [.. PressCheck.Of(rig).Ladder.Rungs.Where(r => HotSpotRungs.ByPlainStress(r.Id) is not null).OrderBy(r => r.Id, StringComparer.Ordinal)];

    [Fact]
    public void EveryWeldWithFactorsHasOneOnEachPartBesideThatOfPlainStress()
    {
        Ladder ladder = PressCheck.Of(Sprung(Press())).Ladder;

        Assert.Equal(["bed-face-hot-spot-fatigue", "bed-toe-hot-spot-fatigue", "crown-face-hot-spot-fatigue", "crown-toe-hot-spot-fatigue"], Spots(Sprung(Press())).Select(r => r.Id));
        Assert.All(Spots(Sprung(Press())), r => Assert.Contains(ladder.Rungs, other => other.Id == HotSpotRungs.ByPlainStress(r.Id)));
        Assert.All(Spots(Sprung(Press())), r => Assert.StartsWith("hot spot at the toe of the weld on the ", r.Part));
    }

    [Theory]
    [InlineData("kind: weld, weld: { leg: 8 mm }, gusset: { leg-along: 100 mm, leg-up: 100 mm, thickness: 10 mm, weld: { leg: 6 mm } }")]
    [InlineData("kind: bolt, fit: between, thread: M36, class: 8.8, count: 4, pitch: 200 mm, gauge: 160 mm")]
    public void OtherJointsHaveNone(string joint) => Assert.Empty(Spots(Sprung(Press(joint))));

    [Fact]
    public void WithoutFactorsThereIsNoneAndOneLineSaysHowToHaveThem()
    {
        PressCheck bare = PressCheck.Of(Press()), bolted = PressCheck.Of(Press("kind: bolt, fit: between, thread: M36, class: 8.8, count: 4, pitch: 200 mm, gauge: 160 mm"));

        Assert.Empty(Spots(Press()));
        Assert.Single(bare.Cautions(), c => c.Contains("--keep-joints", StringComparison.Ordinal));
        Assert.DoesNotContain(bolted.Cautions(), c => c.Contains("--keep-joints", StringComparison.Ordinal));
        Assert.DoesNotContain(PressCheck.Of(Sprung(Press())).Cautions(), c => c.Contains("--keep-joints", StringComparison.Ordinal));
    }

    /// <summary>Where a solid of the joints shows no toe, or none can be had, it is said that tables alone speak, and nobody is sent to look.</summary>
    [Fact]
    public void NobodyIsSentForWhatCannotBeHad()
    {
        var bare = new RigSpring(1e12, 1e12, 1e15);
        PressCheck without = PressCheck.Of(Press() with { Springs = new RigSprings(bare, bare) });

        Assert.Single(without.Cautions(), c => c.StartsWith("Cracks at the welds' toes are reckoned from tables", StringComparison.Ordinal));
        Assert.DoesNotContain(without.Cautions(), c => c.Contains("--keep-joints", StringComparison.Ordinal));
    }

    [Theory, InlineData(100.0), InlineData(20_000.0), InlineData(2e7)]
    public void WorkingFollowsFromItsText(double squeezes)
    {
        foreach (Rung rung in Spots(Sprung(Press(squeezes: squeezes, more: ", off-centre-across: 20 mm, off-centre-deep: 15 mm"), thick: 0.04)))
        {
            var w = new Working();
            rung.Work(w);
            WorkingCheck.Holds(w);
            Assert.Contains(w.Steps, s => Math.Abs(s.Si - rung.SafeTo) <= 1e-9 * rung.SafeTo);
            Assert.Contains(w.Steps, s => s.Symbol == "k_s");
        }
    }

    /// <summary>Where stress, not yield, sets the force: n times the factors is an nth of the force; twice the squeezes 2^(−1/3) of it on the slope of 3, 2^(−1/5) on that of 5.</summary>
    [Fact]
    public void FollowsFactorsAndSqueezes() => Gen.Select(Gen.Double[1, 3], Gen.Double[5.7, 6.3], Gen.Double[6.8, 7.6]).Sample((times, steep, flat) =>
    {
        double few = Math.Pow(10, steep), many = Math.Pow(10, flat);
        foreach ((Rung one, Rung more) in Spots(Sprung(Press(squeezes: few))).Zip(Spots(Sprung(Press(squeezes: few), times))))
            Near.Relative(one.SafeTo / times, more.SafeTo, 1e-9, one.Id);
        foreach ((Rung one, Rung twice) in Spots(Sprung(Press(squeezes: few))).Zip(Spots(Sprung(Press(squeezes: 2 * Math.Round(few))))))
            Near.Relative(Math.Pow(2, -1 / 3.0), twice.SafeTo / one.SafeTo, 1e-5, one.Id);
        foreach ((Rung one, Rung twice) in Spots(Sprung(Press(squeezes: many))).Zip(Spots(Sprung(Press(squeezes: 2 * Math.Round(many))))))
            Near.Relative(Math.Pow(2, -1 / 5.0), twice.SafeTo / one.SafeTo, 1e-5, one.Id);
    }, iter: 20);

    [Fact]
    public void AThickWallStandsLess()
    {
        foreach ((Rung thin, Rung thick) in Spots(Sprung(Press(squeezes: 2e6), thick: 0.025)).Zip(Spots(Sprung(Press(squeezes: 2e6), thick: 0.05))))
            Near.Relative(Math.Pow(0.5, 0.3), thick.SafeTo / thin.SafeTo, 1e-9, thin.Id);
    }

    [Fact]
    public void TheSqueezesAgreeWithTheRung()
    {
        foreach (Rung rung in Spots(Sprung(Press(squeezes: 1e6))))
            Near.Relative(1e6, rung.Fatigue!.At(rung.SafeTo)!.Value, 1e-6, rung.Id);
    }

    /// <summary>A butt weld is a better detail than a fillet.</summary>
    [Fact]
    public void AButtWeldStandsMore()
    {
        foreach ((Rung fillet, Rung butt) in Spots(Sprung(Press(squeezes: 2e6))).Zip(Spots(Sprung(Press("kind: weld, weld: { kind: butt }", 2e6)))))
            Near.Relative(100.0 / 90, butt.SafeTo / fillet.SafeTo, 1e-9, fillet.Id);
    }

    /// <summary>On a plate's edge a weld through the whole wall is worth no more than a fillet, and the working says where stress was read.</summary>
    [Theory, InlineData(true, "at 4, 8 and 12 mm, on an edge"), InlineData(false, "at 0.4 and 1.0 t, on a face")]
    public void TheWorkingSaysHowItsToeWasRead(bool onEdge, string words)
    {
        foreach ((Rung fillet, Rung butt) in Spots(Sprung(Press(squeezes: 2e6), onEdge: onEdge)).Zip(Spots(Sprung(Press("kind: weld, weld: { kind: butt }", 2e6), onEdge: onEdge))))
        {
            Near.Relative(onEdge ? 1 : 100.0 / 90, butt.SafeTo / fillet.SafeTo, 1e-9, fillet.Id);
            var w = new Working();
            butt.Work(w);
            Assert.Single(w.Notes, n => n.Text().Contains(words, StringComparison.Ordinal));
        }
    }

    [Fact]
    public void WhereTheTwoWaysDifferMuchBothSaySo()
    {
        Ladder ladder = PressCheck.Of(Sprung(Press(), times: 3)).Ladder;
        foreach (string id in (string[])["crown-face-hot-spot-fatigue", "crown-face-fatigue"])
        {
            var w = new Working();
            ladder.Rungs.Single(r => r.Id == id).Work(w);
            Assert.Contains(w.Notes, n => n.Words.Contains("By hot-spot stress this place is safe to less than by plain stress", StringComparison.Ordinal));
        }
    }

    /// <summary>A change that takes a weld's solid away must not look as if its hot spot were gone with it.</summary>
    [Fact]
    public void AChangedJointIsTakenToBeAsMuchWorseThanPlainStressAsBefore()
    {
        PressCheck before = PressCheck.Of(Sprung(Press(), times: 3)), after = PressCheck.Of(Press("kind: weld, weld: { leg: 9 mm }"));
        double Safe(PressCheck check, string id) => check.Ladder.Rungs.Single(r => r.Id == id).SafeTo;
        (string Id, double SafeTo)[] guessed = [.. HotSpotGuess.Of(before).On(after)];

        Assert.Equal(4, guessed.Length);
        foreach ((string id, double safe) in guessed)
            Near.Relative(Safe(before, id) / Safe(before, HotSpotRungs.ByPlainStress(id)!), safe / Safe(after, HotSpotRungs.ByPlainStress(id)!), 1e-9, id);
        Assert.Empty(HotSpotGuess.Of(before).On(before));
    }
}
