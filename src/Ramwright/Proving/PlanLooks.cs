using Ramwright.Frame;
using Ramwright.Ladders;
using Ramwright.Presses;
using Ramwright.Quantities;

namespace Ramwright.Proving;

/// <summary>What is looked at before any pressure: welds, bolts, lines, guards, by what this press is made of.</summary>
internal static class PlanLooks
{
    public static IReadOnlyList<PlanTask> Of(PressCheck check, UnitSystem units)
    {
        var looks = new List<PlanTask>();
        Rig rig = check.Rig;
        void Look(string name, string what, string stop = "") => looks.Add(new PlanTask(name, what, stop));

        Look("sizes", "every section, thickness, opening and the bore as built, against the press file; change the file where they differ", "a part lighter than the file says");
        Joints(check, units, Look);
        if (check.SqueezesUntilInspection is { } life)
            Look("cracks", $"first of all the {life.Spot}: there a crack is likeliest; clean, dye or chalk and oil", "any crack");
        if (rig.Cylinder.Mount is not null)
            Look("cylinder-mount", "the cylinder bears with its whole face; bolts or thread of its mount full and tight; nothing is welded to the cylinder", "a weld on the cylinder or on a fitting");
        Look("lines", $"every hose, pipe and fitting printed for {Readout.Text(check.Power.MostPossiblePressure, Dimension.Pressure, units)} or more; couplings home; no hose bent short, rubbed, near heat or in line with a person", "a fitting that nobody can name");
        Look("relief", rig.Pump.Relief is { } set
            ? $"a relief valve between pump and first valve, wound fully out; its seal off only for the test, later {SettingInUse.Of(check).Text(set, 1, units)}"
            : rig.Pump is RigAirPump ? "the air regulator, with a gauge of its own and a lock: it alone limits the pressure" : "what limits the pressure; nothing between pump and cylinder can shut that limit off", "no limit that works by itself");
        if (rig.Cylinder.PullsByOil)
            Look("rod-side", "the port of the rod side is open to the tank and its coupling is home: blocked, its pressure rises by the area ratio", "a rod side that can be shut off");
        Look("gauge", rig.Gauge is { } gauge
            ? $"a gauge to {Readout.Text(gauge.Range, Dimension.Pressure, units)} at the cylinder, compared with another; its needle at zero"
            : "a gauge at the cylinder, in the middle of its dial at full pressure, compared with another; needle at zero", "a gauge that sticks or stands off zero");
        Look("square", $"ram square to the bed both ways within {(units == UnitSystem.Imperial ? "1/32 in on a foot" : "a millimetre on 300")}; guides, keeper plates and pins in place");
        Look("block", "one solid block of mild steel, flat and square, as wide as the die, centred under the ram: no stack, nothing loose, nothing hard", "a stack of pieces");
        Look("feet", "the press stands level and cannot tip: bolted down or propped");
        return looks;
    }

    private static void Joints(PressCheck check, UnitSystem units, Action<string, string, string> look)
    {
        foreach (IGrouping<string, PlanJoint> joints in check.Response.Plan.Joints.GroupBy(j => j.Key))
        {
            PlanJoint joint = joints.First();
            string name = joint.Name.Split(',')[0], id = name.Replace(' ', '-');
            RigWeld? weld = joint.Joint is RigSlottedJoint slotted ? slotted.Weld : (joint.Joint as RigWeldedJoint)?.Weld;
            switch (joint.Joint)
            {
                case RigWeldedJoint or RigSlottedJoint when weld is not null:
                    string size = weld.Kind == WeldKind.Fillet ? $"throat {Readout.Text(weld.Throat, Dimension.Length, units)} (leg {Readout.Text(weld.Throat * Math.Sqrt(2), Dimension.Length, units)})" : "full penetration";
                    look("weld-" + id, $"welds of the {name}, {joints.Count()} places: all round, {size} by a gauge, no undercut, crater, cold lap or crack", "a run missing or short, any crack");
                    break;
                case RigBoltedJoint bolts:
                    look("bolts-" + id, $"bolts of the {name}: {bolts.Count} {bolts.Thread.Name} class {bolts.Class.Name} each end, marked so on the head, washers and full nuts, tightened to their torque", "a bolt without its mark");
                    break;
                case RigPinnedJoint pin:
                    look("pins-" + id, $"pins of the {name}: {Readout.Text(pin.Diameter, Dimension.Length, units)}, straight, held against coming out", "a bent pin");
                    break;
            }
        }

        if (check.Response.Plan.Rods.Count > 0)
            look("tie-rods", "tie rods: full nuts, two threads showing, tightened evenly to their torque; thread not cut or worn", "a nut that runs on with a spanner only at one spot");
    }
}
