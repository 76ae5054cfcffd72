using Ramwright.Frame;
using Ramwright.Presses;
using Ramwright.Quantities;

namespace Ramwright.Ladders;

/// <summary>The cautions that belong to a checked press: one short line each, with the number that makes it true.</summary>
internal static class CautionList
{
    /// <summary>The last of every list.</summary>
    public const string Advice = "This advises; it does not certify. Where people can be hurt follow your local code and ask a licensed engineer. "
        + "Prove the press with a gauge before use.";

    private const string PumpTooStrong = "The pump can give more than the press is safe to. Once a die bottoms the pump sets the force: ";

    // a true force so many times the wanted one is asked about: a slip of the pen, or a pump far too strong
    private const double FarAbove = 2, FarBelow = 0.97;

    public static IReadOnlyList<(CautionKind Kind, string Text)> Of(PressCheck check, UnitSystem units)
    {
        var all = new List<(CautionKind Kind, string Text)>();
        void Say(CautionKind kind, string text)
        {
            if (text.Length > 0 && !all.Exists(c => c.Text == text))
                all.Add((kind, text));
        }

        Rig rig = check.Rig;
        if (check.AgainstMostPossible != Verdict.Holds)
            Say(CautionKind.Danger, PumpTooStrong + LimitThePressure(check, units));
        Say(CautionKind.Danger, FarFromWanted(check, units));
        foreach (string beside in Beside(rig, units))
            Say(CautionKind.Danger, beside);
        foreach (Caution caution in rig.Cautions)
            Say(caution.Kind, caution.Text(units));
        foreach (Caution caution in check.Power.Cautions)
            Say(caution.Kind, caution.Text(units));

        (CautionKind ofGauge, string gauge) = GaugeCautions.Of(check, units);
        Say(ofGauge, gauge);
        Say(CautionKind.Handling, ValveCautions.Of(check, units));
        Say(CautionKind.Handling, LetsGo(check.SnapThrough, units));
        Say(CautionKind.Handling, BreaksThrough(check.SnapThrough, Math.Min(rig.Wanted, check.Ladder.SafeRating), units));
        foreach (string missing in PressedRungs.Missing(rig, units))
            Say(CautionKind.Unchecked, missing);
        Say(CautionKind.Unchecked, HotSpotRungs.Unknown(check));
        foreach (PlanJoint joint in check.Response.Plan.Joints)
            Say(CautionKind.Handling, BesideTheFace(joint, units));
        Say(CautionKind.Handling, rig.Frame.Horizontal
            ? "Nothing but its own foot holds the work of a press that lies: prop or sling it before the ram takes it, and before it comes free."
            : "Never put a hand under a ram held up by oil alone: prop it first.");
        if (rig.Frame is RigTieRodFrame)
            Say(CautionKind.Handling, "Stay out of the line of a tie rod while you tighten it and while it is loaded: one that breaks flies like a bolt from a bow.");
        Say(CautionKind.Handling, Advice);
        return all;
    }

    /// <summary>A beam that stands out beside what it is welded to.</summary>
    private static string BesideTheFace(PlanJoint joint, UnitSystem units)
    {
        if (JointWeld.PartOf(joint) is not { } part)
            return "";
        string Say(double length) => Readout.Text(length, Dimension.Length, units, 3);
        return $"The end of the {joint.Beam.Part} stands out beside the {joint.Onto.Part}: {Say(part.OnSteel)} of weld find steel on both, of {Say(part.Edge)} round it, and only they are counted. "
            + (joint.Beam.Shape is Stock.Pair { Apart: > 0 } ? $"Halves nearer together, or a wider {joint.Onto.Part}, carry more." : $"A narrower {joint.Beam.Part} or a wider {joint.Onto.Part} carries more of it.");
    }

    /// <summary>Beams whose webs hand their force to the uprights' flanges beside the web.</summary>
    private static IEnumerable<string> Beside(Rig rig, UnitSystem units)
    {
        if (rig.Frame is not RigClosedFrame frame)
            yield break;
        foreach ((RigMember beam, RigJoint joint) in ((RigMember, RigJoint)[])[(frame.Crown, frame.CrownJoint), (frame.Bed, frame.BedJoint)])
        {
            if (JointSprings.Beside(joint, beam.Shape, frame.Upright.Shape) is { } off)
            {
                yield return $"The webs of {beam.Part} and uprights stand {Readout.Text(off, Dimension.Length, units)} beside each other: flanges bend, and the uprights' halves are pulled beside their middle and twist. "
                    + $"The ladder does not see that. Say {beam.Key}.apart so that web stands on web, or look at the frame as solid steel: ramwright solid FILE.";
            }
        }
    }

    /// <summary>A wanted force that the ram cannot reach, or that it goes far beyond.</summary>
    private static string FarFromWanted(PressCheck check, UnitSystem units)
    {
        double wanted = check.Rig.Wanted, true_ = check.Power.TrueForce;
        string Say(double force) => ForceText.Of(force, units);
        if (true_ < FarBelow * wanted)
            return $"You want {Say(wanted)}, and the ram gives no more than {Say(true_)}. Are number and unit as you mean them? If so it needs more pressure, or a larger bore.";
        if (true_ <= FarAbove * wanted)
            return "";
        double keeps = new OilForce(check.Rig.Cylinder, check.Power.Areas).PressureFor(wanted);
        string or = keeps > 0 && double.IsFinite(keeps) ? $", or a relief valve must end it at about {Readout.Text(keeps, Dimension.Pressure, units)}" : "";
        return $"You want {Say(wanted)}, and the ram gives {Say(true_)}. Are number and unit as you mean them? If so the frame must still carry all the pump can give{or}.";
    }

    /// <summary>The pressure that keeps what can break at its safe force.</summary>
    public static string LimitThePressure(PressCheck check, UnitSystem units)
    {
        string how = check.Rig.Pump switch
        {
            RigAirPump { Relief: null } => "limit the air or fit a relief valve so that the oil stays",
            { Relief: null } => "fit a relief valve and set it",
            _ => "set the relief valve",
        };
        return $"{how} at or below {SettingInUse.Below(SettingInUse.Of(check).Safe, units)}, or strengthen what the ladder names.";
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
