using Ramwright.Frame;
using Ramwright.Geometry;
using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Stock;
using Ramwright.Strength;
using Ramwright.Workings;

namespace Ramwright.Ladders;

/// <summary>What side push and work off centre do to the ram, and what hangs on it.</summary>
internal static class RamRungs
{
    private static readonly Citation Statics = Citation.Mechanics("statics of the ram");

    public static void Add(List<Rung> rungs, Rig rig)
    {
        PartialFactors factors = Factoring.Of(rig);
        RamTilt[] cases = [.. RamTilt.Cases(rig.Cylinder, rig.Loading, saidOnly: true)];
        RodBending(rungs, rig, cases, factors);
        Guides(rungs, rig, cases);
        if (rig.Ram?.DieHolder is { } holder)
            DieHolder(rungs, rig, holder, factors);
        if (rig.Ram?.AntiTwist is { } arm)
            AntiTwist(rungs, rig, arm, factors);
        if (rig.Ram?.Saddle is { } saddle)
            Saddle(rungs, rig, saddle, factors);
    }

    private static void RodBending(List<Rung> rungs, Rig rig, RamTilt[] cases, PartialFactors factors)
    {
        RigCylinder c = rig.Cylinder;
        double fy = c.RodSteel.Fy(c.Rod);
        Limit? Check(RamTilt tilt, Working? w) =>
            RoundBar.Yields(1, tilt.At(c.Stroke, w), c.Rod, c.Hole, fy, factors, w);
        if (FittingRung.Tightest(cases, t => Check(t, null)) is not { } worst)
            return;
        string what = $"bends at the gland, fully out, {worst.Name}";
        FittingRung.Add(rungs, new Words("rod-bending", "ram's rod", what, what) { Brief = "bends at the gland, fully out", Load = worst.Name }, RungGroup.Cylinder, Factoring.Load(rig), RoundBar.Source, w => Check(worst, w));
    }

    /// <summary>A place where the ram is guided, in one load case.</summary>
    private sealed record Guide(RamTilt Tilt, bool AtPiston);

    private static void Guides(List<Rung> rungs, Rig rig, RamTilt[] cases)
    {
        RigCylinder c = rig.Cylinder;
        if (!(c.GlandGuide > 0))
            return;
        (double p, Citation from) = RamGuides.Rated(c.GuideRing);
        double L = c.Stroke, b = c.GuideApart;
        Limit? Check(Guide g, Working? w)
        {
            w?.Take("p", "pressure the guide is rated for", p, Dimension.Pressure, from);
            if (c.Guide == RamGuide.Pinned)
                return g.AtPiston ? null : RamGuides.Presses(RamGuides.AtGlandHeld(g.Tilt.M, L, w), c.Rod, c.GlandGuide, p, RamGuides.UsualFactor, w);
            return g.AtPiston
                ? RamGuides.Presses(RamGuides.AtPiston(g.Tilt.H, g.Tilt.M, L, b, w), c.Bore, c.PistonGuide, p, RamGuides.UsualFactor, w)
                : RamGuides.Presses(RamGuides.AtGland(g.Tilt.H, g.Tilt.M, L, b, w), c.Rod, c.GlandGuide, p, RamGuides.UsualFactor, w);
        }

        Guide[] places = [.. from t in cases from atPiston in (bool[])[false, true] select new Guide(t, atPiston)];
        if (FittingRung.Tightest(places, g => Check(g, null)) is not { } worst)
            return;
        string place = worst.AtPiston ? "guide on the piston" : "guide in the gland", what = $"is pressed beyond its rating, fully out, {worst.Tilt.Name}";
        FittingRung.Add(rungs, new Words("gland-side-load", place, what, what) { Brief = "is pressed too hard, fully out", Load = worst.Tilt.Name }, RungGroup.Cylinder,
            $"{RamGuides.UsualFactor:0.##} on the rated pressure ({RamGuides.PressureSource})", RamGuides.PressureSource, w => Check(worst, w),
            // it wears and leaks; nothing flies
            canBreak: false);
    }

    private static void DieHolder(List<Rung> rungs, Rig rig, RigDieHolder holder, PartialFactors factors)
    {
        double strip = rig.Ram!.StripOff;
        if (holder.Screws is { } screws)
        {
            double e = rig.Cylinder.Guide == RamGuide.Guided ? 0 : Math.Max(rig.Loading.Across, rig.Loading.Deep);
            double prise = Math.Max(0, 2 * e / holder.Face - 1);
            (string part, string verb) = screws.Count == 1 ? ("screw of the die holder", "is") : ("screws of the die holder", "are");
            string what = verb + (prise > strip ? " prised off by work off centre" : " torn off by a stuck die");
            double Pull(Working? w)
            {
                double pull = Math.Max(strip, prise) / screws.Count;
                w?.Note("Work beyond the edge of the holder's face tilts the holder about that edge; its screws hold it from the middle.");
                w?.Step("f_1", "pull on each screw, per newton", "max(k, 2 e / b - 1) / n", pull, Dimension.Force, Statics,
                    ("k", strip, Dimension.Ratio), ("e", e, Dimension.Length), ("b", holder.Face, Dimension.Length), ("n", screws.Count, Dimension.Count));
                return pull;
            }

            Screws(rungs, rig, new Words("die-holder-screws", part, what, what, screws.Count > 1), screws, Pull, factors,
                "die-holder-thread", "thread in the ram's end", rig.Cylinder.RodSteel.Fu(rig.Cylinder.Rod));
        }

        if (holder.SetScrews > 0 && holder.SetScrew >= SetScrew.Range.From && holder.SetScrew <= SetScrew.Range.UpTo)
        {
            FittingRung.Add(rungs, new Words("die-holder-set-screws", "die holder", "is pulled from under its set screws", "is pulled from under its set screws"),
                RungGroup.Joints, $"{SetScrew.UsualFactor:0.##} on the holding power ({SetScrew.Source})", SetScrew.Source,
                w => SetScrew.Slips(strip, holder.SetScrew, holder.SetScrews, SetScrew.UsualFactor, w));
        }
    }

