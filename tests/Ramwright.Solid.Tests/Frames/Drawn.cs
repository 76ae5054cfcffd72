using Ramwright.Geometry;
using Ramwright.Presses;
using Ramwright.Solid.Tests.Bricks;
using Ramwright.Solid.Tests.Calculix;
using Ramwright.Solids;
using Ramwright.Stock;

namespace Ramwright.Solid.Tests.Frames;

/// <summary>A frame as the engine draws it, in one load case.</summary>
/// <param name="Id">Its number.</param>
/// <param name="Words">What it is.</param>
/// <param name="Frame">The frame.</param>
/// <param name="Aside">How far to one side the work stands, m; 0 in the middle.</param>
public sealed record Drawn(string Id, string Words, RigFrame Frame, double Aside = 0)
{
    private static readonly RigPinnedJoint Pin = new(BeamFit.Lapped) { Diameter = 0.04, Steel = Rigs.Part("pin", Rigs.Flat(40, 40)).Steel, Middle = 0.06, Outer = 0.0085, Gap = 0 };

    private static RigClosedFrame Clasping(RigJoint crown, RigJoint bed) =>
        Rigs.Closed(Rigs.Channels(200, 75, 8.5, 11.5, 60), Rigs.Flat(150, 60), 500, 700, BeamFit.Lapped) with { CrownJoint = crown, BedJoint = bed };

    private static RigTieRodFrame Rods(Func<RigTieRod, RigTieRod> rod) => Rigs.OnRods(Rigs.Plate(200, 60), 36, 4, 500, 600) is var frame ? frame with { Rod = rod(frame.Rod) } : throw new InvalidOperationException();

    private static RigJoint Welded => new RigWeldedJoint(BeamFit.Lapped, new RigWeld(WeldKind.Fillet, 6e-3));

    /// <summary>All.</summary>
    public static IReadOnlyList<Drawn> All { get; } =
    [
        new("P-01", "channels 200 clasping flat 150x60, crown on pins of 40", Clasping(Pin, Welded)),
        new("P-02", "the same, bed on pins of 40 in rows of three holes", Clasping(Welded, Pin) with { BedPins = new RigBedPins(0.12, 3, 0.08) }),
        new("R-01", "plates 200x60 on two M36, washers 115x25 under the nuts", Rods(r => r with { Washer = new RigRodWasher(0.115, 0.025, Pin.Steel) })),
        new("R-02", "plates 200x60 on two M36 in sleeves 90x45, preload 150 kN", Rods(r => r with { Seat = RodSeat.Sleeve, SleeveOutside = 0.09, SleeveInside = 0.045, FreeThread = 0, PreloadLeast = 150e3, PreloadMost = 200e3 })),
        new("F-02", "a gate by points and bars: flat 200x40 on flat 120x40, 600 by 900", Gate(Rigs.Flat(200, 40), Rigs.Flat(120, 40), 0)),
        new("F-03", "the same of box 160x120 on a foot to the back", Gate(Rigs.Box(160, 120, 10, 10), Rigs.Box(120, 120, 10, 10), 0.25)),
        new("X-01", "C-06 with its work 60 mm to one side", Studies.Named("C-06").Frame, 0.06),
        new("X-02", "R-01 with its work 60 mm to one side", Rods(r => r with { Washer = new RigRodWasher(0.115, 0.025, Pin.Steel) }), 0.06),
    ];

