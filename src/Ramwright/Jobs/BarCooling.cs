using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Jobs;

/// <summary>How long a hot piece of steel lasts in still air, as if it were of one temperature inside.</summary>
/// <remarks>
/// Good where <see cref="Biot"/> is below 0.1. A thicker bar keeps its heart longer: 4 % at 20 mm, 9 % at 50 mm from 1200 to 900 °C.
/// </remarks>
public static class BarCooling
{
    /// <summary>Balance of heat.</summary>
    public static readonly Citation Balance = Citation.Mechanics("heat lost by the surface is heat lost by the whole; integrated over the temperature");

    /// <summary>When a piece may be taken as of one temperature.</summary>
    public static readonly Citation BiotSource = new("Incropera and DeWitt, Fundamentals of Heat and Mass Transfer", "lumped where Bi < 0.1", Standing.FromMemory);

    /// <summary>Time to cool from one temperature to another.</summary>
    /// <param name="VA">Volume over surface, m, above zero: a quarter of a long bar's thickness, half of a wide plate's.</param>
    /// <param name="from">°C, at most <see cref="HotSteel.Hottest"/>.</param>
    /// <param name="to">°C, not above <paramref name="from"/>, above the surroundings.</param>
    /// <param name="surface">What the surface loses.</param>
    /// <param name="c">Specific heat, J/(kg·K); null for that of carbon steel at each temperature.</param>
    /// <returns>s.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static double Time(double VA, double from, double to, HotSurface surface, double? c = null)
    {
        ArgumentNullException.ThrowIfNull(surface);
        Check.Positive(VA);
        Check.Above(to, Math.Max(surface.Surroundings, HotSteel.Coldest));
        Check.AtLeast(from, to);
        if (from > HotSteel.Hottest)
            Check.Refuse(nameof(from), from, $"at most {HotSteel.Hottest} °C");
        if (c is double constant)
            Check.Positive(constant, nameof(c));

        // Simpson's rule on each stretch between the kinks of the specific heat, fine enough for its peak at 735 °C.
        double t = 0;
        ReadOnlySpan<double> kinks = [HotSteel.Coldest, 600, 735, 900, HotSteel.Hottest];
        for (int k = 0; k + 1 < kinks.Length; k++)
        {
            double lo = Math.Max(to, kinks[k]), hi = Math.Min(from, kinks[k + 1]);
            if (hi <= lo)
                continue;
            int n = 2 * Math.Max(8, (int)Math.Ceiling((hi - lo) / (c is null && k is 1 or 2 ? 0.5 : 20)));
            double sum = 0, step = (hi - lo) / n;
            for (int i = 0; i <= n; i++)
            {
                double T = i == n ? hi : lo + step * i;
                double heat = c ?? HotSteel.Heat(i == n ? T - 1e-9 : T);
                sum += (i == 0 || i == n ? 1 : i % 2 == 1 ? 4 : 2) * heat / surface.Flux(T);
            }

            t += sum * step / 3;
        }

        return HotSteel.Density * VA * t;
    }

    /// <summary>Temperature after some time in still air.</summary>
    /// <param name="VA">Volume over surface, m, above zero.</param>
    /// <param name="from">°C, above the surroundings, at most <see cref="HotSteel.Hottest"/>.</param>
    /// <param name="time">s, 0 or more.</param>
    /// <param name="surface">What the surface loses.</param>
    /// <returns>°C; the surroundings are never quite reached.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static double After(double VA, double from, double time, HotSurface surface)
    {
        ArgumentNullException.ThrowIfNull(surface);
        Check.Above(from, surface.Surroundings);
        Check.NotNegative(time);
        double low = surface.Surroundings + 1e-3 * (from - surface.Surroundings), high = from;
        if (Time(VA, from, low, surface) <= time)
            return low;
        for (int i = 0; i < 60; i++)
        {
            double T = (low + high) / 2;
            if (Time(VA, from, T, surface) > time)
                low = T;
            else
                high = T;
        }

        return (low + high) / 2;
    }

