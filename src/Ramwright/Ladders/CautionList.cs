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
        Say(LetsGo(check.SnapThrough, units));
        Say(BreaksThrough(check.SnapThrough, Math.Min(rig.Wanted, check.Ladder.SafeRating), units));
        foreach (string missing in PressedRungs.Missing(rig, units))
            Say(missing);
        Say(rig.Frame.Horizontal
            ? "Nothing but its own foot holds the work of a press that lies: prop or sling it before the ram takes it, and before it comes free."
            : "Never put a hand under a ram held up by oil alone: prop it first.");
        if (rig.Frame is RigTieRodFrame)
            Say("Stay out of the line of a tie rod while you tighten it and while it is loaded: one that breaks flies like a bolt from a bow.");
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

    /// <summary>What flies when work or tool gives way.</summary>
    private static string LetsGo(SnapThrough snap, UnitSystem units) =>
        $"At full force about {Readout.Text(snap.Energy, Dimension.Energy, units, 2)} is stored in oil and frame. If work or tool lets go it comes out at once: "
        + $"the ram jumps up to {Readout.Text(snap.FreeTravel, Dimension.Length, units, 2)}, and a loose piece of {Readout.Text(1, Dimension.Mass, units, 2)} can be thrown "
        + $"at up to {Piece(snap, units)}. Shield the front and back, stand to the side, nothing loose under the ram.";

    private static string Piece(SnapThrough snap, UnitSystem units) =>
        Units.TryFind(units == UnitSystem.Imperial ? "ft/s" : "m/s", Dimension.Speed, out Unit? unit)
            ? Readout.Text(snap.SpeedOf(1), unit, 2)
            : Readout.Text(snap.SpeedOf(1), Dimension.Speed, units, 2);

    /// <summary>What happens to the press itself.</summary>
    private static string BreaksThrough(SnapThrough snap, double rating, UnitSystem units) =>
        $"Punching and shearing let go like that at every stroke: the frame recoils, and what it presses together is pulled apart, cylinder mount and bolts too, with up to "
        + $"the force it was let go at ({Readout.Text(snap.Recoil, Dimension.Force, units, 2)} at full force). Presses are commonly built for a tenth of their rating backwards: "
        + $"keep punching to small forces, {Readout.Text(SnapThrough.UsualReversal * rating, Dimension.Force, units, 2)} or so, or let a stop or damper catch the ram.";
}
