using Ramwright.Measuring;
using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Tests.Measuring;

public class GumExamplesTest
{
    private static UncertainInput In(string symbol, double value, double u, double nu = double.PositiveInfinity, Spread spread = Spread.Normal) =>
        new(symbol, symbol, Dimension.Number, new Estimate(value, u, nu, spread), symbol);

    // GUM H.1: lengths in nm
    private static readonly UncertainInput[] EndGauge =
    [
        In("l_S", 50_000_623, 25, 18), In("d", 215, 9.7, 25.6), In("δα", 0, 0.58e-6, 50), In("δθ", 0, 0.029, 2), In("α_S", 11.5e-6, 1.2e-6), In("θ", -0.1, 0.41),
    ];

    private static double Length(ReadOnlySpan<double> x) => x[0] + x[1] - x[0] * (x[2] * x[5] + x[4] * x[3]);

    [Fact]
    public void TheEndGaugeComesOutAsPublished()
    {
        var row = new Reference("UP-02", "JCGM 100:2008, H.1: end-gauge calibration", Trust.FoundAndRecomputed);
        Uncertainty l = Uncertainty.Of(Length, EndGauge, level: 0.99);
        row.Within("l, nm", 50_000_838, l.Value, 0.5);
        row.Within("u_c, nm", 32, l.Combined, 0.5);
        row.Within("effective degrees of freedom, cut to a whole number", 16, Uncertainty.Whole(l.EffectiveDof), 0);
        row.Within("t_99", 2.92, l.Coverage, 0.005);
        row.Within("U_99, nm", 93, l.Expanded, 1);
        Assert.Equal("l_S", l.Budget[0].Input.Symbol);
        row.Within("u of temperature difference, nm", 16.6, l.Budget[1].Contribution, 0.15);
    }

    [Fact]
    public void TheComparatorsThreePartsAddUp()
    {
        var row = new Reference("UP-01", "JCGM 100:2008, H.1.3.2: comparator", Trust.FoundAndRecomputed);
        Uncertainty d = Uncertainty.Of(x => x[0] + x[1] + x[2], [In("d", 215, 5.8, 24), In("d_1", 0, 3.9, 5), In("d_2", 0, 6.7, 8)]);
        row.Within("u(d), nm", 9.7, d.Combined, 0.05);
        row.Within("ν_eff(d)", 25.6, d.EffectiveDof, 0.2);
    }

    // GUM H.2: five simultaneous readings
    private static readonly double[] V = [5.007, 4.994, 5.005, 4.990, 4.999], I = [19.663e-3, 19.639e-3, 19.640e-3, 19.685e-3, 19.678e-3], Phi = [1.0456, 1.0438, 1.0468, 1.0428, 1.0433];

    [Fact]
    public void ResistanceAndReactanceAreCorrelatedAsPublished()
    {
        var row = new Reference("GU-H2", "JCGM 100:2008, H.2: simultaneous resistance and reactance", Trust.FromMemoryAndRecomputed);
        Estimate v = Estimate.Repeated(V), i = Estimate.Repeated(I), phi = Estimate.Repeated(Phi);
        row.Within("u(V), V", 0.0032, v.U, 0.00005);
        row.Within("u(I), mA", 0.0095, i.U * 1e3, 0.00005);
        row.Within("u(φ), rad", 0.00075, phi.U, 0.000005);
        double vi = Correlated(V, I), vp = Correlated(V, Phi), ip = Correlated(I, Phi);
        row.Within("r(V, I)", -0.36, vi, 0.005);
        row.Within("r(V, φ)", 0.86, vp, 0.005);
        row.Within("r(I, φ)", -0.65, ip, 0.005);
        UncertainInput[] inputs =
        [
            new("V", "V", Dimension.Number, v, "V"), new("I", "I", Dimension.Number, i, "I"), new("φ", "φ", Dimension.Number, phi, "φ"),
        ];
        Correlation[] together = [new(0, 1, vi), new(0, 2, vp), new(1, 2, ip)];
        Uncertainty R = Uncertainty.Of(x => x[0] / x[1] * Math.Cos(x[2]), inputs, together), X = Uncertainty.Of(x => x[0] / x[1] * Math.Sin(x[2]), inputs, together), Z = Uncertainty.Of(x => x[0] / x[1], inputs, together);
        row.Within("R, Ω", 127.732, R.Value, 0.0005);
        row.Within("u(R), Ω", 0.071, R.Combined, 0.0005);
        row.Within("X, Ω", 219.847, X.Value, 0.0005);
        // printed from intermediate values that were rounded
        row.Within("u(X), Ω", 0.295, X.Combined, 0.001);
        row.Within("Z, Ω", 254.260, Z.Value, 0.0005);
        row.Within("u(Z), Ω", 0.236, Z.Combined, 0.0005);
        Assert.Equal(1, R.Budget.Sum(b => b.Share), 9);
        // all three were read together, five times: four degrees of freedom, however they combine
        Assert.Equal(4, R.EffectiveDof, 6);
    }

