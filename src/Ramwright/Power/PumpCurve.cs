using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Power;

/// <summary>How much oil a pump delivers against a pressure. Immutable; may be shared between threads.</summary>
public abstract class PumpCurve
{
    /// <summary>Builds the curve; the flow ends where a relief valve opens.</summary>
    /// <param name="ends">Pressure at which the pump itself can deliver no more, Pa.</param>
    /// <param name="relief">Relief setting, Pa, or null.</param>
    private protected PumpCurve(double ends, double? relief)
    {
        Check.Positive(ends);
        if (relief is double set)
            Check.Positive(set, nameof(relief));
        Ends = Math.Min(ends, relief ?? ends);
    }

    /// <summary>Pressure from which nothing more reaches the cylinder, Pa: the pump stops or its relief valve takes all.</summary>
    public double Ends { get; }

    /// <summary>Flow at no pressure, m³/s.</summary>
    public double FreeFlow => Delivered(0);

    /// <summary>Flow into the line at a pressure at the pump.</summary>
    /// <param name="p">Pressure at the pump, Pa, 0 or more.</param>
    /// <returns>m³/s, never rising with pressure; 0 from <see cref="Ends"/> on.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A negative pressure, or no number.</exception>
    public double Flow(double p)
    {
        Check.NotNegative(p);
        return p >= Ends ? 0 : Delivered(p);
    }

    /// <summary>Time in which the pump raises trapped oil from no pressure.</summary>
    /// <param name="V">Trapped oil, m³, 0 or more.</param>
    /// <param name="K">Bulk modulus of the oil, Pa, above zero.</param>
    /// <param name="p">Pressure wanted, Pa, from 0, below <see cref="Ends"/>.</param>
    /// <returns>s: V/K times the integral of dp/Q. The walls are taken as rigid.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public double TimeToCompress(double V, double K, double p)
    {
        Check.NotNegative(V);
        Check.Positive(K);
        Check.NotNegative(p);
        if (p >= Ends)
            Check.Refuse(nameof(p), p, $"below the pressure where the flow ends, {Ends}");
        return V / K * PressureOverFlow(p);
    }

    /// <summary>Flow of the pump below <see cref="Ends"/>, m³/s.</summary>
    private protected abstract double Delivered(double p);

    /// <summary>The integral of dp/Q from 0 to a pressure below <see cref="Ends"/>, Pa·s/m³.</summary>
    private protected abstract double PressureOverFlow(double p);

    /// <summary>The curve of a pump.</summary>
    /// <param name="pump">The pump.</param>
    /// <param name="w">Where to show the working.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value of the pump outside its range.</exception>
    /// <exception cref="ArgumentException">A kind of pump that has no curve.</exception>
    public static PumpCurve Of(RigPump pump, Working? w = null) => pump switch
    {
        RigAirPump air => AirPumpCurve.Of(air, w),
        RigElectricPack electric => ElectricPumpCurve.Of(electric, w),
        RigHandPump hand => HandPumpCurve.Of(hand, w),
        null => throw new ArgumentNullException(nameof(pump)),
        _ => throw new ArgumentException($"There is no curve for a {pump.GetType().Name}.", nameof(pump)),
    };
}
