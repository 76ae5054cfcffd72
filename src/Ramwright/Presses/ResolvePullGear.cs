using Ramwright.Quantities;
using Ramwright.Stock;
using Ramwright.Workings;

namespace Ramwright.Presses;

/// <summary>Settles what carries a pull.</summary>
internal static class ResolvePullGear
{
    private const string Unmarked = "steel without papers is taken at the lowest structural grade";

    public static RigPullGear? Of(PullGear? said, RigCylinder cylinder, Shelf shelf, Assumptions assume)
    {
        if (said is null)
            return null;
        ScrewThread thread = ResolveJoint.ThreadNamed(said.Thread ?? throw new ArgumentException("'pull.thread' is missing"), shelf, "pull.thread");
        if (cylinder.Hole > 0 && thread.D > cylinder.Hole)
        {
            assume.Fault("pull.thread", new Remark($"{thread.Name} does not go through the hole of the plunger, {{0}} wide", Remark.Of(cylinder.Hole, Dimension.Length)),
                "a thinner rod, or a wider hole");
        }

        Steel? steel = said.Steel is { } name && said.Class is null ? Resolver.SteelNamed(name, shelf, "pull.steel", assume) : null;
        assume.Caution("Nobody stands in line with a pull rod: a rod, nut or coupler that lets go flies along it.", CautionKind.Handling);
        return new RigPullGear
        {
            Thread = thread,
            Class = steel is null ? ResolveScrews.Class(said.Class, thread, "pull", shelf, assume) : null,
            Steel = steel,
            Nut = said.Nut ?? 0,
            NutSteel = said.Nut is null ? null
                : Resolver.SteelNamed(assume.Or(said.NutSteel, "pull.nut-steel", "unknown", Unmarked), shelf, "pull.nut-steel", assume),
            Washer = Washer(said.Washer, thread, shelf, assume),
            Chair = Chair(said.Chair, thread, shelf, assume),
            Coupler = Coupler(said.Coupler, thread, shelf, assume),
        };
    }

    private static RigPullWasher? Washer(PullWasher? said, ScrewThread thread, Shelf shelf, Assumptions assume)
    {
        if (said is null)
            return null;
        string steel = assume.Or(said.Steel, "pull.washer.steel", "unknown", Unmarked);
        double hole = assume.Or(said.Hole, "pull.washer.hole", ScrewThread.UsualHole(thread.D), Dimension.Length, "the usual clearance");
        double nut = assume.Or(said.NutWidth, "pull.washer.nut-width", 1.5 * thread.D, Dimension.Length, "a common hexagon nut");
        if (nut <= hole)
            assume.Fault("pull.washer.hole", "the nut falls through the washer", "a hole smaller than the nut");
        return new RigPullWasher(Resolver.Needed(said.Thickness, "pull.washer.thickness"), hole, nut, Resolver.SteelNamed(steel, shelf, "pull.washer.steel", assume));
    }

    private static RigPullChair? Chair(PullChair? said, ScrewThread thread, Shelf shelf, Assumptions assume)
    {
        if (said is null)
            return null;
        string steel = assume.Or(said.Steel, "pull.chair.steel", "unknown", Unmarked);
        string name = said.Section ?? throw new ArgumentException("'pull.chair.section' is missing");
        if (!SectionText.TryRead(name, shelf, out Shape? section, out ReadingFault? fault))
            throw new ArgumentException($"'pull.chair.section': {fault.Found}");
        double hole = assume.Or(said.Hole, "pull.chair.hole", ScrewThread.UsualHole(thread.D), Dimension.Length, "the usual clearance around the rod");
        double circle = Resolver.Needed(said.Circle, "pull.chair.circle");
        if (hole >= circle)
            assume.Fault("pull.chair.hole", "the hole is as wide as the circle of the legs", "a hole smaller than circle");
        return new RigPullChair((int)Resolver.Needed(said.Legs, "pull.chair.legs"), section, Resolver.Needed(said.Length, "pull.chair.length"),
            Resolver.Needed(said.Plate, "pull.chair.plate"), circle, hole, Resolver.SteelNamed(steel, shelf, "pull.chair.steel", assume));
    }

    private static RigPullCoupler? Coupler(PullCoupler? said, ScrewThread thread, Shelf shelf, Assumptions assume)
    {
        if (said is null)
            return null;
        string steel = assume.Or(said.Steel, "pull.coupler.steel", "unknown", Unmarked);
        double outside = Resolver.Needed(said.Outside, "pull.coupler.outside");
        if (outside <= thread.D)
            assume.Fault("pull.coupler.outside", "the coupler has no wall around the rod", "a coupler wider than the rod");
        return new RigPullCoupler(Resolver.Needed(said.Engagement, "pull.coupler.engagement"), outside, Resolver.SteelNamed(steel, shelf, "pull.coupler.steel", assume));
    }
}
