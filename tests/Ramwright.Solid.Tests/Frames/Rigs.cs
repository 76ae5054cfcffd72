using Ramwright.Geometry;
using Ramwright.Presses;
using Ramwright.Stock;
using Ramwright.Workings;

namespace Ramwright.Solid.Tests.Frames;

/// <summary>Parts and presses made up for the comparison.</summary>
internal static class Rigs
{
    private static readonly Citation MadeUp = Citation.Practice("made up for a comparison");
    private static readonly Steel Plain = new() { Name = "S275", Bands = [new StrengthBand(0.1, 275e6, 430e6)], Source = MadeUp };

    public static RigMember Part(string part, Shape shape) => new(part, shape, null, Plain);

    public static Shape Flat(double h, double t) => new Flat(h / 1e3, t / 1e3) { Name = $"flat {h}x{t}", Source = MadeUp };

    /// <summary>Sharp-cornered I: depth, width, web, flange.</summary>
    public static Shape I(double h, double b, double tw, double tf) =>
        new ISection(h / 1e3, b / 1e3, tw / 1e3, tf / 1e3, 0) { Name = $"I {h}x{b}x{tw}x{tf}", Source = MadeUp };

    public static Shape Box(double h, double b, double tw, double tf) =>
        new Box(h / 1e3, b / 1e3, tw / 1e3, tf / 1e3) { Name = $"box {h}x{b}x{tw}x{tf}", Source = MadeUp };

    /// <summary>Two sharp-cornered channels with a gap.</summary>
    public static Shape Channels(double h, double b, double tw, double tf, double apart, bool toes = false) =>
        new Pair(new Channel(h / 1e3, b / 1e3, tw / 1e3, tf / 1e3, 0) { Name = $"channel {h}x{b}x{tw}x{tf}", Source = MadeUp }, apart / 1e3, toes)
        {
            Name = $"2 x channel {h}x{b}x{tw}x{tf}, {apart} apart",
            Source = MadeUp,
        };

    public static RigClosedFrame Closed(Shape beam, Shape upright, double width, double daylight, BeamFit fit = BeamFit.Between, Shape? bed = null) => new()
    {
        Width = width / 1e3,
        Daylight = daylight / 1e3,
        DieWidth = 0.08,
        RamDrop = 0,
        Crown = Part("crown", beam),
        Bed = Part("bed", bed ?? beam),
        Upright = Part("upright", upright),
        CrownJoint = new RigWeldedJoint(fit, new RigWeld(WeldKind.Butt, 0.01)),
        BedJoint = new RigWeldedJoint(fit, new RigWeld(WeldKind.Butt, 0.01)),
    };

    public static RigOpenFrontFrame Open(Shape column, Shape arm, double throat, double daylight, bool slotted) => new()
    {
        Throat = throat / 1e3,
        ArmReach = throat / 1e3 + 0.06,
        Daylight = daylight / 1e3,
        DieWidth = 0.06,
        RamDrop = 0,
        Column = Part("column", column),
        UpperArm = Part("upper arm", arm),
        LowerArm = Part("lower arm", arm),
        ArmJoint = slotted
            ? new RigSlottedJoint(BeamFit.Between, new RigWeld(WeldKind.Fillet, 6e-3), 0)
            : new RigWeldedJoint(BeamFit.Between, new RigWeld(WeldKind.Butt, 0.01)),
    };

    /// <summary>A plate lying flat: width and thickness.</summary>
    public static Shape Plate(double b, double t) => new Turned(new Flat(b / 1e3, t / 1e3) { Name = $"plate {b}x{t}", Source = MadeUp }) { Name = $"plate {b}x{t}", Source = MadeUp };

