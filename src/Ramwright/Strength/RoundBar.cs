using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Strength;

/// <summary>A round rod or tube that is pushed, pulled and bent at once.</summary>
public static class RoundBar
{
    /// <summary>Direct stress of a straight round bar.</summary>
    public static readonly Citation Source = Citation.Mechanics("stress of a straight round bar: F/A + M/W");

    /// <summary>Pull on a bar by its stress area.</summary>
    public static readonly Citation TensionSource = new("EN 1993-1-1:2005", "6.2.3, eq. 6.6 and 6.7");

    /// <summary>Ram force at which the worst fibre yields.</summary>
    /// <param name="N">Push or pull per newton at the ram, either sign.</param>
    /// <param name="M">Bending moment per newton at the ram, m, either sign.</param>
    /// <param name="d">Diameter, m.</param>
    /// <param name="bore">Hole along it, m; 0 for a solid rod.</param>
    /// <param name="fy">Yield strength, Pa.</param>
    /// <param name="factors">Factors; γ_M0 and γ_F are used.</param>
    /// <param name="w">Where to write it down.</param>
    public static Limit? Yields(double N, double M, double d, double bore, double fy, PartialFactors factors, Working? w = null)
    {
        double n = Math.Abs(Check.Finite(N)), m = Math.Abs(Check.Finite(M));
        Check.Positive(d);
        if (!(bore >= 0 && bore < d))
            throw new ArgumentOutOfRangeException(nameof(bore), bore, "must be zero or more and smaller than the rod");
        double A = Math.PI / 4 * (d * d - bore * bore), W = Math.PI / 32 * (Math.Pow(d, 4) - Math.Pow(bore, 4)) / d;
        double sigma = n / A + m / W, u = sigma / Check.Positive(fy);
        w?.Step("A", "area of the rod", "π (d² - d_i²) / 4", A, Dimension.Area, Source, ("d", d, Dimension.Length), ("d_i", bore, Dimension.Length));
        w?.Step("W", "section modulus of the rod", "π (d⁴ - d_i⁴) / (32 d)", W, Dimension.SectionModulus, Source,
            ("d", d, Dimension.Length), ("d_i", bore, Dimension.Length));
        w?.Step("σ", "stress on the worst side, per newton", "N / A + M / W", sigma, Dimension.Stress, Source,
            ("N", n, Dimension.Force), ("A", A, Dimension.Area), ("M", m, Dimension.Moment), ("W", W, Dimension.SectionModulus));
        w?.Step("u", "share of the yield strength used by one newton", "σ / f_y", u, Dimension.Number, Source,
            ("σ", sigma, Dimension.Stress), ("f_y", fy, Dimension.Stress));
        return Limit.FromUse(u, factors.M0, factors.Load, w);
    }

    /// <summary>Ram force at which a bar of known steel stretches for good or breaks in its thinnest section.</summary>
    /// <param name="share">Pull per newton at the ram; zero or a push does not apply.</param>
    /// <param name="A">Area of the thinnest section: the stress area of a thread, m².</param>
    /// <param name="fy">Yield strength, Pa.</param>
    /// <param name="fu">Tensile strength, Pa.</param>
    /// <param name="factors">Factors; γ_M0, γ_M2 and γ_F are used.</param>
    /// <param name="w">Where to write it down.</param>
    public static Limit? Pulls(double share, double A, double fy, double fu, PartialFactors factors, Working? w = null)
    {
        if (!(Check.Finite(share) > 1 / Limit.Farthest))
            return null;
        double yield = Check.Positive(A) * Check.Positive(fy), breaks = 0.9 * A * Check.Positive(fu);
        double gives = Math.Min(yield, breaks) / share, design = Math.Min(yield / factors.M0, breaks / factors.M2) / share;
        w?.Step("F_gives", "ram force at which it stretches for good", "min(A f_y, 0.9 A f_u) / f", gives, Dimension.Force, TensionSource,
            ("A", A, Dimension.Area), ("f_y", fy, Dimension.Stress), ("f_u", fu, Dimension.Stress), ("f", share, Dimension.Force));
        w?.Step("F_Rd", "the same with design resistances", "min(A f_y / γ_M0, 0.9 A f_u / γ_M2) / f", design, Dimension.Force, TensionSource,
            ("A", A, Dimension.Area), ("f_y", fy, Dimension.Stress), ("γ_M0", factors.M0, Dimension.Number),
            ("f_u", fu, Dimension.Stress), ("γ_M2", factors.M2, Dimension.Number), ("f", share, Dimension.Force));
        return Limit.FromForces(gives, design, factors.Load, w);
    }
}
