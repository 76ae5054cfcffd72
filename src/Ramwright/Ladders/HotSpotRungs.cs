using Ramwright.Frame;
using Ramwright.Geometry;
using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Solids;
using Ramwright.Stock;
using Ramwright.Strength;
using Ramwright.Workings;

namespace Ramwright.Ladders;

/// <summary>Cracks from the toes of welds by hot-spot stress, where stress factors of the joint were found from a solid of it and kept.</summary>
internal static class HotSpotRungs
{
    /// <summary>Ends of the names of these rungs, and of the rungs by plain stress at the same place.</summary>
    private const string Spot = "-hot-spot", OfFatigue = "-fatigue";

    /// <summary>Where the two ways differ by more than this, as a share, it is said.</summary>
    private const double Much = 0.25;

    /// <summary>The name of the rung by plain stress at the same place; null for any other rung.</summary>
    /// <param name="id">Name of a rung.</param>
    public static string? ByPlainStress(string id) => id.EndsWith(Spot + OfFatigue, StringComparison.Ordinal) ? id[..^(Spot + OfFatigue).Length] + OfFatigue : null;

    /// <summary>A member this many times as wide as what it is welded to hands its sideways bending over through a part of its width.</summary>
    private const double Wider = 1.2;

    /// <summary>Adds the rungs of a welded joint.</summary>
    public static void Add(FatigueList add, Rig rig, FrameResponse response, PlanJoint[] joints, string id, string name, RigWeld weld)
    {
        PlanJoint first = joints[0];
        if (rig.Springs is not { } springs || first.Joint.Gusset is not null)
            return;
        bool upper = IsUpper(first, response.Plan), over = first.Joint.Fit == BeamFit.Over;
        foreach (IGrouping<bool, RigToe> toes in (upper ? springs.Upper : springs.Lower).Toes.GroupBy(t => t.OnBeam))
        {
            // where a beam lies over, what ends at the joint is the upright
            bool ends = toes.Key != over;
            RigMember member = ends ? first.Beam : first.Onto;
            SectionProperties s = member.Shape.Strands[0].Shape.Properties, whole = member.Shape.Properties;
            double thick = toes.Max(t => t.Thickness), ks = HotSpotFatigue.Size(thick);
            string rung = id + (ends ? "-toe" : "-face");
            add.Stations(rung + Spot, $"hot spot at the toe of the weld on the {member.Part}, {name}", "", RungGroup.Joints, add.At(ends ? add.OfBeam(joints) : add.OfOnto(joints)),
                add.Strength(member.Fy, HotSpotFatigue.Category(weld.Kind == WeldKind.Butt, toes.Any(t => t.OnEdge)), null, ks), (solution, station, a, w) =>
                {
                    Vector at = response.Axes(station.Beam).At(station.X);
                    PlanJoint joint = joints.MinBy(j => (j.Centre - at).Length)!;
                    var through = JointFlow.Of(response, solution, joint, upper);
                    // beams take the ends of open sections as free to warp, a weld all round holds them
                    double warp = station.Warp > 0 ? 0 : WarpingTorsion.MomentHeld(s, response.Axes(station.Beam).Length);
                    double aside = (Math.Abs(a.Mz) + warp * Math.Abs(a.T)) * Math.Max(s.Left, s.Right) / s.Iz, W = whole.Iy / Math.Max(whole.Top, whole.Bottom);
                    (RigToe toe, ToeLine line) = toes.SelectMany(t => t.Lines.Select(l => (t, l))).MaxBy(p => Math.Abs(p.l.Stress(through.M, through.V, through.N)));
                    w?.Note($"Worst toe: {(toe.Inner ? "on the side of the frame's opening" : "on the side away from the frame's opening")}. M, V and N are what the {(over ? first.Onto : first.Beam).Part} "
                        + "does to its joint at the face where it enters: M stretches its inner face, V points away from the opening, N pulls. k_M (Pa per N·m), k_V and k_N (Pa per N) come from a solid "
                        + $"of this joint alone: stress {Reading(toe).Text}, carried on to the toe ({Reading(toe).Source}). Misalignment of the parts is not counted.");
                    if (ends && aside > 0 && Width(first.Beam) > Wider * Width(first.Onto))
                        w?.Note($"The {first.Beam.Part} is wider than the {first.Onto.Part} that it is welded to. With work off to the front a full solid of such a frame showed 1.6 times the stress reckoned here: "
                            + "look at ramwright solid FILE --all.");
                    if (ks < 1)
                        w?.Step("k_s", "for a wall thicker than 25 mm", "(0.025 / t)^0.3", ks, Dimension.Number, HotSpotFatigue.SizeSource, ("t", thick, Dimension.Length));
                    return (HotSpotFatigue.Range(line, through.M, through.V, through.N, W, aside, w), 0);
                });
            add.Compare(rung + Spot + OfFatigue, rung + OfFatigue, Much);
        }
    }

    /// <summary>What to say where welds of the frame could have hot spots whose stress factors are not kept; empty where there is nothing to say.</summary>
    public static string Unknown(PressCheck check)
    {
        RigSprings? springs = check.Rig.Springs;
        if (check.Rig.Frame is not (RigClosedFrame or RigOpenFrontFrame) || springs is not null && springs.Upper.Toes.Count + springs.Lower.Toes.Count > 0
            || !check.Response.Plan.Joints.Any(j => j.Joint is RigSlottedJoint or RigWeldedJoint { Gusset: null, Fit: not BeamFit.Lapped }))
        {
            return "";
        }

        // where no solid of the joints is to be had, or it shows none, nobody is sent to look for one
        return springs is null && JointBook.Missing(check.Rig) is null
            ? $"{ByTables} Hot spots are known once the joints have been solved as solid steel: ramwright solid FILE --keep-joints adds their rungs."
            : ByTables;
    }

    private const string ByTables = "Cracks at the welds' toes are reckoned from tables of details alone.";

    private static double Width(RigMember member) => member.Shape.Properties.Left + member.Shape.Properties.Right;

    private static ToeReading Reading(RigToe toe) => toe.OnEdge ? ToeReading.Edge : ToeReading.Face;

    private static bool IsUpper(PlanJoint joint, FramePlan plan) => joint.Centre.Z > plan.Joints.Max(j => j.Centre.Z) / 2;
}
