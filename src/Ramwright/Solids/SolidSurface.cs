using Ramwright.Geometry;

namespace Ramwright.Solids;

/// <summary>The outer faces of a solved mesh as triangles, with movement and stress at their corners, for one newton at the ram.</summary>
/// <param name="Places">Where the corners are, m.</param>
/// <param name="Moved">How they move, m.</param>
/// <param name="Stress">Equivalent stress, Pa: the mean of the cells about a corner, so that sharp corners do not drown the rest.</param>
/// <param name="Parts">Part of each corner.</param>
/// <param name="Triangles">Numbers of corners, three a triangle, anticlockwise from outside.</param>
public sealed record SolidSurface(IReadOnlyList<Vector> Places, IReadOnlyList<Vector> Moved, IReadOnlyList<double> Stress, IReadOnlyList<int> Parts, IReadOnlyList<int> Triangles)
{
    // corners of each face of a cell, anticlockwise from outside: left, right, front, back, bottom, top
    private static readonly int[][] Faces = [[0, 4, 6, 2], [1, 3, 7, 5], [0, 1, 5, 4], [2, 6, 7, 3], [0, 2, 3, 1], [4, 5, 7, 6]];

    /// <summary>Finds it.</summary>
    public static SolidSurface Of(SolidSolution solution)
    {
        ArgumentNullException.ThrowIfNull(solution);
        SolidMesh mesh = solution.Mesh;
        // a face that two cells have is inside; between two parts it is drawn, so that each keeps its own colour
        var once = new Dictionary<(int, int, int), (int Cell, int Face)>();
        for (int c = 0; c < mesh.CellCount; c++)
            for (int f = 0; f < 6; f++)
            {
                (int, int, int) key = Key(mesh.NodesOf(c), Faces[f]);
                if (!once.Remove(key, out (int Cell, int Face) other))
                    once[key] = (c, f);
                else if (mesh.PartOf(other.Cell) != mesh.PartOf(c))
                    once[key] = other;
            }

        var sum = new Dictionary<(int Node, int Part), (double Stress, int Count)>();
        for (int c = 0; c < mesh.CellCount; c++)
        {
            double stress = solution.Stress(c).Equivalent;
            foreach (int n in mesh.NodesOf(c))
            {
                (double s, int count) = sum.GetValueOrDefault((n, mesh.PartOf(c)));
                sum[(n, mesh.PartOf(c))] = (s + stress, count + 1);
            }
        }

        var number = new Dictionary<(int, int), int>();
        (List<Vector> places, List<Vector> moved, List<double> stresses, List<int> parts, List<int> triangles) = ([], [], [], [], []);
        int Corner(int node, int part)
        {
            if (number.TryGetValue((node, part), out int n))
                return n;
            (double s, int count) = sum[(node, part)];
            places.Add(mesh.At(node));
            moved.Add(solution.Displacement(node));
            stresses.Add(s / count);
            parts.Add(part);
            return number[(node, part)] = places.Count - 1;
        }

        foreach ((int cell, int face) in once.Values)
        {
            int part = mesh.PartOf(cell);
            int[] k = [.. Faces[face].Select(i => Corner(mesh.NodesOf(cell)[i], part))];
            triangles.AddRange([k[0], k[1], k[2], k[0], k[2], k[3]]);
        }

        return new SolidSurface(places, moved, stresses, parts, triangles);
    }

    // three of the four nodes, sorted, tell a face from all others: the least three
    private static (int, int, int) Key(ReadOnlySpan<int> nodes, int[] face)
    {
        Span<int> four = [nodes[face[0]], nodes[face[1]], nodes[face[2]], nodes[face[3]]];
        four.Sort();
        return (four[0], four[1], four[2]);
    }
}
