using System.Globalization;
using Ramwright.Presses;
using Ramwright.Stock;

namespace Ramwright.Solids;

/// <summary>A joint in its frame: what is joined, how, and where; and how much of the frame round it is cut out to find its springs.</summary>
internal sealed record JointPlace
{
    /// <summary>Lengths of beam and upright that are kept, in their own depths: the dents of the joint have died away by then.</summary>
    private const double Kept = 1;

    /// <summary>The same for an upright that is a box: its section distorts where a face is bent, and that dies away more slowly.</summary>
    private const double KeptOfBox = 2;

    /// <summary>The same for an upright that is a pair, whose halves twist on for longer.</summary>
    private const double KeptOfPair = 4;

    /// <summary>How the two are joined, in short.</summary>
    public required string Way { get; init; }

    /// <summary>The beam or arm.</summary>
    public required RigMember Beam { get; init; }

    /// <summary>The upright, column or tie rods.</summary>
    public required JointUpright Upright { get; init; }

    /// <summary>Axis along the beam: 0 across, 1 from front to back.</summary>
    public required int Along { get; init; }

    /// <summary>Where the beam of the frame's model ends along it, m; it runs from there to smaller numbers.</summary>
    public required double Face { get; init; }

    /// <summary>Where the upright's centroid is along it, m.</summary>
    public required double Axis { get; init; }

    /// <summary>Height of the beam's centroid, m.</summary>
    public required double Height { get; init; }

    /// <summary>Where the upright of the frame's model ends, m above the bed's or lower arm's centroid.</summary>
    public required double Edge { get; init; }

    /// <summary>1 for the upper joint, whose upright hangs down; −1 for the lower.</summary>
    public required int Up { get; init; }

    /// <summary>Length of beam that there is, m.</summary>
    public required double BeamRoom { get; init; }

    /// <summary>Length of upright that there is, m.</summary>
    public required double UprightRoom { get; init; }

    /// <summary>The die, where the solid reaches to the middle of the press; null where it ends well before.</summary>
    public JointDie? Die { get; init; }

    /// <summary>How much of the beam is kept, m.</summary>
    public double KeptBeam => Die is null ? Math.Min(Kept * Beam.Shape.Properties.Height, BeamRoom) : BeamRoom;

    /// <summary>How much of the upright is kept, m.</summary>
    public double KeptUpright => Math.Min(Upright.Rods is { } rod ? rod.NutHeight + 2 * rod.Thread.D : KeptOf(Upright.Member!.Shape) * Upright.Member.Shape.Properties.Height, UprightRoom);

    private static double KeptOf(Shape upright) => upright switch { Pair => KeptOfPair, Box or RectangularHollow => KeptOfBox, _ => Kept };

    /// <summary>All that the springs hang on, in tenths of a millimetre: joints of one text give alike.</summary>
    public string Text => string.Join(' ', Along == 0 ? "corner" : "arm", Turned + Way, "| beam", Walls(Beam.Shape), "| upright", Upright.Member is { } upright ? Walls(upright.Shape) : Upright.Text,
        "| kept", Number(KeptBeam), Number(KeptUpright)) + (Die is null ? "" : $" | to the middle, {Die.Text}");

    // upper and lower joint are mirrored; only a beam that is alike above and below is then the same
    private string Turned => Math.Abs(Beam.Shape.Properties.Top - Beam.Shape.Properties.Bottom) < 1e-6 ? "" : Up > 0 ? "upper " : "lower ";

    /// <summary>A joint in short.</summary>
    public static string WayOf(RigJoint joint)
    {
        string way = joint switch
        {
            RigWeldedJoint w => $"weld {joint.Fit} {w.Weld.Kind} {Number(w.Weld.Throat)}",
            RigSlottedJoint s => $"slot {s.Weld.Kind} {Number(s.Weld.Throat)}",
            RigBoltedJoint b => $"bolt {joint.Fit} {b.Count} of {Number(b.Thread.D)} {Number(b.Pitch)} {Number(b.Gauge)}",
            _ => $"whole {joint.Fit}",
        };
        return joint.Gusset is { } g ? $"{way} gusset {g.Count} of {Number(g.LegAlong)} {Number(g.LegUp)} {Number(g.Thickness)}" : way;
    }

    /// <summary>A length in tenths of a millimetre.</summary>
    public static string Number(double m) => Math.Round(m * 1e4).ToString(CultureInfo.InvariantCulture);

    private static string Walls(Shape shape) => string.Join(',', Wall.Of(shape).Select(w => $"{Number(w.Y0)}:{Number(w.Y1)}:{Number(w.Z0)}:{Number(w.Z1)}"));
}

/// <summary>What stands at a joint: an upright or column, or the tie rods at one end of a beam.</summary>
/// <param name="Member">The upright or column; null for rods.</param>
/// <param name="Rods">The rods; null for an upright.</param>
/// <param name="Count">How many rods.</param>
internal sealed record JointUpright(RigMember? Member, RigTieRod? Rods = null, int Count = 1)
{
    /// <summary>What springs at rods hang on.</summary>
    public string Text { get; init; } = "";

    /// <summary>Second moment of area that the beam model takes, m⁴.</summary>
    public double Second => Member?.Shape.Properties.Iy ?? Count * Math.PI * Math.Pow(RodDiameter, 4) / 64;

    /// <summary>Its stretch under one newton over a length from the joint, times Young's modulus, 1/m: a rod's thread ends where its plain part begins.</summary>
    public double Stretch(double length)
    {
        if (Rods is not { } rod)
            return length / Member!.Shape.Properties.A;
        double threads = rod.Shank is null ? length : Math.Min(rod.FreeThread, length), shank = rod.Shank ?? 1;
        return (threads / rod.As + (length - threads) / (Math.PI / 4 * shank * shank)) / Count;
    }

    /// <summary>The round that a rod bends as in the beam model, m.</summary>
    private double RodDiameter => Rods!.Shank is { } shank ? Math.Min(shank, Rods.Thread.D) : Rods.StressDiameter;
}

/// <summary>The die on a beam, where it is part of a joint's solid.</summary>
/// <param name="Width">Over which the beam model spreads its force, m.</param>
/// <param name="Pressing">How far the beam model lets it sink in for one newton, m/N.</param>
/// <param name="Text">All else that its dent hangs on.</param>
internal sealed record JointDie(double Width, double Pressing, string Text);
