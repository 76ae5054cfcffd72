using Ramwright.Presses;

namespace Ramwright.Power;

/// <summary>What a pump, a cylinder and the lines between them can do. SI; every number is finite.</summary>
public sealed record PowerReport
{
    /// <summary>The cylinder's areas.</summary>
    public required CylinderAreas Areas { get; init; }
    /// <summary>The pump's curve.</summary>
    public required PumpCurve Curve { get; init; }
    /// <summary>Every limit of the pressure, and the two that govern.</summary>
    public required PressureLimits Limits { get; init; }

    /// <summary>Force really to be had in normal use, N: less seals and spring, ratings not counted.</summary>
    public double TrueForce => Limits.Normal.Force;
    /// <summary>Pressure at which it is had, Pa.</summary>
    public double TruePressure => Limits.Normal.Pressure;
    /// <summary>What limits it, in plain words.</summary>
    public string TrueForceLimitedBy => Limits.Normal.Words;
    /// <summary>Most force the pump can ever put on the ram, N: nothing lost, as a frame must reckon with it.</summary>
    public double MostPossibleForce => Limits.MostPossible.Thrust;
    /// <summary>Pressure at which that is, Pa.</summary>
    public double MostPossiblePressure => Limits.MostPossible.Pressure;
    /// <summary>What limits it, in plain words.</summary>
    public string MostPossibleLimitedBy => Limits.MostPossible.Words;

    /// <summary>Pull at the true pressure, less seals, N; 0 where no oil pulls.</summary>
    public required double PullForce { get; init; }
    /// <summary>Pressure in the ring if its port is blocked at the most possible pressure, Pa; null where no oil pulls.</summary>
    public required double? BlockedRodSide { get; init; }
    /// <summary>What the label's force is worth; null where there is none.</summary>
    public required SellersRating? Label { get; init; }
    /// <summary>Kinematic viscosity of the oil at its temperature, m²/s.</summary>
    public required double Viscosity { get; init; }
    /// <summary>Speed against load, from no load to the true force, in eighths.</summary>
    public required IReadOnlyList<SpeedAtLoad> Speeds { get; init; }
    /// <summary>Speed with no load, m/s.</summary>
    public double ApproachSpeed => Speeds[0].Speed;
    /// <summary>Motion under the pressing force.</summary>
    public required SpeedAtLoad Pressing { get; init; }
    /// <summary>Mean speed of the return, m/s; null where it cannot be told.</summary>
    public required double? ReturnSpeed { get; init; }
    /// <summary>Times of a stroke.</summary>
    public required StrokeTimes Times { get; init; }
    /// <summary>Oil of a stroke against the tank.</summary>
    public required OilDemand Oil { get; init; }
    /// <summary>Every line at its greatest flow.</summary>
    public required IReadOnlyList<LineCheck> Lines { get; init; }
    /// <summary>What the motor must give; empty for other pumps.</summary>
    public required IReadOnlyList<MotorLoad> Motor { get; init; }
    /// <summary>What a hand pump asks of the person; null for other pumps.</summary>
    public required HandWork? Hand { get; init; }
    /// <summary>Whether the compressor keeps up; null for other pumps.</summary>
    public required AirSupply? Air { get; init; }
    /// <summary>The give of the oil at full stroke and the true pressure.</summary>
    public required LettingOff LettingOff { get; init; }
    /// <summary>Energy in the oil at full stroke and the true pressure, J.</summary>
    public double OilEnergy => LettingOff.Energy;
    /// <summary>Oil that comes back when that is let go, m³.</summary>
    public double Decompression => LettingOff.Volume;
    /// <summary>Heat into the oil of an electric pack; empty for other pumps.</summary>
    public required IReadOnlyList<HeatCase> Heat { get; init; }
    /// <summary>What was taken for granted because nothing was said.</summary>
    public required IReadOnlyList<Assumed> Assumptions { get; init; }
    /// <summary>What the person must know.</summary>
    public required IReadOnlyList<Caution> Cautions { get; init; }
}
