using Ramwright.Frame;
using Ramwright.Presses;
using Ramwright.Stock;
using Ramwright.Strength;

namespace Ramwright.Ladders;

/// <summary>Uprights and columns of I section where a beam is welded to their face.</summary>
internal static class PanelRungs
{
    public static void Add(List<Rung> rungs, Rig rig, FrameResponse response)
    {
        PartialFactors factors = Factoring.Of(rig);
        JointRungs.Repeated(response, (name, joints) =>
        {
            PlanJoint joint = joints[0];
            if (joint.Joint is not RigWeldedJoint { Fit: BeamFit.Between or BeamFit.Over } welded || Column(joint.Onto.Shape) is not { } column
                || End(joint, welded) is not { } end)
                return;
            double fy = joint.Onto.Fy;
            WebPlate? plate = joint.Onto.Stiffened is not null && end.Flange is not null ? WebPlate.In(joint.Onto.Shape) : null;
            PanelStiffener? stiffener = joint.Onto is { Stiffened: { } ts, Shape: ISection s } && plate is not null
                ? new PanelStiffener(new PressedBeam(s.H, s.B, s.Tw, s.Tf, fy, fy), ts, plate.OnFlange)
                : null;
            Worst.Joint(response, joints, (i, at, w) =>
            {
                if (joint.Joint.Gusset is not null)
                    w?.Note("The gusset, which would lengthen the lever, is left out: the safe side.");
                if (end.Flange is null)
                    w?.Note("Half of the bar pushes on the web, half pulls: each is taken as spread evenly over its half.");
                Actions a = at.In(joints[i]);
                return UprightPanel.Gives(a.N, a.My, column, end, fy, stiffener, factors, w);
            })?.Into(rungs, new Words(Rung.IdOf(name) + "-panel", joint.Onto.Part, $"gives in its web or flange at the {name}", $"gives in its web or flange at the {name}"),
                RungGroup.Frame, Factoring.Load(rig), UprightPanel.Source);
            if (plate is null || joint.Onto.StiffenerWeld is not { Kind: WeldKind.Fillet } fillet)
                return;
            Worst.Joint(response, joints, (i, at, w) =>
            {
                Actions a = at.In(joints[i]);
                double f = UprightPanel.OfFlange(a.N, a.My, end, w), bare = UprightPanel.Bare(column, end, fy, w);
                return StiffenerWeld.Tears(f, bare, factors.M0, StiffenerWeld.Resistance(plate, fillet.Throat, joint.Onto.Fu, joint.Onto.Steel.BetaW ?? 1, w), factors, w);
            })?.Into(rungs, new Words(Rung.IdOf(name) + "-plates-weld", joint.Onto.Part, $"tears at its stiffening plates at the {name}", $"tears at its stiffening plates at the {name}"),
                RungGroup.Joints, Factoring.Break(rig), StiffenerWeld.Difference);
        });
    }

    private static JointColumn? Column(Shape shape) =>
        shape is ISection i ? new JointColumn(i.H, i.Tw, i.Tf, i.R, i.Properties.Avz) : null;

    private static BeamEnd? End(PlanJoint joint, RigWeldedJoint welded)
    {
        // a beam that lies over the upright's end has a free end beside it: the force spreads to one side only
        double spread = welded.Fit == BeamFit.Over ? 2.5 : 5;
        double welds = welded.Weld.Kind == WeldKind.Butt ? 0 : 2 * Math.Sqrt(2) * welded.Weld.Throat, fy = joint.Beam.Fy;
        return joint.Beam.Shape switch
        {
            ISection i => new BeamEnd(i.H - i.Tf, i.Tf + welds, spread, i.Tf, i.B, fy),
            Box b => new BeamEnd(b.H - b.Tf, b.Tf + welds, spread, b.Tf, b.B, fy),
            RectangularHollow r => new BeamEnd(r.H - r.T, r.T + welds, spread, r.T, r.B, fy),
            Flat f => new BeamEnd(2 * f.H / 3, f.H / 2 + welds / 2, 2.5, null, f.T, fy),
            _ => null,
        };
    }
}
