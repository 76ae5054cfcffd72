using Ramwright.Frame;
using Ramwright.Geometry;
using Ramwright.Ladders;
using Ramwright.Presses;
using Ramwright.Stock;
using Ramwright.Strength;

namespace Ramwright.Fabrication.Welding;

/// <summary>Every seam of a press that its file gives, and those it leaves open.</summary>
/// <param name="Given">Seams with a size.</param>
/// <param name="Open">Welds that the press needs and the file gives no size for, in words.</param>
public sealed record Seams(IReadOnlyList<Seam> Given, IReadOnlyList<string> Open)
{
    /// <summary>Goes through a press.</summary>
    /// <exception cref="PressFaultsException">A joint whose weld cannot be laid out.</exception>
    public static Seams Of(PressCheck check)
    {
        ArgumentNullException.ThrowIfNull(check);
        RigWelder welder = check.Rig.Welding;
        var seams = new List<Seam>();
        var open = new List<string>();
        JointRungs.Repeated(check.Response, (name, joints) => Joint(seams, name, joints, welder));
        if (check.Rig.Cylinder.Mount is RigCradleMount cradle)
            seams.Add(Cradle(cradle, welder));
        if (check.Rig.Ram?.AntiTwist is { Weld: { } arm, Depth: > 0 } twist)
            seams.Add(Arm(twist, arm, check.Rig.Cylinder, welder));
        foreach (RigMember member in check.Response.Plan.Parts.Select(p => p.Member).Where(m => m.Stiffened is not null).DistinctBy(m => m.Part))
        {
            if (Stiffener(check, member, welder) is { } seam)
                seams.Add(seam);
            else
                open.Add($"stiffening plates in the {member.Part}");
        }

        return new Seams(seams, [.. open.Distinct()]);
    }

    private static void Joint(List<Seam> seams, string name, PlanJoint[] joints, RigWelder welder)
    {
        PlanJoint first = joints[0];
        switch (first.Joint)
        {
            case RigWeldedJoint welded:
                PlanJoint bare = first with { Joint = welded with { Gusset = null } };
                seams.Add(Edge(bare, joints.Length, name, welded.Weld, welded.Fit == BeamFit.Lapped ? "round the lap, on both faces" : "all round where it can be reached", welder, 2));
                if (welded.Gusset is { } gusset)
                    seams.Add(Gusset(first, joints.Length, name, gusset, welder));
                break;
            case RigSlottedJoint slotted:
                seams.Add(Edge(first, joints.Length, name, slotted.Weld, "round the slot, on both faces of the column", welder, 2));
                break;
            case RigBoltedJoint { EndPlate: { } end }:
                seams.Add(EndPlate(first, joints.Length, name, end, welder));
                break;
        }
    }

    private static Seam Edge(PlanJoint joint, int count, string name, RigWeld weld, string where, RigWelder welder, int ways)
    {
        double length = JointWeld.Of(joint, weld).Segments.Sum(s => s.Length);
        return new Seam
        {
            Name = name,
            Key = joint.Key + ".weld",
            Where = where,
            Kind = weld.Kind,
            Throat = weld.Throat,
            Length = length,
            Count = count,
            Standing = KnownSteel.Of(joint.Beam.Part, joint.Beam.Steel, joint.Beam.Shape.Properties.Thickness, welder),
            Through = KnownSteel.Of(joint.Onto.Part, joint.Onto.Steel, joint.Onto.Shape.Properties.Thickness, welder),
            Ways = [joint.Beam.Shape.Properties.A, .. Enumerable.Repeat(joint.Onto.Shape.Properties.A, ways)],
            Outlines = [Seam.OutlineOf(joint.Beam.Shape), .. Enumerable.Repeat(Seam.OutlineOf(joint.Onto.Shape), ways)],
        };
    }

    private static Seam EndPlate(PlanJoint joint, int count, string name, RigBoltedEnd end, RigWelder welder)
    {
        SectionProperties beam = joint.Beam.Shape.Properties;
        double plate = end.Thickness * beam.Width, round = 2 * (end.Thickness + beam.Width);
        return Edge(joint, count, "end plate of the " + name, end.Weld, "round the beam's end, on the plate", welder, 2) with
        {
            Key = joint.Key + ".end-plate.weld",
            Through = KnownSteel.Of($"end plate of the {joint.Beam.Part}", end.Steel, end.Thickness, welder),
            Ways = [beam.A, plate, plate],
            Outlines = [Seam.OutlineOf(joint.Beam.Shape), round, round],
        };
    }

