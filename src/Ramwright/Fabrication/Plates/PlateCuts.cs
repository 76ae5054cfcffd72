using Ramwright.Geometry;

namespace Ramwright.Fabrication.Plates;

/// <summary>From a plate to the moves that cut it.</summary>
public static class PlateCuts
{
    /// <summary>Arm of the cross that marks a hole to be drilled, m.</summary>
    private const double Cross = 0.003;

    /// <summary>The moves of one plate, its lower left corner at the table's zero.</summary>
    /// <param name="plate">The plate.</param>
    /// <param name="style">How cuts are drawn.</param>
    public static CutSheet Of(PlatePart plate, CutStyle style)
    {
        ArgumentNullException.ThrowIfNull(plate);
        ArgumentNullException.ThrowIfNull(style);
        Extents e = plate.Outline.Extents();
        return new CutSheet(plate.Mark, [.. InOrder(Moves(plate, style, new PlateTurn(0, -e.Left, -e.Bottom)).Select(m => (m, 0)))]);
    }

    /// <summary>Where a plate's mark stands on it, in its own axes, m; null where it finds no room on the steel.</summary>
    public static (double Y, double Z)? MarkPlace(PlatePart plate)
    {
        ArgumentNullException.ThrowIfNull(plate);
        return PartMark.Place(plate) is var (y, z, _) ? (y, z) : null;
    }

    /// <summary>The moves of a plate turned and moved onto a sheet.</summary>
    internal static IEnumerable<CutMove> Moves(PlatePart plate, CutStyle style, PlateTurn turn)
    {
        IReadOnlyList<IReadOnlyList<Corner>> loops = turn.Of(plate.Outline).Loops;
        if (style.Marks && PartMark.On(plate, turn) is { } letters)
        {
            foreach (IReadOnlyList<Corner> stroke in letters)
                yield return new CutMove(CutLayer.Mark, stroke, Closed: false);
        }

        foreach (PlateHole hole in plate.Holes.Where(h => h.MarkOnly))
        {
            (double y, double z) = turn.Of(hole.Y, hole.Z);
            yield return new CutMove(CutLayer.Mark, [new Corner(y - Cross, z), new Corner(y + Cross, z)], Closed: false);
            yield return new CutMove(CutLayer.Mark, [new Corner(y, z - Cross), new Corner(y, z + Cross)], Closed: false);
        }

        foreach (PlateBend bend in plate.Bends)
        {
            (double y1, double z1) = turn.Of(bend.From.Y, bend.From.Z);
            (double y2, double z2) = turn.Of(bend.To.Y, bend.To.Z);
            yield return new CutMove(CutLayer.Bend, [new Corner(y1, z1), new Corner(y2, z2)], Closed: false);
        }

        for (int i = 0; i < loops.Count; i++)
        {
            CutLayer layer = LoopOffset.SignedArea(loops[i]) < 0 ? CutLayer.CutInside : CutLayer.CutOutside;
            // the scrap lies to the right of every loop: outer ones run anticlockwise, holes clockwise
            IReadOnlyList<Corner> path = Path(loops[i], style);
            if (style.Lead > 0 && LeadIn.To(path, style.Lead, layer == CutLayer.CutInside) is { } lead)
                yield return lead;
            yield return new CutMove(layer, path, Closed: true);
        }
    }

    // a loop without room for the cut stays true to size: the advice says so
    private static IReadOnlyList<Corner> Path(IReadOnlyList<Corner> loop, CutStyle style) =>
        style.Kerf > 0 && HasRoom(loop, style) ? LoopOffset.ToTheRight(loop, style.Kerf / 2) : loop;

    /// <summary>Whether a loop can be moved aside by half the width of the cut.</summary>
    internal static bool HasRoom(IReadOnlyList<Corner> loop, CutStyle style)
    {
        try
        {
            double area = LoopOffset.SignedArea(loop), moved = LoopOffset.SignedArea(LoopOffset.ToTheRight(loop, style.Kerf / 2));
            return Math.Sign(area) == Math.Sign(moved) && moved > area;
        }
        catch (ArgumentOutOfRangeException)
        {
            return false;
        }
    }

    /// <summary>Marks before cuts, what lies within a hole before the hole, inside before outside; a lead stays before its cut.</summary>
    /// <param name="moves">Each move, and in how many other parts its part lies.</param>
    internal static IEnumerable<CutMove> InOrder(IEnumerable<(CutMove Move, int Depth)> moves)
    {
        var groups = new List<((bool Cut, int Outer, int Layer) Rank, List<CutMove> Moves)>();
        List<CutMove>? lead = null;
        foreach ((CutMove move, int depth) in moves)
        {
            if (move.Layer == CutLayer.Lead)
            {
                lead = [move];
                continue;
            }

            List<CutMove> together = lead ?? [];
            together.Add(move);
            bool cut = move.Layer is CutLayer.CutInside or CutLayer.CutOutside;
            groups.Add(((cut, cut ? -depth : 0, (int)move.Layer), together));
            lead = null;
        }

        return groups.OrderBy(g => g.Rank).SelectMany(g => g.Moves);
    }
}
