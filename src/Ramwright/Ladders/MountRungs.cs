using Ramwright.Frame;
using Ramwright.Geometry;
using Ramwright.Power;
using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Stock;
using Ramwright.Strength;
using Ramwright.Workings;

namespace Ramwright.Ladders;

/// <summary>What holds the cylinder: its bolts, plates, threads and welds.</summary>
internal static class MountRungs
{
    private static readonly Citation Statics = Citation.Mechanics("statics of the mount");

    public static void Add(List<Rung> rungs, Rig rig, PowerReport power)
    {
        PartialFactors factors = Factoring.Of(rig);
        switch (rig.Cylinder.Mount)
        {
            case RigFlangeMount flange:
                Flange(rungs, rig, power, flange, factors);
                break;
            case RigFootMount foot:
                Foot(rungs, rig, foot, factors);
                break;
            case RigCradleMount cradle:
                Cradle(rungs, rig, cradle, factors);
                break;
            case RigBracketMount bracket:
                Bracket(rungs, rig, power, bracket, factors);
                break;
            case RigCollarMount collar:
                Collar(rungs, rig, collar, factors);
                break;
        }
    }

    /// <summary>The beam that the cylinder is held by.</summary>
    private static RigMember? Above(Rig rig) => rig.Frame switch
    {
        RigClosedFrame closed => closed.Crown,
        RigOpenFrontFrame open => open.UpperArm,
        RigTieRodFrame { CrownPlate: null } rods => rods.Crown,
        _ => null,
    };

    /// <summary>Greatest moment on the mount for one newton at the ram, m; of the work, so with the thrust only.</summary>
    private static double Tilt(Rig rig, Working? w)
    {
        double L = rig.Frame.RamDrop + rig.Cylinder.Stroke;
        RamTilt? worst = RamTilt.Cases(rig.Cylinder, rig.Loading).MaxBy(c => c.At(L));
        if (worst is null)
        {
            w?.Note("Slides take what tilts the ram, or nothing tilts it: the mount carries the thrust alone.");
            return 0;
        }

        return worst.At(L, w);
    }

    /// <summary>Pull of the cylinder on its mount for one newton at the ram, N.</summary>
    private static double Pull(Rig rig, PowerReport power, MountCarries carries, Working? w)
    {
        if (carries == MountCarries.Thrust)
        {
            w?.Take("P", "pull on the mount, per newton: the whole thrust", 1, Dimension.Force, Statics);
            return 1;
        }

        if (!rig.Cylinder.PullsByOil)
        {
            double strip = rig.Ram?.StripOff is > 0 and { } said ? said : 0.1;
            w?.Take("P", "pull on the mount, per newton: what strips a stuck die off", strip, Dimension.Force, Citation.Practice("a tenth of the ram force, unless the file says otherwise"));
            return strip;
        }

        double q = power.Areas.Pull / power.Areas.Push;
        w?.Step("P", "pull on the mount, die stuck, the same pressure on the return side, per newton", "a / A", q, Dimension.Force, Statics,
            ("a", power.Areas.Pull, Dimension.Area), ("A", power.Areas.Push, Dimension.Area));
        return q;
    }

