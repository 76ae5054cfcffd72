using Ramwright.Frame;
using Ramwright.Presses;
using Ramwright.Stock;
using Ramwright.Strength;
using Ramwright.Workings;

namespace Ramwright.Ladders;

/// <summary>Crown, bed, uprights, column, arms: each at its worst place in its worst load case.</summary>
internal static class MemberRungs
{
    private const double E = 210e9;

    public static void Add(List<Rung> rungs, Rig rig, FrameResponse response)
    {
        PartialFactors factors = Factoring.Of(rig);
        foreach (PlanPart part in response.Plan.Parts)
        {
            RigMember member = part.Member;
            Shape strand = member.Shape.Strands[0].Shape;
            SectionProperties full = strand.Properties;
            string id = Rung.IdOf(member.Part);
            string load = Factoring.Load(rig);
            var places = Places.Of(response, part.Stations);
            SectionWalls walls = SectionWalls.Of(strand);
            if (walls.WhyNot(member.Fy) is { } thin)
                throw new PressFaultsException([new Fault($"frame.{id}.section", thin, "a thicker wall")]);
            // what a class 4 section may be counted with, and as which class
            (SectionClass Class, double Fy) Counted(SectionWalls of, Actions a, Working? w)
            {
                (SectionClass its, double fy) = of.Counted(a, member.Fy, w);
                return (its == SectionClass.Four ? SectionClass.Three : its, fy);
            }

            Worst.Case(places, (_, a, w) => Counted(walls, a, w) is var c ? MemberSection.Yield(a, full, c.Fy, factors, c.Class, w) : null)
                ?.Into(rungs, new Words(id + "-bending", member.Part, "bends at the edge", "starts to bend for good"), RungGroup.Frame, load, MemberSection.YieldSource);

            Worst.Case(places, (_, a, w) => WebShear.Shear(a, full, member.Fy * walls.InShear(member.Fy, w), factors, w))
                ?.Into(rungs, new Words(id + "-shear", member.Part, "shears through its web", "shears through its web"), RungGroup.Frame, load, WebShear.Source);

            NetSectionRung(member.Net, PlanCut.Openings, "net-section", "gives where it is cut");
            NetSectionRung(member.JointNet, PlanCut.Joint, "joint-holes", "gives through its joint's holes");
            void NetSectionRung(Shape? net, PlanCut cut, string suffix, string what)
            {
                if (net is null)
                    return;
                Places there = places.CutBy(cut);
                Shape left = net.Strands[0].Shape;
                SectionProperties rest = left.Properties;
                SectionWalls thinned = SectionWalls.Of(left);
                Worst.Case(there, (_, a, w) => Counted(thinned, a, w) is var c ? NetSection.Yield(a, full, rest, c.Fy, factors, c.Class, w) : null)
                    ?.Into(rungs, new Words($"{id}-{suffix}", member.Part, what, what), RungGroup.Frame, load, MemberSection.YieldSource);
                Worst.Case(there, (_, a, w) => NetSection.Tension(a.N, full.A, rest.A, member.Fy, member.Fu, factors, w))
                    ?.Into(rungs, new Words($"{id}-{suffix}-pull", member.Part, "breaks through its holes", "breaks through its holes"), RungGroup.Frame,
                        Factoring.Break(rig), NetSection.TensionSource);
            }

            var runs = new StrandRuns(response, part);
            Worst.Case(places, (solution, station, a, w) =>
            {
                double fy = walls.Counted(a, member.Fy, w).Fy;
                return Tipping.Tips(a, full, runs.Chi(solution, station, fy, w), fy, factors, w);
            })?.Into(rungs, new Words(id + "-tipping", member.Part, "tips over sideways", "tips over sideways"), RungGroup.Frame, load, Tipping.Source);

            var column = new Column(part.Clear, part.Clear, strand.CurveY, strand.CurveZ);
            Worst.Case(places, (solution, station, a, w) =>
            {
                if (!(a.N < -1 / Limit.Farthest))
                    return null;
                double fy = walls.Counted(a, member.Fy, w).Fy, chi = runs.Chi(solution, station, fy, w);
                return ColumnBuckling.WithBending(a, full, chi < 1 ? column with { ChiLT = chi } : column, fy, factors, E, w);
            })?.Into(rungs, new Words(id + "-buckling", member.Part, "bows out sideways", "bows out sideways"), RungGroup.Frame, load, ColumnBuckling.BendingSource);
        }
    }
}
