using Ramwright.Frame;
using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Stock;
using Ramwright.Strength;
using Ramwright.Workings;

namespace Ramwright.Ladders;

/// <summary>What the nuts of tie rods press on: a plate that they dent or are pulled through, or a washer across the gap of a pair.</summary>
/// <remarks>The pull of one newton at the ram is looked at; a preload that dents the plate by itself is told of as a caution.</remarks>
internal static class RodNutRungs
{
    public static void Add(List<Rung> rungs, Rig rig, FrameResponse response)
    {
        if (rig.Frame is not RigTieRodFrame frame || response.Plan.Rods.Count == 0)
            return;
        PartialFactors factors = Factoring.Of(rig);
        RodSupport nut = RodSupport.Of(frame.Rod);
        foreach ((RigMember member, RigEndPlate? plate) in ((RigMember, RigEndPlate?)[])[(frame.Crown, frame.CrownPlate), (frame.Bed, frame.BedPlate)])
        {
            string id = Rung.IdOf(member.Part);
            if (plate is not null)
            {
                TieRodRungs.Tightest(response, (a, w) => NutBearing.Dents(Math.Max(a.N, 0), nut.Outside, nut.Hole, member.Fy, factors, w))
                    ?.Into(new Words(id + "-nut-bearing", member.Part, "is dented by the nuts of its rods", "is dented by the nuts of its rods,"), RungGroup.Frame,
                        Factoring.Load(rig), NutBearing.Source).Into(rungs);
                TieRodRungs.Tightest(response, (a, w) => NutBearing.Punches(Math.Max(a.N, 0), nut.Mean, plate.Thickness, member.Fu, factors, w))
                    ?.Into(new Words(id + "-nut-punching", member.Part, "is punched through by the nuts of its rods", "is punched through by the nuts of its rods,"), RungGroup.Frame,
                        Factoring.Break(rig), Bolt.Source).Into(rungs);
            }
            else if (frame.Rod.Washer is { } washer && member.Shape is Pair { Apart: > 0 } && frame.RodsDeep == 0)
            {
                double span = PressedRungs.BetweenWebs(member), left = washer.Outside - nut.Hole;
                if (!(left > 0))
                    continue;
                TieRodRungs.Tightest(response, (a, w) =>
                {
                    w?.Note($"The washer lies across the gap of the {member.Part} from web to web; the hole for the rod is taken off its width.");
                    return NutBearing.WasherBends(Math.Max(a.N, 0), span, RodSupport.Face(frame.Rod), left, washer.Thickness, washer.Steel.Fy(washer.Thickness), factors, w);
                })?.Into(new Words(id + "-washer", $"washers on the {member.Part}", $"bend over its gap", "bend over its gap,", Plural: true), RungGroup.Frame,
                    Factoring.Load(rig), PlateOverGap.Source).Into(rungs);
            }
        }
    }

    private static void Into(this Rung rung, List<Rung> rungs) => rungs.Add(rung);
}
