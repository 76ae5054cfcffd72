using Ramwright.Workings;

namespace Ramwright.Stock;

/// <summary>A hydraulic hose of one type and bore.</summary>
/// <param name="Type"><c>EN 853 2SN</c>.</param>
/// <param name="Bore">Inside diameter, m.</param>
/// <param name="WorkingPressure">Rated working pressure, Pa.</param>
/// <param name="Source">Where the rating comes from.</param>
public sealed record HoseGrade(string Type, double Bore, double WorkingPressure, Citation Source)
{
    /// <summary>Least radius it may be bent to, at the inside of the bend, m, where the table has it.</summary>
    public double? BendRadius { get; init; }
}
