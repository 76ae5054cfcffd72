namespace Ramwright.Fabrication.Nesting;

/// <summary>How the next part is chosen.</summary>
/// <param name="Edge">What a length along the sheet's edge counts for, against one along another part.</param>
/// <param name="Size">What the part's size counts for, against the share of its sides that touch.</param>
/// <param name="Noise">How much is left to chance.</param>
/// <param name="Draw">Seed of that chance.</param>
/// <param name="Liking">What each kind of part counts for beyond all that.</param>
internal sealed record TouchTaste(double Edge, double Size, double Noise, ulong Draw, double[] Liking);

/// <summary>Fills sheets by laying next, of all parts in all their turns, the one that touches what lies there along the greatest share of its sides.</summary>
internal sealed class TouchFill(IReadOnlyList<IReadOnlyList<NestShape>> kinds, int[] kindOf, NestTable table)
{
    /// <summary>Where two parts have more corners than this between them, not every corner is tried on every other.</summary>
    private const int MostCorners = 600;

    private readonly double _greatest = kinds.Max(k => k[0].Area);

    private sealed class Places(NestShape shape, int kind, Room room)
    {
        public NestShape Shape => shape;
        public int Kind => kind;
        public Room Room => room;
        public List<(Spot At, double Edge, double Parts)> Open { get; } = [];
        public List<(NoGoArea Area, Spot At, Side[] Sides, bool IsPart)> Areas { get; } = [];
        public List<(Spot P, Spot Q)> Edges { get; } = [];
        public HashSet<(long, long)> Known { get; } = [];
    }

    /// <summary>For each part where it lies; null where it found no room.</summary>
    public Placement?[] Run(TouchTaste taste)
    {
        var draw = new SeededDraw(taste.Draw);
        var laid = new Placement?[kindOf.Length];
        var left = new Queue<int>[kinds.Count];
        for (int k = 0; k < left.Length; k++)
            left[k] = new Queue<int>(Enumerable.Range(0, kindOf.Length).Where(i => kindOf[i] == k));
        for (int sheet = 0; sheet < table.Sheets.Count && left.Any(q => q.Count > 0); sheet++)
        {
            List<Places> all = Begin(sheet, left);
            while (Next(all, taste, draw) is var (places, at))
            {
                int item = left[places.Kind].Dequeue();
                laid[item] = new Placement(item, sheet, places.Shape, at);
                if (left[places.Kind].Count == 0)
                    all.RemoveAll(p => p.Kind == places.Kind);
                foreach (Places p in all)
                    Add(p, table.NoGo(places.Shape, p.Shape), at, places.Shape.KeptSides, isPart: true);
            }
        }

        return laid;
    }

    private List<Places> Begin(int sheet, Queue<int>[] left)
    {
        var all = new List<Places>();
        for (int k = 0; k < kinds.Count; k++)
        {
            if (left[k].Count == 0)
                continue;
            foreach (NestShape shape in kinds[k])
            {
                Room room = table.Sheets[sheet].Origins(shape);
                if (room.Width < -NestTable.Hair || room.Height < -NestTable.Hair)
                    continue;
                var places = new Places(shape, k, room);
                Offer(places, new Spot(room.Left, room.Bottom));
                Offer(places, new Spot(room.Left, room.Top));
                Offer(places, new Spot(room.Right, room.Bottom));
                Offer(places, new Spot(room.Right, room.Top));
                Add(places, table.Missing(sheet, shape), default, table.Sheets[sheet].MissingSides, isPart: false);
                all.Add(places);
            }
        }

        return all;
    }

    private (Places Places, Spot At)? Next(List<Places> all, TouchTaste taste, SeededDraw draw)
    {
        (Places, Spot)? found = null;
        double best = double.NegativeInfinity;
        foreach (Places places in all)
        {
            double liking = taste.Liking[places.Kind] + taste.Size * places.Shape.Area / _greatest;
            foreach ((Spot at, double edge, double parts) in places.Open)
            {
                double score = (taste.Edge * edge + parts) / places.Shape.Perimeter + liking + (taste.Noise > 0 ? taste.Noise * draw.Share() : 0);
                if (score <= best)
                    continue;
                (best, found) = (score, (places, at));
            }
        }

        return found;
    }

