using System.Globalization;
using System.Text;
using Ramwright.Fabrication.Plates;
using Ramwright.Geometry;

namespace Ramwright.Files.Making;

/// <summary>
/// Cut sheets as DXF, release 12 in ASCII: what every table reads. Millimetres, true to size; release 12 has no word for units, so
/// the first line of the file says them. Closed loops are closed polylines whose arcs are arcs (bulges), round holes are circles.
/// </summary>
/// <remarks>Autodesk, DXF reference of release 12: sections HEADER, TABLES, ENTITIES; groups 62 colour, 70 flags, 42 bulge.</remarks>
public static class Dxf
{
    private static readonly CutLayer[] Layers = [CutLayer.Stock, CutLayer.Mark, CutLayer.Bend, CutLayer.Lead, CutLayer.CutInside, CutLayer.CutOutside];

    /// <summary>Name of a layer.</summary>
    public static string Name(CutLayer layer) => layer switch
    {
        CutLayer.Stock => "STOCK",
        CutLayer.Mark => "MARK",
        CutLayer.Bend => "BEND",
        CutLayer.Lead => "LEAD",
        CutLayer.CutInside => "CUT-INSIDE",
        _ => "CUT-OUTSIDE",
    };

    // colours of the standard palette: they only tell the layers apart
    private static int Colour(CutLayer layer) => layer switch
    {
        CutLayer.Stock => 8,
        CutLayer.Mark => 3,
        CutLayer.Bend => 4,
        CutLayer.Lead => 6,
        CutLayer.CutInside => 1,
        _ => 7,
    };

    /// <summary>Writes a cut sheet.</summary>
    /// <param name="sheet">What is cut.</param>
    public static string Write(CutSheet sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        var dxf = new StringBuilder();
        Put(dxf, 999, "millimetres, true to size");
        Put(dxf, 999, $"cut sheet {Ascii(sheet.Name)}");
        Header(dxf, sheet);
        Tables(dxf);
        Put(dxf, 0, "SECTION");
        Put(dxf, 2, "ENTITIES");
        foreach (CutMove move in sheet.Moves)
            Entity(dxf, move);
        Put(dxf, 0, "ENDSEC");
        Put(dxf, 0, "EOF");
        return dxf.ToString();
    }

    private static void Header(StringBuilder dxf, CutSheet sheet)
    {
        Extents? all = sheet.Moves.Count == 0 ? null : sheet.Moves.Select(m => new Outline([m.Closed ? m.Points : [.. m.Points, m.Points[0]]]).Extents())
            .Aggregate((a, b) => new Extents(Math.Min(a.Left, b.Left), Math.Max(a.Right, b.Right), Math.Min(a.Bottom, b.Bottom), Math.Max(a.Top, b.Top)));
        Put(dxf, 0, "SECTION");
        Put(dxf, 2, "HEADER");
        Put(dxf, 9, "$ACADVER");
        Put(dxf, 1, "AC1009");
        Point(dxf, "$EXTMIN", all?.Left ?? 0, all?.Bottom ?? 0);
        Point(dxf, "$EXTMAX", all?.Right ?? 0, all?.Top ?? 0);
        Put(dxf, 0, "ENDSEC");
    }

    private static void Point(StringBuilder dxf, string name, double y, double z)
    {
        Put(dxf, 9, name);
        At(dxf, y, z);
    }

    private static void Tables(StringBuilder dxf)
    {
        Put(dxf, 0, "SECTION");
        Put(dxf, 2, "TABLES");
        Put(dxf, 0, "TABLE");
        Put(dxf, 2, "LTYPE");
        Put(dxf, 70, "1");
        Put(dxf, 0, "LTYPE");
        Put(dxf, 2, "CONTINUOUS");
        Put(dxf, 70, "0");
        Put(dxf, 3, "Solid line");
        Put(dxf, 72, "65");
        Put(dxf, 73, "0");
        Put(dxf, 40, "0.0");
        Put(dxf, 0, "ENDTAB");
        Put(dxf, 0, "TABLE");
        Put(dxf, 2, "LAYER");
        Put(dxf, 70, (Layers.Length + 1).ToString(CultureInfo.InvariantCulture));
        Layer(dxf, "0", 7);
        foreach (CutLayer layer in Layers)
            Layer(dxf, Name(layer), Colour(layer));
        Put(dxf, 0, "ENDTAB");
        Put(dxf, 0, "ENDSEC");
    }

    private static void Layer(StringBuilder dxf, string name, int colour)
    {
        Put(dxf, 0, "LAYER");
        Put(dxf, 2, name);
        Put(dxf, 70, "0");
        Put(dxf, 62, colour.ToString(CultureInfo.InvariantCulture));
        Put(dxf, 6, "CONTINUOUS");
    }

    private static void Entity(StringBuilder dxf, CutMove move)
    {
        string layer = Name(move.Layer);
        if (move is { Closed: true, Points: [{ Bulge: var k } a, { Bulge: var same } b] } && Math.Abs(Math.Abs(k) - 1) < 1e-12 && k == same)
        {
            Put(dxf, 0, "CIRCLE");
            Put(dxf, 8, layer);
            At(dxf, (a.Y + b.Y) / 2, (a.Z + b.Z) / 2);
            Put(dxf, 40, Mm(Math.Sqrt((a.Y - b.Y) * (a.Y - b.Y) + (a.Z - b.Z) * (a.Z - b.Z)) / 2));
            return;
        }

        if (!move.Closed && move.Points.Count == 2 && move.Points[0].Bulge == 0)
        {
            Put(dxf, 0, "LINE");
            Put(dxf, 8, layer);
            At(dxf, move.Points[0].Y, move.Points[0].Z);
            Put(dxf, 11, Mm(move.Points[1].Y));
            Put(dxf, 21, Mm(move.Points[1].Z));
            Put(dxf, 31, "0.0");
            return;
        }

        Put(dxf, 0, "POLYLINE");
        Put(dxf, 8, layer);
        Put(dxf, 66, "1");
        At(dxf, 0, 0);
        Put(dxf, 70, move.Closed ? "1" : "0");
        foreach (Corner corner in move.Points)
        {
            Put(dxf, 0, "VERTEX");
            Put(dxf, 8, layer);
            At(dxf, corner.Y, corner.Z);
            if (corner.Bulge != 0)
                Put(dxf, 42, Number(corner.Bulge, 9));
        }

        Put(dxf, 0, "SEQEND");
        Put(dxf, 8, layer);
    }

    private static void At(StringBuilder dxf, double y, double z)
    {
        Put(dxf, 10, Mm(y));
        Put(dxf, 20, Mm(z));
        Put(dxf, 30, "0.0");
    }

    private static string Mm(double metres) => Number(metres * 1000, 6);

    private static string Number(double value, int digits)
    {
        double rounded = Math.Round(value, digits);
        return (rounded == 0 ? 0 : rounded).ToString("0.0########", CultureInfo.InvariantCulture);
    }

    private static string Ascii(string text) => new([.. text.Select(c => c is >= ' ' and < '\u007f' ? c : '?')]);

    private static void Put(StringBuilder dxf, int code, string value) =>
        dxf.Append(code.ToString(CultureInfo.InvariantCulture).PadLeft(3)).Append("\r\n").Append(value).Append("\r\n");
}
