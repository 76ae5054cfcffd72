namespace Ramwright.Fabrication.Nesting;

/// <summary>A part on a sheet.</summary>
/// <param name="Item">Number of the part among all to be placed.</param>
/// <param name="Sheet">Number of the sheet.</param>
/// <param name="Shape">The part as it is turned.</param>
/// <param name="At">Where its origin lies.</param>
internal readonly record struct Placement(int Item, int Sheet, NestShape Shape, Spot At);
