using Ramwright.Ladders;
using Ramwright.Quantities;

namespace Ramwright.Cli;

/// <summary>The verdict and the weakest part, as one tradesman would tell another.</summary>
internal static class Headline
{
    public static string Wanted(PressCheck check, UnitSystem units) => check.AgainstWanted switch
    {
        Verdict.Holds => $"HOLDS the wanted {Force.Text(check.Rig.Wanted, units)}.",
        Verdict.Marginal => $"MARGINAL at the wanted {Force.Text(check.Rig.Wanted, units)}: nothing gives there, but the margin is eaten into.",
        _ => $"DOES NOT HOLD the wanted {Force.Text(check.Rig.Wanted, units)}.",
    };

    public static string MostPossible(PressCheck check, UnitSystem units) => check.AgainstMostPossible switch
    {
        Verdict.Holds => $"HOLDS the most the pump can give, {Force.Text(check.Power.MostPossibleForce, units)}.",
        Verdict.Marginal => $"MARGINAL at the most the pump can give, {Force.Text(check.Power.MostPossibleForce, units)}: nothing breaks there, but the margin is eaten into.",
        _ => $"DOES NOT HOLD the most the pump can give, {Force.Text(check.Power.MostPossibleForce, units)}: something breaks before the pump stops.",
    };

    public static string Weakest(PressCheck check, UnitSystem units)
    {
        Rung weakest = check.Ladder.Governing;
        string gives = $"The weakest is the {weakest.Part}: {(weakest.Plural ? "they" : "it")} {weakest.Saying} at {Force.Text(weakest.GivesAt, units)}";
        return weakest.Factor is null or > 1.0005 ? $"{gives}, so the press is safe to {Force.Text(weakest.SafeTo, units)}." : $"{gives}.";
    }
}
