using Ramwright.Ladders;
using Ramwright.Quantities;

namespace Ramwright.Cli;

/// <summary>The verdict and the weakest part, as one tradesman would tell another.</summary>
internal static class Headline
{
    public static IEnumerable<string> Of(PressCheck check, UnitSystem units)
    {
        string wanted = Force.Text(check.Rig.Wanted, units);
        string most = Force.Text(check.Power.MostPossibleForce, units);
        yield return check.AgainstWanted switch
        {
            Verdict.Holds => $"HOLDS the wanted {wanted}.",
            Verdict.Marginal => $"MARGINAL at the wanted {wanted}: nothing gives, but the margin is eaten into.",
            _ => $"DOES NOT HOLD the wanted {wanted}.",
        };
        yield return check.AgainstMostPossible switch
        {
            Verdict.Holds => $"HOLDS the most the pump can give, {most}.",
            Verdict.Marginal => $"MARGINAL at the most the pump can give, {most}.",
            _ => $"DOES NOT HOLD the most the pump can give, {most}.",
        };
        yield return "";
        Rung weakest = check.Ladder.Governing;
        yield return $"Weakest: the {weakest.Part}. {(weakest.Plural ? "They" : "It")} {weakest.Saying}";
        yield return weakest.Factor > 1.0005
            ? $"at {Force.Text(weakest.GivesAt, units)}; safe to {Force.Text(weakest.SafeTo, units)}."
            : $"at {Force.Text(weakest.GivesAt, units)}.";
    }
}