    private static RigFreeFrame Gate(Shape beam, Shape leg, double foot)
    {
        (RigMember bed, RigMember crown, RigMember left, RigMember right) = (Rigs.Part("bed", beam), Rigs.Part("crown", beam), Rigs.Part("left leg", leg), Rigs.Part("right leg", leg));
        RigPoint At(string name, double x, double y, double z) => new(name, new Vector(x, y, z), false);
        return new RigFreeFrame
        {
            Daylight = 0.5,
            DieWidth = 0.08,
            RamDrop = 0,
            Points =
            [
                At("b1", 0, 0, 0), At("b2", 0.3, 0, 0), At("b3", 0.6, 0, 0), At("c1", 0, 0, 0.9), At("c2", 0.3, 0, 0.9), At("c3", 0.6, 0, 0.9),
                .. foot > 0 ? (RigPoint[])[At("f1", 0, foot, 0), At("f3", 0.6, foot, 0)] : [],
            ],
            Bars =
            [
                new RigBar(bed, 0, 1, Vector.Up, null, null), new RigBar(bed, 1, 2, Vector.Up, null, null), new RigBar(crown, 3, 4, Vector.Up, null, null), new RigBar(crown, 4, 5, Vector.Up, null, null),
                new RigBar(left, 0, 3, Vector.Across, null, null), new RigBar(right, 2, 5, Vector.Across, null, null),
                .. foot > 0 ? (RigBar[])[new RigBar(Rigs.Part("left foot", leg), 0, 6, Vector.Up, null, null), new RigBar(Rigs.Part("right foot", leg), 2, 7, Vector.Up, null, null)] : [],
            ],
            CylinderAt = 4,
            WorkAt = 1,
        };
    }

    /// <summary>The load case.</summary>
    public SolidCase Case => Aside > 0 ? new SolidCase("off to one side", Aside * Vector.Across, Vector.Up) : SolidCase.Centred;

    /// <summary>The press.</summary>
    public Rig Rig => Rigs.With(Frame) with { Loading = new RigLoading(Aside, 0, 0, 2e-3, 0) { PressingPart = 0.01, PressingForce = 1e5 } };

    /// <summary>As the engine draws it.</summary>
    public PressSolid Solid => PressSolid.Of(Rig) with { Cases = [Case] };

    /// <summary>Opening at the middles of the dies and how far they turn, per newton, by CalculiX on the engine's own grid, and by the engine.</summary>
    public static (double Opening, double Turn) Of(PressSolid solid, SolidMesh mesh, Func<int, Vector> moved, int turning)
    {
        Vector Mean(IReadOnlyDictionary<int, double> s) => s.Aggregate(Vector.Zero, (sum, n) => sum + n.Value / s.Values.Sum() * moved(n.Key));
        double Slope(DieSection at)
        {
            Dictionary<int, double> s = at.Shares(mesh);
            double all = s.Values.Sum(), up = s.Sum(n => n.Value / all * mesh.At(n.Key).Z), mean = s.Sum(n => n.Value / all * Along(moved(n.Key)));
            return s.Sum(n => n.Value * (mesh.At(n.Key).Z - up) * (Along(moved(n.Key)) - mean)) / s.Sum(n => n.Value * Math.Pow(mesh.At(n.Key).Z - up, 2));
        }

        double Along(Vector v) => turning == 0 ? v.X : v.Y;
        return (Mean(PressSolid.Shares(mesh, solid.Upper)).Z - Mean(PressSolid.Shares(mesh, solid.Lower)).Z, Slope(solid.Sections.Upper) - Slope(solid.Sections.Lower));
    }

    /// <summary>The same grid and forces as CalculiX takes them; three nodes are held, which carry nothing.</summary>
    public static SolidModel Model(SolidMesh mesh, IReadOnlyDictionary<int, Vector> forces)
    {
        var model = new SolidModel(new BrickMesh(mesh));
        Vector a = mesh.At(0);
        int across = Enumerable.Range(0, mesh.NodeCount).MaxBy(i => Math.Abs(mesh.At(i).X - a.X)), up = Enumerable.Range(0, mesh.NodeCount).MaxBy(i => Math.Abs(mesh.At(i).Z - a.Z));
        foreach ((int node, int direction) in ((int, int)[])[(0, 0), (0, 1), (0, 2), (across, 1), (across, 2), (up, 1)])
            model.Held.Add((node, direction));
        foreach ((int node, Vector force) in forces)
            model.Forces[node] = force;
        return model;
    }
}
