using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Power;

/// <summary>A pump worked by hand or foot: so much oil a stroke, so many strokes a minute, as long as one can push the handle.</summary>
public sealed class HandPumpCurve : PumpCurve
{
    /// <summary>How much harder than the rated push a person can lean on the handle.</summary>
    public const double HardPush = 2;

    /// <summary>What is assumed of a hard push.</summary>
    public static readonly Citation HardPushSource = Citation.Practice("a person who leans on the handle pushes about twice as hard as its rated push");

    /// <summary>Pressure follows the push on the handle.</summary>
    public static readonly Citation LeverSource = Citation.Mechanics("lever and plunger: pressure in proportion to the push");

    private readonly double _unloadAt;
    private readonly double _low;
    private readonly double _high;

    private HandPumpCurve(double low, double high, double unloadAt, double hardest, double? relief)
        : base(hardest, relief)
    {
        _low = low;
        _high = high;
        _unloadAt = unloadAt;
        HardestPressure = hardest;
    }

    /// <summary>Pressure that a hard push makes, Pa, the relief valve aside.</summary>
    public double HardestPressure { get; }

    /// <summary>The curve of a hand pump.</summary>
    /// <param name="pump">The pump.</param>
    /// <param name="w">Where to show the working.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value of the pump outside its range, or a large piston that delivers less than the small one.</exception>
    public static HandPumpCurve Of(RigHandPump pump, Working? w = null)
    {
        ArgumentNullException.ThrowIfNull(pump);
        Check.Positive(pump.PerStroke, "PerStroke");
        Check.AtLeast(pump.LowPerStroke, pump.PerStroke, "LowPerStroke");
        Check.NotNegative(pump.UnloadAt, "UnloadAt");
        Check.Positive(pump.Cadence, "Cadence");
        Check.Positive(pump.RatedPressure, "RatedPressure");
        double p_hard = HardPush * pump.RatedPressure;
        w?.Step("p_hard", "pressure a hard push makes", "k_h p_r", p_hard, Dimension.Pressure, HardPushSource,
            ("k_h", HardPush, Dimension.Number), ("p_r", pump.RatedPressure, Dimension.Pressure));
        double Q_l = pump.LowPerStroke * pump.Cadence;
        w?.Step("Q_l", "flow at low pressure", "V_l f", Q_l, Dimension.Flow, RamSpeed.Continuity,
            ("V_l", pump.LowPerStroke, Dimension.Volume), ("f", pump.Cadence, Dimension.Cadence));
        double Q_h = pump.PerStroke * pump.Cadence;
        w?.Step("Q_h", "flow at high pressure", "V_h f", Q_h, Dimension.Flow, RamSpeed.Continuity,
            ("V_h", pump.PerStroke, Dimension.Volume), ("f", pump.Cadence, Dimension.Cadence));
        return new HandPumpCurve(Q_l, Q_h, pump.UnloadAt, p_hard, pump.Relief);
    }

    /// <summary>Push on the handle at a pressure.</summary>
    /// <param name="atRated">Push at the rated pressure, N, above zero.</param>
    /// <param name="p">Pressure, Pa, 0 or more.</param>
    /// <param name="rated">Rated pressure, Pa, above zero.</param>
    /// <param name="w">Where to show the working.</param>
    /// <returns>N.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static double HandleForce(double atRated, double p, double rated, Working? w = null)
    {
        Check.Positive(atRated);
        Check.NotNegative(p);
        Check.Positive(rated);
        double F_h = atRated * p / rated;
        w?.Step("F_h", "push on the handle", "F_r p/p_r", F_h, Dimension.Force, LeverSource,
            ("F_r", atRated, Dimension.Force), ("p", p, Dimension.Pressure), ("p_r", rated, Dimension.Pressure));
        return F_h;
    }

    private protected override double Delivered(double p) => p < _unloadAt ? _low : _high;

    private protected override double PressureOverFlow(double p)
    {
        double both = Math.Min(p, _unloadAt);
        return both / _low + (p - both) / _high;
    }
}
