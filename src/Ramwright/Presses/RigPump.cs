namespace Ramwright.Presses;

/// <summary>A pump with every number settled. SI, pressures above the atmosphere.</summary>
public abstract record RigPump
{
    /// <summary>Relief valve setting, Pa; null where there is none.</summary>
    public double? Relief { get; init; }
    /// <summary>Oil that can be drawn from the tank, m³.</summary>
    public required double UsableOil { get; init; }
}

/// <summary>A pump driven by shop air.</summary>
public sealed record RigAirPump : RigPump
{
    /// <summary>Oil pressure at stall over air pressure, friction included.</summary>
    public required double EffectiveRatio { get; init; }
    /// <summary>Air piston area over oil plunger area: air used per oil delivered.</summary>
    public required double AreaRatio { get; init; }
    /// <summary>Air pressure at the inlet, Pa.</summary>
    public required double AirPressure { get; init; }
    /// <summary>Air pressure at which the flows hold, Pa.</summary>
    public required double RatedAir { get; init; }
    /// <summary>Oil flow at no load and rated air, m³/s.</summary>
    public required double FreeFlow { get; init; }
    /// <summary>Oil flow at <see cref="FullFlowAt"/> and rated air, m³/s.</summary>
    public required double FullFlow { get; init; }
    /// <summary>Pressure at which <see cref="FullFlow"/> holds, Pa.</summary>
    public required double FullFlowAt { get; init; }
    /// <summary>Free air used while running, m³/s, where the maker states it.</summary>
    public double? AirUse { get; init; }
    /// <summary>The compressor behind it.</summary>
    public required RigCompressor Compressor { get; init; }
}

/// <summary>A compressor with its receiver.</summary>
/// <param name="Receiver">Volume, m³.</param>
/// <param name="CutIn">Pressure at which it starts, Pa.</param>
/// <param name="CutOut">Pressure at which it stops, Pa.</param>
/// <param name="FreeAir">Free air delivered, m³/s, where stated.</param>
/// <param name="Motor">Motor power, W: used where the free air is not stated.</param>
public sealed record RigCompressor(double Receiver, double CutIn, double CutOut, double? FreeAir, double? Motor);

/// <summary>An electric power pack.</summary>
public sealed record RigElectricPack : RigPump
{
    /// <summary>Motor power at the shaft, W.</summary>
    public required double Motor { get; init; }
    /// <summary>Motor speed, 1/s.</summary>
    public required double Speed { get; init; }
    /// <summary>The only stage, or the small one.</summary>
    public required RigStage HighStage { get; init; }
    /// <summary>The large stage, of a two-stage pump.</summary>
    public RigStage? LowStage { get; init; }
    /// <summary>Pressure at which the large stage is unloaded, Pa.</summary>
    public double UnloadAt { get; init; }
    /// <summary>Pressure the pump itself may run at, Pa, where stated.</summary>
    public double? RatedPressure { get; init; }
    /// <summary>All the oil in the tank, m³.</summary>
    public required double TankOil { get; init; }
    /// <summary>Walls of the tank that oil wets and air reaches, m².</summary>
    public required double TankWalls { get; init; }
}

/// <summary>One stage of an electric pump.</summary>
/// <param name="Displacement">Swept volume a turn, m³.</param>
/// <param name="VolumetricEfficiency">Share delivered.</param>
/// <param name="MechanicalEfficiency">Share of the shaft torque that reaches the oil.</param>
public sealed record RigStage(double Displacement, double VolumetricEfficiency, double MechanicalEfficiency);

/// <summary>A pump worked by hand or foot.</summary>
public sealed record RigHandPump : RigPump
{
    /// <summary>Oil per stroke at high pressure, m³.</summary>
    public required double PerStroke { get; init; }
    /// <summary>Oil per stroke of both pistons at low pressure, m³; the same as <see cref="PerStroke"/> for one stage.</summary>
    public required double LowPerStroke { get; init; }
    /// <summary>Pressure at which the large piston is unloaded, Pa.</summary>
    public required double UnloadAt { get; init; }
    /// <summary>Strokes per second.</summary>
    public required double Cadence { get; init; }
    /// <summary>Pressure the pump is built for, Pa.</summary>
    public required double RatedPressure { get; init; }
    /// <summary>Push on the handle at the rated pressure, N, where stated.</summary>
    public double? HandleForce { get; init; }
}
