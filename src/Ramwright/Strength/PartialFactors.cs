using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Strength;

/// <summary>Factors between the force at which a part gives and the force it is safe to. All of them at least 1.</summary>
/// <param name="M0">γ_M0, yielding of a cross-section.</param>
/// <param name="M1">γ_M1, buckling.</param>
/// <param name="M2">γ_M2, breaking of net sections, bolts, pins and welds.</param>
/// <param name="Load">γ_F, on the ram force itself.</param>
public sealed record PartialFactors(double M0 = 1.0, double M1 = 1.0, double M2 = 1.25, double Load = 1.5)
{
    /// <summary>γ_M0 and γ_M1, recommended values; a national annex may differ.</summary>
    public static readonly Citation MemberSource = new("EN 1993-1-1:2005", "6.1(1) note 2B");

    /// <summary>γ_M2 of joints, recommended value.</summary>
    public static readonly Citation JointSource = new("EN 1993-1-8:2005", "2.2, table 2.1");

    /// <summary>γ_F = 1.5, one variable action, unfavourable.</summary>
    public static readonly Citation LoadSource = new("EN 1990:2002", "table A1.2(B)");

    /// <summary>The recommended values.</summary>
    public static readonly PartialFactors Recommended = new();

    /// <summary>γ_M0.</summary>
    public double M0 { get; init; } = Check.AtLeast(M0, 1);
    /// <summary>γ_M1.</summary>
    public double M1 { get; init; } = Check.AtLeast(M1, 1);
    /// <summary>γ_M2.</summary>
    public double M2 { get; init; } = Check.AtLeast(M2, 1);
    /// <summary>γ_F.</summary>
    public double Load { get; init; } = Check.AtLeast(Load, 1);
}
