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
    /// <summary>Tightest bend as laid, at the inside, m; null where nothing is known.</summary>
    public double? BendRadius { get; init; }
    /// <summary>Least bend its type allows, at the inside, m; null where the type is not known.</summary>
    public double? LeastBend { get; init; }
    /// <summary>Where the oil comes in; null where nothing is known.</summary>
    public RigLineEnd? Inlet { get; init; }
    /// <summary>Where the oil goes out; null where nothing is known.</summary>
    public RigLineEnd? Outlet { get; init; }
}

/// <summary>One end of a line.</summary>
/// <param name="Thread">Thread at the line's end.</param>
/// <param name="Port">What it is screwed into.</param>
/// <param name="Seal">What seals it, where stated.</param>
public sealed record RigLineEnd(PortThread Thread, PortThread Port, PortSeal? Seal)
{
    /// <summary>Whether the two go together.</summary>
    public PortMating Mating => PortMating.Of(Thread, Port);
}

/// <summary>The oil and its temperature.</summary>
/// <param name="Grade">Its grade.</param>
/// <param name="Temperature">°C.</param>
public sealed record RigOil(OilGrade Grade, double Temperature)
{
    /// <summary>Bulk modulus, Pa: by default that of mineral oil free of air, a middle value of 1.4 to 1.8 GPa.</summary>
    public double BulkModulus { get; init; } = 1.5e9;
    /// <summary>Temperature of the workshop, °C.</summary>
    public double Surroundings { get; init; } = 20;
}
