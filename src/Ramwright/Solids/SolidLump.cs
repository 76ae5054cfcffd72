using Ramwright.Geometry;

namespace Ramwright.Solids;

/// <summary>Steel of one part round a cell, as far as half the thickness of its wall each way.</summary>
internal sealed class SolidLump
{
    // points of an edge cut in two that sum up cubics, from its middle, in half edges
    private static readonly double Gauss = 1 / Math.Sqrt(3);

    private readonly SolidMesh _mesh;
    private readonly int _cell, _part;
    private readonly double _half;
    private readonly Cuboid _box;
    private readonly int[] _cells;
    private readonly Reach[] _reach = new Reach[3];

    /// <summary>Where the steel ends along an axis.</summary>
    private enum Reach
    {
        /// <summary>It goes on both ways.</summary>
        Through,
        /// <summary>It ends on the low side.</summary>
        Low,
        /// <summary>It ends on the high side.</summary>
        High,
        /// <summary>It ends on both: the lump is the whole wall.</summary>
        Wall,
    }

    private SolidLump(SolidMesh mesh, CellLookup lookup, int cell)
    {
        (_mesh, _cell, _part) = (mesh, cell, mesh.PartOf(cell));
        Cuboid own = mesh.CellBox(cell);
        (double x, double y, double z) = (own.Middle(0), own.Middle(1), own.Middle(2));
        _half = mesh.Parts[_part].Blocks.Where(b => b.Holds(x, y, z)).Min(b => Math.Min(b.Along(0), Math.Min(b.Along(1), b.Along(2)))) / 2;
        _box = new Cuboid(x - _half, x + _half, y - _half, y + _half, z - _half, z + _half);
        for (int axis = 0; axis < 3; axis++)
        {
            double low = Edge(axis, -1), high = Edge(axis, 1);
            bool ends = low >= own.Middle(axis) - _half - GridPlanes.Same, stops = high <= own.Middle(axis) + _half + GridPlanes.Same;
            _reach[axis] = ends && stops ? Reach.Wall : ends ? Reach.Low : stops ? Reach.High : Reach.Through;
            _box = _box.With(axis, Math.Max(_box.From(axis), low), Math.Min(_box.To(axis), high));
        }

        _cells = [.. lookup.Of(_part, _box)];

        // where the part's steel ends, seen from the cell, or some place beyond the lump
        double Edge(int axis, int step)
        {
            for (int at = cell; ;)
            {
                double edge = step < 0 ? mesh.CellBox(at).From(axis) : mesh.CellBox(at).To(axis);
                if (Math.Abs(edge - own.Middle(axis)) > _half + GridPlanes.Same || lookup.Beside(at, axis, step) is not (>= 0 and var next) || mesh.PartOf(next) != _part)
                    return edge;
                at = next;
            }
        }
    }

    /// <summary>The lump round a cell.</summary>
    public static SolidLump Of(SolidMesh mesh, CellLookup lookup, int cell) => new(mesh, lookup, cell);

    /// <summary>Carries the stress in it to its surface.</summary>
    public SolidPlace Carry(SolidSolution solution, double yield)
    {
        int[] sloping = [.. Enumerable.Range(0, 3).Where(a => _reach[a] != Reach.Through)];
        var samples = new List<(StressState Stress, double[] At, double Weight)>();
        foreach (int c in _cells)
            Sample(solution, c, sloping, samples);
        double peak = _cells.Max(c => solution.Stress(c).Equivalent), most = 0;
        Vector at = default;
        // a wall has two surfaces
        for (int side = 0; side < 1 << sloping.Count(a => _reach[a] == Reach.Wall); side++)
        {
            double[] place = new double[3];
            for (int axis = 0, bit = 0; axis < 3; axis++)
                place[axis] = _reach[axis] switch
                {
                    Reach.Low => _box.From(axis),
                    Reach.High => _box.To(axis),
                    Reach.Wall => (side >> bit++ & 1) == 0 ? _box.From(axis) : _box.To(axis),
                    _ => _mesh.CellBox(_cell).Middle(axis),
                };
            double carried = Straight(samples, sloping, place).Equivalent;
            if (carried > most)
                (most, at) = (carried, new Vector(place[0], place[1], place[2]));
        }

        return new SolidPlace(_mesh.Parts[_part].Name, at, _cell, most, peak, yield);
    }

    private void Sample(SolidSolution solution, int cell, int[] sloping, List<(StressState, double[], double)> into)
    {
        Cuboid own = _mesh.CellBox(cell), shared = own.And(_box);
        Span<double> at = stackalloc double[3], local = stackalloc double[3];
        for (int n = 0; n < 8; n++)
        {
            double weight = shared.Volume / 8;
            for (int axis = 0; axis < 3; axis++)
            {
                at[axis] = shared.Middle(axis) + ((n >> axis & 1) == 0 ? -Gauss : Gauss) * shared.Along(axis) / 2;
                local[axis] = 2 * (at[axis] - own.Middle(axis)) / own.Along(axis);
                double far = _reach[axis] switch { Reach.Low => at[axis] - _box.From(axis), Reach.High => _box.To(axis) - at[axis], _ => _half };
                weight *= far * far / (_half * _half);
            }

            double[] place = new double[1 + sloping.Length];
            place[0] = 1;
            for (int i = 0; i < sloping.Length; i++)
                place[1 + i] = (at[sloping[i]] - _box.Middle(sloping[i])) / _half;
            into.Add((solution.Stress(cell, local[0], local[1], local[2]), place, weight));
        }
    }

    // the plane through weighted samples that misses them least, read at a place
    private StressState Straight(List<(StressState Stress, double[] At, double Weight)> samples, int[] sloping, double[] place)
    {
        int n = 1 + sloping.Length;
        var normal = new double[n, n];
        foreach ((_, double[] at, double weight) in samples)
            for (int i = 0; i < n; i++)
                for (int j = 0; j < n; j++)
                    normal[i, j] += weight * at[i] * at[j];
        double[] read = new double[n];
        read[0] = 1;
        for (int i = 0; i < sloping.Length; i++)
            read[1 + i] = (place[sloping[i]] - _box.Middle(sloping[i])) / _half;
        double[] by = Solved(normal, read);
        StressState sum = default;
        foreach ((StressState stress, double[] at, double weight) in samples)
        {
            double share = 0;
            for (int i = 0; i < n; i++)
                share += by[i] * at[i];
            sum += weight * share * stress;
        }

        return sum;
    }

    // by Gauss, of a small matrix that is symmetric and positive
    private static double[] Solved(double[,] a, double[] b)
    {
        int n = b.Length;
        for (int k = 0; k < n; k++)
            for (int i = k + 1; i < n; i++)
            {
                double f = a[i, k] / a[k, k];
                for (int j = k; j < n; j++)
                    a[i, j] -= f * a[k, j];
                b[i] -= f * b[k];
            }

        for (int i = n - 1; i >= 0; i--)
        {
            for (int j = i + 1; j < n; j++)
                b[i] -= a[i, j] * b[j];
            b[i] /= a[i, i];
        }

        return b;
    }
}
