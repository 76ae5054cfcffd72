using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Power;

/// <summary>Where the working pressure stands on a gauge.</summary>
public enum GaugeVerdict
{
    /// <summary>Low on the dial: the error of the class is a large share of the reading.</summary>
    Low,
    /// <summary>Where it reads well and lasts.</summary>
    Well,
    /// <summary>So high on the dial that the gauge wears out.</summary>
    High,
    /// <summary>Off the dial.</summary>
    Beyond,
}

/// <summary>A gauge against the pressure it must show.</summary>
/// <param name="Range">Greatest pressure on its dial, Pa.</param>
/// <param name="Share">Working pressure over the range.</param>
/// <param name="Error">Greatest error by its class, Pa: a share of the range, wherever the pointer stands.</param>
/// <param name="ErrorOfReading">That error as a share of the working pressure, and so of the force read from it.</param>
/// <param name="Verdict">Where the working pressure stands.</param>
public sealed record GaugeCheck(double Range, double Share, double Error, double ErrorOfReading, GaugeVerdict Verdict)
{
    /// <summary>Share of the range from which a gauge is read well.</summary>
    public const double Least = 0.5;

    /// <summary>Share of the range up to which a gauge lasts under steady pressure.</summary>
    public const double Most = 0.75;

    /// <summary>Where the working pressure should stand.</summary>
    public static readonly Citation Band = Citation.Practice("working pressure between a half and three quarters of the range; EN 837-2 names three quarters for steady pressure, from memory");

    /// <summary>What a class means.</summary>
    public static readonly Citation ClassSource = new("EN 837-1:1996", "accuracy class in per cent of the span");

    // Ranges that gauges are made in, Pa; EN 837-1, table of ranges, from memory.
    private static readonly double[] Ranges = [25e5, 40e5, 60e5, 100e5, 160e5, 250e5, 400e5, 600e5, 1000e5, 1600e5, 2500e5];

    // The same for gauges in psi; common practice.
    private static readonly double[] RangesPsi = [300, 600, 1000, 1500, 2000, 3000, 5000, 6000, 10_000, 15_000, 20_000, 30_000];

    private const double Psi = 0.45359237 * 9.80665 / (0.0254 * 0.0254);

    /// <summary>Weighs a gauge.</summary>
    /// <param name="gauge">The gauge.</param>
    /// <param name="p">Working pressure, Pa, above zero.</param>
    /// <param name="w">Where to show the working.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value that is not above zero.</exception>
    public static GaugeCheck Of(RigGauge gauge, double p, Working? w = null)
    {
        ArgumentNullException.ThrowIfNull(gauge);
        Check.Positive(p);
        Check.Positive(gauge.Range, "Range");
        Check.Positive(gauge.Class, "Class");
        double share = p / gauge.Range, error = gauge.Class / 100 * gauge.Range, ofReading = error / p;
        w?.Step("e", "error of the gauge as a share of what it reads", "c/100 · p_R/p", ofReading, Dimension.Ratio, ClassSource,
            ("c", gauge.Class, Dimension.Number), ("p_R", gauge.Range, Dimension.Pressure), ("p", p, Dimension.Pressure));
        GaugeVerdict verdict = share > 1 ? GaugeVerdict.Beyond : share > Most ? GaugeVerdict.High : share < Least ? GaugeVerdict.Low : GaugeVerdict.Well;
        return new GaugeCheck(gauge.Range, share, error, ofReading, verdict);
    }

    /// <summary>The smallest range in which a gauge is made and the pressure stands at three quarters or less, Pa.</summary>
    /// <param name="p">Working pressure, Pa, above zero.</param>
    /// <param name="units">What its dial reads.</param>
    /// <exception cref="ArgumentOutOfRangeException">A pressure that is not above zero.</exception>
    public static double RangeFor(double p, UnitSystem units = UnitSystem.Metric)
    {
        Check.Positive(p);
        foreach (double range in units == UnitSystem.Imperial ? RangesPsi.Select(psi => psi * Psi) : Ranges)
        {
            if (p <= Most * range * (1 + 1e-9))
                return range;
        }

        return p / Most;
    }
}
