using Ramwright.Workings;

namespace Ramwright.Solids;

/// <summary>Stress at the toe of a weld, for one newton at the ram, carried on in a straight line from 1.0 and 0.4 thicknesses before it.</summary>
/// <param name="Toe">Where.</param>
/// <param name="Near">At 0.4 thicknesses, Pa/N: the greatest along the toe.</param>
/// <param name="Far">At 1.0 thickness, Pa/N, on the same line.</param>
public sealed record HotSpot(WeldToe Toe, double Near, double Far)
{
    /// <summary>Where the rule comes from.</summary>
    public static readonly Citation Source = new("A. Hobbacher (ed.), Recommendations for fatigue design of welded joints and components, IIW-1823-07",
        "2.2.3, structural hot-spot stress, fine mesh: 1.67 σ(0.4t) − 0.67 σ(1.0t)");

    /// <summary>How near a toe of a whole frame is read, on its usual grid: docs/solids.md.</summary>
    public const string Worth = "Cut as finely as a whole frame usually is, a narrow place of great stress came out up to 14 % off, and its squeezes up to half as much again or a third fewer. "
        + "Rungs of joints that are kept are read from a finer cut.";

    /// <summary>At the toe, Pa/N: 1.67 σ(0.4t) − 0.67 σ(1.0t).</summary>
    public double Stress => 1.67 * Near - 0.67 * Far;

    /// <summary>At every toe of a solid; a toe in whose wall too little is left is passed over.</summary>
    internal static IReadOnlyList<HotSpot> Of(PressSolid solid, SolidSolution solution) =>
        [.. solid.Toes.Select(t => At(t, solution)).OfType<HotSpot>().OrderByDescending(h => Math.Abs(h.Stress))];

    private static HotSpot? At(WeldToe toe, SolidSolution solution) => Along(toe, solution).Values.MaxBy(h => Math.Abs(h.Stress));

    /// <summary>Along a toe, by the cells' place across.</summary>
    internal static SortedDictionary<int, HotSpot> Along(WeldToe toe, SolidSolution solution)
    {
        Dictionary<int, double> near = Line(toe, WeldToe.Near, solution), far = Line(toe, WeldToe.Far, solution);
        return new(near.Keys.Where(far.ContainsKey).ToDictionary(k => k, k => new HotSpot(toe, near[k], far[k])));
    }

    /// <summary>A plane that stands in for one beside it may be this far off, in thicknesses.</summary>
    private const double Off = 0.05;

    // stress along the member on its face, at one distance, by the cells' place across; of the cells before and behind, the mean
    private static Dictionary<int, double> Line(WeldToe toe, double share, SolidSolution solution)
    {
        SolidMesh mesh = solution.Mesh;
        int third = 3 - toe.Along - toe.Across;
        int[] cells = [.. Enumerable.Range(0, mesh.CellCount).Where(c => mesh.PartOf(c) == toe.Part && IsUnder(mesh.CellBox(c)))];
        double[] planes = [.. cells.SelectMany(c => new[] { mesh.CellBox(c).From(toe.Along), mesh.CellBox(c).To(toe.Along) }).Distinct()];
        var found = new Dictionary<int, (double Sum, int Count)>();
        double at = planes.DefaultIfEmpty(double.PositiveInfinity).MinBy(p => Math.Abs(p - toe.Place(share)));
        if (Math.Abs(at - toe.Place(share)) > Off * toe.Thickness)
            return [];
        foreach (int c in cells)
        {
            Cuboid box = mesh.CellBox(c);
            double end = Math.Abs(box.From(toe.Along) - at) < GridPlanes.Same ? -1 : Math.Abs(box.To(toe.Along) - at) < GridPlanes.Same ? 1 : 0;
            if (end == 0)
                continue;
            Span<double> point = [0, 0, 0];
            (point[toe.Along], point[toe.Across]) = (end, toe.Outward);
            (int x, int y, int z) = mesh.CellPlace(c);
            int key = third switch { 0 => x, 1 => y, _ => z };
            (double sum, int count) = found.GetValueOrDefault(key);
            found[key] = (sum + solution.Stress(c, point[0], point[1], point[2]).Along(toe.Along), count + 1);
        }

        return found.ToDictionary(f => f.Key, f => f.Value.Sum / f.Value.Count);

        bool IsUnder(Cuboid box) => Math.Abs((toe.Outward < 0 ? box.From(toe.Across) : box.To(toe.Across)) - toe.Face) <= GridPlanes.Same
            && box.Middle(third) >= toe.From && box.Middle(third) <= toe.To;
    }
}
