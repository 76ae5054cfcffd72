using Ramwright.Quantities;
using Ramwright.Stock;
using Ramwright.Workings;

namespace Ramwright.Presses;

/// <summary>Settles a joint between a beam or arm and what it is fixed to.</summary>
internal static class ResolveJoint
{
    /// <summary>Whether a pair so joined clasps what it meets: bolts and pins go through a lap unless something else is said.</summary>
    public static bool Laps(Joint? said) => said?.Fit is { } fit ? fit == BeamFit.Lapped : said is BoltedJoint or PinnedJoint;

    public static RigJoint Of(
        Joint? said, string path, RigMember beam, RigMember onto, Shelf shelf, Assumptions assume)
    {
        if (said is null)
        {
            assume.Note(path, "welded all round", "nothing said of how it is joined");
            said = new WeldedJoint();
        }

        if (said is WeldedJoint or SlottedJoint)
        {
            // what has no papers is said with its own part
            foreach (Steel welded in new[] { beam.Steel, onto.Steel }.Where(s => s.Source.Standing != Workings.Standing.Practice))
                assume.CautionOfSteel(welded.Caution, path);
        }

        BeamFit fit = said.Fit ?? (beam.Shape is Pair && Laps(said) ? BeamFit.Lapped : BeamFit.Between);
        return said switch
        {
            WeldedJoint w => new RigWeldedJoint(fit, Weld(w.Weld, path, beam, onto, assume)) { Gusset = Gusset(w.Gusset, path + ".gusset", beam, onto, shelf, assume) },
            SlottedJoint s => new RigSlottedJoint(fit, Weld(s.Weld, path, beam, onto, assume),
                assume.Or(s.Play, path + ".play", 1e-3, Dimension.Length, "a torch-cut slot")),
            OnePieceJoint o => OnePiece(o, path, beam, onto, assume),
            BoltedJoint b => Bolted(b, fit, path, beam, onto, shelf, assume),
            PinnedJoint p => Pinned(p, fit, path, beam, onto, shelf, assume),
            _ => throw new ArgumentException($"no such joint: {said.GetType().Name}"),
        };
    }

    internal static ScrewThread ThreadNamed(string name, Shelf shelf, string path) =>
        shelf.TryThread(name, out ScrewThread? thread)
            ? thread
            : throw new ArgumentException($"'{path}' is not a thread in stock: {name}");

    private static RigWeld Weld(Weld? said, string path, RigMember beam, RigMember onto, Assumptions assume) =>
        Weld(said, path, Math.Min(Thinnest(beam.Shape), Thinnest(onto.Shape)), assume);

    /// <summary>
    /// Throat over thickness from which a fillet on one side of a wall is stronger than the wall, in any steel up to S460: EN 1993-1-8, 7.3.1, from memory.
    /// </summary>
    private const double MostThroat = 1.5;

    /// <summary>Settles a weld by the thinner of the parts it joins, m.</summary>
    internal static RigWeld Weld(Weld? said, string path, double thinner, Assumptions assume)
    {
        if (said?.Kind == WeldKind.Butt)
            return new RigWeld(WeldKind.Butt, thinner);
        if ((said?.Throat ?? said?.Leg / Math.Sqrt(2)) is { } a)
        {
            if (a > MostThroat * thinner)
            {
                assume.Caution(new Remark($"{path}.weld: a fillet with a throat of {{0}} on steel {{1}} thick. Beyond one and a half times its thickness a fillet adds no strength, the steel beside it gives first, "
                    + "and its heat warps it. Is the size as you mean it?", Remark.Of(a, Dimension.Length), Remark.Of(thinner, Dimension.Length)));
            }

            return new RigWeld(WeldKind.Fillet, a);
        }

        double leg = Math.Max(3e-3 * Math.Sqrt(2), 0.7 * thinner);
        assume.Note(path + ".weld", new Remark("fillet, leg {0}", Remark.Of(leg, Dimension.Length)), "0.7 of the thinner part; common practice");
        return new RigWeld(WeldKind.Fillet, leg / Math.Sqrt(2));
    }

