using Ramwright.Quantities;
using Ramwright.Stock;
using Ramwright.Workings;

namespace Ramwright.Presses;

/// <summary>Settles the frame and its members.</summary>
internal static class ResolveFrame
{
    /// <summary>What washers or shims may fill between a pair and the upright it clasps, m; common practice.</summary>
    private const double MostShim = 0.010;

    public static RigFrame Of(PressFrame said, Shelf shelf, Assumptions assume) => said switch
    {
        ClosedFrame closed => Closed(closed, shelf, assume),
        OpenFrontFrame open => OpenFront(open, shelf, assume),
        TieRodFrame rods => ResolveTieRods.Of(rods, shelf, assume),
        FreeFrame free => ResolveFree.Of(free, shelf, assume),
        _ => throw new ArgumentException($"no such frame: {said.GetType().Name}"),
    };

    private static RigClosedFrame Closed(ClosedFrame said, Shelf shelf, Assumptions assume)
    {
        RigMember upright = Member(said.Upright, "upright", "frame.upright", said, shelf, assume);
        double wide = upright.Shape.Properties.Width;
        RigMember crown = Member(said.Crown, FrameWords.Crown(said), "frame.crown", said, shelf, assume, ResolveJoint.Laps(said.CrownJoint) ? wide : null);
        bool clasps = said.BedPins is not null || ResolveJoint.Laps(said.BedJoint);
        RigMember bed = Member(said.Bed, FrameWords.Bed(said), "frame.bed", said, shelf, assume, clasps ? wide : null);
        RigJoint crownJoint = ResolveJoint.Of(said.CrownJoint, "frame.crown-joint", crown, upright, shelf, assume);
        RigJoint bedJoint = said.BedPins is { } pins
            ? ResolveJoint.Of(Pin(pins), "frame.bed-pins", bed, upright, shelf, assume)
            : ResolveJoint.Of(said.BedJoint, "frame.bed-joint", bed, upright, shelf, assume);
        ResolveJoint.TellOfSlip(crownJoint, bedJoint, 2 * (Resolver.Needed(said.Width, "frame.width") / 2 + upright.Shape.Properties.Bottom), assume);
        double dieWidth = DieWidth(said, assume);
        return new RigClosedFrame
        {
            Daylight = Resolver.Needed(said.Daylight, "frame.daylight"),
            DieWidth = dieWidth,
            DieDepth = said.DieDepth ?? dieWidth,
            Bolster = ResolveBearing.Bolster(said.Bolster, dieWidth, shelf, assume),
            RamDrop = RamDrop(said, assume),
            Horizontal = said.Horizontal == true,
            Width = Resolver.Needed(said.Width, "frame.width"),
            Crown = WithJointHoles(crown, crownJoint, beam: true, shelf, assume),
            Bed = WithJointHoles(bed, bedJoint, beam: true, shelf, assume),
            // the holes at the crown are taken for both ends: joints at crown and bed are seldom different, but for a bed on pins
            Upright = Weaker(WithJointHoles(upright, crownJoint, beam: false, shelf, assume), said.BedPins is null ? upright : WithJointHoles(upright, bedJoint, beam: false, shelf, assume)),
            CrownJoint = crownJoint,
            BedJoint = bedJoint,
            BedPins = said.BedPins is { } rows
                ? new RigBedPins(
                    Resolver.Needed(rows.Pitch, "frame.bed-pins.pitch"),
                    (int)Resolver.Needed(rows.Count, "frame.bed-pins.count"),
                    assume.Or(rows.Edge, "frame.bed-pins.edge", 2 * (rows.Diameter ?? 0), Dimension.Length, "two pin diameters of steel below the lowest hole"))
                : null,
        };
    }

    private static PinnedJoint Pin(BedPins said) => new()
    {
        Fit = BeamFit.Lapped,
        Diameter = said.Diameter,
        Steel = said.Steel,
        Middle = said.Middle,
        Outer = said.Outer,
        Gap = said.Gap,
    };

    /// <summary>The one whose holes leave less.</summary>
    private static RigMember Weaker(RigMember a, RigMember b) =>
        a.JointNet is null || (b.JointNet is { } net && net.Properties.A < a.JointNet.Properties.A) ? b : a;

