using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Jobs;

/// <summary>Plate bent in a V-die: force, die, flange, allowance. Air bending; a punch that bottoms needs many times more.</summary>
public static class VBending
{
    /// <summary>Oehler's formula.</summary>
    public static readonly Citation Oehler = new("K. Lange, Umformtechnik 3, 2nd ed. 1990, after G. Oehler", "bending in a V-die", Standing.FromMemory);
    /// <summary>Groover's formula.</summary>
    public static readonly Citation Groover = new("M. P. Groover, Fundamentals of Modern Manufacturing", "sheet metalworking: bending", Standing.FromMemory);
    /// <summary>Bend allowance.</summary>
    public static readonly Citation Din6935 = new("DIN 6935:2011", "flat length of bent parts", Standing.FromMemory);
    /// <summary>Die opening and radius by thickness.</summary>
    public static readonly Citation PressBrake = Citation.Practice("press-brake work: V of 6 to 12 times the thickness, inside radius about a sixth of it");
    /// <summary>Lines and angles.</summary>
    public static readonly Citation Geometry = Citation.Mechanics("geometry of a V at 45°");
    /// <summary>Limit analysis.</summary>
    public static readonly Citation LowerBoundSource = Citation.Mechanics("plastic hinge under a load at mid-span");
    /// <summary>Smallest radii for cold flanging.</summary>
    public static readonly Citation En10025 = new("EN 10025-2", "recommended smallest inside radii for cold bending", Standing.FromMemory);
    /// <summary>Minimum bend radius by reduction of area.</summary>
    public static readonly Citation Kalpakjian = new("S. Kalpakjian, S. Schmid, Manufacturing Engineering and Technology", "bending: minimum radius, springback", Standing.FromMemory);

    /// <summary>Oehler: F = (1 + 4t/V) R_m b t²/V, N. Valid for t 0.5 to 10 mm, V/t 5 to 20.</summary>
    /// <param name="R_m">Tensile strength, Pa.</param>
    /// <param name="t">Thickness, m.</param>
    /// <param name="b">Length of the bend, m.</param>
    /// <param name="V">Opening, m.</param>
    /// <param name="w">Where to write it down.</param>
    public static double OehlerForce(double R_m, double t, double b, double V, Working? w = null)
    {
        Check.Positive(R_m);
        Check.Positive(t);
        Check.Positive(b);
        Check.Positive(V);
        double F = (1 + 4 * t / V) * R_m * b * t * t / V;
        w?.Step("F", "force to bend", "(1 + 4 t / V) R_m b t² / V", F, Dimension.Force, Oehler,
            ("t", t, Dimension.Length), ("V", V, Dimension.Length), ("R_m", R_m, Dimension.Stress), ("b", b, Dimension.Length));
        return F;
    }

    /// <summary>Plate that Oehler's formula was meant for, m.</summary>
    public const double Thinnest = 0.5e-3, Thickest = 10e-3;

    /// <summary>Whether Oehler's formula was meant for such a bend.</summary>
    public static bool InOehlersRange(double t, double V) => t is >= Thinnest and <= Thickest && V / t is >= 5 and <= 20;

    /// <summary>Work of a bend by Oehler: 0.75 F s, J.</summary>
    public static double Work(double F, double stroke) => 0.75 * Check.NotNegative(F) * Check.NotNegative(stroke);

    /// <summary>Groover: F = K R_m b t²/V, K 1.33 for a V-die, 0.33 for wiping over an edge, N.</summary>
    public static double GrooverForce(double K, double R_m, double t, double b, double V) =>
        Check.Positive(K) * Check.Positive(R_m) * Check.Positive(b) * Check.Positive(t) * t / Check.Positive(V);

    /// <summary>Force at the first fold, friction and hardening left out: Y b t²/V, N; times 2/√3 for wide plate.</summary>
    public static double LowerBound(double Y, double t, double b, double V) => Check.Positive(Y) * Check.Positive(b) * Check.Positive(t) * t / Check.Positive(V);

    /// <summary>The V that suits a thickness, m: 6 t below 3 mm, 8 t to 10 mm, 10 t to 20 mm, 12 t above.</summary>
    public static double OpeningFor(double t) => Check.Positive(t) * (t < 3e-3 ? 6 : t <= 10e-3 ? 8 : t <= 20e-3 ? 10 : 12);

    /// <summary>Inside radius of an air bend in mild steel: 0.16 V, m; within 20 %.</summary>
    public static double AirRadius(double V) => 0.16 * Check.Positive(V);

