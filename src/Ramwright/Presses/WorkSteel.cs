namespace Ramwright.Presses;

/// <summary>The steel of a piece that is worked cold, by its least strengths.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="Yield">Least yield strength at its thickness, Pa.</param>
/// <param name="Tensile">Least tensile strength at its thickness, Pa.</param>
/// <param name="HasPapers">Whether it was bought by a standard; found steel may be far stronger than what it is counted for.</param>
public sealed record WorkSteel(string Name, double Yield, double Tensile, bool HasPapers);
