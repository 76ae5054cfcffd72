using Ramwright.Frame;
using Ramwright.Geometry;
using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Stock;
using Ramwright.Strength;
using Ramwright.Workings;

namespace Ramwright.Ladders;

/// <summary>Cracks: the ram force at which a weld, hole, thread or edge has used up the wanted squeezes.</summary>
/// <remarks>Every squeeze is taken at its full force and in the load case that is worst for the detail, which is on the safe side for work that varies.</remarks>
internal static class FatigueRungs
{
    public static void Add(List<Rung> rungs, Rig rig, FrameResponse response)
    {
        var add = new FatigueList(rungs, rig, response);
        foreach (PlanPart part in response.Plan.Parts)
        {
            Member(add, part);
            WebAsideOf(add, rig, response, part);
        }

        JointRungs.Repeated(response, (name, joints) =>
        {
            string id = Rung.IdOf(name.EndsWith(" joint", StringComparison.Ordinal) ? name[..^6] : name);
            switch (joints[0].Joint)
            {
                case RigWeldedJoint welded:
                    Weld(add, joints, id, name, welded.Weld);
                    break;
                case RigSlottedJoint slotted:
                    Weld(add, joints, id, name, slotted.Weld);
                    break;
                case RigBoltedJoint bolted:
                    Bolts(add, joints, id, name, bolted);
                    if (bolted.EndPlate is { } end)
                        EndPlate(add, joints, id + "-end-plate", "end plate of the " + name, end);
                    break;
                case RigPinnedJoint pinned:
                    Pins(add, joints, id, name, pinned);
                    break;
            }
        });
    }

    private static void Member(FatigueList add, PlanPart part)
    {
        RigMember member = part.Member;
        Shape strand = member.Shape.Strands[0].Shape;
        SectionProperties full = strand.Properties;
        string id = Rung.IdOf(member.Part);
        Places places = add.At(part.Stations);

        DetailCategory plain = strand switch
        {
            Box => DetailCategory.LongWeld,
            Flat => DetailCategory.CutEdge,     // a bar, or a strip cut from plate: the file does not tell
            _ => DetailCategory.Rolled,
        };
        add.Stations(id, member.Part, "at its edge", RungGroup.Frame, places, add.Strength(member.Fy, plain, DetailCategory.RolledShear),
            (_, a, w) => MemberFatigue.Edge(a, full, w));

        Holes(member.Net, PlanCut.Openings, "openings", "where it is cut", DetailCategory.Hole);
        // a slot that is welded all round is judged as the part beside a weld, with its joint
        if (!add.SlottedInto(member))
            Holes(member.JointNet, PlanCut.Joint, "holes", "through its joint's holes", DetailCategory.BoltHole);

        void Holes(Shape? net, PlanCut cut, string suffix, string where, DetailCategory detail)
        {
            if (net is null)
                return;
            SectionProperties rest = net.Strands[0].Shape.Properties;
            add.Stations($"{id}-{suffix}", member.Part, where, RungGroup.Frame, places.CutBy(cut), add.Strength(member.Fy, detail), (_, a, w) => (MemberFatigue.Net(a, full, rest, w), 0));
        }
    }

    /// <summary>The web of an I under the ram force: work off to its side bends it beside the flange, unless plates stand there.</summary>
    private static void WebAsideOf(FatigueList add, Rig rig, FrameResponse response, PlanPart part)
    {
        (RigMember? upper, RigMember? lower, double between) = rig.Frame switch
        {
            RigClosedFrame c => (c.Crown, c.Bed, c.Width),
            RigTieRodFrame { CrownPlate: null, BedPlate: null } t => (t.Crown, t.Bed, t.RodsAcross),
            RigOpenFrontFrame o => (o.UpperArm, o.LowerArm, o.ArmReach),
            _ => ((RigMember?)null, (RigMember?)null, 0.0),
        };
        if (part.Member is not { Stiffened: null, Shape: ISection shape } member || member.Part != upper?.Part && member.Part != lower?.Part)
            return;
        int node = member.Part == upper?.Part ? response.Plan.Upper : response.Plan.Lower;
        PlanStation[] there = [part.Stations[0] with { Where = "" }];
        add.Stations(Rung.IdOf(member.Part) + "-web-aside", member.Part, "in its web beside the flange", RungGroup.Frame, add.At(there), add.Strength(member.Fy, DetailCategory.Rolled),
            (solution, station, _, w) =>
            {
                Vector along = response.Axes(station.Beam).X;
                double T = solution.Case.OnNodes.Where(l => l.Node == node).Sum(l => l.Moment.Dot(along));
                w?.Note("Plates welded beside the web under the force (stiffened) take this bending off it.");
                return (WebAside.Stress(shape, between, T, w), 0);
            });
    }

