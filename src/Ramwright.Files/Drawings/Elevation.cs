using Ramwright.Frame;
using Ramwright.Geometry;
using Ramwright.Ladders;
using Ramwright.Presses;
using Ramwright.Quantities;

namespace Ramwright.Files.Drawings;

/// <summary>One look at the press with its dimensions and words; made about the press's own origin, then put in its place.</summary>
internal sealed class Elevation
{
    private readonly List<Mark> _marks = [];
    private Extents _view;
    private double _left, _right, _crest;

    /// <summary>Room it takes across, mm.</summary>
    public double Width => _left + _view.Width + _right;

    /// <summary>Room it takes up and down, mm.</summary>
    public double Height => Below + _crest + 4;

    /// <summary>Room below the press's origin, mm.</summary>
    public double Below { get; private set; }

    /// <summary>The marks with the left edge of the room and the press's origin at these places on paper.</summary>
    public IEnumerable<Mark> At(double left, double ground) => Moving.By(_marks, left + _left - _view.Left, ground);

    public static Elevation Of(PressCheck check, FrameBody body, View view, UnitSystem units, double? at)
    {
        var drawn = new Elevation();
        drawn.Draw(check, body, view, units, at);
        return drawn;
    }

    private void Draw(PressCheck check, FrameBody body, View view, UnitSystem units, double? at)
    {
        Rig rig = check.Rig;
        var figures = new List<(double Near, IEnumerable<Mark> Marks)>();
        _view = new Extents(double.MaxValue, double.MinValue, double.MaxValue, double.MinValue);
        foreach (Piece piece in body.Pieces)
        {
            string part = piece.Member.Part;
            string fill = at is { } force ? Shade.Of(Utilisation(check, part, force)) : Shade.Steel;
            figures.Add((PieceFigure.Nearest(piece, view), PieceFigure.Of(piece, view, part, fill)));
            _view = Union(_view, PieceFigure.Cover(piece, view));
        }

        double barrel = CylinderFigure.Outside(rig.Cylinder);
        figures.Add((view.Nearness(body.RamFace) + barrel / 2, CylinderFigure.Of(rig.Cylinder, rig.Frame, body.RamFace, view)));
        (double faceX, double faceY) = view.On(body.RamFace);
        double crest = view.On(body.RamFace + CylinderFigure.Top(rig.Cylinder, rig.Frame) * Vector.Up).Y;
        _view = Union(_view, new Extents(faceX - view.Scale * barrel / 2, faceX + view.Scale * barrel / 2, faceY, crest));
        foreach ((_, IEnumerable<Mark> marks) in figures.OrderBy(f => f.Near))
            _marks.AddRange(marks);
        foreach (PlanJoint joint in check.Response.Plan.Joints)
            _marks.AddRange(FastenerFigure.Of(joint, view));

        DimensionLines lines = Dimensions(rig, body, view, units);
        Callouts words = view.Right == Vector.Across ? FrontWords(check, body, view, units, at) : SideWords(check, view, units);
        Gussets(words, check, body, view, units, at);
        _marks.AddRange(lines.Draw(_view));
        _marks.AddRange(words.Draw(_view));
        double name = _view.Bottom - lines.RoomBelow - 6;
        _marks.Add(new Lettering("", view.Name, (_view.Left + _view.Right) / 2, name, 3, Anchor.Middle));
        (_left, _right, _crest, Below) = (lines.RoomLeft, words.Room, Math.Max(_view.Top, words.Crest(_view)), -name + 2);
    }

    private static double Utilisation(PressCheck check, string part, double force) =>
        check.Ladder.Rungs.Where(r => r.IsOf(part)).Select(r => r.SafeTo > 0 ? Math.Min(9.99, force / r.SafeTo) : 9.99)
            .DefaultIfEmpty(0).Max();

    // a length in the sheet's unit, which the title names
    private static string Figure(double m, UnitSystem units) => Readout.Number(units == UnitSystem.Metric ? Math.Round(m * 1000, 1) : Math.Round(m / 0.0254, 3), 5);

    private static DimensionLines Dimensions(Rig rig, FrameBody body, View view, UnitSystem units)
    {
        var lines = new DimensionLines();
        string Figure(double m) => Elevation.Figure(m, units);
        (double rx, double ry) = view.On(body.RamFace);
        (_, double wy) = view.On(body.WorkFace);
        Extents steel = Steel(body, view);
        bool open = rig.Frame is RigOpenFrontFrame;
        if (open == (view.Right == Vector.Deep))     // heights stand once, where the opening is seen
        {
            lines.Up(wy, ry, rx, rx, Figure(rig.Frame.Daylight));
            lines.Up(steel.Bottom, steel.Top, steel.Left, steel.Left, Figure(steel.Height / view.Scale));
        }

        lines.Across(steel.Left, steel.Right, steel.Bottom, steel.Bottom, Figure(steel.Width / view.Scale));
        switch (rig.Frame)
        {
            case RigClosedFrame closed when view.Right == Vector.Across:
                double half = view.Scale * closed.Width / 2;
                lines.Across(-half, half, steel.Bottom, steel.Bottom, Figure(closed.Width));
                break;
            case RigTieRodFrame rods when view.Right == Vector.Across:
                double spacing = view.Scale * rods.RodsAcross / 2;
                lines.Across(-spacing, spacing, steel.Bottom, steel.Bottom, Figure(rods.RodsAcross));
                break;
            case RigOpenFrontFrame arms when view.Right == Vector.Deep:
                (double front, _) = view.On(Vector.Zero);
                lines.Across(rx, front, steel.Bottom, steel.Bottom, Figure(arms.Throat));
                break;
        }

        return lines;
    }

