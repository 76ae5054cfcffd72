using System.Runtime.InteropServices;

namespace Ramwright.Fabrication.Nesting;

/// <summary>
/// Lays parts onto sheets one after another: each where it reaches least far in the sheet's direction, among the places where it
/// touches what lies there already. Places are corners of the regions it may not enter, and where their edges cross.
/// </summary>
/// <param name="sheets">The sheets.</param>
/// <param name="shapes">How many shapes and turns there are.</param>
internal sealed class NestTable(IReadOnlyList<NestSheet> sheets, int shapes)
{
    /// <summary>Touching is not overlapping: less than this is no overlap, m.</summary>
    internal const double Hair = 1e-9;

    /// <summary>Width of the first band that is looked at, in widths and heights of the part.</summary>
    private const double Band = 0.25;

    private readonly NoGoArea?[]?[] _noGo = new NoGoArea?[]?[shapes];
    private readonly NoGoArea?[,] _missing = new NoGoArea?[sheets.Count, shapes];
    private readonly Dictionary<(int Sheet, int Shape, Spot Direction), double> _floors = [];
    private readonly List<(NoGoArea Area, Spot At)> _areas = [];
    private readonly List<(ConvexPiece Piece, Spot At)> _around = [];
    private readonly List<(double Reach, double Aside, Spot At)> _places = [];
    private readonly List<Edge> _edges = [];

    public IReadOnlyList<NestSheet> Sheets { get; } = sheets;

    /// <summary>Sheets are laid anew: what was found out about the room on them no longer holds.</summary>
    /// <remarks>Until then parts are only added, and a shape that was found no nearer place than one finds none later.</remarks>
    public void Begin() => _floors.Clear();

    /// <summary>Best place for a part on one sheet; null where there is none.</summary>
    /// <param name="item">Number of the part.</param>
    /// <param name="turns">The part in all its turns.</param>
    /// <param name="sheet">Number of the sheet.</param>
    /// <param name="there">What lies on it.</param>
    /// <param name="direction">Direction in which parts shall reach least far, one long.</param>
    public Placement? Best(int item, IReadOnlyList<NestShape> turns, int sheet, IReadOnlyList<Placement> there, Spot direction)
    {
        Placement? best = null;
        (double Reach, double Aside) least = (double.PositiveInfinity, 0);
        foreach (NestShape shape in turns)
        {
            if (Place(shape, sheet, there, direction, least) is not var (reach, aside, at))
                continue;
            least = (reach, aside);
            best = new Placement(item, sheet, shape, at);
        }

        return best;
    }

    private (double, double, Spot)? Place(NestShape shape, int sheet, IReadOnlyList<Placement> there, Spot direction, (double Reach, double Aside) least)
    {
        Room room = Sheets[sheet].Origins(shape);
        if (room.Width < -Hair || room.Height < -Hair)
            return null;
        (double reachOwn, double asideOwn) = Reach(shape, direction);
        double floor = _floors.GetValueOrDefault((sheet, shape.Number, direction), double.NegativeInfinity);
        double low = Math.Min(direction.X * room.Left, direction.X * room.Right) + Math.Min(direction.Y * room.Bottom, direction.Y * room.Top);
        double high = Math.Max(direction.X * room.Left, direction.X * room.Right) + Math.Max(direction.Y * room.Bottom, direction.Y * room.Top);
        double from = Math.Max(floor, low), step = Band * (shape.Room.Width + shape.Room.Height);
        // band after band, so that what lies far behind or ahead need not be looked at
        for (double upTo = from + step; ; step *= 2, upTo += step)
        {
            double most = Math.Min(least.Reach - reachOwn, upTo);
            Gather(shape, sheet, there, room, direction, from, most);
            _places.Clear();
            Offer(new Spot(room.Left, room.Bottom), room, direction, most);
            Offer(new Spot(room.Left, room.Top), room, direction, most);
            Offer(new Spot(room.Right, room.Bottom), room, direction, most);
            Offer(new Spot(room.Right, room.Top), room, direction, most);
            Corners(room, direction, from, most);
            _places.Sort(Nearest);
            foreach ((double reach, double aside, Spot at) in CollectionsMarshal.AsSpan(_places))
            {
                (double r, double a) = (reach + reachOwn, aside + asideOwn);
                if (r > least.Reach + Hair || (r > least.Reach - Hair && a >= least.Aside))
                    break;
                if (reach < from - Hair || !IsFree(at))
                    continue;
                _floors[(sheet, shape.Number, direction)] = reach;
                return (r, a, at);
            }

            from = most;
            if (most >= least.Reach - reachOwn || most >= high)
                break;
        }

        _floors[(sheet, shape.Number, direction)] = from;
        return null;
    }

    // reaches that differ by less than a hair are one
    private static readonly Comparison<(double Reach, double Aside, Spot At)> Nearest = (a, b) =>
        Math.Round(a.Reach / Hair) is var ra && Math.Round(b.Reach / Hair) is var rb && ra != rb ? ra.CompareTo(rb) : a.Aside.CompareTo(b.Aside);

