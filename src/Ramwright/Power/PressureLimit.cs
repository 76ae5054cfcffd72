namespace Ramwright.Power;

/// <summary>What a limit of the pressure is.</summary>
public enum PressureLimitKind
{
    /// <summary>The air-driven pump stalls.</summary>
    AirStall,
    /// <summary>The relief valve opens.</summary>
    Relief,
    /// <summary>The motor carries its rated power.</summary>
    MotorFullLoad,
    /// <summary>The motor stops.</summary>
    MotorStop,
    /// <summary>The handle takes its rated push.</summary>
    HandleRated,
    /// <summary>The handle takes a hard push.</summary>
    HandleHard,
    /// <summary>What the pump's maker allows.</summary>
    PumpRating,
    /// <summary>What the weakest pressure hose is rated for.</summary>
    HoseRating,
    /// <summary>What the cylinder's maker allows.</summary>
    CylinderRating,
}

/// <summary>How a limit works.</summary>
public enum PressureLimitNature
{
    /// <summary>The pressure cannot rise beyond it.</summary>
    Stops,
    /// <summary>Normal use ends there, but the pressure can be driven beyond it.</summary>
    EndsNormalUse,
    /// <summary>Nothing stops there; beyond it a part is used above what its maker allows.</summary>
    Rating,
}

/// <summary>One limit of the pressure and the ram force at which it is met.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Nature">How it works.</param>
/// <param name="Words">In plain words: <c>the air pump stalls</c>.</param>
/// <param name="Pressure">Pressure at the pump with the ram at rest, Pa.</param>
/// <param name="Force">Force at the ram, less seals and the return spring at full stroke, N: what is got.</param>
/// <param name="Thrust">Force of the oil on the piston, nothing lost, N: what the frame is sized for.</param>
public sealed record PressureLimit(
    PressureLimitKind Kind, PressureLimitNature Nature, string Words, double Pressure, double Force, double Thrust);
