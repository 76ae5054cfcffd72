using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Stock;
using Ramwright.Strength;
using Ramwright.Workings;

namespace Ramwright.Ladders;

/// <summary>What carries a pull from the ram to the work: rod, nut, washer, chair, coupler.</summary>
internal static class PullRungs
{
    private static readonly Citation Statics = Citation.Mechanics("statics of the pull");

    // feet that only stand on the work let the top move sideways with them
    private const double LegFactor = 1.2;
    private static readonly Citation LegSource = new("AISC 360-16 commentary", "table C-A-7.1, fixed ends free to sway");

    public static void Add(List<Rung> rungs, Rig rig)
    {
        if (rig.Pull is not { } pull)
            return;
        PartialFactors factors = Factoring.Of(rig);
        string broken = Factoring.Break(rig), load = Factoring.Load(rig);

        FittingRung.Add(rungs, new Words("pull-rod", "pull rod", "stretches for good in its thread", "stretches for good in its thread"), RungGroup.Joints, broken,
            pull.Class is null ? RoundBar.TensionSource : RodThread.ProofSource, w =>
            {
                if (pull.Class is { } grade)
                    return RodThread.Stretches(1, pull.Thread, grade, factors, w);
                w?.Take("A", $"stress area of {pull.Thread.Name}", pull.Thread.As, Dimension.Area, pull.Thread.Form.StressArea);
                return RoundBar.Pulls(1, pull.Thread.As, pull.Steel!.Fy(pull.Thread.D), pull.Steel.Fu(pull.Thread.D), factors, w);
            });

        if (pull is { Nut: > 0, NutSteel: { } nut })
        {
            FittingRung.Add(rungs, new Words("pull-nut", "nut on the pull rod", "strips", "strips"), RungGroup.Joints, broken, NutAndThread.Source,
                w => NutAndThread.Strips(1, RamRungs.Fit(pull.Thread), pull.Nut, pull.Fu, nut.Fu(pull.Nut), factors, w));
        }

        if (pull.Washer is { } washer)
            Washer(rungs, rig, washer, factors, load);
        if (pull.Coupler is { } coupler)
            Coupler(rungs, pull, coupler, factors, broken);
        if (pull.Chair is { } chair)
            Chair(rungs, rig, chair, factors, load);
    }

    private static void Washer(List<Rung> rungs, Rig rig, RigPullWasher washer, PartialFactors factors, string load)
    {
        double b = washer.Hole / 2, r0 = (washer.Hole + washer.NutWidth) / 4, a = rig.Cylinder.Hole / 2;
        double fy = washer.Steel.Fy(washer.Thickness);
        FittingRung.Add(rungs, new Words("pull-washer-bearing", "washer under the nut", "is crushed", "is crushed"), RungGroup.Joints, load, FaceArea.Source,
            w => Contact.PadYields(1, FaceArea.Of(washer.NutWidth, washer.Hole, w), fy, factors, w));
        // a nut as wide as the plunger's hole stands on the plunger itself
        if (!(a > r0))
            return;
        FittingRung.Add(rungs, new Words("pull-washer", "washer over the plunger's hole", "dishes", "dishes into the hole"), RungGroup.Joints, load, AnnularPlate.Source,
            w =>
            {
                w?.Step("r_0", "circle along which the nut presses", "(d_w + s) / 4", r0, Dimension.Length, Statics,
                    ("d_w", washer.Hole, Dimension.Length), ("s", washer.NutWidth, Dimension.Length));
                return AnnularPlate.Yields(1, a, b, r0, washer.Thickness, fy, factors, w);
            });
    }

    private static void Coupler(List<Rung> rungs, RigPullGear pull, RigPullCoupler coupler, PartialFactors factors, string broken)
    {
        double wall = (coupler.Outside - pull.Thread.D) / 2, fu = coupler.Steel.Fu(wall), fy = coupler.Steel.Fy(wall);
        FittingRung.Add(rungs, new Words("pull-coupler-thread", "thread in the coupler", "strips", "strips"), RungGroup.Joints, broken, NutAndThread.Source,
            w => NutAndThread.Strips(1, RamRungs.Fit(pull.Thread), coupler.Engagement, pull.Fu, fu, factors, w));
        FittingRung.Add(rungs, new Words("pull-coupler", "coupler", "is pulled apart", "is pulled apart"), RungGroup.Joints, broken, RoundBar.TensionSource,
            w => RoundBar.Pulls(1, FaceArea.Of(coupler.Outside, pull.Thread.D, w), fy, fu, factors, w));
    }

    private static void Chair(List<Rung> rungs, Rig rig, RigPullChair chair, PartialFactors factors, string load)
    {
        Shape leg = chair.Section;
        double t = leg.Properties.Thickness, length = LegFactor * chair.Length;
        FittingRung.Add(rungs, new Words("pull-chair-legs", "legs of the pulling chair", "buckle", "buckle", Plural: true), RungGroup.Frame, load, ColumnBuckling.AxialSource,
            w =>
            {
                w?.Step("L_cr", "buckling length of a leg", "K l", length, Dimension.Length, LegSource, ("K", LegFactor, Dimension.Number), ("l", chair.Length, Dimension.Length));
                double N = -1.0 / chair.Legs;
                w?.Step("N", "force in each leg, per newton", "-1 / n", N, Dimension.Force, Statics, ("n", chair.Legs, Dimension.Count));
                return ColumnBuckling.Axial(N, leg.Properties, new Column(length, length, leg.CurveY, leg.CurveZ), chair.Steel.Fy(t), factors, w: w);
            });

        double a = chair.Circle / 2, b = chair.Hole / 2, outside = rig.Cylinder.BarrelOutside ?? 1.2 * rig.Cylinder.Bore;
        double r0 = (outside + rig.Cylinder.Bore) / 4;
        if (!(a > r0) || !(r0 >= b))
            return;
        FittingRung.Add(rungs, new Words("pull-chair-plate", "ring plate of the pulling chair", "dishes under the cylinder", "dishes under the cylinder"), RungGroup.Frame, load,
            AnnularPlate.Source, w =>
            {
                w?.Note($"The plate is taken as held up all round; {chair.Legs} legs hold it at {chair.Legs} places only.");
                w?.Step("r_0", "circle along which the barrel presses", "(D_o + D) / 4", r0, Dimension.Length, Statics,
                    ("D_o", outside, Dimension.Length), ("D", rig.Cylinder.Bore, Dimension.Length));
                return AnnularPlate.Yields(1, a, b, r0, chair.Plate, chair.Steel.Fy(chair.Plate), factors, w);
            });
    }
}
