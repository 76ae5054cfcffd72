using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Solids;
using Ramwright.Workings;

namespace Ramwright.Strength;

/// <summary>How often the toe of a weld stands its hot-spot stress, as carried on from the face of a solid.</summary>
/// <remarks>
/// The categories are those of table B.1 of EN 1993-1-9, read in a transcription of the table. It asks for toes no steeper than 60° and leaves out misalignment of the parts and cracks from the
/// root; it has no factor for thick plates, for which the severer rule of the IIW is taken besides. Toes on a plate's edge it does not know; the IIW has 100 MPa for attachments up to 100 mm long and
/// 90 MPa for longer ones, whatever the weld, and its factor for thick plates falls there with a power of 0.1 in place of 0.3, as for any attachment at an edge. But what carries the whole load across
/// is a cruciform joint as well: of both, the severer is taken, 90 MPa and 0.3.
/// </remarks>
public static class HotSpotFatigue
{
    /// <summary>Walls thicker than 25 mm, across which a weld runs.</summary>
    public static readonly Citation SizeSource = new("A. Hobbacher (ed.), Recommendations for fatigue design of welded joints and components, IIW-1823-07",
        "3.5.2, cruciform and T-joints as welded: n = 0.3", Standing.FromMemory);

    /// <summary>Toe of a fillet that carries the load.</summary>
    public static readonly DetailCategory Toe = new("toe of a fillet that carries the load, hot-spot stress", 90e6, new Citation("EN 1993-1-9:2005", "annex B, table B.1, detail 7")) { SizeSource = SizeSource };

    /// <summary>Toe of a weld through the whole wall.</summary>
    public static readonly DetailCategory ButtToe = new("toe of a weld through the whole wall, hot-spot stress", 100e6, new Citation("EN 1993-1-9:2005", "annex B, table B.1, detail 3")) { SizeSource = SizeSource };

    /// <summary>Toe of any weld on the edge of a plate.</summary>
    public static readonly DetailCategory EdgeToe = new("toe of a weld on a plate's edge, hot-spot stress", 90e6,
        new Citation("A. Hobbacher (ed.), Recommendations for fatigue design of welded joints and components, IIW-1823-07", "3.3, type b joint with long attachment", Standing.FromMemory))
    {
        SizeSource = SizeSource,
    };

    /// <summary>Stress factors of a joint.</summary>
    public static readonly Citation FactorSource = Citation.Mechanics("a solid of this joint by itself, kept beside the press file");

    private static readonly Citation Sideways = Citation.Practice("bending square to the frame, which the joint's solid does not see, is raised as bending in the frame is, and by nine tenths again, so that six full solids with work off both ways showed less");

    private const double Reference = 0.025, Exponent = 0.3, Apart = 1.9;

    /// <summary>The category of a weld's toe.</summary>
    /// <param name="butt">Whether the weld goes through the whole wall.</param>
    /// <param name="onEdge">Whether it stands on a plate's edge.</param>
    public static DetailCategory Category(bool butt, bool onEdge) => onEdge ? EdgeToe : butt ? ButtToe : Toe;

    /// <summary>k_s for walls thicker than 25 mm: (25/t)^0.3.</summary>
    /// <param name="t">Thickness, m.</param>
    public static double Size(double t) => Check.Positive(t) > Reference ? Math.Pow(Reference / t, Exponent) : 1;

    /// <summary>Hot-spot stress for one newton at the ram, Pa, 0 or more.</summary>
    /// <param name="line">The place.</param>
    /// <param name="m">M, moment at the joint's face for one newton, N·m.</param>
    /// <param name="v">V, force across the beam, N.</param>
    /// <param name="n">N, pull along the beam, N.</param>
    /// <param name="W">Section modulus of the part that the toe stands on, in the frame's plane, m³.</param>
    /// <param name="aside">Plain stress of the part from bending square to the frame, Pa.</param>
    /// <param name="w">Where to write it down.</param>
    public static double Range(ToeLine line, double m, double v, double n, double W, double aside, Working? w = null)
    {
        ArgumentNullException.ThrowIfNull(line);
        double inPlane = line.Stress(m, v, n), K = Math.Max(1, Math.Abs(line.M) * Check.Positive(W)), sum = Math.Abs(inPlane) + Apart * K * Check.NotNegative(aside);
        if (w is null)
            return sum;
        w.Step("σ_hs", "hot-spot stress in the frame's plane, for one newton", "k_M M + k_V V + k_N N", inPlane, Dimension.Stress, FactorSource,
            ("k_M", line.M, Dimension.Number), ("M", m, Dimension.Moment), ("k_V", line.V, Dimension.Number), ("V", v, Dimension.Force),
            ("k_N", line.N, Dimension.Number), ("N", n, Dimension.Force));
        w.Step("K_s", "hot-spot stress over plain bending stress, under moment alone", "max(1, abs(k_M) W)", K, Dimension.Number, FactorSource,
            ("k_M", line.M, Dimension.Number), ("W", W, Dimension.SectionModulus));
        w.Step("Δσ_1", "hot-spot range for one newton", "abs(σ_hs) + 1.9 K_s σ_a", sum, Dimension.Stress, Sideways,
            ("σ_hs", inPlane, Dimension.Stress), ("K_s", K, Dimension.Number), ("σ_a", aside, Dimension.Stress));
        return sum;
    }

    /// <summary>Squeezes that it stands; null without end, 0 where the stress is beyond judging.</summary>
    /// <param name="spot">The place, per newton at the ram.</param>
    /// <param name="fy">Yield strength of the wall, Pa, above zero.</param>
    /// <param name="force">Ram force of a squeeze, N; from nothing to it is the range, pressed as well as pulled: what welding leaves behind pulls.</param>
    /// <param name="factors">On strength and range.</param>
    public static double? Squeezes(HotSpot spot, double fy, double force, FatigueFactors factors)
    {
        ArgumentNullException.ThrowIfNull(spot);
        return new FatigueStrength(FatigueCurve.Fewest, fy, Category(spot.Toe.IsButt, spot.Toe.OnEdge), ks: Size(spot.Toe.Thickness)).Squeezes(spot.Stress, 0, force, factors);
    }

    /// <summary>Of a solid's worst weld in its worst case; null where it has no weld that is looked at, or stands it without end.</summary>
    public static (HotSpot Spot, double Squeezes)? Least(SolidCheck solid, double force, FatigueFactors factors)
    {
        ArgumentNullException.ThrowIfNull(solid);
        (HotSpot, double)? least = null;
        foreach (HotSpot spot in solid.Cases.SelectMany(c => c.HotSpots))
            if (solid.Solid.Yields[spot.Toe.Part] is { } fy && Squeezes(spot, fy, force, factors) is { } n && (least is not { } known || n < known.Item2))
                least = (spot, n);
        return least;
    }
}
