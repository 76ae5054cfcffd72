using Ramwright.Quantities;
using Ramwright.Stock;
using Ramwright.Workings;

namespace Ramwright.Presses;

/// <summary>Settles a tie-rod frame.</summary>
internal static class ResolveTieRods
{
    // Shigley, 8-8: nominal torque coefficient; 8-9: preload of the same torque scatters by about 30 %.
    private const double TorqueCoefficient = 0.2, Scatter = 0.3;

    /// <summary>Nobody tightens above this share of the proof load.</summary>
    private const double MostPreload = 0.9;

    public static RigTieRodFrame Of(TieRodFrame said, Shelf shelf, Assumptions assume)
    {
        double across = Resolver.Needed(said.RodsAcross, "frame.rods-across"), deep = said.RodsDeep ?? 0;
        TieRod rod = Resolver.Needed(said.Rod, "frame.rod");
        (RigMember crown, RigEndPlate? crownPlate) = End(said.CrownPlate, said.Crown, FrameWords.Crown(said), "crown", said, across, shelf, assume);
        (RigMember bed, RigEndPlate? bedPlate) = End(said.BedPlate, said.Bed, FrameWords.Bed(said), "bed", said, across, shelf, assume);
        if (deep > 0 && (crownPlate is null || bedPlate is null))
        {
            assume.Caution("Nothing here checks what carries the force from a beam to the rods in front of it and behind it. "
                + "Make cross bars under the nuts that span the beam, and size them for half the pull of a pair of rods.");
        }
        bool spans = deep == 0 && (crown.Shape is Pair { Apart: > 0 } || bed.Shape is Pair { Apart: > 0 });
        RigTieRod made = Rod(rod, spans, shelf, assume);
        TellOfDents(made, crown, crownPlate, assume);
        TellOfDents(made, bed, bedPlate, assume);
        double dieWidth = ResolveFrame.DieWidth(said, assume);
        return new RigTieRodFrame
        {
            Daylight = Resolver.Needed(said.Daylight, "frame.daylight"),
            DieWidth = dieWidth,
            DieDepth = said.DieDepth ?? dieWidth,
            Bolster = ResolveBearing.Bolster(said.Bolster, dieWidth, shelf, assume),
            RamDrop = ResolveFrame.RamDrop(said, assume),
            Horizontal = said.Horizontal == true,
            RodsAcross = across,
            RodsDeep = deep,
            Crown = crown,
            Bed = bed,
            CrownPlate = crownPlate,
            BedPlate = bedPlate,
            Rod = made,
        };
    }

    /// <summary>A preload that the plate under the nut does not bear is lost again.</summary>
    private static void TellOfDents(RigTieRod rod, RigMember member, RigEndPlate? plate, Assumptions assume)
    {
        if (plate is null || rod.PreloadMost <= 0)
            return;
        RodSupport nut = RodSupport.Of(rod);
        double pressure = rod.PreloadMost / (Math.PI / 4 * (nut.Outside * nut.Outside - nut.Hole * nut.Hole));
        if (pressure > 2 * member.Fy)
        {
            assume.Caution(new Remark("The nuts press on the " + member.Part + " with up to {0} when they are tightened, and sink into it: the preload is lost. "
                + "Put thick washers of hard steel under them.", Remark.Of(pressure, Dimension.Stress)), CautionKind.Danger);
        }
    }

    private static RigRodWasher? Washer(RodWasher? said, bool spans, double d, Shelf shelf, Assumptions assume)
    {
        const string path = "frame.rod.washer";
        if (said is null && !spans)
            return null;
        double outside = assume.Or(said?.Outside, path + ".outside", 3 * d, Dimension.Length, "three rod diameters, to lie on both halves of a pair");
        double t = assume.Or(said?.Thickness, path + ".thickness", d, Dimension.Length, "as thick as the rod; it spans the gap of a pair");
        string steel = assume.Or(said?.Steel, path + ".steel", "unknown", "a washer without papers is taken at the lowest structural grade");
        return new RigRodWasher(outside, t, Resolver.SteelNamed(steel, shelf, path + ".steel", assume));
    }

    private static (RigMember, RigEndPlate?) End(
        EndPlate? plate, Member? beam, string part, string key, TieRodFrame frame, double across, Shelf shelf, Assumptions assume)
    {
        if (plate is null)
            return (ResolveFrame.Member(beam, part, "frame." + key, frame, shelf, assume), null);
        string path = $"frame.{key}-plate";
        double t = Resolver.Needed(plate.Thickness, path + ".thickness"), b = Resolver.Needed(plate.Width, path + ".width");
        double hole = plate.Hole ?? 0;
        string name = $"plate {b * 1000:0.##}x{t * 1000:0.##}";
        Shape shape = shelf.Known.Same(new Turned(new Flat(b, t) { Name = name, Source = SectionText.AsGiven }) { Name = name, Source = SectionText.AsGiven });
        Shape? net = hole > 0 ? ResolveFrame.Drill(shape, HolePlace.Web, hole, 1, path + ".hole", shelf, assume) : null;
        RigMember member = new(part, shape, net, ResolveFrame.SteelOf(plate.Steel, path + ".steel", frame, shelf, assume));
        // three rods' spacing would be generous; a plate ends about a rod's diameter and a half beyond the rod's centre
        double length = assume.Or(plate.Length, path + ".length", across + b / 4, Dimension.Length, "an eighth of its width beyond the rods at each side");
        if (hole >= length)
            assume.Fault(path + ".hole", "the hole is as long as the plate", "a hole smaller than the plate");
        return (member, new RigEndPlate(t, b, length, hole));
    }

