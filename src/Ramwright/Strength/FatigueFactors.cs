using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Strength;

/// <summary>Factors of a fatigue check, both at least 1.</summary>
/// <param name="Mf">γ_Mf, on the fatigue strength.</param>
/// <param name="Ff">γ_Ff, on the stress range.</param>
public sealed record FatigueFactors(double Mf = FatigueFactors.Severest, double Ff = 1.0)
{
    /// <summary>γ_Mf for parts that are not looked at again and that hurt people when they break.</summary>
    public const double Severest = 1.35;

    /// <summary>Recommended γ_Mf.</summary>
    public static readonly Citation StrengthSource = new("EN 1993-1-9:2005", "3(7), table 3.1", Standing.FromMemory);

    /// <summary>γ_Ff = 1.0, recommended for steel bridges; the ram force of a squeeze is known at least as well as traffic.</summary>
    public static readonly Citation LoadSource = new("EN 1993-2:2006", "9.3(1)", Standing.FromMemory);

    /// <summary>γ_Mf.</summary>
    public double Mf { get; init; } = Check.AtLeast(Mf, 1);
    /// <summary>γ_Ff.</summary>
    public double Ff { get; init; } = Check.AtLeast(Ff, 1);

    /// <summary>The two together.</summary>
    public double Both => Mf * Ff;

    /// <summary>The recommended γ_Mf.</summary>
    /// <param name="damageTolerant">Cracks are looked for by a plan, and one that is missed leaves another way for the load.</param>
    /// <param name="highConsequence">Breaking can hurt people.</param>
    public static double Recommended(bool damageTolerant, bool highConsequence) =>
        damageTolerant ? (highConsequence ? 1.15 : 1.0) : highConsequence ? Severest : 1.15;
}