    private static void Add(Places places, NoGoArea area, Spot at, Side[] sides, bool isPart)
    {
        Room room = places.Room;
        if (area.Pieces.Length == 0 || !new Room(area.Room.Left + at.X, area.Room.Right + at.X, area.Room.Bottom + at.Y, area.Room.Top + at.Y).Meets(new Room(room.Left - Side.Near, room.Right + Side.Near, room.Bottom - Side.Near, room.Top + Side.Near)))
            return;
        List<(Spot At, double Edge, double Parts)> open = places.Open;
        int kept = 0;
        for (int i = 0; i < open.Count; i++)
        {
            (Spot p, double edge, double parts) = open[i];
            double deep = area.Depth(p - at, -Side.Near);
            if (deep > NestTable.Hair)
                continue;
            double touch = deep > -Side.Near ? Touch(sides, at, places.Shape, p) : 0;
            open[kept++] = isPart ? (p, edge, parts + touch) : (p, edge + touch, parts);
        }

        open.RemoveRange(kept, open.Count - kept);
        places.Areas.Add((area, at, sides, isPart));
        int old = places.Edges.Count;
        Span<Spot> sideSpots = stackalloc Spot[4];
        foreach ((_, Spot from, Spot to) in area.Edges)
        {
            Spot p = from + at, q = to + at;
            if (Math.Max(p.X, q.X) < room.Left - NestTable.Hair || Math.Min(p.X, q.X) > room.Right + NestTable.Hair || Math.Max(p.Y, q.Y) < room.Bottom - NestTable.Hair || Math.Min(p.Y, q.Y) > room.Top + NestTable.Hair)
                continue;
            places.Edges.Add((p, q));
            Offer(places, p);
            foreach (Spot side in sideSpots[..EdgeMeets.Sides(p, q, room, sideSpots)])
                Offer(places, side);
        }

        for (int i = old; i < places.Edges.Count; i++)
        {
            for (int j = 0; j < i; j++)
            {
                if (EdgeMeets.Cross(places.Edges[i].P, places.Edges[i].Q, places.Edges[j].P, places.Edges[j].Q, out Spot crossing))
                    Offer(places, crossing);
            }
        }

        if (sides.Length * places.Shape.Sides.Length > MostCorners)
            return;
        foreach (ref readonly Side standing in sides.AsSpan())
        {
            foreach (ref readonly Side moving in places.Shape.Sides.AsSpan())
                Offer(places, standing.From + at - moving.From);
        }
    }

    // a place counts once, where it lies on the sheet and in nothing
    private static void Offer(Places places, Spot p)
    {
        Room room = places.Room;
        if (p.X < room.Left - NestTable.Hair || p.X > room.Right + NestTable.Hair || p.Y < room.Bottom - NestTable.Hair || p.Y > room.Top + NestTable.Hair)
            return;
        if (!places.Known.Add(((long)Math.Round(p.X * 1e8), (long)Math.Round(p.Y * 1e8))))
            return;
        double edge = 0, parts = 0;
        foreach (ref readonly Side side in places.Shape.Sides.AsSpan())
        {
            if (OnBorder(side.From + p, side.To + p, places))
                edge += side.Length;
        }

        foreach ((NoGoArea area, Spot at, Side[] sides, bool isPart) in places.Areas)
        {
            double deep = area.Depth(p - at, -Side.Near);
            if (deep > NestTable.Hair)
                return;
            if (deep <= -Side.Near)
                continue;
            double touch = Touch(sides, at, places.Shape, p);
            if (isPart)
                parts += touch;
            else
                edge += touch;
        }

        places.Open.Add((p, edge, parts));
    }

    private static bool OnBorder(Spot a, Spot b, Places places)
    {
        Room room = places.Room, shape = places.Shape.Room;
        double left = room.Left + shape.Left, right = room.Right + shape.Right, bottom = room.Bottom + shape.Bottom, top = room.Top + shape.Top;
        return (Math.Abs(a.X - left) < Side.Near && Math.Abs(b.X - left) < Side.Near) || (Math.Abs(a.X - right) < Side.Near && Math.Abs(b.X - right) < Side.Near)
            || (Math.Abs(a.Y - bottom) < Side.Near && Math.Abs(b.Y - bottom) < Side.Near) || (Math.Abs(a.Y - top) < Side.Near && Math.Abs(b.Y - top) < Side.Near);
    }

    private static double Touch(Side[] standing, Spot at, NestShape moving, Spot p)
    {
        double sum = 0;
        Spot moved = p - at;
        foreach (ref readonly Side a in standing.AsSpan())
        {
            foreach (ref readonly Side b in moving.Sides.AsSpan())
                sum += a.Along(b, moved);
        }

        return sum;
    }
}
