using Ramwright.Workings;

namespace Ramwright.Stock;

/// <summary>Yield and tensile strength up to a thickness.</summary>
/// <param name="UpTo">Greatest thickness of the band, m.</param>
/// <param name="Fy">Least yield strength, Pa.</param>
/// <param name="Fu">Least tensile strength, Pa.</param>
public readonly record struct StrengthBand(double UpTo, double Fy, double Fu);

/// <summary>A steel as it is bought or found.</summary>
public sealed record Steel
{
    /// <summary>Mass of a cubic metre, kg: the figure by which tables of sections give their mass; EN 10365:2017, 3.</summary>
    public const double Density = 7850;

    /// <summary>As it is ordered: <c>S275JR</c>; or <c>unknown</c>.</summary>
    public required string Name { get; init; }
    /// <summary>Strengths by thickness, thinnest first, at least one.</summary>
    public required IReadOnlyList<StrengthBand> Bands { get; init; }
    /// <summary>Correlation factor of fillet welds, EN 1993-1-8 table 4.1; null where the steel is not meant to be welded without a procedure.</summary>
    public double? BetaW { get; init; }
    /// <summary>What a user of this steel must be told, or empty.</summary>
    public string Caution { get; init; } = "";
    /// <summary>Why it may not carry load in a press at all, or empty.</summary>
    public string Refused { get; init; } = "";
    /// <summary>Where the strengths come from.</summary>
    public required Citation Source { get; init; }

    /// <summary>Yield strength at a thickness, Pa; the last band beyond its end.</summary>
    /// <param name="t">Thickness, m, above zero.</param>
    public double Fy(double t) => Band(t).Fy;

    /// <summary>Tensile strength at a thickness, Pa; the last band beyond its end.</summary>
    /// <param name="t">Thickness, m, above zero.</param>
    public double Fu(double t) => Band(t).Fu;

    /// <summary>Whether the tables reach this thickness.</summary>
    public bool Covers(double t) => t <= Bands[^1].UpTo;

    private StrengthBand Band(double t)
    {
        foreach (StrengthBand band in Bands)
        {
            if (t <= band.UpTo)
                return band;
        }

        return Bands[^1];
    }
}
