using Ramwright.Fabrication.Plates;
using Ramwright.Geometry;

namespace Ramwright.Files.Drawings;

/// <summary>Turns a sheet into moves of a table: its outer edge and holes are cut, all else is scribed in single strokes.</summary>
public static class SheetCut
{
    private const double Mm = 1e-3;

    /// <summary>The moves; the first filled shape of the sheet is its edge, further closed shapes are holes.</summary>
    public static CutSheet Of(Sheet sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        var marks = new List<CutMove>();
        var inside = new List<CutMove>();
        var outside = new List<CutMove>();
        foreach (Mark mark in sheet.Marks)
        {
            switch (mark)
            {
                case Area area:
                    foreach (IReadOnlyList<Corner> loop in area.Outline.Loops)
                    {
                        Corner[] at = [.. loop.Select(c => new Corner(c.Y * Mm, c.Z * Mm, c.Bulge))];
                        bool edge = area.Pen == Pen.Frame;
                        (edge ? outside : inside).Add(new CutMove(edge ? CutLayer.CutOutside : CutLayer.CutInside, at, true));
                    }

                    break;
                case Line line:
                    marks.Add(new CutMove(CutLayer.Mark, [.. line.Points.Select(p => new Corner(p.X * Mm, p.Y * Mm))], false));
                    break;
                case Lettering text:
                    Letter(marks, text);
                    break;
            }
        }

        return new CutSheet(sheet.Title, [.. marks, .. inside, .. outside]);
    }

    private static void Letter(List<CutMove> marks, Lettering text)
    {
        string words = Plain(text.Text);
        // single strokes run wider than type: kept to the room the type would take
        double wide = StrokeLetters.Width(words) * text.Height, room = text.Width * 0.85, squeeze = wide > room && wide > 0 ? room / wide : 1;
        double left = text.X - (text.At switch { Anchor.Left => 0, Anchor.Middle => wide * squeeze / 2, _ => wide * squeeze });
        foreach (IReadOnlyList<(double X, double Y)> stroke in StrokeLetters.Of(words))
            marks.Add(new CutMove(CutLayer.Mark, [.. stroke.Select(p => new Corner((left + p.X * text.Height * squeeze) * Mm, (text.Y + p.Y * text.Height) * Mm))], false));
    }

    /// <summary>What single strokes are drawn for; the rest in other words.</summary>
    private static string Plain(string text) =>
        text.Replace("(", "", StringComparison.Ordinal).Replace(")", "", StringComparison.Ordinal).Replace("_", " ", StringComparison.Ordinal).Replace(";", " /", StringComparison.Ordinal)
            .Replace(":", "", StringComparison.Ordinal).Replace(",", ".", StringComparison.Ordinal).Replace("·", ".", StringComparison.Ordinal);
}
