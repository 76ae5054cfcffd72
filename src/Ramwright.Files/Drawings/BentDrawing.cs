using Ramwright.Frame;
using Ramwright.Geometry;
using Ramwright.Ladders;
using Ramwright.Quantities;

namespace Ramwright.Files.Drawings;

/// <summary>
/// The frame as it bends under a ram force, drawn larger than it is, over the frame at rest; the true figures stand beside it. From the
/// displacements that the frame solver found.
/// </summary>
public static class BentDrawing
{
    private const double Title = 32, Between = 24;

    /// <summary>How far on paper the place that moves most is drawn to move, as a share of the frame's greater side, at most.</summary>
    private const double Shown = 0.06;

    /// <summary>Straight bits that a bent piece is drawn in.</summary>
    private const int Bits = 24;

    private static readonly double[] Scales = [1, 2, 2.5, 5, 7.5, 10, 12.5, 15, 20, 25, 30, 40, 50, 75, 100, 200, 500];

    /// <summary>Draws it.</summary>
    /// <param name="check">The press.</param>
    /// <param name="force">Ram force, N, above zero.</param>
    /// <param name="loadCase">Number of the load case; null for the one that opens the dies most.</param>
    /// <param name="units">Units of the figures.</param>
    /// <param name="paper">What it is drawn on; A4 where null.</param>
    /// <exception cref="NotSupportedException">A frame that cannot be drawn.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A force that is not above zero, or a case that is not there.</exception>
    public static Sheet Of(PressCheck check, double force, int? loadCase = null, UnitSystem units = UnitSystem.Metric, Paper? paper = null)
    {
        ArgumentNullException.ThrowIfNull(check);
        paper ??= Paper.A4;
        if (!(force > 0 && double.IsFinite(force)))
            throw new ArgumentOutOfRangeException(nameof(force), force, "above zero is wanted");
        int at = loadCase ?? check.WorstOpening.Case;
        var movement = new BodyMovement(check.Response, at);
        Piece[] pieces = [.. FrameBody.Of(check.Rig).Pieces.Where(movement.Moves)];
        double most = pieces.Max(p => Enumerable.Range(0, Bits + 1).Max(i => movement.Of(p, p.Length * i / Bits).Length)) * force;
        Extents front = Cover(pieces, View.Front(1)), side = Cover(pieces, View.Side(1));
        double times = Times(most, Math.Max(front.Width, front.Height));

        // room on every side for what bends out
        double spare = most * times;
        double wide = front.Width + side.Width + 4 * spare, tall = Math.Max(front.Height, side.Height) + 2 * spare;
        double title = paper.HasTitle ? Title : 0, inside = paper.Wide - 2 * paper.Margin;
        double n = Scales.FirstOrDefault(s => wide * 1000 / s <= inside - Between - 20 && tall * 1000 / s <= paper.Tall - 2 * paper.Margin - title - 22);
        if (n == 0)
            throw new NotSupportedException("The press is too large for a sheet at 1:500.");

        double scale = 1000 / n, slack = (inside - Between - wide * scale) / 2, ground = paper.Margin + title + 14 + spare * scale;
        View inFront = View.Front(scale) with { X = paper.Margin + slack + (spare - front.Left) * scale, Y = ground - front.Bottom * scale };
        View beside = View.Side(scale) with { X = paper.Margin + slack + Between + (front.Width + 3 * spare - side.Left) * scale, Y = ground - side.Bottom * scale };
        var marks = new List<Mark>();
        foreach (View view in (View[])[inFront, beside])
        {
            Extents cover = Cover(pieces, view);
            foreach (Piece piece in pieces.OrderBy(p => PieceFigure.Nearest(p, view)))
            {
                marks.Add(new Area(piece.Member.Part, Bent(piece, movement, view, force * times), Pen.Edge, Shade.Steel));
                marks.Add(new Area(piece.Member.Part, Bent(piece, movement, view, 0), Pen.Hidden));
            }

            marks.Add(new Lettering("", view.Name, (cover.Left + cover.Right) / 2, ground - spare * scale - 8, 3, Anchor.Middle));
        }

        string Show(double si, Dimension dimension) => Readout.Text(si, dimension, units);
        string[] facts =
        [
            $"{(times > 1 ? $"bending drawn {times:0} times as large as it is" : "bending drawn as large as it is")} · frame 1:{Readout.Number(n)} · dashed: at rest",
            $"load: {check.Response.Solutions[at].Case.Name}",
            "Bolts, pins and cylinder are left out. Everything springs back, as long as nothing has given.",
            $"really, at {Show(force, Dimension.Force)}:",
            $"the daylight grows by {Show(force * check.Response.Growth(at), Dimension.Length)}",
            $"the dies open by {Show(force * check.Response.Opening(at), Dimension.Slope)}",
        ];
        if (paper.HasTitle)
            marks.AddRange(Words(check, facts, paper));
        return new Sheet($"{check.Rig.Name}: how it bends", paper.Wide, paper.HasTitle ? paper.Tall : tall * scale + 22 + 2 * paper.Margin, marks) { Facts = facts };
    }

