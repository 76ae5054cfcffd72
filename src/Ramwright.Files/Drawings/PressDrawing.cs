using Ramwright.Frame;
using Ramwright.Geometry;
using Ramwright.Ladders;
using Ramwright.Quantities;

namespace Ramwright.Files.Drawings;

/// <summary>Front and side of a press on one A4 sheet, from the same pieces that the frame solver's beams stand for.</summary>
public static class PressDrawing
{
    private const double Wide = 297, Tall = 210, Margin = 8, Title = 22, Between = 10;
    private static readonly double[] Scales = [1, 2, 2.5, 5, 7.5, 10, 12.5, 15, 20, 25, 30, 40, 50, 75, 100, 200, 500];

    /// <summary>Draws a press.</summary>
    /// <param name="check">The press.</param>
    /// <param name="units">Units of the figures: millimetres or inches.</param>
    /// <param name="at">A ram force, N, at which each part carries how much of what it is safe to, as number and shade; null for none.</param>
    /// <exception cref="NotSupportedException">A kind of frame that cannot be drawn yet.</exception>
    public static Sheet Of(PressCheck check, UnitSystem units = UnitSystem.Metric, double? at = null)
    {
        ArgumentNullException.ThrowIfNull(check);
        FrameBody body = FrameBody.Of(check.Rig);
        // where the bare steel is too large already, words and dimensions need not be tried
        Extents front = Cover(body, View.Front(1000)), side = Cover(body, View.Side(1000));
        foreach (double n in Scales)
        {
            if ((front.Width + side.Width) / n > Wide || Math.Max(front.Height, side.Height) / n > Tall)
                continue;
            if (Fit(check, body, n, units, at) is { } sheet)
                return sheet;
        }

        throw new NotSupportedException("The press is too large for a sheet at 1:500.");
    }

    private static Extents Cover(FrameBody body, View view) => body.Pieces.Select(p => PieceFigure.Cover(p, view))
        .Aggregate((a, b) => new Extents(Math.Min(a.Left, b.Left), Math.Max(a.Right, b.Right), Math.Min(a.Bottom, b.Bottom), Math.Max(a.Top, b.Top)));

    private static Sheet? Fit(PressCheck check, FrameBody body, double n, UnitSystem units, double? at)
    {
        Elevation front = Elevation.Of(check, body, View.Front(1000 / n), units, at);
        Elevation side = Elevation.Of(check, body, View.Side(1000 / n), units, at);
        double wide = front.Width + Between + side.Width, tall = Math.Max(front.Height, side.Height);
        if (wide > Wide - 2 * Margin - 4 || tall > Tall - 2 * Margin - Title - 4)
            return null;

        double slack = (Wide - 2 * Margin - wide) / 3;
        double ground = Margin + Title + (Tall - 2 * Margin - Title - tall) / 2 + Math.Max(front.Below, side.Below);
        var marks = new List<Mark>();
        marks.AddRange(front.At(Margin + slack, ground));
        marks.AddRange(side.At(Margin + 2 * slack + front.Width + Between, ground));
        marks.AddRange(TitleBlock(check, body, n, units, at));
        return new Sheet($"{check.Rig.Name}: front and side", Wide, Tall, marks);
    }

    private static IEnumerable<Mark> TitleBlock(PressCheck check, FrameBody body, double n, UnitSystem units, double? at)
    {
        yield return new Area("", new Outline([Loops.Rectangle(Margin, Wide - Margin, Margin, Tall - Margin)]), Pen.Frame);
        double top = Margin + Title;
        yield return new Line("", [(Margin, top), (Wide - Margin, top)], Pen.Edge);
        yield return new Lettering("", check.Rig.Name, Margin + 4, top - 8, 4, Bold: true);
        string shaded = at is { } force ? $"shade: share of what each part is safe to, at {Readout.Text(force, Dimension.Force, units)}" : "";
        string unit = units == UnitSystem.Metric ? "dimensions in mm" : "dimensions in inches";
        yield return new Lettering("", $"scale 1:{Readout.Number(n)} · {unit} · steel {Readout.Text(body.Mass, Dimension.Mass, units)}", Margin + 4, top - 13.5);
        yield return new Lettering("", shaded.Length > 0 ? shaded : "The cylinder is shown by its outline only.", Margin + 4, top - 18);
        double right = Wide - Margin - 4;
        string verdict = check.Verdict switch { Verdict.Holds => "holds", Verdict.Marginal => "marginal", _ => "does not hold" };
        yield return new Lettering("", $"wanted {Readout.Text(check.Rig.Wanted, Dimension.Force, units)}: {verdict}", right, top - 8, 3, Anchor.Right, Bold: true);
        yield return new Lettering("", $"safe to {Readout.Text(check.Ladder.SafeRating, Dimension.Force, units)}", right, top - 13.5, At: Anchor.Right);
        yield return new Lettering("", "A calculation, not a certificate.", right, top - 18, At: Anchor.Right);
    }
}
