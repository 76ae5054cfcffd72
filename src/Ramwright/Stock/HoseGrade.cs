using Ramwright.Workings;

namespace Ramwright.Stock;

/// <summary>A hydraulic hose of one type and bore.</summary>
/// <param name="Type"><c>EN 853 2SN</c>.</param>
/// <param name="Bore">Inside diameter, m.</param>
/// <param name="WorkingPressure">Rated working pressure, Pa.</param>
/// <param name="Source">Where the rating comes from.</param>
public sealed record HoseGrade(string Type, double Bore, double WorkingPressure, Citation Source);
