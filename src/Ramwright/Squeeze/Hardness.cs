using Ramwright.Jobs;

namespace Ramwright.Squeeze;

/// <summary>How hard hot work is at one moment: a force at a speed, its power of the speed above it, and next to none below.</summary>
/// <param name="Force">N.</param>
/// <param name="Speed">Of the tool at that force, m/s.</param>
/// <param name="Exponent">Power of the speed above it.</param>
/// <param name="Rate">Strain rate there: the slowest at which the flow stress was measured, 1/s.</param>
/// <param name="Stress">Flow stress there, mean over the layers, Pa.</param>
internal readonly record struct Hardness(double Force, double Speed, double Exponent, double Rate, double Stress)
{
    /// <summary>What is left of the sensitivity to rate below the slowest that was measured: practically none.</summary>
    public const double HeldRate = 0.02;

    /// <summary>Way over which scaled faces come to bear on hot work, m: two thirds of the force after the first of these, all of it after five.</summary>
    public const double Bedding = 1e-4;

    /// <summary>Mean over the layers at the slowest rate measured and at ten times that; pressure goes with the flow stress, so that its multiplier is worked out once.</summary>
    /// <param name="bite">The work.</param>
    /// <param name="T">Temperature of the column's cells, °C.</param>
    /// <param name="travel">Way into the work, m, above zero.</param>
    public static Hardness Of(HotBite bite, double[] T, double travel)
    {
        BiteShape at = bite.At(travel);
        double rate = bite.Law.Range.Slowest, slow = 0, fast = 0, strain = Math.Max(at.Strain, 1e-9);
        for (int i = 0; i < HeatColumn.BarCells; i++)
        {
            double share = HeatColumn.ShareOf(i), heat = T[HeatColumn.DieCells + i];
            slow += share * bite.Law.Held(strain, rate, heat);
            fast += share * bite.Law.Held(strain, 10 * rate, heat);
        }

        double area = Math.Max(bite.ContactArea(at), 1e-9), bedding = 1 - Math.Exp(-travel / Bedding);
        return new Hardness(
            bedding * bite.Pressure(1, at with { ContactWidth = Math.Max(at.ContactWidth, 1e-6) }) * slow * area, rate * at.Height,
            Math.Max(HeldRate, Math.Log10(fast / slow)), rate, slow);
    }

    /// <summary>By what power of the force the speed goes.</summary>
    public double Power(double v) => 1 / (v > Speed ? Exponent : HeldRate);

    /// <summary>Speed at which the work yields to a force, m/s.</summary>
    public double SpeedAt(double F)
    {
        if (!(F > 0))
            return 0;
        double r = F / Force;
        // what overshoots by far in a trial step is cut off, not followed
        return Speed * Math.Pow(Math.Min(r, 3), 1 / (r > 1 ? Exponent : HeldRate));
    }
}