    private static double Times(double most, double size)
    {
        if (!(most > 0))
            return 1;
        double ideal = Shown * size / most, ten = Math.Pow(10, Math.Floor(Math.Log10(ideal)));
        return Math.Max(1, ten * (ideal >= 5 * ten ? 5 : ideal >= 2 * ten ? 2 : 1));
    }

    private static Extents Cover(IEnumerable<Piece> pieces, View view) => pieces.Select(p => PieceFigure.Cover(p, view))
        .Aggregate((a, b) => new Extents(Math.Min(a.Left, b.Left), Math.Max(a.Right, b.Right), Math.Min(a.Bottom, b.Bottom), Math.Max(a.Top, b.Top)));

    private static Outline Bent(Piece piece, BodyMovement movement, View view, double force)
    {
        List<(double Y, double Z)>[] loops = [.. PieceFigure.Points(piece.Outline)];
        Corner At(double x, double y, double z)
        {
            (double px, double py) = view.On(piece.At(x, y, z) + force * movement.Of(piece, x, y, z));
            return new Corner(px, py);
        }

        if (Math.Abs(piece.Along.Dot(view.Toward)) > 0.5)
            return new Outline([.. loops.Select(loop => (IReadOnlyList<Corner>)[.. loop.Select(p => At(piece.Length / 2, p.Y, p.Z))])]);
        // the two edges of the section that the eye sees at the sides
        Vector lateral = piece.Along.Cross(view.Toward);
        double Across((double Y, double Z) p) => p.Y * piece.Side.Dot(lateral) + p.Z * piece.Up.Dot(lateral);
        (double Y, double Z) low = loops.SelectMany(l => l).MinBy(Across), high = loops.SelectMany(l => l).MaxBy(Across);
        var edge = new List<Corner>();
        for (int i = 0; i <= Bits; i++)
            edge.Add(At(piece.Length * i / Bits, low.Y, low.Z));
        for (int i = Bits; i >= 0; i--)
            edge.Add(At(piece.Length * i / Bits, high.Y, high.Z));
        return new Outline([edge]);
    }

    private static IEnumerable<Mark> Words(PressCheck check, string[] facts, Paper paper)
    {
        double left = paper.Margin, right = paper.Wide - paper.Margin, top = paper.Margin + Title;
        yield return new Area("", new Outline([Loops.Rectangle(left, right, paper.Margin, paper.Tall - paper.Margin)]), Pen.Frame);
        yield return new Line("", [(left, top), (right, top)], Pen.Edge);
        yield return new Lettering("", $"{check.Rig.Name}: how it bends", left + 4, top - 8, 4, Bold: true);
        yield return new Lettering("", facts[3], right - 4, top - 8, 3, Anchor.Right, Bold: true);
        for (int i = 0; i < 3; i++)
            yield return new Lettering("", facts[i], left + 4, top - 13.5 - 4.5 * i);
        yield return new Lettering("", facts[4], right - 4, top - 13.5, At: Anchor.Right);
        yield return new Lettering("", facts[5], right - 4, top - 18, At: Anchor.Right);
        yield return new Lettering("", "A calculation, not a certificate.", right - 4, top - 22.5, At: Anchor.Right);
    }
}
