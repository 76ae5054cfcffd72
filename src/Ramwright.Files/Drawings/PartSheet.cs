using Ramwright.Fabrication;
using Ramwright.Geometry;
using Ramwright.Quantities;

namespace Ramwright.Files.Drawings;

/// <summary>The A4 sheet that one part is drawn on: frame, title, words beside the part.</summary>
internal static class PartSheet
{
    public const double Wide = 297, Tall = 210, Margin = 8, Title = 22;

    /// <summary>Room for the part and its dimensions, mm: the left part of the sheet above the title.</summary>
    public static readonly Extents Room = new(Margin + 6, 205, Margin + Title + 6, Tall - Margin - 6);

    /// <summary>Where words begin, mm.</summary>
    public const double Words = 212;

    private static readonly double[] Scales = [1, 2, 2.5, 5, 7.5, 10, 15, 20, 25, 30, 40, 50, 75, 100, 200, 500, 1000];

    /// <summary>The first scale at which something fits, as its number n of 1:n.</summary>
    public static double ScaleFor(double wide, double high, double roomWide, double roomHigh) =>
        Scales.FirstOrDefault(n => wide * 1000 / n <= roomWide && high * 1000 / n <= roomHigh, Scales[^1]);

    /// <summary>A length in the sheet's unit, which the title names.</summary>
    public static string Figure(double metres, UnitSystem units) =>
        Readout.Number(units == UnitSystem.Metric ? Math.Round(metres * 1000, 1) : Math.Round(metres / 0.0254, 3), 6);

    public static IEnumerable<Mark> Frame(Part part, string press, double n, UnitSystem units)
    {
        yield return new Area("", new Outline([Loops.Rectangle(Margin, Wide - Margin, Margin, Tall - Margin)]), Pen.Frame);
        double top = Margin + Title, right = Wide - Margin - 4;
        yield return new Line("", [(Margin, top), (Wide - Margin, top)], Pen.Edge);
        yield return new Lettering("", $"{part.Mark}  {part.Name}", Margin + 4, top - 8, 4, Bold: true);
        string steel = part.Steel is { } s ? $"steel {s.Name}" : "steel: builder to decide";
        string mass = part.Mass is { } m ? $" · {Readout.Text(m, Dimension.Mass, units)} each" : "";
        yield return new Lettering("", $"{part.Count} off · {steel}{mass}", Margin + 4, top - 13.5);
        yield return new Lettering("", part.Origin == PartOrigin.Proposed ? "Proposed by a rule of common practice: look before you cut." : "Dimensions from the press file.", Margin + 4, top - 18);
        yield return new Lettering("", press, right, top - 8, 3, Anchor.Right);
        yield return new Lettering("", $"scale 1:{Readout.Number(n)} · {(units == UnitSystem.Metric ? "dimensions in mm" : "dimensions in inches")}", right, top - 13.5, At: Anchor.Right);
        yield return new Lettering("", "A calculation, not a certificate.", right, top - 18, At: Anchor.Right);
    }

    /// <summary>Lines of words from the top down, wrapped to their room.</summary>
    public static IEnumerable<Mark> Column(IEnumerable<string> lines)
    {
        double y = Room.Top - 4;
        const double line = 4.6;
        int letters = (int)((Wide - Margin - 4 - Words) / (0.72 * Lettering.Usual));
        foreach (string text in lines)
        {
            foreach (string piece in Wrapped(text, letters))
            {
                if (y < Room.Bottom)
                    yield break;
                yield return new Lettering("", piece, Words, y);
                y -= line;
            }

            y -= 1.2;
        }
    }

    private static IEnumerable<string> Wrapped(string text, int letters)
    {
        while (text.Length > letters)
        {
            int cut = text.LastIndexOf(' ', letters);
            if (cut <= 0)
                cut = letters;
            yield return text[..cut];
            text = text[cut..].TrimStart();
        }

        yield return text;
    }
}
