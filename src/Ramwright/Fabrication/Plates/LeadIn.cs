using Ramwright.Geometry;

namespace Ramwright.Fabrication.Plates;

/// <summary>A straight run from the scrap to where a cut begins.</summary>
internal static class LeadIn
{
    /// <summary>Of what there is in a hole no more than this share is used.</summary>
    private const double MostOfHole = 0.8;

    /// <summary>The run to a loop's first corner, half way between square to its edge and back along it; null where the hole has no room.</summary>
    public static CutMove? To(IReadOnlyList<Corner> loop, double length, bool inside)
    {
        Corner first = loop[0], last = loop[^1];
        (double Y, double Z) forward = Heading(first, loop[1 % loop.Count], atStart: true), back = Heading(last, first, atStart: false);
        // the middle between the two headings, turned to the right: into the scrap
        double y = forward.Y + back.Y, z = forward.Z + back.Z, l = Math.Sqrt(y * y + z * z);
        (double Y, double Z) right = l > 1e-9 ? (z / l, -y / l) : (forward.Z, -forward.Y);
        double room = inside ? MostOfHole * LoopOffset.Widest(loop) / 2 : length, run = Math.Min(length, room);
        return run > 0 ? new CutMove(CutLayer.Lead, [new Corner(first.Y + run * right.Y, first.Z + run * right.Z), first with { Bulge = 0 }], Closed: false) : null;
    }

    private static (double Y, double Z) Heading(Corner a, Corner b, bool atStart)
    {
        double chord = Math.Atan2(b.Z - a.Z, b.Y - a.Y), turn = 2 * Math.Atan(a.Bulge);
        (double sin, double cos) = Math.SinCos(chord + (atStart ? -turn : turn));
        return (cos, sin);
    }
}
