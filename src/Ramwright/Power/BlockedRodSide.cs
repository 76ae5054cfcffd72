using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Power;

/// <summary>What the ring side of a double-acting cylinder sees when its port is blocked, or its coupler not fully made, while the other side pushes.</summary>
public static class BlockedRodSide
{
    /// <summary>Why a double-acting ram wants a relief valve on the return side.</summary>
    public static readonly Citation Source = new(
        "ASME B30.1-2015", "1-2.1.2(f): relief on the retract side, no restrictor between; pressure by force balance");

    /// <summary>Pressure in the ring with its port blocked.</summary>
    /// <param name="p">Pressure on the pushing side, Pa, 0 or more.</param>
    /// <param name="areas">The cylinder's areas; the ring must be above zero.</param>
    /// <param name="w">Where to show the working.</param>
    /// <returns>Pa: p·φ, nothing pushing on the ram from outside.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A negative pressure or no ring.</exception>
    public static double Pressure(double p, CylinderAreas areas, Working? w = null)
    {
        Check.NotNegative(p);
        Check.Positive(areas.Pull, "Pull");
        double p_a = p * areas.Push / areas.Pull;
        w?.Step("p_a", "pressure in the ring if its port is blocked", "p A/a", p_a, Dimension.Pressure, Source,
            ("p", p, Dimension.Pressure), ("A", areas.Push, Dimension.Area), ("a", areas.Pull, Dimension.Area));
        return p_a;
    }
}
