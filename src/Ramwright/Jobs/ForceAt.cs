namespace Ramwright.Jobs;

/// <summary>A point of force against travel.</summary>
/// <param name="Travel">Since the ram touched the work, m.</param>
/// <param name="Force">Against the ram, N.</param>
public readonly record struct ForceAt(double Travel, double Force);
