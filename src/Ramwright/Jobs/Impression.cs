using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Jobs;

/// <summary>Pressure in closed impressions over the flow stress. Ranges: editions differ, and an order of 30 % is all that can be had.</summary>
public static class Impression
{
    /// <summary>Multipliers by shape; doubtful, they differ between editions.</summary>
    public static readonly Citation Kalpakjian = new("S. Kalpakjian, S. Schmid, Manufacturing Engineering and Technology", "impression-die forging: multiplying factor", Standing.FromMemory);
    /// <summary>Flash land.</summary>
    public static readonly Citation FlashSource = Citation.Mechanics("slab between sticking faces");

    /// <summary>Pressure over flow stress: no flash 3 to 5, simple with flash 5 to 8, complex 8 to 12; a mark struck in 3 to 6.</summary>
    public static Band Multiplier(ImpressionShape shape) => shape switch
    {
        ImpressionShape.Open => new(3, 4, 5),
        ImpressionShape.Simple => new(5, 6.5, 8),
        ImpressionShape.Complex => new(8, 10, 12),
        _ => new(3, 4, 6),
    };

    /// <summary>Groover's single values: 6 simple, 8 complex, 10 very complex with flash.</summary>
    public static IReadOnlyList<double> GrooverMultipliers { get; } = [6, 8, 10];

    /// <summary>Pressure at the cavity's edge behind a flash land over the flow stress: (2/√3)(1 + m b/t).</summary>
    /// <param name="bOverT">Width of the land over thickness of the flash.</param>
    /// <param name="m">Friction factor.</param>
    public static double FlashResistance(double bOverT, double m) => FlatDies.PlaneStrain * (1 + Check.NotNegative(m) * Check.NotNegative(bOverT));
}
