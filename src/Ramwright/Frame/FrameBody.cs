using Ramwright.Geometry;
using Ramwright.Presses;

namespace Ramwright.Frame;

/// <summary>The frame as it stands in the workshop: every piece of steel in its place, and where the ram works.</summary>
/// <param name="Pieces">The pieces.</param>
/// <param name="RamFace">Middle of the ram's face, fully up, m.</param>
/// <param name="WorkFace">Middle of the face that the work stands on, m.</param>
public sealed record FrameBody(IReadOnlyList<Piece> Pieces, Vector RamFace, Vector WorkFace)
{
    /// <summary>Mass of the steel, kg; welds, bolts and cylinder not counted.</summary>
    public double Mass => Pieces.Sum(p => p.Mass);

    /// <summary>Sets the steel of a press up.</summary>
    /// <exception cref="NotSupportedException">A kind of frame that has no body yet.</exception>
    public static FrameBody Of(Rig rig)
    {
        ArgumentNullException.ThrowIfNull(rig);
        return rig.Frame switch
        {
            RigClosedFrame closed => ClosedFrameBody.Of(closed),
            RigOpenFrontFrame open => OpenFrontBody.Of(open),
            RigTieRodFrame rods => TieRodBody.Of(rods),
            RigFreeFrame free => FreeBody.Of(free),
            _ => throw new NotSupportedException($"{rig.Frame.GetType().Name} has no body."),
        };
    }
}
