namespace Ramwright.Power;

/// <summary>How the ram moves against a load.</summary>
/// <param name="Load">Force at the ram, N.</param>
/// <param name="CylinderPressure">Pressure in the cylinder, Pa.</param>
/// <param name="PumpPressure">Pressure at the pump: the cylinder's and what the lines lose, Pa.</param>
/// <param name="Flow">Oil from the pump, m³/s: what goes into the cylinder, but for a regenerative push.</param>
/// <param name="Speed">m/s; 0 where the load holds the ram.</param>
/// <param name="LineLoss">Pressure lost on the way to the cylinder, Pa.</param>
/// <param name="BackPressure">Pressure on the other side of the piston, from the oil on its way back, Pa.</param>
/// <param name="MotorOverloaded">Whether an electric motor carries more than its rated power.</param>
public sealed record SpeedAtLoad(
    double Load, double CylinderPressure, double PumpPressure, double Flow, double Speed, double LineLoss, double BackPressure,
    bool MotorOverloaded);
