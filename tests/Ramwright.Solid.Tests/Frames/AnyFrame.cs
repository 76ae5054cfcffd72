using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Stock;
using static Ramwright.Solid.Tests.Frames.Rigs;

namespace Ramwright.Solid.Tests.Frames;

/// <summary>Frames made up at random as a workshop might build them: spans of two depths or more, walls that belong together, bolts in steel.</summary>
internal sealed class AnyFrame(int seed)
{
    private readonly Random _random = new(seed);

    /// <summary>Kinds, and how many of each are looked at.</summary>
    public static IReadOnlyList<(string Kind, int Count)> Kinds { get; } =
    [
        ("bars", 6), ("profiles", 8), ("pairs", 6), ("bolted pairs", 6), ("cornered", 6), ("slot", 6), ("face", 12), ("gusset", 8), ("rods", 12), ("boxes on rods", 8),
    ];

    /// <summary>A kind as the page says it.</summary>
    public static string Words(string kind) => kind switch
    {
        "bars" => "closed, bars",
        "profiles" => "closed, I and box",
        "pairs" => "closed, channels clasping bars, boxes and channels, welded",
        "bolted pairs" => "the same, at four bolts",
        "cornered" => "closed, with gussets",
        "slot" => "open front, bars through a slot",
        "face" => "open front, on the face",
        "gusset" => "the same, with gussets",
        "rods" => "plates on two or four tie rods",
        _ => "boxes on two tie rods",
    };

    /// <summary>All of them, by name.</summary>
    public static IReadOnlyList<(string Name, RigFrame Frame)> All { get; } =
        [.. Kinds.SelectMany((k, i) => Enumerable.Range(1, k.Count).Select(n => ($"{k.Kind} {n}", new AnyFrame(1000 * (i + 1) + n).Of(k.Kind))))];

    private RigFrame Of(string kind) => kind switch
    {
        "bars" => Between(Bar(100, 260), Bar(80, 240), Fit()),
        "profiles" => Between(Profile(140, 300), Profile(120, 260), Fit()),
        "pairs" => Clasping(false),
        "bolted pairs" => Clasping(true),
        "cornered" => Cornered(),
        "slot" => Slotted(),
        "face" => OnFace(),
        "gusset" => Gusseted(OnFace()),
        "rods" => Rodded(false),
        _ => Rodded(true),
    };

    private double Any(double least, double most, double step = 10) => Math.Round((least + (most - least) * _random.NextDouble()) / step) * step;

    private bool Coin() => _random.Next(2) == 0;

    private BeamFit Fit() => Coin() ? BeamFit.Between : BeamFit.Over;

    private Shape Bar(double least, double most) => Flat(Any(least, most), Any(25, 60, 5));

    private Shape Profile(double least, double most)
    {
        double h = Any(least, most, 20), b = Coin() ? h : h / 2, t = Math.Round(h * 0.04, 0);
        return _random.Next(3) == 0 ? Box(h, Math.Max(80, b), t + 2, t + 2) : I(h, b, t, Math.Round(1.6 * t));
    }

    private RigWeldedJoint Welded(BeamFit fit) => new(fit, Coin() ? new RigWeld(WeldKind.Butt, 0.01) : new RigWeld(WeldKind.Fillet, 6e-3));

    private RigClosedFrame Between(Shape beam, Shape upright, BeamFit fit)
    {
        double h = beam.Properties.Height * 1e3;
        RigClosedFrame frame = Closed(beam, upright, Any(Math.Max(300, 2 * h), Math.Max(500, 4.5 * h)), Any(400, 900), fit);
        return frame with { DieWidth = Any(50, 120) / 1e3, CrownJoint = Welded(fit), BedJoint = Welded(fit) };
    }

    private RigClosedFrame Cornered()
    {
        RigClosedFrame frame = Between(Coin() ? Bar(100, 240) : Profile(140, 260), Coin() ? Bar(100, 200) : Profile(120, 220), BeamFit.Between);
        RigGusset gusset = Gusset(frame.Width / 2 - frame.DieWidth / 2, frame.Crown.Shape, frame.Upright.Shape);
        return frame with { CrownJoint = frame.CrownJoint with { Gusset = gusset }, BedJoint = frame.BedJoint with { Gusset = gusset } };
    }

