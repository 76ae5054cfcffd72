using Ramwright.Stock;
using Ramwright.Workings;

namespace Ramwright.Strength;

/// <summary>The diameters that decide how much thread is in mesh, m.</summary>
/// <param name="P">Pitch.</param>
/// <param name="D">Outer thread's major diameter, least.</param>
/// <param name="D2">Outer thread's pitch diameter, least.</param>
/// <param name="NutD1">Inner thread's minor diameter, greatest.</param>
/// <param name="NutD2">Inner thread's pitch diameter, greatest.</param>
public sealed record ThreadFit(double P, double D, double D2, double NutD1, double NutD2)
{
    /// <summary>Tolerance formulas of fits 6g and 6H, before rounding.</summary>
    public static readonly Citation ToleranceSource = new("ISO 965-1", "annex on formulas", Standing.FromMemory);

    /// <summary>Tolerance formulas of classes 2A and 2B, before rounding.</summary>
    public static readonly Citation UnifiedToleranceSource = new("ASME B1.1-2003", "tolerance formulas", Standing.FromMemory);

    /// <summary>Basic sizes: the most thread that can be in mesh.</summary>
    public static ThreadFit Basic(ScrewThread t) => new(t.P, t.D, t.D2, t.D1, t.D2);

    /// <summary>The loosest pair of the thread's usual fit: 6g and 6H, or 2A and 2B.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A metric pitch below 1 mm; an inch thread under 1/4 in, or one finer than 28 or coarser than 4 to the inch.</exception>
    public static ThreadFit Loosest(ScrewThread t) => t.Form == ThreadForm.Unified ? Loosest2B2A(t) : Loosest6H6g(t);

    /// <summary>The loosest pair of a 6g bolt and a 6H nut. Pitches of 1 mm and more.</summary>
    /// <remarks>Formulas with P in mm, tolerances in µm: e_s = 15 + 11P; T_d = 180 P^⅔ − 3.15/√P; T_d2 = 90 P^0.4 d^0.1; T_D1 = 230 P^0.7; T_D2 = 1.32 T_d2. The standard
    /// rounds them and takes one d for a range, so single diameters differ by up to about 0.02 mm.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">A pitch below 1 mm.</exception>
    public static ThreadFit Loosest6H6g(ScrewThread t)
    {
        double p = t.P * 1e3, d = t.D * 1e3;
        if (!(p >= 1))
            throw new ArgumentOutOfRangeException(nameof(t), t.P, "the pitch must be 1 mm or more");
        double es = 15 + 11 * p, td = 180 * Math.Pow(p, 2.0 / 3) - 3.15 / Math.Sqrt(p);
        double td2 = 90 * Math.Pow(p, 0.4) * Math.Pow(d, 0.1), tD1 = 230 * Math.Pow(p, 0.7);
        return new ThreadFit(t.P, t.D - (es + td) * 1e-6, t.D2 - (es + td2) * 1e-6, t.D1 + tD1 * 1e-6, t.D2 + 1.32 * td2 * 1e-6);
    }

    /// <summary>The loosest pair of a class 2A bolt and a class 2B nut, of the usual engagement.</summary>
    /// <remarks>Formulas with D and P in inches: T_d2 = 0.0015 (∛D + √D) + 0.015 P^⅔; e_s = 0.3 T_d2; T_d = 0.06 P^⅔; T_D1 = 0.25 P − 0.4 P²; T_D2 = 1.3 T_d2.</remarks>
    private static ThreadFit Loosest2B2A(ScrewThread t)
    {
        const double inch = 0.0254;
        double d = t.D / inch, p = t.P / inch, p23 = Math.Pow(p, 2.0 / 3);
        if (!(d >= 0.25 - 1e-9 && p is >= 1 / 28.001 and <= 0.2501))
            throw new ArgumentOutOfRangeException(nameof(t), t.P, "inch threads from 1/4 in, 4 to 28 to the inch");
        double td2 = 0.0015 * (Math.Cbrt(d) + Math.Sqrt(d)) + 0.015 * p23, es = 0.3 * td2, td = 0.06 * p23, tD1 = 0.25 * p - 0.4 * p * p;
        return new ThreadFit(t.P, t.D - (es + td) * inch, t.D2 - (es + td2) * inch, t.D1 + tD1 * inch, t.D2 + 1.3 * td2 * inch);
    }
}
