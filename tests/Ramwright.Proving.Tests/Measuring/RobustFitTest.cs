using Ramwright.Measuring;

namespace Ramwright.Tests.Measuring;

public class RobustFitTest
{
    [Fact]
    public void ACleanLineIsLeastSquares()
    {
        double[] x = [0, 1, 2, 3, 4, 5, 6], y = [1.1, 2.9, 5.2, 6.8, 9.1, 11.05, 12.9];
        var line = LineFit.Of(x, y);
        RobustFit fit = RobustFit.Of(x, y, TwoPointCurve.Line)!;
        Assert.Empty(fit.Outliers);
        Near.Relative(line.Slope, fit.Q, 1e-6, "slope");
        Near.Relative(line.SlopeU, fit.UQ, 1e-5, "u of the slope");
        Near.Relative(line.R, fit.R, 1e-5, "correlation");
        Near.Relative(line.UAt(3.3), fit.UAt(3.3), 1e-5, "u of the line");
    }

    [Fact]
    public void AThirdOfThePointsMayBeWrong()
    {
        double[] x = [1, 2, 3, 4, 5, 6, 7, 8, 9], y = [.. x.Select(v => 20 - 0.5 * v)];
        y[1] += 6;
        y[5] -= 7;
        y[8] += 9;
        for (int i = 0; i < y.Length; i++)
            y[i] += 0.02 * Math.Sin(7 * i);
        RobustFit fit = RobustFit.Of(x, y, TwoPointCurve.Line)!;
        Assert.Equal([1, 5, 8], fit.Outliers);
        Near.Relative(-0.5, fit.Q, 0.03, "slope");
        Near.Relative(20, fit.P, 0.005, "intercept");
    }

    [Fact]
    public void TheTelephoneCallsComeOutAsPublished()
    {
        // calls from Belgium by year, in tens of millions; for some years minutes were noted in their stead
        double[] year = [.. Enumerable.Range(50, 24).Select(y => (double)y)];
        double[] calls = [4.4, 4.7, 4.7, 5.9, 6.6, 7.3, 8.1, 8.8, 10.6, 12.0, 13.5, 14.9, 16.1, 21.2, 119.0, 124.0, 142.0, 159.0, 182.0, 212.0, 43.0, 24.0, 27.0, 29.0];
        var row = new Reference("RB-01", "P. J. Rousseeuw and A. M. Leroy, Robust Regression and Outlier Detection (1987), telephone calls; MM-fit after Venables and Ripley", Trust.FromMemory);
        RobustFit fit = RobustFit.Of(year, calls, TwoPointCurve.Line)!;
        row.Within("slope of the MM-fit", 1.10, fit.Q, 0.06);
        row.Within("slope by least squares", 5.04, LineFit.Of(year, calls).Slope, 0.005);
        Assert.All(Enumerable.Range(14, 6), i => Assert.Contains(i, fit.Outliers));
        Assert.All(fit.Outliers, i => Assert.InRange(i, 13, 20));
    }

    [Fact]
    public void AFallingCurveIsFoundAgain()
    {
        TwoPointCurve curve = TwoPointCurve.Falling(600e5);
        double[] p = [0, 50e5, 120e5, 200e5, 300e5, 400e5, 500e5, 560e5], q = [.. p.Select(v => 1.6e-5 * Math.Pow(1 - v / 600e5, 1.4))];
        q[3] *= 1.5;
        RobustFit fit = RobustFit.Of(p, q, curve, 1e-9)!;
        Assert.Equal([3], fit.Outliers);
        Near.Relative(1.6e-5, fit.P, 1e-6, "free flow");
        Near.Relative(1.4, fit.Q, 1e-6, "bend");
    }

    [Fact]
    public void APerfectFitNamesNobodyForARoundingError()
    {
        double[] x = [0, 1, 2, 3, 4], y = [.. x.Select(v => 3 + 2 * v)];
        y[4] += 1e-12;
        Assert.Empty(RobustFit.Of(x, y, TwoPointCurve.Line)!.Outliers);
    }

    [Fact]
    public void TooFewOrAllAtOnePlaceGiveNothing()
    {
        Assert.Null(RobustFit.Of([1, 2, 3], [1, 2, 3], TwoPointCurve.Line));
        Assert.Null(RobustFit.Of([2, 2, 2, 2, 2], [1, 2, 3, 4, 5], TwoPointCurve.Line));
        Assert.Throws<ArgumentException>(() => LineFit.Of([1, 1, 1], [1, 2, 3]));
    }
}
