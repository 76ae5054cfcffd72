using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Jobs;

/// <summary>How carbon steel takes up and conducts heat. Temperatures in °C.</summary>
/// <remarks>
/// The standard gives its formulas from 20 to 1200 °C; from there to <see cref="Hottest"/> the values of 1200 °C are held, which
/// a forging heat needs. Stainless and high-alloy steels differ.
/// </remarks>
public static class HotSteel
{
    /// <summary>Coldest temperature, °C.</summary>
    public const double Coldest = 20;

    /// <summary>Hottest temperature, °C.</summary>
    public const double Hottest = 1400;

    /// <summary>Density, kg/m³; the standard keeps it constant.</summary>
    public const double Density = 7850;

    /// <summary>Specific heat.</summary>
    public static readonly Citation HeatSource = new("EN 1993-1-2:2005", "3.4.1.2, specific heat of carbon steel", Standing.FromMemory);

    /// <summary>Conductivity.</summary>
    public static readonly Citation ConductivitySource = new("EN 1993-1-2:2005", "3.4.1.3, thermal conductivity of carbon steel", Standing.FromMemory);

    /// <summary>Growth.</summary>
    public static readonly Citation ElongationSource = new("EN 1993-1-2:2005", "3.4.1.1, elongation of carbon steel", Standing.FromMemory);

    private const int Steps = 4096;
    private static readonly double MostEnthalpy = Closed(Hottest) - Closed(Coldest);
    private static readonly double[] Table = Invert();

    /// <summary>Specific heat.</summary>
    /// <param name="T">°C, <see cref="Coldest"/> to <see cref="Hottest"/>.</param>
    /// <returns>J/(kg·K).</returns>
    /// <exception cref="ArgumentOutOfRangeException">A temperature outside the range.</exception>
    public static double SpecificHeat(double T)
    {
        InRange(T);
        return Heat(T);
    }

    /// <summary>Conductivity.</summary>
    /// <param name="T">°C, <see cref="Coldest"/> to <see cref="Hottest"/>.</param>
    /// <returns>W/(m·K).</returns>
    /// <exception cref="ArgumentOutOfRangeException">A temperature outside the range.</exception>
    public static double Conductivity(double T)
    {
        InRange(T);
        return Conducts(T);
    }

    /// <summary>Growth in length from 20 °C.</summary>
    /// <param name="T">°C, <see cref="Coldest"/> to <see cref="Hottest"/>.</param>
    /// <returns>Share of the length. A piece that is to be 100 mm cold must measure 100 (1 + this) mm hot.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A temperature outside the range.</exception>
    public static double Elongation(double T)
    {
        InRange(T);
        return T < 750 ? 1.2e-5 * T + 0.4e-8 * T * T - 2.416e-4 : T <= 860 ? 0.011 : 2e-5 * T - 6.2e-3;
    }

    /// <summary>Heat in steel above 20 °C.</summary>
    /// <param name="T">°C, <see cref="Coldest"/> to <see cref="Hottest"/>.</param>
    /// <param name="w">Where to show the working.</param>
    /// <returns>J/kg, the integral of <see cref="SpecificHeat"/>, in closed form.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A temperature outside the range.</exception>
    public static double Enthalpy(double T, Working? w = null)
    {
        InRange(T);
        double e = Closed(T) - Closed(Coldest);
        w?.Take("e", "heat in a kilogram of steel above 20 °C", e, Dimension.Number, HeatSource);
        return e;
    }

    /// <summary>Temperature of steel that holds so much heat: <see cref="Enthalpy"/> turned round, by a table fine to 0.01 K.</summary>
    /// <param name="e">J/kg above 20 °C.</param>
    /// <returns>°C.</returns>
    /// <exception cref="ArgumentOutOfRangeException">More or less heat than the range has.</exception>
    public static double Temperature(double e)
    {
        Check.NotNegative(e);
        if (e > MostEnthalpy)
            Check.Refuse(nameof(e), e, $"at most {MostEnthalpy}, steel at {Hottest} °C");
        return At(e);
    }

    /// <summary><see cref="Temperature"/> with no check: held at the ends of the range.</summary>
    internal static double At(double e)
    {
        double at = e / MostEnthalpy * Steps;
        if (!(at > 0))
            return Coldest;
        int i = (int)at;
        return i >= Steps ? Hottest : Table[i] + (at - i) * (Table[i + 1] - Table[i]);
    }

    /// <summary><see cref="SpecificHeat"/> with no check.</summary>
    internal static double Heat(double T) => T switch
    {
        < 600 => 425 + T * (0.773 + T * (-1.69e-3 + T * 2.22e-6)),
        < 735 => 666 + 13002 / (738 - T),
        < 900 => 545 + 17820 / (T - 731),
        _ => 650,
    };

    /// <summary><see cref="Conductivity"/> with no check.</summary>
    internal static double Conducts(double T) => T < 800 ? 54 - 3.33e-2 * T : 27.3;

    private static void InRange(double T)
    {
        if (!(T >= Coldest && T <= Hottest))
            Check.Refuse(nameof(T), T, $"from {Coldest} to {Hottest} °C");
    }

    /// <summary>The integral of the specific heat, each branch carried on from the one before.</summary>
    private static double Closed(double T)
    {
        if (T < 600)
            return Low(T);
        double e = Low(600);
        if (T < 735)
            return e + Middle(T) - Middle(600);
        e += Middle(735) - Middle(600);
        if (T < 900)
            return e + High(T) - High(735);
        return e + High(900) - High(735) + 650 * (T - 900);

        static double Low(double T) => T * (425 + T * (0.773 / 2 + T * (-1.69e-3 / 3 + T * 2.22e-6 / 4)));
        static double Middle(double T) => 666 * T - 13002 * Math.Log(738 - T);
        static double High(double T) => 545 * T + 17820 * Math.Log(T - 731);
    }

    private static double[] Invert()
    {
        var table = new double[Steps + 1];
        double from = Closed(Coldest), T = Coldest;
        for (int i = 0; i < Steps; i++)
        {
            double target = MostEnthalpy * i / Steps, lo = T, hi = Hottest;
            for (int k = 0; k < 60 && hi - lo > 1e-9; k++)
            {
                T = 0.5 * (lo + hi);
                if (Closed(T) - from < target)
                    lo = T;
                else
                    hi = T;
            }

            table[i] = T = lo;
        }

        table[Steps] = Hottest;
        return table;
    }
}
