using Ramwright.Geometry;
using Ramwright.Solid.Tests.Bricks;
using Ramwright.Solids;

namespace Ramwright.Solid.Tests.Calculix;

/// <summary>Bricks with what holds and what pushes them. SI.</summary>
public sealed class SolidModel(BrickMesh mesh)
{
    /// <summary>The bricks.</summary>
    public BrickMesh Mesh { get; } = mesh;

    /// <summary>Whether the middles of the bricks' edges are nodes too.</summary>
    public bool Middles => Mesh.Bricks[0].Nodes.Length > 8;

    /// <summary>Young's modulus, Pa.</summary>
    public double E { get; init; } = 210e9;

    /// <summary>Poisson's ratio.</summary>
    public double Nu { get; init; } = 0.3;

    /// <summary>Nodes and directions (0 to 2) that are held.</summary>
    public HashSet<(int Node, int Direction)> Held { get; } = [];

    /// <summary>Forces on nodes, N.</summary>
    public Dictionary<int, Vector> Forces { get; } = [];

    /// <summary>Cuts whose stresses are wanted.</summary>
    public List<Cut> Cuts { get; } = [];

    /// <summary>Holds every node of a plane in one direction: a plane of symmetry.</summary>
    public void HoldPlane(int axis, double at, int direction, Cuboid? within = null)
    {
        foreach (int node in Mesh.Used)
        {
            (double x, double y, double z) = Mesh.Places[node];
            if (Math.Abs((axis switch { 0 => x, 1 => y, _ => z }) - at) < 1e-7 && (within ?? Cuboid.Everywhere).Holds(x, y, z))
                Held.Add((node, direction));
        }
    }

    /// <summary>Lays a moment about X on the shares of a face, N·m, as a pressure that grows with the distance from the middle plane.</summary>
    public void Tilt(Dictionary<int, double> share, double moment)
    {
        double all = share.Sum(s => s.Value * Mesh.Places[s.Key].Y * Mesh.Places[s.Key].Y);
        foreach ((int node, double part) in share)
            Forces[node] = Forces.GetValueOrDefault(node) + part * Mesh.Places[node].Y / all * moment * Vector.Up;
    }

    /// <summary>Lays a force evenly on the shares of a face.</summary>
    public void Push(Dictionary<int, double> share, Vector force)
    {
        double all = share.Values.Sum();
        foreach ((int node, double part) in share)
            Forces[node] = Forces.GetValueOrDefault(node) + part / all * force;
    }
}

/// <summary>A slice of one body, one brick thick, whose stresses are wanted.</summary>
/// <param name="Name">Letters and digits.</param>
/// <param name="Body">The body.</param>
/// <param name="Axis">Along which it is cut.</param>
/// <param name="At">Where, m: the slice that holds this place is taken.</param>
public sealed record Cut(string Name, int Body, int Axis, double At)
{
    /// <summary>Numbers of its bricks in the mesh.</summary>
    public IEnumerable<int> Bricks(BrickMesh mesh)
    {
        for (int i = 0; i < mesh.Bricks.Count; i++)
        {
            Brick b = mesh.Bricks[i];
            if (b.Body == Body && b.Box.From(Axis) <= At && At < b.Box.To(Axis))
                yield return i;
        }
    }
}
