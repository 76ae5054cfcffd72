using Ramwright.Geometry;
using Ramwright.Stock;

namespace Ramwright.Presses;

/// <summary>A plate to cut from. SI.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="Thickness">m.</param>
/// <param name="Steel">Its steel.</param>
/// <param name="Edge">Its edge, anticlockwise, m.</param>
/// <param name="Count">How many alike; 0 for as many as are needed.</param>
/// <param name="Buy">Whether it has to be bought.</param>
public sealed record RigSheet(string Name, double Thickness, Steel Steel, IReadOnlyList<Corner> Edge, int Count, bool Buy);

/// <summary>A bar or section to saw from. SI.</summary>
/// <param name="Section">Its section.</param>
/// <param name="Steel">Its steel.</param>
/// <param name="Length">m.</param>
/// <param name="Count">How many alike; 0 for as many as are needed.</param>
/// <param name="Buy">Whether it has to be bought.</param>
public sealed record RigBarInStock(Shape Section, Steel Steel, double Length, int Count, bool Buy);

/// <summary>How plates are cut and bars are sawn. SI.</summary>
/// <param name="PartGap">From part to part, m.</param>
/// <param name="EdgeGap">From part to edge, m.</param>
/// <param name="TurnStep">Turns tried, rad.</param>
/// <param name="TorchKerf">Drawn into cut files, m; 0 for none.</param>
/// <param name="LeadIn">Drawn into cut files, m; 0 for none.</param>
/// <param name="SawKerf">m.</param>
/// <param name="RoughEnd">Off a bar's end, m.</param>
public sealed record RigCutting(double PartGap, double EdgeGap, double TurnStep, double TorchKerf, double LeadIn, double SawKerf, double RoughEnd)
{
    /// <summary>As shops commonly cut.</summary>
    public static readonly RigCutting Usual = new(0.008, 0.010, Math.PI / 2, 0, 0, 0.002, 0.005);
}
