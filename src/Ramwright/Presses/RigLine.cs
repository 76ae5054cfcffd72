using Ramwright.Stock;

namespace Ramwright.Presses;

/// <summary>A hose or pipe with every number settled. SI.</summary>
/// <param name="Duty">What it does.</param>
/// <param name="Bore">Inside diameter, m.</param>
/// <param name="Length">Length, m.</param>
/// <param name="Rating">Rated working pressure, Pa, where known.</param>
/// <param name="Name">What it is called in results: <c>hose 1</c>.</param>
public sealed record RigLine(LineDuty Duty, double Bore, double Length, double? Rating, string Name)
{
    /// <summary>What the oil meets in it besides an entry and an exit; null where nothing is known.</summary>
    public Fittings? Fittings { get; init; }
}

/// <summary>The oil and its temperature.</summary>
/// <param name="Grade">Its grade.</param>
/// <param name="Temperature">°C.</param>
public sealed record RigOil(OilGrade Grade, double Temperature)
{
    /// <summary>Bulk modulus, Pa: by default that of mineral oil free of air, a middle value of 1.4 to 1.8 GPa.</summary>
    public double BulkModulus { get; init; } = 1.5e9;
}
