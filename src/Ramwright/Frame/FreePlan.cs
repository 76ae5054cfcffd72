using Ramwright.Geometry;
using Ramwright.Presses;

namespace Ramwright.Frame;

/// <summary>Any frame, bar for bar as it is described: centre lines from point to point.</summary>
internal static class FreePlan
{
    public static FramePlan Of(RigFreeFrame frame, Rig rig)
    {
        var plan = new PlanBuilder();
        foreach (RigPoint point in frame.Points)
            plan.Node(point.Name, point.At);

        var parts = new List<PlanPart>();
        var joints = new List<PlanJoint>();
        for (int i = 0; i < frame.Bars.Count; i++)
        {
            RigBar bar = frame.Bars[i];
            Vector from = frame.Points[bar.From].At, to = frame.Points[bar.To].At;
            double length = (to - from).Length;
            int[] beams = plan.Beam(bar.Member, bar.From, bar.To, bar.Depth, new Twist(length, Cantilever: false), holdStart: Hold(bar.FromJoint), holdEnd: Hold(bar.ToJoint));
            parts.Add(new PlanPart(bar.Member, beams, length,
            [
                .. plan.At(beams, 0, $"at {frame.Points[bar.From].Name}", PlanCut.Both, true),
                .. plan.At(beams, length / 2, "half way along", PlanCut.Openings, true),
                .. plan.At(beams, length, $"at {frame.Points[bar.To].Name}", PlanCut.Both, true),
            ]));
            Vector x = (to - from).Unit, y = bar.Depth.Cross(x).Unit, z = x.Cross(y);
            Join(bar, i, bar.FromJoint, "from-joint", bar.From, 0, x, y, z, beams);
            Join(bar, i, bar.ToJoint, "to-joint", bar.To, length, x, y, z, beams);
        }

        void Join(RigBar bar, int number, RigJoint? joint, string key, int at, double along, Vector x, Vector y, Vector z, int[] beams)
        {
            if (joint is null)
                return;
            RigBar onto = frame.Bars.First(o => o != bar && (o.From == at || o.To == at));
            joints.Add(new PlanJoint($"{bar.Member.Part} joint at {frame.Points[at].Name}", $"frame.bars.{number}.{key}", joint, bar.Member, onto.Member, beams, along,
                frame.Points[at].At, x, y, z)
            { Face = FaceOf(frame, onto, along > 0 ? -x : x) });
        }

        Vector upper = frame.Points[frame.CylinderAt].At, lower = frame.Points[frame.WorkAt].At;
        // the faces of bars without a drawing are not known: where ram and work meet is told by daylight and drop alone
        double contact = Math.Max(lower.Z, upper.Z - frame.RamDrop - rig.Cylinder.Stroke);
        var loads = new UnitLoads(upper, lower, new Vector(lower.X, lower.Y, contact));
        LoadCase[] cases =
        [
            .. loads.Cases(rig.Loading).Select(pair => new LoadCase(
                pair.Name,
                [new NodalLoad(frame.CylinderAt, pair.UpperForce, pair.UpperMoment), new NodalLoad(frame.WorkAt, pair.LowerForce, pair.LowerMoment)],
                [])),
        ];
        Support[] held = [.. frame.Points.Select((p, i) => (p, i)).Where(t => t.p.Held).Select(t => new Support(t.i, true, true, true, true, true, true))];
        return new FramePlan(
            plan.Model(held.Length > 0 ? held : [new Support(frame.WorkAt, true, true, true, true, true, true)]),
            cases, parts, joints, Upper: frame.CylinderAt, Lower: frame.WorkAt,
            [
                "The frame is taken bar for bar as described, on centre lines from point to point; ends without a joint are taken as rigid, and what joins them is not checked.",
                "The ram's force acts at two points.",
                UnitLoads.InWords(rig.Loading),
                .. frame.Horizontal ? (string[])[] : ["Weight is left out: it is small beside the ram force."],
            ]);
    }

    // only where the two meet square
    private static PlanFace? FaceOf(RigFreeFrame frame, RigBar onto, Vector away)
    {
        Vector x = (frame.Points[onto.To].At - frame.Points[onto.From].At).Unit, y = onto.Depth.Cross(x).Unit;
        return Math.Abs(x.Dot(away)) < 1e-6 ? new PlanFace(y, x.Cross(y), away) : null;
    }

    private static EndFixity Hold(RigJoint? joint) => joint is RigPinnedJoint ? EndFixity.PinnedY : EndFixity.Rigid;
}