    private static RigTieRod Rod(TieRod said, bool spans, Shelf shelf, Assumptions assume)
    {
        const string path = "frame.rod";
        ScrewThread thread = ResolveJoint.ThreadNamed(said.Thread ?? throw new ArgumentException($"'{path}.thread' is missing"), shelf, path + ".thread");
        (string grade, double proof, double fu) = Strength(said, thread, shelf, assume);
        double nutFu = said.NutSteel is { } name
            ? Resolver.SteelNamed(name, shelf, path + ".nut-steel", assume).Fu(thread.D)
            : fu;
        if (said.NutSteel is null)
            assume.Note(path + ".nut-steel", "a nut of the rod's own class", "ISO 898-2: the nut's number is not below the rod's first");
        RodSeat seat = said.Sleeve is not null
            ? RodSeat.Sleeve
            : assume.Or(said.Seat, path + ".seat", RodSeat.Nut, "nothing said: nuts on both sides of crown and bed");
        if (said.Shank is null)
            assume.Note(path + ".shank", "none: threaded throughout", "nothing said of a plain part: the weaker and softer reading");
        (double least, double most) = Preload(said, thread, proof, assume);
        return new RigTieRod
        {
            Thread = thread,
            Grade = grade,
            Proof = proof,
            Fu = fu,
            Shank = said.Shank,
            FreeThread = said.Shank is null ? 0 : assume.Or(said.FreeThread, path + ".free-thread", thread.D, Dimension.Length, "one diameter of thread runs free"),
            Seat = seat,
            SleeveOutside = said.Sleeve?.Outside ?? 0,
            SleeveInside = said.Sleeve?.Inside ?? 0,
            NutHeight = assume.Or(said.NutHeight, path + ".nut-height", 0.8 * thread.D, Dimension.Length, "ISO 4032: a plain nut, 0.8 of the diameter"),
            NutFu = nutFu,
            Washer = Washer(said.Washer, spans, thread.D, shelf, assume),
            PreloadLeast = least,
            PreloadMost = most,
        };
    }

    private static (string Grade, double Proof, double Fu) Strength(TieRod said, ScrewThread thread, Shelf shelf, Assumptions assume)
    {
        const string path = "frame.rod";
        if (said.Steel is { } steelName)
        {
            Steel steel = Resolver.SteelNamed(steelName, shelf, path + ".steel", assume);
            double d = Math.Max(thread.D, said.Shank ?? 0);
            return (steel.Name, steel.Fy(d), steel.Fu(d));
        }

        string grade = assume.Or(said.Class, path + ".class", "4.6", "rod without a mark is taken as the weakest class");
        if (!shelf.TryClass(grade, thread.D, out PropertyClass? found))
        {
            assume.Fault(path + ".class", $"class {grade} is not made in {thread.Name}", "a class that the thread is made in, such as 8.8, or steel: with the name of the bar");
            found = shelf.Classes[0];
        }

        if (found.Name == "12.9")
            assume.Caution("Rods of class 12.9 are brittle and outside EN 1993-1-8. Take 8.8 or 10.9.");
        return (found.Name, found.Sp, found.Rm);
    }

    private static (double Least, double Most) Preload(TieRod said, ScrewThread thread, double proof, Assumptions assume)
    {
        const string path = "frame.rod";
        double proofLoad = thread.As * proof;
        double nominal = said.Preload ?? (said.Torque ?? 0) / (TorqueCoefficient * thread.D);
        if (said is { Preload: null, Torque: null })
            assume.Note(path + ".preload", "none", "nothing said of tightening: hand-tight nuts hold nothing together under load");
        if (nominal > MostPreload * proofLoad)
        {
            assume.Fault(said.Preload is null ? path + ".torque" : path + ".preload",
                new Remark("the rod would be tightened to {0}, its proof load is {1}", Remark.Of(nominal, Dimension.Force), Remark.Of(proofLoad, Dimension.Force)),
                $"at most {MostPreload:0.0} of the proof load; three quarters is usual");
            return (0, 0);
        }

        if (said.Preload is not null || nominal == 0)
            return (nominal, nominal);
        assume.Note(path + ".preload", new Remark("{0} to {1}", Remark.Of((1 - Scatter) * nominal, Dimension.Force), Remark.Of((1 + Scatter) * nominal, Dimension.Force)),
            "a torque tells the preload to about a third; K = 0.2, lightly oiled");
        double most = (1 + Scatter) * nominal;
        if (most > MostPreload * proofLoad)
        {
            assume.Caution(new Remark("A torque of {0} may overstretch the tie rods: it scatters by a third. Tighten by measured stretch.",
                Remark.Of(said.Torque ?? 0, Dimension.Moment)), CautionKind.Danger);
            most = MostPreload * proofLoad;
        }

        return ((1 - Scatter) * nominal, most);
    }
}
