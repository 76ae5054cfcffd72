using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Power;

/// <summary>The air an air-driven pump takes.</summary>
public static class AirUse
{
    /// <summary>Free air by the gas law.</summary>
    public static readonly Citation GasLaw = Citation.Mechanics("gas law at one temperature, standard atmosphere, no dead volume");

    /// <summary>Free air for an oil flow: the least there can be.</summary>
    /// <param name="Q">Oil, m³/s (or m³), 0 or more.</param>
    /// <param name="R">Area of the air piston over that of the oil plunger, above zero.</param>
    /// <param name="air">Air pressure at the pump, Pa above the atmosphere, 0 or more.</param>
    /// <param name="w">Where to show the working.</param>
    /// <returns>m³/s (or m³) of free air.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static double For(double Q, double R, double air, Working? w = null)
    {
        Check.NotNegative(Q);
        Check.Positive(R);
        Check.NotNegative(air);
        double q_a = R * Q * (air + Atmosphere.Pressure) / Atmosphere.Pressure;
        w?.Step("q_a", "free air the pump takes", "R Q (p_air + p_atm)/p_atm", q_a, Dimension.FreeAir, GasLaw,
            ("R", R, Dimension.Number), ("Q", Q, Dimension.Flow), ("p_air", air, Dimension.Pressure), ("p_atm", Atmosphere.Pressure, Dimension.Stress));
        return q_a;
    }

    /// <summary>Free air in one stroke of a single-acting air piston.</summary>
    /// <param name="V">Swept volume, m³, 0 or more.</param>
    /// <param name="air">Air pressure, Pa above the atmosphere, 0 or more.</param>
    /// <returns>m³ of free air.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A negative value.</exception>
    public static double PerStroke(double V, double air)
    {
        Check.NotNegative(V);
        Check.NotNegative(air);
        return V * (air + Atmosphere.Pressure) / Atmosphere.Pressure;
    }

    /// <summary>Mean demand of work that comes and goes.</summary>
    /// <param name="q">Free air while the pump runs, m³/s, 0 or more.</param>
    /// <param name="running">Time it runs, s, 0 or more.</param>
    /// <param name="every">Time of the whole round, s, above zero, not below <paramref name="running"/>.</param>
    /// <returns>m³/s. Over the free air delivered it is the share of time the compressor runs.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static double Mean(double q, double running, double every)
    {
        Check.NotNegative(q);
        Check.NotNegative(running);
        Check.Positive(every);
        Check.AtLeast(every, running);
        return q * running / every;
    }
}