    private static RigGusset? Gusset(Gusset? said, string path, RigMember beam, RigMember onto, Shelf shelf, Assumptions assume)
    {
        if (said is null)
            return null;
        double along = Resolver.Needed(said.LegAlong, path + ".leg-along"), up = Resolver.Needed(said.LegUp, path + ".leg-up");
        double t = Resolver.Needed(said.Thickness, path + ".thickness");
        int webs = beam.Shape is Pair ? 2 : 1;
        int count = (int)assume.Or(said.Count, path + ".count", webs, Dimension.Count, "one for each half of the beam");
        string steel = assume.Or(said.Steel, path + ".steel", "unknown", "plate without papers is taken at the lowest structural grade");
        var made = new RigGusset(along, up, t, count, Weld(said.Weld, path, t, assume), Resolver.SteelNamed(steel, shelf, path + ".steel", assume));
        double wide = Math.Min(beam.Shape.Properties.Width, onto.Shape.Properties.Width), shorter = Math.Min(along, up), most = RigGusset.MostSlender(made.Fy);
        if (count * t > wide)
        {
            assume.Fault(path + ".thickness", new Remark($"{count} plates of {{0}} do not stand side by side on {{1}}", Remark.Of(t, Dimension.Length), Remark.Of(wide, Dimension.Length)),
                "fewer or thinner plates");
        }

        if (shorter / t > most)
        {
            assume.Fault(path + ".thickness", $"the gusset is {shorter / t:0} times as long as thick and would buckle before it yields; {most:0} times is the most for its steel",
                new Remark("at least {0}, or shorter legs", Remark.Of(shorter / most, Dimension.Length)));
        }

        double run = made.Weld.Kind == WeldKind.Butt ? shorter : shorter - 2 * made.Weld.Throat, least = Math.Max(30e-3, 6 * made.Weld.Throat);
        if (run < least)
        {
            assume.Fault(path + ".leg-along", new Remark("{0} of weld along a leg is too short to carry load (EN 1993-1-8, 4.5.1)", Remark.Of(Math.Max(0, run), Dimension.Length)),
                new Remark("legs that leave at least {0} of weld", Remark.Of(least, Dimension.Length)));
        }

        return made;
    }

    private static RigOnePieceJoint OnePiece(OnePieceJoint said, string path, RigMember beam, RigMember onto, Assumptions assume)
    {
        foreach (RigMember part in (RigMember[])[beam, onto])
        {
            if (part.Shape.Strands[0].Shape is not (Flat or Round or ISection))
            {
                assume.Fault(path, $"{part.Shape.Name} cannot be turned round a corner in one piece",
                    "flats for a frame cut from plate, a round bar or an I for one that is bent; or kind: weld");
            }
        }

        return new RigOnePieceJoint(BeamFit.Between, assume.Or(said.CornerRadius, path + ".corner-radius", 0, Dimension.Length, "nothing said: a sharp corner, the worst case"));
    }

