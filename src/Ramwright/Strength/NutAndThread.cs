using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Strength;

/// <summary>Threads stripped off a rod, or out of a nut or tapped plate.</summary>
/// <remarks>
/// Shear strength is taken as 0.577 of the tensile strength. The load is taken as shared by all turns in mesh; beyond about one diameter
/// of engagement extra turns help less than this says. The basic sizes overstate the thread by up to a fifth: use <see cref="ThreadFit.Loosest"/> for a press.
/// </remarks>
public static class NutAndThread
{
    /// <summary>Areas of thread in shear.</summary>
    public static readonly Citation Source = new("FED-STD-H28/2B", "appendix on strength; Machinery's Handbook, 'Lengths of Engagement of Threads'");
    /// <summary>Shear strength over tensile strength.</summary>
    public static readonly Citation ShearSource = new("Machinery's Handbook", "'Lengths of Engagement of Threads'", Standing.FromMemory);

    /// <summary>Shear strength over tensile strength: 1/√3, rounded as handbooks do.</summary>
    public const double ShearShare = 0.577;

    /// <summary>Area that shears when the rod's thread strips, m².</summary>
    /// <param name="fit">Diameters.</param>
    /// <param name="Le">Length in mesh, m.</param>
    /// <param name="w">Where to write it down.</param>
    public static double OuterArea(ThreadFit fit, double Le, Working? w = null)
    {
        double A = Math.PI * fit.NutD1 * Check.Positive(Le) / fit.P * (fit.P / 2 + (fit.D2 - fit.NutD1) / Math.Sqrt(3));
        w?.Step("A_ext", "shear area of the rod's thread", "π D_1 L_e / P · (P / 2 + (d_2 - D_1) / √(3))", A, Dimension.Area, Source,
            ("D_1", fit.NutD1, Dimension.Length), ("L_e", Le, Dimension.Length), ("P", fit.P, Dimension.Length), ("d_2", fit.D2, Dimension.Length));
        return A;
    }

    /// <summary>Area that shears when the nut's or the plate's thread strips, m².</summary>
    /// <param name="fit">Diameters.</param>
    /// <param name="Le">Length in mesh, m.</param>
    /// <param name="w">Where to write it down.</param>
    public static double InnerArea(ThreadFit fit, double Le, Working? w = null)
    {
        double A = Math.PI * fit.D * Check.Positive(Le) / fit.P * (fit.P / 2 + (fit.D - fit.NutD2) / Math.Sqrt(3));
        w?.Step("A_int", "shear area of the nut's thread", "π d L_e / P · (P / 2 + (d - D_2) / √(3))", A, Dimension.Area, Source,
            ("d", fit.D, Dimension.Length), ("L_e", Le, Dimension.Length), ("P", fit.P, Dimension.Length), ("D_2", fit.NutD2, Dimension.Length));
        return A;
    }

    /// <summary>Length in mesh at which a thread stripping is as strong as a given load, m.</summary>
    /// <param name="load">Load to match, N: the rod's breaking load.</param>
    /// <param name="fit">Diameters.</param>
    /// <param name="fu">Tensile strength of the part whose thread would strip, Pa.</param>
    /// <param name="inner">Whether that is the nut or plate; else the rod.</param>
    public static double BalancedEngagement(double load, ThreadFit fit, double fu, bool inner) =>
        Check.Positive(load) / (ShearShare * Check.Positive(fu) * (inner ? InnerArea(fit, 1) : OuterArea(fit, 1)));

    /// <summary>Ram force at which the weaker of the two threads strips.</summary>
    /// <param name="share">Pull on the thread per newton at the ram, either sign.</param>
    /// <param name="fit">Diameters.</param>
    /// <param name="Le">Length in mesh, m.</param>
    /// <param name="fuRod">Tensile strength of the rod, Pa.</param>
    /// <param name="fuNut">Tensile strength of the nut or tapped plate, Pa.</param>
    /// <param name="factors">Factors; γ_M2 and γ_F are used.</param>
    /// <param name="w">Where to write it down.</param>
    public static Limit? Strips(
        double share, ThreadFit fit, double Le, double fuRod, double fuNut, PartialFactors factors, Working? w = null)
    {
        double f = Math.Abs(Check.Finite(share));
        if (f < 1 / Limit.Farthest)
            return null;
        double ext = OuterArea(fit, Le, w), inn = InnerArea(fit, Le, w);
        double R = ShearShare * Math.Min(ext * Check.Positive(fuRod), inn * Check.Positive(fuNut)), u = f / R;
        w?.Step("F_strip", "load at which the weaker thread strips", "0.577 min(A_ext f_ur, A_int f_un)", R, Dimension.Force, ShearSource,
            ("A_ext", ext, Dimension.Area), ("f_ur", fuRod, Dimension.Stress), ("A_int", inn, Dimension.Area), ("f_un", fuNut, Dimension.Stress));
        w?.Step("u", "share of it used by one newton", "f / F_strip", u, Dimension.Number, ShearSource,
            ("f", f, Dimension.Force), ("F_strip", R, Dimension.Force));
        return Limit.FromUse(u, factors.M2, factors.Load, w);
    }
}
