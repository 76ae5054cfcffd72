using System.Globalization;
using Ramwright.Ladders;
using Ramwright.Power;
using Ramwright.Proving;

namespace Ramwright.Tests.Proving;

public class PumpFitTest
{
    private static string[] Timed(PressCheck check, params (double Bar, double Flow)[] points) =>
    [
        .. points.Select(p => string.Create(CultureInfo.InvariantCulture, $"time-out {check.Power.Areas.Push * 0.1 / p.Flow:0.####} s travel=100 mm pressure={p.Bar:0.###} bar")),
    ];

    [Fact]
    public void AnAirPumpsCurveIsFoundAgainThroughAWrongStroke()
    {
        PressCheck check = ProvedPress.Press("railing-shop");
        PumpCurve curve = check.Power.Curve;
        double[] bars = [0, 40, 100, 170, 250, 330, 420, 500];
        string[] lines = Timed(check, [.. bars.Select((b, i) => (b, curve.Flow(b * 1e5) * (i == 4 ? 1.8 : 1)))]);
        PumpFit fit = Assert.Single(PumpFit.Of(check, ProvedPress.Book(check, lines)));
        Assert.Equal(5, Assert.Single(fit.Outliers).From.Line);
        Near.Relative(curve.FreeFlow, fit.Fit!.P, 0.01, "free flow");
        Near.Relative(((AirPumpCurve)curve).Exponent, fit.Fit.Q, 0.02, "bend");
    }

    [Fact]
    public void StagesOfAnElectricPumpAreKeptApart()
    {
        PressCheck check = ProvedPress.Press("wherry-yard");
        double q = check.Power.Curve.Flow(150e5), both = check.Power.Curve.Flow(10e5);
        IReadOnlyList<PumpFit> fits = PumpFit.Of(check, ProvedPress.Book(check, Timed(check, (5, both), (30, both * 0.99), (70, q), (110, q * 0.98), (150, q * 0.96), (190, q * 0.94))));
        Assert.Equal(["both stages", "small stage"], fits.Select(f => f.Stage));
        Near.Relative(q * 0.96, fits[1].FlowAt(150e5)!.Value.Value, 0.01, "flow at 150 bar");
        Assert.Null(fits[0].Fit);
    }

    [Fact]
    public void AHandPumpHasNoFlowOfItsOwn()
    {
        PressCheck check = ProvedPress.Press("drainage-mill-puller");
        Assert.Empty(PumpFit.Of(check, ProvedPress.Book(check, "time-out 30 s travel=20 mm")));
    }
}
