using Ramwright.Workings;

namespace Ramwright.Stock;

/// <summary>A hydraulic oil by its viscosity grade.</summary>
/// <param name="Name"><c>VG 46</c>.</param>
/// <param name="Nu40">Kinematic viscosity at 40 °C, m²/s.</param>
/// <param name="Nu100">Kinematic viscosity at 100 °C, m²/s.</param>
/// <param name="Density">kg/m³.</param>
/// <param name="Source">Where the values come from.</param>
public sealed record OilGrade(string Name, double Nu40, double Nu100, double Density, Citation Source);
