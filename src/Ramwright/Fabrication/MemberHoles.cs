using Ramwright.Frame;
using Ramwright.Geometry;
using Ramwright.Presses;
using Ramwright.Stock;

namespace Ramwright.Fabrication;

/// <summary>The holes and slots of one length of steel, as they are marked out on it.</summary>
/// <remarks>
/// A piece that stands left for right in the press is the plain section turned end for end about its upright axis, so its holes are
/// counted from the other end. Of the ways a piece can be turned without being another, the one with the least figures is taken:
/// lengths that are the same in the heap then get the same mark.
/// </remarks>
internal static class MemberHoles
{
    private const double Same6 = 1e-6;

    private sealed record Spot(double X, double Y, double Z, bool AlongZ, double Size, double Across, double Wall, string For);

    public static LengthHole[] Of(Piece piece, PartDraft draft, IEnumerable<Fastening> fastenings)
    {
        var spots = new List<Spot>();
        foreach (Fastening f in fastenings.Where(f => f.Concerns(piece)))
        {
            if (f.Walls(piece) is { Count: > 0 } walls)
                spots.Add(At(piece, f.At, f.Joint.Normal, f.Hole, 0, walls.Sum(w => w.Thickness), f.For));
        }

        foreach (PlanJoint joint in draft.Plan.Joints.Where(j => j.Joint is RigSlottedJoint && j.Onto.Part == piece.Member.Part))
            spots.Add(Slot(piece, joint));
        // plain section: turned end for end where it stands left for right
        if (piece.Mirrored)
            spots = [.. spots.Select(s => s with { X = piece.Length - s.X, Y = -s.Y })];
        return Ways(piece.Shape, spots, piece.Length).Select(way => Written(piece.Shape, way)).Aggregate((a, b) => Compare(a, b) <= 0 ? a : b);
    }

    public static bool Same(LengthHole a, LengthHole b) =>
        a.Face == b.Face && a.For == b.For && Math.Abs(a.Along - b.Along) < Same6 && Math.Abs(a.Aside - b.Aside) < Same6
        && Math.Abs(a.Diameter - b.Diameter) < Same6 && Math.Abs(a.Across - b.Across) < Same6;

    private static Spot At(Piece piece, Vector at, Vector through, double size, double across, double wall, string what)
    {
        Vector d = at - piece.From;
        return new Spot(d.Dot(piece.Along), d.Dot(piece.Side), d.Dot(piece.Up), Math.Abs(through.Dot(piece.Up)) > 0.5, size, across, wall, what);
    }

    private static Spot Slot(Piece piece, PlanJoint joint)
    {
        SectionProperties arm = joint.Beam.Shape.Properties;
        double play = ((RigSlottedJoint)joint.Joint).Play;
        return At(piece, joint.Centre, joint.Normal, arm.Height + play, arm.Width + play, WallsMet.Of(piece, joint.Centre, joint.Normal).Sum(w => w.Thickness), $"slot for the {joint.Beam.Part}");
    }

    // the half turns that leave the section as it is
    private static IEnumerable<List<Spot>> Ways(Shape shape, List<Spot> spots, double length)
    {
        yield return spots;
        (bool left, bool top) = shape switch
        {
            ISection or RectangularHollow or Box or Flat or Round or CircularHollow => (true, true),
            Channel => (false, true),
            Tee => (true, false),
            _ => (false, false),
        };
        if (top)
            yield return [.. spots.Select(s => s with { X = length - s.X, Z = -s.Z })];
        if (left)
            yield return [.. spots.Select(s => s with { X = length - s.X, Y = -s.Y })];
        if (top && left)
            yield return [.. spots.Select(s => s with { Y = -s.Y, Z = -s.Z })];
    }

    private static LengthHole[] Written(Shape shape, List<Spot> spots)
    {
        // across is measured in the outline's own axes: from the back of a channel's web, the middle of an I
        AreaMoments m = shape.Outline.Moments();
        bool angle = shape is Angle, channel = shape is Channel;
        return
        [
            .. spots.Select(s => new LengthHole(
                    Fine(s.X), Fine(s.AlongZ ? s.Y + m.Y : s.Z + m.Z), Face(s), s.Size, s.Across, s.Wall, s.For))
                .OrderBy(h => h.Along).ThenBy(h => h.Aside).ThenBy(h => h.Face, StringComparer.Ordinal),
        ];

        string Face(Spot s) => s.Across > 0 ? "front and back" : s.AlongZ
            ? channel ? "flange, from the back of the web" : angle ? "leg" : shape is Flat ? "edge" : "flange"
            : angle ? "leg, from mid-depth" : shape is Flat ? "flat" : shape is Round ? "bar" : "web";
    }

    private static double Fine(double metres) => Math.Round(metres, 9) + 0.0;

    private static int Compare(LengthHole[] a, LengthHole[] b)
    {
        for (int i = 0; i < Math.Min(a.Length, b.Length); i++)
        {
            if (Math.Abs(a[i].Along - b[i].Along) > Same6)
                return a[i].Along.CompareTo(b[i].Along);
            if (Math.Abs(a[i].Aside - b[i].Aside) > Same6)
                return a[i].Aside.CompareTo(b[i].Aside);
        }

        return 0;
    }
}