    private RigClosedFrame Clasping(bool bolted)
    {
        double h = Any(140, 260, 20), b = Math.Round(0.3 * h + 15), t = Math.Round(0.025 * h + 3.5), hu = Any(bolted ? 120 : 100, 180, 20);
        Shape upright = _random.Next(3) switch
        {
            0 => Flat(hu, Any(30, 70)),
            1 => Channels(hu, Math.Round(0.3 * hu + 15), Math.Round(0.025 * hu + 3.5), Math.Round(0.045 * hu + 3.5), Any(10, 40), bolted ? Coin() : true),
            _ => Box(hu, Any(80, 120), 8, 10),
        };
        RigClosedFrame frame = Closed(Channels(h, b, t, Math.Round(1.4 * t), upright.Properties.Width * 1e3), upright, Any(Math.Max(400, 2.2 * h), Math.Max(500, 4 * h)), Any(450, 900), BeamFit.Lapped);
        frame = frame with { DieWidth = Any(60, 120) / 1e3 };
        double d = Any(16, 24, 4) / 1e3;
        RigJoint joint = bolted
            ? new RigBoltedJoint(BeamFit.Lapped)
            {
                Thread = new ScrewThread(d, 2.5e-3) { Name = $"M{d * 1e3:0}" },
                Class = new PropertyClass("8.8", 0, 1, 600e6, 640e6, 800e6, Workings.Citation.Practice("made up for a comparison")),
                Count = 4,
                Pitch = Math.Round(hu * 0.5) / 1e3,
                Gauge = Math.Round(h * 0.5) / 1e3,
                Edge = 0.045,
                Plate = t / 1e3,
                ShearPlanes = 2,
            }
            : Welded(BeamFit.Lapped);
        return frame with { CrownJoint = joint, BedJoint = joint };
    }

    private RigOpenFrontFrame Slotted()
    {
        double h = Any(160, 300, 20), t = Math.Round(h * 0.045), arm = h * (0.75 + 0.5 * _random.NextDouble());
        return Opened(I(h, h, t, Math.Round(1.6 * t)), Flat(Math.Round(arm), Any(25, Math.Min(60, h / 4), 5)), true);
    }

    private RigOpenFrontFrame OnFace()
    {
        Shape column = _random.Next(3) == 0 ? Bar(160, 280) : Profile(160, 300);
        Shape arm = column is Flat || Coin() ? Bar(140, 260) : Profile(140, 260);
        return Opened(column, arm, false);
    }

    private RigOpenFrontFrame Opened(Shape column, Shape arm, bool slotted)
    {
        RigOpenFrontFrame frame = Open(column, arm, Any(150, 320), Any(300, 600), slotted);
        return slotted ? frame : frame with { ArmJoint = Welded(BeamFit.Between) };
    }

    private RigOpenFrontFrame Gusseted(RigOpenFrontFrame frame) =>
        frame with { ArmJoint = frame.ArmJoint with { Gusset = Gusset(frame.Throat, frame.UpperArm.Shape, frame.Column.Shape) } };

    private RigGusset Gusset(double room, Shape beam, Shape upright)
    {
        double leg = Any(60, Math.Min(180, 800 * room)), up = Any(Math.Max(60, 0.6 * leg), Math.Min(180, 1.6 * leg));
        return new RigGusset(leg / 1e3, up / 1e3, Any(8, Math.Clamp(Math.Min(beam.Properties.Width, upright.Properties.Width) * 1e3, 10, 20), 2) / 1e3, 1, new RigWeld(WeldKind.Fillet, 5e-3), Part("gusset", beam).Steel);
    }

    private RigTieRodFrame Rodded(bool boxes)
    {
        double d = Any(24, 48, 6), across = Any(300, 600), daylight = Any(350, 900), deep = Coin() ? Any(120, 200) : 0;
        Shape beam = boxes ? Box(Any(160, 240, 20), Any(100, 160), Any(8, 14, 2), Any(10, 16, 2)) : Plate(Math.Max(Any(140, 300), deep + 4 * d), Any(40, 100, 5));
        RigTieRodFrame frame = OnRods(beam, d, 3, across, daylight, boxes ? 0 : deep, boxes || Coin() ? 0 : Any(60, 120));
        bool plain = Coin(), clamped = Coin();
        double hole = boxes || Coin() ? 0 : Any(40, 100);
        RigEndPlate? plate = boxes ? null : new RigEndPlate(beam.Properties.Height, beam.Properties.Width, (across + 4 * d) / 1e3, hole / 1e3);
        return frame with
        {
            DieWidth = Any(60, 120) / 1e3,
            CrownPlate = plate,
            BedPlate = plate is null ? null : plate with { Hole = 0 },
            Rod = frame.Rod with { Shank = plain ? 0.9 * d / 1e3 : null, FreeThread = plain ? 0.05 : daylight / 2e3, PreloadLeast = clamped ? 5e5 : 0, PreloadMost = clamped ? 7e5 : 0 },
        };
    }
}
