using Ramwright.Quantities;
using Ramwright.Stock;
using Ramwright.Workings;

namespace Ramwright.Fabrication.Drilling;

/// <summary>Torque and the preload it gives, by the friction of thread and head.</summary>
/// <remarks>Stay out of the line of a bolt while tightening: one that breaks flies. Torque is a poor measure of preload: the range says how poor.</remarks>
public static class Tightening
{
    /// <summary>Torque of a preload.</summary>
    public static readonly Citation TorqueSource = new("VDI 2230-1:2015", "assembly preload and tightening torque, after Kellermann and Klein");
    /// <summary>How far a wrench in one hand strays.</summary>
    public static readonly Citation WrenchPractice = Citation.Practice("a torque wrench in a workshop strays by a tenth either way");

    /// <summary>Share of the yield strength that tightening may use up.</summary>
    public const double Use = 0.9;
    /// <summary>Least friction of lightly oiled steel.</summary>
    public const double LeastFriction = 0.10;
    /// <summary>Friction that is usual for lightly oiled steel.</summary>
    public const double UsualFriction = 0.12;
    /// <summary>Most friction of lightly oiled steel.</summary>
    public const double MostFriction = 0.16;
    /// <summary>How far a wrench strays.</summary>
    public const double Wrench = 0.10;

    /// <summary>Mean diameter on which head or nut rubs, m: of the washer face and the hole.</summary>
    /// <param name="thread">Thread.</param>
    /// <remarks>Hexagons of ISO 4014; their washer face is 0.94 of the width across flats, near enough. Inch hexagons are one and a half diameters wide.</remarks>
    public static double HeadDiameter(ScrewThread thread)
    {
        ArgumentNullException.ThrowIfNull(thread);
        return (0.94 * AcrossFlats(thread) + ClearanceHole.Usual(thread)) / 2;
    }

    /// <summary>Width across flats of the hexagon, m; ISO 4014, or one and a half diameters where that has none.</summary>
    public static double AcrossFlats(ScrewThread thread)
    {
        ArgumentNullException.ThrowIfNull(thread);
        double mm = thread.D * 1000;
        foreach ((double d, double flats) in Hexagons)
        {
            if (Math.Abs(d - mm) < 1e-3)
                return flats / 1000;
        }

        return 1.5 * thread.D;
    }

    // thread, width across flats, mm
    private static readonly (double D, double Flats)[] Hexagons =
    [
        (6, 10), (8, 13), (10, 16), (12, 18), (14, 21), (16, 24), (18, 27), (20, 30), (22, 34), (24, 36), (27, 41), (30, 46), (33, 50), (36, 55), (39, 60), (42, 65), (45, 70), (48, 75), (52, 80),
        (56, 85), (60, 90), (64, 95),
    ];

    /// <summary>Torque for a preload, N·m.</summary>
    /// <param name="F">Preload F_M, N.</param>
    /// <param name="thread">Thread.</param>
    /// <param name="mu">Friction μ of thread and head.</param>
    /// <param name="w">Where to write it down.</param>
    public static double Torque(double F, ScrewThread thread, double mu, Working? w = null)
    {
        ArgumentNullException.ThrowIfNull(thread);
        double D = HeadDiameter(thread), M = Check.Positive(F) * (0.16 * thread.P + 0.58 * thread.D2 * Check.Positive(mu) + D / 2 * mu);
        w?.Step("M_A", "tightening torque", "F_M (0.16 P + 0.58 d_2 μ + D_Km / 2 · μ)", M, Dimension.Moment, TorqueSource,
            ("F_M", F, Dimension.Force), ("P", thread.P, Dimension.Length), ("d_2", thread.D2, Dimension.Length), ("μ", mu, Dimension.Number), ("D_Km", D, Dimension.Length));
        return M;
    }

    /// <summary>Preload at which pull and twist together use up a share of the yield strength, N.</summary>
    /// <param name="thread">Thread.</param>
    /// <param name="Rp">Yield strength R_p0.2, Pa.</param>
    /// <param name="mu">Friction μ in the thread.</param>
    /// <param name="nu">Share ν.</param>
    /// <param name="w">Where to write it down.</param>
    public static double MostPreload(ScrewThread thread, double Rp, double mu, double nu = Use, Working? w = null)
    {
        ArgumentNullException.ThrowIfNull(thread);
        double d3 = thread.D - 1.226869 * thread.P, d0 = (thread.D2 + d3) / 2, A0 = Math.PI / 4 * d0 * d0;
        double twist = 1.5 * thread.D2 / d0 * (thread.P / (Math.PI * thread.D2) + 1.155 * Check.Positive(mu));
        double F = Check.Positive(nu) * Check.Positive(Rp) * A0 / Math.Sqrt(1 + 3 * twist * twist);
        w?.Step("τ_σ", "twist over pull in the thread", "1.5 d_2 / d_0 · (P / (π d_2) + 1.155 μ)", twist, Dimension.Number, TorqueSource,
            ("d_2", thread.D2, Dimension.Length), ("d_0", d0, Dimension.Length), ("P", thread.P, Dimension.Length), ("μ", mu, Dimension.Number));
        w?.Step("F_M", "most preload while tightening", "ν R_p0.2 A_0 / √(1 + 3 τ_σ²)", F, Dimension.Force, TorqueSource,
            ("ν", nu, Dimension.Number), ("R_p0.2", Rp, Dimension.Stress), ("A_0", A0, Dimension.Area), ("τ_σ", twist, Dimension.Number));
        return F;
    }

    /// <summary>Torque to set, and what preload it leaves.</summary>
    /// <param name="thread">Thread.</param>
    /// <param name="Rp">Yield strength of the bolt, Pa.</param>
    /// <param name="w">Where to write it down.</param>
    /// <returns>
    /// A torque at which the bolt stays within <see cref="Use"/> of its yield strength even where friction is least and the wrench strays upward; with the least,
    /// usual and most preload.
    /// </returns>
    public static TorqueSetting Set(ScrewThread thread, double Rp, Working? w = null)
    {
        double most = MostPreload(thread, Rp, LeastFriction, Use, w), M = Torque(most, thread, LeastFriction, w) / (1 + Wrench);
        w?.Step("M", "torque to set, so that a wrench that strays up stays below it", "M_A / 1.1", M, Dimension.Moment, WrenchPractice,
            ("M_A", M * (1 + Wrench), Dimension.Moment));
        double least = M * (1 - Wrench) / Torque(1, thread, MostFriction), usual = M / Torque(1, thread, UsualFriction);
        return new TorqueSetting(M, least, usual, most);
    }
}

/// <summary>A torque and the preload it leaves.</summary>
/// <param name="Torque">N·m.</param>
/// <param name="Least">With most friction and a wrench that strays down, N.</param>
/// <param name="Usual">With the usual friction, N.</param>
/// <param name="Most">With least friction and a wrench that strays up, N.</param>
public sealed record TorqueSetting(double Torque, double Least, double Usual, double Most);
