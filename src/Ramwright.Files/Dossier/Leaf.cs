using PdfSharp.Drawing;

namespace Ramwright.Files.Dossier;

/// <summary>A page that has been laid out and is not yet drawn. Points, down from the upper left corner.</summary>
/// <param name="chapter">The chapter it belongs to; empty for the front.</param>
/// <param name="landscape">Whether it lies on its side.</param>
internal sealed class Leaf(string chapter, bool landscape = false)
{
    public const double Short = 595.28, Long = 841.89;
    public const double Left = 62, Right = 45, Top = 54, Bottom = 50;

    private readonly List<Action<XGraphics>> _marks = [];

    public string Chapter { get; } = chapter;
    public bool Landscape { get; } = landscape;
    public double Width => Landscape ? Long : Short;
    public double Height => Landscape ? Short : Long;

    /// <summary>How much is drawn on it.</summary>
    public int Marks => _marks.Count;

    /// <summary>Takes off again what was added since there was so much.</summary>
    public void Undo(int marks) => _marks.RemoveRange(marks, _marks.Count - marks);

    /// <summary>Adds something to be drawn.</summary>
    public void Add(Action<XGraphics> mark) => _marks.Add(mark);

    /// <summary>Writes a line of text.</summary>
    /// <param name="text">The text.</param>
    /// <param name="x">Its beginning, or its end where it stands to the right.</param>
    /// <param name="baseline">Its base line.</param>
    /// <param name="size">Points.</param>
    /// <param name="heavy">Whether it is heavy.</param>
    /// <param name="grey">Whether it is grey.</param>
    /// <param name="right">Whether it ends at <paramref name="x"/>.</param>
    public void Text(string text, double x, double baseline, double size, bool heavy = false, bool grey = false, bool right = false)
    {
        string fit = Faces.Fit(text);
        double at = right ? x - Faces.Width(fit, size, heavy) : x;
        _marks.Add(on => on.DrawString(fit, Faces.Font(size, heavy), grey ? Grey : Black, at, baseline));
    }

    /// <summary>Writes a line of a formula: what stands behind an underscore is set low and small.</summary>
    public void Formula(string text, double x, double baseline, double size, bool heavy = false, bool grey = false, bool right = false)
    {
        double at = right ? x - FormulaWidth(text, size, heavy) : x;
        foreach ((string run, bool low) in Runs(text))
        {
            double height = low ? 0.76 * size : size;
            Text(run, at, low ? baseline + 0.2 * size : baseline, height, heavy, grey);
            at += Faces.Width(Faces.Fit(run), height, heavy);
        }
    }

    /// <summary>Width of a line of a formula, points.</summary>
    public static double FormulaWidth(string text, double size, bool heavy = false) =>
        Runs(text).Sum(r => Faces.Width(Faces.Fit(r.Text), r.Low ? 0.76 * size : size, heavy));

    private static IEnumerable<(string Text, bool Low)> Runs(string text)
    {
        int from = 0;
        for (int i = 0; i < text.Length; i++)
        {
            // an underscore after a letter begins what is set low; it ends with the name
            if (text[i] != '_' || i == 0 || !(char.IsLetterOrDigit(text[i - 1]) || text[i - 1] == '\u0304') || i + 1 == text.Length || !char.IsLetterOrDigit(text[i + 1]))
                continue;
            int end = i + 1;
            while (end < text.Length && (char.IsLetterOrDigit(text[end]) || text[end] is '.' or '\'' or '′' && end + 1 < text.Length && char.IsLetterOrDigit(text[end + 1])))
                end++;
            if (i > from)
                yield return (text[from..i], false);
            yield return (text[(i + 1)..end].Replace('_', ','), true);
            from = end;
            i = end - 1;
        }

        if (from < text.Length)
            yield return (text[from..], false);
    }

    /// <summary>A line.</summary>
    public void Rule(double x1, double y1, double x2, double y2, double width = 0.4, bool grey = false) =>
        _marks.Add(on => on.DrawLine(new XPen(grey ? XColor.FromGrayScale(0.6) : XColors.Black, width), x1, y1, x2, y2));

    /// <summary>A filled rectangle.</summary>
    public void Fill(double x, double y, double width, double height, double grey) =>
        _marks.Add(on => on.DrawRectangle(new XSolidBrush(XColor.FromGrayScale(grey)), x, y, width, height));

    /// <summary>Draws it all.</summary>
    public void Draw(XGraphics on)
    {
        foreach (Action<XGraphics> mark in _marks)
            mark(on);
    }

    private static readonly XBrush Black = new XSolidBrush(XColor.FromGrayScale(0.05)), Grey = new XSolidBrush(XColor.FromGrayScale(0.36));
}
