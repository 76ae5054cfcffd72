using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Power;

/// <summary>The oil a stroke takes, and whether the tank has it.</summary>
/// <param name="Stroke">Oil into the cylinder over a full stroke, m³.</param>
/// <param name="FromTank">How much the tank falls by: less what the ring gives back, m³.</param>
/// <param name="Usable">Oil that can be drawn before the inlet is uncovered, m³.</param>
/// <param name="Reach">Stroke the usable oil is enough for, m; never more than the full stroke.</param>
public sealed record OilDemand(double Stroke, double FromTank, double Usable, double Reach)
{
    /// <summary>Whether a full stroke can be made.</summary>
    public bool Enough => FromTank <= Usable;

    /// <summary>Weighs demand against the tank.</summary>
    /// <param name="areas">The cylinder's areas.</param>
    /// <param name="pullsByOil">Whether the ring is full of oil that goes back to the tank.</param>
    /// <param name="s">Stroke, m, above zero.</param>
    /// <param name="usable">Usable oil, m³, 0 or more.</param>
    /// <param name="w">Where to show the working.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static OilDemand Of(CylinderAreas areas, bool pullsByOil, double s, double usable, Working? w = null)
    {
        Check.Positive(areas.Push, "Push");
        Check.Positive(s);
        Check.NotNegative(usable);
        double V = areas.Push * s;
        w?.Step("V", "oil for a full stroke", "A s", V, Dimension.Volume, RamSpeed.Continuity,
            ("A", areas.Push, Dimension.Area), ("s", s, Dimension.Length));
        double net = pullsByOil ? areas.Regenerative : areas.Push;
        double V_t = net * s;
        if (pullsByOil)
            w?.Step("V_t", "fall of the tank: the ring gives its oil back", "(A − a) s", V_t, Dimension.Volume, RamSpeed.Continuity,
                ("A", areas.Push, Dimension.Area), ("a", areas.Pull, Dimension.Area), ("s", s, Dimension.Length));
        return new OilDemand(V, V_t, usable, V_t > usable ? usable / net : s);
    }
}