    /// <summary>Shortest leg that still reaches over the shoulder of the die at 90°: (V/2)/cos 45°, m; practice takes up to 0.77 V.</summary>
    public static double ShortestLeg(double V, Working? w = null)
    {
        double b_min = Check.Positive(V) / 2 / Math.Cos(Math.PI / 4);
        w?.Step("b_min", "shortest leg that stays on the die", "V / 2 / cos(π / 4)", b_min, Dimension.Length, Geometry, ("V", V, Dimension.Length));
        return b_min;
    }

    /// <summary>How far a sharp punch goes in: (V/2) tan(α/2), α bent through, m.</summary>
    /// <param name="V">Opening, m.</param>
    /// <param name="α">Angle bent through, rad, above 0, below π.</param>
    /// <param name="w">Where to write it down.</param>
    public static double Depth(double V, double α, Working? w = null)
    {
        if (!(α > 0 && α < Math.PI))
            Check.Refuse(nameof(α), α, "between 0 and π");
        double s = Check.Positive(V) / 2 * Math.Tan(α / 2);
        w?.Step("s", "depth of the punch, before radius and thickness", "V / 2 · tan(α / 2)", s, Dimension.Length, Geometry, ("V", V, Dimension.Length), ("α", α, Dimension.Angle));
        return s;
    }

    /// <summary>Groover's allowance along the bend: α (R + K t), K 0.33 below R = 2t, else 0.5, m.</summary>
    public static double GrooverAllowance(double α, double R, double t) =>
        Check.Positive(α) * (Check.NotNegative(R) + (R < 2 * Check.Positive(t) ? 0.33 : 0.5) * t);

    /// <summary>DIN 6935's k: the neutral fibre lies k t/2 from the inside; 0.65 + 0.5 log₁₀(r/t), 1 beyond r/t = 5.</summary>
    public static double NeutralFibre(double r, double t)
    {
        double x = Check.Positive(r) / Check.Positive(t);
        return x > 5 ? 1 : Math.Max(0, 0.65 + 0.5 * Math.Log10(x));
    }

    /// <summary>DIN 6935's allowance v, m: flat length is both outside legs and v.</summary>
    /// <param name="β">Opening angle between the legs, rad, above 0, up to 165°.</param>
    /// <param name="r">Inside radius, m.</param>
    /// <param name="t">Thickness, m.</param>
    /// <param name="w">Where to write it down.</param>
    public static double Allowance(double β, double r, double t, Working? w = null)
    {
        if (!(β > 0 && β <= 165 * Math.PI / 180 + 1e-12))
            Check.Refuse(nameof(β), β, "above 0, at most 165°");
        double k = NeutralFibre(r, t);
        bool sharp = β <= Math.PI / 2 + 1e-12;
        double off = sharp ? 2 * (r + t) : 2 * (r + t) * Math.Tan((Math.PI - β) / 2);
        double v = (Math.PI - β) * (r + k * t / 2) - off;
        if (w is not null)
        {
            w.Take("k", "place of the neutral fibre, by r/t", k, Dimension.Number, Din6935);
            w.Step("v", "what the bend adds to the two legs", sharp ? "(π − β) (r + k t / 2) − 2 (r + t)" : "(π − β) (r + k t / 2) − 2 (r + t) tan((π − β) / 2)", v, Dimension.Length, Din6935,
                ("β", β, Dimension.Angle), ("r", r, Dimension.Length), ("k", k, Dimension.Number), ("t", t, Dimension.Length));
        }

        return v;
    }

    /// <summary>Strain of the outer face: 1/(2R/t + 1).</summary>
    public static double OuterStrain(double R, double t) => 1 / (2 * Check.NotNegative(R) / Check.Positive(t) + 1);

    /// <summary>Smallest inside radius over thickness before it cracks: 50/r − 1, r the reduction of area in per cent.</summary>
    public static double LeastRadius(double reductionOfArea) => Math.Max(0, 50 / Check.Positive(reductionOfArea) - 1);

    /// <summary>
    /// Recommended smallest inside radius, cold, bend line across the rolling, m; null where the table has no row. Quoted from memory, give or take a step.
    /// </summary>
    /// <param name="Y">Least yield strength of the steel, Pa: to 275 MPa as S235, to 355 MPa as S355.</param>
    /// <param name="t">Thickness, m.</param>
    public static double? RecommendedRadius(double Y, double t)
    {
        if (Check.Positive(Y) > 355.5e6 || !(t > 3e-3 - 1e-9 && t <= 12e-3 + 1e-9))
            return null;
        int row = t <= 4e-3 ? 0 : t <= 6e-3 ? 1 : t <= 10e-3 ? 2 : 3;
        double[] radii = Y <= 275.5e6 ? [5, 8, 16, 20] : [6, 10, 20, 25];
        return radii[row] / 1000;
    }
}
