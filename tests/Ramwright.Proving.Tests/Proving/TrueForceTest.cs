using Ramwright.Ladders;
using Ramwright.Measuring;
using Ramwright.Proving;
using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Tests.Proving;

public class TrueForceTest
{
    private static readonly string[] Tops = ["top-pressure 208.5 bar", "top-pressure 210.2 bar", "top-pressure 209.4 bar", "top-pressure 211.0 bar", "top-pressure 209.9 bar"];

    [Fact]
    public void WithoutATopPressureThereIsNone() => Assert.Null(TrueForce.Of(ProvedPress.Press("wherry-yard"), ProvedPress.Book(ProvedPress.Press("wherry-yard"), "bore 125 mm")));

    [Fact]
    public void TheBudgetHoldsGaugeBoreAndFriction()
    {
        PressCheck check = ProvedPress.Press("wherry-yard");
        TrueForce force = TrueForce.Of(check, ProvedPress.Book(check, Tops))!;
        double p = 209.8e5, A = Math.PI / 4 * 0.125 * 0.125, mu = check.Rig.Cylinder.SealFriction;
        Near.Relative(p * A * (1 - mu), force.Force.Value, 1e-9, "force");
        Near.Relative(force.Model, force.Force.Value, 1e-9, "the model has the same bore and friction");
        double u(string symbol) => force.Force.Budget.Single(b => b.Input.Symbol == symbol).Contribution;
        Near.Relative(A * (1 - mu) * 6.4e5 / Math.Sqrt(3), u("δp"), 1e-6, "gauge, class 1.6 on 400 bar");
        Near.Relative(A * (1 - mu) * 0.4159e5, u("p"), 1e-3, "repeating");
        Near.Relative(A * p * mu / Math.Sqrt(3), u("μ"), 1e-6, "friction");
        Near.Relative(2 * A * p * (1 - mu) / 0.125 * 0.002 * 0.125 / Math.Sqrt(3), u("D"), 1e-6, "bore not measured");
        Assert.Equal(FrictionFrom.File, force.FrictionFrom);
        Assert.Contains(force.Taken, t => t.Contains("friction", StringComparison.Ordinal));
        Assert.Contains(force.Taken, t => t.Contains("bore", StringComparison.Ordinal));
        Near.Relative(Math.Sqrt(force.Force.Budget.Sum(b => b.Contribution * b.Contribution)), force.Force.Combined, 1e-9, "combined");
    }

    [Fact]
    public void TheGaugesErrorFallsOutOfTheFriction()
    {
        PressCheck check = ProvedPress.Press("wherry-yard");
        TrueForce force = TrueForce.Of(check, ProvedPress.Book(check, [.. Tops, "bore 125 mm", "slow-out 14 bar", "slow-back 10.6 bar"]))!;
        Assert.Equal(FrictionFrom.OneLoad, force.FrictionFrom);
        double A = Math.PI / 4 * 0.125 * 0.125, mu = check.Rig.Cylinder.SealFriction;
        Near.Relative(A * (209.8e5 - 1.7e5 - mu * (209.8e5 - 12.3e5)), force.Force.Value, 1e-9, "force");
        Near.Relative(A, Math.Abs(force.Force.Budget.Single(b => b.Input.Symbol == "δp").Sensitivity), 1e-9, "the gauge's error stands once, in the top pressure");
    }

    [Fact]
    public void FrictionOfTwoPressures()
    {
        var row = new Reference("UP-10", "force balance of the piston", Trust.OwnNumbers);
        var pair = new FrictionPair([12.4e5], [10.6e5]);
        double A = Math.PI / 4 * 0.08 * 0.08;
        var w = new Working();
        row.Near("friction, kN", 0.452, pair.Force(A, w) / 1e3, 0.002);
        row.Near("load, kN", 5.781, pair.Load(A) / 1e3, 0.002);
        row.Near("share", 0.078, pair.Force(A) / pair.Load(A), 0.005);
        WorkingCheck.Holds(w);
    }

    [Fact]
    public void UnderSeveralLoadsFrictionIsALineAndItsTwoEndsGoTogether()
    {
        PressCheck check = ProvedPress.Press("wherry-yard");
        string[] creeps = [.. new[] { 20, 60, 110, 160 }.SelectMany((p, i) => new[] { $"slow-out {p} bar step={i}", $"slow-back {(p * (1 - 0.06) - 2 + (i == 2 ? 0.4 : 0)).ToString(System.Globalization.CultureInfo.InvariantCulture)} bar step={i}" })];
        TrueForce force = TrueForce.Of(check, ProvedPress.Book(check, [.. Tops, .. creeps]))!;
        Assert.Equal(FrictionFrom.SeveralLoads, force.FrictionFrom);
        Assert.Single(force.Force.Correlations);
        Assert.True(force.Force.Correlations[0].R < -0.5);
        Near.Relative(Math.PI / 4 * 0.125 * 0.125 * (209.8e5 - 1e5 - 0.03 * 209.8e5), force.Force.Value, 0.003, "force");
    }