    private static void Flange(List<Rung> rungs, Rig rig, PowerReport power, RigFlangeMount mount, PartialFactors factors)
    {
        int n = mount.Bolts.Count;
        double R = mount.Circle / 2, m = R - mount.Barrel / 2, e = (mount.Outside - mount.Circle) / 2;
        var bolt = new Bolt(mount.Bolts.Thread, mount.Bolts.Class);
        // one bolt stands where a moment pulls most
        var group = new BoltGroup(bolt, [.. Enumerable.Range(0, n).Select(i => new BoltPlace(R * Math.Sin(2 * Math.PI * i / n), R * Math.Cos(2 * Math.PI * i / n)))]);
        Actions Acting(Working? w) => new(
            Pull(rig, power, mount.Carries, w), 0, 0, 0, mount.Carries == MountCarries.Thrust ? Tilt(rig, w) : 0, 0);
        double Worst(Working? w) => Math.Max(0, group.MostPulled(Acting(w), w));

        string when = mount.Carries == MountCarries.Thrust ? "under the thrust" : "in the return";
        FittingRung.Add(rungs, new Words("mount-bolt-pull", "bolts of the cylinder's flange", $"break {when}", $"break {when}", Plural: true), RungGroup.Joints,
            Factoring.Break(rig), Bolt.Source, w => group.Tension(Acting(w), factors, 1, w));

        TStub Stub(Working? w)
        {
            double room = Math.PI * mount.Circle / n;
            w?.Step("m", "from the bolt to the barrel", "(D_b - D) / 2", m, Dimension.Length, Statics, ("D_b", mount.Circle, Dimension.Length), ("D", mount.Barrel, Dimension.Length));
            w?.Step("e", "from the bolt to the edge", "(D_f - D_b) / 2", e, Dimension.Length, Statics, ("D_f", mount.Outside, Dimension.Length), ("D_b", mount.Circle, Dimension.Length));
            w?.Step("b", "flange that belongs to one bolt", "π D_b / n", room, Dimension.Length, Statics, ("D_b", mount.Circle, Dimension.Length), ("n", n, Dimension.Count));
            (double one, double two) = TStub.Lengths(m, e, room, w);
            return new TStub(m, e, one, two, mount.Plate, mount.Steel.Fy(mount.Plate), Legs: 1);
        }

        // a flange stiffer than its bolts gives where they do, and that rung is there already
        TStubMode Mode(PartialFactors f) => Stub(null).Design(bolt.Tension(), f).Mode;
        string mode = Says(Mode(factors), "flange");
        if (Mode(factors) != TStubMode.BoltsBreak || Mode(new PartialFactors(1, 1, 1, 1)) != TStubMode.BoltsBreak)
        {
            FittingRung.Add(rungs, new Words("mount-flange", "flange of the cylinder", $"{mode} {when}", $"{mode} {when}"), RungGroup.Joints, Factoring.Break(rig), TStub.Source,
                w => Stub(w).Gives(Worst(w), bolt.Tension(w), factors, w));
        }

        Thread(rungs, rig, mount.Bolts, Worst, mount.Steel, factors);
    }

    private static string Says(TStubMode mode, string what) => mode switch
    {
        TStubMode.FlangeYields => "bends between bolts and " + (what == "flange" ? "barrel" : "leg"),
        TStubMode.Prying => "prises its bolts apart",
        _ => "outlasts its bolts, which break",
    };

    private static void Thread(List<Rung> rungs, Rig rig, RigScrews bolts, Func<Working?, double> pull, Steel into, PartialFactors factors)
    {
        if (bolts.Engagement is not { } mesh)
            return;
        // what the bolts are screwed into is the crown, or a plate like the mount's own: the weaker
        double fu = Math.Min(into.Fu(mesh), Above(rig)?.Fu ?? double.PositiveInfinity);
        FittingRung.Add(rungs, new Words("mount-thread", "thread of the mount's bolts", "strips", "strips"), RungGroup.Joints, Factoring.Break(rig), NutAndThread.Source,
            w => NutAndThread.Strips(pull(w), RamRungs.Fit(bolts.Thread), mesh, bolts.Class.Rm, fu, factors, w));
    }

    private static void Foot(List<Rung> rungs, Rig rig, RigFootMount mount, PartialFactors factors)
    {
        double fy = mount.Plate is { } t ? mount.Steel.Fy(t) : Above(rig)?.Fy ?? mount.Steel.Fy(0.02);
        string on = mount.Plate is null ? "crown" : "plate";
        FittingRung.Add(rungs, new Words("mount-bearing", $"{on} under the cylinder's end", "is crushed", "is crushed"), RungGroup.Frame, Factoring.Load(rig), FaceArea.Source,
            w => Contact.PadYields(1, FaceArea.Of(mount.Outside, mount.Hole, w), fy, factors, w));
        if (mount is { Plate: { } plate, Span: > 0 })
            Plate(rungs, rig, "mount-plate", "plate over the crown's webs", mount.Span, mount.Outside, mount.Width, plate, mount.Steel, factors);
    }

