namespace Ramwright.Measuring;

/// <summary>The error function's complement, by series near zero and by continued fraction beyond.</summary>
internal static class ErrorFunction
{
    /// <summary>erfc(x) = 1 − erf(x), to about 1e-15 of itself.</summary>
    public static double Complement(double x)
    {
        if (x < 0)
            return 2 - Complement(-x);
        return x < 2 ? 1 - Series(x) : x > 27 ? 0 : Fraction(x);
    }

    // erf(x) = 2/√π exp(−x²) Σ 2ⁿ x^(2n+1) / (1·3·5···(2n+1)): all terms of one sign
    private static double Series(double x)
    {
        double term = x, sum = x;
        for (int n = 1; term > 1e-17 * sum && n < 200; n++)
        {
            term *= 2 * x * x / (2 * n + 1);
            sum += term;
        }

        return 2 / Math.Sqrt(Math.PI) * Math.Exp(-x * x) * sum;
    }

    // erfc(x) = exp(−x²)/√π · 1/(x + ½/(x + 1/(x + 3/2/(x + ...)))), from far inside out
    private static double Fraction(double x)
    {
        double f = x;
        for (int n = 120; n >= 1; n--)
            f = x + n / 2.0 / f;
        return Math.Exp(-x * x) / Math.Sqrt(Math.PI) / f;
    }
}
