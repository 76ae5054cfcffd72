using Ramwright.Frame;
using Ramwright.Presses;
using Ramwright.Stock;
using Ramwright.Strength;

namespace Ramwright.Ladders;

/// <summary>Inner corners of frames in one piece.</summary>
internal static class CornerRungs
{
    public static void Add(List<Rung> rungs, Rig rig, FrameResponse response)
    {
        PartialFactors factors = Factoring.Of(rig);
        foreach ((RigMember member, RigJoint joint, bool insideIsTop, bool all) in Corners(rig))
        {
            if (joint is not RigOnePieceJoint { Radius: var r })
                continue;
            PlanPart part = response.Plan.Parts.First(p => p.Member.Part == member.Part);
            var there = Places.Of(response, part.Stations.Where(s => all || s.Cut is PlanCut.Joint or PlanCut.Both));
            Shape strand = member.Shape.Strands[0].Shape;
            string id = Rung.IdOf(member.Part) + "-corner";
            if (InnerCorner.Curved(strand, r) is { } curved)
            {
                Worst.Case(there, (_, a, w) =>
                {
                    w?.Note("Round an inner corner a beam is stressed higher inside than a straight one. Moments out of its plane are in the bending of the part, not here.");
                    return CurvedBeam.Yield(curved, a.N, insideIsTop ? a.My : -a.My, member.Fy, factors, w);
                })?.Into(rungs, new Words(id, member.Part, "yields inside its corner", "yields inside its corner"), RungGroup.Frame,
                    Factoring.Load(rig), CurvedBeam.Source);
                continue;
            }

            Worst.Case(there, (_, a, w) =>
            {
                if (w is not null)
                {
                    w.Note("The corner is sharp: a notch. The limit is the nominal one of a straight beam; the peak yields at once, harmless if pressed once, "
                        + "but a crack starts there with many squeezes. Cut it with a radius of a quarter of the depth or more. The next line is the least of the peak.");
                    InnerCorner.Notch(strand.Properties.Height, r, w);
                }

                return MemberSection.Yield(a, strand.Properties, member.Fy, factors, w: w);
            })?.Into(rungs, new Words(id, member.Part, "yields at its sharp corner (nominal)", "yields at its sharp corner (nominal)"), RungGroup.Frame,
                Factoring.Load(rig), MemberSection.YieldSource);
        }
    }

    private static IEnumerable<(RigMember Member, RigJoint Joint, bool InsideIsTop, bool All)> Corners(Rig rig) => rig.Frame switch
    {
        // crown and uprights have their inner face below, the bed above; a column has it in front, which is its top
        RigClosedFrame c => [(c.Crown, c.CrownJoint, false, false), (c.Upright, c.CrownJoint, false, false), (c.Bed, c.BedJoint, true, false)],
        RigOpenFrontFrame o => [(o.Column, o.ArmJoint, true, false), (o.UpperArm, o.ArmJoint, false, true), (o.LowerArm, o.ArmJoint, true, true)],
        _ => [],
    };
}
