using System.Collections.Concurrent;
using System.Globalization;
using Ramwright.Frame;
using Ramwright.Presses;
using Ramwright.Stock;

namespace Ramwright.Solids;

/// <summary>Springs of joints from local solids, each found once for its geometry and kept. May be asked from many threads.</summary>
public sealed class JointBook
{
    private readonly ConcurrentDictionary<string, RigSpring> _known = new();

    /// <summary>The joints it holds, by what describes them.</summary>
    public IReadOnlyDictionary<string, RigSpring> Joints => _known;

    /// <summary>Takes in a joint that was found before.</summary>
    public void Add(string geometry, RigSpring spring) => _known[geometry] = spring ?? throw new ArgumentNullException(nameof(spring));

    /// <summary>Springs at a frame's joints, as far as they are known already; null where one is missing, or is not found this way.</summary>
    public RigSprings? Known(Rig rig)
    {
        try
        {
            return Keys(rig) is var (upper, lower) && _known.TryGetValue(upper.Text, out RigSpring? high) && _known.TryGetValue(lower.Text, out RigSpring? low)
                ? new RigSprings(high, low) : null;
        }
        catch (SolidFaultException)
        {
            return null;        // a shape that is not drawn as a solid has no such joint
        }
    }

    /// <summary>A press with the springs that are known of its joints, if any.</summary>
    public static Rig Springing(Rig rig, JointBook? book)
    {
        ArgumentNullException.ThrowIfNull(rig);
        return book?.Known(rig) is { } springs ? rig with { Springs = springs } : rig;
    }

    /// <summary>Springs at a frame's joints, found now where they are not known; null where its joints are not found this way: tie rods, free frames, pins, gussets.</summary>
    /// <param name="rig">The press.</param>
    /// <param name="stop">Ends it early.</param>
    /// <exception cref="SolidFaultException">A frame that cannot be drawn.</exception>
    public RigSprings? Of(Rig rig, CancellationToken stop = default)
    {
        if (Keys(rig) is not var (upper, lower))
            return null;
        PressSolid? whole = null;
        RigSpring Find(JointPlace place) => _known.GetOrAdd(place.Text, _ => LocalJoint.Of(whole ??= PressSolid.Of(rig), place, stop));
        return new RigSprings(Find(upper), Find(lower));
    }

    private static (JointPlace Upper, JointPlace Lower)? Keys(Rig rig)
    {
        ArgumentNullException.ThrowIfNull(rig);
        switch (rig.Frame)
        {
            case RigClosedFrame closed when IsKnown(closed.CrownJoint) && IsKnown(closed.BedJoint) && closed.BedPins is null:
                double half = ClosedFrameBody.HalfSpan(closed), height = ClosedFrameBody.Height(closed), face = closed.Width / 2;
                double clear = height - closed.Bed.Shape.Properties.Top - closed.Crown.Shape.Properties.Bottom, beam = Math.Min(0.9 * face, face - closed.DieWidth / 2);
                return (new JointPlace(closed.CrownJoint, closed.Crown, closed.Upright, 0, face, half, height, 1, beam, 0.45 * clear),
                    new JointPlace(closed.BedJoint, closed.Bed, closed.Upright, 0, face, half, 0, -1, beam, 0.45 * clear));
            case RigOpenFrontFrame open when IsKnown(open.ArmJoint):
                SectionProperties low = open.LowerArm.Shape.Properties, high = open.UpperArm.Shape.Properties;
                height = low.Top + open.Daylight + open.RamDrop + high.Bottom;
                clear = height - low.Top - high.Bottom;
                double back = open.Column.Shape.Properties.Top;
                return (new JointPlace(open.ArmJoint, open.UpperArm, open.Column, 1, 0, back, height, 1, 0.9 * open.ArmReach, 0.45 * clear),
                    new JointPlace(open.ArmJoint, open.LowerArm, open.Column, 1, 0, back, 0, -1, 0.9 * open.ArmReach, 0.45 * clear));
            default:
                return null;
        }
    }

    private static bool IsKnown(RigJoint joint) => joint is not RigPinnedJoint && joint.Gusset is null;
}

/// <summary>A joint in its frame: what is joined, how, and where.</summary>
/// <param name="Joint">How.</param>
/// <param name="Beam">The beam or arm.</param>
/// <param name="Upright">The upright or column.</param>
/// <param name="Along">Axis along the beam: 0 across, 1 from front to back.</param>
/// <param name="Face">Where the upright's face is along it, m; the beam runs from there to smaller numbers.</param>
/// <param name="Axis">Where the upright's centroid is along it, m.</param>
/// <param name="Height">Height of the beam's centroid, m.</param>
/// <param name="Up">1 for the upper joint, whose upright hangs down; −1 for the lower.</param>
/// <param name="BeamRoom">Length of beam that there is, m.</param>
/// <param name="UprightRoom">Length of upright that there is, m.</param>
internal sealed record JointPlace(
    RigJoint Joint, RigMember Beam, RigMember Upright, int Along, double Face, double Axis, double Height, int Up, double BeamRoom, double UprightRoom)
{
    /// <summary>Lengths of beam and upright that are kept, in their own depths: the dents of the joint have died away by then.</summary>
    private const double Kept = 1;

    /// <summary>The same for a pair, whose halves twist on until the die ties them.</summary>
    private const double KeptOfPair = 4;

    /// <summary>How much of the beam is kept, m.</summary>
    public double KeptBeam => Keeps(Beam.Shape, BeamRoom);

    /// <summary>How much of the upright is kept, m.</summary>
    public double KeptUpright => Keeps(Upright.Shape, UprightRoom);

    private static double Keeps(Shape shape, double room) => Math.Min((shape is Pair ? KeptOfPair : Kept) * shape.Properties.Height, room);

    /// <summary>All that the springs hang on, in tenths of a millimetre: joints of one text give alike.</summary>
    public string Text => string.Join(' ', Along == 0 ? "corner" : "arm", Turned + Way(Joint), "| beam", Walls(Beam.Shape), "| upright", Walls(Upright.Shape), "| kept", Number(KeptBeam), Number(KeptUpright));

    // upper and lower joint are mirrored; only a beam that is alike above and below is then the same
    private string Turned => Math.Abs(Beam.Shape.Properties.Top - Beam.Shape.Properties.Bottom) < 1e-6 ? "" : Up > 0 ? "upper " : "lower ";

    private static string Way(RigJoint joint) => joint switch
    {
        RigWeldedJoint w => $"weld {joint.Fit} {w.Weld.Kind} {Number(w.Weld.Throat)}",
        RigSlottedJoint s => $"slot {s.Weld.Kind} {Number(s.Weld.Throat)}",
        RigBoltedJoint b => $"bolt {joint.Fit} {b.Count} of {Number(b.Thread.D)} {Number(b.Pitch)} {Number(b.Gauge)}",
        _ => $"whole {joint.Fit}",
    };

    private static string Walls(Shape shape) => string.Join(',', Wall.Of(shape).Select(w => $"{Number(w.Y0)}:{Number(w.Y1)}:{Number(w.Z0)}:{Number(w.Z1)}"));

    private static string Number(double m) => Math.Round(m * 1e4).ToString(CultureInfo.InvariantCulture);
}