    private static void Weld(FatigueList add, PlanJoint[] joints, string id, string name, RigWeld weld)
    {
        double fy = Math.Min(joints[0].Beam.Fy, joints[0].Onto.Fy);
        bool fillet = weld.Kind == WeldKind.Fillet || joints[0].Joint.Gusset?.Weld.Kind == WeldKind.Fillet;
        if (fillet)
            Root(add, joints, id, name, weld, fy);

        Beside(add, joints, id, name, legs: fillet ? 2 * Math.Sqrt(2) * weld.Throat : 0);
        add.HotSpots(joints, id, name, weld);
    }

    private static void Root(FatigueList add, PlanJoint[] joints, string id, string name, RigWeld weld, double fy)
    {
        WeldGroup[] groups = [.. joints.Select(j => JointWeld.Of(j, weld))];
        FatigueStrength root = add.Strength(fy, DetailCategory.Root, DetailCategory.FilletShear);
        add.Joint(id + "-root", $"weld of the {name}", "from its root", joints, root,
            (i, end, w) => WeldFatigue.Root(groups[i], end.Force, end.Moment, end.At, root, w));
    }

    /// <summary>The weld of a beam to the plate on its end; the plate itself is held to its yield lines, and its bolts stand beside.</summary>
    private static void EndPlate(FatigueList add, PlanJoint[] joints, string id, string name, RigBoltedEnd end)
    {
        RigMember beam = joints[0].Beam;
        bool fillet = end.Weld.Kind == WeldKind.Fillet;
        if (fillet)
            Root(add, joints, id, name, end.Weld, Math.Min(beam.Fy, end.Steel.Fy(end.Thickness)));
        if (joints[0].Joint.Gusset is not null)
            return;
        double legs = fillet ? 2 * Math.Sqrt(2) * end.Weld.Throat : 0;
        add.Stations(id + "-toe", $"{beam.Part} beside the weld of the {name}", "", RungGroup.Joints, add.At(add.OfBeam(joints)),
            add.Strength(beam.Fy, DetailCategory.Toe(end.Thickness + legs, beam.Shape.Properties.Thickness)), Toe(beam));
    }

    /// <summary>Both parts beside their weld. The length of the other part is all of its depth: nothing is known of stiffeners that would shorten it.</summary>
    private static void Beside(FatigueList add, PlanJoint[] joints, string id, string name, double legs)
    {
        PlanJoint joint = joints[0];
        DetailCategory onBeam = joint.Joint.Fit == BeamFit.Lapped
            ? DetailCategory.LapOver
            : DetailCategory.Toe(joint.Onto.Shape.Properties.Height + legs, joint.Beam.Shape.Properties.Thickness);
        DetailCategory onOnto = DetailCategory.Toe(joint.Beam.Shape.Properties.Height + legs, joint.Onto.Shape.Properties.Thickness);
        if (joint.Joint.Gusset is { } gusset)
        {
            // both parts are looked at where the gusset ends: there it is an attachment along them
            double along = gusset.Square(joint.Joint.Fit), across = gusset.InPlane(joint.Joint.Fit);
            add.Stations(id + "-toe", $"{joint.Beam.Part} at the end of the gusset of the {name}", "", RungGroup.Joints, add.At(add.OfBeam(joints)),
                add.Strength(joint.Beam.Fy, DetailCategory.Gusset(along)), Toe(joint.Beam));
            add.Stations(id + "-face", $"{joint.Onto.Part} at the end of the gusset of the {name}", "", RungGroup.Joints, add.At(add.OfOnto(joints)),
                add.Strength(joint.Onto.Fy, DetailCategory.Gusset(across)), Toe(joint.Onto));
            return;
        }

        add.Stations(id + "-toe", $"{joint.Beam.Part} beside the weld of the {name}", "", RungGroup.Joints, add.At(add.OfBeam(joints)), add.Strength(joint.Beam.Fy, onBeam), Toe(joint.Beam));
        add.Stations(id + "-face", $"{joint.Onto.Part} beside the weld of the {name}", "", RungGroup.Joints, add.At(add.OfOnto(joints)), add.Strength(joint.Onto.Fy, onOnto), Toe(joint.Onto));
    }

