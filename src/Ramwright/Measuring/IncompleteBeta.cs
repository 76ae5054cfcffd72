namespace Ramwright.Measuring;

/// <summary>The regularized incomplete beta function I_x(a, b), by its continued fraction (modified Lentz).</summary>
internal static class IncompleteBeta
{
    /// <summary>I_x(a, b).</summary>
    /// <param name="a">Above zero.</param>
    /// <param name="b">Above zero.</param>
    /// <param name="x">From 0 to 1.</param>
    public static double Regularized(double a, double b, double x)
    {
        if (x <= 0)
            return 0;
        if (x >= 1)
            return 1;
        double front = Math.Exp(LogGamma(a + b) - LogGamma(a) - LogGamma(b) + a * Math.Log(x) + b * Math.Log(1 - x));
        // the fraction converges fast on this side of the mean only
        return x < (a + 1) / (a + b + 2) ? front * Fraction(a, b, x) / a : 1 - front * Fraction(b, a, 1 - x) / b;
    }

    private static double Fraction(double a, double b, double x)
    {
        const double Tiny = 1e-300;
        double c = 1, d = 1 - (a + b) * x / (a + 1);
        d = 1 / (Math.Abs(d) < Tiny ? Tiny : d);
        double f = d;
        for (int m = 1; m < 100_000; m++)
        {
            double even = m * (b - m) * x / ((a + 2 * m - 1) * (a + 2 * m));
            f *= Step(even);
            double odd = -(a + m) * (a + b + m) * x / ((a + 2 * m) * (a + 2 * m + 1));
            double by = Step(odd);
            f *= by;
            if (Math.Abs(by - 1) < 1e-16)
                break;
        }

        return f;

        double Step(double by)
        {
            d = 1 + by * d;
            d = 1 / (Math.Abs(d) < Tiny ? Tiny : d);
            c = 1 + by / c;
            c = Math.Abs(c) < Tiny ? Tiny : c;
            return c * d;
        }
    }

    /// <summary>ln Γ(x) for x above zero: Stirling's series, after stepping up to where it is sharp.</summary>
    private static double LogGamma(double x)
    {
        double below = 0;
        while (x < 15)
            below += Math.Log(x++);
        double i = 1 / x, i2 = i * i;
        return (x - 0.5) * Math.Log(x) - x + 0.5 * Math.Log(2 * Math.PI)
            + i * (1.0 / 12 - i2 * (1.0 / 360 - i2 * (1.0 / 1260 - i2 * (1.0 / 1680 - i2 / 1188)))) - below;
    }
}
