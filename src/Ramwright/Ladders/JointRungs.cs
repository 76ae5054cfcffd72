using Ramwright.Frame;
using Ramwright.Geometry;
using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Strength;
using Ramwright.Workings;

namespace Ramwright.Ladders;

/// <summary>Welds, bolts and pins: each kind of joint at its worst corner in its worst load case.</summary>
internal static class JointRungs
{
    public static void Add(List<Rung> rungs, Rig rig, FrameResponse response)
    {
        PartialFactors factors = Factoring.Of(rig);
        Repeated(response, (name, joints) => Add(rungs, rig, response, joints, Rung.IdOf(name), name, factors));
    }

    /// <summary>Goes through the joints, those of one name together: left and right are the same joint repeated.</summary>
    /// <exception cref="PressFaultsException">A joint cannot hold what it is asked to; the fault names it.</exception>
    internal static void Repeated(FrameResponse response, Action<string, PlanJoint[]> each)
    {
        foreach (IGrouping<string, PlanJoint> alike in response.Plan.Joints.GroupBy(Name))
        {
            PlanJoint[] joints = [.. alike];
            try
            {
                each(alike.Key, joints);
            }
            catch (ArgumentException cannot) when (cannot is not ArgumentOutOfRangeException)
            {
                throw new PressFaultsException([new Fault(joints[0].Key, cannot.Message.Split(" (Parameter", 2)[0], "a joint that can hold the moment there")]);
            }
        }
    }

    private static void Add(
        List<Rung> rungs, Rig rig, FrameResponse response, PlanJoint[] joints, string id, string name, PartialFactors factors)
    {
        switch (joints[0].Joint)
        {
            case RigWeldedJoint welded:
                Weld(rungs, rig, response, joints, id, name, welded.Weld, factors);
                break;
            case RigSlottedJoint slotted:
                Weld(rungs, rig, response, joints, id, name, slotted.Weld, factors);
                break;
            case RigBoltedJoint bolted:
                Bolts(rungs, rig, response, joints, id, name, bolted, factors);
                if (bolted.EndPlate is { } end)
                    Weld(rungs, rig, response, joints, id + "-end-plate", "end plate of the " + name, end.Weld, factors, end);
                break;
            case RigPinnedJoint pinned:
                Pins(rungs, rig, response, joints, id, name, pinned, factors);
                break;
        }
    }

    /// <summary>Joints of one name are the same joint repeated: left and right.</summary>
    internal static string Name(PlanJoint joint)
    {
        int comma = joint.Name.IndexOf(',', StringComparison.Ordinal);
        return comma < 0 ? joint.Name : joint.Name[..comma];
    }

    private static void Weld(
        List<Rung> rungs, Rig rig, FrameResponse response, PlanJoint[] joints, string id, string name, RigWeld weld, PartialFactors factors, RigBoltedEnd? end = null)
    {
        WeldGroup[] groups = [.. joints.Select(j => JointWeld.Of(j, weld))];
        (double fu, double betaW, double fy) = end is null ? Weaker(joints[0]) : Weaker(joints[0].Beam, end);
        // a fillet anywhere in the group is the weaker kind
        bool butt = weld.Kind == WeldKind.Butt && joints[0].Joint.Gusset?.Weld.Kind != WeldKind.Fillet;
        if (!butt)
            LongEnough(groups[0], joints[0], name, weld.Throat, end is null ? ".weld" : ".end-plate.weld");
        Worst.Joint(response, joints, (i, at, w) =>
        {
            if (w is not null && JointWeld.PartOf(joints[i]) is { } part)
            {
                w.Take("l_b", $"edge of the {joints[i].Beam.Part}'s end that a torch reaches", part.Edge, Dimension.Length, WeldLanding.Source);
                w.Take("l_w", $"length of weld that finds steel on it and on the {joints[i].Onto.Part}", part.OnSteel, Dimension.Length, WeldLanding.Source);
            }

            return butt
                ? ButtWeld.Yield(groups[i], at.Force, at.Moment, at.At, fy, factors, w)
                : FilletWeld.Directional(groups[i], at.Force, at.Moment, at.At, fu, betaW, factors, w);
        })
            ?.Into(rungs, new Words(id + "-weld", $"weld of the {name}", "tears", "tears"), RungGroup.Joints,
                butt ? Factoring.Load(rig) : Factoring.Break(rig), butt ? ButtWeld.Source : FilletWeld.DirectionalSource);
    }

    /// <summary>A run all round is one weld; where the ends of it start and stop is not known, and the group's whole length is looked at.</summary>
    private static void LongEnough(WeldGroup group, PlanJoint joint, string name, double a, string key)
    {
        double length = group.Segments.Sum(s => (s.To - s.From).Length) / (joint.Joint is RigSlottedJoint || joint.Joint.Fit == BeamFit.Lapped ? 2 : 1);
        double least = FilletWeld.LeastLength(a);
        if (length < least)
        {
            throw new PressFaultsException([new Fault(joint.Key + key,
                new Remark($"the {name} has {{0}} of weld; a run under {{1}} must not carry load (EN 1993-1-8, 4.5.1)", Remark.Of(length, Dimension.Length), Remark.Of(least, Dimension.Length)),
                "a thicker bar or a longer weld")]);
        }
    }

