using Ramwright.Measuring;
using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Proving;

/// <summary>What is known of an instrument. SI of what it measures.</summary>
/// <param name="Name">Its name in the log, or what was taken for it.</param>
/// <param name="Measures">What it measures.</param>
/// <param name="Limit">Greatest error either way.</param>
/// <param name="Resolution">Smallest step that is read.</param>
public sealed record Instrument(string Name, Dimension Measures, double Limit, double Resolution)
{
    /// <summary>Why its errors are what they are taken as.</summary>
    public required Remark Why { get; init; }
    /// <summary>Whether nothing is said of it and the usual was taken.</summary>
    public bool Assumed { get; init; }
    /// <summary>The most it can show; null where not said.</summary>
    public double? Range { get; init; }
    /// <summary>When it was last compared; null where not said.</summary>
    public DateOnly? Calibrated { get; init; }

    /// <summary>Its error, the same at every reading of a test: anywhere within its limit.</summary>
    public Estimate Error => Estimate.Within(0, Limit);

    /// <summary>What is lost by reading to the nearest step: anywhere within half of it.</summary>
    public Estimate Reading => Estimate.Within(0, Resolution / 2);

    /// <summary>The mean of what was read: by its scatter, or for a single reading within one step.</summary>
    /// <param name="values">The readings, one or more.</param>
    public Estimate Mean(IReadOnlyList<double> values)
    {
        ArgumentNullException.ThrowIfNull(values);
        return values.Count > 1 ? Estimate.Repeated(values) : Estimate.Within(values[0], Resolution);
    }

    /// <summary>The same with the step that every reading is read to, which scatter does not show where all readings fall on one step.</summary>
    /// <param name="values">The readings, one or more.</param>
    public Estimate MeanRead(IReadOnlyList<double> values) => With(Mean(values), Reading.U);

    /// <summary>An estimate with a further uncertainty that is taken as known.</summary>
    internal static Estimate With(Estimate mean, double more)
    {
        double u = Math.Sqrt(mean.U * mean.U + more * more);
        return u > 0 && mean.U > 0 ? new Estimate(mean.Value, u, double.IsInfinity(mean.Dof) ? mean.Dof : mean.Dof * Math.Pow(u / mean.U, 4)) : mean with { U = u };
    }

    /// <summary>What is taken where nothing is said of the instrument: common practice of a workshop.</summary>
    /// <param name="kind">What was read.</param>
    /// <param name="pressure">A pressure that its gauge must reach, Pa.</param>
    public static Instrument Usual(ReadingKind kind, double pressure) => ReadingForm.Of(kind).Measures switch
    {
        Dimension.Pressure => Plain("gauge", Dimension.Pressure, 0.025 * 1.6 * pressure, 0.01 * pressure, "class 2.5 on a dial of 1.6 times the pressure: cheap shop gauges"),
        Dimension.Length when kind is ReadingKind.Bore or ReadingKind.Rod or ReadingKind.CentreTube => Plain("calliper", Dimension.Length, 0.05e-3, 0.02e-3, new Remark("a calliper, {0}", Remark.About(0.05e-3, Dimension.Length))),
        Dimension.Length when kind is ReadingKind.Groove => Plain("calliper", Dimension.Length, 0.05e-3, 0.02e-3, new Remark("a calliper, {0}", Remark.About(0.05e-3, Dimension.Length))),
        Dimension.Length => Plain("dial indicator", Dimension.Length, 0.02e-3, 0.01e-3, new Remark("a dial indicator of {0}, {1} over its travel", Remark.About(0.01e-3, Dimension.Length), Remark.About(0.02e-3, Dimension.Length))),
        Dimension.Time => Plain("stopwatch", Dimension.Time, 0.3, 0.1, "a stopwatch started and stopped by hand, 0.3 s"),
        Dimension.Force => Plain("load cell", Dimension.Force, 0.01 * pressure, 0.001 * pressure, "a load cell, 1 % of the load"),
        _ => Plain("thermometer", Dimension.Temperature, 2, 1, "a shop thermometer, 2 °C (4 °F)"),
    };

    private static Instrument Plain(string name, Dimension measures, double limit, double resolution, Remark why) =>
        new(name, measures, limit, resolution) { Why = why, Assumed = true };
}
