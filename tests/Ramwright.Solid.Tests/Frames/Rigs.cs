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
        Factors = new RigFactors(1.5, 3.5, 2, 1.35, 2),
        Assumed = [],
        Cautions = [],
    };
}