    private static RigBoltedJoint Bolted(
        BoltedJoint said, BeamFit fit, string path, RigMember beam, RigMember onto, Shelf shelf, Assumptions assume)
    {
        ScrewThread thread = ThreadNamed(said.Thread ?? throw new ArgumentException($"'{path}.thread' is missing"), shelf, path + ".thread");
        PropertyClass found = ResolveScrews.Class(said.Class, thread, path, shelf, assume);
        double d0 = ScrewThread.UsualHole(thread.D);
        bool clasped = fit == BeamFit.Lapped && beam.Shape is Pair;
        int planes = (int)assume.Or(said.ShearPlanes, path + ".shear-planes", clasped ? 2 : 1, Dimension.Count,
            clasped ? "a pair clasps the upright" : "the safer reading");
        return new RigBoltedJoint(fit)
        {
            Thread = thread,
            Class = found,
            Count = (int)Resolver.Needed(said.Count, path + ".count"),
            Pitch = assume.Or(said.Pitch, path + ".pitch", 3 * d0, Dimension.Length, "three holes' width"),
            Gauge = assume.Or(said.Gauge, path + ".gauge", 3 * d0, Dimension.Length, "three holes' width"),
            Edge = assume.Or(said.Edge, path + ".edge", 1.5 * d0, Dimension.Length, "one and a half holes' width"),
            Plate = assume.Or(said.Plate, path + ".plate", planes * Math.Min(Thinnest(beam.Shape), Thinnest(onto.Shape)), Dimension.Length,
                planes == 2 ? "two of the thinner walls bear the same way" : "the thinner wall of the two sections"),
            ShearPlanes = planes,
            Engagement = said.Engagement,
            EndPlate = EndPlate(said, fit, path, thread.D, beam, shelf, assume),
            Friction = said.Friction,
        };
    }

    private static RigBoltedEnd? EndPlate(BoltedJoint said, BeamFit fit, string path, double d, RigMember beam, Shelf shelf, Assumptions assume)
    {
        // only the web of an I stands between two lines of bolts in a way that is known
        if (fit == BeamFit.Lapped || (said.EndPlate is null && beam.Shape is not ISection))
            return null;
        double t = assume.Or(said.EndPlate?.Thickness, path + ".end-plate.thickness", d, Dimension.Length, "an end plate as thick as its bolts");
        return new RigBoltedEnd(t, said.EndPlate?.Steel is { } name ? Resolver.SteelNamed(name, shelf, path + ".end-plate.steel", assume) : beam.Steel,
            Weld(said.EndPlate?.Weld, path + ".end-plate", Math.Min(Thinnest(beam.Shape), t), assume));
    }

    /// <summary>Ordinary bolts sit loose in their holes: the corners move once, under the first squeeze.</summary>
    public static void TellOfSlip(RigJoint crown, RigJoint bed, double apart, Assumptions assume)
    {
        double up = Slip(crown), down = Slip(bed), most = Math.Max(up, down);
        if (most <= 0)
            return;
        assume.Caution(new Remark("Bolts in clearance holes slip once, under the first squeeze, until they bear: the daylight may grow by up to {0}, "
            + "and the dies tilt by up to {1} if one side slips first. "
            + "Seat them with one full squeeze, then measure and square up; or say friction: for bolts of 8.8 or 10.9 tightened to hold.",
            Remark.Of(up + down, Dimension.Length), Remark.Of(most / apart, Dimension.Slope)), CautionKind.Handling);
    }

    // a hole in each part, the bolt on the wrong side of both to begin with: twice the clearance
    private static double Slip(RigJoint joint) =>
        joint is RigBoltedJoint { Fit: BeamFit.Lapped, Friction: null } bolts ? 2 * (bolts.Hole - bolts.Thread.D) : 0;

    private static RigPinnedJoint Pinned(
        PinnedJoint said, BeamFit fit, string path, RigMember beam, RigMember onto, Shelf shelf, Assumptions assume)
    {
        string steel = assume.Or(said.Steel, path + ".steel", "unknown", "a pin without papers is taken at the lowest structural grade");
        return new RigPinnedJoint(fit)
        {
            Diameter = Resolver.Needed(said.Diameter, path + ".diameter"),
            Steel = Resolver.SteelNamed(steel, shelf, path + ".steel", assume),
            Middle = assume.Or(said.Middle, path + ".middle", 2 * Thinnest(onto.Shape), Dimension.Length, "the two walls of the upright"),
            Outer = assume.Or(said.Outer, path + ".outer", Thinnest(beam.Shape), Dimension.Length, "the web of the beam"),
            Gap = assume.Or(said.Gap, path + ".gap", 2e-3, Dimension.Length, "a little play"),
        };
    }

    private static double Thinnest(Shape shape) => shape.Thinnest;
}
