using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Strength;

/// <summary>
/// The ram force at which one part reaches its limit. A function that finds no action on the part returns null: the limit
/// does not apply.
/// </summary>
/// <param name="GivesAt">Ram force at which it gives, N: nominal (characteristic) resistance, every factor 1.</param>
/// <param name="SafeTo">Ram force it is safe to, N: design resistance over the load factor.</param>
public readonly record struct Limit(double GivesAt, double SafeTo)
{
    /// <summary>Beyond this ram force, N, a limit comes from rounding errors and does not apply: 100 million tonnes.</summary>
    public const double Farthest = 1e12;

    private static readonly Citation Linear = Citation.Mechanics("proportion: the frame answers in proportion to the ram force");

    /// <summary>Ram force at which it gives, N.</summary>
    public double GivesAt { get; init; } = Check.Positive(GivesAt);

    /// <summary>Ram force it is safe to, N.</summary>
    public double SafeTo { get; init; } = Check.Positive(SafeTo);

    /// <summary>The factor between the two.</summary>
    public double Factor => GivesAt / SafeTo;

    /// <summary>The lower of two limits in what they are safe to; one that does not apply never governs.</summary>
    public static Limit? Lower(Limit? a, Limit? b) =>
        a is null ? b : b is null || a.Value.SafeTo <= b.Value.SafeTo ? a : b;

    /// <summary>From the share of the characteristic resistance that one newton at the ram uses up.</summary>
    /// <param name="u">Used share per newton, 1/N.</param>
    /// <param name="gammaM">γ_M on the resistance.</param>
    /// <param name="gammaF">γ_F on the ram force.</param>
    /// <param name="w">Where to write it down.</param>
    internal static Limit? FromUse(double u, double gammaM, double gammaF, Working? w)
    {
        Check.NotNegative(u);
        if (u < 1 / Farthest)
            return null;
        double gives = 1 / u;
        double safe = gives / (gammaM * gammaF);
        w?.Step("F_gives", "ram force at which it gives", "1 / u", gives, Dimension.Force, Linear, ("u", u, Dimension.Number));
        w?.Step("F_safe", "ram force it is safe to", "F_gives / (γ_M γ_F)", safe, Dimension.Force, Linear,
            ("F_gives", gives, Dimension.Force), ("γ_M", gammaM, Dimension.Number), ("γ_F", gammaF, Dimension.Number));
        return new Limit(gives, safe);
    }

    /// <summary>From two load multipliers found separately; null where either lies beyond <see cref="Farthest"/>.</summary>
    internal static Limit? FromForces(double gives, double design, double gammaF, Working? w)
    {
        if (!(gives <= Farthest) || !(design <= Farthest))
            return null;
        double safe = design / gammaF;
        w?.Step("F_safe", "ram force it is safe to", "F_Rd / γ_F", safe, Dimension.Force, Linear,
            ("F_Rd", design, Dimension.Force), ("γ_F", gammaF, Dimension.Number));
        return new Limit(gives, safe);
    }
}
