namespace Ramwright.Power;

/// <summary>Power a pump's motor must give at one point.</summary>
/// <param name="Where">In plain words: <c>both stages, just before the large one is unloaded</c>.</param>
/// <param name="Pressure">Pa.</param>
/// <param name="Flow">m³/s.</param>
/// <param name="Power">At the shaft, W.</param>
/// <param name="Share">Of the motor's rated power; above 1 it is overloaded.</param>
public sealed record MotorLoad(string Where, double Pressure, double Flow, double Power, double Share);
