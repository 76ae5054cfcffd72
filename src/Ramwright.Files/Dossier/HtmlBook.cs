using System.Globalization;
using System.Net;
using System.Text;
using Ramwright.Files.Drawings;
using Ramwright.Files.Typeset;

namespace Ramwright.Files.Dossier;

/// <summary>Writes a book as one HTML file that needs nothing beside it: drawings as SVG, formulas as MathML. It prints well.</summary>
public static class HtmlBook
{
    /// <summary>Writes it.</summary>
    public static string Write(Book book)
    {
        ArgumentNullException.ThrowIfNull(book);
        var html = new StringBuilder();
        html.Append("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n");
        html.Append($"<title>{E(book.Title)}: {E(book.Subtitle)}</title>\n<style>\n{Style}</style>\n</head>\n<body>\n<header>\n<h1>{E(book.Title)}</h1>\n<p class=\"quiet\">{E(book.Subtitle)}</p>\n</header>\n<main>\n");
        foreach (Block block in book.Front)
            Write(html, block);
        html.Append("<nav aria-label=\"Contents\">\n<h2>Contents</h2>\n<ol>\n");
        for (int i = 0; i < book.Chapters.Count; i++)
            html.Append($"<li><a href=\"#c{i + 1}\">{E(book.Chapters[i].Name)}</a></li>\n");
        html.Append("</ol>\n</nav>\n");
        for (int i = 0; i < book.Chapters.Count; i++)
        {
            html.Append($"<section id=\"c{i + 1}\" aria-labelledby=\"h{i + 1}\">\n<h2 class=\"chapter\" id=\"h{i + 1}\">{E(book.Chapters[i].Name)}</h2>\n");
            foreach (Block block in book.Chapters[i].Blocks)
                Write(html, block);
            html.Append("</section>\n");
        }

        html.Append($"</main>\n<footer>{E(book.Stamp)}</footer>\n</body>\n</html>\n");
        return html.ToString();
    }

