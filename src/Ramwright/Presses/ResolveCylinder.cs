using Ramwright.Quantities;
using Ramwright.Stock;
using Ramwright.Workings;

namespace Ramwright.Presses;

/// <summary>Settles the cylinder.</summary>
internal static class ResolveCylinder
{
    // ISO 3320 rods, m; from memory.
    private static readonly double[] RodSizes =
    [
        0.012, 0.014, 0.016, 0.018, 0.020, 0.022, 0.025, 0.028, 0.032, 0.036, 0.040, 0.045, 0.050, 0.056, 0.063, 0.070,
        0.080, 0.090, 0.100, 0.110, 0.125, 0.140, 0.160, 0.180, 0.200, 0.220, 0.250, 0.280, 0.320, 0.360,
    ];

    public static RigCylinder Of(Cylinder said, Shelf shelf, Assumptions assume)
    {
        double bore = Resolver.Needed(said.Bore, "cylinder.bore");
        double tube = said is HollowPlunger hollow ? Resolver.Needed(hollow.CentreTube, "cylinder.centre-tube") : 0;
        double rod = said is HollowPlunger
            ? assume.Or(said.Rod, "cylinder.rod", Math.Max(0.85 * bore, 0.5 * (bore + tube)), Dimension.Length,
                "a hollow plunger nearly fills its bore")
            : assume.Or(said.Rod, "cylinder.rod", SlimRod(bore), Dimension.Length,
                "the slimmer of the usual ISO 3320 rods for this bore");
        double hole = said is HollowPlunger drilled
            ? assume.Or(drilled.Hole, "cylinder.hole", 0.9 * tube, Dimension.Length, "the centre tube less a thin wall")
            : 0;
        double area = Math.PI / 4 * (bore * bore - tube * tube);
        double rated = said.RatedPressure is null && said.RatedForce is { } sold
            ? assume.Or(null, "cylinder.rated-pressure", sold / area, Dimension.Pressure,
                "the force it is sold as over its area")
            : assume.Or(said.RatedPressure, "cylinder.rated-pressure", 210e5, Dimension.Pressure,
                "not stated: the common rating of log-splitter and farm cylinders; read it off the plate");
        double stroke = assume.Or(said.Stroke, "cylinder.stroke", 0.25, Dimension.Length, "a common press stroke");
        RamGuide guide = assume.Or(said.Guide, "cylinder.guide", RamGuide.Free, "nothing said to guide the ram: the worst case");
        string rodSteel = assume.Or(said.RodSteel, "cylinder.rod-steel", "C45+N", "the usual ground and chromed bar");
        string barrelSteel = said.BarrelOutside is null
            ? said.BarrelSteel ?? "S355"
            : assume.Or(said.BarrelSteel, "cylinder.barrel-steel", "S355", "the usual honed tube");
        (RamReturn? back, double preload, double rate) = Spring(said, area, stroke, assume);
        (double gland, double piston, double apart, GuideRing ring) = Guides(said, guide, bore, rod, assume);

        TellOfOddRod(said, bore, rod, assume);
        int count = (int)(said.Count ?? 1);
        if (count > 1)
        {
            assume.Caution($"{count} cylinders on one line push alike but do not keep in step: where the work resists more the ram stays behind and the platen "
                + "tips. Guide it, or tie them with a flow divider or a rack.", CautionKind.Handling);
        }

        return new RigCylinder
        {
            Bore = bore,
            Rod = rod,
            Stroke = stroke,
            CentreTube = tube,
            Hole = hole,
            PullsByOil = said is DoubleActing,
            RatedPressure = rated,
            RatedForce = said.RatedForce,
            BarrelOutside = said.BarrelOutside,
            BarrelSteel = Resolver.SteelNamed(barrelSteel, shelf, "cylinder.barrel-steel", assume),
            RodSteel = Resolver.SteelNamed(rodSteel, shelf, "cylinder.rod-steel", assume),
            Guide = guide,
            BucklingLengthFactor = guide switch { RamGuide.Guided => 0.5, RamGuide.Pinned => 0.7, _ => 2.0 },
            GlandGuide = gland,
            PistonGuide = piston,
            GuideApart = apart,
            GuideRing = ring,
            Mount = ResolveMount.Of(said.Mount, bore, said.BarrelOutside, shelf, assume),
            RodThread = said.RodThread is null ? null : ResolveJoint.ThreadNamed(said.RodThread, shelf, "cylinder.rod-thread"),
            Foot = ResolveBearing.Foot(said.Foot, bore, said.BarrelOutside, shelf, assume),
            SealFriction = assume.Or(said.SealFriction, "cylinder.seal-friction", 0.03, Dimension.Ratio, "common practice"),
            Count = count,
            Regeneration = (said as DoubleActing)?.Regeneration ?? Regeneration.Never,
            Return = back,
            Pushes = said.Pushes,
            MovingMass = said.MovingMass,
            SpringPreload = count * preload,
            SpringRate = count * rate,
        };
    }

