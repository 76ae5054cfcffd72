using System.Globalization;
using System.Text;
using Ramwright.Fabrication;
using Ramwright.Geometry;

namespace Ramwright.Files.Making;

/// <summary>The list of parts as a table that any spreadsheet reads: millimetres and kilograms.</summary>
public static class PartFiles
{
    /// <summary>Makes <c>parts.csv</c>.</summary>
    public static IEnumerable<OutFile> Make(MakeOf of)
    {
        ArgumentNullException.ThrowIfNull(of);
        yield return OutFile.OfText("parts.csv", Csv(of.Parts));
    }

    /// <summary>The table.</summary>
    public static string Csv(PartList list)
    {
        ArgumentNullException.ThrowIfNull(list);
        var text = new StringBuilder("mark,part,belongs to,count,what,steel,length mm,width mm,thickness mm,mass of one kg,mass of all kg,dimensions from,rule\n");
        foreach (Part part in list.Parts)
        {
            (string what, double? length, double? width, double? thickness) = part switch
            {
                PlatePart p => ("plate", p.Outline.Extents().Width, p.Outline.Extents().Height, p.Thickness),
                LengthPart l => (l.Section.Name, (double?)l.Length, (double?)null, (double?)null),
                BoughtPart b => (b.Ask, null, null, null),
                _ => ("", null, null, null),
            };
            string[] cells =
            [
                part.Mark, part.Name, part.Of, $"{part.Count}", what, part.Steel?.Name ?? "", Mm(length), Mm(width), Mm(thickness),
                Figure(part.Mass), Figure(part.Mass * part.Count), Words(part.Origin), part.Rule,
            ];
            text.AppendJoin(',', cells.Select(Quoted)).Append('\n');
        }

        return text.ToString();
    }

    /// <summary>Who gave a part's dimensions, in words.</summary>
    public static string Words(PartOrigin origin) => origin switch
    {
        PartOrigin.Described => "press file",
        PartOrigin.Listed => "parts list of the press file",
        _ => "proposed: look before you cut",
    };

    private static string Mm(double? metres) => Figure(metres * 1000);

    private static string Figure(double? value) => value is { } v ? Math.Round(v, 3).ToString(CultureInfo.InvariantCulture) : "";

    internal static string Quoted(string cell)
    {
        // a cell that begins like a formula would be run by a spreadsheet
        if (cell.Length > 0 && cell[0] is '=' or '+' or '-' or '@')
            cell = "'" + cell;
        return cell.AsSpan().IndexOfAny(",\"\n\r") >= 0 ? $"\"{cell.Replace("\"", "\"\"", StringComparison.Ordinal)}\"" : cell;
    }
}