    private static RigOpenFrontFrame OpenFront(OpenFrontFrame said, Shelf shelf, Assumptions assume)
    {
        RigMember column = Member(said.Column, "column", "frame.column", said, shelf, assume);
        RigMember upper = Member(said.UpperArm, "upper arm", "frame.upper-arm", said, shelf, assume);
        RigMember lower = Member(said.LowerArm, "lower arm", "frame.lower-arm", said, shelf, assume);
        double throat = Resolver.Needed(said.Throat, "frame.throat");
        RigJoint joint = ResolveJoint.Of(said.ArmJoint, "frame.arm-joint", upper, column, shelf, assume);
        if (joint is RigSlottedJoint slotted)
            column = Slot(column, upper.Shape.Properties.Width >= lower.Shape.Properties.Width ? upper : lower, slotted.Play, shelf, assume);

        double dieWidth = DieWidth(said, assume);
        double dieDepth = said.DieDepth is null && dieWidth == 0 ? 0 : assume.Or(said.DieDepth, "frame.die-depth", dieWidth, Dimension.Length, "square dies");
        return new RigOpenFrontFrame
        {
            Daylight = Resolver.Needed(said.Daylight, "frame.daylight"),
            DieWidth = dieWidth,
            DieDepth = dieDepth,
            Bolster = ResolveBearing.Bolster(said.Bolster, dieDepth, shelf, assume),
            RamDrop = RamDrop(said, assume),
            Horizontal = said.Horizontal == true,
            Throat = throat,
            ArmReach = said.ArmReach ?? throat + 0.05,
            Column = column,
            UpperArm = upper,
            LowerArm = lower,
            ArmJoint = joint,
        };
    }

    /// <summary>A column with the slot that a bar passes through.</summary>
    private static RigMember Slot(RigMember column, RigMember arm, double play, Shelf shelf, Assumptions assume)
    {
        double slot = arm.Shape.Properties.Width + 2 * play;
        if (column.Shape is not ISection section)
        {
            assume.Fault("frame.arm-joint", $"a slot is cut through an I or H section, and {column.Shape.Name} is none",
                "kind: weld, or an I or H section for the column");
            return column;
        }

        if (slot >= section.B)
        {
            if (arm.Shape is Pair { Apart: > 0 } halves)
            {
                double most = section.B - slot + halves.Apart;
                assume.Fault(arm.Key + ".apart", new Remark($"halves {{0}} apart need a slot of {{1}}, which leaves nothing of the flange of {column.Shape.Name}, {{2}} wide",
                        Remark.Of(halves.Apart, Dimension.Length), Remark.Of(slot, Dimension.Length), Remark.Of(section.B, Dimension.Length)),
                    most > 0 ? new Remark("less than {0}, or a wider column", Remark.Of(most, Dimension.Length)) : "thinner arms or a wider column");
                return column;
            }

            assume.Fault("frame.arm-joint", new Remark($"a slot of {{0}} leaves nothing of the flange of {column.Shape.Name}, {{1}} wide", Remark.Of(slot, Dimension.Length), Remark.Of(section.B, Dimension.Length)),
                "thinner arms or a wider column");
            return column;
        }

        return column with { JointNet = shelf.Known.Same(new Slotted(section, slot) { Name = column.Shape.Name + " at the slot", Source = column.Shape.Source }) };
    }

    internal static double DieWidth(PressFrame said, Assumptions assume) =>
        assume.Or(said.DieWidth, "frame.die-width", 0, Dimension.Length, "nothing said: the load is taken as a point, the worst case");

    internal static double RamDrop(PressFrame said, Assumptions assume) =>
        assume.Or(said.RamDrop, "frame.ram-drop", 0.1, Dimension.Length, "a cylinder let into the crown");

