using Ramwright.Quantities;

namespace Ramwright.Presses;

/// <summary>What drives the cylinder.</summary>
[Says("what drives the cylinder")]
[Kinds(typeof(AirPump), typeof(ElectricPack), typeof(HandPump))]
public abstract record Pump
{
    /// <summary>Relief valve setting, Pa.</summary>
    [Says("setting of the relief valve"), Measure(Dimension.Pressure, "210 bar", UpTo = 300e6)]
    public double? Relief { get; init; }

    /// <summary>Oil that can be drawn before the inlet is uncovered, m³.</summary>
    [Says("oil that can be drawn from the tank"), Measure(Dimension.Volume, "8 L", UpTo = 5)]
    public double? UsableOil { get; init; }
}

/// <summary>A pump driven by shop air.</summary>
[Kind("air"), Says("driven by shop air")]
public sealed record AirPump : Pump
{
    /// <summary>Air piston area over oil plunger area.</summary>
    [Says("pressure ratio of air piston to oil plunger"), Measure(Dimension.Number, "100", UpTo = 2000)]
    public double? Ratio { get; init; }

    /// <summary>Oil pressure at which it stalls, Pa.</summary>
    [Says("oil pressure at which it stalls, at rated-air"), Measure(Dimension.Pressure, "700 bar", UpTo = 300e6)]
    public double? StallPressure { get; init; }

    /// <summary>Air pressure at which the maker's figures hold, Pa.</summary>
    [Says("air pressure at which the maker's stall pressure and flows hold"), Measure(Dimension.Pressure, "7 bar", UpTo = 2e6)]
    public double? RatedAir { get; init; }

    /// <summary>Air pressure at the pump while it runs, Pa.</summary>
    [Needed, Says("air pressure at the pump's inlet"), Measure(Dimension.Pressure, "6.3 bar", UpTo = 2e6)]
    public double? AirPressure { get; init; }

    /// <summary>Oil flow at no load, m³/s.</summary>
    [Says("oil flow at no load"), Measure(Dimension.Flow, "0.9 L/min", UpTo = 0.1)]
    public double? FreeFlow { get; init; }

    /// <summary>Oil flow at full pressure, m³/s.</summary>
    [Says("oil flow near full pressure, from the maker's sheet"), Measure(Dimension.Flow, "0.15 L/min", From = 0, UpTo = 0.1)]
    public double? FullFlow { get; init; }

    /// <summary>Pressure at which <see cref="FullFlow"/> was stated, Pa.</summary>
    [Says("pressure at which full-flow holds"), Measure(Dimension.Pressure, "600 bar", UpTo = 300e6)]
    public double? FullFlowAt { get; init; }

    /// <summary>Free air used while running, m³/s.</summary>
    [Says("free air used while running unloaded"), Measure(Dimension.FreeAir, "250 L/min", UpTo = 1)]
    public double? AirUse { get; init; }

    /// <summary>The compressor behind it.</summary>
    [Says("the compressor behind it")]
    public Compressor? Compressor { get; init; }
}

/// <summary>The workshop compressor.</summary>
[Says("the workshop compressor")]
public sealed record Compressor
{
    /// <summary>Receiver volume, m³.</summary>
    [Says("volume of the receiver"), Measure(Dimension.Volume, "100 L", UpTo = 20)]
    public double? Receiver { get; init; }

    /// <summary>Pressure at which it starts, Pa.</summary>
    [Says("pressure at which it starts"), Measure(Dimension.Pressure, "6 bar", UpTo = 4e6)]
    public double? CutIn { get; init; }

    /// <summary>Pressure at which it stops, Pa.</summary>
    [Says("pressure at which it stops"), Measure(Dimension.Pressure, "8 bar", UpTo = 4e6)]
    public double? CutOut { get; init; }

    /// <summary>Free air delivered, m³/s.</summary>
    [Says("free air it delivers, not the swept volume"), Measure(Dimension.FreeAir, "250 L/min", UpTo = 1)]
    public double? FreeAir { get; init; }

    /// <summary>Motor power, W.</summary>
    [Says("motor power, where the free air is not known"), Measure(Dimension.Power, "2.2 kW", UpTo = 1e6)]
    public double? Motor { get; init; }
}

