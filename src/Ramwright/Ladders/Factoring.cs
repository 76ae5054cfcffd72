using Ramwright.Presses;
using Ramwright.Strength;

namespace Ramwright.Ladders;

/// <summary>The factors of a press, and the words for where they come from.</summary>
internal static class Factoring
{
    public static PartialFactors Of(Rig rig) => new(Load: rig.Factors.Load);

    /// <summary>For what yields: γ_M0 = 1 and the load factor.</summary>
    public static string Load(Rig rig) => InWords.Of(rig.Factors.Load).Yields;

    /// <summary>For what breaks: γ_M2 and the load factor.</summary>
    public static string Break(Rig rig) => InWords.Of(rig.Factors.Load).Breaks;

    /// <summary>Put in words once, not for every rung.</summary>
    private sealed record InWords(double Load, string Yields, string Breaks)
    {
        private static InWords? Last { get; set; }   // threads that race only put it in words twice

        public static InWords Of(double load) => Last is { } last && last.Load == load ? last : Last = new InWords(load,
            $"{load:0.##} on the load ({PartialFactors.LoadSource}), 1.0 on the steel ({PartialFactors.MemberSource})",
            $"{load:0.##} on the load ({PartialFactors.LoadSource}), 1.25 on the joint ({PartialFactors.JointSource})");
    }
}
