using Ramwright.Ladders;
using Ramwright.Presses;
using Ramwright.Quantities;

namespace Ramwright.Proving;

/// <summary>What is measured besides the dials, so that the true force comes out well, and what is done when the test is over.</summary>
internal static class PlanMeasures
{
    public static IReadOnlyList<PlanTask> Of(PressCheck check, ProofForce proof, UnitSystem units)
    {
        Rig rig = check.Rig;
        // with the limit back where it belongs; what the valve was set to is not too much
        var use = SettingInUse.Of(check);
        double most = use.IsSafe ? check.Power.MostPossiblePressure : Math.Min(use.Safe, proof.Pressure);
        var tasks = new List<PlanTask>
        {
            new("bore", "inside of the barrel by micrometer or calliper, three times, turned by a third; rod the same, before it is put together or off the maker's sheet"),
            new("creep", rig.Frame.Horizontal
                ? "seal friction: creep out and back against the same steady load, as a spring: slow-out and slow-back, three times. Under three unlike loads, the heaviest near half the rating, nothing has to be guessed"
                : "seal friction: hang a known weight on the ram or let it lift one, creep up and down: slow-out and slow-back, three times. Under three unlike loads (springs, a jack), the heaviest near half the rating, nothing has to be guessed"),
            new("timed", $"pump: time the ram over a measured length at no load and, against soft work, at about a third, two thirds and nine tenths of {Readout.Text(check.Power.TruePressure, Dimension.Pressure, units, 2)}: time-out with pressure and travel"),
            new("top-pressure", $"when the test is passed, relief or regulator back at its setting for use: ram dead against the block, five times from nothing: top-pressure. Not above {SettingInUse.Below(most, units)}"),
            new("leak-down", "at the proof's dwell and again at the rating: valve shut, pump off, write how far the pressure fell over ten minutes, with the oil's temperature before and after: one degree colder looks like a leak"),
            new("oil", "oil temperature at the start and the end"),
        };
        if (rig.Pump is RigAirPump)
            tasks.Add(new PlanTask("receiver-fall", "how far the receiver falls during one squeeze, and the air pressure at the pump's inlet while it runs"));
        return tasks;
    }

    public static IReadOnlyList<PlanTask> After(PressCheck check, UnitSystem units)
    {
        // a press that is not safe to what its pump gives is not handed back to that pump
        var use = SettingInUse.Of(check);
        string Set(string what, double said, double ratio) => use.IsSafe
            ? $"{what} back to {use.Text(said, ratio, units)}"
            : $"{what} {use.Text(said, ratio, units)}, and not back to the {Readout.Text(said, Dimension.Pressure, units)} of the file: the press is not safe to that";
        string relief = check.Rig.Pump switch
        {
            RigElectricPack { Relief: { } set } => Set("relief valve", set, 1) + "; locked and sealed; try it",
            RigAirPump air => Set("air regulator", air.AirPressure, air.EffectiveRatio) + "; locked",
            { Relief: { } set } => Set("relief valve", set, 1) + "; sealed",
            _ when !use.IsSafe => $"what limits the pressure set at or below {SettingInUse.Below(use.Safe, units)} and locked: the press is safe to no more",
            _ => "what limits the pressure set back and locked",
        };
        return
        [
            new("reset", relief, "a setting that does not come back"),
            new("cracks-after", "every weld, corner and bolt looked at again, as before", "any crack, any bolt that can be turned on"),
            new("measured-after", "daylight at four corners and the ram's squareness, as before the test", "any change beyond what can be read"),
            new("plate", $"rating plate: {ForceText.Of(check.Ladder.SafeRating, units)}, its pressure, the year"),
        ];
    }
}
