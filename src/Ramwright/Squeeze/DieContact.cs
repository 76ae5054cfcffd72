using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Squeeze;

/// <summary>Hot steel against a cold die: how fast the heat crosses while both are thick to it. Temperatures in °C.</summary>
public static class DieContact
{
    /// <summary>Heat passed where a bar lies on a die with scale between, W/(m²·K); 500 to 2000 is seen.</summary>
    public const double Resting = 1000;

    /// <summary>Heat passed under load, dry, W/(m²·K); 5000 to 10 000 is seen.</summary>
    public const double UnderLoad = 7500;

    /// <summary>Conductivity of a die steel, W/(m·K).</summary>
    public const double DieConductivity = 30;

    /// <summary>Density of a die steel, kg/m³.</summary>
    public const double DieDensity = 7800;

    /// <summary>Specific heat of a die steel, J/(kg·K).</summary>
    public const double DieHeat = 480;

    /// <summary>Two thick bodies.</summary>
    public static readonly Citation Source = new("Carslaw and Jaeger, Conduction of Heat in Solids", "two half-spaces with a contact between", Standing.FromMemory);

    /// <summary>How well the contact passes heat.</summary>
    public static readonly Citation ConductanceSource =
        Citation.Practice("500 to 2000 W/(m²·K) resting with scale, 5000 to 10 000 under load, more with lubricant: the least certain number of a squeeze");

    /// <summary>How much heat a thick body takes up at a touch.</summary>
    /// <param name="k">Conductivity, W/(m·K), above zero.</param>
    /// <param name="rho">Density, kg/m³, above zero.</param>
    /// <param name="c">Specific heat, J/(kg·K), above zero.</param>
    /// <returns>Effusivity, W·√s/(m²·K).</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value that is not above zero.</exception>
    public static double Effusivity(double k, double rho, double c) => Math.Sqrt(Check.Positive(k) * Check.Positive(rho) * Check.Positive(c));

    /// <summary>Temperature where two thick bodies touch with nothing between.</summary>
    /// <param name="b1">Effusivity of the one, above zero.</param>
    /// <param name="T1">Its temperature, °C.</param>
    /// <param name="b2">Effusivity of the other, above zero.</param>
    /// <param name="T2">Its temperature, °C.</param>
    /// <param name="w">Where to show the working.</param>
    /// <returns>°C.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static double Between(double b1, double T1, double b2, double T2, Working? w = null)
    {
        Check.Positive(b1);
        Check.Positive(b2);
        double T = (b1 * Check.Finite(T1) + b2 * Check.Finite(T2)) / (b1 + b2);
        w?.Step("T_i", "temperature where they touch", "(b_1 T_1 + b_2 T_2)/(b_1 + b_2)", T, Dimension.Temperature, Source,
            ("b_1", b1, Dimension.Number), ("T_1", T1, Dimension.Temperature), ("b_2", b2, Dimension.Number), ("T_2", T2, Dimension.Temperature));
        return T;
    }

    /// <summary>What crosses a contact after a time.</summary>
    /// <param name="h">Conductance, W/(m²·K), above zero.</param>
    /// <param name="b1">Effusivity of the hot body, above zero.</param>
    /// <param name="T1">Its temperature at the start, °C.</param>
    /// <param name="b2">Effusivity of the cold one, above zero.</param>
    /// <param name="T2">Its temperature at the start, °C.</param>
    /// <param name="t">s, above zero.</param>
    /// <returns>Flux, W/m²; heat so far, J/m²; the two surfaces, °C. Too much once the heat has reached a far side.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static (double Flux, double Heat, double HotFace, double ColdFace) After(double h, double b1, double T1, double b2, double T2, double t)
    {
        Check.Positive(h);
        Check.Positive(b1);
        Check.Positive(b2);
        Check.Finite(T1);
        Check.Finite(T2);
        Check.Positive(t);
        double a = h * (1 / b1 + 1 / b2), x = a * Math.Sqrt(t), e = ScaledErfc(x), dT = T1 - T2;
        double q = h * dT * e;
        double Q = h * dT / (a * a) * (e - 1 + 2 * x / Math.Sqrt(Math.PI));
        double rise = dT - q / h;                     // lost on both sides of the contact, shared by effusivity
        return (q, Q, T1 - rise * b2 / (b1 + b2), T2 + rise * b1 / (b1 + b2));
    }

    /// <summary>e^(x²) erfc x for x of zero or more: a series below 2, a continued fraction from there.</summary>
    internal static double ScaledErfc(double x)
    {
        if (x < 2)
        {
            double term = x, sum = x, x2 = x * x;
            for (int n = 1; n < 200 && Math.Abs(term) > 1e-17 * sum; n++)
            {
                term *= 2 * x2 / (2 * n + 1);
                sum += term;
            }

            // erf x = 2/√π e^(−x²) Σ, all terms of one sign
            return Math.Exp(x2) - 2 / Math.Sqrt(Math.PI) * sum;
        }

        double f = 0;
        for (int n = 60; n >= 1; n--)
            f = n / 2.0 / (x + f);
        return 1 / (Math.Sqrt(Math.PI) * (x + f));
    }
}
