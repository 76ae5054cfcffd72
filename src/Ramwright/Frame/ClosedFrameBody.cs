using Ramwright.Geometry;
using Ramwright.Presses;
using Ramwright.Stock;

namespace Ramwright.Frame;

/// <summary>The steel of a closed frame. The origin is the bed's centroid under the ram, as in <see cref="ClosedFramePlan"/>.</summary>
internal static class ClosedFrameBody
{
    public static FrameBody Of(RigClosedFrame frame)
    {
        SectionProperties crown = frame.Crown.Shape.Properties, bed = frame.Bed.Shape.Properties, upright = frame.Upright.Shape.Properties;
        double half = HalfSpan(frame), height = Height(frame);
        double foot = frame.BedJoint.Fit == BeamFit.Over ? bed.Top : -bed.Bottom;
        // rows of pin holes end in steel below the lowest
        foot = Math.Min(foot, -frame.BedPins?.Edge ?? foot);
        double head = height + (frame.CrownJoint.Fit == BeamFit.Over ? -crown.Bottom : crown.Top);

        Piece[] pieces =
        [
            .. Beam("crown", frame.Crown, frame.CrownJoint.Fit, height),
            .. Beam("bed", frame.Bed, frame.BedJoint.Fit, 0),
            .. Piece.Of("left upright", frame.Upright, new Vector(-half, 0, foot), new Vector(-half, 0, head), -Vector.Across),
            .. Piece.Of("right upright", frame.Upright, new Vector(half, 0, foot), new Vector(half, 0, head), Vector.Across),
            .. Gussets(-1, ", left"),
            .. Gussets(1, ", right"),
        ];
        return new FrameBody(pieces, new Vector(0, 0, bed.Top + frame.Daylight), new Vector(0, 0, bed.Top));

        IEnumerable<Piece> Gussets(int side, string where)
        {
            Vector face = side * frame.Width / 2 * Vector.Across, inward = -side * Vector.Across;
            return
            [
                .. GussetPlate.Of(frame.CrownJoint, frame.Crown, frame.Upright, face + (height - crown.Bottom) * Vector.Up, inward, -Vector.Up, where),
                .. GussetPlate.Of(frame.BedJoint, frame.Bed, frame.Upright, face + bed.Top * Vector.Up, inward, Vector.Up, where),
            ];
        }

        IEnumerable<Piece> Beam(string name, RigMember member, BeamFit fit, double z)
        {
            double end = fit == BeamFit.Between ? half - upright.Bottom : half + upright.Top;
            return Piece.Of(name, member, new Vector(-end, 0, z), new Vector(end, 0, z), Vector.Up);
        }
    }

    /// <summary>From the ram's centre line to an upright's, m.</summary>
    internal static double HalfSpan(RigClosedFrame frame) => frame.Width / 2 + frame.Upright.Shape.Properties.Bottom;

    /// <summary>From the bed's centre line to the crown's, m.</summary>
    internal static double Height(RigClosedFrame frame) =>
        frame.Bed.Shape.Properties.Top + frame.Daylight + frame.RamDrop + frame.Crown.Shape.Properties.Bottom;
}
