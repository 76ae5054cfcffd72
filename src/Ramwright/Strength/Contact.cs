using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Strength;

/// <summary>Round steel pressed on flat steel, and pads.</summary>
/// <remarks>Elastic, dry, without sliding. Steel first yields beneath the surface, where it does not show.</remarks>
public static class Contact
{
    /// <summary>Hertz.</summary>
    public static readonly Citation Source = new("Shigley's Mechanical Engineering Design, 9th ed.", "3-19", Standing.FromMemory);
    private static readonly Citation Pad = Citation.Mechanics("force over area");

    /// <summary>Greatest shear stress beneath a line contact, over the greatest pressure.</summary>
    public const double ShearUnderLine = 0.30;

    /// <summary>E* = E/(2(1 − ν²)) of two parts of the same steel, Pa.</summary>
    public static double Modulus(double E = 210e9, double nu = 0.3) => Check.Positive(E) / (2 * (1 - nu * nu));

    /// <summary>Greatest pressure, Pa, and half width, m, of a round bar lying on a flat.</summary>
    /// <param name="F">Force, N.</param>
    /// <param name="R">Radius of the bar, m.</param>
    /// <param name="L">Length, m.</param>
    /// <param name="w">Where to write it down.</param>
    public static (double Pressure, double HalfWidth) Line(double F, double R, double L, Working? w = null)
    {
        double Es = Modulus(), p0 = Math.Sqrt(Check.Positive(F) * Es / (Math.PI * Check.Positive(L) * Check.Positive(R)));
        w?.Step("p_0", "greatest pressure under the bar", "√(F E_s / (π L R))", p0, Dimension.Stress, Source,
            ("F", F, Dimension.Force), ("E_s", Es, Dimension.Stress), ("L", L, Dimension.Length), ("R", R, Dimension.Length));
        return (p0, Math.Sqrt(4 * F * R / (Math.PI * L * Es)));
    }

    /// <summary>Greatest pressure, Pa, and radius of the contact, m, of a ball on a flat.</summary>
    /// <param name="F">Force, N.</param>
    /// <param name="R">Radius of the ball, m.</param>
    /// <param name="w">Where to write it down.</param>
    public static (double Pressure, double Radius) Point(double F, double R, Working? w = null)
    {
        double Es = Modulus(), a = Math.Cbrt(3 * Check.Positive(F) * Check.Positive(R) / (4 * Es)), p0 = 3 * F / (2 * Math.PI * a * a);
        w?.Step("a", "radius of the contact", "∛(3 F R / (4 E_s))", a, Dimension.Length, Source,
            ("F", F, Dimension.Force), ("R", R, Dimension.Length), ("E_s", Es, Dimension.Stress));
        w?.Step("p_0", "greatest pressure under the ball", "3 F / (2 π a²)", p0, Dimension.Stress, Source,
            ("F", F, Dimension.Force), ("a", a, Dimension.Length));
        return (p0, a);
    }

    /// <summary>Ram force at which steel under a round bar begins to yield beneath the surface: 0.30 p₀ = f_y/2 (Tresca).</summary>
    /// <param name="share">Force per newton at the ram.</param>
    /// <param name="R">Radius of the bar, m.</param>
    /// <param name="L">Length, m.</param>
    /// <param name="fy">Yield strength of the softer part, Pa.</param>
    /// <param name="factors">Factors; γ_M0 on the strength and γ_F are used.</param>
    /// <param name="w">Where to write it down.</param>
    public static Limit? LineYields(double share, double R, double L, double fy, PartialFactors factors, Working? w = null)
    {
        double f = Math.Abs(Check.Finite(share));
        if (f < 1 / Limit.Farthest)
            return null;
        double Es = Modulus(), p = Check.Positive(fy) / (2 * ShearUnderLine);
        double gives = p * p * Math.PI * Check.Positive(L) * Check.Positive(R) / (Es * f), design = gives / (factors.M0 * factors.M0);
        w?.Step("F_gives", "ram force at which steel yields beneath the surface", "(f_y / 0.6)² π L R / (E_s f)", gives, Dimension.Force, Source,
            ("f_y", fy, Dimension.Stress), ("L", L, Dimension.Length), ("R", R, Dimension.Length), ("E_s", Es, Dimension.Stress), ("f", f, Dimension.Force));
        w?.Step("F_Rd", "the same with the design strength", "F_gives / γ_M0²", design, Dimension.Force, Source,
            ("F_gives", gives, Dimension.Force), ("γ_M0", factors.M0, Dimension.Number));
        return Limit.FromForces(gives, design, factors.Load, w);
    }

    /// <summary>Ram force at which a flat pad is pressed to the yield strength of what it stands on.</summary>
    /// <param name="share">Force per newton at the ram.</param>
    /// <param name="area">Area of the pad, m².</param>
    /// <param name="fy">Yield strength of the softer part, Pa.</param>
    /// <param name="factors">Factors; γ_M0 and γ_F are used.</param>
    /// <param name="w">Where to write it down.</param>
    public static Limit? PadYields(double share, double area, double fy, PartialFactors factors, Working? w = null)
    {
        double f = Math.Abs(Check.Finite(share)), u = f / (Check.Positive(area) * Check.Positive(fy));
        w?.Step("u", "share of the yield strength used by one newton", "f / (A f_y)", u, Dimension.Number, Pad,
            ("f", f, Dimension.Force), ("A", area, Dimension.Area), ("f_y", fy, Dimension.Stress));
        return Limit.FromUse(u, factors.M0, factors.Load, w);
    }
}