    private static void Write(StringBuilder html, Block block)
    {
        switch (block)
        {
            case Heading h:
                html.Append(CultureInfo.InvariantCulture, $"<h{h.Level + 1}>{E(h.Text)}</h{h.Level + 1}>\n");
                break;
            case Prose p:
                string tone = p.Tone switch { Tone.Quiet => " class=\"quiet\"", Tone.Loud => " class=\"loud\"", Tone.Warn => " class=\"warn\"", _ => "" };
                html.Append($"<p{tone}>{E(p.Text).Replace("\n", "<br>", StringComparison.Ordinal)}</p>\n");
                break;
            case Items items:
                string list = items.Mark == ItemMark.Number ? "ol" : "ul";
                html.Append($"<{list}{(items.Mark == ItemMark.Box ? " class=\"boxes\"" : "")}>\n");
                foreach (string text in items.Texts)
                    html.Append($"<li>{E(text)}</li>\n");
                html.Append($"</{list}>\n");
                break;
            case Facts facts:
                html.Append("<dl>\n");
                foreach ((string name, string value, string remark) in facts.Rows)
                    html.Append($"<div><dt>{E(name)}</dt><dd><b>{E(value)}</b>{(remark.Length > 0 ? $" <span class=\"quiet\">{E(remark)}</span>" : "")}</dd></div>\n");
                html.Append("</dl>\n");
                break;
            case Grid grid:
                Table(html, grid);
                break;
            case Picture picture:
                html.Append($"<figure>\n<div class=\"sheet\" tabindex=\"0\" role=\"region\" aria-label=\"{E(picture.Sheet.Title)}\">{SvgSheet.Write(picture.Sheet)}</div>\n");
                html.Append(picture.Caption.Length > 0 ? $"<figcaption>{E(picture.Caption)}</figcaption>\n</figure>\n" : "</figure>\n");
                break;
            case StepLine s:
                html.Append($"<div class=\"step\"><p><span class=\"quiet\">{s.Number}</span> {E(s.Meaning)} <b>{FormulaMath.Symbol(s.Symbol)} = {E(s.Result)}</b></p>\n");
                if (s.Formula.Length > 0)
                    html.Append(FormulaMath.Equation(s.Symbol, s.Formula)).Append('\n');
                if (s.With.Length > 0)
                    html.Append($"<p class=\"quiet\">with {E(s.With)}</p>\n");
                html.Append($"<p class=\"quiet source\">{E(s.Source)}</p></div>\n");
                break;
        }
    }

    private static void Table(StringBuilder html, Grid grid)
    {
        html.Append($"<div class=\"scroll\" tabindex=\"0\" role=\"region\" aria-label=\"{E(grid.Caption.Length > 0 ? grid.Caption : grid.Columns[0].Head + " and what belongs to it")}\">\n<table{(grid.Ruled ? " class=\"ruled\"" : "")}>\n");
        if (grid.Caption.Length > 0)
            html.Append($"<caption>{E(grid.Caption)}</caption>\n");
        html.Append("<thead><tr>");
        foreach (GridColumn column in grid.Columns)
            html.Append($"<th scope=\"col\"{(column.Right ? " class=\"n\"" : "")}>{E(column.Head)}</th>");
        html.Append("</tr></thead>\n<tbody>\n");
        for (int r = 0; r < grid.Rows.Count; r++)
        {
            html.Append(grid.Heavy.Contains(r) ? "<tr class=\"heavy\">" : "<tr>");
            for (int i = 0; i < grid.Columns.Count; i++)
                html.Append($"<td{(grid.Columns[i].Right ? " class=\"n\"" : "")}>{E(grid.Rows[r][i]).Replace("\n", "<br>", StringComparison.Ordinal)}</td>");
            html.Append("</tr>\n");
        }

        html.Append("</tbody>\n</table>\n</div>\n");
    }

    private static string E(string text) => WebUtility.HtmlEncode(text);

    private const string Style = """
        :root { color-scheme: light; }
        body { font: 16px/1.45 "IBM Plex Sans", "Liberation Sans", Arial, sans-serif; font-variant-numeric: tabular-nums; color: #111; background: #fff; max-width: 62rem; margin: 2rem auto; padding: 0 1rem; }
        h1 { font-size: 2.2rem; margin: 0; line-height: 1.1; }
        h2 { font-size: 1.25rem; margin: 1.6rem 0 .4rem; }
        h2.chapter { font-size: 1.6rem; border-bottom: 2px solid #111; padding-bottom: .25rem; margin-top: 3rem; }
        h3 { font-size: 1.1rem; margin: 1.4rem 0 .3rem; }
        h4 { font-size: 1rem; margin: 1.1rem 0 .3rem; }
        .quiet, figcaption, footer { color: #505050; font-size: .87rem; }
        .loud { font-size: 1.3rem; font-weight: 600; margin: .5rem 0; }
        .warn { border-left: 5px solid #111; padding-left: .7rem; }
        .boxes { list-style: none; padding-left: 0; }
        .boxes li { padding-left: 1.7rem; position: relative; margin: .35rem 0; }
        .boxes li::before { content: ""; position: absolute; left: 0; top: .22em; width: .85em; height: .85em; border: 1.5px solid #111; }
        dl div { display: grid; grid-template-columns: 12rem 1fr; gap: .5rem; margin: .15rem 0; }
        dt { color: #505050; }
        dd { margin: 0; overflow-wrap: anywhere; }
        .scroll, .sheet { overflow-x: auto; }
        table { border-collapse: collapse; width: 100%; font-size: .9rem; margin: .5rem 0 1.2rem; }
        caption { text-align: left; font-weight: 600; padding: .3rem 0; }
        th { text-align: left; background: #e8e8e8; border-bottom: 1.5px solid #111; font-size: .83rem; }
        th, td { padding: .3rem .5rem; vertical-align: top; border-bottom: 1px solid #bbb; }
        .n { text-align: right; }
        .heavy td { font-weight: 600; }
        .ruled th, .ruled td { border: 1px solid #111; height: 1.6rem; }
        figure { margin: 1rem 0; }
        figure svg { max-width: 100%; height: auto; border: 1px solid #ccc; }
        .step { margin: .7rem 0; break-inside: avoid; }
        .step p { margin: 0; }
        math { margin: .2rem 0; display: block; text-align: left; }
        b math, p math { display: inline; }
        footer { margin-top: 3rem; border-top: 1px solid #bbb; padding-top: .5rem; overflow-wrap: anywhere; }
        @media (max-width: 40rem) { dl div { grid-template-columns: 1fr; gap: 0; } .scroll table { min-width: 38rem; } .sheet svg { min-width: 34rem; } }
        @media print { body { font-size: 10pt; margin: 0; max-width: none; } h2.chapter { break-before: page; } tr, figure { break-inside: avoid; } thead { display: table-header-group; } @page { size: A4; margin: 16mm; } }

        """;
}
