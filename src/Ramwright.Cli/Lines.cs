using Spectre.Console;
using Spectre.Console.Rendering;

namespace Ramwright.Cli;

/// <summary>
/// A line of cells, or several where a cell wraps. What <c>check</c> prints a hundred of: a grid of Spectre's for each costs a
/// cold start a quarter of its time.
/// </summary>
internal sealed class Lines(params Cell[] cells) : IRenderable
{
    /// <summary>A cell is never narrower than this, whatever the screen.</summary>
    private const int Narrowest = 8;

    public Measurement Measure(RenderOptions options, int maxWidth) => new(Math.Min(maxWidth, Narrowest), maxWidth);

    public IEnumerable<Segment> Render(RenderOptions options, int maxWidth)
    {
        var wrapped = new List<string>[cells.Length];
        int rows = 0;
        for (int i = 0; i < cells.Length; i++)
        {
            int room = Math.Max(Narrowest, maxWidth - cells[i].At);
            wrapped[i] = Wrap(cells[i].Text, cells[i].Width == 0 ? room : Math.Min(room, cells[i].Width));
            rows = Math.Max(rows, wrapped[i].Count);
        }

        var line = new List<Segment>();
        for (int row = 0; row < rows; row++)
        {
            int at = 0;
            for (int i = 0; i < cells.Length; i++)
            {
                if (row >= wrapped[i].Count || wrapped[i][row].Length == 0)
                    continue;
                string text = wrapped[i][row];
                int wide = Wide(text);
                int from = cells[i].At + (cells[i].Right ? Math.Max(0, cells[i].Width - wide) : 0);
                if (from > at)
                    line.Add(new Segment(new string(' ', from - at)));
                line.Add(new Segment(text, cells[i].Style ?? Style.Plain));
                at = Math.Max(from, at) + wide;
            }

            line.Add(Segment.LineBreak);
        }

        return line;
    }

    /// <summary>How many characters of the screen a text takes: East Asian signs take two, and only those are looked up.</summary>
    private static int Wide(string text)
    {
        foreach (char c in text)
        {
            if (c is >= '\u1100' and (< '\u2000' or > '\u2E7F'))
                return Segment.CellCount([new Segment(text)]);
        }

        return text.Length;
    }

    /// <summary>Cuts a text at its spaces into pieces of at most <paramref name="width"/>; a longer word is cut where it must be.</summary>
    internal static List<string> Wrap(string text, int width)
    {
        var pieces = new List<string>();
        foreach (string paragraph in text.Split('\n'))
        {
            int from = 0;
            while (paragraph.Length - from > width)
            {
                int cut = paragraph.LastIndexOf(' ', from + width, width + 1);
                if (cut <= from)
                    cut = from + width;
                pieces.Add(paragraph[from..cut].TrimEnd());
                from = cut;
                while (from < paragraph.Length && paragraph[from] == ' ')
                    from++;
            }

            pieces.Add(paragraph[from..].TrimEnd());
        }

        return pieces;
    }
}
