using Ramwright.Presses;
using Ramwright.Strength;

namespace Ramwright.Ladders;

/// <summary>The factors of a press, and the words for where they come from.</summary>
internal static class Factoring
{
    public static PartialFactors Of(Rig rig) => new(Load: rig.Factors.Load);

    /// <summary>For what yields: γ_M0 = 1 and the load factor.</summary>
    public static string Load(Rig rig) =>
        $"{rig.Factors.Load:0.##} on the load ({PartialFactors.LoadSource}), 1.0 on the steel ({PartialFactors.MemberSource})";

    /// <summary>For what breaks: γ_M2 and the load factor.</summary>
    public static string Break(Rig rig) =>
        $"{rig.Factors.Load:0.##} on the load ({PartialFactors.LoadSource}), 1.25 on the joint ({PartialFactors.JointSource})";
}
