using Ramwright.Power;
using Ramwright.Presses;

namespace Ramwright.Squeeze;

/// <summary>
/// The pump on its lines at every moment: what flows into the cylinder at a pressure there. The same curves as in <see cref="PumpCurve"/>,
/// drawn without corners: where the flow ends, at a relief valve or where motor or person can do no more, it falls to nothing over the last
/// hundredth of the pressure.
/// </summary>
internal sealed class PumpFlow
{
    /// <summary>Share of the pressure over which a relief valve opens.</summary>
    public const double OpensOver = 0.01;

    private readonly LineSet _supply;
    private readonly double _both;
    private readonly double _small;
    private readonly double _unloadAt;
    private readonly double _own;
    private readonly double _relief;
    private readonly RigAirPump? _air;
    private readonly double _bend;

    public PumpFlow(RigPump pump, PumpCurve curve, LineSet supply)
    {
        _supply = supply;
        _relief = pump.Relief ?? double.PositiveInfinity;
        switch (pump)
        {
            case RigAirPump air:
                _air = air;
                _bend = ((AirPumpCurve)curve).Exponent;
                _own = double.PositiveInfinity;
                break;
            case RigElectricPack electric:
                _unloadAt = electric.LowStage is null ? 0 : electric.UnloadAt;
                _own = ((ElectricPumpCurve)curve).MotorStopsAt;
                (_both, _small) = Stages(curve);
                break;
            case RigHandPump hand:
                _unloadAt = hand.LowPerStroke > hand.PerStroke ? hand.UnloadAt : 0;
                _own = ((HandPumpCurve)curve).HardestPressure;
                (_both, _small) = Stages(curve);
                break;
            default:
                throw new ArgumentException($"There is no flow for a {pump.GetType().Name}.", nameof(pump));
        }

        FreeFlow = curve.FreeFlow;
    }

    /// <summary>Flow at no pressure, m³/s.</summary>
    public double FreeFlow { get; }

    /// <summary>Whether the pump has a large stage that is unloaded.</summary>
    public bool HasTwoStages => _unloadAt > 0;

    /// <summary>Pressure at the pump at which it is, Pa.</summary>
    public double UnloadAt => _unloadAt;

    /// <summary>Whether a relief valve ends the pressure, and not the pump itself.</summary>
    public bool ReliefEnds(double air) => _relief <= End(air);

    private (double Both, double Small) Stages(PumpCurve curve) =>
        (curve.FreeFlow, _unloadAt > 0 && _unloadAt < curve.Ends ? curve.Flow(_unloadAt) : curve.FreeFlow);

    private double End(double air) => _air is { } pump ? pump.EffectiveRatio * air : _own;

    /// <summary>What the pump itself gives at a pressure, its relief valve shut.</summary>
    private double Gives(double p, double air, bool unloaded)
    {
        if (_air is { } pump)
        {
            double left = 1 - p / (pump.EffectiveRatio * air);
            return left > 0 ? pump.FreeFlow * Math.Min(1, air / pump.RatedAir) * Math.Pow(left, _bend) : 0;
        }

        double full = unloaded ? _small : _both;
        return full * Math.Clamp((_own - p) / (OpensOver * _own), 0, 1);
    }

    /// <summary>What is left of that for the line.</summary>
    private double Delivers(double p, double air, bool unloaded)
    {
        double q = Gives(p, air, unloaded);
        return p <= (1 - OpensOver) * _relief ? q : q * Math.Clamp((_relief - p) / (OpensOver * _relief), 0, 1);
    }

    /// <summary>The flow into the cylinder.</summary>
    /// <param name="p">Pressure in the cylinder, Pa, 0 or more.</param>
    /// <param name="air">Air pressure at the pump, Pa; of no account for other pumps.</param>
    /// <param name="unloaded">Whether the large stage is unloaded.</param>
    /// <returns>Flow into the line and over the relief valve, m³/s; pressure at the pump, Pa.</returns>
    public (double Flow, double Relieved, double PumpPressure) Into(double p, double air, bool unloaded)
    {
        double hi = Delivers(p, air, unloaded), Q = hi;
        if (hi > 0 && !_supply.IsEmpty)
        {
            double over = Over(hi);
            if (over < -1e-12 * hi)
            {
                // falling function of the flow: false position of the Illinois kind
                double lo = 0, flo = hi, fhi = over;
                int side = 0;
                for (int i = 1; i < 60 && hi - lo > 1e-13 * FreeFlow; i++)
                {
                    Q = i % 4 == 0 ? 0.5 * (lo + hi) : lo + (hi - lo) * flo / (flo - fhi);
                    double f = Over(Q);
                    if (Math.Abs(f) <= 1e-12 * FreeFlow)
                        break;
                    if (f > 0)
                    {
                        (lo, flo) = (Q, f);
                        fhi = side == 1 ? fhi / 2 : fhi;
                        side = 1;
                    }
                    else
                    {
                        (hi, fhi) = (Q, f);
                        flo = side == -1 ? flo / 2 : flo;
                        side = -1;
                    }
                }
            }
        }

        double at = p + _supply.Loss(Q);
        return (Q, Math.Max(0, Gives(at, air, unloaded) - Q), at);

        double Over(double q) => Delivers(p + _supply.Loss(q), air, unloaded) - q;
    }
}
