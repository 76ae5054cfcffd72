using Ramwright.Frame;
using Ramwright.Geometry;
using Ramwright.Ladders;
using Ramwright.Quantities;

namespace Ramwright.Files.Drawings;

/// <summary>Front and side of a press on one sheet, from the same pieces that the frame solver's beams stand for.</summary>
public static class PressDrawing
{
    private const double Title = 22, Between = 10;
    private static readonly double[] Scales = [1, 2, 2.5, 5, 7.5, 10, 12.5, 15, 20, 25, 30, 40, 50, 75, 100, 200, 500];

    /// <summary>Draws a press.</summary>
    /// <param name="check">The press.</param>
    /// <param name="units">Units of the figures: millimetres or inches.</param>
    /// <param name="at">A ram force, N, at which each part carries how much of what it is safe to, as number and shade; null for none.</param>
    /// <param name="paper">What it is drawn on; A4 where null.</param>
    /// <exception cref="NotSupportedException">A kind of frame that cannot be drawn yet.</exception>
    public static Sheet Of(PressCheck check, UnitSystem units = UnitSystem.Metric, double? at = null, Paper? paper = null)
    {
        ArgumentNullException.ThrowIfNull(check);
        paper ??= Paper.A4;
        FrameBody body = FrameBody.Of(check.Rig);
        // where the bare steel is too large already, words and dimensions need not be tried
        Extents front = Cover(body, View.Front(1000)), side = Cover(body, View.Side(1000));
        foreach (double n in Scales)
        {
            (double steelWide, double steelTall) = Together(paper, front.Width, side.Width, front.Height, side.Height);
            if (steelWide / n > paper.Wide || steelTall / n > paper.Tall)
                continue;
            if (Fit(check, body, n, units, at, paper) is { } sheet)
                return sheet;
        }

        throw new NotSupportedException("The press is too large for a sheet at 1:500.");
    }

    // room that two views take on the paper
    private static (double Wide, double Tall) Together(Paper paper, double wide, double wideToo, double tall, double tallToo, double between = 0) => paper.IsStacked
        ? (Math.Max(wide, wideToo), tall + between + tallToo) : (wide + between + wideToo, Math.Max(tall, tallToo));

    private static Extents Cover(FrameBody body, View view) => body.Pieces.Select(p => PieceFigure.Cover(p, view))
        .Aggregate((a, b) => new Extents(Math.Min(a.Left, b.Left), Math.Max(a.Right, b.Right), Math.Min(a.Bottom, b.Bottom), Math.Max(a.Top, b.Top)));

    private static Sheet? Fit(PressCheck check, FrameBody body, double n, UnitSystem units, double? at, Paper paper)
    {
        Elevation front = Elevation.Of(check, body, View.Front(1000 / n), units, at);
        Elevation side = Elevation.Of(check, body, View.Side(1000 / n), units, at);
        double title = paper.HasTitle ? Title : 0, inside = paper.Wide - 2 * paper.Margin, high = paper.Tall - 2 * paper.Margin - title;
        double between = paper.IsStacked ? 4 : Between;
        (double wide, double tall) = Together(paper, front.Width, side.Width, front.Height, side.Height, between);
        if (wide > inside - 4 || tall > high - 4)
            return null;

        double sheet = paper.HasTitle ? paper.Tall : tall + 2 * paper.Margin + 4, low = paper.Margin + title + (sheet - 2 * paper.Margin - title - tall) / 2;
        var marks = new List<Mark>();
        if (paper.IsStacked)
        {
            marks.AddRange(front.At(paper.Margin + (inside - front.Width) / 2, low + side.Height + between + front.Below));
            marks.AddRange(side.At(paper.Margin + (inside - side.Width) / 2, low + side.Below));
        }
        else
        {
            double slack = (inside - wide) / 3, ground = low + Math.Max(front.Below, side.Below);
            marks.AddRange(front.At(paper.Margin + slack, ground));
            marks.AddRange(side.At(paper.Margin + 2 * slack + front.Width + between, ground));
        }

        string[] facts =
        [
            $"scale 1:{Readout.Number(n)} · {(units == UnitSystem.Metric ? "dimensions in mm" : "dimensions in inches")} · steel {Readout.Text(body.Mass, Dimension.Mass, units)}",
            at is { } force ? $"shade: share of what each part is safe to, at {Readout.Text(force, Dimension.Force, units)}" : "The cylinder is shown by its outline only.",
        ];
        if (paper.HasTitle)
            marks.AddRange(TitleBlock(check, facts, units, paper));
        return new Sheet($"{check.Rig.Name}: front and side", paper.Wide, sheet, marks) { Facts = facts };
    }

    private static IEnumerable<Mark> TitleBlock(PressCheck check, string[] facts, UnitSystem units, Paper paper)
    {
        double left = paper.Margin, right = paper.Wide - paper.Margin, top = paper.Margin + Title;
        yield return new Area("", new Outline([Loops.Rectangle(left, right, paper.Margin, paper.Tall - paper.Margin)]), Pen.Frame);
        yield return new Line("", [(left, top), (right, top)], Pen.Edge);
        yield return new Lettering("", check.Rig.Name, left + 4, top - 8, 4, Bold: true);
        yield return new Lettering("", facts[0], left + 4, top - 13.5);
        yield return new Lettering("", facts[1], left + 4, top - 18);
        string verdict = check.Verdict switch { Verdict.Holds => "holds", Verdict.Marginal => "marginal", _ => "does not hold" };
        yield return new Lettering("", $"wanted {Readout.Text(check.Rig.Wanted, Dimension.Force, units)}: {verdict}", right - 4, top - 8, 3, Anchor.Right, Bold: true);
        yield return new Lettering("", $"safe to {Readout.Text(check.Ladder.SafeRating, Dimension.Force, units)}", right - 4, top - 13.5, At: Anchor.Right);
        yield return new Lettering("", "A calculation, not a certificate.", right - 4, top - 18, At: Anchor.Right);
    }
}
