using Ramwright.Quantities;

namespace Ramwright.Ladders;

/// <summary>The verdict and the weakest part, as one tradesman would tell another.</summary>
public static class Headline
{
    /// <summary>How it stands against the wanted force.</summary>
    public static string Wanted(PressCheck check, UnitSystem units) => check.AgainstWanted switch
    {
        Verdict.Holds => $"HOLDS the wanted {ForceText.Of(check.Rig.Wanted, units)}.",
        Verdict.Marginal => $"MARGINAL at the wanted {ForceText.Of(check.Rig.Wanted, units)}: nothing gives there, but the margin is eaten into.",
        _ when IsOnlyOutOfReach(check) =>
            $"DOES NOT REACH the wanted {ForceText.Of(check.Rig.Wanted, units)}: the ram gives no more than {ForceText.Of(check.Power.TrueForce, units)}.",
        _ => $"DOES NOT HOLD the wanted {ForceText.Of(check.Rig.Wanted, units)}.",
    };

    /// <summary>Whether nothing gives below the wanted force but the pump's own reach.</summary>
    private static bool IsOnlyOutOfReach(PressCheck check)
    {
        foreach (Rung rung in check.Ladder.Rungs)
        {
            if (rung.GivesAt < check.Rig.Wanted * (1 - 1e-9) && (rung.Group != RungGroup.Power || rung.MustSurvive))
                return false;
        }

        return check.Power.TrueForce < check.Rig.Wanted * (1 - 1e-9);
    }

    /// <summary>How it stands against the most the pump can give.</summary>
    public static string MostPossible(PressCheck check, UnitSystem units) => check.AgainstMostPossible switch
    {
        Verdict.Holds => $"HOLDS the most the pump can give, {ForceText.Of(check.Power.MostPossibleForce, units)}.",
        Verdict.Marginal => $"MARGINAL at the most the pump can give, {ForceText.Of(check.Power.MostPossibleForce, units)}: nothing breaks there, but the margin is eaten into.",
        _ => $"DOES NOT HOLD the most the pump can give, {ForceText.Of(check.Power.MostPossibleForce, units)}: something breaks before the pump stops.",
    };

    /// <summary>The weakest part, how it gives and at what force.</summary>
    public static string Weakest(PressCheck check, UnitSystem units)
    {
        Rung weakest = check.Ladder.Governing;
        if (weakest is not { Group: RungGroup.Power, CanBreak: false })
        {
            string gives = $"The weakest is the {weakest.Part}: {Gives(weakest, units)}";
            return weakest.Factor is null or > 1.0005 ? $"{gives}, so the press is safe to {ForceText.Of(weakest.SafeTo, units)}." : $"{gives}.";
        }

        string first = $"Nothing gives before the {weakest.Part} {weakest.Saying} at {ForceText.Of(weakest.GivesAt, units)}.";
        foreach (Rung next in check.Ladder.Rungs)
        {
            if (next.Group != RungGroup.Power)
                return $"{first} Next comes the {next.Part}, safe to {ForceText.Of(next.SafeTo, units)}: {Gives(next, units)}.";
        }

        return first;
    }

    /// <summary>What to do about it first, to follow "To do:"; empty where nothing has to change.</summary>
    public static string Remedy(PressCheck check, UnitSystem units) =>
        check.AgainstMostPossible != Verdict.Holds ? CautionList.LimitThePressure(check, units)
        : check.AgainstWanted == Verdict.Holds ? ""
        : IsOnlyOutOfReach(check) ? "raise the pressure, where every part bears it, or take a larger bore; or want less."
        : "strengthen what the ladder names, or want less.";

    /// <summary>The remedy and how to work until then: a pressure that breaks nothing may still be too much for twenty thousand squeezes, or for the work's evenness.</summary>
    public static string ToDo(PressCheck check, UnitSystem units) =>
        Remedy(check, units) is { Length: > 0 } remedy && check.AgainstMostPossible != Verdict.Holds && check.AgainstWanted != Verdict.Holds
            ? $"{remedy} Until then press no harder than {ForceText.Of(check.Ladder.SafeRating, units)}." : Remedy(check, units);

    private static string Gives(Rung rung, UnitSystem units) =>
        $"{(rung.Plural ? "they" : "it")} {rung.Saying} at {ForceText.Of(rung.GivesAt, units)}";
}
