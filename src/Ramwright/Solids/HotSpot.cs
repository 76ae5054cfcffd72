namespace Ramwright.Solids;

/// <summary>Stress at the toe of a weld, for one newton at the ram, carried on from places before it.</summary>
/// <param name="Toe">Where.</param>
/// <param name="Read">At those places, the nearest first, Pa/N: all on the line on which stress at the toe is greatest.</param>
public sealed record HotSpot(WeldToe Toe, IReadOnlyList<double> Read)
{
    /// <summary>How near a toe of a whole frame is read, on its usual grid: docs/solids.md.</summary>
    public const string Worth = "Cut as finely as a whole frame usually is, a narrow place of great stress on a face came out up to 14 % off, and its squeezes up to half as much again or a third fewer. "
        + "Rungs of joints that are kept are read from a finer cut.";

    /// <summary>A plane of the grid may be this far from a place, as a share of how far the nearest place is from the toe: between it and the next plane stress is taken as straight.</summary>
    private const double Off = 0.25;

    /// <summary>At the toe, Pa/N.</summary>
    public double Stress => Toe.Reading.AtToe(Read);

    /// <summary>At every toe of a solid, the greatest first; one whose places the grid does not meet is left out, and <see cref="Unread"/> names it.</summary>
    internal static IReadOnlyList<HotSpot> Of(PressSolid solid, SolidSolution solution) =>
        [.. solid.Toes.Select(t => At(t, solution)).OfType<HotSpot>().OrderByDescending(h => Math.Abs(h.Stress))];

    /// <summary>What to say of toes where stress could not be read.</summary>
    public static IReadOnlyList<string> Unread(SolidCheck solid)
    {
        ArgumentNullException.ThrowIfNull(solid);
        WeldToe[] unread = [.. solid.Solid.Toes.Where(t => solid.Cases.Any(c => !c.HotSpots.Any(h => h.Toe == t)))];
        return
        [
            .. unread.Select(t => $"Stress at the toe of {t.Name} is not read: the cells do not meet the places before it. Look at that weld by itself, or try other cells."),
            .. solid.Springs is not { } springs ? [] : solid.Solid.Toes.Where(t => !LocalToes.AreOf(springs, t, solid.Solid))
                .Select(t => $"The toe of {t.Name} has no factors from the joint's own solid, and no rung: look at its stress here."),
        ];
    }

    private static HotSpot? At(WeldToe toe, SolidSolution solution) => Along(toe, solution).Values.MaxBy(h => Math.Abs(h.Stress));

    /// <summary>Along a toe, by the cells' place across.</summary>
    internal static SortedDictionary<int, HotSpot> Along(WeldToe toe, SolidSolution solution)
    {
        SortedList<double, Dictionary<int, double>> planes = Planes(toe, solution);
        Dictionary<int, double>[] read = [.. Enumerable.Range(0, toe.Reading.Count).Select(i => Line(toe, i, planes))];
        return new(read[0].Keys.Where(k => read.All(r => r.ContainsKey(k))).ToDictionary(k => k, k => new HotSpot(toe, [.. read.Select(r => r[k])])));
    }

    // at one place before the toe, by the cells' place across
    private static Dictionary<int, double> Line(WeldToe toe, int place, SortedList<double, Dictionary<int, double>> planes)
    {
        if (planes.Count == 0)
            return [];
        double at = toe.Place(place), near = planes.Keys.MinBy(p => Math.Abs(p - at)), off = Math.Abs(near - at);
        if (off <= GridPlanes.Same)
            return planes[near];
        if (off > Off * toe.Reading.Before(0, toe.Thickness) || !planes.Keys.Any(p => p < at != near < at))
            return [];
        double other = planes.Keys.Where(p => p < at != near < at).MinBy(p => Math.Abs(p - at)), share = off / Math.Abs(other - near);
        return planes[near].Where(s => planes[other].ContainsKey(s.Key)).ToDictionary(s => s.Key, s => s.Value + share * (planes[other][s.Key] - s.Value));
    }

    // stress along the member on its face at every plane of the grid, by the cells' place across; of the cells before and behind, the mean
    private static SortedList<double, Dictionary<int, double>> Planes(WeldToe toe, SolidSolution solution)
    {
        SolidMesh mesh = solution.Mesh;
        int third = 3 - toe.Along - toe.Across, places = toe.Reading.Count;
        double reach = 2 * toe.Reading.Before(places - 1, toe.Thickness);
        var found = new SortedList<double, Dictionary<int, (double Sum, int Count)>>();
        Span<double> point = stackalloc double[3];
        for (int c = 0; c < mesh.CellCount; c++)
        {
            if (mesh.PartOf(c) != toe.Part)
                continue;
            Cuboid box = mesh.CellBox(c);
            if (Math.Abs((toe.Outward < 0 ? box.From(toe.Across) : box.To(toe.Across)) - toe.Face) > GridPlanes.Same || box.Middle(third) < toe.From || box.Middle(third) > toe.To
                || Math.Abs(box.Middle(toe.Along) - toe.At) > reach + box.Along(toe.Along))
                continue;
            (int x, int y, int z) = mesh.CellPlace(c);
            int key = third switch { 0 => x, 1 => y, _ => z };
            foreach (int end in (ReadOnlySpan<int>)[-1, 1])
            {
                point.Clear();
                (point[toe.Along], point[toe.Across]) = (end, toe.Outward);
                double at = end < 0 ? box.From(toe.Along) : box.To(toe.Along);
                if (!found.TryGetValue(at, out Dictionary<int, (double Sum, int Count)>? plane))
                    found.Add(at, plane = []);
                (double sum, int count) = plane.GetValueOrDefault(key);
                plane[key] = (sum + solution.Stress(c, point[0], point[1], point[2]).Along(toe.Along), count + 1);
            }
        }

        return new(found.ToDictionary(f => f.Key, f => f.Value.ToDictionary(s => s.Key, s => s.Value.Sum / s.Value.Count)));
    }
}
