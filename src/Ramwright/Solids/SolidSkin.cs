using Ramwright.Geometry;

namespace Ramwright.Solids;

/// <summary>The surface of a solved frame, ready to be drawn; everything for one newton at the ram.</summary>
public sealed record SolidSkin
{
    /// <summary>Names of the parts.</summary>
    public required IReadOnlyList<string> Parts { get; init; }
    /// <summary>Yield of each part, Pa; of a part whose steel is not known that of the weakest which is.</summary>
    public required float[] Yield { get; init; }
    /// <summary>Three for each vertex, m.</summary>
    public required float[] Positions { get; init; }
    /// <summary>Three for each vertex, m/N.</summary>
    public required float[] Displacements { get; init; }
    /// <summary>
    /// Equivalent stress at each vertex, Pa/N: the mean of the state in the cells of the part that meet there. At the weakest place, which may be a sharp
    /// corner, what is carried to the surface over half the wall.
    /// </summary>
    public required float[] Stress { get; init; }
    /// <summary>Three vertices each, outward by the right-hand rule.</summary>
    public required int[] Triangles { get; init; }
    /// <summary>Part of each triangle.</summary>
    public required ushort[] PartOf { get; init; }
    /// <summary>Vertex of the weakest place; -1 where no part's steel is known.</summary>
    public required int Weakest { get; init; }
    /// <summary>Greatest movement, m/N.</summary>
    public required double Farthest { get; init; }
    /// <summary>From corner to corner, m.</summary>
    public required double Size { get; init; }

    /// <summary>Draws the centred case.</summary>
    public static SolidSkin Of(SolidCheck check)
    {
        ArgumentNullException.ThrowIfNull(check);
        return Of(check.Solid, check.Centred);
    }

    /// <summary>Draws one case.</summary>
    public static SolidSkin Of(PressSolid solid, SolidCaseAnswer answer)
    {
        ArgumentNullException.ThrowIfNull(solid);
        ArgumentNullException.ThrowIfNull(answer);
        SolidSolution solution = answer.Solution;
        SolidMesh mesh = solution.Mesh;
        var vertexAt = new Dictionary<(int Node, int Part), int>();
        var at = new List<(int Node, int Part)>();
        var triangles = new List<int>();
        var partOf = new List<ushort>();
        CellLookup cells = new(mesh);
        for (int c = 0; c < mesh.CellCount; c++)
        {
            for (int face = 0; face < 6; face++)
            {
                if (cells.IsInside(c, face))
                    continue;
                ReadOnlySpan<int> nodes = mesh.NodesOf(c);
                int[] corner = CellLookup.Faces[face];
                int part = mesh.PartOf(c), v0 = Vertex(nodes[corner[0]], part), v1 = Vertex(nodes[corner[1]], part), v2 = Vertex(nodes[corner[2]], part), v3 = Vertex(nodes[corner[3]], part);
                triangles.AddRange([v0, v1, v2, v0, v2, v3]);
                partOf.AddRange([(ushort)part, (ushort)part]);
            }
        }

        float[] stress = Stresses(mesh, solution, vertexAt);
        var positions = new float[3 * at.Count];
        var displacements = new float[3 * at.Count];
        double farthest = 0;
        for (int v = 0; v < at.Count; v++)
        {
            Vector p = mesh.At(at[v].Node), d = solution.Displacement(at[v].Node);
            farthest = Math.Max(farthest, d.Length);
            Put(positions, v, p);
            Put(displacements, v, d);
        }

        int weakest = -1;
        if (answer.Weakest is { } place)
        {
            int part = mesh.PartOf(place.Cell);
            double near = double.PositiveInfinity;
            for (int v = 0; v < at.Count; v++)
            {
                double far = (mesh.At(at[v].Node) - place.At).Length;
                if (at[v].Part == part && far < near)
                    (near, weakest) = (far, v);
            }

            stress[weakest] = (float)place.Carried;
        }

        double least = solid.Yields.Where(y => y is not null).DefaultIfEmpty(235e6).Min()!.Value;
        return new SolidSkin
        {
            Parts = [.. mesh.Parts.Select(p => p.Name)],
            Yield = [.. mesh.Parts.Select((_, i) => (float)(solid.Yields.ElementAtOrDefault(i) ?? least))],
            Positions = positions,
            Displacements = displacements,
            Stress = stress,
            Triangles = [.. triangles],
            PartOf = [.. partOf],
            Weakest = weakest,
            Farthest = farthest,
            Size = Math.Sqrt(Enumerable.Range(0, 3).Sum(a => Math.Pow(mesh.Planes(a)[^1] - mesh.Planes(a)[0], 2))),
        };

        int Vertex(int node, int part)
        {
            if (!vertexAt.TryGetValue((node, part), out int v))
            {
                vertexAt[(node, part)] = v = at.Count;
                at.Add((node, part));
            }

            return v;
        }
    }

    private static void Put(float[] into, int vertex, Vector of) =>
        (into[3 * vertex], into[3 * vertex + 1], into[3 * vertex + 2]) = ((float)of.X, (float)of.Y, (float)of.Z);

    // the state is averaged before its equivalent is taken, so that opposite signs do not add
    private static float[] Stresses(SolidMesh mesh, SolidSolution solution, Dictionary<(int Node, int Part), int> vertexAt)
    {
        var sum = new StressState[vertexAt.Count];
        var count = new int[vertexAt.Count];
        for (int c = 0; c < mesh.CellCount; c++)
        {
            ReadOnlySpan<int> nodes = mesh.NodesOf(c);
            int part = mesh.PartOf(c);
            for (int n = 0; n < 8; n++)
            {
                if (!vertexAt.TryGetValue((nodes[n], part), out int v))
                    continue;
                sum[v] += solution.AtCorner(c, n);
                count[v]++;
            }
        }

        return [.. sum.Select((s, v) => (float)(1.0 / Math.Max(1, count[v]) * s).Equivalent)];
    }
}
