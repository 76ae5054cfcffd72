using Ramwright.Workings;

namespace Ramwright.Stock;

/// <summary>A strength class of bolts, screws and rods after ISO 898-1.</summary>
/// <param name="Name"><c>8.8</c>.</param>
/// <param name="Above">Holds for threads thicker than this, m.</param>
/// <param name="UpTo">and up to this, m.</param>
/// <param name="Sp">Proof stress, Pa.</param>
/// <param name="Fyb">Yield strength, Pa.</param>
/// <param name="Fub">Tensile strength, Pa.</param>
/// <param name="Source">Where the values come from.</param>
public sealed record PropertyClass(
    string Name, double Above, double UpTo, double Sp, double Fyb, double Fub, Citation Source);
