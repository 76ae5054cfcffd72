using Ramwright.Quantities;

namespace Ramwright.Power;

/// <summary>The air around us, as the trade reckons with it.</summary>
public static class Atmosphere
{
    /// <summary>Standard atmosphere, Pa absolute (ISO 2533).</summary>
    public const double Pressure = 101_325;

    /// <summary>The free air (at the atmosphere's own state) that a volume at another state amounts to, by the gas law.</summary>
    /// <param name="V">Volume or volume flow at the first state, m³ or m³/s, 0 or more.</param>
    /// <param name="p1">Its absolute pressure, Pa, above zero.</param>
    /// <param name="T1">Its absolute temperature, K, above zero.</param>
    /// <param name="p2">Absolute pressure of the other state, Pa, above zero.</param>
    /// <param name="T2">Absolute temperature of the other state, K, above zero.</param>
    /// <returns>The same air at the second state, m³ or m³/s.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A pressure or temperature that is not above zero.</exception>
    public static double Convert(double V, double p1, double T1, double p2, double T2)
    {
        Check.NotNegative(V);
        Check.Positive(p1);
        Check.Positive(T1);
        Check.Positive(p2);
        Check.Positive(T2);
        return V * p1 / p2 * T2 / T1;
    }
}