    /// <summary>Crown and bed alike on rods threaded throughout, nuts on the outer faces, without preload.</summary>
    public static RigTieRodFrame OnRods(Shape beam, double d, double pitch, double across, double daylight, double deep = 0, double dieDepth = 0) => new()
    {
        RodsAcross = across / 1e3,
        RodsDeep = deep / 1e3,
        Daylight = daylight / 1e3,
        DieWidth = 0.08,
        DieDepth = dieDepth / 1e3,
        RamDrop = 0,
        Crown = Part("crown", beam),
        Bed = Part("bed", beam),
        Rod = new RigTieRod
        {
            Thread = new ScrewThread(d / 1e3, pitch / 1e3) { Name = $"M{d}" },
            Grade = "8.8",
            Proof = 600e6,
            Fu = 830e6,
            FreeThread = daylight / 2e3,
            Seat = RodSeat.Nut,
            NutHeight = 0.8 * d / 1e3,
            NutFu = 830e6,
            PreloadLeast = 0,
            PreloadMost = 0,
        },
    };

    /// <summary>The round that a tie rod is as a beam.</summary>
    public static RigMember Rod(RigTieRod rod) => Part("tie rod", new Round(rod.StressDiameter) { Name = rod.Thread.Name, Source = MadeUp });

    /// <summary>The same two-rod frame by its points and bars: centre lines from corner to corner.</summary>
    public static RigFreeFrame ByLines(RigTieRodFrame frame)
    {
        SectionProperties beam = frame.Crown.Shape.Properties;
        double x = frame.RodsAcross / 2, z = beam.Top + frame.Daylight + frame.RamDrop + beam.Bottom;
        RigMember rod = Rod(frame.Rod);
        return new RigFreeFrame
        {
            Daylight = frame.Daylight,
            DieWidth = frame.DieWidth,
            RamDrop = frame.RamDrop,
            Points =
            [
                new RigPoint("bed left", new Vector(-x, 0, 0), false), new RigPoint("bed middle", Vector.Zero, true), new RigPoint("bed right", new Vector(x, 0, 0), false),
                new RigPoint("crown left", new Vector(-x, 0, z), false), new RigPoint("crown middle", new Vector(0, 0, z), false), new RigPoint("crown right", new Vector(x, 0, z), false),
            ],
            Bars =
            [
                new RigBar(frame.Bed, 0, 1, Vector.Up, null, null), new RigBar(frame.Bed, 1, 2, Vector.Up, null, null),
                new RigBar(frame.Crown, 3, 4, Vector.Up, null, null), new RigBar(frame.Crown, 4, 5, Vector.Up, null, null),
                new RigBar(rod, 0, 3, -Vector.Across, null, null), new RigBar(rod, 2, 5, Vector.Across, null, null),
            ],
            CylinderAt = 4,
            WorkAt = 1,
        };
    }

    /// <summary>A press round a frame; only frame and loading matter here.</summary>
    public static Rig With(RigFrame frame) => new()
    {
        Name = "comparison",
        Wanted = 1e5,
        Cylinder = new RigCylinder
        {
            Bore = 0.1,
            Rod = 0.06,
            Stroke = 0.2,
            PullsByOil = false,
            RatedPressure = 25e6,
            BarrelSteel = Plain,
            RodSteel = Plain,
            BucklingLengthFactor = 2,
            Guide = RamGuide.Free,
            SealFriction = 0.03,
        },
        Pump = new RigHandPump
        {
            PerStroke = 2.5e-6,
            LowPerStroke = 13e-6,
            UnloadAt = 2e6,
            Cadence = 0.5,
            RatedPressure = 70e6,
            HandleForce = 380,
            UsableOil = 3e-3,
        },
        Lines = [],
        Oil = new RigOil(new OilGrade("VG 46", 46e-6, 6.8e-6, 870, MadeUp), 40),
        Frame = frame,
        Loading = new RigLoading(0, 0, 0, 2e-3, 0) { PressingPart = 0.01, PressingForce = 1e5 },
        Welding = ResolveWelder.Of(null, Ramwright.Stock.Shelf.Empty),
        Factors = new RigFactors(1.5, 3.5, 2, 1.35, 2),
        Assumed = [],
        Cautions = [],
    };
}
