using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Power;

/// <summary>
/// An electric pump of one or two stages. Both stages deliver until the large one is unloaded, then the small one alone, at
/// constant flow, until the relief valve opens or the motor stops.
/// </summary>
/// <remarks>The slip of the motor under load and the growth of leakage with pressure are left in the efficiencies.</remarks>
public sealed class ElectricPumpCurve : PumpCurve
{
    /// <summary>
    /// Greatest torque of a motor over its rated torque, where nothing is known of the motor. Catalogues show 2 to 3.
    /// </summary>
    public const double BreakdownTorque = 2.5;

    /// <summary>What is assumed of a motor's greatest torque.</summary>
    public static readonly Citation BreakdownSource = Citation.Practice("an induction motor pulls about 2.5 times its rated torque before it stops");

    private readonly double _unloadAt;
    private readonly double _low;
    private readonly double _high;

    private ElectricPumpCurve(double low, double high, double unloadAt, double rated, double ratedBoth, double ends, double? relief)
        : base(ends, relief)
    {
        _low = low;
        _high = high;
        _unloadAt = unloadAt;
        RatedLoadPressure = rated;
        RatedLoadPressureBoth = ratedBoth;
        MotorStopsAt = ends;
    }

    /// <summary>Pressure at which the stage that makes the pressure loads the motor fully, Pa. Above it the motor is overloaded.</summary>
    public double RatedLoadPressure { get; }

    /// <summary>Pressure at which both stages together load the motor fully, Pa; the same as <see cref="RatedLoadPressure"/> for one stage.</summary>
    public double RatedLoadPressureBoth { get; }

    /// <summary>Pressure at which the motor stops, Pa, by <see cref="BreakdownTorque"/>.</summary>
    public double MotorStopsAt { get; }

    /// <summary>Whether the motor would stop before the large stage is unloaded, so that the high pressure is never reached.</summary>
    public bool StopsAtChangeover => _low > 0 && MotorStopsAt <= _unloadAt;

    /// <summary>Whether the motor is overloaded for a moment just before the large stage is unloaded.</summary>
    public bool OverloadedAtChangeover => _low > 0 && RatedLoadPressureBoth < _unloadAt;

    /// <summary>Whether the motor carries more than its rated load at a pressure.</summary>
    /// <param name="p">Pressure at the pump, Pa, 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">A negative pressure, or no number.</exception>
    public bool Overloads(double p)
    {
        Check.NotNegative(p);
        return p > (p < _unloadAt ? RatedLoadPressureBoth : RatedLoadPressure);
    }

    /// <summary>The curve of a pack.</summary>
    /// <param name="pack">The pack.</param>
    /// <param name="w">Where to show the working.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value of the pack outside its range.</exception>
    public static ElectricPumpCurve Of(RigElectricPack pack, Working? w = null)
    {
        ArgumentNullException.ThrowIfNull(pack);
        RigStage high = pack.HighStage;
        double Q_h = HydraulicPower.Flow(high.Displacement, pack.Speed, high.VolumetricEfficiency, w);
        double p_M = HydraulicPower.PressureAt(pack.Motor, high.Displacement, pack.Speed, high.MechanicalEfficiency, w);
        double p_stop = BreakdownTorque * p_M;
        w?.Step("p_stop", "pressure at which the motor stops", "k_M p_M", p_stop, Dimension.Pressure, BreakdownSource,
            ("k_M", BreakdownTorque, Dimension.Number), ("p_M", p_M, Dimension.Pressure));
        if (pack.LowStage is not { } low)
            return new ElectricPumpCurve(0, Q_h, 0, p_M, p_M, p_stop, pack.Relief);

        Check.Positive(pack.UnloadAt, "UnloadAt");
        double Q_l = HydraulicPower.Flow(low.Displacement, pack.Speed, low.VolumetricEfficiency, w);
        Check.Efficiency(low.MechanicalEfficiency, "MechanicalEfficiency");
        double p_b = pack.Motor / (pack.Speed * (low.Displacement / low.MechanicalEfficiency + high.Displacement / high.MechanicalEfficiency));
        w?.Step("p_b", "pressure at which both stages load the motor fully", "P/(n (V_l/η_l + V_h/η_h))", p_b, Dimension.Pressure,
            HydraulicPower.PressureTimesFlow,
            ("P", pack.Motor, Dimension.Power), ("n", pack.Speed, Dimension.RotationalSpeed),
            ("V_l", low.Displacement, Dimension.Displacement), ("η_l", low.MechanicalEfficiency, Dimension.Ratio),
            ("V_h", high.Displacement, Dimension.Displacement), ("η_h", high.MechanicalEfficiency, Dimension.Ratio));
        double stops = BreakdownTorque * p_b <= pack.UnloadAt ? BreakdownTorque * p_b : p_stop;
        if (stops < p_stop)
            w?.Note("Both stages together stop the motor before the large one is unloaded.");
        return new ElectricPumpCurve(Q_l, Q_h, pack.UnloadAt, p_M, p_b, stops, pack.Relief);
    }

    private protected override double Delivered(double p) => p < _unloadAt ? _low + _high : _high;

    private protected override double PressureOverFlow(double p)
    {
        double both = Math.Min(p, _unloadAt);
        return both / (_low + _high) + (p - both) / _high;
    }
}