    // a beam and the plate on its end
    private static (double Fu, double BetaW, double Fy) Weaker(RigMember beam, RigBoltedEnd end) =>
        (Math.Min(beam.Fu, end.Steel.Fu(end.Thickness)), Math.Max(beam.Steel.BetaW ?? 1.0, end.Steel.BetaW ?? 1.0), Math.Min(beam.Fy, end.Steel.Fy(end.Thickness)));

    /// <summary>The weaker of the parts joined: f_u, β_w, f_y.</summary>
    internal static (double Fu, double BetaW, double Fy) Weaker(PlanJoint joint)
    {
        RigMember weak = joint.Beam.Fu <= joint.Onto.Fu ? joint.Beam : joint.Onto;
        if (joint.Joint.Gusset is { } gusset)
        {
            return (Math.Min(weak.Fu, gusset.Fu), Math.Max(weak.Steel.BetaW ?? 1.0, gusset.Steel.BetaW ?? 1.0),
                Math.Min(gusset.Fy, Math.Min(joint.Beam.Fy, joint.Onto.Fy)));
        }

        // a steel outside the weldable grades gets the severest factor of table 4.1, and its own caution
        return (weak.Fu, weak.Steel.BetaW ?? 1.0, Math.Min(joint.Beam.Fy, joint.Onto.Fy));
    }

    private static void Bolts(
        List<Rung> rungs, Rig rig, FrameResponse response, PlanJoint[] joints, string id, string name, RigBoltedJoint bolted, PartialFactors factors)
    {
        BoltGroup group = JointBolts.Of(bolted);
        // plates that clasp each other hold the pull and the tilting themselves: the bolts of a lap only shear
        Actions Local(int i, JointEnd end) => bolted.Fit == BeamFit.Lapped
            ? end.In(joints[i]) with { N = 0, My = 0, Mz = 0 }
            : end.In(joints[i]);
        string broken = Factoring.Break(rig);
        void Add(string suffix, string what, Func<Actions, Working?, Limit?> check) =>
            Worst.Joint(response, joints, (i, end, w) => check(Local(i, end), w))
                ?.Into(rungs, new Words($"{id}-{suffix}", $"bolts of the {name}", what, what, Plural: true), RungGroup.Joints, broken, Bolt.Source);

        Add("bolt-shear", "shear", (a, w) => group.Shear(a, factors, w));
        if (bolted.Fit != BeamFit.Lapped)
        {
            Add("bolt-pull", "break in tension", (a, w) => group.Tension(a, factors, 1, w));
            Add("bolt-both", "break in shear and tension together", (a, w) => group.Combined(a, factors, 1, w));
        }

        if (bolted is { Engagement: { } mesh, Fit: not BeamFit.Lapped })
        {
            double fu = Math.Min(joints[0].Beam.Fu, joints[0].Onto.Fu);
            Worst.Joint(response, joints, (i, end, w) => NutAndThread.Strips(
                    Math.Max(0, group.MostPulled(Local(i, end), w)), RamRungs.Fit(bolted.Thread), mesh, bolted.Class.Rm, fu, factors, w))
                ?.Into(rungs, new Words($"{id}-bolt-thread", $"thread of the bolts of the {name}", "strips", "strips"), RungGroup.Joints, broken, NutAndThread.Source);
        }

        if (bolted is { Fit: BeamFit.Lapped, Friction: { } mu })
        {
            Worst.Joint(response, joints, (i, end, w) => group.Slips(Local(i, end), mu, w))
                ?.Into(rungs, new Words(id + "-slip", $"faces of the {name}", "slip", "slip", Plural: true), RungGroup.Stiffness,
                    $"{BoltGroup.SlipFactor} on the friction (EN 1993-1-8:2005, 2.2, table 2.1), none on the load: the bolts then bear", BoltGroup.SlipSource);
        }

        BoltedPlate plate = JointBolts.Plate(bolted, group, Math.Min(joints[0].Beam.Fu, joints[0].Onto.Fu));
        Add("bolt-bearing", "crush the edge of their holes", (a, w) => group.Bearing(a, plate, factors, w));
    }

    private static void Pins(
        List<Rung> rungs, Rig rig, FrameResponse response, PlanJoint[] joints, string id, string name, RigPinnedJoint pinned, PartialFactors factors)
    {
        double d = pinned.Diameter;
        var pin = new Pin(d, pinned.Steel.Fy(d), pinned.Steel.Fu(d), pinned.Middle, pinned.Outer, pinned.Gap, joints[0].Onto.Fy, joints[0].Beam.Fy);
        void Add(string suffix, string what, string factor, Func<double, Working?, Limit?> check) =>
            Worst.Joint(response, joints, (_, end, w) => check(end.Force.Length, w))
                ?.Into(rungs, new Words($"{id}-{suffix}", $"pin of the {name}", what, what), RungGroup.Joints, factor, Pin.Source);

        Add("pin-shear", "shears", Factoring.Break(rig), (f, w) => pin.Shear(f, factors, w));
        Add("pin-bearing", "crushes its hole", Factoring.Load(rig), (f, w) => pin.Bearing(f, factors, w));
        Add("pin-bending", "bends and shears", Factoring.Load(rig), (f, w) => pin.Bending(f, factors, w));
    }
}
