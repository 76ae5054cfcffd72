using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Strength;

/// <summary>Tightening a bolt or tie rod, and what a preloaded joint does under load.</summary>
/// <remarks>Torque is a poor measure of preload: ±30 % for the same torque, more when dry, rusty or greased differently. A tie rod is better set by its stretch.
/// Stay out of the line of the rod while tightening; a breaking rod flies.</remarks>
public static class Preload
{
    /// <summary>Torque and recommended preload.</summary>
    public static readonly Citation TorqueSource = new("Shigley's Mechanical Engineering Design, 9th ed.", "8-8, eq. 8-27 and 8-31", Standing.FromMemory);
    /// <summary>Share of the load that reaches the bolt.</summary>
    public static readonly Citation JointSource = new("Shigley's Mechanical Engineering Design, 9th ed.", "8-7, eq. 8-24, and 8-9", Standing.FromMemory);
    private static readonly Citation Hooke = Citation.Mechanics("stretch of a bar");

    /// <summary>Torque coefficient of plain, lightly oiled threads.</summary>
    public const double UsualK = 0.2;
    /// <summary>Preload of a joint that is to be taken apart again, over the proof load.</summary>
    public const double UsualShare = 0.75;

    /// <summary>Torque for a preload, N·m: K F d.</summary>
    /// <param name="F">Preload, N.</param>
    /// <param name="d">Nominal diameter, m.</param>
    /// <param name="K">Torque coefficient, 0.1 to 0.35.</param>
    /// <param name="w">Where to write it down.</param>
    public static double Torque(double F, double d, double K = UsualK, Working? w = null)
    {
        double T = Check.Positive(K) * Check.Positive(F) * Check.Positive(d);
        w?.Step("T", "tightening torque", "K F d", T, Dimension.Moment, TorqueSource,
            ("K", K, Dimension.Number), ("F", F, Dimension.Force), ("d", d, Dimension.Length));
        return T;
    }

    /// <summary>Force in a bolt of a joint that has not opened, N: F_i + C P.</summary>
    /// <param name="Fi">Preload, N.</param>
    /// <param name="C">Bolt's share of an outside load: k_b/(k_b + k_m), 0 to 1.</param>
    /// <param name="P">Outside pull on this bolt, N.</param>
    /// <returns>F_i + C P; once the joint has opened, P.</returns>
    public static double BoltForce(double Fi, double C, double P) =>
        Check.NotNegative(P) < Separation(Fi, C) ? Fi + C * P : P;

    /// <summary>Outside pull at which the joint opens, N: F_i/(1 − C).</summary>
    /// <param name="Fi">Preload, N.</param>
    /// <param name="C">Bolt's share, 0 or more, below 1.</param>
    /// <param name="w">Where to write it down.</param>
    public static double Separation(double Fi, double C, Working? w = null)
    {
        Check.NotNegative(Fi);
        if (!(C >= 0 && C < 1))
            throw new ArgumentOutOfRangeException(nameof(C), C, "must be zero or more and below 1");
        double P = Fi / (1 - C);
        w?.Step("P_0", "pull at which the joint opens", "F_i / (1 - C)", P, Dimension.Force, JointSource,
            ("F_i", Fi, Dimension.Force), ("C", C, Dimension.Number));
        return P;
    }

    /// <summary>Ram force at which a preloaded joint opens; a service limit, without factors.</summary>
    /// <param name="share">Pull on the joint's bolt per newton at the ram; zero or a push does not apply.</param>
    /// <param name="Fi">Preload, N, above zero.</param>
    /// <param name="C">Bolt's share.</param>
    /// <param name="w">Where to write it down.</param>
    public static Limit? Opens(double share, double Fi, double C, Working? w = null)
    {
        Check.Positive(Fi);
        if (!(Check.Finite(share) > 0))
            return null;
        double P0 = Separation(Fi, C, w), u = share / P0;
        w?.Step("u", "share of it used by one newton", "f / P_0", u, Dimension.Number, JointSource,
            ("f", share, Dimension.Force), ("P_0", P0, Dimension.Force));
        return Limit.FromUse(u, 1, 1, w);
    }

    /// <summary>Stretch of a rod, m: F L/(E A).</summary>
    /// <param name="F">Pull, N.</param>
    /// <param name="L">Length, m.</param>
    /// <param name="A">Area: the stress area where threaded, m².</param>
    /// <param name="E">Young's modulus, Pa.</param>
    /// <param name="w">Where to write it down.</param>
    public static double Stretch(double F, double L, double A, double E = 210e9, Working? w = null)
    {
        double d = Check.Finite(F) * Check.Positive(L) / (Check.Positive(E) * Check.Positive(A));
        w?.Step("δ", "stretch", "F L / (E A)", d, Dimension.Length, Hooke,
            ("F", F, Dimension.Force), ("L", L, Dimension.Length), ("E", E, Dimension.Stress), ("A", A, Dimension.Area));
        return d;
    }
}
