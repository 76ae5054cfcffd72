using Ramwright.Ladders;

namespace Ramwright.Web.Bench;

/// <summary>A verdict as words and as the name of its look.</summary>
internal static class VerdictWords
{
    public static string Of(Verdict verdict) => verdict switch { Verdict.Holds => "Holds", Verdict.Marginal => "Marginal", _ => "Does not hold" };

    public static string Look(Verdict verdict) => verdict switch { Verdict.Holds => "holds", Verdict.Marginal => "marginal", _ => "fails" };
}
