using System.Net;
using System.Text;

namespace Ramwright.Files.Readings;

/// <summary>A page that stands by itself: one file, its style inside, nothing fetched, made to be printed in black on A4 or Letter.</summary>
internal sealed class HtmlPage
{
    private const string Style = """
        @page { margin: 9mm; }
        * { box-sizing: border-box; }
        body { font: 9.5pt/1.32 'Liberation Sans', 'DejaVu Sans', Arial, sans-serif; color: #111; background: #fff; margin: 0 auto; padding: 6mm; max-width: 210mm; }
        h1 { font-size: 15pt; margin: 0 0 1mm; } h2 { font-size: 10.5pt; margin: 3.2mm 0 1mm; border-bottom: 0.3mm solid #111; break-after: avoid; }
        p { margin: 0.8mm 0; } ul, ol { margin: 0.6mm 0; padding-left: 4.5mm; } li { margin: 0.35mm 0; }
        table { border-collapse: collapse; width: 100%; margin: 1mm 0; } th, td { border: 0.2mm solid #666; padding: 0.5mm 1mm; text-align: left; vertical-align: top; }
        th { background: #e9edf0; } td.n, th.n { text-align: right; white-space: nowrap; } td.box { min-width: 13mm; height: 5.6mm; } tr { break-inside: avoid; }
        .two { columns: 2; column-gap: 6mm; } td.whole { white-space: nowrap; }
        .stop { border: 0.7mm solid #111; padding: 1mm 2mm; margin: 1.5mm 0; } .big { font-size: 13pt; font-weight: bold; }
        .quiet { color: #444; } .sign { display: flex; gap: 8mm; margin-top: 4mm; } .sign div { flex: 1; border-top: 0.3mm solid #111; padding-top: 0.5mm; }
        .plots { display: flex; flex-wrap: wrap; gap: 3mm; } .plots svg { width: 92mm; height: auto; } li { break-inside: avoid; } ul.boxes { list-style: '☐ '; }
        .tight { font-size: 7.3pt; line-height: 1.16; } .tight table { font-size: 7.3pt; } .tight td.box { height: 4.6mm; } .tight th { white-space: normal; } .tight h2 { font-size: 8.8pt; margin: 1.6mm 0 0.5mm; } .tight li { margin: 0.1mm 0; } .tight h1 { font-size: 12.5pt; }
        @media print { body { padding: 0; max-width: none; } }
        """;

    private readonly StringBuilder _text = new();

    public HtmlPage(string title, string kind = "")
    {
        _text.Append("<!DOCTYPE html>\n<html lang=\"en\"><head><meta charset=\"utf-8\"><meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n<title>")
            .Append(Safe(title)).Append("</title>\n<style>\n").Append(Style).Append("\n</style></head>\n<body");
        if (kind.Length > 0)
            _text.Append(" class=\"").Append(kind).Append('"');
        _text.Append(">\n");
    }

    /// <summary>Text that says what it says and nothing else.</summary>
    public static string Safe(string text) => WebUtility.HtmlEncode(text);

    /// <summary>An element with plain text in it.</summary>
    public HtmlPage Put(string element, string text, string kind = "")
    {
        _text.Append('<').Append(element);
        if (kind.Length > 0)
            _text.Append(" class=\"").Append(kind).Append('"');
        _text.Append('>').Append(Safe(text)).Append("</").Append(element).Append(">\n");
        return this;
    }

    /// <summary>Something that is markup already.</summary>
    public HtmlPage Raw(string markup)
    {
        _text.Append(markup).Append('\n');
        return this;
    }

    /// <summary>A list.</summary>
    public HtmlPage List(IEnumerable<string> items, bool numbered = false)
    {
        _text.Append(numbered ? "<ol>" : "<ul>");
        foreach (string item in items)
            _text.Append("<li>").Append(Safe(item)).Append("</li>");
        _text.Append(numbered ? "</ol>\n" : "</ul>\n");
        return this;
    }

    /// <summary>A table; columns whose head ends in a star hold numbers, those that end in a bar words that are not to be broken; an empty cell is a box to write in.</summary>
    public HtmlPage Table(IReadOnlyList<string> heads, IEnumerable<IReadOnlyList<string>> rows)
    {
        bool[] numbers = [.. heads.Select(h => h.EndsWith('*'))];
        _text.Append("<table><tr>");
        for (int i = 0; i < heads.Count; i++)
            _text.Append(numbers[i] ? "<th class=\"n\">" : "<th>").Append(Safe(heads[i].TrimEnd('*', '|'))).Append("</th>");
        _text.Append("</tr>\n");
        foreach (IReadOnlyList<string> row in rows)
        {
            _text.Append("<tr>");
            for (int i = 0; i < row.Count; i++)
                _text.Append(row[i].Length == 0 ? "<td class=\"box\">" : numbers[i] ? "<td class=\"n\">" : heads[i].EndsWith('|') ? "<td class=\"whole\">" : "<td>").Append(Safe(row[i])).Append("</td>");
            _text.Append("</tr>\n");
        }

        _text.Append("</table>\n");
        return this;
    }

    /// <summary>The whole page.</summary>
    public override string ToString() => _text + "</body></html>\n";
}
