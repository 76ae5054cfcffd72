using Ramwright.Geometry;
using Ramwright.Presses;

namespace Ramwright.Fabrication.Nesting;

/// <summary>Holes of parts whose drop-out is large enough to cut other parts from.</summary>
internal static class Windows
{
    private const double Fine = 1e-5;

    /// <summary>The holes of a part that some part of its group might lie in, with the gap left all round.</summary>
    /// <param name="part">The part.</param>
    /// <param name="group">All parts of its thickness and steel.</param>
    /// <param name="cutting">Gaps and turns.</param>
    public static IReadOnlyList<Corner>[] Of(PlatePart part, IReadOnlyList<PlatePart> group, RigCutting cutting) =>
        [.. part.Outline.Loops.Skip(1).Where(hole => group.Any(other => MightHold(hole, other, cutting)))];

    private static bool MightHold(IReadOnlyList<Corner> hole, PlatePart other, RigCutting cutting)
    {
        Extents there = new Outline([hole]).Extents(), e = other.Outline.Extents();
        double wide = there.Width - 2 * cutting.PartGap, high = there.Height - 2 * cutting.PartGap;
        if (wide <= 0 || high <= 0 || EdgeArea(other) > wide * high)
            return false;
        // a part that may be turned by odd angles can be narrower than its width and height; no part goes through less than its area over its greatest length
        bool quarter = Math.Abs(Math.IEEERemainder(cutting.TurnStep, Math.PI / 2)) < 1e-9;
        return quarter ? (e.Width <= wide && e.Height <= high) || (e.Height <= wide && e.Width <= high)
            : EdgeArea(other) / Math.Sqrt(e.Width * e.Width + e.Height * e.Height) <= Math.Min(wide, high);
    }

    /// <summary>In how many others a part of a nest lies: one that is cut from the drop-out of another comes before it.</summary>
    /// <param name="parts">The nest.</param>
    public static int[] Depths(IReadOnlyList<NestedPart> parts)
    {
        IReadOnlyList<(double Y, double Z)[]>[] loops = [.. parts.Select(p => p.Part.Outline.Loops.Count > 1 ? p.Outline.Polygons(Fine) : [])];
        return [.. parts.Select((p, i) =>
        {
            (double y, double z) = p.Turn.Of(p.Part.Outline.Loops[0][0].Y, p.Part.Outline.Loops[0][0].Z);
            return Enumerable.Range(0, parts.Count).Count(j => j != i && loops[j].Skip(1).Any(hole => PlateFit.Encloses(hole, y, z)));
        })];
    }

    private static double EdgeArea(PlatePart part) => new Outline([part.Outline.Loops[0]]).Area();
}
