using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Strength;

/// <summary>A pin in double shear through a middle part and two outer ones.</summary>
/// <remarks>Valid for a pin held against walking out. A pin longer than three times its diameter bends; the bending is checked.
/// A replaceable pin must also stay unworn: <see cref="Contact"/>.</remarks>
/// <param name="D">Diameter, m.</param>
/// <param name="Fyp">Yield strength of the pin, Pa.</param>
/// <param name="Fup">Tensile strength of the pin, Pa.</param>
/// <param name="Middle">Thickness b of the middle part, m.</param>
/// <param name="Outer">Thickness a of each outer part, m.</param>
/// <param name="Gap">Gap c on each side of the middle part, m.</param>
/// <param name="FyMiddle">Yield strength of the middle part, Pa.</param>
/// <param name="FyOuter">Yield strength of the outer parts, Pa.</param>
public sealed record Pin(
    double D, double Fyp, double Fup, double Middle, double Outer, double Gap, double FyMiddle, double FyOuter)
{
    /// <summary>Shear, bearing, bending and both together.</summary>
    public static readonly Citation Source = new("EN 1993-1-8:2005", "3.13.2, table 3.10");
    /// <summary>Moment in the pin.</summary>
    public static readonly Citation MomentSource = new("EN 1993-1-8:2005", "3.13.2, figure 3.11", Standing.FromMemory);
    /// <summary>Contact stress of a pin that is to be taken out again.</summary>
    public static readonly Citation ContactSource = new("EN 1993-1-8:2005", "3.13.2(3), eq. 3.14 and 3.15");
    /// <summary>Eye geometry.</summary>
    public static readonly Citation EyeSource = new("EN 1993-1-8:2005", "3.13.1, table 3.9", Standing.FromMemory);

    /// <summary>Diameter, m.</summary>
    public double D { get; init; } = Check.Positive(D);
    /// <summary>Yield strength of the pin, Pa.</summary>
    public double Fyp { get; init; } = Check.Positive(Fyp);
    /// <summary>Tensile strength of the pin, Pa.</summary>
    public double Fup { get; init; } = Check.Positive(Fup);
    /// <summary>Middle part, m.</summary>
    public double Middle { get; init; } = Check.Positive(Middle);
    /// <summary>Each outer part, m.</summary>
    public double Outer { get; init; } = Check.Positive(Outer);
    /// <summary>Gap, m.</summary>
    public double Gap { get; init; } = Check.NotNegative(Gap);
    /// <summary>Yield strength of the middle part, Pa.</summary>
    public double FyMiddle { get; init; } = Check.Positive(FyMiddle);
    /// <summary>Yield strength of the outer parts, Pa.</summary>
    public double FyOuter { get; init; } = Check.Positive(FyOuter);

    /// <summary>Shear resistance of one plane, N, γ_M2 = 1.</summary>
    public double ShearResistance(Working? w = null)
    {
        double F = 0.6 * Math.PI / 4 * D * D * Fup;
        w?.Step("F_vR", "shear resistance of one plane", "0.6 π d² f_up / 4", F, Dimension.Force, Source,
            ("d", D, Dimension.Length), ("f_up", Fup, Dimension.Stress));
        return F;
    }

    /// <summary>Bearing resistance of a part of thickness t, N, γ_M0 = 1.</summary>
    /// <param name="t">Thickness, m.</param>
    /// <param name="fyPart">Its yield strength, Pa; the lower of it and the pin's counts.</param>
    /// <param name="w">Where to write it down.</param>
    public double BearingResistance(double t, double fyPart, Working? w = null)
    {
        double F = 1.5 * Check.Positive(t) * D * Math.Min(fyPart, Fyp);
        w?.Step("F_bR", "bearing resistance", "1.5 t d min(f_y, f_yp)", F, Dimension.Force, Source,
            ("t", t, Dimension.Length), ("d", D, Dimension.Length), ("f_y", fyPart, Dimension.Stress), ("f_yp", Fyp, Dimension.Stress));
        return F;
    }

    /// <summary>Bearing that keeps a replaceable pin fit to be taken out, N, γ_M6,ser = 1.</summary>
    /// <param name="t">Thickness, m.</param>
    /// <param name="fyPart">Yield strength of the part, Pa.</param>
    public double BearingToTakeOut(double t, double fyPart) => 0.6 * Check.Positive(t) * D * Math.Min(fyPart, Fyp);

    /// <summary>Bending resistance, N·m, γ_M0 = 1.</summary>
    public double BendingResistance(Working? w = null)
    {
        double M = 1.5 * ElasticModulus * Fyp;
        w?.Step("M_R", "bending resistance", "1.5 π d³ f_yp / 32", M, Dimension.Moment, Source,
            ("d", D, Dimension.Length), ("f_yp", Fyp, Dimension.Stress));
        return M;
    }

    /// <summary>Bending that keeps a replaceable pin straight, N·m, γ_M6,ser = 1.</summary>
    public double BendingToTakeOut => 0.8 * ElasticModulus * Fyp;

    /// <summary>W_el, m³.</summary>
    public double ElasticModulus => Math.PI * D * D * D / 32;

    /// <summary>Moment in the pin under a force through it, N·m: F (b + 4c + 2a)/8.</summary>
    /// <param name="F">Force, N.</param>
    /// <param name="w">Where to write it down.</param>
    public double Moment(double F, Working? w = null)
    {
        double M = F * (Middle + 4 * Gap + 2 * Outer) / 8;
        w?.Step("M", "moment in the pin, per newton", "f (b + 4 c + 2 a) / 8", M, Dimension.Moment, MomentSource,
            ("f", F, Dimension.Force), ("b", Middle, Dimension.Length), ("c", Gap, Dimension.Length), ("a", Outer, Dimension.Length));
        return M;
    }

    /// <summary>Ram force at which the pin shears through both planes.</summary>
    /// <param name="share">Force through the pin per newton at the ram, either sign.</param>
    /// <param name="factors">Factors; γ_M2 and γ_F are used.</param>
    /// <param name="w">Where to write it down.</param>
    public Limit? Shear(double share, PartialFactors factors, Working? w = null)
    {
        double f = Math.Abs(Check.Finite(share)), R = ShearResistance(w), u = f / (2 * R);
        w?.Step("u", "share of both planes used by one newton", "f / (2 F_vR)", u, Dimension.Number, Source,
            ("f", f, Dimension.Force), ("F_vR", R, Dimension.Force));
        return Limit.FromUse(u, factors.M2, factors.Load, w);
    }

    /// <summary>Ram force at which the weaker of middle and outer parts gives way under the pin.</summary>
    /// <param name="share">Force through the pin per newton at the ram.</param>
    /// <param name="factors">Factors; γ_M0 and γ_F are used.</param>
    /// <param name="w">Where to write it down.</param>
    public Limit? Bearing(double share, PartialFactors factors, Working? w = null)
    {
        double f = Math.Abs(Check.Finite(share));
        double inMiddle = f / BearingResistance(Middle, FyMiddle), inOuter = f / 2 / BearingResistance(Outer, FyOuter);
        bool middle = inMiddle >= inOuter;
        double R = middle ? BearingResistance(Middle, FyMiddle, w) : BearingResistance(Outer, FyOuter, w), u = Math.Max(inMiddle, inOuter);
        double parts = middle ? 1 : 2;
        w?.Step("u", middle ? "share of the middle part used by one newton" : "share of each outer part used by one newton",
            "f / (n F_bR)", u, Dimension.Number, Source,
            ("f", f, Dimension.Force), ("n", parts, Dimension.Count), ("F_bR", R, Dimension.Force));
        return Limit.FromUse(u, factors.M0, factors.Load, w);
    }

    /// <summary>Ram force at which bending and shear together break the pin: (M/M_R)² + (F_v/F_vR)² = 1.</summary>
    /// <param name="share">Force through the pin per newton at the ram.</param>
    /// <param name="factors">Factors; γ_M0, γ_M2 and γ_F are used.</param>
    /// <param name="w">Where to write it down.</param>
    public Limit? Bending(double share, PartialFactors factors, Working? w = null)
    {
        double f = Math.Abs(Check.Finite(share));
        if (f < 1 / Limit.Farthest)
            return null;
        double M = Moment(f, w), MR = BendingResistance(w), FvR = ShearResistance(w);
        double gives = 1 / Math.Sqrt(Square(M / MR) + Square(f / 2 / FvR));
        double design = 1 / Math.Sqrt(Square(M * factors.M0 / MR) + Square(f / 2 * factors.M2 / FvR));
        w?.Step("F_gives", "ram force at which the pin gives", "1 / √((M / M_R)² + (f / (2 F_vR))²)", gives, Dimension.Force, Source,
            ("M", M, Dimension.Moment), ("M_R", MR, Dimension.Moment), ("f", f, Dimension.Force), ("F_vR", FvR, Dimension.Force));
        w?.Step("F_Rd", "the same with design resistances", "1 / √((M γ_M0 / M_R)² + (f γ_M2 / (2 F_vR))²)", design, Dimension.Force, Source,
            ("M", M, Dimension.Moment), ("M_R", MR, Dimension.Moment), ("f", f, Dimension.Force), ("F_vR", FvR, Dimension.Force),
            ("γ_M0", factors.M0, Dimension.Number), ("γ_M2", factors.M2, Dimension.Number));
        return Limit.FromForces(gives, design, factors.Load, w);
    }

    /// <summary>Contact stress of a pin in a hole with play, Pa: 0.591 √(E F (d₀ − d)/(d² t)).</summary>
    /// <param name="F">Force at service, N.</param>
    /// <param name="hole">Hole d₀, m, more than the pin.</param>
    /// <param name="t">Thickness of the part, m.</param>
    /// <param name="E">Young's modulus, Pa.</param>
    public double ContactStress(double F, double hole, double t, double E = 210e9) =>
        0.591 * Math.Sqrt(Check.Positive(E) * Check.NotNegative(F) * Check.Positive(hole - D, "play of the pin") / (D * D * Check.Positive(t)));

    /// <summary>Ram force up to which a replaceable pin does not dent: σ_h ≤ 2.5 f_y, with no load factor (a service limit).</summary>
    /// <param name="share">Force through the part per newton at the ram.</param>
    /// <param name="hole">Hole d₀, m, more than the pin.</param>
    /// <param name="t">Thickness of the part, m.</param>
    /// <param name="fyPart">Yield strength of the part, Pa; the lower of it and the pin's counts.</param>
    /// <param name="w">Where to write it down.</param>
    /// <param name="E">Young's modulus, Pa.</param>
    public Limit? Contact(double share, double hole, double t, double fyPart, double E = 210e9, Working? w = null)
    {
        double f = Math.Abs(Check.Finite(share)), play = Check.Positive(hole - D, "play of the pin");
        double fh = 2.5 * Math.Min(Check.Positive(fyPart), Fyp);
        double F = Square(fh / 0.591) * D * D * Check.Positive(t) / (Check.Positive(E) * play), u = f / F;
        w?.Step("F_h", "force at which the contact stress reaches its limit", "(f_h / 0.591)² d² t / (E (d_0 - d))", F, Dimension.Force, ContactSource,
            ("f_h", fh, Dimension.Stress), ("d", D, Dimension.Length), ("t", t, Dimension.Length), ("E", E, Dimension.Stress), ("d_0", hole, Dimension.Length));
        w?.Step("u", "share used by one newton", "f / F_h", u, Dimension.Number, ContactSource,
            ("f", f, Dimension.Force), ("F_h", F, Dimension.Force));
        return Limit.FromUse(u, 1, 1, w);
    }

    /// <summary>Least distances from the hole's edge to the end (a) and to the side (c) of an eye of given thickness, m; type A.</summary>
    /// <param name="F">Design force, N.</param>
    /// <param name="t">Thickness, m.</param>
    /// <param name="fy">Yield strength of the part, Pa.</param>
    /// <param name="hole">Hole d₀, m.</param>
    /// <param name="gammaM0">γ_M0.</param>
    public static (double A, double C) EyeEdges(double F, double t, double fy, double hole, double gammaM0 = 1)
    {
        double half = Check.NotNegative(F) * Check.AtLeast(gammaM0, 1) / (2 * Check.Positive(t) * Check.Positive(fy));
        return (half + 2 * Check.Positive(hole) / 3, half + hole / 3);
    }

    /// <summary>Least thickness of an eye of the standard shape and the largest hole in it, m; type B.</summary>
    /// <param name="F">Design force, N.</param>
    /// <param name="fy">Yield strength of the part, Pa.</param>
    /// <param name="gammaM0">γ_M0.</param>
    public static (double Thickness, double LargestHole) EyeOfStandardShape(double F, double fy, double gammaM0 = 1)
    {
        double t = 0.7 * Math.Sqrt(Check.Positive(F) * Check.AtLeast(gammaM0, 1) / Check.Positive(fy));
        return (t, 2.5 * t);
    }

    private static double Square(double x) => x * x;
}
