using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Measuring;

/// <summary>Student's distribution: how far a mean of few readings may be off. With endless degrees of freedom it is the normal distribution.</summary>
public static class StudentT
{
    /// <summary>Share of the distribution that stands for one, two and three standard deviations of the normal one.</summary>
    public const double TwoSigma = 0.9544997361036416;

    /// <summary>The coverage factor from effective degrees of freedom.</summary>
    public static readonly Citation Source = new("JCGM 100:2008 (GUM)", "annex G, table G.2");

    /// <summary>Share of the distribution below a value.</summary>
    /// <param name="t">The value, finite.</param>
    /// <param name="nu">Degrees of freedom ν, above zero; infinite for the normal distribution.</param>
    /// <returns>From 0 to 1, to about 1e-14.</returns>
    public static double Below(double t, double nu)
    {
        Check.Finite(t);
        if (!(nu > 0))
            Check.Refuse(nameof(nu), nu, "above zero");
        // beyond this the two differ by less than a rounding error
        if (nu > 1e12)
            return 0.5 * ErrorFunction.Complement(-t / Math.Sqrt(2));
        double x = nu / (nu + t * t), tail = 0.5 * IncompleteBeta.Regularized(nu / 2, 0.5, x);
        return t > 0 ? 1 - tail : tail;
    }

    /// <summary>The value below which a share of the distribution lies.</summary>
    /// <param name="share">Above 0 and below 1.</param>
    /// <param name="nu">Degrees of freedom ν, above zero; infinite for the normal distribution.</param>
    public static double Quantile(double share, double nu)
    {
        if (!(share > 0 && share < 1))
            Check.Refuse(nameof(share), share, "above 0 and below 1");
        if (!(nu > 0))
            Check.Refuse(nameof(nu), nu, "above zero");
        if (share == 0.5)
            return 0;
        if (share < 0.5)
            return -Quantile(1 - share, nu);
        double low = 0, high = 1;
        while (Below(high, nu) < share && high < 1e150)
            high *= 2;
        // monotone and smooth: halving is slow and sure
        for (int i = 0; i < 200 && high - low > 1e-15 * high; i++)
        {
            double middle = (low + high) / 2;
            if (Below(middle, nu) < share)
                low = middle;
            else
                high = middle;
        }

        return (low + high) / 2;
    }

    /// <summary>Coverage factor k: the middle share p of the distribution lies within ±k.</summary>
    /// <param name="p">Level of confidence, above 0 and below 1.</param>
    /// <param name="nu">Degrees of freedom ν, above zero; infinite for the normal distribution.</param>
    public static double Coverage(double p, double nu) => Quantile((1 + p) / 2, nu);
}
