using Ramwright.Quantities;
using Ramwright.Stock;

namespace Ramwright.Presses;

/// <summary>Settles the frame and its members.</summary>
internal static class ResolveFrame
{
    public static RigFrame Of(PressFrame said, Shelf shelf, Assumptions assume) => said switch
    {
        ClosedFrame closed => Closed(closed, shelf, assume),
        OpenFrontFrame open => OpenFront(open, shelf, assume),
        _ => throw new ArgumentException($"no such frame: {said.GetType().Name}"),
    };

    private static RigClosedFrame Closed(ClosedFrame said, Shelf shelf, Assumptions assume)
    {
        RigMember crown = Member(said.Crown, "crown", "frame.crown", said, shelf, assume);
        RigMember bed = Member(said.Bed, "bed", "frame.bed", said, shelf, assume);
        RigMember upright = Member(said.Upright, "upright", "frame.upright", said, shelf, assume);
        return new RigClosedFrame
        {
            Daylight = Resolver.Needed(said.Daylight, "frame.daylight"),
            DieWidth = DieWidth(said, assume),
            RamDrop = RamDrop(said, assume),
            Width = Resolver.Needed(said.Width, "frame.width"),
            Crown = crown,
            Bed = bed,
            Upright = upright,
            CrownJoint = ResolveJoint.Of(said.CrownJoint, "frame.crown-joint", crown, upright, shelf, assume),
            BedJoint = ResolveJoint.Of(said.BedJoint, "frame.bed-joint", bed, upright, shelf, assume),
        };
    }

    private static RigOpenFrontFrame OpenFront(OpenFrontFrame said, Shelf shelf, Assumptions assume)
    {
        RigMember column = Member(said.Column, "column", "frame.column", said, shelf, assume);
        RigMember upper = Member(said.UpperArm, "upper arm", "frame.upper-arm", said, shelf, assume);
        RigMember lower = Member(said.LowerArm, "lower arm", "frame.lower-arm", said, shelf, assume);
        double throat = Resolver.Needed(said.Throat, "frame.throat");
        RigJoint joint = ResolveJoint.Of(said.ArmJoint, "frame.arm-joint", upper, column, shelf, assume);
        if (joint is RigSlottedJoint && column.Shape is ISection section)
        {
            double slot = Math.Max(upper.Shape.Properties.Width, lower.Shape.Properties.Width);
            column = column with { Net = new Slotted(section, slot) { Name = column.Shape.Name + " at the slot", Source = column.Shape.Source } };
        }

        return new RigOpenFrontFrame
        {
            Daylight = Resolver.Needed(said.Daylight, "frame.daylight"),
            DieWidth = DieWidth(said, assume),
            RamDrop = RamDrop(said, assume),
            Throat = throat,
            ArmReach = said.ArmReach ?? throat + 0.05,
            Column = column,
            UpperArm = upper,
            LowerArm = lower,
            ArmJoint = joint,
        };
    }

    private static double DieWidth(PressFrame said, Assumptions assume) =>
        assume.Or(said.DieWidth, "frame.die-width", 0, Dimension.Length, "nothing said: the load is taken as a point, the worst case");

    private static double RamDrop(PressFrame said, Assumptions assume) =>
        assume.Or(said.RamDrop, "frame.ram-drop", 0.1, Dimension.Length, "a cylinder let into the crown");

    private static RigMember Member(
        Member? said, string part, string path, PressFrame frame, Shelf shelf, Assumptions assume)
    {
        string name = said?.Section ?? frame.Section
            ?? throw new ArgumentException($"'{path}.section' or 'frame.section' is needed");
        if (!SectionText.TryRead(name, shelf, said?.Apart, out Shape? shape, out ReadingFault? fault))
            throw new ArgumentException($"'{path}.section': {fault.Found}");
        if (shape is Pair && said?.Apart is null)
            assume.Note(path + ".apart", "touching", "nothing said of a gap: the weaker way sideways");
        if (said?.Turned == true)
            shape = new Turned(shape) { Name = shape.Name + " turned", Source = shape.Source };
        string steel = said?.Steel ?? assume.Or(frame.Steel, "frame.steel", "unknown",
            "steel without papers is taken at the lowest structural grade");
        Shape? net = said?.Openings is { Count: > 0 } openings ? Cut(shape, openings) : null;
        return new RigMember(part, shape, net, Resolver.SteelNamed(steel, shelf, path + ".steel", assume));
    }

    private static Drilled Cut(Shape shape, IReadOnlyList<Opening> openings)
    {
        var holes = new List<Hole>(openings.Count);
        foreach (Opening o in openings)
            holes.Add(new Hole(o.Through ?? OpeningIn.Web, o.Width ?? 0, (int)(o.Count ?? 1)));
        return new Drilled(shape, holes) { Name = shape.Name + " less its holes", Source = shape.Source };
    }
}
