using Ramwright.Geometry;
using Ramwright.Stock;

namespace Ramwright.Presses;

/// <summary>A part of the builder's own, every number settled. SI.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="Count">How many alike.</param>
/// <param name="Steel">Its steel.</param>
/// <param name="InPlaceOf">Name of the part it stands in for; empty for none.</param>
public abstract record RigOwnPart(string Name, int Count, Steel Steel, string InPlaceOf);

/// <summary>A flat plate.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="Count">How many alike.</param>
/// <param name="Steel">Its steel.</param>
/// <param name="InPlaceOf">Name of the part it stands in for; empty for none.</param>
/// <param name="Thickness">m.</param>
/// <param name="Edge">Its edge, anticlockwise, m.</param>
/// <param name="Holes">Its holes.</param>
public sealed record RigOwnPlate(string Name, int Count, Steel Steel, string InPlaceOf, double Thickness, IReadOnlyList<Corner> Edge, IReadOnlyList<RigOwnHole> Holes)
    : RigOwnPart(Name, Count, Steel, InPlaceOf);

/// <summary>A bent plate.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="Count">How many alike.</param>
/// <param name="Steel">Its steel.</param>
/// <param name="InPlaceOf">Name of the part it stands in for; empty for none.</param>
/// <param name="Thickness">m.</param>
/// <param name="Width">Along the bends, m.</param>
/// <param name="Radius">Inside, m.</param>
/// <param name="Legs">Outside lengths, m.</param>
/// <param name="Bends">How far each is bent, rad; below zero bends down.</param>
/// <param name="Holes">Its holes, on the flat pattern.</param>
public sealed record RigOwnBentPlate(
    string Name, int Count, Steel Steel, string InPlaceOf, double Thickness, double Width, double Radius,
    IReadOnlyList<double> Legs, IReadOnlyList<double> Bends, IReadOnlyList<RigOwnHole> Holes)
    : RigOwnPart(Name, Count, Steel, InPlaceOf);

/// <summary>A length of bar or section.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="Count">How many alike.</param>
/// <param name="Steel">Its steel.</param>
/// <param name="InPlaceOf">Name of the part it stands in for; empty for none.</param>
/// <param name="Section">Its section.</param>
/// <param name="Length">m.</param>
public sealed record RigOwnLength(string Name, int Count, Steel Steel, string InPlaceOf, Shape Section, double Length)
    : RigOwnPart(Name, Count, Steel, InPlaceOf);

/// <summary>A round hole.</summary>
/// <param name="Right">m.</param>
/// <param name="Up">m.</param>
/// <param name="Diameter">m.</param>
/// <param name="For">What goes through.</param>
/// <param name="Drill">Only marked, to be drilled.</param>
public sealed record RigOwnHole(double Right, double Up, double Diameter, string For, bool Drill);
