using Ramwright.Power;
using Ramwright.Presses;
using Ramwright.Quantities;

namespace Ramwright.Ladders;

/// <summary>The cautions that belong to a checked press: one short line each, with the number that makes it true.</summary>
internal static class CautionList
{
    public static IReadOnlyList<string> Of(PressCheck check, UnitSystem units)
    {
        var all = new List<string>();
        void Say(string text)
        {
            if (text.Length > 0 && !all.Contains(text))
                all.Add(text);
        }

        Rig rig = check.Rig;
        if (check.AgainstMostPossible != Verdict.Holds)
            Say(LimitThePressure(check, units));
        foreach (string caution in rig.Cautions)
            Say(caution);
        foreach (PowerCaution caution in check.Power.Cautions)
            Say(caution.Text(units));

        Say(GaugeCautions.Of(check, units));
        Say(ValveCautions.Of(check, units));

        double joules = StoredEnergy(check);
        Say($"At full force about {Readout.Text(joules, Dimension.Energy, units, 2)} is stored in oil and frame. If work or tool lets go it comes out at once: "
            + "shield the front and back, stand to the side, nothing loose under the ram.");
        Say("Not checked yet: walls so thin that they buckle locally, deep narrow bars that tip over sideways, webs crushed under the ram, "
            + "fatigue. Keep walls stocky and tie deep bars sideways.");
        Say("Never put a hand under a ram held up by oil alone: prop it first.");
        Say("This advises; it does not certify. Where people can be hurt follow your local code and ask a licensed engineer. "
            + "Prove the press with a gauge before use.");
        return all;
    }

    /// <summary>The pressure that keeps what can break at its safe force.</summary>
    private static string LimitThePressure(PressCheck check, UnitSystem units)
    {
        double safe = double.PositiveInfinity;
        foreach (Rung rung in check.Ladder.Rungs)
        {
            if (rung.MustSurvive)
                safe = Math.Min(safe, rung.SafeTo);
        }

        double pressure = safe / check.Power.Areas.Force;
        string how = check.Rig.Pump is RigAirPump { Relief: null } ? "limit the air or fit a relief valve so that the oil stays" : "set the relief valve";
        return $"The pump can give more than the press is safe to. Once a die bottoms the pump sets the force: {how} at or below "
            + $"{Readout.Text(pressure, Dimension.Pressure, units)}, or strengthen what the ladder names.";
    }

    private static double StoredEnergy(PressCheck check)
    {
        double frame = Ramwright.Power.StoredEnergy.InFrame(check.Power.MostPossibleForce, check.Response.Stiffness);
        return check.Power.OilEnergy + frame;
    }
}
