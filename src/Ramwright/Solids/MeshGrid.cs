using Ramwright.Geometry;
using Ramwright.Quantities;

namespace Ramwright.Solids;

/// <summary>The planes of a mesh, and how its places are counted: fastest along <see cref="Fast"/>, slowest along <see cref="Slow"/>.</summary>
internal sealed class MeshGrid
{
    private MeshGrid(double[][] planes)
    {
        Planes = planes;
        int[] order = [0, 1, 2];
        // most planes along the slowest axis, so that there are many layers to share out; next most along the fastest, so that runs are long
        Array.Sort(order, (a, b) => planes[a].Length != planes[b].Length ? planes[a].Length.CompareTo(planes[b].Length) : a.CompareTo(b));
        (Middle, Fast, Slow) = (order[0], order[1], order[2]);
    }

    public static MeshGrid Of(IReadOnlyList<SolidPart> parts, IReadOnlyList<Bond> bonds, IReadOnlyList<Cuboid> lines, CellSizes cells)
    {
        if (parts.Count == 0 || parts.Any(p => p.Blocks.Count == 0))
            throw new SolidFaultException(parts.FirstOrDefault(p => p.Blocks.Count == 0) is { } empty ? $"{empty.Name} has no steel to it" : "there is nothing to mesh");
        foreach (SolidPart part in parts)
            foreach (Cuboid b in part.Blocks)
                for (int axis = 0; axis < 3; axis++)
                    if (!(b.Along(axis) > GridPlanes.Same) || !double.IsFinite(b.Along(axis)))
                        throw new SolidFaultException(!double.IsFinite(b.Along(axis)) ? $"{part.Name} has a wall without an end" : $"{part.Name} has a wall of no thickness: nothing that could be cut into cells");
        return new MeshGrid([.. Enumerable.Range(0, 3).Select(axis =>
        {
            double least = parts.Min(p => p.Blocks.Min(b => b.From(axis))), most = parts.Max(p => p.Blocks.Max(b => b.To(axis)));
            IEnumerable<Face> faces =
            [
                .. parts.SelectMany(p => p.Blocks.Concat(p.Cuts).SelectMany(b => Both(b, axis, p.Name))),
                .. bonds.SelectMany(b => Both(b.Where, axis, $"the weld between {parts[b.A].Name} and {parts[b.B].Name}")),
                .. lines.SelectMany(b => Both(b, axis, "the die")),
            ];
            return GridPlanes.Of(faces.Where(f => f.At > least - GridPlanes.Same && f.At < most + GridPlanes.Same), cells);
        })]);
    }

    private static Face[] Both(Cuboid b, int axis, string name) => [new(b.From(axis), name), new(b.To(axis), name)];

    public double[][] Planes { get; }
    public int Fast { get; }
    public int Middle { get; }
    public int Slow { get; }

    public int NodesFast => Planes[Fast].Length;
    public int NodesMiddle => Planes[Middle].Length;
    public int NodesSlow => Planes[Slow].Length;

    /// <summary>Number of a place.</summary>
    public int Index(int fast, int middle, int slow) => (slow * NodesMiddle + middle) * NodesFast + fast;

    /// <summary>Counts along x, y and z of a place.</summary>
    public (int X, int Y, int Z) Place(int index)
    {
        Span<int> at = stackalloc int[3];
        at[Fast] = index % NodesFast;
        at[Middle] = index / NodesFast % NodesMiddle;
        at[Slow] = index / NodesFast / NodesMiddle;
        return (at[0], at[1], at[2]);
    }

    public Vector NodeAt(int index)
    {
        (int i, int j, int k) = Place(index);
        return new Vector(Planes[0][i], Planes[1][j], Planes[2][k]);
    }

    public Cuboid CellBox(int index)
    {
        (int i, int j, int k) = Place(index);
        return new Cuboid(Planes[0][i], Planes[0][i + 1], Planes[1][j], Planes[1][j + 1], Planes[2][k], Planes[2][k + 1]);
    }

    /// <summary>The cells that a box covers along an axis: from, and up to but without.</summary>
    public (int From, int To) Range(int axis, double from, double to)
    {
        double[] planes = Planes[axis];
        return (First(planes, from - GridPlanes.Same), First(planes, to - GridPlanes.Same));
    }

    private static int First(double[] planes, double atLeast)
    {
        if (double.IsInfinity(atLeast))
            return atLeast < 0 ? 0 : planes.Length - 1;
        int at = Array.BinarySearch(planes, atLeast);
        return Math.Min(at < 0 ? ~at : at, planes.Length - 1);
    }
}