    // each plate is welded along web and flanges, on both faces
    private static Seam? Stiffener(PressCheck check, RigMember member, RigWelder welder)
    {
        Piece[] pieces = [.. FrameBody.Of(check.Rig).Pieces.Where(p => p is not GussetPlate && p.Member.Part == member.Part)];
        if (member is not { Stiffened: { } t, StiffenerWeld: { } weld } || pieces.Length == 0 || WebPlate.In(pieces[0].Shape) is not { } plate)
            return null;
        double wide = plate.Width;
        return new Seam
        {
            Name = $"stiffening plates in the {member.Part}",
            Key = $"frame.{(member.Part == FrameWords.Crown(check.Rig.Frame) ? "crown" : member.Part == FrameWords.Bed(check.Rig.Frame) ? "bed" : member.Part.Replace(' ', '-'))}.stiffened.weld",
            Where = weld.Kind == WeldKind.Butt ? "along web and flanges" : "along web and flanges, on both faces of each plate",
            Kind = weld.Kind,
            Throat = weld.Throat,
            Length = (weld.Kind == WeldKind.Butt ? 1 : 2) * (2 * plate.OnFlange + plate.OnWeb),
            Count = Stiffeners.Places(check.Response.Plan, member.Part, pieces.Length) * plate.Sides,
            Standing = KnownSteel.Of($"stiffener of the {member.Part}", member.Steel, t, welder),
            Through = KnownSteel.Of(member.Part, member.Steel, member.Shape.Properties.Thickness, welder),
            Ways = [t * wide, member.Shape.Properties.A / 2, member.Shape.Properties.A / 2],
            Outlines = [2 * (t + wide), Seam.OutlineOf(member.Shape) / 2, Seam.OutlineOf(member.Shape) / 2],
        };
    }

    private static Seam Gusset(PlanJoint joint, int count, string name, RigGusset gusset, RigWelder welder)
    {
        int sides = gusset.Weld.Kind == WeldKind.Butt ? 1 : 2;
        double plate = gusset.Thickness * Math.Min(gusset.LegAlong, gusset.LegUp);
        return new Seam
        {
            Name = "gussets of the " + name,
            Key = joint.Key + ".gusset.weld",
            Where = gusset.Weld.Kind == WeldKind.Butt ? "through the plate along both legs" : "along both legs, on both faces of each plate",
            Kind = gusset.Weld.Kind,
            Throat = gusset.Weld.Throat,
            Length = sides * gusset.Count * (gusset.LegAlong + gusset.LegUp),
            Count = count,
            Standing = KnownSteel.Of("gusset", gusset.Steel, gusset.Thickness, welder),
            Through = Thicker(joint, welder),
            Ways = [gusset.Count * plate, joint.Onto.Shape.Properties.A, joint.Onto.Shape.Properties.A],
            Outlines = [gusset.Count * 2 * Math.Min(gusset.LegAlong, gusset.LegUp), Seam.OutlineOf(joint.Onto.Shape), Seam.OutlineOf(joint.Onto.Shape)],
        };
    }

    private static KnownSteel Thicker(PlanJoint joint, RigWelder welder)
    {
        RigMember m = joint.Onto.Shape.Properties.Thickness >= joint.Beam.Shape.Properties.Thickness ? joint.Onto : joint.Beam;
        return KnownSteel.Of(m.Part, m.Steel, m.Shape.Properties.Thickness, welder);
    }

    private static Seam Cradle(RigCradleMount cradle, RigWelder welder)
    {
        int sides = cradle.Weld.Kind == WeldKind.Butt ? 1 : 2;
        double width = Math.Min(cradle.CrossWidth, cradle.CheekWidth), cross = cradle.Cross * cradle.CrossWidth, cheek = cradle.Cheek * cradle.CheekWidth;
        return new Seam
        {
            Name = "cradle of the cylinder",
            Key = "cylinder.mount.weld",
            Where = "cross plate to each cheek, above and below it",
            Kind = cradle.Weld.Kind,
            Throat = cradle.Weld.Throat,
            Length = sides * width,
            Count = 2,
            Standing = KnownSteel.Of("cross plate", cradle.Steel, cradle.Cross, welder),
            Through = KnownSteel.Of("cheek", cradle.Steel, cradle.Cheek, welder),
            Ways = [cross, cheek, cheek],
            Outlines = [2 * (cradle.Cross + cradle.CrossWidth), 2 * (cradle.Cheek + cradle.CheekWidth), 2 * (cradle.Cheek + cradle.CheekWidth)],
        };
    }

    private static Seam Arm(RigAntiTwist twist, RigWeld weld, RigCylinder cylinder, RigWelder welder) => new()
    {
        Name = "anti-twist arm",
        Key = "ram.anti-twist.weld",
        Where = "round the arm, to its collar or clamp: never to the rod itself",
        Kind = weld.Kind,
        Throat = weld.Throat,
        Length = 2 * (twist.Height + twist.Depth),
        Count = 1,
        Standing = KnownSteel.Of("anti-twist arm", twist.Steel, Math.Min(twist.Height, twist.Depth), welder),
        Through = KnownSteel.Of("collar of the anti-twist arm", twist.Steel, Math.Min(twist.Height, twist.Depth), welder),
        Ways = [twist.Height * twist.Depth, Math.PI * cylinder.Rod * twist.Depth / 2],
        Outlines = [2 * (twist.Height + twist.Depth), Math.PI * cylinder.Rod],
    };
}
