using Ramwright.Power;
using Ramwright.Presses;

namespace Ramwright.Squeeze;

/// <summary>
/// Receiver, regulator and compressor behind an air pump. The receiver's state is the free air in it, N, and its heat as if at the workshop's
/// temperature it were that much free air, E; its absolute pressure is p_atm E/V.
/// </summary>
/// <remarks>
/// First law for a vessel, air as a perfect gas: dN/dt = q_in − q_out, dE/dt = κ (q_in − q_out E/N) + H (1 − E/N), all flows as free air.
/// H, what the walls give, is between nothing (adiabatic) and plenty (isothermal). The delivered air comes at the workshop's temperature.
/// </remarks>
internal sealed class AirSide
{
    /// <summary>Ratio of specific heats.</summary>
    public const double kappa = AirCompression.k;

    /// <summary>What a square metre of the receiver's wall gives the air for each kelvin, W.</summary>
    public const double WallHeat = 10;

    private const double FreeAirHeat = 1.204 * 718;     // ρ c_v at 20 °C, J/(m³ K)

    private readonly RigAirPump _pump;
    private readonly double _volume;

    /// <summary>The air side of a pump.</summary>
    /// <param name="pump">The pump with its compressor.</param>
    /// <param name="delivered">Free air the compressor delivers while it runs, m³/s.</param>
    /// <param name="walls">Heat from the walls, W for each kelvin; null for a receiver twice as long as wide.</param>
    public AirSide(RigAirPump pump, double delivered, double? walls = null)
    {
        _pump = pump;
        _volume = pump.Compressor.Receiver;
        Delivered = delivered;
        double d = Math.Cbrt(_volume * 2 / Math.PI);
        H = (walls ?? WallHeat * 2.5 * Math.PI * d * d) / FreeAirHeat;
    }

    /// <summary>Free air the compressor delivers while it runs, m³/s.</summary>
    public double Delivered { get; }

    /// <summary>Heat from the walls in m³/s of free air.</summary>
    public double H { get; }

    public RigCompressor Compressor => _pump.Compressor;

    /// <summary>The state at a pressure, at the workshop's temperature.</summary>
    public double At(double p) => _volume * (p + Atmosphere.Pressure) / Atmosphere.Pressure;

    /// <summary>Pressure in the receiver, Pa above the atmosphere.</summary>
    public double Pressure(double E) => Math.Max(0, E * Atmosphere.Pressure / _volume - Atmosphere.Pressure);

    /// <summary>Pressure at the pump: the regulator's, or the receiver's where that is less.</summary>
    public double AtPump(double E) => Math.Min(_pump.AirPressure, Pressure(E));

    /// <summary>Free air the pump takes for a flow of oil, m³/s.</summary>
    public double Takes(double Q, double air)
    {
        if (_pump.AirUse is double stated)
            return stated * Q / _pump.FreeFlow * (air + Atmosphere.Pressure) / (_pump.RatedAir + Atmosphere.Pressure);
        return _pump.AreaRatio * Q * (air + Atmosphere.Pressure) / Atmosphere.Pressure;
    }

    /// <summary>The rates of the receiver.</summary>
    public (double N, double E) Rates(double N, double E, double takes, bool running)
    {
        double warm = E / N, comes = running ? Delivered : 0;
        return (comes - takes, kappa * (comes - takes * warm) + H * (1 - warm));
    }
}
