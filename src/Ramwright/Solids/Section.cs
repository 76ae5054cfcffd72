using Ramwright.Geometry;

namespace Ramwright.Solids;

/// <summary>A cut end of a member, and forces on it spread as a long beam would spread them.</summary>
internal sealed class Section
{
    private readonly List<(int[] Nodes, double Area, double Depth, double Thick, double[] Depths)> _faces = [];
    private readonly SolidMesh _mesh;
    private readonly int _normal, _bending;
    private readonly double _area, _middle, _second;

    /// <summary>Collects the faces.</summary>
    /// <param name="mesh">The mesh.</param>
    /// <param name="parts">Parts of the member.</param>
    /// <param name="normal">Axis along the member.</param>
    /// <param name="at">Where it is cut, m.</param>
    /// <param name="bending">Axis along its depth.</param>
    public Section(SolidMesh mesh, int[] parts, int normal, double at, int bending)
    {
        (_mesh, _normal, _bending) = (mesh, normal, bending);
        int third = 3 - normal - bending;
        for (int c = 0; c < mesh.CellCount; c++)
        {
            if (!parts.Contains(mesh.PartOf(c)))
                continue;
            Cuboid box = mesh.CellBox(c);
            bool low = Math.Abs(box.From(normal) - at) < GridPlanes.Same;
            if (!low && Math.Abs(box.To(normal) - at) >= GridPlanes.Same)
                continue;
            ReadOnlySpan<int> nodes = mesh.NodesOf(c);
            var own = new List<int>();
            for (int n = 0; n < 8; n++)
                if ((n >> normal & 1) == (low ? 0 : 1))
                    own.Add(nodes[n]);
            _faces.Add(([.. own], box.Along(bending) * box.Along(third), box.Middle(bending), box.Along(third), [box.From(bending), box.To(bending)]));
        }

        if (_faces.Count == 0)
            throw new SolidFaultException("a joint's member is cut where it has no steel");
        _area = _faces.Sum(f => f.Area);
        _middle = _faces.Sum(f => f.Area * f.Depth) / _area;
        _second = _faces.Sum(f => f.Area * (Math.Pow(f.Depth - _middle, 2) + Math.Pow(f.Depths[1] - f.Depths[0], 2) / 12));
    }

    /// <summary>A force along the member, even over the section.</summary>
    public void Pull(Vector force, Dictionary<int, Vector> to)
    {
        foreach ((int[] nodes, double area, _, _, _) in _faces)
            foreach (int n in nodes)
                to[n] = to.GetValueOrDefault(n) + area / 4 / _area * force;
    }

    /// <summary>A moment, as stress along the member that grows evenly over its depth.</summary>
    public void Bend(Vector moment, Dictionary<int, Vector> to)
    {
        Vector along = Unit(_normal), depth = Unit(_bending);
        // stress k s along the member makes k I (depth × along)
        double k = moment.Dot(depth.Cross(along)) / _second;
        foreach ((int[] nodes, double area, double middle, _, double[] ends) in _faces)
            foreach (int n in nodes)
            {
                // consistent forces of a stress that is linear over the face: for each end of its depth 1/3 of its own and 1/6 of the other's
                double own = Component(_mesh.At(n)), other = ends[0] + ends[1] - own;
                to[n] = to.GetValueOrDefault(n) + k * area / 2 * ((own - _middle) / 3 + (other - _middle) / 6) * along;
            }
    }

    /// <summary>A shear force along the depth, spread by V S/(I b): what stands beyond each height, over the width there.</summary>
    public void Shear(Vector force, Dictionary<int, Vector> to)
    {
        double V = force.Dot(Unit(_bending)), all = 0;
        var flow = new double[_faces.Count];
        for (int i = 0; i < flow.Length; i++)
        {
            (_, double area, double at, _, _) = _faces[i];
            double beyond = 0, width = 0;
            foreach ((_, double a, double d, double thick, double[] ends) in _faces)
            {
                double from = Math.Max(ends[0], at);
                if (ends[1] > from)
                    beyond += a * (ends[1] - from) / (ends[1] - ends[0]) * ((from + ends[1]) / 2 - _middle);
                width += Math.Abs(d - at) < GridPlanes.Same ? thick : 0;
            }

            flow[i] = Math.Max(0, beyond / width) * area;
            all += flow[i];
        }

        for (int i = 0; i < flow.Length; i++)
            foreach (int n in _faces[i].Nodes)
                to[n] = to.GetValueOrDefault(n) + flow[i] / all / 4 * V * Unit(_bending);
    }

    private double Component(Vector v) => _bending switch { 0 => v.X, 1 => v.Y, _ => v.Z };

    private static Vector Unit(int axis) => axis switch { 0 => Vector.Across, 1 => Vector.Deep, _ => Vector.Up };
}