    /// <summary>Rods of cylinders that are made lie between these shares of the bore; common practice, the areas' ratio is then 1.07 to 6.5.</summary>
    private const double Slimmest = 0.25, Stoutest = 0.92;

    private static void TellOfOddRod(Cylinder said, double bore, double rod, Assumptions assume)
    {
        if (said is HollowPlunger)
            return;
        if (rod < Slimmest * bore)
        {
            assume.Caution(new Remark("A rod of {0} in a bore of {1} is less than a quarter of it: cylinders are not made so slim. Are numbers and units as you mean them?",
                Remark.Of(rod, Dimension.Length), Remark.Of(bore, Dimension.Length)));
        }
        else if (said is DoubleActing && rod > Stoutest * bore)
        {
            assume.Caution(new Remark("A rod of {0} in a bore of {1} leaves a ring of {2} to pull it back: cylinders are seldom made so stout. Are numbers and units as you mean them?",
                Remark.Of(rod, Dimension.Length), Remark.Of(bore, Dimension.Length), Remark.Of((bore - rod) / 2, Dimension.Length)));
        }
    }

    // slides take what tilts the ram, and its own guides then only steer
    private static (double Gland, double Piston, double Apart, GuideRing Ring) Guides(
        Cylinder said, RamGuide guide, double bore, double rod, Assumptions assume)
    {
        if (guide == RamGuide.Guided)
            return (0, 0, 0, default);
        return (
            assume.Or(said.GlandGuide, "cylinder.gland-guide", 0.5 * rod, Dimension.Length, "half the rod's diameter; common practice"),
            assume.Or(said.PistonGuide, "cylinder.piston-guide", 0.3 * bore, Dimension.Length, "three tenths of the bore; common practice"),
            assume.Or(said.GuideApart, "cylinder.guide-apart", bore, Dimension.Length, "once the bore; common practice"),
            assume.Or(said.GuideRing, "cylinder.guide-ring", GuideRing.Phenolic, "the usual rings of a cylinder built for work"));
    }

    private static (RamReturn? Back, double Preload, double Rate) Spring(Cylinder said, double area, double stroke, Assumptions assume)
    {
        (RamReturn? back, double? preload, double? rate) = said switch
        {
            SingleActing s => (s.Return, s.SpringPreload, s.SpringRate),
            HollowPlunger h => (h.Return, h.SpringPreload, h.SpringRate),
            _ => (RamReturn.Gravity, null, null),
        };
        if (said is DoubleActing)
            return (null, 0, 0);
        if (assume.Or(back, "cylinder.return", RamReturn.Spring, "the usual return of a single-acting cylinder") != RamReturn.Spring)
            return (RamReturn.Gravity, 0, 0);
        return (
            RamReturn.Spring,
            assume.Or(preload, "cylinder.spring-preload", 3e5 * area, Dimension.Force, new Remark("a spring worth {0} with the ram in; common practice", Remark.Of(3e5, Dimension.Pressure))),
            assume.Or(rate, "cylinder.spring-rate", 3e5 * area / stroke, Dimension.Stiffness, new Remark("a spring worth {0} with the ram out; common practice", Remark.Of(6e5, Dimension.Pressure))));
    }

    private static double SlimRod(double bore)
    {
        double best = RodSizes[0];
        foreach (double size in RodSizes)
        {
            if (size <= 0.565 * bore)
                best = size;
        }

        return Math.Min(best, 0.9 * bore);
    }
}
