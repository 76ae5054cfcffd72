using Ramwright.Presses;

namespace Ramwright.Squeeze;

/// <summary>A moment of a squeeze. SI, temperatures in °C; those of the bar are null for cold work.</summary>
/// <param name="Time">s from the start of the approach.</param>
/// <param name="Phase">What the ram is doing.</param>
/// <param name="Travel">Way of the tool since the touch, m; negative before it.</param>
/// <param name="Speed">Of the tool, m/s.</param>
/// <param name="Force">Of the work on the ram, N.</param>
/// <param name="Pressure">In the cylinder, Pa.</param>
/// <param name="Coldest">Coldest cell of the bar.</param>
/// <param name="Mean">Mean of the bar.</param>
/// <param name="Hottest">Hottest cell of the bar.</param>
/// <param name="Receiver">Pressure in the receiver, Pa; null without one.</param>
public readonly record struct SqueezePoint(
    double Time, SqueezePhase Phase, double Travel, double Speed, double Force, double Pressure, double? Coldest, double? Mean, double? Hottest, double? Receiver);

/// <summary>A balance: what went in and where it is.</summary>
/// <param name="Name">What is balanced.</param>
/// <param name="In">What went in: J, m³ of oil or m³ of free air.</param>
/// <param name="Out">Everything it became, added up.</param>
/// <param name="Turnover">What it is measured by: the greatest of the flows.</param>
/// <param name="Parts">What it became, each by name.</param>
public sealed record SqueezeBalance(string Name, double In, double Out, double Turnover, IReadOnlyList<(string Name, double Value)> Parts)
{
    /// <summary>What is missing, as a share of the turnover.</summary>
    public double Error => Turnover > 0 ? Math.Abs(In - Out) / Turnover : 0;
}

/// <summary>One squeeze in time. SI, temperatures in °C; every number is finite.</summary>
public sealed record SqueezeResult
{
    /// <summary>What ended the pressing.</summary>
    public required SqueezeEnd End { get; init; }
    /// <summary>What stood in the way.</summary>
    public required StoppedBy StoppedBy { get; init; }
    /// <summary>Whether the job was done.</summary>
    public bool IsDone => End == SqueezeEnd.Done;
    /// <summary>Time of each phase, s.</summary>
    public required IReadOnlyDictionary<SqueezePhase, double> Times { get; init; }
    /// <summary>Time of the whole, s.</summary>
    public double Time => Times.Values.Sum();
    /// <summary>Way into the work, m.</summary>
    public required double Travel { get; init; }
    /// <summary>Height at the end, m; null where the work has none.</summary>
    public required double? Height { get; init; }
    /// <summary>Greatest force on the work, N.</summary>
    public required double PeakForce { get; init; }
    /// <summary>Greatest pressure in the cylinder, Pa.</summary>
    public required double PeakPressure { get; init; }
    /// <summary>Greatest speed into the work, m/s.</summary>
    public required double PeakSpeed { get; init; }
    /// <summary>Work done on the work, J.</summary>
    public required double Work { get; init; }
    /// <summary>Mean heat of the bar at the touch, °C; null for cold work.</summary>
    public required double? AtTouch { get; init; }
    /// <summary>Coldest, mean and hottest of the bar when the pressing ended, °C.</summary>
    public required (double Coldest, double Mean, double Hottest)? AtEnd { get; init; }
    /// <summary>Mean of the bar when the ram is up again, °C.</summary>
    public required double? After { get; init; }
    /// <summary>Mean and greatest strain rate under load, 1/s; null for cold work.</summary>
    public required (double Mean, double Fastest)? Rate { get; init; }
    /// <summary>Free air the pump took, m³.</summary>
    public required double AirTaken { get; init; }
    /// <summary>Oil that was pumped into the cylinder, m³.</summary>
    public required double Oil { get; init; }
    /// <summary>Receiver at the end, Pa; null without one.</summary>
    public required double? Receiver { get; init; }
    /// <summary>Whether the large stage was unloaded on the way.</summary>
    public required bool Unloaded { get; init; }
    /// <summary>Force against time and travel.</summary>
    public required IReadOnlyList<SqueezePoint> Points { get; init; }
    /// <summary>Energy, heat, oil and air, each with what is missing.</summary>
    public required IReadOnlyList<SqueezeBalance> Balances { get; init; }
    /// <summary>What was assumed.</summary>
    public required IReadOnlyList<Assumed> Assumed { get; init; }
    /// <summary>Steps of the method, those thrown away counted.</summary>
    public required int Steps { get; init; }

    /// <summary>The bar's and dies' heat at the end, for the next squeeze.</summary>
    internal double[]? HeatState { get; init; }
    /// <summary>Air in the receiver and its heat at the end.</summary>
    internal (double N, double E, bool Compressing) AirState { get; init; }
}
