using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Strength;

/// <summary>Buckling of a cylinder's rod, a leg or any slender bar under a centred push: Euler, and J. B. Johnson where it is short.</summary>
/// <remarks>
/// The load is taken as centred. A ram that pushes off centre, or without a guide, bends earlier; K = 2 where nothing guides
/// its end. A bent rod under load lets go without warning: stand clear of the line of the rod.
/// </remarks>
public static class RodBuckling
{
    /// <summary>F_cr = π² E I / (K L)².</summary>
    public static readonly Citation EulerSource = new("Shigley's Mechanical Engineering Design, 9th ed.", "4-12, eq. 4-43");

    /// <summary>σ_cr = S_y − (S_y l / 2π k)² / E.</summary>
    public static readonly Citation JohnsonSource = new("Shigley's Mechanical Engineering Design, 9th ed.", "4-13, eq. 4-48");

    /// <summary>Factor on the buckling load of a cylinder's rod.</summary>
    public static readonly Citation FactorSource = Citation.Practice("factor 3.5 on Euler's load of a hydraulic cylinder's rod");

    private static readonly Citation Round = Citation.Mechanics("round section");

    /// <summary>The usual factor on the buckling load.</summary>
    public const double UsualFactor = 3.5;

    /// <summary>Euler's load, N.</summary>
    /// <param name="E">Young's modulus, Pa.</param>
    /// <param name="I">Least second moment of area, m⁴.</param>
    /// <param name="KL">Effective length, m.</param>
    /// <param name="w">Where to write it down.</param>
    public static double Euler(double E, double I, double KL, Working? w = null)
    {
        double F = Math.PI * Math.PI * Check.Positive(E) * Check.Positive(I) / (Check.Positive(KL) * KL);
        w?.Step("F_cr", "buckling load, Euler", "π² E I / L_k²", F, Dimension.Force, EulerSource,
            ("E", E, Dimension.Stress), ("I", I, Dimension.SecondMoment), ("L_k", KL, Dimension.Length));
        return F;
    }

    /// <summary>Johnson's load, N; for slenderness below <see cref="Transition"/>.</summary>
    /// <param name="E">Young's modulus, Pa.</param>
    /// <param name="Sy">Yield strength, Pa.</param>
    /// <param name="A">Area, m².</param>
    /// <param name="I">Least second moment of area, m⁴.</param>
    /// <param name="KL">Effective length, m.</param>
    /// <param name="w">Where to write it down.</param>
    /// <exception cref="ArgumentOutOfRangeException">Too slender for Johnson's parabola, or an argument not above zero.</exception>
    public static double Johnson(double E, double Sy, double A, double I, double KL, Working? w = null)
    {
        double lambda = Slenderness(A, I, KL);
        if (!(lambda <= Transition(E, Sy) * (1 + 1e-12)))
            throw new ArgumentOutOfRangeException(nameof(KL), KL, "too slender for Johnson's formula; use Euler's");
        double q = Sy * lambda / (2 * Math.PI);
        double F = A * (Sy - q * q / E);
        w?.Step("F_cr", "buckling load, J. B. Johnson", "A (S_y - (S_y λ / (2 π))² / E)", F, Dimension.Force, JohnsonSource,
            ("A", A, Dimension.Area), ("S_y", Sy, Dimension.Stress), ("λ", lambda, Dimension.Number), ("E", E, Dimension.Stress));
        return F;
    }

    /// <summary>Slenderness K L / k, k = √(I/A).</summary>
    /// <param name="A">Area, m².</param>
    /// <param name="I">Least second moment of area, m⁴.</param>
    /// <param name="KL">Effective length, m.</param>
    /// <param name="w">Where to write it down.</param>
    public static double Slenderness(double A, double I, double KL, Working? w = null)
    {
        double lambda = Check.Positive(KL) / Math.Sqrt(Check.Positive(I) / Check.Positive(A));
        w?.Step("λ", "slenderness", "L_k / √(I / A)", lambda, Dimension.Number, JohnsonSource,
            ("L_k", KL, Dimension.Length), ("I", I, Dimension.SecondMoment), ("A", A, Dimension.Area));
        return lambda;
    }

    /// <summary>Slenderness at which Johnson's parabola meets Euler's curve, at half the yield strength.</summary>
    /// <param name="E">Young's modulus, Pa.</param>
    /// <param name="Sy">Yield strength, Pa.</param>
    /// <param name="w">Where to write it down.</param>
    public static double Transition(double E, double Sy, Working? w = null)
    {
        double lambda1 = Math.PI * Math.Sqrt(2 * Check.Positive(E) / Check.Positive(Sy));
        w?.Step("λ_1", "slenderness above which Euler holds", "π √(2 E / S_y)", lambda1, Dimension.Number, JohnsonSource,
            ("E", E, Dimension.Stress), ("S_y", Sy, Dimension.Stress));
        return lambda1;
    }