    [Fact]
    public void ALoadCellTakesTheGaugesErrorOut()
    {
        PressCheck check = ProvedPress.Press("wherry-yard");
        string[] cell = [.. new[] { 60, 110, 160, 205 }.Select((p, i) => FormattableString.Invariant($"load {p * 1.17 + (i % 2 == 0 ? 0.3 : -0.3)} kN pressure={p} bar instrument=C"))];
        TrueForce force = TrueForce.Of(check, ProvedPress.Book(check, ["instrument C measures=force limit=1 kN", .. Tops, .. cell]))!;
        Assert.Equal(FrictionFrom.LoadCell, force.FrictionFrom);
        Near.Relative(209.8 * 1.17e3, force.Force.Value, 0.005, "force");
        Assert.DoesNotContain(force.Force.Budget, b => b.Input.Symbol == "δp");
        // a cell that was never read near the top does not reach so far
        TrueForce low = TrueForce.Of(check, ProvedPress.Book(check, [.. Tops, .. cell.Take(3)]))!;
        Assert.Equal(FrictionFrom.File, low.FrictionFrom);
    }

    [Theory]
    [InlineData("wherry-yard", 210)]
    [InlineData("railing-shop", 590)]
    [InlineData("drainage-mill-puller", 440)]
    public void DrawingAgreesWithTheLawOfPropagation(string example, double bar)
    {
        PressCheck check = ProvedPress.Press(example);
        string[] read = [.. Enumerable.Range(0, 6).Select(i => FormattableString.Invariant($"top-pressure {bar + (i % 3 - 1) * 0.8} bar"))];
        TrueForce force = TrueForce.Of(check, ProvedPress.Book(check, [.. read, "slow-out 20 bar", "slow-back 18 bar"]))!;
        Near.Absolute(force.Force.Value, force.Drawn.Value, 6 * force.Drawn.ErrorOfValue + 1e-4 * force.Force.Value, "value");
        Near.Relative(force.Force.Combined, force.Drawn.U, 0.02, "u");
    }

    [Theory]
    [InlineData("wherry-yard", "")]
    [InlineData("wherry-yard", "slow-out 14 bar|slow-back 11 bar")]
    [InlineData("wherry-yard", "slow-out 20 bar step=1|slow-back 16 bar step=1|slow-out 90 bar step=2|slow-back 82 bar step=2|slow-out 150 bar step=3|slow-back 139 bar step=3")]
    [InlineData("wherry-yard", "load 80 kN pressure=70 bar|load 160 kN pressure=140 bar|load 241 kN pressure=208 bar")]
    [InlineData("railing-shop", "bore 75.02 mm")]
    [InlineData("drainage-mill-puller", "centre-tube 48.02 mm")]
    public void TheWorkingComesToTheForce(string example, string more)
    {
        PressCheck check = ProvedPress.Press(example);
        TrueForce force = TrueForce.Of(check, ProvedPress.Book(check, [.. Tops, .. more.Split('|', StringSplitOptions.RemoveEmptyEntries)]))!;
        var w = new Working();
        force.Work(w);
        WorkingCheck.Holds(w);
        Near.Relative(force.Force.Value, w.Steps.Single(s => s.Symbol == "F").Si, 1e-12, "force");
        Near.Relative(force.Force.Expanded, w.Steps.Single(s => s.Symbol == "U").Si, 1e-12, "U");
    }

    [Fact]
    public void ItIsSaidInTonsBesideTheLabel()
    {
        PressCheck check = ProvedPress.Press("wherry-yard");
        TrueForce force = TrueForce.Of(check, ProvedPress.Book(check, Tops))!;
        Assert.Matches(@"^\d+\.\d+ t ± \d+\.\d+ t \(k = \d\.\d+, 95 %\); sold as 30 t$", force.Saying(UnitSystem.Metric));
        Assert.Contains("US ton", force.Saying(UnitSystem.Imperial), StringComparison.Ordinal);
        // 30 t at 250 bar is more than the bore makes at 210: the label does not lie within
        Assert.True(force.SoldAs > force.Force.High);
    }

    [Fact]
    public void OfAHollowPlungerTheTubesAreaIsTakenOff()
    {
        var row = new Reference("CY-15", "geometry: the seal rides on the centre tube", Trust.FromMemoryAndRecomputed);
        var c = ProvedPress.Press("drainage-mill-puller").Rig.Cylinder with { Bore = 0.11, CentreTube = 0.06 };
        row.Near("bore 110, tube 60, mm²", 6675.9, OilToRam.AreaOf(c, 0.11, c.Rod, 0.06) * 1e6, 0.001);
    }

    [Fact]
    public void AGaugesClassIsOfItsSpan()
    {
        var row = new Reference("UP-08", "EN 837-1: class in per cent of the span", Trust.FoundAndRecomputed);
        PressCheck check = ProvedPress.Press("wherry-yard");
        foreach ((double c, double range, double percent) in new[] { (1.0, 400.0, 1.90), (1.6, 400, 3.05), (2.5, 400, 4.76), (1.0, 250, 1.19), (1.6, 1000, 7.62) })
        {
            Instrument gauge = ProvedPress.Book(check, FormattableString.Invariant($"instrument G measures=pressure range={range} bar class={c}"), "top-pressure 210 bar instrument=G").For(ReadingKind.TopPressure);
            row.Within($"class {c} on {range} bar, % of 210 bar", percent, gauge.Limit / 210e5 * 100, 0.01);
        }
    }

    [Fact]
    public void TheUncertaintyIsWrittenWithTwoFigures()
    {
        static string Of(double v, double u) => UncertainText.Of(v, u, Dimension.Force, UnitSystem.Metric);
        Assert.Equal("105.5 kN ± 3.8 kN", Of(105_510, 3_790));
        Assert.Equal("105.512 kN ± 0.038 kN", Of(105_512.3, 38.2));
        Assert.Equal("106 kN ± 12 kN", Of(105_510, 12_100));
    }
}
