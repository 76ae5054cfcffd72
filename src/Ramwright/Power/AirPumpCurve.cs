using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Power;

/// <summary>
/// An air-driven pump: it slows all the way from its free flow to its stall.
/// <para><c>Q = Q_0 (1 − p/p_s)^m</c>, with m chosen so that the curve also passes through the one other point a maker states.</para>
/// </summary>
/// <remarks>
/// A model, not a law: makers' curves fall steeply first and then nearly straight, which m above 1 gives. Where no second point
/// is known, <see cref="UsualExponent"/> is taken; it leaves 35 % of the free flow at half the stall pressure.
/// Pressures scale with the air (gauge). Flows fall in the same share below the air at which they were stated and are not
/// raised above it: the cautious choice either way.
/// </remarks>
public sealed class AirPumpCurve : PumpCurve
{
    /// <summary>Exponent where a maker states no flow under pressure.</summary>
    public const double UsualExponent = 1.5;

    /// <summary>Stall by the balance of the two pistons.</summary>
    public static readonly Citation StallSource = Citation.Mechanics("force balance of air piston and oil plunger, gauge pressures, friction in the ratio");

    /// <summary>The shape of the curve.</summary>
    public static readonly Citation ShapeSource = Citation.Practice("falling curve through free flow, one stated point and stall; a fit, not a law");

    private AirPumpCurve(double Q0, double stall, double exponent, bool fitted, double? relief)
        : base(stall, relief)
    {
        FreeFlowHere = Q0;
        Stall = stall;
        Exponent = exponent;
        Fitted = fitted;
    }

    /// <summary>Oil pressure at which the pump stalls, Pa.</summary>
    public double Stall { get; }

    /// <summary>The exponent m.</summary>
    public double Exponent { get; }

    /// <summary>Whether the exponent comes from a stated point; otherwise it is <see cref="UsualExponent"/>.</summary>
    public bool Fitted { get; }

    private double FreeFlowHere { get; }

    /// <summary>Oil pressure at stall.</summary>
    /// <param name="R">Oil over air pressure at stall, friction included, above zero.</param>
    /// <param name="air">Air pressure at the pump's inlet, Pa above the atmosphere, above zero.</param>
    /// <param name="w">Where to show the working.</param>
    /// <returns>Pa.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value that is not above zero.</exception>
    public static double StallPressure(double R, double air, Working? w = null)
    {
        Check.Positive(R);
        Check.Positive(air);
        double p_s = R * air;
        w?.Step("p_s", "oil pressure at which the pump stalls", "R p_air", p_s, Dimension.Pressure, StallSource,
            ("R", R, Dimension.Number), ("p_air", air, Dimension.Pressure));
        return p_s;
    }

    /// <summary>Air pressure at the inlet, while it flows, that an oil pressure calls for. Regulator and hose drop come on top.</summary>
    /// <param name="p">Oil pressure, Pa, 0 or more.</param>
    /// <param name="R">Oil over air pressure at stall, friction included, above zero.</param>
    /// <returns>Pa above the atmosphere.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static double AirFor(double p, double R)
    {
        Check.NotNegative(p);
        Check.Positive(R);
        return p / R;
    }

    /// <summary>The curve at the air pressure the pump really gets.</summary>
    /// <param name="pump">The pump.</param>
    /// <param name="w">Where to show the working.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value of the pump outside its range.</exception>
    public static AirPumpCurve Of(RigAirPump pump, Working? w = null)
    {
        ArgumentNullException.ThrowIfNull(pump);
        Check.Positive(pump.RatedAir, "RatedAir");
        Check.Positive(pump.FreeFlow, "FreeFlow");
        Check.NotNegative(pump.FullFlow, "FullFlow");
        Check.NotNegative(pump.FullFlowAt, "FullFlowAt");
        double p_s = StallPressure(pump.EffectiveRatio, pump.AirPressure, w);
        double p_sr = pump.EffectiveRatio * pump.RatedAir;

        bool fitted = pump.FullFlow > 0 && pump.FullFlow < pump.FreeFlow && pump.FullFlowAt > 0 && pump.FullFlowAt < p_sr;
        double m = UsualExponent;
        if (fitted)
        {
            m = Math.Log(pump.FullFlow / pump.FreeFlow) / Math.Log(1 - pump.FullFlowAt / p_sr);
            w?.Step("m", "bend of the curve through the stated point", "ln(Q_1/Q_r)/ln(1 − p_1/(R p_r))", m, Dimension.Number, ShapeSource,
                ("Q_1", pump.FullFlow, Dimension.Flow), ("Q_r", pump.FreeFlow, Dimension.Flow), ("p_1", pump.FullFlowAt, Dimension.Pressure),
                ("R", pump.EffectiveRatio, Dimension.Number), ("p_r", pump.RatedAir, Dimension.Pressure));
        }
        else
        {
            w?.Take("m", "bend of the curve, no usable point stated", m, Dimension.Number, ShapeSource);
        }

        double Q_0 = pump.FreeFlow * Math.Min(1, pump.AirPressure / pump.RatedAir);
        w?.Step("Q_0", "free flow at this air pressure", "Q_r min(1, p_air/p_r)", Q_0, Dimension.Flow, ShapeSource,
            ("Q_r", pump.FreeFlow, Dimension.Flow), ("p_air", pump.AirPressure, Dimension.Pressure), ("p_r", pump.RatedAir, Dimension.Pressure));
        return new AirPumpCurve(Q_0, p_s, m, fitted, pump.Relief);
    }

    private protected override double Delivered(double p) => FreeFlowHere * Math.Pow(1 - p / Stall, Exponent);

    private protected override double PressureOverFlow(double p)
    {
        double left = 1 - p / Stall, e = 1 - Exponent;
        double integral = Math.Abs(e) < 1e-9 ? -Math.Log(left) : (1 - Math.Pow(left, e)) / e;
        return Stall / FreeFlowHere * integral;
    }
}
