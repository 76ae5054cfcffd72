using Ramwright.Stock;

namespace Ramwright.Presses;

/// <summary>Where the cylinder presses on the frame. SI.</summary>
/// <param name="Along">Length along the member it presses on, m.</param>
/// <param name="Across">Width across it, m.</param>
/// <param name="Loaded">Diameter of what stands on it, m.</param>
/// <param name="Thickness">Thickness of its plate, m; null where not said.</param>
/// <param name="Steel">Steel of its plate.</param>
public sealed record RigFoot(double Along, double Across, double Loaded, double? Thickness, Steel Steel);

/// <summary>The plate between the lower die and the frame. SI.</summary>
/// <param name="Thickness">Thickness, m.</param>
/// <param name="Along">Length along the member it lies on, m.</param>
/// <param name="Steel">Its steel.</param>
public sealed record RigBolster(double Thickness, double Along, Steel Steel);