    private static void Plate(
        List<Rung> rungs, Rig rig, string id, string part, double span, double ring, double width, double t, Steel steel, PartialFactors factors) =>
        FittingRung.Add(rungs, new Words(id, part, "bends under the cylinder", "bends under the cylinder"), RungGroup.Frame, Factoring.Load(rig), MemberSection.YieldSource,
            w => MemberSection.Yield(new Actions(0, 0, 0.5, 0, PlateOverGap.Moment(span, ring, w), 0), FittingRung.Flat(t, width),
                steel.Fy(t), factors, SectionClass.Three, w));

    private static void Cradle(List<Rung> rungs, Rig rig, RigCradleMount mount, PartialFactors factors)
    {
        double net = mount.CrossWidth - mount.Hole;
        Plate(rungs, rig, "mount-cross-plate", "cross plate of the cradle", mount.Apart + mount.Cheek, mount.Seat, net, mount.Cross, mount.Steel, factors);

        double Half(Working? w)
        {
            double f = 0.5 + Tilt(rig, w) / (mount.Apart + mount.Cheek);
            w?.Step("N_1", "pull in the worse cheek, per newton", "1 / 2 + M / (c + t)", f, Dimension.Force, Statics,
                ("M", Tilt(rig, null), Dimension.Moment), ("c", mount.Apart, Dimension.Length), ("t", mount.Cheek, Dimension.Length));
            return f;
        }

        double A = mount.CheekWidth * mount.Cheek, rest = (mount.CheekWidth - mount.CheekHole) * mount.Cheek;
        FittingRung.Add(rungs, new Words("mount-cheek", "cheek of the cradle", "is pulled apart", "is pulled apart"), RungGroup.Frame, Factoring.Break(rig), NetSection.TensionSource,
            w => NetSection.Tension(Half(w), A, rest, mount.Steel.Fy(mount.Cheek), mount.Steel.Fu(mount.Cheek), factors, w));

        double length = Math.Min(mount.CrossWidth, mount.CheekWidth);
        if (mount.Weld.Kind == WeldKind.Fillet && length > 2 * mount.Weld.Throat)
        {
            WeldGroup lines = WeldOutline.TwoLines(WeldPlane.OfSection, length, mount.Cross, mount.Weld.Throat);
            double thin = Math.Min(mount.Cheek, mount.Cross);
            FittingRung.Add(rungs, new Words("mount-weld", "welds of the cradle", "tear", "tear", Plural: true), RungGroup.Joints, Factoring.Break(rig), FilletWeld.DirectionalSource,
                w => FilletWeld.Directional(lines, Half(w) * Vector.Deep, Vector.Zero, Vector.Zero, mount.Steel.Fu(thin), mount.Steel.BetaW ?? 1, factors, w));
        }
    }

