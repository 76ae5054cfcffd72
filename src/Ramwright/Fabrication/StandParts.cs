using Ramwright.Frame;
using Ramwright.Geometry;
using Ramwright.Presses;
using Ramwright.Quantities;

namespace Ramwright.Fabrication;

/// <summary>Foot plates under an upright press: wide enough that it does not tip, thick enough to be bolted down.</summary>
internal static class StandParts
{
    /// <summary>What foot plates are part of.</summary>
    internal const string Feet = "feet";

    /// <summary>The press must stand this much out of true before its centre of gravity passes the edge of its feet; common practice.</summary>
    private const double TipsAt = 10 * Math.PI / 180;

    public static void Draw(PartDraft draft)
    {
        RigFrame frame = draft.Rig.Frame;
        if (frame is RigFreeFrame)
        {
            draft.Undecided("Feet: a frame given by points and bars says nothing of what it stands on.");
            return;
        }

        if (frame.Horizontal)
        {
            draft.Undecided("What the press lies on: trestles or a bench that carry it under both ends, and hold it from rolling.");
            return;
        }

        if (frame is RigTieRodFrame)
        {
            draft.Undecided("Feet: what the bed stands on, clear of the nuts of the tie rods.");
            return;
        }

        string part = frame is RigOpenFrontFrame open ? open.Column.Part : ((RigClosedFrame)frame).Upright.Part;
        Lifting now = LiftingPoint.Of(draft.Parts, draft);
        (double light, double middling, double heavy) = draft.Sold.Foot;
        (double beyond, double edge, double hole, string anchor) = draft.Sold.Anchor;
        double mass = now.Mass, t = mass < 500 ? light : mass < 1500 ? middling : heavy;
        Piece[] standing = [.. draft.Body.Pieces.Where(p => p.Member.Part == part)];
        double ground = standing.Min(p => Math.Min(p.From.Z, p.To.Z)), arm = (now.Centre.Z - ground) * Math.Tan(TipsAt);
        List<Piece[]> feet = frame is RigClosedFrame ? [[.. standing.Where(p => p.From.X < 0)], [.. standing.Where(p => p.From.X >= 0)]] : [standing];
        var plates = new List<(Outline Blank, PlateHole[] Holes, Vector Middle)>();
        foreach (Piece[] foot in feet.Where(f => f.Length > 0))
        {
            (double left, double right, double front, double back) = Under(foot);
            (left, right) = (left - beyond, right + beyond);
            (front, back) = (Math.Min(front - beyond, now.Centre.Y - arm), Math.Max(back + beyond, now.Centre.Y + arm));
            if (frame is RigOpenFrontFrame)
                (left, right) = (Math.Min(left, now.Centre.X - arm), Math.Max(right, now.Centre.X + arm));
            double wide = Up(right - left, draft.Sold.Step), deep = Up(back - front, draft.Sold.Step);
            PlateHole[] holes = [.. PlateShape.Grid((2, wide - 2 * edge), (2, deep - 2 * edge), hole, anchor)];
            plates.Add((PlateShape.Rectangle(wide, deep), holes, new Vector((left + right) / 2, (front + back) / 2, ground - t / 2)));
        }

        if (plates.Count == 0)
            return;
        string Said(double si, Dimension of) => Readout.Text(si, of, draft.Units);
        draft.Add(new PlatePart
        {
            Name = "foot plate",
            Of = Feet,
            Count = plates.Count,
            Steel = standing[0].Member.Steel,
            Thickness = t,
            Blank = plates[0].Blank,
            Holes = plates[0].Holes,
            Origin = PartOrigin.Proposed,
            Rule = $"{Said(beyond, Dimension.Length)} beyond what stands on it, and as far to front and back that the press, {Said(mass, Dimension.Mass)} with its centre of gravity "
                + $"{Said(now.Centre.Z - ground, Dimension.Length)} above them, tips no sooner than at 10°; {Said(light, Dimension.Length)}, {Said(middling, Dimension.Length)} or {Said(heavy, Dimension.Length)} thick below {Said(500, Dimension.Mass)}, below {Said(1500, Dimension.Mass)}, above; common practice",
            Places = [.. plates.Select(p => p.Middle)],
        });
        draft.Undecided("Anchors into the floor, by the floor there is: long work and off-centre force tip a press that only stands.");
    }

    private static (double Left, double Right, double Front, double Back) Under(Piece[] foot)
    {
        Vector[] all = [.. foot.SelectMany(p => p.Outline.Polygons(1e-4).SelectMany(l => l.Select(c => p.At(0, c.Y, c.Z))))];
        return (all.Min(v => v.X), all.Max(v => v.X), all.Min(v => v.Y), all.Max(v => v.Y));
    }

    private static double Up(double metres, double step) => Math.Ceiling(Math.Round(metres / step, 6)) * step;
}
