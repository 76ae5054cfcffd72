using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Fabrication.Welding;

/// <summary>Preheat by the second of the two ways that EN 1011-2 offers: by composition, thickness, hydrogen and heat input.</summary>
/// <remarks>d is the thicker single plate, not the combined thickness of the first way: pages that say otherwise contradict the standard.</remarks>
public static class MethodB
{
    /// <summary>Where it comes from.</summary>
    public static readonly Citation Source = new("EN 1011-2:2001", "C.3.3");
    /// <summary>Range of CET, %.</summary>
    public static readonly (double From, double UpTo) CetRange = (0.2, 0.5);
    /// <summary>Range of the plate's thickness, mm.</summary>
    public static readonly (double From, double UpTo) ThicknessRange = (10, 90);
    /// <summary>Range of hydrogen, ml/100 g.</summary>
    public static readonly (double From, double UpTo) HydrogenRange = (1, 20);
    /// <summary>Range of heat input, kJ/mm.</summary>
    public static readonly (double From, double UpTo) HeatRange = (0.5, 4);
    /// <summary>Most carbon the method was made for, %.</summary>
    public const double MostCarbon = 0.32;

    /// <summary>Preheating temperature T_p, °C; below that of a workshop means none is needed.</summary>
    /// <param name="CET">Carbon equivalent, %, 0.2 to 0.5.</param>
    /// <param name="d">Thickness of the thicker plate, mm, 10 to 90.</param>
    /// <param name="HD">Diffusible hydrogen, ml/100 g, 1 to 20.</param>
    /// <param name="Q">Heat input, kJ/mm, 0.5 to 4.</param>
    /// <param name="w">Where to write it down.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range that the method was made for.</exception>
    public static double Preheat(double CET, double d, double HD, double Q, Working? w = null)
    {
        In(CetRange, CET, nameof(CET));
        In(ThicknessRange, d, nameof(d));
        In(HydrogenRange, HD, nameof(HD));
        In(HeatRange, Q, nameof(Q));
        double T = 697 * CET + 160 * Math.Tanh(d / 35) + 62 * Math.Pow(HD, 0.35) + (53 * CET - 32) * Q - 328;
        w?.Step("T_p", "preheat by method B; d in mm, HD in mL/100 g, Q in kJ/mm", "697 CET + 160 tanh(d / 35) + 62 HD^0.35 + (53 CET - 32) Q - 328", T,
            Dimension.Temperature, Source,
            ("CET", CET, Dimension.Number), ("d", d, Dimension.Number), ("HD", HD, Dimension.Number), ("Q", Q, Dimension.Number));
        return T;
    }

    /// <summary>The first element of which there is more than the method was made for, in words; null where there is none.</summary>
    /// <remarks>Less of an element than its range begins with makes the steel easier to weld, and is let pass.</remarks>
    public static string? Beyond(Stock.Composition s)
    {
        ArgumentNullException.ThrowIfNull(s);
        foreach ((string element, double share, double most) in ((string, double, double)[])
            [("carbon", s.C, MostCarbon), ("silicon", s.Si, 0.8), ("manganese", s.Mn, 1.9), ("chromium", s.Cr, 1.5), ("copper", s.Cu, 0.7), ("molybdenum", s.Mo, 0.75), ("nickel", s.Ni, 2.5), ("vanadium", s.V, 0.18), ("boron", s.B, 0.005)])
        {
            if (share > most + 1e-12)
                return $"{share:0.###} % of {element}, more than {most:0.###} %";
        }

        return null;
    }

    private static void In((double From, double UpTo) range, double value, string name)
    {
        if (!(value >= range.From && value <= range.UpTo))
            throw new ArgumentOutOfRangeException(name, value, $"method B holds from {range.From} to {range.UpTo}");
    }
}
