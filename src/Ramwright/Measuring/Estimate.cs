using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Measuring;

/// <summary>What is believed of a quantity that is not known exactly.</summary>
public enum Spread
{
    /// <summary>Normal; Student's where the degrees of freedom are few.</summary>
    Normal,
    /// <summary>Anywhere between two bounds, all places alike.</summary>
    Rectangular,
    /// <summary>Between two bounds, the middle likeliest.</summary>
    Triangular,
}

/// <summary>A value with its standard uncertainty.</summary>
/// <param name="Value">The best value, SI.</param>
/// <param name="U">Standard uncertainty u, SI, 0 or more.</param>
/// <param name="Dof">Degrees of freedom ν; infinite where the uncertainty is taken as known.</param>
/// <param name="Spread">What is believed of it between its bounds.</param>
public readonly record struct Estimate(double Value, double U, double Dof = double.PositiveInfinity, Spread Spread = Spread.Normal)
{
    /// <summary>From repeated readings.</summary>
    public static readonly Citation TypeASource = new("JCGM 100:2008 (GUM)", "4.2");

    /// <summary>From bounds or a certificate.</summary>
    public static readonly Citation TypeBSource = new("JCGM 100:2008 (GUM)", "4.3");

    /// <summary>Type A: the mean of readings that were repeated independently.</summary>
    /// <param name="readings">Two or more, finite.</param>
    /// <param name="w">Where to show the working.</param>
    /// <exception cref="ArgumentException">Fewer than two readings.</exception>
    public static Estimate Repeated(IReadOnlyList<double> readings, Working? w = null)
    {
        ArgumentNullException.ThrowIfNull(readings);
        int n = readings.Count;
        if (n < 2)
            throw new ArgumentException("one reading alone says nothing of its scatter", nameof(readings));
        double mean = 0;
        foreach (double x in readings)
            mean += Check.Finite(x, nameof(readings)) / n;
        double sum = 0;
        foreach (double x in readings)
            sum += (x - mean) * (x - mean);
        double s = Math.Sqrt(sum / (n - 1)), u = s / Math.Sqrt(n);
        w?.Step("u", $"standard uncertainty of the mean of {n} readings", "√(S / (n − 1)) / √(n)", u, Dimension.Number, TypeASource,
            ("S", sum, Dimension.Number), ("n", n, Dimension.Count));
        return new Estimate(mean, u, n - 1);
    }

    /// <summary>Type B: anywhere within ±a, all places alike; u = a/√3.</summary>
    /// <param name="value">The middle.</param>
    /// <param name="a">Half width, 0 or more.</param>
    public static Estimate Within(double value, double a) => new(Check.Finite(value), Check.NotNegative(a) / Math.Sqrt(3), double.PositiveInfinity, Spread.Rectangular);

    /// <summary>Type B: within ±a, the middle likeliest; u = a/√6.</summary>
    /// <param name="value">The middle.</param>
    /// <param name="a">Half width, 0 or more.</param>
    public static Estimate Peaked(double value, double a) => new(Check.Finite(value), Check.NotNegative(a) / Math.Sqrt(6), double.PositiveInfinity, Spread.Triangular);

    /// <summary>Type B: as a certificate states it, U = k u.</summary>
    /// <param name="value">The value.</param>
    /// <param name="U">Expanded uncertainty, 0 or more.</param>
    /// <param name="k">Its coverage factor, above zero.</param>
    public static Estimate Certified(double value, double U, double k = 2) => new(Check.Finite(value), Check.NotNegative(U) / Check.Positive(k));

    /// <summary>Degrees of freedom of a type B uncertainty that is itself known only so well: ν = ½ (u/Δu)².</summary>
    /// <param name="relative">How far the stated uncertainty may be off, as a share of it, above zero.</param>
    /// <remarks>JCGM 100:2008, eq. G.3.</remarks>
    public static double Reliability(double relative) => 0.5 / (Check.Positive(relative) * relative);
}
