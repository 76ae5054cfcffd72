using Ramwright.Workings;

namespace Ramwright.Stock;

/// <summary>A strength class of bolts, screws and rods after ISO 898-1.</summary>
/// <param name="Name"><c>8.8</c>.</param>
/// <param name="Above">Holds for threads thicker than this, m.</param>
/// <param name="UpTo">and up to this, m.</param>
/// <param name="Sp">Proof stress, Pa; ISO 898-1.</param>
/// <param name="Fyb">Nominal yield strength that joints are computed with, Pa; EN 1993-1-8 table 3.1.</param>
/// <param name="Fub">Nominal tensile strength that joints are computed with, Pa; EN 1993-1-8 table 3.1.</param>
/// <param name="Source">Where the values come from.</param>
public sealed record PropertyClass(
    string Name, double Above, double UpTo, double Sp, double Fyb, double Fub, Citation Source)
{
    /// <summary>Least yield strength of the finished part, Pa; ISO 898-1. A little above <see cref="Fyb"/> for some classes.</summary>
    public double Re { get; init; } = Fyb;

    /// <summary>Least tensile strength of the finished part, Pa; ISO 898-1: As · Rm is the load it must reach before it breaks.</summary>
    public double Rm { get; init; } = Fub;
}
