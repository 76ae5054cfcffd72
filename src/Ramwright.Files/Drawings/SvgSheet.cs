using System.Globalization;
using System.Text;
using System.Xml;
using Ramwright.Geometry;

namespace Ramwright.Files.Drawings;

/// <summary>Writes a sheet as SVG 1.1, one unit a millimetre of paper. Marks of one part carry its name as <c>data-part</c>.</summary>
public static class SvgSheet
{
    private const string Space = "http://www.w3.org/2000/svg";
    private const string Ink = "#1c1c1c";

    /// <summary>Writes it.</summary>
    public static string Write(Sheet sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        var text = new StringBuilder();
        using (var xml = XmlWriter.Create(text, new XmlWriterSettings { Indent = true, OmitXmlDeclaration = true, IndentChars = " " }))
        {
            xml.WriteStartElement("svg", Space);
            xml.WriteAttributeString("viewBox", $"0 0 {F(sheet.Width)} {F(sheet.Height)}");
            xml.WriteAttributeString("width", F(sheet.Width) + "mm");
            xml.WriteAttributeString("height", F(sheet.Height) + "mm");
            xml.WriteAttributeString("role", "img");
            xml.WriteElementString("title", Space, sheet.Title);
            Start(xml, "rect", ("width", F(sheet.Width)), ("height", F(sheet.Height)), ("fill", "#ffffff"));
            xml.WriteEndElement();
            Start(xml, "g", ("stroke-linecap", "round"), ("stroke-linejoin", "round"), ("fill", "none"),
                ("font-family", "'DejaVu Sans', 'Liberation Sans', Arial, sans-serif"));
            foreach (Mark mark in sheet.Marks)
                Write(xml, mark, sheet.Height);
            xml.WriteEndElement();
            xml.WriteEndElement();
        }

        return text.Append('\n').ToString();
    }

    private static void Write(XmlWriter xml, Mark mark, double height)
    {
        switch (mark)
        {
            case Area area:
                Start(xml, "path", ("d", Path(area.Outline, height)), ("fill-rule", "evenodd"), ("fill", area.Fill.Length == 0 ? "none" : area.Fill));
                Stroke(xml, area.Pen);
                break;
            case Line line:
                Start(xml, "polyline", ("points", string.Join(' ', line.Points.Select(p => $"{F(p.X)},{F(height - p.Y)}"))));
                Stroke(xml, line.Pen);
                break;
            case Lettering text:
                // a capital is 0.7 of the font's size
                Start(xml, "text", ("x", F(text.X)), ("y", F(height - text.Y)), ("font-size", F(text.Height / 0.7)), ("fill", Ink),
                    ("text-anchor", text.At switch { Anchor.Left => "start", Anchor.Middle => "middle", _ => "end" }));
                if (text.Bold)
                    xml.WriteAttributeString("font-weight", "bold");
                if (text.Upward)
                    xml.WriteAttributeString("transform", $"rotate(-90 {F(text.X)} {F(height - text.Y)})");
                Part(xml, mark);
                xml.WriteString(text.Text);
                xml.WriteEndElement();
                return;
        }

        Part(xml, mark);
        xml.WriteEndElement();
    }

    private static void Part(XmlWriter xml, Mark mark)
    {
        if (mark.Part.Length > 0)
            xml.WriteAttributeString("data-part", mark.Part);
    }

    private static void Start(XmlWriter xml, string element, params ReadOnlySpan<(string Name, string Value)> attributes)
    {
        xml.WriteStartElement(element, Space);
        foreach ((string name, string value) in attributes)
            xml.WriteAttributeString(name, value);
    }

    private static void Stroke(XmlWriter xml, Pen pen)
    {
        if (pen == Pen.None)
            return;
        xml.WriteAttributeString("stroke", Ink);
        xml.WriteAttributeString("stroke-width", pen switch { Pen.Edge => "0.35", Pen.Frame => "0.7", _ => "0.18" });
        string dashes = pen switch { Pen.Hidden => "2 1", Pen.Centre => "6 1 0.5 1", Pen.Moved => "6 1 0.5 1 0.5 1", _ => "" };
        if (dashes.Length > 0)
            xml.WriteAttributeString("stroke-dasharray", dashes);
    }

    private static string Path(Outline outline, double height)
    {
        var d = new StringBuilder();
        foreach (IReadOnlyList<Corner> loop in outline.Loops)
        {
            d.Append($"M{F(loop[0].Y)} {F(height - loop[0].Z)}");
            for (int i = 0; i < loop.Count; i++)
            {
                Corner a = loop[i], b = loop[(i + 1) % loop.Count];
                if (a.Bulge == 0)
                {
                    d.Append($"L{F(b.Y)} {F(height - b.Z)}");
                    continue;
                }

                double k = Math.Abs(a.Bulge), chord = Math.Sqrt((b.Y - a.Y) * (b.Y - a.Y) + (b.Z - a.Z) * (b.Z - a.Z));
                double r = chord * (1 + k * k) / (4 * k);
                d.Append($"A{F(r)} {F(r)} 0 {(k > 1 ? 1 : 0)} {(a.Bulge > 0 ? 0 : 1)} {F(b.Y)} {F(height - b.Z)}");
            }

            d.Append('Z');
        }

        return d.ToString();
    }

    private static string F(double mm) => Math.Round(mm, 3).ToString(CultureInfo.InvariantCulture);
}
