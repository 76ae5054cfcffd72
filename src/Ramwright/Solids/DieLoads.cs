using Ramwright.Geometry;
using Ramwright.Presses;

namespace Ramwright.Solids;

/// <summary>A load case of one newton at the ram: where the work stands off centre, and how it pushes.</summary>
/// <param name="Name">In words.</param>
/// <param name="Off">From the ram's centre line, m.</param>
/// <param name="Push">What the upper part feels, N; the lower part feels the opposite.</param>
public sealed record SolidCase(string Name, Vector Off, Vector Push)
{
    /// <summary>Work in the middle.</summary>
    public static readonly SolidCase Centred = new("centred", Vector.Zero, Vector.Up);

    /// <summary>The cases that a press file asks for, the centred one first.</summary>
    public static IReadOnlyList<SolidCase> Of(RigLoading loading)
    {
        ArgumentNullException.ThrowIfNull(loading);
        var all = new List<SolidCase> { Centred };
        if (loading.Across > 0)
            all.Add(new("off to one side", loading.Across * Vector.Across, Vector.Up));
        if (loading.Deep > 0)
            all.Add(new("off to the front", -loading.Deep * Vector.Deep, Vector.Up));
        if (loading.SideLoad > 0)
            all.Add(new("side push", Vector.Zero, Vector.Up + loading.SideLoad * Vector.Across));
        return all;
    }
}

/// <summary>
/// Forces on the nodes under a die: the force spread evenly where the die stands; where its line misses the middle of the face, as work off to the front of a web does, its moment is a
/// pressure that grows evenly across the face. The pair of forces and moments on both parts is in balance, as the parts feel the same line of force.
/// </summary>
internal static class DieLoads
{
    /// <summary>All forces of a case.</summary>
    public static Dictionary<int, Vector> Of(PressSolid solid, SolidMesh mesh, SolidCase one)
    {
        (IReadOnlyList<DieFace> upper, IReadOnlyList<DieFace> lower) = solid.Pressed(one);
        var forces = new Dictionary<int, Vector>();
        Vector through = solid.LowerAt + one.Off;
        Add(mesh, PressSolid.Shares(mesh, upper), one.Push, through, forces);
        Add(mesh, PressSolid.Shares(mesh, lower), -one.Push, through, forces);
        return forces;
    }

    /// <summary>Adds them.</summary>
    /// <param name="mesh">The mesh.</param>
    /// <param name="shares">Nodes under the die and the share of each, m².</param>
    /// <param name="push">Force, N.</param>
    /// <param name="at">A point that its line goes through, m.</param>
    /// <param name="to">Where it is added.</param>
    public static void Add(SolidMesh mesh, IReadOnlyDictionary<int, double> shares, Vector push, Vector at, Dictionary<int, Vector> to)
    {
        double all = 0, xx = 0, yy = 0, xy = 0;
        Vector middle = Vector.Zero;
        foreach ((int node, double s) in shares)
            (all, middle) = (all + s, middle + s * mesh.At(node));
        middle /= all;
        foreach ((int node, double s) in shares)
        {
            Vector r = mesh.At(node) - middle;
            (xx, yy, xy) = (xx + s * r.X * r.X, yy + s * r.Y * r.Y, xy + s * r.X * r.Y);
        }

        // p = a x + b y with ∫ y p = Mx and −∫ x p = My
        Vector moment = (at - middle).Cross(push);
        double det = xx * yy - xy * xy;
        bool flat = det > 1e-9 * (xx + yy) * (xx + yy);
        double a = flat ? (-moment.Y * yy - moment.X * xy) / det : xx > yy ? -moment.Y / xx : 0;
        double b = flat ? (moment.X * xx + moment.Y * xy) / det : xx > yy ? 0 : moment.X / yy;
        foreach ((int node, double s) in shares)
        {
            Vector r = mesh.At(node) - middle;
            to[node] = to.GetValueOrDefault(node) + s / all * push + s * (a * r.X + b * r.Y) * Vector.Up;
        }
    }
}