    // the farthest corner in the direction, and square to it
    private static (double, double) Reach(NestShape shape, Spot direction)
    {
        double reach = double.NegativeInfinity, aside = double.NegativeInfinity;
        var square = new Spot(-direction.Y, direction.X);
        foreach (ConvexPiece piece in shape.Pieces)
        {
            foreach (Spot c in piece.Corners)
            {
                reach = Math.Max(reach, c.Dot(direction));
                aside = Math.Max(aside, c.Dot(square));
            }
        }

        return (reach, aside);
    }

    private void Gather(NestShape shape, int sheet, IReadOnlyList<Placement> there, Room room, Spot direction, double from, double upTo)
    {
        _around.Clear();
        _areas.Clear();
        Keep(Missing(sheet, shape), default);
        foreach (Placement p in there)
            Keep(NoGo(p.Shape, shape), p.At);

        void Keep(NoGoArea area, Spot at)
        {
            Room all = area.Room;
            double shift = at.Dot(direction), low = Math.Min(direction.X * all.Left, direction.X * all.Right) + Math.Min(direction.Y * all.Bottom, direction.Y * all.Top) + shift;
            double high = Math.Max(direction.X * all.Left, direction.X * all.Right) + Math.Max(direction.Y * all.Bottom, direction.Y * all.Top) + shift;
            if (high < from - Hair || low > upTo + Hair)
                return;
            bool near = false;
            foreach (ConvexPiece piece in area.Pieces)
            {
                Room r = piece.Room;
                if (!new Room(r.Left + at.X, r.Right + at.X, r.Bottom + at.Y, r.Top + at.Y).Meets(room))
                    continue;
                _around.Add((piece, at));
                near = true;
            }

            if (near)
                _areas.Add((area, at));
        }
    }

    private void Corners(Room room, Spot direction, double from, double least)
    {
        _edges.Clear();
        Span<Spot> sides = stackalloc Spot[4];
        int pieces = 0;
        foreach ((NoGoArea area, Spot at) in CollectionsMarshal.AsSpan(_areas))
        {
            foreach ((int piece, Spot start, Spot end) in area.Edges)
            {
                var edge = Edge.Of(pieces + piece, start + at, end + at);
                // an edge that lies outside, or farther than the best place so far, or nearer than any can be, has no place to offer
                if (edge.Right < room.Left - Hair || edge.Left > room.Right + Hair || edge.Top < room.Bottom - Hair || edge.Bottom > room.Top + Hair
                    || Math.Min(edge.P.Dot(direction), edge.Q.Dot(direction)) > least + Hair || Math.Max(edge.P.Dot(direction), edge.Q.Dot(direction)) < from - Hair)
                    continue;
                Offer(edge.P, room, direction, least);
                Offer(edge.Q, room, direction, least);
                foreach (Spot side in sides[..EdgeMeets.Sides(edge.P, edge.Q, room, sides)])
                    Offer(side, room, direction, least);
                _edges.Add(edge);
            }

            pieces += area.Pieces.Length;
        }

        _edges.Sort(FromTheLeft);
        Span<Edge> edges = CollectionsMarshal.AsSpan(_edges);
        for (int i = 0; i < edges.Length; i++)
        {
            ref readonly Edge a = ref edges[i];
            for (int j = i + 1; j < edges.Length && edges[j].Left <= a.Right; j++)
            {
                ref readonly Edge b = ref edges[j];
                if (a.Piece != b.Piece && b.Bottom <= a.Top && a.Bottom <= b.Top && EdgeMeets.Cross(a.P, a.Q, b.P, b.Q, out Spot crossing))
                    Offer(crossing, room, direction, least);
            }
        }
    }

    private static readonly Comparison<Edge> FromTheLeft = (a, b) => a.Left.CompareTo(b.Left);

    private readonly record struct Edge(int Piece, Spot P, Spot Q, double Left, double Right, double Bottom, double Top)
    {
        public static Edge Of(int piece, Spot p, Spot q) =>
            new(piece, p, q, Math.Min(p.X, q.X), Math.Max(p.X, q.X), Math.Min(p.Y, q.Y), Math.Max(p.Y, q.Y));
    }

    private void Offer(Spot p, Room room, Spot direction, double least)
    {
        if (p.X < room.Left - Hair || p.X > room.Right + Hair || p.Y < room.Bottom - Hair || p.Y > room.Top + Hair)
            return;
        double reach = p.Dot(direction);
        if (reach <= least + Hair)
            _places.Add((reach, p.X * -direction.Y + p.Y * direction.X, p));
    }

    private bool IsFree(Spot p)
    {
        foreach ((ConvexPiece piece, Spot at) in CollectionsMarshal.AsSpan(_around))
        {
            if (piece.Holds(at, p, Hair))
                return false;
        }

        return true;
    }

    /// <summary>Where a shape may not come because of another.</summary>
    public NoGoArea NoGo(NestShape standing, NestShape moving) =>
        (_noGo[standing.Number] ??= new NoGoArea?[shapes])[moving.Number] ??= new NoGoArea(standing.Kept, moving.Pieces, Hair);

    /// <summary>Where a shape may not come because of what is missing of a sheet.</summary>
    public NoGoArea Missing(int sheet, NestShape moving) => _missing[sheet, moving.Number] ??= new NoGoArea(Sheets[sheet].Missing, moving.Pieces, Hair);
}
