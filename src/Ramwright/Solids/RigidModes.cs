using Ramwright.Geometry;

namespace Ramwright.Solids;

/// <summary>The ways in which each connected body moves without straining, as far as nothing holds it: they are taken out of forces and movements.</summary>
internal sealed class RigidModes
{
    private readonly SolidMesh _mesh;
    private readonly double[][] _modes;      // of all bodies, each of unit length, four places for each node
    private readonly int[] _body;
    private readonly List<(int Body, Vector Shift, Vector Turn, Vector About)> _ways = [];

    public RigidModes(SolidMesh mesh, bool[]? held)
    {
        _mesh = mesh;
        (var modes, var bodies) = (new List<double[]>(), new List<int>());
        var nodes = new List<int>[mesh.Bodies];
        for (int b = 0; b < mesh.Bodies; b++)
            nodes[b] = [];
        for (int i = 0; i < mesh.NodeCount; i++)
            nodes[mesh.Body[i]].Add(i);
        for (int b = 0; b < mesh.Bodies; b++)
            foreach (double[] mode in Of(b, nodes[b], held))
            {
                modes.Add(mode);
                bodies.Add(b);
            }

        (_modes, _body) = ([.. modes], [.. bodies]);
        Nodes = nodes;
    }

    /// <summary>How many there are.</summary>
    public int Count => _modes.Length;

    private List<int>[] Nodes { get; }

    // six movements about the middle; those that move what is held are left out, by way of the 6 × 6 matrix of how much they would
    private IEnumerable<double[]> Of(int body, List<int> nodes, bool[]? held)
    {
        Vector middle = Vector.Zero;
        foreach (int i in nodes)
            middle += _mesh.At(i) / nodes.Count;
        double size = Math.Sqrt(nodes.Average(i => (_mesh.At(i) - middle).Dot(_mesh.At(i) - middle)));
        double[][] six = [.. Enumerable.Range(0, 6).Select(_ => new double[3 * nodes.Count])];
        var moved = new double[36];
        Span<double> row = stackalloc double[18];
        for (int n = 0; n < nodes.Count; n++)
        {
            Vector r = (_mesh.At(nodes[n]) - middle) / size;
            row.Clear();
            (row[0], row[7], row[14]) = (1, 1, 1);
            (row[4], row[5], row[9], row[11], row[15], row[16]) = (r.Z, -r.Y, -r.Z, r.X, r.Y, -r.X);
            for (int c = 0; c < 3; c++)
            {
                for (int m = 0; m < 6; m++)
                    six[m][3 * n + c] = row[6 * c + m];
                if (held is null || !held[3 * nodes[n] + c])
                    continue;
                for (int a = 0; a < 6; a++)
                    for (int b = 0; b < 6; b++)
                        moved[6 * a + b] += row[6 * c + a] * row[6 * c + b];
            }
        }

        var kept = new List<double[]>();
        foreach (double[] free in SmallEigen.Null(moved, 6))
        {
            var mode = new double[3 * nodes.Count];
            for (int m = 0; m < 6; m++)
                for (int k = 0; k < mode.Length; k++)
                    mode[k] += free[m] * six[m][k];
            foreach (double[] other in kept)
            {
                double along = 0;
                for (int k = 0; k < mode.Length; k++)
                    along += mode[k] * other[k];
                for (int k = 0; k < mode.Length; k++)
                    mode[k] -= along * other[k];
            }

            double length = Math.Sqrt(mode.Sum(x => x * x));
            for (int k = 0; k < mode.Length; k++)
                mode[k] /= length;
            kept.Add(mode);
            _ways.Add((body, new Vector(free[0], free[1], free[2]), new Vector(free[3], free[4], free[5]) / size, middle));
        }

        return kept;
    }

