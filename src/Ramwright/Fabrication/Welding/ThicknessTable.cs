using Ramwright.Presses;
using Ramwright.Workings;

namespace Ramwright.Fabrication.Welding;

/// <summary>The American table of least preheat by thickness alone: a second look at any heat input, where method A's table does not reach.</summary>
/// <remarks>
/// It names ASTM steels. Steels of EN 10025 and EN 10210 are read by their strength: S235 and S275 as the softer group, S355 as the stronger, which may not be
/// welded with rods that are not low in hydrogen.
/// </remarks>
public static class ThicknessTable
{
    /// <summary>The table; its number moves between editions.</summary>
    public static readonly Citation Source = new("AWS D1.1/D1.1M:2015", "table 3.3, categories A and B");

    /// <summary>Least temperature, °C, for rods that are not low in hydrogen (category A); 0 for none but dry and not freezing.</summary>
    /// <param name="t">Thickest part, m.</param>
    public static double NotLowHydrogen(double t) => t <= 0.020 ? 0 : t <= 0.038 ? 65 : t <= 0.065 ? 110 : 150;

    /// <summary>Least temperature, °C, for low-hydrogen rods and wires (category B).</summary>
    /// <param name="t">Thickest part, m.</param>
    public static double LowHydrogen(double t) => t <= 0.020 ? 0 : t <= 0.038 ? 10 : t <= 0.065 ? 65 : 110;

    /// <summary>Least temperature of a seam, °C; null where the table has no group for a steel.</summary>
    /// <param name="seam">The seam.</param>
    /// <param name="process">The process.</param>
    public static double? Of(Seam seam, WeldingProcess process)
    {
        ArgumentNullException.ThrowIfNull(seam);
        if (Group(seam.Standing) is not { } one || Group(seam.Through) is not { } other)
            return null;
        if (process != WeldingProcess.Stick)
            return LowHydrogen(seam.Thicker);
        return one || other ? null : NotLowHydrogen(seam.Thicker);
    }

    /// <summary>Whether both steels may be welded with rods that are not low in hydrogen, by this table.</summary>
    public static bool AllowsAnyRod(Seam seam)
    {
        ArgumentNullException.ThrowIfNull(seam);
        return Group(seam.Standing) != true && Group(seam.Through) != true;
    }

    /// <summary>True for the stronger group, false for the softer, null for none.</summary>
    private static bool? Group(KnownSteel steel) => steel.Steel.Name switch
    {
        "S235" or "S275" or "S235JRH" or "S275J0H" or "A36" or "A500-B" => false,
        "S355" or "S355J0H" or "A572-50" or "A992" => true,
        _ => null,
    };
}
