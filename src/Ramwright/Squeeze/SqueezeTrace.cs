using Ramwright.Jobs;

namespace Ramwright.Squeeze;

/// <summary>What is kept of a squeeze on its way: the points of its curves and the greatest of what passed.</summary>
/// <param name="system">The rates, and the phase.</param>
/// <param name="press">The press.</param>
/// <param name="work">What it is put to.</param>
/// <param name="most">Most points that are given out; 0 for none.</param>
internal sealed class SqueezeTrace(SqueezeSystem system, SqueezePress press, SqueezeWork work, int most)
{
    private readonly List<SqueezePoint> _points = [];
    private (double Time, double Way) _before;

    /// <summary>Greatest force on the work, N.</summary>
    public double PeakForce { get; private set; }
    /// <summary>Greatest pressure in the cylinder, Pa.</summary>
    public double PeakPressure { get; private set; }
    /// <summary>Greatest speed into the work, m/s.</summary>
    public double PeakSpeed { get; private set; }
    /// <summary>Greatest strain rate of hot work, 1/s.</summary>
    public double Fastest { get; private set; }

    /// <summary>Keeps a moment.</summary>
    public void Keep(double t, ReadOnlySpan<double> y)
    {
        double F = system.Phase == SqueezePhase.Return ? 0 : system.Force(y), p = Math.Max(0, y[system.Pressure]);
        double way = y[system.Way], v = t > _before.Time ? (way - _before.Way) / (t - _before.Time) : y[system.Speed];
        _before = (t, way);
        PeakPressure = Math.Max(PeakPressure, p);
        if (system.Phase is SqueezePhase.Pressing or SqueezePhase.Dwell)
        {
            PeakForce = Math.Max(PeakForce, F);
            PeakSpeed = Math.Max(PeakSpeed, v);
            if (system.Column is not null && work.Resistance is HotBite bite && system.Phase == SqueezePhase.Pressing)
                Fastest = Math.Max(Fastest, Math.Max(0, v) / bite.At(system.Travel(y)).Height);
        }

        if (most <= 0)
            return;
        double? cold = null, mean = null, hot = null;
        if (system.Column is not null)
        {
            (cold, hot) = HeatColumn.Range(y);
            mean = HeatColumn.MeanTemperature(y);
        }

        _points.Add(new SqueezePoint(t, system.Phase, system.Travel(y), v, F, p, cold, mean, hot, press.Air?.Pressure(y[system.AirHeat])));
    }

    /// <summary>No more points than wanted: the first and last of each phase, and every so manieth.</summary>
    public IReadOnlyList<SqueezePoint> Points()
    {
        if (_points.Count <= most)
            return _points;
        var kept = new List<SqueezePoint>();
        double each = (double)_points.Count / most, next = 0;
        for (int i = 0; i < _points.Count; i++)
        {
            bool edge = i == 0 || i == _points.Count - 1 || _points[i].Phase != _points[i - 1].Phase || _points[i].Phase != _points[i + 1].Phase;
            if (!edge && i < next)
                continue;
            kept.Add(_points[i]);
            next = i + each;
        }

        return kept;
    }
}
