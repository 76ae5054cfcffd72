using Ramwright.Workings;

namespace Ramwright.Stock;

/// <summary>A strength class of bolts, screws and rods: after ISO 898-1, or a grade of inch fasteners.</summary>
/// <param name="Name"><c>8.8</c>, <c>SAE 5</c>.</param>
/// <param name="Above">Holds for threads thicker than this, m.</param>
/// <param name="UpTo">and up to this, m.</param>
/// <param name="Sp">Proof stress, Pa; ISO 898-1, SAE J429.</param>
/// <param name="Fyb">Nominal yield strength that joints are computed with, Pa; EN 1993-1-8 table 3.1, or the grade's own.</param>
/// <param name="Fub">Nominal tensile strength that joints are computed with, Pa; EN 1993-1-8 table 3.1, or the grade's own.</param>
/// <param name="Source">Where the values come from.</param>
public sealed record PropertyClass(
    string Name, double Above, double UpTo, double Sp, double Fyb, double Fub, Citation Source)
{
    /// <summary>Shear strength over tensile strength where the thread is sheared, EN 1993-1-8 table 3.4; null for what that code does not have: 12.9, inch grades.</summary>
    public double? AlphaV { get; init; }

    /// <summary>Least yield strength of the finished part, Pa; ISO 898-1. A little above <see cref="Fyb"/> for some classes.</summary>
    public double Re { get; init; } = Fyb;

    /// <summary>Least tensile strength of the finished part, Pa; ISO 898-1: As · Rm is the load it must reach before it breaks.</summary>
    public double Rm { get; init; } = Fub;
}