    private static double Correlated(double[] a, double[] b)
    {
        double ma = a.Average(), mb = b.Average();
        return a.Zip(b, (x, y) => (x - ma) * (y - mb)).Sum() / Math.Sqrt(a.Sum(x => (x - ma) * (x - ma)) * b.Sum(y => (y - mb) * (y - mb)));
    }

    [Fact]
    public void TheThermometersLineComesOutAsPublished()
    {
        var row = new Reference("GU-H3", "JCGM 100:2008, H.3: calibration of a thermometer", Trust.FromMemoryAndRecomputed);
        double[] t = [21.521, 22.012, 22.512, 23.003, 23.507, 23.999, 24.513, 25.002, 25.503, 26.010, 26.511];
        double[] b = [-0.171, -0.169, -0.166, -0.159, -0.164, -0.165, -0.156, -0.157, -0.159, -0.161, -0.160];
        var w = new Working();
        LineFit line = LineFit.Of([.. t.Select(x => x - 20)], b, w);
        row.Within("y_1, °C", -0.1712, line.Intercept, 0.00005);
        row.Within("u(y_1), °C", 0.0029, line.InterceptU, 0.00005);
        row.Within("y_2", 0.00218, line.Slope, 0.000005);
        row.Within("u(y_2)", 0.00067, line.SlopeU, 0.000005);
        row.Within("r(y_1, y_2)", -0.930, line.R, 0.0005);
        row.Within("s, °C", 0.0035, line.Residual, 0.00005);
        row.Within("b(30 °C), °C", -0.1494, line.At(10), 0.00005);
        row.Within("u of it, °C", 0.0041, line.UAt(10), 0.00005);
        Assert.Equal(9, line.Dof);
        WorkingCheck.Holds(w);
    }

    [Fact]
    public void MeanAndBoundsGiveTheirStandardUncertainty()
    {
        var a = new Reference("UP-03", "JCGM 100:2008, 4.2", Trust.OwnNumbers);
        var w = new Working();
        Estimate mean = Estimate.Repeated([208.5, 210.2, 209.4, 211.0, 209.9], w);
        a.Within("mean, bar", 209.80, mean.Value, 0.001);
        a.Within("u, bar", 0.416, mean.U, 0.001);
        WorkingCheck.Holds(w);
        var b = new Reference("UP-04", "JCGM 100:2008, 4.3.7", Trust.OwnNumbers);
        b.Within("gauge ±6.4 bar", 3.695, Estimate.Within(0, 6.4).U, 0.001);
        b.Within("read to 2 bar", 0.577, Estimate.Within(0, 1).U, 0.001);
        Assert.Equal(8, Estimate.Reliability(0.25), 9);         // G.4.2: a quarter unsure is eight degrees of freedom
    }

    [Fact]
    public void AForceFromGaugeAndBore()
    {
        var row = new Reference("UP-05", "product rule on UP-03 and UP-04", Trust.OwnNumbers);
        Estimate p = Estimate.Repeated([208.5e5, 210.2e5, 209.4e5, 211.0e5, 209.9e5]);
        UncertainInput[] inputs =
        [
            new("p", "pressure", Dimension.Pressure, p, "repeating"), new("δp", "gauge", Dimension.Pressure, Estimate.Within(0, 6.4e5), "gauge"),
            new("δr", "step", Dimension.Pressure, Estimate.Within(0, 1e5), "gauge"), new("D", "bore", Dimension.Length, Estimate.Within(0.08002, 2e-5), "calliper"),
        ];
        var w = new Working();
        Uncertainty F = Uncertainty.Of(x => (x[0] + x[1] + x[2]) * Math.PI / 4 * x[3] * x[3], inputs, w: w);
        row.Near("F, kN", 105.51, F.Value / 1e3, 0.0005);
        row.Near("u_F, kN", 1.893, F.Combined / 1e3, 0.005);
        row.Near("U, k = 2, kN", 3.79, F.Expanded / 1e3, 0.005);
        Assert.Equal("gauge", F.BySource[0].From);
        WorkingCheck.Holds(w);
    }
}
