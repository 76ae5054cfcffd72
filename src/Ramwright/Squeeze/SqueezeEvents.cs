using Ramwright.Presses;

namespace Ramwright.Squeeze;

/// <summary>What can end a phase of a squeeze or switch something in it.</summary>
/// <param name="system">The rates, and the phase.</param>
/// <param name="press">The press.</param>
/// <param name="work">What it is put to.</param>
/// <param name="now">The state as it stands, kept up by who follows it.</param>
internal sealed class SqueezeEvents(SqueezeSystem system, SqueezePress press, SqueezeWork work, double[] now) : IEvents
{
    private enum Kind { Arrived, Still, Stroke, Oil, Cold, Compressor, Unload }

    private readonly List<Kind> _kinds = [];
    private double _letOffTo;

    public int Count => _kinds.Count;

    public void Aim()
    {
        _kinds.Clear();
        _kinds.Add(Kind.Arrived);
        if (system.Phase is SqueezePhase.Approach or SqueezePhase.Pressing)
        {
            _kinds.Add(Kind.Still);
            _kinds.Add(Kind.Stroke);
            _kinds.Add(Kind.Oil);
            if (work.Hot is not null)
                _kinds.Add(Kind.Cold);
            if (press.Flow.HasTwoStages)
                _kinds.Add(Kind.Unload);
        }

        if (press.Air is { Delivered: > 0 })
            _kinds.Add(Kind.Compressor);
        _letOffTo = 1.02 * system.PressureAtRest(now[system.Way]) + 0.005 * now[system.Pressure] + 1e3;
    }

    public double Value(int which, ReadOnlySpan<double> y)
    {
        switch (_kinds[which])
        {
            case Kind.Arrived:
                return system.Phase switch
                {
                    SqueezePhase.Approach => y[system.Way] - work.Gap,
                    SqueezePhase.Pressing => system.Travel(y) - work.Resistance.Travel,
                    SqueezePhase.LetOff => (_letOffTo - y[system.Pressure]) / 1e8,
                    SqueezePhase.Return => -y[system.Way],
                    _ => -1,
                };
            case Kind.Still:
                return SqueezeRun.StandsStill - system.Flow(y).Flow / system.Fill;
            case Kind.Stroke:
                return system.Out(y) - press.Stroke;
            case Kind.Oil:
                {
                    // what the tank has given since the ram was in; the ring gives its own back
                    double fill = press.Rig.Cylinder.PullsByOil ? system.Fill - (system.Regenerates ? 0 : press.Ring) : system.Fill;
                    return system.Out(y) * fill - press.Rig.Pump.UsableOil;
                }
            case Kind.Cold:
                return (work.Hot!.Coldest - HeatColumn.MeanTemperature(y)) / 1000;
            case Kind.Unload:
                return system.Unloaded ? -1 : (system.Flow(y).PumpPressure - press.Flow.UnloadAt) / 1e8;
            default:
                {
                    double p = press.Air!.Pressure(y[system.AirHeat]);
                    return (system.Compressing ? p - press.Air.Compressor.CutOut : press.Air.Compressor.CutIn - p) / 1e5;
                }
        }
    }

    /// <summary>An end that was there before the phase began.</summary>
    public SqueezeEnd? Already()
    {
        for (int i = 0; i < _kinds.Count; i++)
        {
            if (!(Value(i, now) >= 0))
                continue;
            if (_kinds[i] is Kind.Compressor or Kind.Unload)
            {
                Switch(i);
                continue;
            }

            if (_kinds[i] is not Kind.Arrived)
                return Means(i);
        }

        return null;
    }

    /// <summary>Whether the phase has come to its end.</summary>
    public bool IsOver() => Value(0, now) >= 0;

    /// <summary>Whether it only switches something, which it then does.</summary>
    public bool Switch(int which)
    {
        switch (_kinds[which])
        {
            case Kind.Compressor:
                system.Compressing = !system.Compressing;
                return true;
            case Kind.Unload:
                system.Unloaded = true;
                return true;
            default:
                return false;
        }
    }

    public SqueezeEnd? Means(int which)
    {
        switch (_kinds[which])
        {
            case Kind.Arrived:
                return system.Phase == SqueezePhase.Pressing ? SqueezeEnd.Done : null;
            case Kind.Stroke:
                return SqueezeEnd.OutOfStroke;
            case Kind.Oil:
                return SqueezeEnd.OutOfOil;
            case Kind.Cold:
                return SqueezeEnd.TooCold;
            default:
                double air = system.AirAtPump(now[system.AirHeat]);
                if (press.Rig.Pump is RigAirPump pump && air < 0.98 * pump.AirPressure)
                    return SqueezeEnd.AirRanOut;
                return press.Flow.ReliefEnds(air) ? SqueezeEnd.ReliefOpened : SqueezeEnd.PumpStalled;
        }
    }
}
