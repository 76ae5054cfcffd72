using Ramwright.Solids;
using Ramwright.Workings;

namespace Ramwright.Strength;

/// <summary>How often the toe of a weld stands its hot-spot stress, as carried on from the face of a solid.</summary>
public static class HotSpotFatigue
{
    /// <summary>Toe of a fillet that carries the load.</summary>
    public static readonly DetailCategory Toe = new("toe of a fillet that carries the load, hot-spot stress", 90e6, new Citation("EN 1993-1-9:2005", "annex B, table B.1, detail 7", Standing.FromMemory));

    /// <summary>Squeezes that it stands; null without end.</summary>
    /// <param name="spot">The place, per newton at the ram.</param>
    /// <param name="force">Ram force of a squeeze, N; from nothing to it is the range, pressed as well as pulled: what welding leaves behind pulls.</param>
    /// <param name="factors">On strength and range.</param>
    public static double? Squeezes(HotSpot spot, double force, FatigueFactors factors)
    {
        ArgumentNullException.ThrowIfNull(spot);
        ArgumentNullException.ThrowIfNull(factors);
        return FatigueCurve.Life(Toe, Math.Abs(spot.Stress) * force * factors.Both);
    }

    /// <summary>Of a solid's worst weld in its worst case; null where it has no weld that is looked at, or stands it without end.</summary>
    public static (HotSpot Spot, double Squeezes)? Least(SolidCheck solid, double force, FatigueFactors factors)
    {
        ArgumentNullException.ThrowIfNull(solid);
        (HotSpot, double)? least = null;
        foreach (HotSpot spot in solid.Cases.SelectMany(c => c.HotSpots))
            if (Squeezes(spot, force, factors) is { } n && (least is not { } known || n < known.Item2))
                least = (spot, n);
        return least;
    }
}