    /// <summary>Screws in tension, and the thread they go into where less is in mesh than a full nut has.</summary>
    internal static void Screws(
        List<Rung> rungs, Rig rig, Words words, RigScrews screws, Func<Working?, double> pull, PartialFactors factors,
        string threadId, string threadPart, double fuInto)
    {
        FittingRung.Add(rungs, words, RungGroup.Joints, Factoring.Break(rig), Bolt.Source,
            w => new BoltGroup(new Bolt(screws.Thread, screws.Class), [new BoltPlace(0, 0)]).Tension(new Actions(pull(w), 0, 0, 0, 0, 0), factors, 1, w));
        if (screws.Engagement is not { } mesh)
            return;
        FittingRung.Add(rungs, new Words(threadId, threadPart, "strips", "strips"), RungGroup.Joints, Factoring.Break(rig), NutAndThread.Source,
            w => NutAndThread.Strips(pull(w), Fit(screws.Thread), mesh, screws.Class.Rm, fuInto, factors, w));
    }

    /// <summary>The loosest fit; the basic sizes for threads finer than the tolerances reach.</summary>
    internal static ThreadFit Fit(ScrewThread thread) => thread.P >= 1e-3 ? ThreadFit.Loosest6H6g(thread) : ThreadFit.Basic(thread);

    private static void AntiTwist(List<Rung> rungs, Rig rig, RigAntiTwist arm, PartialFactors factors)
    {
        double fy = arm.Steel.Fy(Math.Min(arm.Depth, arm.Height)), fu = arm.Steel.Fu(Math.Min(arm.Depth, arm.Height)), r = rig.Cylinder.Rod / 2;
        double Push(Working? w)
        {
            double f = arm.Twist / arm.Length;
            w?.Step("f", "push on the pad, per newton", "a / l", f, Dimension.Force, Statics, ("a", arm.Twist, Dimension.Length), ("l", arm.Length, Dimension.Length));
            return f;
        }

        double AtRam(Working? w)
        {
            double f = Push(w), m = f * (arm.Length - r);
            w?.Step("M_y", "moment where the arm meets the ram, per newton", "f (l - r)", m, Dimension.Moment, Statics,
                ("f", f, Dimension.Force), ("l", arm.Length, Dimension.Length), ("r", r, Dimension.Length));
            return m;
        }

        const string part = "anti-twist arm";
        FittingRung.Add(rungs, new Words("anti-twist-arm", part, "bends at the ram", "bends at the ram"), RungGroup.Frame, Factoring.Load(rig), MemberSection.YieldSource,
            w => MemberSection.Yield(new Actions(0, 0, Push(null), 0, AtRam(w), 0), FittingRung.Flat(arm.Depth, arm.Height), fy, factors, SectionClass.Three, w));
        if (arm.Weld is { Kind: WeldKind.Fillet } weld && arm.Depth > 0)
        {
            WeldGroup around = WeldOutline.Rectangle(WeldPlane.OfSection, arm.Height, arm.Depth, weld.Throat);
            FittingRung.Add(rungs, new Words("anti-twist-weld", "weld of the anti-twist arm", "tears", "tears"), RungGroup.Joints, Factoring.Break(rig), FilletWeld.DirectionalSource,
                w => FilletWeld.Directional(around, Push(null) * Vector.Up, AtRam(w) * Vector.Deep, Vector.Zero, fu, arm.Steel.BetaW ?? 1, factors, w));
        }

        if (arm.GuideSpan > 0)
        {
            double fyBar = arm.Steel.Fy(Math.Min(arm.GuideDepth, arm.GuideWidth));
            FittingRung.Add(rungs, new Words("anti-twist-guide", "guide bar of the anti-twist arm", "bends in the middle", "bends in the middle"), RungGroup.Frame,
                Factoring.Load(rig), MemberSection.YieldSource,
                w =>
                {
                    double f = Push(w), m = f * arm.GuideSpan / 4;
                    w?.Step("M_y", "moment in the middle of the guide bar, its ends free to turn, per newton", "f L / 4", m, Dimension.Moment, Statics,
                        ("f", f, Dimension.Force), ("L", arm.GuideSpan, Dimension.Length));
                    return MemberSection.Yield(new Actions(0, 0, f / 2, 0, m, 0), FittingRung.Flat(arm.GuideDepth, arm.GuideWidth), fyBar, factors, SectionClass.Three, w);
                });
        }
    }

    private static void Saddle(List<Rung> rungs, Rig rig, RigSaddle saddle, PartialFactors factors)
    {
        double fy = Math.Min(saddle.Steel.Fy(saddle.Diameter), rig.Cylinder.RodSteel.Fy(rig.Cylinder.Rod));
        FittingRung.Add(rungs, new Words("saddle-bearing", "face between ram and saddle", "is crushed", "is crushed"), RungGroup.Cylinder, Factoring.Load(rig), FaceArea.Source,
            w => Contact.PadYields(1, FaceArea.Of(Math.Min(saddle.Diameter, rig.Cylinder.Rod), Math.Max(saddle.Hole, rig.Cylinder.Hole), w), fy, factors, w));
    }
}