    // clasped: width of what the halves of a pair clasp, m; null where they clasp nothing
    internal static RigMember Member(
        Member? said, string part, string path, PressFrame frame, Shelf shelf, Assumptions assume, double? clasped = null)
    {
        string name = said?.Section ?? frame.Section
            ?? throw new ArgumentException($"'{path}.section' or 'frame.section' is needed");
        if (!SectionText.TryRead(name, shelf, said?.Apart, out Shape? shape, out ReadingFault? fault))
            throw new PressFaultsException([new Fault($"{path}.section", fault.Found, fault.Wanted, Against: said?.Apart is null ? null : $"{path}.apart")]);
        if (shape is Pair halves && clasped is { } upright)
            shape = shelf.Known.Same(Clasping(halves, said?.Apart, upright, path, assume));
        else if (shape is Pair && said?.Apart is null)
            assume.Note(path + ".apart", "touching", "nothing said of a gap: the weaker way sideways");
        if (shape.BendsAskew)
        {
            assume.Fault(path + ".section", $"{shape.Name} alone bends askew and twists under a straight load, which is not reckoned here",
                $"two of them back to back, 2 x {shape.Name}, or a section that is alike on both sides");
        }
        else if (shape is Pair { Half.BendsAskew: true } pair)
        {
            assume.Note(path + ".section", new Remark("bolted or welded together at least every {0}", Remark.Of(15 * pair.Half.Properties.LeastRadius, Dimension.Length)),
                "two angles bend straight only while each keeps the other straight; EN 1993-1-1, 6.4.4: 15 i_min");
        }

        if (said?.Turned == true)
            shape = shelf.Known.Same(new Turned(shape) { Name = shape.Name + " turned", Source = shape.Source });
        return new RigMember(part, shape, Cut(shape, said?.Openings, path, shelf, assume), SteelOf(said?.Steel, path + ".steel", frame, shelf, assume))
        {
            Key = path,
            Stiffened = said?.Stiffened?.Thickness,
            StiffenerWeld = said?.Stiffened is { Thickness: { } plate } stiffened ? ResolveJoint.Weld(stiffened.Weld, path + ".stiffened", Math.Min(plate, shape.Thinnest), assume) : null,
        };
    }

    /// <summary>The halves of a lapped beam stand as far apart as what they clasp is wide.</summary>
    private static Pair Clasping(Pair pair, double? said, double upright, string path, Assumptions assume)
    {
        double apart = assume.Or(said, path + ".apart", upright, Dimension.Length, "its halves clasp the upright, which is as wide");
        if (Math.Abs(apart - upright) > MostShim)
        {
            assume.Fault(path + ".apart", new Remark("halves {0} apart do not clasp an upright {1} wide", Remark.Of(apart, Dimension.Length), Remark.Of(upright, Dimension.Length)),
                new Remark("{0}, or another fit than lapped", Remark.Of(upright, Dimension.Length)));
        }

        return pair.WithGap(apart);
    }

    internal static Steel SteelOf(string? said, string path, PressFrame frame, Shelf shelf, Assumptions assume)
    {
        string steel = said ?? assume.Or(frame.Steel, "frame.steel", "unknown",
            "steel without papers is taken at the lowest structural grade");
        return Resolver.SteelNamed(steel, shelf, path, assume);
    }

    private static Shape? Cut(Shape shape, IReadOnlyList<Opening>? openings, string path, Shelf shelf, Assumptions assume)
    {
        Shape? net = null;
        for (int i = 0; i < (openings?.Count ?? 0); i++)
        {
            Opening o = openings![i];
            HolePlace place = o.Through switch
            {
                OpeningIn.TensionFlange => HolePlace.TensionFlange,
                OpeningIn.BothFlanges => HolePlace.BothFlanges,
                _ => HolePlace.Web,
            };
            net = Drill(net ?? shape, place, o.Width ?? 0, (int)(o.Count ?? 1), $"{path}.openings.{i}", shelf, assume) ?? net;
        }

        return net;
    }

    internal static Shape? Drill(Shape shape, HolePlace place, double width, int count, string path, Shelf shelf, Assumptions assume)
    {
        if (Drilled.WhyNot(shape, place, width, count) is not { } reason)
            return shelf.Known.Same(Drilled.Through(shape, place, width, count));
        assume.Fault(path, reason, "a hole that fits the section");
        return null;
    }

    /// <summary>A member with the holes that the bolts or the pin of a lap make in its webs.</summary>
    private static RigMember WithJointHoles(RigMember member, RigJoint joint, bool beam, Shelf shelf, Assumptions assume)
    {
        (double hole, int abreast) = joint switch
        {
            RigBoltedJoint { Fit: BeamFit.Lapped } b => (b.Hole, beam ? b.Columns.Up : b.Columns.Along),
            RigPinnedJoint { Fit: BeamFit.Lapped } p => (p.Diameter + 1e-3, 1),
            _ => (0, 0),
        };
        if (abreast == 0)
            return member;
        if (Drilled.WhyNot(member.Shape, HolePlace.Web, hole, abreast) is { } reason)
        {
            assume.Caution($"The holes of the joint in the {member.Part} are not taken off its section: {reason}.");
            return member;
        }

        return member with { JointNet = shelf.Known.Same(Drilled.Through(member.Shape, HolePlace.Web, hole, abreast)) };
    }
}