    /// <summary>The same movements of coarser pieces, six numbers each, square to each other.</summary>
    /// <param name="at">Middles of the pieces.</param>
    /// <param name="length">Their sizes, by which their turns are multiplied.</param>
    /// <param name="body">Which body each is of.</param>
    public double[][] OfPieces(double[] at, double[] length, int[] body)
    {
        var all = new List<double[]>();
        foreach ((int of, Vector shift, Vector turn, Vector about) in _ways)
        {
            var mode = new double[6 * body.Length];
            for (int i = 0; i < body.Length; i++)
            {
                if (body[i] != of)
                    continue;
                Vector moved = shift + turn.Cross(new Vector(at[3 * i], at[3 * i + 1], at[3 * i + 2]) - about), turned = length[i] * turn;
                (mode[6 * i], mode[6 * i + 1], mode[6 * i + 2]) = (moved.X, moved.Y, moved.Z);
                (mode[6 * i + 3], mode[6 * i + 4], mode[6 * i + 5]) = (turned.X, turned.Y, turned.Z);
            }

            foreach (double[] other in all)
            {
                double along = mode.Zip(other, (a, b) => a * b).Sum();
                for (int k = 0; k < mode.Length; k++)
                    mode[k] -= along * other[k];
            }

            double size = Math.Sqrt(mode.Sum(x => x * x));
            all.Add([.. mode.Select(x => x / size)]);
        }

        return [.. all];
    }

    /// <summary>Takes them out of a vector of four places for each node.</summary>
    /// <returns>The greatest that was taken out, over the length of the vector, and the body it was in.</returns>
    public (double Share, int Body) Remove(double[] vector)
    {
        double all = Math.Sqrt(vector.Sum(x => x * x));
        (double most, int body) = (0, 0);
        for (int m = 0; m < _modes.Length; m++)
        {
            (double[] mode, List<int> nodes) = (_modes[m], Nodes[_body[m]]);
            double along = 0;
            for (int n = 0; n < nodes.Count; n++)
                for (int c = 0; c < 3; c++)
                    along += mode[3 * n + c] * vector[4 * nodes[n] + c];
            for (int n = 0; n < nodes.Count; n++)
                for (int c = 0; c < 3; c++)
                    vector[4 * nodes[n] + c] -= along * mode[3 * n + c];
            if (all > 0 && Math.Abs(along) / all > most)
                (most, body) = (Math.Abs(along) / all, _body[m]);
        }

        return (most, body);
    }
}

/// <summary>Eigenvectors of a small symmetric matrix, by turning pairs of axes (Jacobi).</summary>
internal static class SmallEigen
{
    /// <summary>Directions that a matrix of squares does not see.</summary>
    public static IEnumerable<double[]> Null(double[] matrix, int n)
    {
        (double[] values, double[] vectors) = Of(matrix, n);
        double most = values.Max();
        for (int v = 0; v < n; v++)
            if (most == 0 || values[v] < 1e-10 * most)
                yield return [.. Enumerable.Range(0, n).Select(i => vectors[n * i + v])];
    }

    /// <summary>Values, and vectors in columns.</summary>
    public static (double[] Values, double[] Vectors) Of(double[] matrix, int n)
    {
        double[] a = [.. matrix], v = new double[n * n];
        for (int i = 0; i < n; i++)
            v[n * i + i] = 1;
        for (int sweep = 0; sweep < 30; sweep++)
            for (int p = 0; p < n; p++)
                for (int q = p + 1; q < n; q++)
                {
                    if (a[n * p + q] == 0)
                        continue;
                    double theta = (a[n * q + q] - a[n * p + p]) / (2 * a[n * p + q]);
                    double t = double.IsInfinity(theta * theta) ? 1 / (2 * theta) : Math.Sign(theta == 0 ? 1 : theta) / (Math.Abs(theta) + Math.Sqrt(theta * theta + 1));
                    double c = 1 / Math.Sqrt(t * t + 1), s = t * c;
                    for (int k = 0; k < n; k++)
                        (a[n * k + p], a[n * k + q]) = (c * a[n * k + p] - s * a[n * k + q], s * a[n * k + p] + c * a[n * k + q]);
                    for (int k = 0; k < n; k++)
                        (a[n * p + k], a[n * q + k]) = (c * a[n * p + k] - s * a[n * q + k], s * a[n * p + k] + c * a[n * q + k]);
                    for (int k = 0; k < n; k++)
                        (v[n * k + p], v[n * k + q]) = (c * v[n * k + p] - s * v[n * k + q], s * v[n * k + p] + c * v[n * k + q]);
                }

        return ([.. Enumerable.Range(0, n).Select(i => a[n * i + i])], v);
    }
}
