using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Jobs;

/// <summary>A hot piece cooling in still air, its heat taken as even all through (lumped). Temperatures in °C.</summary>
/// <remarks>
/// Good for bars up to about 60 mm, whose surface runs some tens of degrees below their middle. The specific heat is that of carbon steel, with its
/// peak where austenite turns.
/// </remarks>
public static class AirCooling
{
    /// <summary>Radiation of a grey body.</summary>
    public static readonly Citation Radiation = Citation.Mechanics("Stefan and Boltzmann's law for a grey body in large surroundings");
    /// <summary>Specific heat of hot steel.</summary>
    public static readonly Citation Eurocode = new("EN 1993-1-2:2005", "3.4.1.2: specific heat of carbon steel", Standing.FromMemory);
    /// <summary>What is left when the heat runs out.</summary>
    public static readonly Citation Balance = Citation.Mechanics("heat given off at the surface is heat lost inside");

    /// <summary>Emissivity of scaled steel; 0.75 to 0.9.</summary>
    public const double ScaledSteel = 0.8;
    /// <summary>Convection from a bar in still air, W/(m² K).</summary>
    public const double StillAir = 10;
    /// <summary>Specific heat of austenite above 900 °C, J/(kg K).</summary>
    public const double Austenite = 650;
    /// <summary>Density kept constant, as the standard does, kg/m³.</summary>
    public const double Density = 7850;

    private const double StefanBoltzmann = 5.670374e-8, Zero = 273.15;

    /// <summary>Specific heat of carbon steel, J/(kg K).</summary>
    /// <param name="T">°C; below 20 as at 20, above 1200 as at 1200.</param>
    public static double SpecificHeat(double T)
    {
        double θ = Math.Max(20, Check.Finite(T));
        return θ >= 900 ? Austenite
            : θ >= 735 ? 545 + 17820 / (θ - 731)
            : θ >= 600 ? 666 + 13002 / (738 - θ)
            : 425 + 0.773 * θ - 1.69e-3 * θ * θ + 2.22e-6 * θ * θ * θ;
    }

    /// <summary>Radiated, W/m².</summary>
    /// <param name="T">Of the surface, °C.</param>
    /// <param name="surroundings">°C.</param>
    /// <param name="ε">Emissivity, above 0, at most 1.</param>
    public static double Radiated(double T, double surroundings = 20, double ε = ScaledSteel) =>
        Check.Efficiency(ε) * StefanBoltzmann * (Math.Pow(Check.Above(T, -Zero) + Zero, 4) - Math.Pow(Check.Above(surroundings, -Zero) + Zero, 4));

    /// <summary>Radiated and taken by the air, W/m².</summary>
    /// <param name="T">Of the surface, °C.</param>
    /// <param name="surroundings">°C.</param>
    /// <param name="ε">Emissivity.</param>
    /// <param name="h_c">Convection, W/(m² K), 0 or more.</param>
    public static double Lost(double T, double surroundings = 20, double ε = ScaledSteel, double h_c = StillAir) =>
        Radiated(T, surroundings, ε) + Check.NotNegative(h_c) * (T - surroundings);

    /// <summary>Time to cool by radiation alone into surroundings that send nothing back: ρ c (V/A)/(3 ε σ) · (1/T₁³ − 1/T₀³) in kelvin.</summary>
    /// <param name="VA">Volume over surface, m: a quarter of the diameter of a long bar.</param>
    /// <param name="from">°C.</param>
    /// <param name="to">°C, not above <paramref name="from"/>.</param>
    public static double RadiationTime(double VA, double from, double to)
    {
        Check.Positive(VA);
        Check.AtLeast(from, Check.Above(to, -Zero));
        return Density * Austenite * VA / (3 * ScaledSteel * StefanBoltzmann) * (Math.Pow(to + Zero, -3) - Math.Pow(from + Zero, -3));
    }

    /// <summary>Time to cool by radiation and still air, s.</summary>
    /// <param name="VA">Volume over surface, m.</param>
    /// <param name="from">°C, above the surroundings.</param>
    /// <param name="to">°C, above the surroundings and not above <paramref name="from"/>.</param>
    /// <param name="surroundings">°C.</param>
    public static double Time(double VA, double from, double to, double surroundings = 20)
    {
        Check.Positive(VA);
        Check.AtLeast(from, Check.Above(to, surroundings));
        const int n = 400;
        double sum = 0;
        for (int i = 0; i <= n; i++)
        {
            double T = from + (to - from) * i / n;
            sum += (i == 0 || i == n ? 1 : i % 2 == 1 ? 4 : 2) * SpecificHeat(T) / Lost(T, surroundings);
        }

        return Density * VA * (from - to) * sum / (3 * n);
    }

    /// <summary>Temperature after some time in still air, °C.</summary>
    /// <param name="VA">Volume over surface, m.</param>
    /// <param name="from">°C, above the surroundings.</param>
    /// <param name="time">s, 0 or more.</param>
    /// <param name="surroundings">°C.</param>
    public static double After(double VA, double from, double time, double surroundings = 20)
    {
        Check.Positive(VA);
        Check.Above(from, surroundings);
        Check.NotNegative(time);
        double low = surroundings + 1e-3 * (from - surroundings), high = from;
        if (Time(VA, from, low, surroundings) <= time)
            return low;
        for (int i = 0; i < 60; i++)
        {
            double T = (low + high) / 2;
            if (Time(VA, from, T, surroundings) > time)
                low = T;
            else
                high = T;
        }

        return (low + high) / 2;
    }
}
