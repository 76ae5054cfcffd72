using Ramwright.Quantities;
using Ramwright.Stock;

namespace Ramwright.Presses;

/// <summary>Settles how the cylinder is held.</summary>
internal static class ResolveMount
{
    private const string Path = "cylinder.mount";

    public static RigMount? Of(Mounting? said, double bore, double? barrelOutside, Shelf shelf, Assumptions assume)
    {
        if (said is null)
        {
            assume.Caution("How the cylinder is held is not described, so its bolts, thread or plate are not checked: say mount under cylinder.");
            return null;
        }

        string steelName = assume.Or(said.Steel, Path + ".steel", "unknown", "steel without papers is taken at the lowest structural grade");
        Steel steel = Resolver.SteelNamed(steelName, shelf, Path + ".steel", assume);
        if (said is CradleMount || Shelf.SameName(steelName, "unknown"))
            assume.CautionOfSteel(steel.Caution, Path + ".steel");
        double Barrel() => barrelOutside ?? assume.Or(null, "cylinder.barrel-outside", 1.2 * bore, Dimension.Length, "a wall of a tenth of the bore; common practice");
        return said switch
        {
            FlangeMount f => Flange(f, Barrel(), steel, shelf, assume),
            FootMount f => Foot(f, Barrel, steel, assume),
            CradleMount c => Cradle(c, Barrel, steel, assume),
            BracketMount b => Bracket(b, Barrel, steel, shelf, assume),
            CollarMount c => Collar(c, steel, shelf, assume),
            _ => throw new ArgumentException($"no such mount: {said.GetType().Name}"),
        };
    }

    private static MountCarries Carries(MountCarries? said, Assumptions assume) =>
        assume.Or(said, Path + ".carries", MountCarries.Thrust, "nothing said of which way it pushes on its bolts: the worst case");

    private static RigFlangeMount Flange(FlangeMount said, double barrel, Steel steel, Shelf shelf, Assumptions assume)
    {
        double circle = Resolver.Needed(said.Circle, Path + ".circle");
        RigScrews bolts = ResolveScrews.Of(said.Thread, said.Class, said.Count, said.Engagement, Path, shelf, assume);
        if (circle <= barrel)
            assume.Fault(Path + ".circle", "the bolts would stand inside the barrel", "a bolt circle wider than the barrel, or the barrel's outside diameter");
        return new RigFlangeMount
        {
            Steel = steel,
            Carries = Carries(said.Carries, assume),
            Bolts = bolts,
            Circle = circle,
            Plate = Resolver.Needed(said.Plate, Path + ".plate"),
            Outside = assume.Or(said.Outside, Path + ".outside", circle + 3 * ScrewThread.UsualHole(bolts.Thread.D), Dimension.Length, "one and a half holes' width outside the bolts"),
            Barrel = barrel,
        };
    }

    private static RigFootMount Foot(FootMount said, Func<double> barrel, Steel steel, Assumptions assume)
    {
        double outside = said.Outside ?? assume.Or(null, Path + ".outside", barrel(), Dimension.Length, "the barrel's outside diameter");
        double hole = assume.Or(said.Hole, Path + ".hole", 0, Dimension.Length, "a flat face without a recess");
        if (hole >= outside)
            assume.Fault(Path + ".hole", "the recess leaves no face to bear on", "a hole smaller than the outside");
        double width = said.Plate is null ? 0 : said.Width ?? assume.Or(null, Path + ".width", outside, Dimension.Length, "as wide as the face that bears on it");
        return new RigFootMount { Steel = steel, Outside = outside, Hole = hole, Plate = said.Plate, Width = width, Span = said.Plate is null ? 0 : said.Span ?? 0 };
    }

    private static RigCradleMount Cradle(CradleMount said, Func<double> barrel, Steel steel, Assumptions assume)
    {
        double cheekWidth = Resolver.Needed(said.CheekWidth, Path + ".cheek-width"), cheek = Resolver.Needed(said.Cheek, Path + ".cheek");
        double cross = Resolver.Needed(said.Cross, Path + ".cross");
        double crossWidth = assume.Or(said.CrossWidth, Path + ".cross-width", cheekWidth, Dimension.Length, "as wide as the cheeks");
        double hole = assume.Or(said.Hole, Path + ".hole", 0, Dimension.Length, "no hole said of in the cross plate");
        double cheekHole = assume.Or(said.CheekHole, Path + ".cheek-hole", 0, Dimension.Length, "no holes said of in the cheeks");
        double seat = said.Seat ?? assume.Or(null, Path + ".seat", Math.Max(hole, barrel()), Dimension.Length, "the barrel's outside diameter");
        if (hole >= crossWidth)
            assume.Fault(Path + ".hole", "the hole is as wide as the cross plate", "a hole smaller than cross-width");
        if (cheekHole >= cheekWidth)
            assume.Fault(Path + ".cheek-hole", "the hole is as wide as the cheek", "a hole smaller than cheek-width");
        RigWeld weld = ResolveJoint.Weld(said.Weld, Path, Math.Min(cheek, cross), assume);
        // EN 1993-1-8, 4.5.1: less a throat at each end, at least 30 mm or six throats
        if (weld.Kind == WeldKind.Fillet && Math.Min(crossWidth, cheekWidth) - 2 * weld.Throat < Math.Max(0.030, 6 * weld.Throat))
            assume.Fault(Path + ".weld", "a weld this thick needs more length than there is to carry load", "a smaller leg, wider plates, or kind: butt");
        return new RigCradleMount
        {
            Steel = steel,
            Cheek = cheek,
            CheekWidth = cheekWidth,
            CheekHole = cheekHole,
            Apart = Resolver.Needed(said.Apart, Path + ".apart"),
            Cross = cross,
            CrossWidth = crossWidth,
            Hole = hole,
            Seat = seat,
            Weld = weld,
        };
    }

