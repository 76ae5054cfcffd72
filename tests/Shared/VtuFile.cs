using System.Globalization;
using System.Text;
using System.Xml.Linq;
using Ramwright.Geometry;

namespace Ramwright.Tests;

/// <summary>
/// Reads an unstructured grid of hexahedra from VTK XML with raw appended data, by the published format and by nothing of the writer's. Sources: VTK XML Formats (docs.vtk.org and the project's wiki);
/// vtkHexahedron: the base 0 to 3 goes round so that by the right hand it points at 4 to 7; found.
/// </summary>
public sealed class VtuFile
{
    /// <summary>Corners of the cell in its own directions, from 0 to 1.</summary>
    private static readonly (int R, int S, int T)[] Corners = [(0, 0, 0), (1, 0, 0), (1, 1, 0), (0, 1, 0), (0, 0, 1), (1, 0, 1), (1, 1, 1), (0, 1, 1)];

    private readonly byte[] _bytes;
    private readonly int _raw;
    private readonly Dictionary<string, XElement> _arrays;

    /// <summary>Reads a file.</summary>
    public VtuFile(byte[] bytes)
    {
        _bytes = bytes;
        ReadOnlySpan<byte> opening = "<AppendedData encoding=\"raw\">"u8;
        int appended = bytes.AsSpan().IndexOf(opening);
        Assert.True(appended > 0, "there is raw appended data");
        _raw = appended + opening.Length + bytes.AsSpan(appended + opening.Length).IndexOf((byte)'_') + 1;
        XElement root = XDocument.Parse(Encoding.ASCII.GetString(bytes, 0, appended) + "</VTKFile>").Root!;
        Assert.Equal(("VTKFile", "UnstructuredGrid", "1.0", "LittleEndian", "UInt64"),
            (root.Name.LocalName, (string)root.Attribute("type")!, (string)root.Attribute("version")!, (string)root.Attribute("byte_order")!, (string)root.Attribute("header_type")!));
        XElement piece = root.Elements("UnstructuredGrid").Elements("Piece").Single();
        (int points, int cells) = ((int)piece.Attribute("NumberOfPoints")!, (int)piece.Attribute("NumberOfCells")!);
        _arrays = piece.Descendants("DataArray").ToDictionary(a => $"{a.Parent!.Name.LocalName}/{(a.Parent.Name == "Points" ? "" : (string)a.Attribute("Name")!)}");
        Points = Vectors("Points/");
        Assert.Equal(points, Points.Length);
        Assert.Equal(cells, Numbers("Cells/types").Length);
        Assert.All(Numbers("Cells/types"), type => Assert.Equal(12, type));
        int[] connectivity = [.. Numbers("Cells/connectivity").Select(n => (int)n)], ends = [.. Numbers("Cells/offsets").Select(n => (int)n)];
        Cells = [.. ends.Select((end, i) => connectivity[(i == 0 ? 0 : ends[i - 1])..end])];
        Assert.All(Cells, c => Assert.Equal(8, c.Distinct().Count()));
        int last = _arrays.Values.Max(a => Offset(a) + 8 + Length(a));
        Assert.Equal("</AppendedData></VTKFile>", string.Concat(Encoding.ASCII.GetString(bytes, last, bytes.Length - last).Where(c => !char.IsWhiteSpace(c))));
    }

    /// <summary>Points, m.</summary>
    public Vector[] Points { get; }

    /// <summary>The eight points of each cell.</summary>
    public int[][] Cells { get; }

    /// <summary>Numbers of an array, as its place and name say: <c>CellData/part</c>.</summary>
    public double[] Numbers(string name)
    {
        XElement array = _arrays[name];
        (int at, int length) = (Offset(array) + 8, Length(array));
        double[] Each(int size, Func<int, double> read) => [.. Enumerable.Range(0, length / size).Select(i => read(at + size * i))];
        return (string)array.Attribute("type")! switch
        {
            "Float64" => Each(8, i => BitConverter.ToDouble(_bytes, i)),
            "Int32" => Each(4, i => BitConverter.ToInt32(_bytes, i)),
            "UInt8" => Each(1, i => _bytes[i]),
            var type => throw new NotSupportedException(type),
        };
    }

    /// <summary>The same in rows of as many as it has components.</summary>
    public double[][] Rows(string name) => [.. Numbers(name).Chunk((int)_arrays[name].Attribute("NumberOfComponents")!)];

    /// <summary>The same as vectors.</summary>
    public Vector[] Vectors(string name) => [.. Rows(name).Select(r => new Vector(r[0], r[1], r[2]))];

    /// <summary>Volume of a cell, m³, with its sign, by two points of integration each way.</summary>
    public double Volume(int cell)
    {
        double g = 0.5 / Math.Sqrt(3), sum = 0;
        foreach ((int r, int s, int t) in Corners)
            sum += Jacobian(cell, 0.5 + (2 * r - 1) * g, 0.5 + (2 * s - 1) * g, 0.5 + (2 * t - 1) * g) / 8;
        return sum;
    }

    /// <summary>The least of what the cell's own directions span at its corners, m³: below nothing where it is turned inside out.</summary>
    public double LeastJacobian(int cell) => Corners.Min(c => Jacobian(cell, c.R, c.S, c.T));

    /// <summary>How a field at the points changes along x, y and z in the middle of a cell.</summary>
    public (Vector X, Vector Y, Vector Z) Gradient(int cell, Vector[] field)
    {
        // rows of the Jacobian are the cell's own directions; its inverse turns slopes along them into slopes along the axes
        (Vector r, Vector s, Vector t) = Slopes(cell, Points, 0.5, 0.5, 0.5);
        (Vector fr, Vector fs, Vector ft) = Slopes(cell, field, 0.5, 0.5, 0.5);
        double det = r.Dot(s.Cross(t));
        Vector toR = 1 / det * s.Cross(t), toS = 1 / det * t.Cross(r), toT = 1 / det * r.Cross(s);
        Vector Along(Func<Vector, double> axis) => axis(toR) * fr + axis(toS) * fs + axis(toT) * ft;
        return (Along(v => v.X), Along(v => v.Y), Along(v => v.Z));
    }

    private double Jacobian(int cell, double r, double s, double t)
    {
        (Vector a, Vector b, Vector c) = Slopes(cell, Points, r, s, t);
        return a.Dot(b.Cross(c));
    }

    private (Vector R, Vector S, Vector T) Slopes(int cell, Vector[] field, double r, double s, double t)
    {
        (Vector a, Vector b, Vector c) = (Vector.Zero, Vector.Zero, Vector.Zero);
        for (int i = 0; i < 8; i++)
        {
            (int cr, int cs, int ct) = Corners[i];
            double nr = cr == 1 ? r : 1 - r, ns = cs == 1 ? s : 1 - s, nt = ct == 1 ? t : 1 - t;
            Vector at = field[Cells[cell][i]];
            (a, b, c) = (a + (2 * cr - 1) * ns * nt * at, b + (2 * cs - 1) * nr * nt * at, c + (2 * ct - 1) * nr * ns * at);
        }

        return (a, b, c);
    }

    private int Offset(XElement array) => _raw + int.Parse((string)array.Attribute("offset")!, CultureInfo.InvariantCulture);

    private int Length(XElement array) => checked((int)BitConverter.ToInt64(_bytes, Offset(array)));
}
