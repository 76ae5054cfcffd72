namespace Ramwright.Frame;

/// <summary>
/// How one end of a member holds on to its node, along and about the member's own axes. Infinity is rigid, zero is let go,
/// anything between is a spring: N/m along, N·m/rad about.
/// </summary>
/// <param name="N">Along x.</param>
/// <param name="Vy">Across y.</param>
/// <param name="Vz">Across z.</param>
/// <param name="T">About x.</param>
/// <param name="My">About y.</param>
/// <param name="Mz">About z.</param>
public readonly record struct EndFixity(double N, double Vy, double Vz, double T, double My, double Mz)
{
    private const double Inf = double.PositiveInfinity;

    /// <summary>Holds in every way.</summary>
    public static readonly EndFixity Rigid = new(Inf, Inf, Inf, Inf, Inf, Inf);

    /// <summary>Turns freely about y, holds in every other way.</summary>
    public static readonly EndFixity PinnedY = Rigid with { My = 0 };
}