/// <summary>An electric pump pack.</summary>
[Kind("electric"), Says("an electric power pack")]
public sealed record ElectricPack : Pump
{
    /// <summary>Motor power at the shaft, W.</summary>
    [Needed, Says("motor power"), Measure(Dimension.Power, "3 hp", UpTo = 1e6)]
    public double? Motor { get; init; }

    /// <summary>Motor speed, 1/s.</summary>
    [Says("motor speed"), Measure(Dimension.RotationalSpeed, "1440 rpm", UpTo = 500)]
    public double? Speed { get; init; }

    /// <summary>The only stage, or the high-pressure stage.</summary>
    [Says("the only stage, or the small stage that makes the pressure")]
    public PumpStage? HighStage { get; init; }

    /// <summary>The large stage that runs at low pressure.</summary>
    [Says("the large stage for the approach, of a two-stage pump")]
    public PumpStage? LowStage { get; init; }

    /// <summary>Pressure at which the large stage is unloaded, Pa.</summary>
    [Says("pressure at which the large stage is unloaded"), Measure(Dimension.Pressure, "50 bar", UpTo = 100e6)]
    public double? UnloadAt { get; init; }

    /// <summary>Pressure the pump itself may run at, Pa.</summary>
    [Says("the pressure the pump itself may run at"), Measure(Dimension.Pressure, "250 bar", UpTo = 300e6)]
    public double? RatedPressure { get; init; }

    /// <summary>All the oil in the tank, m³.</summary>
    [Says("all the oil in the tank"), Measure(Dimension.Volume, "20 L", UpTo = 20)]
    public double? TankOil { get; init; }

    /// <summary>Walls of the tank that air reaches, m².</summary>
    [Says("walls of the tank that oil wets inside and air reaches outside"), Measure(Dimension.Area, "0.4 m2", UpTo = 100)]
    public double? TankWalls { get; init; }
}

/// <summary>One stage of an electric pump: by displacement, or by its flow.</summary>
[Says("one stage of a pump")]
public sealed record PumpStage
{
    /// <summary>Volume swept in one turn, m³.</summary>
    [Says("volume swept in one turn"), Measure(Dimension.Displacement, "4.2 cm3/rev", UpTo = 0.01)]
    public double? Displacement { get; init; }

    /// <summary>Delivered flow, m³/s, where the displacement is not known.</summary>
    [Says("delivered flow, where the displacement is not known"), Measure(Dimension.Flow, "8 L/min", UpTo = 0.1)]
    public double? Flow { get; init; }

    /// <summary>Share of the swept volume that is delivered.</summary>
    [Says("volumetric efficiency"), Measure(Dimension.Ratio, "92 %", UpTo = 1)]
    public double? VolumetricEfficiency { get; init; }

    /// <summary>Share of the shaft torque that reaches the oil.</summary>
    [Says("mechanical efficiency"), Measure(Dimension.Ratio, "90 %", UpTo = 1)]
    public double? MechanicalEfficiency { get; init; }
}

/// <summary>A pump worked by hand or foot.</summary>
[Kind("hand"), Says("worked by hand or foot")]
public sealed record HandPump : Pump
{
    /// <summary>Oil per stroke at high pressure, m³.</summary>
    [Needed, Says("oil per stroke at high pressure"), Measure(Dimension.Volume, "2.5 mL", UpTo = 0.01)]
    public double? PerStroke { get; init; }

    /// <summary>Oil per stroke of the large piston, m³.</summary>
    [Says("oil per stroke at low pressure, of a two-stage pump"), Measure(Dimension.Volume, "13 mL", UpTo = 0.01)]
    public double? LowPerStroke { get; init; }

    /// <summary>Pressure at which the large piston is unloaded, Pa.</summary>
    [Says("pressure at which the large piston is unloaded"), Measure(Dimension.Pressure, "20 bar", UpTo = 100e6)]
    public double? UnloadAt { get; init; }

    /// <summary>Strokes per second.</summary>
    [Says("how fast you pump"), Measure(Dimension.Cadence, "30 /min", UpTo = 5)]
    public double? Cadence { get; init; }

    /// <summary>Pressure the maker allows, Pa.</summary>
    [Says("the pressure the pump is built for"), Measure(Dimension.Pressure, "700 bar", UpTo = 300e6)]
    public double? RatedPressure { get; init; }

    /// <summary>Push on the handle at the rated pressure, N.</summary>
    [Says("push on the handle at the rated pressure"), Measure(Dimension.Force, "400 N", UpTo = 2000)]
    public double? HandleForce { get; init; }
}
