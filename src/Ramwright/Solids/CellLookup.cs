using Ramwright.Geometry;

namespace Ramwright.Solids;

/// <summary>Which cell stands where.</summary>
internal sealed class CellLookup
{
    // corners of a cell's face, outward; corner bits 1, 2 and 4 stand for the far end along x, y and z
    internal static readonly int[][] Faces = [[0, 4, 6, 2], [1, 3, 7, 5], [0, 1, 5, 4], [2, 6, 7, 3], [0, 2, 3, 1], [4, 5, 7, 6]];

    private readonly SolidMesh _mesh;
    private readonly int[] _count;
    private readonly int[] _cell;

    public CellLookup(SolidMesh mesh)
    {
        _mesh = mesh;
        _count = [mesh.Planes(0).Count - 1, mesh.Planes(1).Count - 1, mesh.Planes(2).Count - 1];
        _cell = new int[_count[0] * _count[1] * _count[2]];
        Array.Fill(_cell, -1);
        for (int c = 0; c < mesh.CellCount; c++)
        {
            (int x, int y, int z) = mesh.CellPlace(c);
            _cell[x + _count[0] * (y + _count[1] * z)] = c;
        }
    }

    /// <summary>The cell at a place in the grid; -1 for a void or none.</summary>
    public int At(int x, int y, int z) =>
        x < 0 || y < 0 || z < 0 || x >= _count[0] || y >= _count[1] || z >= _count[2] ? -1 : _cell[x + _count[0] * (y + _count[1] * z)];

    /// <summary>The cell that stands next to one along an axis, -1 for a void or none.</summary>
    public int Beside(int cell, int axis, int step)
    {
        (int x, int y, int z) = _mesh.CellPlace(cell);
        return axis switch { 0 => At(x + step, y, z), 1 => At(x, y + step, z), _ => At(x, y, z + step) };
    }

    /// <summary>The cell that holds a point; of those that meet there one of steel, if there is one; -1 for a void.</summary>
    public int Holding(Vector at)
    {
        for (int side = 0; side < 8; side++)
        {
            int x = Place(0, at.X, side & 1), y = Place(1, at.Y, side >> 1 & 1), z = Place(2, at.Z, side >> 2 & 1);
            if (At(x, y, z) is >= 0 and var cell)
                return cell;
        }

        return -1;

        // of two cells that meet at a plane the lower or the upper
        int Place(int axis, double x, int upper) => First(_mesh.Planes(axis), x + (upper == 0 ? -GridPlanes.Same : GridPlanes.Same)) - 1;
    }

    /// <summary>Cells of one part that a box reaches into.</summary>
    public IEnumerable<int> Of(int part, Cuboid box)
    {
        (int x0, int x1) = Range(0, box);
        (int y0, int y1) = Range(1, box);
        (int z0, int z1) = Range(2, box);
        for (int z = z0; z < z1; z++)
            for (int y = y0; y < y1; y++)
                for (int x = x0; x < x1; x++)
                    if (At(x, y, z) is >= 0 and var c && _mesh.PartOf(c) == part)
                        yield return c;
    }

    /// <summary>Whether steel of the same piece, joined to the cell, stands before a face of it.</summary>
    public bool IsInside(int cell, int face)
    {
        int axis = face / 2, other = Beside(cell, axis, face % 2 == 0 ? -1 : 1);
        if (other < 0)
            return false;
        ReadOnlySpan<int> mine = _mesh.NodesOf(cell), its = _mesh.NodesOf(other);
        int bit = 1 << axis;
        foreach (int corner in Faces[face])
        {
            if (mine[corner] != its[corner ^ bit])
                return false;
        }

        return true;
    }

    // the cells between whose planes a box lies
    private (int From, int To) Range(int axis, Cuboid box)
    {
        IReadOnlyList<double> planes = _mesh.Planes(axis);
        return (Math.Max(0, First(planes, box.From(axis) + GridPlanes.Same) - 1), Math.Min(_count[axis], First(planes, box.To(axis) - GridPlanes.Same)));
    }

    // the first plane at or beyond a place
    private static int First(IReadOnlyList<double> planes, double at)
    {
        int from = 0, to = planes.Count;
        while (from < to)
        {
            int middle = (from + to) / 2;
            if (planes[middle] < at)
                from = middle + 1;
            else
                to = middle;
        }

        return from;
    }
}
