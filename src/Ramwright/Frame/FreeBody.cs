using Ramwright.Geometry;
using Ramwright.Presses;

namespace Ramwright.Frame;

/// <summary>The steel of a free frame: its bars on their centre lines from point to point, as in <see cref="FreePlan"/>.</summary>
internal static class FreeBody
{
    public static FrameBody Of(RigFreeFrame frame)
    {
        var pieces = new List<Piece>();
        foreach (RigBar bar in frame.Bars)
        {
            Vector from = frame.Points[bar.From].At, to = frame.Points[bar.To].At, x = (to - from).Unit;
            // Up stands square to the bar, as near to the depth that was asked for as can be
            pieces.AddRange(Piece.Of(bar.Member.Part, bar.Member, from, to, x.Cross(bar.Depth.Cross(x)).Unit));
        }

        Vector ram = frame.Points[frame.CylinderAt].At - frame.RamDrop * Vector.Up;
        return new FrameBody(pieces, ram, ram - frame.Daylight * Vector.Up);
    }
}
