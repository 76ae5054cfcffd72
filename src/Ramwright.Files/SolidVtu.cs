using System.Buffers.Binary;
using System.Text;
using Ramwright.Geometry;
using Ramwright.Solids;

namespace Ramwright.Files;

/// <summary>
/// A solved solid as VTK XML (.vtu): an unstructured grid of hexahedra, raw appended data in little-endian order. Points in m; for one newton at the ram: displacement in m at points,
/// stress in Pa in cells as XX, YY, ZZ, XY, YZ, XZ, and the equivalent stress and part of each cell.
/// </summary>
/// <remarks>
/// Format: VTK XML formats (docs.vtk.org, vtk_file_formats/vtkxml_file_format; the project's wiki, VTK XML Formats): version 1.0 with UInt64 headers, each array its length in bytes and then its
/// values, where its offset says, counted from the underscore. Corners: vtkHexahedron of VTK's class documentation: 0 to 3 go round the base so that by the right hand they point at 4 to 7. Found.
/// The order of a symmetric tensor's six components is from memory, and named in the file.
/// </remarks>
public static class SolidVtu
{
    // corners as VTK counts them: below anticlockwise, then above
    private static readonly int[] Corner = [0, 1, 3, 2, 4, 5, 7, 6];

    /// <summary>Writes the centred case.</summary>
    public static void Write(SolidCheck solid, Stream to)
    {
        ArgumentNullException.ThrowIfNull(solid);
        Write(solid.Centred.Solution, to);
    }

    /// <summary>Writes one solution.</summary>
    public static void Write(SolidSolution solution, Stream to)
    {
        ArgumentNullException.ThrowIfNull(solution);
        ArgumentNullException.ThrowIfNull(to);
        SolidMesh mesh = solution.Mesh;
        var blocks = new List<(string Opening, byte[] Data)>();
        string Array(string type, string name, int components, byte[] data, string[]? names = null)
        {
            long offset = blocks.Sum(b => 8L + b.Data.Length);
            blocks.Add((name, data));
            string each = string.Concat((names ?? []).Select((n, i) => $" ComponentName{i}=\"{n}\""));
            return $"<DataArray type=\"{type}\" Name=\"{name}\" NumberOfComponents=\"{components}\"{each} format=\"appended\" offset=\"{offset}\"/>\n";
        }

        int nodes = mesh.NodeCount, cells = mesh.CellCount;
        var head = new StringBuilder("<?xml version=\"1.0\"?>\n<VTKFile type=\"UnstructuredGrid\" version=\"1.0\" byte_order=\"LittleEndian\" header_type=\"UInt64\">\n<UnstructuredGrid>\n");
        head.Append(System.Globalization.CultureInfo.InvariantCulture, $"<Piece NumberOfPoints=\"{nodes}\" NumberOfCells=\"{cells}\">\n<PointData Vectors=\"displacement\">\n");
        head.Append(Array("Float64", "displacement", 3, Doubles(3 * nodes, i => Of(solution.Displacement(i / 3), i % 3))));
        head.Append("</PointData>\n<CellData Scalars=\"equivalent stress\">\n");
        StressState[] stress = [.. Enumerable.Range(0, cells).Select(c => solution.Stress(c))];
        head.Append(Array("Float64", "stress", 6, Doubles(6 * cells, i => Of(stress[i / 6], i % 6)), ["XX", "YY", "ZZ", "XY", "YZ", "XZ"]));
        head.Append(Array("Float64", "equivalent stress", 1, Doubles(cells, i => stress[i].Equivalent)));
        head.Append(Array("Int32", "part", 1, Ints(cells, mesh.PartOf)));
        head.Append("</CellData>\n<Points>\n");
        head.Append(Array("Float64", "points", 3, Doubles(3 * nodes, i => Of(mesh.At(i / 3), i % 3))));
        head.Append("</Points>\n<Cells>\n");
        head.Append(Array("Int32", "connectivity", 1, Ints(8 * cells, i => mesh.NodesOf(i / 8)[Corner[i % 8]])));
        head.Append(Array("Int32", "offsets", 1, Ints(cells, i => 8 * (i + 1))));
        head.Append(Array("UInt8", "types", 1, [.. Enumerable.Repeat((byte)12, cells)]));       // VTK_HEXAHEDRON
        head.Append("</Cells>\n</Piece>\n</UnstructuredGrid>\n<AppendedData encoding=\"raw\">\n_");
        to.Write(Encoding.ASCII.GetBytes(head.ToString()));
        Span<byte> length = stackalloc byte[8];
        foreach ((_, byte[] data) in blocks)
        {
            BinaryPrimitives.WriteInt64LittleEndian(length, data.Length);
            to.Write(length);
            to.Write(data);
        }

        to.Write("\n</AppendedData>\n</VTKFile>\n"u8);
    }

    private static double Of(Vector v, int i) => i switch { 0 => v.X, 1 => v.Y, _ => v.Z };

    private static double Of(StressState s, int i) => i switch { 0 => s.XX, 1 => s.YY, 2 => s.ZZ, 3 => s.XY, 4 => s.YZ, _ => s.XZ };

    private static byte[] Doubles(int count, Func<int, double> of)
    {
        var bytes = new byte[8 * count];
        for (int i = 0; i < count; i++)
            BinaryPrimitives.WriteDoubleLittleEndian(bytes.AsSpan(8 * i), of(i));
        return bytes;
    }

    private static byte[] Ints(int count, Func<int, int> of)
    {
        var bytes = new byte[4 * count];
        for (int i = 0; i < count; i++)
            BinaryPrimitives.WriteInt32LittleEndian(bytes.AsSpan(4 * i), of(i));
        return bytes;
    }
}
