using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Jobs;

/// <summary>A law of the flow stress of hot steel: what it takes to go on deforming it. Immutable; safe from many threads.</summary>
public abstract record FlowStress
{
    /// <summary>What the law is called.</summary>
    public abstract string Name { get; }
    /// <summary>Where it comes from.</summary>
    public abstract Citation Source { get; }
    /// <summary>Where it was measured.</summary>
    public abstract FlowRange Range { get; }

    /// <summary>Strain beyond which it is taken as constant: its greatest value, or the end of its range.</summary>
    public virtual double HeldFrom => Range.MostStrain;

    /// <summary>Flow stress as the source prints it, Pa.</summary>
    /// <param name="strain">True strain, 0 to the end of the range.</param>
    /// <param name="rate">True strain rate, 1/s, in the range.</param>
    /// <param name="temperature">Temperature, °C, in the range.</param>
    /// <param name="w">Where to write it down.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range of the law: it is not extended.</exception>
    public double Stress(double strain, double rate, double temperature, Working? w = null)
    {
        Within(strain, 0, Range.MostStrain, nameof(strain), "");
        Within(rate, Range.Slowest, Range.Fastest, nameof(rate), " /s");
        Within(temperature, Range.Coldest, Range.Hottest, nameof(temperature), " °C");
        return At(strain, rate, temperature, w);
    }

    /// <summary>
    /// Flow stress for reckoning a squeeze through, Pa: held at the end of the range where the squeeze leaves it, and at its greatest
    /// value beyond <see cref="HeldFrom"/>. Whoever uses it says so where <see cref="FlowRange.Outside"/> does.
    /// </summary>
    /// <param name="strain">True strain, 0 or more.</param>
    /// <param name="rate">True strain rate, 1/s, 0 or more.</param>
    /// <param name="temperature">Temperature, °C.</param>
    /// <param name="w">Where to write it down.</param>
    /// <exception cref="ArgumentOutOfRangeException">A strain or rate below zero, or a value that is not finite.</exception>
    public double Held(double strain, double rate, double temperature, Working? w = null)
    {
        Check.NotNegative(strain);
        Check.NotNegative(rate);
        Check.Finite(temperature);
        return At(Math.Min(strain, HeldFrom), Math.Clamp(rate, Range.Slowest, Range.Fastest),
            Math.Clamp(temperature, Range.Coldest, Range.Hottest), w);
    }

    /// <summary>Mean of <see cref="Held"/> over the strain from nothing, Pa: for the work of a squeeze.</summary>
    public virtual double Mean(double strain, double rate, double temperature)
    {
        Check.Positive(strain);
        const int n = 200;      // Simpson; the law is smooth but for its start
        double sum = 0;
        for (int i = 0; i <= n; i++)
            sum += (i == 0 || i == n ? 1 : i % 2 == 1 ? 4 : 2) * Held(strain * i / n, rate, temperature);
        return sum / (3 * n);
    }

    /// <summary>The law inside its range; the arguments have been checked.</summary>
    protected abstract double At(double strain, double rate, double temperature, Working? w);

    private static void Within(double x, double low, double high, string name, string unit)
    {
        if (!(x >= low && x <= high))
            Check.Refuse(name, x, $"{Readout.Number(low)} to {Readout.Number(high)}{unit}, where the law was measured");
    }
}