    /// <summary>Time to cool by radiation alone into surroundings that send nothing back, constant specific heat.</summary>
    /// <param name="VA">Volume over surface, m, above zero.</param>
    /// <param name="from">°C.</param>
    /// <param name="to">°C, above absolute zero, not above <paramref name="from"/>.</param>
    /// <param name="c">Specific heat, J/(kg·K), above zero.</param>
    /// <param name="emissivity">Above 0, at most 1.</param>
    /// <param name="w">Where to show the working.</param>
    /// <returns>s.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static double ByRadiation(
        double VA, double from, double to, double c = 650, double emissivity = HotSurface.ScaledSteel, Working? w = null)
    {
        Check.Positive(VA);
        Check.Above(to, -HotSurface.Ice);
        Check.AtLeast(from, to);
        Check.Positive(c);
        Check.Efficiency(emissivity);
        double T_0 = from + HotSurface.Ice, T_1 = to + HotSurface.Ice;
        double t = HotSteel.Density * c * VA / (3 * emissivity * HotSurface.sigma) * (1 / (T_1 * T_1 * T_1) - 1 / (T_0 * T_0 * T_0));
        w?.Step("t", "time to cool by radiation alone, temperatures in K", "ρ c s/(3 ε σ) · (1/T_1³ − 1/T_0³)", t, Dimension.Time, Balance,
            ("ρ", HotSteel.Density, Dimension.Density), ("c", c, Dimension.Number), ("s", VA, Dimension.Length), ("ε", emissivity, Dimension.Number),
            ("σ", HotSurface.sigma, Dimension.Number), ("T_1", T_1, Dimension.Number), ("T_0", T_0, Dimension.Number));
        return t;
    }

    /// <summary>How much of the resistance to cooling lies inside the bar.</summary>
    /// <param name="d">Diameter of a long bar, m, above zero.</param>
    /// <param name="T">Its temperature, °C.</param>
    /// <param name="surface">What the surface loses.</param>
    /// <returns>Biot number h R/(2 k).</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static double Biot(double d, double T, HotSurface surface)
    {
        ArgumentNullException.ThrowIfNull(surface);
        Check.Positive(d);
        Check.Above(T, surface.Surroundings);
        double h = surface.Loses(T) / (T - surface.Surroundings);
        return h * (d / 2) / (2 * HotSteel.Conductivity(T));
    }

    /// <summary>How much colder the skin of a long round bar is than its heart while it cools evenly.</summary>
    /// <param name="d">Diameter, m, above zero.</param>
    /// <param name="T">Temperature of the skin, °C.</param>
    /// <param name="surface">What the surface loses.</param>
    /// <param name="w">Where to show the working.</param>
    /// <returns>K, q R/(2 k): a parabola across the bar.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static double SkinBelowHeart(double d, double T, HotSurface surface, Working? w = null)
    {
        ArgumentNullException.ThrowIfNull(surface);
        Check.Positive(d);
        double q = surface.Loses(T, w), k = HotSteel.Conductivity(T), R = d / 2;
        double dT = q * R / (2 * k);
        w?.Step("ΔT", "skin below heart", "q R/(2 k)", dT, Dimension.Number, Balance,
            ("q", q, Dimension.Number), ("R", R, Dimension.Length), ("k", k, Dimension.Number));
        return dT;
    }

    /// <summary>Warming of the bar by the work of squeezing it.</summary>
    /// <param name="Y">Flow stress, Pa, 0 or more.</param>
    /// <param name="strain">True strain, 0 or more.</param>
    /// <param name="c">Specific heat, J/(kg·K), above zero.</param>
    /// <param name="beta">Share of the work that turns into heat, above 0, at most 1.</param>
    /// <param name="w">Where to show the working.</param>
    /// <returns>K.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static double WorkWarms(double Y, double strain, double c = 650, double beta = WorkIntoHeat, Working? w = null)
    {
        Check.NotNegative(Y);
        Check.NotNegative(strain);
        Check.Positive(c);
        Check.Efficiency(beta);
        double dT = beta * Y * strain / (HotSteel.Density * c);
        w?.Step("ΔT", "warming by the work", "β Y ε/(ρ c)", dT, Dimension.Number, WorkSource,
            ("β", beta, Dimension.Ratio), ("Y", Y, Dimension.Stress), ("ε", strain, Dimension.Number), ("ρ", HotSteel.Density, Dimension.Density),
            ("c", c, Dimension.Number));
        return dT;
    }

    /// <summary>Share of plastic work that turns into heat.</summary>
    public const double WorkIntoHeat = 0.95;

    /// <summary>Where that share comes from.</summary>
    public static readonly Citation WorkSource = Citation.Practice("nine tenths and more of plastic work turn into heat, 0.95 is usual for hot steel");
}
