using Ramwright.Jobs;
using Ramwright.Quantities;
using Ramwright.Squeeze;

namespace Ramwright.Tests.Squeeze;

/// <summary>A long round bar cooling in still air, followed from heart to skin in rings. Not to be shared between threads.</summary>
public sealed class RoundBar
{
    private readonly HeatChain _chain;
    private readonly CoolingChain _system;
    private readonly TimeStepper _stepper;
    private readonly double[] _state;
    private readonly double _mass;
    private double _step = 1e-3;

    /// <summary>A bar at one temperature.</summary>
    /// <param name="d">Diameter, m, above zero.</param>
    /// <param name="T">Its temperature, °C, at most <see cref="HotSteel.Hottest"/>.</param>
    /// <param name="rings">How many rings, 4 or more.</param>
    /// <param name="surface">What the surface loses.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public RoundBar(double d, double T, int rings, HotSurface surface)
    {
        ArgumentNullException.ThrowIfNull(surface);
        Check.Positive(d);
        ArgumentOutOfRangeException.ThrowIfLessThan(rings, 4);
        _chain = Rings(d / 2, rings, surface);
        _system = new CoolingChain(_chain);
        _stepper = new TimeStepper(_system, 1e-5);
        _state = new double[_system.Size + _system.Sums];
        _state.AsSpan(0, rings).Fill(HotSteel.Enthalpy(T));
        foreach (double m in _chain.Mass)
            _mass += m;
        _chain.Rates(_state.AsSpan(0, rings), new double[rings]);
    }

    /// <summary>Time so far, s.</summary>
    public double Time { get; private set; }

    /// <summary>Mean temperature by mass, °C.</summary>
    public double Mean
    {
        get
        {
            double sum = 0;
            for (int i = 0; i < _chain.Count; i++)
                sum += _chain.Mass[i] * _chain.Temperature[i];
            return sum / _mass;
        }
    }

    /// <summary>Temperature of the skin, °C.</summary>
    public double Skin
    {
        get
        {
            int last = _chain.Count - 1;
            double T = _chain.Temperature[last], r = _chain.Deep[last] / HotSteel.Conducts(T);
            return T - _chain.Surface.Flux(T) * r / (1 + _chain.Surface.Slope(T) * r);
        }
    }

    /// <summary>Temperature of the heart, °C.</summary>
    public double Heart => _chain.Temperature[0];

    /// <summary>Lets it cool until its mean is at a temperature.</summary>
    /// <param name="T">°C, below the mean now and above the surroundings.</param>
    /// <returns>Time from the start, s.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A temperature it does not come to.</exception>
    public double CoolTo(double T)
    {
        Check.Above(T, Math.Max(_chain.Surface.Surroundings, HotSteel.Coldest) + 1);
        if (!(T < Mean))
            Check.Refuse(nameof(T), T, $"below the mean temperature, {Mean} °C");
        double t = Time;
        _stepper.Run(_state, ref t, t + 1e6, ref _step, 1e3, new MeanReaches(this, T), null);
        _chain.ReadTemperatures(_state.AsSpan(0, _chain.Count));
        return Time = t;
    }

    private static HeatChain Rings(double R, int n, HotSurface surface)
    {
        var chain = new HeatChain(n, surface);
        double dr = R / n;
        for (int i = 0; i < n; i++)
        {
            double inner = i * dr, outer = inner + dr;
            chain.Mass[i] = HotSteel.Density * Math.PI * (outer * outer - inner * inner);
            chain.HalfBefore[i] = chain.HalfAfter[i] = dr / 2;
            chain.Area[i] = i + 1 < n ? 2 * Math.PI * outer : 0;
        }

        chain.Bare[n - 1] = 2 * Math.PI * R;
        chain.Deep[n - 1] = dr / 2;
        return chain;
    }

    private sealed class MeanReaches(RoundBar bar, double T) : IEvents
    {
        public int Count => 1;

        public double Value(int which, ReadOnlySpan<double> y)
        {
            bar._chain.ReadTemperatures(y[..bar._chain.Count]);
            return T - bar.Mean;
        }
    }
}
