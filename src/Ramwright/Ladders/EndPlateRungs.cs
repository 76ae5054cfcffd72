using Ramwright.Frame;
using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Stock;
using Ramwright.Strength;
using Ramwright.Workings;

namespace Ramwright.Ladders;

/// <summary>Bolted joints face to face: the end plate, and the flange it is bolted to, bent by the row of bolts that is pulled most.</summary>
/// <remarks>
/// Two bolts a row, one on each side of the web: a T-stub with the web as its stem. Bolts in one line, and webs other than that of an
/// I, are not looked at. Each row for itself; where rows stand close their pitch bounds what belongs to one.
/// </remarks>
internal static class EndPlateRungs
{
    private static readonly Citation Row = Citation.Mechanics("two bolts a row, each pulled alike");

    public static void Add(List<Rung> rungs, Rig rig, FrameResponse response)
    {
        PartialFactors factors = Factoring.Of(rig);
        JointRungs.Repeated(response, (name, joints) =>
        {
            PlanJoint joint = joints[0];
            if (joint.Joint is not RigBoltedJoint { Fit: not BeamFit.Lapped, Columns.Along: 2 } bolted)
                return;
            string id = Rung.IdOf(name);
            BoltGroup group = JointBolts.Of(bolted);
            if (joint.Onto.Shape is ISection onto)
                Bent(id + "-flange", joint.Onto.Part, $"bends at its flange beside the bolts of the {name}", onto, onto.R, onto.Tf, joint.Onto.Fy, double.PositiveInfinity);
            if (joint.Beam.Shape is ISection beam && bolted.EndPlate is { } plate)
                Bent(id + "-end-plate", $"end plate of the {name}", "bends beside its bolts", beam, 0, plate.Thickness, plate.Steel.Fy(plate.Thickness), beam.H);

            void Bent(string rung, string part, string what, ISection section, double root, double t, double fy, double room)
            {
                // the end plate is taken as wide as the beam
                double m = (bolted.Pitch - section.Tw) / 2 - 0.8 * root, e = (section.B - bolted.Pitch) / 2;
                if (!(m > 0 && e > 0))
                    return;
                double belongs = Math.Min(bolted.Columns.Up > 1 ? bolted.Gauge : room, 4 * m + 1.25 * e);
                Worst.Joint(response, joints, (i, end, w) =>
                {
                    double Ft = group.MostPulled(end.In(joints[i]), w);
                    if (!(2 * Ft > 1 / Limit.Farthest))
                        return null;
                    w?.Step("m", "from the bolts to the web, less its root", "(w - t_w) / 2 - 0.8 r", m, Dimension.Length, TStub.LengthSource,
                        ("w", bolted.Pitch, Dimension.Length), ("t_w", section.Tw, Dimension.Length), ("r", root, Dimension.Length));
                    w?.Step("e", "from the bolts to the edge", "(b_f - w) / 2", e, Dimension.Length, TStub.LengthSource,
                        ("b_f", section.B, Dimension.Length), ("w", bolted.Pitch, Dimension.Length));
                    (double l1, double l2) = TStub.Lengths(m, e, belongs, w);
                    w?.Step("f", "pull of the row, per newton", "2 F_t", 2 * Ft, Dimension.Force, Row, ("F_t", Ft, Dimension.Force));
                    return new TStub(m, e, l1, l2, t, fy).Gives(2 * Ft, 2 * group.Bolt.Tension(w), factors, w);
                })?.Into(rungs, new Words(rung, part, what, what), RungGroup.Joints, Factoring.Break(rig), TStub.Source);
            }
        });
    }
}