    private static Callouts FrontWords(PressCheck check, FrameBody body, View view, UnitSystem units, double? at)
    {
        var words = new Callouts();
        foreach (IGrouping<string, Piece> part in body.Pieces.Where(p => p is not GussetPlate).GroupBy(p => p.Member.Part))
        {
            Piece shown = part.MaxBy(p => view.On((p.From + p.To) / 2).X + 0.001 * view.Nearness(p.From))!;
            Extents cover = PieceFigure.Cover(shown, view);
            string used = at is { } force ? $" ({Utilisation(check, part.Key, force) * 100:0} %)" : "";
            bool lies = cover.Width > cover.Height;
            double x = lies ? cover.Left + 0.72 * cover.Width : (cover.Left + cover.Right) / 2;
            double y = lies ? (cover.Bottom + cover.Top) / 2 : cover.Bottom + 0.45 * cover.Height;
            words.Add(new Callout(part.Key, x, y, [part.Key + used, $"{shown.Member.Shape.Name}, {shown.Member.Steel.Name}"]));
        }

        (double rx, double ry) = view.On(body.RamFace + check.Rig.Frame.RamDrop / 4 * Vector.Up);
        RigCylinder c = check.Rig.Cylinder;
        words.Add(new Callout("cylinder", rx + view.Scale * c.Rod / 2, ry,
            ["cylinder", $"bore {Length(c.Bore)}, rod {Length(c.Rod)}", $"stroke {Length(c.Stroke)}"]));
        foreach (PlanJoint joint in OneEach(check.Response.Plan.Joints))
        {
            (double x, double y) = view.On(joint.Centre);
            if (JointWords.Of(joint, x, y, units, check.Rig.Welding) is { } callout)
                words.Add(callout);
        }

        return words;

        string Length(double m) => Readout.Text(m, Dimension.Length, units);
    }

    // they are spoken of where they are seen as triangles: the one furthest to the right for all that are alike
    private static void Gussets(Callouts words, PressCheck check, FrameBody body, View view, UnitSystem units, double? at)
    {
        foreach (IGrouping<string, GussetPlate> part in body.Pieces.OfType<GussetPlate>().Where(p => Math.Abs(p.Along.Dot(view.Toward)) > 0.5).GroupBy(p => p.Member.Part))
        {
            GussetPlate shown = part.MaxBy(p => view.On(p.From).X)!;
            RigGusset g = shown.Gusset;
            (double x, double y) = view.On(shown.From);
            string used = at is { } force ? $" ({Utilisation(check, part.Key, force) * 100:0} %)" : "";
            words.Add(new Callout(part.Key, x, y,
                ["gussets" + used, $"{part.Count()} x {Figure(g.LegAlong, units)} x {Figure(g.LegUp, units)} x {Figure(g.Thickness, units)}, {g.Steel.Name}"]));
            words.Add(JointWords.Welded(part.Key, x, y, g.Weld, "gussets, both legs", units, check.Rig.Welding) with { BothFaces = g.Weld.Kind == WeldKind.Fillet });
        }
    }

    private static Callouts SideWords(PressCheck check, View view, UnitSystem units)
    {
        var words = new Callouts();
        RigLoading loading = check.Rig.Loading;
        if (loading.Deep > 0)
        {
            (double x, double y) = view.On(check.Response.Plan.Model.Nodes[check.Response.Plan.Lower].At);
            words.Add(new Callout("", x, y, ["work may stand", $"{Readout.Text(loading.Deep, Dimension.Length, units)} off centre"]));
        }

        return words;
    }

    // of joints that are alike the one furthest to the right speaks for all
    private static IEnumerable<PlanJoint> OneEach(IReadOnlyList<PlanJoint> joints) =>
        joints.GroupBy(j => (j.Key, j.Beam.Part)).Select(g => g.MaxBy(j => j.Centre.X)!);

    private static Extents Steel(FrameBody body, View view) => body.Pieces.Select(p => PieceFigure.Cover(p, view)).Aggregate(Union);

    private static Extents Union(Extents a, Extents b) =>
        new(Math.Min(a.Left, b.Left), Math.Max(a.Right, b.Right), Math.Min(a.Bottom, b.Bottom), Math.Max(a.Top, b.Top));
}