    private static void Bracket(List<Rung> rungs, Rig rig, PowerReport power, RigBracketMount mount, PartialFactors factors)
    {
        int k = mount.Brackets, n = mount.Bolts.Count;
        double Share(Working? w)
        {
            double P = Pull(rig, power, mount.Carries, w), M = mount.Carries == MountCarries.Thrust ? Tilt(rig, w) : 0;
            double f = P / k + 2 * M / (k * mount.Apart);
            w?.Step("f", "pull on the worst bracket, per newton", "P / k + 2 M / (k c)", f, Dimension.Force, Statics,
                ("P", P, Dimension.Force), ("k", k, Dimension.Count), ("M", M, Dimension.Moment), ("c", mount.Apart, Dimension.Length));
            return f;
        }

        string when = mount.Carries == MountCarries.Thrust ? "under the thrust" : "in the return";
        double fy = mount.Steel.Fy(mount.Plate);
        FittingRung.Add(rungs, new Words("mount-bend", "bracket of the cylinder", $"opens at its bend {when}", $"opens at its bend {when}"), RungGroup.Frame,
            Factoring.Load(rig), CurvedBeam.Source, w =>
            {
                double f = Share(w), M = f * mount.Reach;
                w?.Step("M", "moment at the bend, its bolts taken as a hinge, per newton", "f x", M, Dimension.Moment, Statics,
                    ("f", f, Dimension.Force), ("x", mount.Reach, Dimension.Length));
                return CurvedBeam.Yield(CurvedSection.Rectangle(mount.Width, mount.Plate, mount.BendRadius), f, M, fy, factors, w);
            });

        Bolt bolt = new Bolt(mount.Bolts.Thread, mount.Bolts.Class);
        TStub Stub(Working? w)
        {
            double m = mount.Reach - mount.Plate / 2 - 0.8 * mount.BendRadius, room = mount.Width / n;
            w?.Step("m", "from the bolts to the bend", "x - t / 2 - 0.8 r_i", m, Dimension.Length, TStub.Source,
                ("x", mount.Reach, Dimension.Length), ("t", mount.Plate, Dimension.Length), ("r_i", mount.BendRadius, Dimension.Length));
            w?.Step("b", "plate that belongs to one bolt", "b_w / n", room, Dimension.Length, Statics, ("b_w", mount.Width, Dimension.Length), ("n", n, Dimension.Count));
            (double one, double two) = TStub.Lengths(m, mount.Edge, room, w);
            return new TStub(m, mount.Edge, one, two, mount.Plate, fy, Legs: 1);
        }

        double Each(Working? w)
        {
            double f = Share(w), each = f / n;
            w?.Step("f_1", "pull on each bolt's part, per newton", "f / n", each, Dimension.Force, Statics, ("f", f, Dimension.Force), ("n", n, Dimension.Count));
            return each;
        }

        string mode = Says(Stub(null).Design(bolt.Tension(), factors).Mode, "leg");
        FittingRung.Add(rungs, new Words("mount-bolt-prying", "bolted leg of the bracket", $"{mode} {when}", $"{mode} {when}"), RungGroup.Joints, Factoring.Break(rig), TStub.Source,
            w => Stub(w).Gives(Each(w), bolt.Tension(w), factors, w));
        Thread(rungs, rig, mount.Bolts, Each, mount.Steel, factors);
    }

    private static void Collar(List<Rung> rungs, Rig rig, RigCollarMount mount, PartialFactors factors)
    {
        // the collar is taken as strong as the barrel it is part of
        double fuCollar = rig.Cylinder.BarrelSteel.Fu(((rig.Cylinder.BarrelOutside ?? 1.2 * rig.Cylinder.Bore) - rig.Cylinder.Bore) / 2);
        FittingRung.Add(rungs, new Words("mount-thread", "thread of the cylinder's collar", "strips", "strips"), RungGroup.Joints, Factoring.Break(rig), NutAndThread.Source,
            w =>
            {
                double M = Tilt(rig, w), f = 1 + 4 * M / mount.Thread.D;
                w?.Step("f", "pull all round as great as where the thread is loaded most, per newton", "1 + 4 M / D", f, Dimension.Force,
                    Citation.Mechanics("force and moment on a thin ring"), ("M", M, Dimension.Moment), ("D", mount.Thread.D, Dimension.Length));
                return NutAndThread.Strips(f, RamRungs.Fit(mount.Thread), mount.Engagement, fuCollar, mount.Steel.Fu(mount.Plate), factors, w);
            });
        if (mount.Span > 0)
        {
            Plate(rungs, rig, "mount-plate", "plate that the collar is screwed into", mount.Span, mount.Thread.D, mount.Width - mount.Thread.D,
                mount.Plate, mount.Steel, factors);
        }
    }
}
