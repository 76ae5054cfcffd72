using PdfSharp.Drawing;
using Ramwright.Files.Drawings;
using Ramwright.Geometry;

namespace Ramwright.Files.Dossier;

/// <summary>Draws a sheet on a page of PDF: the same marks that <see cref="SvgSheet"/> writes, in the same pens.</summary>
internal static class PdfSheet
{
    /// <summary>Points of a millimetre.</summary>
    public const double Mm = 72 / 25.4;

    private static readonly XColor Ink = XColor.FromArgb(0x1c, 0x1c, 0x1c);

    /// <summary>Draws it.</summary>
    /// <param name="on">The page.</param>
    /// <param name="sheet">What is drawn.</param>
    /// <param name="x">Left edge, points from the left.</param>
    /// <param name="y">Upper edge, points from the top.</param>
    /// <param name="scale">Size on paper over its own size.</param>
    public static void Draw(XGraphics on, Sheet sheet, double x, double y, double scale = 1)
    {
        double unit = Mm * scale;
        XPoint P(double px, double py) => new(x + px * unit, y + (sheet.Height - py) * unit);
        foreach (Mark mark in sheet.Marks)
        {
            switch (mark)
            {
                case Area area:
                    XGraphicsPath path = Path(area.Outline, P);
                    XBrush? fill = area.Fill.Length == 0 ? null : new XSolidBrush(Colour(area.Fill));
                    if (PenOf(area.Pen, unit) is { } edge)
                    {
                        if (fill is null)
                            on.DrawPath(edge, path);
                        else
                            on.DrawPath(edge, fill, path);
                    }
                    else if (fill is not null)
                        on.DrawPath(fill, path);
                    break;
                case Line line:
                    if (PenOf(line.Pen, unit) is { } pen && line.Points.Count > 1)
                        on.DrawLines(pen, [.. line.Points.Select(p => P(p.X, p.Y))]);
                    break;
                case Lettering text:
                    Letter(on, text, P(text.X, text.Y), unit);
                    break;
            }
        }
    }

    private static void Letter(XGraphics on, Lettering text, XPoint at, double unit)
    {
        // a capital is 0.7 of the font's size
        double size = text.Height / 0.7 * unit;
        string words = Faces.Fit(text.Text);
        double width = Faces.Width(words, size, text.Bold), back = text.At switch { Anchor.Left => 0, Anchor.Middle => width / 2, _ => width };
        XFont font = Faces.Font(Math.Round(size, 2), text.Bold);
        if (!text.Upward)
        {
            on.DrawString(words, font, new XSolidBrush(Ink), at.X - back, at.Y);
            return;
        }

        XGraphicsState state = on.Save();
        on.RotateAtTransform(-90, at);
        on.DrawString(words, font, new XSolidBrush(Ink), at.X - back, at.Y);
        on.Restore(state);
    }

    private static XPen? PenOf(Pen pen, double unit)
    {
        if (pen == Pen.None)
            return null;
        double width = pen switch { Pen.Edge => 0.35, Pen.Frame => 0.7, _ => 0.18 };
        var drawn = new XPen(Ink, width * unit) { LineCap = XLineCap.Round, LineJoin = XLineJoin.Round };
        double[] dashes = pen switch { Pen.Hidden => [2, 1], Pen.Centre => [6, 1, 0.5, 1], Pen.Moved => [6, 1, 0.5, 1, 0.5, 1], _ => [] };
        if (dashes.Length > 0)
        {
            // the pen counts its dashes in its own width
            drawn.DashPattern = [.. dashes.Select(d => d / width)];
            drawn.LineCap = XLineCap.Flat;
        }

        return drawn;
    }

    private static XColor Colour(string hex)
    {
        int rgb = Convert.ToInt32(hex.TrimStart('#'), 16);
        return XColor.FromArgb(rgb >> 16 & 255, rgb >> 8 & 255, rgb & 255);
    }

    private static XGraphicsPath Path(Outline outline, Func<double, double, XPoint> on)
    {
        var path = new XGraphicsPath { FillMode = XFillMode.Alternate };
        foreach (IReadOnlyList<Corner> loop in outline.Loops)
        {
            path.StartFigure();
            for (int i = 0; i < loop.Count; i++)
            {
                Corner a = loop[i], b = loop[(i + 1) % loop.Count];
                if (a.Bulge == 0)
                    path.AddLine(on(a.Y, a.Z), on(b.Y, b.Z));
                else
                    Arc(path, a, b, on);
            }

            path.CloseFigure();
        }

        return path;
    }

    /// <summary>An arc as cubic curves of at most a quarter turn each: 0.03 % off the circle.</summary>
    private static void Arc(XGraphicsPath path, Corner a, Corner b, Func<double, double, XPoint> on)
    {
        double k = a.Bulge, angle = 4 * Math.Atan(k), left = (1 - k * k) / (4 * k);
        double cy = (a.Y + b.Y) / 2 - left * (b.Z - a.Z), cz = (a.Z + b.Z) / 2 + left * (b.Y - a.Y);
        int n = Math.Max(1, (int)Math.Ceiling(Math.Abs(angle) / (Math.PI / 2) - 1e-9));
        double part = angle / n, reach = 4.0 / 3 * Math.Tan(part / 4);
        double y = a.Y - cy, z = a.Z - cz;
        for (int i = 0; i < n; i++)
        {
            double c = Math.Cos(part), s = Math.Sin(part), y2 = c * y - s * z, z2 = s * y + c * z;
            path.AddBezier(on(cy + y, cz + z), on(cy + y - reach * z, cz + z + reach * y), on(cy + y2 + reach * z2, cz + z2 - reach * y2), on(cy + y2, cz + z2));
            (y, z) = (y2, z2);
        }
    }
}