    /// <summary>Buckling load, N: Euler where slender, Johnson where short.</summary>
    /// <param name="E">Young's modulus, Pa.</param>
    /// <param name="Sy">Yield strength, Pa.</param>
    /// <param name="A">Area, m².</param>
    /// <param name="I">Least second moment of area, m⁴.</param>
    /// <param name="KL">Effective length, m.</param>
    /// <param name="w">Where to write it down.</param>
    public static double Critical(double E, double Sy, double A, double I, double KL, Working? w = null) =>
        Slenderness(A, I, KL, w) > Transition(E, Sy, w) ? Euler(E, I, KL, w) : Johnson(E, Sy, A, I, KL, w);

    /// <summary>Buckling load of a round rod, N.</summary>
    /// <param name="E">Young's modulus, Pa.</param>
    /// <param name="Sy">Yield strength, Pa.</param>
    /// <param name="d">Diameter, m.</param>
    /// <param name="KL">Effective length, m.</param>
    /// <param name="bore">Diameter of a hole along it, m.</param>
    /// <param name="w">Where to write it down.</param>
    public static double CriticalOfRound(double E, double Sy, double d, double KL, double bore = 0, Working? w = null)
    {
        (double A, double I) = RoundSection(d, bore, w);
        return Critical(E, Sy, A, I, KL, w);
    }

    /// <summary>Ram force at which a round rod buckles.</summary>
    /// <param name="share">Push on the rod per newton at the ram; zero or less does not apply.</param>
    /// <param name="E">Young's modulus, Pa.</param>
    /// <param name="Sy">Yield strength, Pa.</param>
    /// <param name="d">Diameter, m.</param>
    /// <param name="KL">Effective length, m.</param>
    /// <param name="factor">Factor on the buckling load, at least 1. It stands alone; the load factor is not put on top.</param>
    /// <param name="bore">Diameter of a hole along it, m.</param>
    /// <param name="w">Where to write it down.</param>
    public static Limit? Buckles(
        double share, double E, double Sy, double d, double KL, double factor = UsualFactor, double bore = 0, Working? w = null)
    {
        Check.AtLeast(factor, 1);
        if (!(Check.Finite(share) > 0))
            return null;
        double Fcr = CriticalOfRound(E, Sy, d, KL, bore, w), u = share / Fcr;
        w?.Step("u", "share of the buckling load used by one newton", "f / F_cr", u, Dimension.Number, FactorSource,
            ("f", share, Dimension.Force), ("F_cr", Fcr, Dimension.Force));
        return Limit.FromUse(u, 1, factor, w);
    }

    /// <summary>Ram force at which a round rod is squeezed to its yield strength.</summary>
    /// <param name="share">Force in the rod per newton at the ram, either sign.</param>
    /// <param name="Sy">Yield strength, Pa.</param>
    /// <param name="d">Diameter, at a neck or thread the root's, m.</param>
    /// <param name="factors">Factors; γ_M0 and γ_F are used.</param>
    /// <param name="bore">Diameter of a hole along it, m.</param>
    /// <param name="w">Where to write it down.</param>
    public static Limit? Squashes(double share, double Sy, double d, PartialFactors factors, double bore = 0, Working? w = null)
    {
        Check.Finite(share);
        (double A, _) = RoundSection(d, bore, w);
        double u = Math.Abs(share) / (A * Check.Positive(Sy));
        w?.Step("u", "share of the yield load used by one newton", "abs(f) / (A S_y)", u, Dimension.Number, Round,
            ("f", share, Dimension.Force), ("A", A, Dimension.Area), ("S_y", Sy, Dimension.Stress));
        return Limit.FromUse(u, factors.M0, factors.Load, w);
    }

    private static (double A, double I) RoundSection(double d, double bore, Working? w)
    {
        Check.Positive(d);
        if (!(bore >= 0 && bore < d))
            throw new ArgumentOutOfRangeException(nameof(bore), bore, "must be zero or more and smaller than the rod");
        double A = Math.PI / 4 * (d * d - bore * bore), I = Math.PI / 64 * (Math.Pow(d, 4) - Math.Pow(bore, 4));
        w?.Step("A", "area of the rod", "π (d² - d_i²) / 4", A, Dimension.Area, Round,
            ("d", d, Dimension.Length), ("d_i", bore, Dimension.Length));
        w?.Step("I", "second moment of the rod", "π (d⁴ - d_i⁴) / 64", I, Dimension.SecondMoment, Round,
            ("d", d, Dimension.Length), ("d_i", bore, Dimension.Length));
        return (A, I);
    }
}