    private static RigBracketMount Bracket(BracketMount said, Func<double> barrel, Steel steel, Shelf shelf, Assumptions assume)
    {
        double t = Resolver.Needed(said.Plate, Path + ".plate"), reach = Resolver.Needed(said.Reach, Path + ".reach");
        RigScrews bolts = ResolveScrews.Of(said.Thread, said.Class, said.Count, said.Engagement, Path, shelf, assume);
        double bend = assume.Or(said.BendRadius, Path + ".bend-radius", t, Dimension.Length, "bent round its own thickness");
        if (reach - t / 2 - 0.8 * bend <= 0)
            assume.Fault(Path + ".reach", "the bolts would stand in the bend", "a reach longer than half the plate and the bend's radius");
        if (bend < t / 20)
            assume.Fault(Path + ".bend-radius", "so sharp a bend is a notch", "a radius of at least the plate's thickness");
        if (bend > 100 * t)
            assume.Fault(Path + ".bend-radius", "so wide a bend is no corner", "a radius of a few times the plate's thickness");
        return new RigBracketMount
        {
            Steel = steel,
            Carries = Carries(said.Carries, assume),
            Brackets = (int)assume.Or(said.Brackets, Path + ".brackets", 2, Dimension.Count, "one on each side"),
            Plate = t,
            Width = Resolver.Needed(said.Width, Path + ".width"),
            BendRadius = bend,
            Reach = reach,
            Edge = assume.Or(said.Edge, Path + ".edge", 1.5 * ScrewThread.UsualHole(bolts.Thread.D), Dimension.Length, "one and a half holes' width"),
            Apart = said.Apart ?? assume.Or(null, Path + ".apart", barrel() + t, Dimension.Length, "close to the barrel"),
            Bolts = bolts,
        };
    }

    // a thread that was measured is an inch one where a whole number of its turns makes an inch, and no usual step of millimetres does
    private static string Measured(double d, double pitch)
    {
        const double inch = 0.0254;
        double turns = inch / pitch, steps = pitch / 0.25e-3;
        return Math.Abs(turns - Math.Round(turns)) < 0.005 * turns && Math.Abs(steps - Math.Round(steps)) > 1e-6
            ? $"{Readout.Text(d, Dimension.Length, UnitSystem.Imperial, 4)} with {Math.Round(turns):0} threads to the inch"
            : $"{Readout.Text(d, Dimension.Length)} with a pitch of {Readout.Text(pitch, Dimension.Length)}";
    }

    private static RigCollarMount Collar(CollarMount said, Steel steel, Shelf shelf, Assumptions assume)
    {
        double plate = Resolver.Needed(said.Plate, Path + ".plate");
        ScrewThread thread = said.Thread is { } name
            ? ResolveJoint.ThreadNamed(name, shelf, Path + ".thread")
            : new ScrewThread(Resolver.Needed(said.Diameter, Path + ".diameter"), Resolver.Needed(said.Pitch, Path + ".pitch"))
            {
                Name = Measured(said.Diameter!.Value, said.Pitch!.Value),
            };
        double width = said.Span is null ? 0 : said.Width ?? assume.Or(null, Path + ".width", 2 * thread.D, Dimension.Length, "twice the collar");
        if (said.Span is not null && width <= thread.D)
            assume.Fault(Path + ".width", "the collar's hole is as wide as the plate", "a plate wider than the collar");
        double mesh = assume.Or(said.Engagement, Path + ".engagement", plate, Dimension.Length, "thread through the whole plate");
        if (mesh > plate * (1 + 1e-9))
            assume.Fault(Path + ".engagement", "more thread in mesh than the plate is thick", "no more than plate");
        return new RigCollarMount { Steel = steel, Thread = thread, Engagement = mesh, Plate = plate, Width = width, Span = said.Span ?? 0 };
    }
}