    private static Func<PlanStation, Actions, Working?, (double, double)> Toe(RigMember member) => (station, a, w) =>
    {
        SectionProperties full = member.Shape.Strands[0].Shape.Properties;
        Shape? net = station.Cut switch
        {
            PlanCut.Both => member.JointNet ?? member.Net,
            PlanCut.Joint => member.JointNet,
            PlanCut.Openings => member.Net,
            _ => null,
        };
        return (net is null ? MemberFatigue.Direct(a, full, w) : MemberFatigue.Net(a, full, net.Strands[0].Shape.Properties, w), 0);
    };

    private static void Bolts(FatigueList add, PlanJoint[] joints, string id, string name, RigBoltedJoint bolted)
    {
        BoltGroup group = JointBolts.Of(bolted);
        double fyb = group.Bolt.Class.Fyb, As = bolted.Thread.As;
        bool lapped = bolted.Fit == BeamFit.Lapped;
        Actions Local(int i, JointEnd end) => lapped ? end.In(joints[i]) with { N = 0, My = 0, Mz = 0 } : end.In(joints[i]);

        // the plane of shear may cross the thread, so its stress area stands for the shank's
        add.Joint(id + "-bolt", $"bolts of the {name}", "in shear", joints, add.Strength(fyb, null, DetailCategory.BoltShear), (i, end, w) =>
        {
            double F = group.WorstShear(Local(i, end), w), tau = F / (group.ShearPlanes * As);
            w?.Step("Δτ_1", "shear range of each plane for one newton", "F_v / (n_s A_s)", tau, Dimension.Stress, DetailCategory.BoltShear.Source,
                ("F_v", F, Dimension.Force), ("n_s", group.ShearPlanes, Dimension.Count), ("A_s", As, Dimension.Area));
            return (0, tau);
        }, plural: true);
        if (lapped)
            return;
        double ks = DetailCategory.ThreadSize(bolted.Thread.D);
        add.Joint(id + "-thread", $"bolts of the {name}", "in their thread", joints, add.Strength(fyb, DetailCategory.Thread, null, ks), (i, end, w) =>
        {
            double F = Math.Max(0, group.WorstPull(Local(i, end), w)), sigma = F / As;
            w?.Step("Δσ_1", "range in the thread for one newton", "max(F_t, 0) / A_s", sigma, Dimension.Stress, DetailCategory.Thread.Source,
                ("F_t", F, Dimension.Force), ("A_s", As, Dimension.Area));
            return (sigma, 0);
        }, plural: true);
    }

    private static void Pins(FatigueList add, PlanJoint[] joints, string id, string name, RigPinnedJoint pinned)
    {
        double A = Math.PI / 4 * pinned.Diameter * pinned.Diameter;
        add.Joint(id + "-pin", $"pin of the {name}", "in shear", joints, add.Strength(pinned.Steel.Fy(pinned.Diameter), null, DetailCategory.BoltShear), (_, end, w) =>
        {
            double F = end.Force.Length, tau = F / (2 * A);
            w?.Step("Δτ_1", "shear range of each plane for one newton", "F / (2 A)", tau, Dimension.Stress, DetailCategory.BoltShear.Source,
                ("F", F, Dimension.Force), ("A", A, Dimension.Area));
            return (0, tau);
        });
    }
}
