using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Jobs;

/// <summary>Punching and shearing: force, stripping, clearance, work, the punch itself.</summary>
public static class Cutting
{
    /// <summary>Force over the sheared edge.</summary>
    public static readonly Citation Groover = new("M. P. Groover, Fundamentals of Modern Manufacturing", "sheet metalworking: cutting", Standing.FromMemory);
    /// <summary>Shear strength of a share of the tensile strength.</summary>
    public static readonly Citation ByTensile = new("S. Kalpakjian, S. Schmid, Manufacturing Engineering and Technology", "shearing: 0.7 of the tensile strength; 0.8 is the safe side", Standing.FromMemory);
    /// <summary>Stripping, slope, work.</summary>
    public static readonly Citation ToolDesign = Citation.Practice("tool design: stripping 10 to 20 %, work 0.35 to 0.7 of force times thickness, slope of a thickness halves the peak");
    /// <summary>Clearance of structural punching.</summary>
    public static readonly Citation Clearances = Citation.Practice("structural punching: 5 to 10 % of the thickness per side");
    /// <summary>Stress on the punch.</summary>
    public static readonly Citation PunchSource = Citation.Mechanics("force of the edge over the face of the punch");
    /// <summary>Shear by von Mises.</summary>
    public static readonly Citation Mises = Citation.Mechanics("von Mises: shear strength is 1/√3 of the flow stress");

    /// <summary>What hardened tool steel stands as a punch, Pa; a rule.</summary>
    public const double PunchStands = 1300e6;

    /// <summary>Share of force times thickness that is work: middling steel.</summary>
    public const double WorkShare = 0.5;

    /// <summary>Force: S L t, N.</summary>
    /// <param name="S">Shear strength, Pa.</param>
    /// <param name="L">Length of the edge, m.</param>
    /// <param name="t">Thickness, m.</param>
    /// <param name="w">Where to write it down.</param>
    public static double Force(double S, double L, double t, Working? w = null)
    {
        double F = Check.Positive(S) * Check.Positive(L) * Check.Positive(t);
        w?.Step("F", "force to cut", "S L t", F, Dimension.Force, Groover, ("S", S, Dimension.Stress), ("L", L, Dimension.Length), ("t", t, Dimension.Length));
        return F;
    }

    /// <summary>Shear strength from tensile strength, Pa.</summary>
    /// <param name="R_m">Pa.</param>
    /// <param name="share">0.7 to 0.8.</param>
    /// <param name="w">Where to write it down.</param>
    public static double ShearStrength(double R_m, double share, Working? w = null)
    {
        double S = Check.Positive(R_m) * Check.Efficiency(share);
        w?.Step("S", "shear strength", "k R_m", S, Dimension.Stress, ByTensile, ("k", share, Dimension.Number), ("R_m", R_m, Dimension.Stress));
        return S;
    }

    /// <summary>Clearance per side, m: a share of the thickness.</summary>
    /// <param name="A_c">0.045 soft aluminium, 0.06 brass and soft stainless, 0.075 steel; 0.05 to 0.1 in structural work.</param>
    /// <param name="t">Thickness, m.</param>
    public static double Clearance(double A_c, double t) => Check.Positive(A_c) * Check.Positive(t);

    /// <summary>Mean stress on a round punch: 4 S t/d, Pa.</summary>
    public static double PunchStress(double S, double t, double d, Working? w = null)
    {
        double σ = 4 * Check.Positive(S) * Check.Positive(t) / Check.Positive(d);
        w?.Step("σ_p", "mean stress on the punch", "4 S t / d", σ, Dimension.Stress, PunchSource, ("S", S, Dimension.Stress), ("t", t, Dimension.Length), ("d", d, Dimension.Length));
        return σ;
    }

    /// <summary>Work: m F t, J.</summary>
    public static double Work(double m, double F, double t) => Check.Positive(m) * Check.Positive(F) * Check.Positive(t);

    /// <summary>Least and greatest share that slope on the tool leaves of the peak: a half to a third where it is a thickness high.</summary>
    public static (double Least, double Most) PeakShare(double slope, double t)
    {
        double s = Check.NotNegative(slope);
        double cut = WorkShare * Check.Positive(t);
        return (cut / (cut + s), t / (t + s));
    }
}
