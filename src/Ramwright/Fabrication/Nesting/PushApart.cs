namespace Ramwright.Fabrication.Nesting;

/// <summary>
/// Puts parts on one sheet that do not find room one after another: they may overlap at first. One that overlaps is moved to where it overlaps least, then the next;
/// what goes on overlapping weighs more and more until it gives way.
/// </summary>
/// <remarks>
/// Guided local search over overlaps, in the manner of J. Egeblad, B. K. Nielsen, A. Odgaard, Fast neighborhood search for two- and three-dimensional nesting
/// problems, EJOR 183 (2007). How much two parts overlap is how deep one lies in the region that it may not enter because of the other.
/// </remarks>
internal sealed class PushApart
{
    /// <summary>Parts are pushed this much farther than they need, m: so that what is nearly apart ends apart.</summary>
    private const double Margin = 0.1e-3;

    /// <summary>Places tried of each kind: anywhere, nearby, and at corners of regions that may not be entered.</summary>
    private const int Anywhere = 6, Nearby = 8, AtCorners = 10;

    /// <summary>The best of these are followed downhill.</summary>
    private const int Followed = 3;

    /// <summary>Steps downhill at most.</summary>
    private const int MostSteps = 60;

    /// <summary>Weights of pairs that overlap grow by these, the deepest most; those of others fade.</summary>
    private const double GrowLeast = 1.2, GrowMost = 2, Fade = 0.95;

    private readonly NestTable _table;
    private readonly int _sheet;
    private readonly IReadOnlyList<NestShape>[] _turns;
    private readonly SeededDraw _draw;
    private readonly NestShape[] _shapes;
    private readonly Spot[] _at;
    private readonly double[,] _weights, _depths;
    private readonly NoGoArea?[] _areas;
    private readonly List<(double Cost, NestShape Shape, Spot At)> _best = [];

    /// <param name="table">Regions that may not be entered.</param>
    /// <param name="sheet">Number of the sheet.</param>
    /// <param name="turns">Each part in all its turns.</param>
    /// <param name="shapes">How each lies at first.</param>
    /// <param name="at">Where; null where it has no place yet.</param>
    /// <param name="draw">The draws.</param>
    public PushApart(NestTable table, int sheet, IReadOnlyList<IReadOnlyList<NestShape>> turns, IReadOnlyList<NestShape> shapes, IReadOnlyList<Spot?> at, SeededDraw draw)
    {
        int n = shapes.Count;
        (_table, _sheet, _turns, _draw) = (table, sheet, [.. turns], draw);
        _shapes = [.. shapes];
        _at = new Spot[n];
        // one more than the parts: what is missing of the sheet
        (_weights, _depths) = (new double[n, n + 1], new double[n, n + 1]);
        _areas = new NoGoArea?[n + 1];
        for (int i = 0; i < n; i++)
        {
            for (int j = 0; j <= n; j++)
                _weights[i, j] = 1;
        }

        for (int i = 0; i < n; i++)
        {
            _at[i] = at[i] ?? Drawn(_shapes[i]);
        }

        for (int i = 0; i < n; i++)
        {
            if (at[i] is null)
                Settle(i);
        }
    }

    /// <summary>How each part lies.</summary>
    public IReadOnlyList<NestShape> Shapes => _shapes;

    /// <summary>Where each part lies.</summary>
    public IReadOnlyList<Spot> At => _at;

    /// <summary>Whether nothing overlaps.</summary>
    public bool IsDone => Deepest() <= NestTable.Hair;

    /// <summary>Sum of all overlaps, m.</summary>
    public double Overlap
    {
        get
        {
            double sum = 0;
            foreach (double d in _depths)
                sum += d;
            return sum;
        }
    }

    /// <summary>Moves every part that overlaps once, in an order that is drawn.</summary>
    public void Round()
    {
        int n = _shapes.Length;
        int[] order = [.. Enumerable.Range(0, n)];
        for (int i = n - 1; i > 0; i--)
        {
            int j = _draw.Below(i + 1);
            (order[i], order[j]) = (order[j], order[i]);
        }

        foreach (int i in order)
        {
            if (Overlaps(i))
                Settle(i);
        }

        double most = Deepest();
        if (most <= NestTable.Hair)
            return;
        for (int i = 0; i < n; i++)
        {
            for (int j = 0; j <= n; j++)
            {
                double d = _depths[i, j];
                _weights[i, j] = d > NestTable.Hair ? _weights[i, j] * (GrowLeast + (GrowMost - GrowLeast) * d / most) : Math.Max(1, _weights[i, j] * Fade);
            }
        }
    }

    private bool Overlaps(int i)
    {
        for (int j = 0; j <= _shapes.Length; j++)
        {
            if (_depths[i, j] > NestTable.Hair)
                return true;
        }

        return false;
    }

    private double Deepest()
    {
        double most = 0;
        foreach (double d in _depths)
            most = Math.Max(most, d);
        return most;
    }

    private Spot Drawn(NestShape shape)
    {
        Room room = _table.Sheets[_sheet].Origins(shape);
        return new Spot(room.Left + _draw.Share() * room.Width, room.Bottom + _draw.Share() * room.Height);
    }

    private void Settle(int i)
    {
        _best.Clear();
        double size = 0.25 * Math.Max(_shapes[i].Room.Width, _shapes[i].Room.Height);
        NestShape now = _shapes[i];
        Spot from = _at[i];
        foreach (NestShape shape in _turns[i])
        {
            Room room = _table.Sheets[_sheet].Origins(shape);
            if (room.Width < -NestTable.Hair || room.Height < -NestTable.Hair)
                continue;
            Areas(i, shape);
            // the middle of a part stays where it is when it turns
            Spot here = shape == now ? from : Within(room, new Spot(
                from.X + (now.Room.Left + now.Room.Right - shape.Room.Left - shape.Room.Right) / 2, from.Y + (now.Room.Bottom + now.Room.Top - shape.Room.Bottom - shape.Room.Top) / 2));
            Try(i, shape, here);
            for (int k = 0; k < Anywhere; k++)
                Try(i, shape, new Spot(room.Left + _draw.Share() * room.Width, room.Bottom + _draw.Share() * room.Height));
            for (int k = 0; k < Nearby; k++)
                Try(i, shape, Within(room, new Spot(here.X + size * (2 * _draw.Share() - 1), here.Y + size * (2 * _draw.Share() - 1))));
            for (int k = 0; k < AtCorners; k++)
            {
                int j = _draw.Below(_areas.Length);
                if (_areas[j] is not { Edges.Length: > 0 } area)
                    continue;
                Spot corner = area.Edges[_draw.Below(area.Edges.Length)].From + Standing(j);
                Try(i, shape, Within(room, corner));
            }
        }

        (double Cost, NestShape Shape, Spot At) found = (double.PositiveInfinity, now, from);
        foreach ((double cost, NestShape shape, Spot at) in _best)
        {
            Areas(i, shape);
            (double c, Spot p) = Downhill(i, shape, at, cost, size);
            if (c < found.Cost)
                found = (c, shape, p);
        }

        (_shapes[i], _at[i]) = (found.Shape, found.At);
        Measure(i);
    }

    private Spot Standing(int j) => j < _at.Length ? _at[j] : default;

    private void Areas(int i, NestShape shape)
    {
        for (int j = 0; j < _shapes.Length; j++)
            _areas[j] = j == i ? null : _table.NoGo(_shapes[j], shape);
        _areas[^1] = _table.Missing(_sheet, shape);
    }

    private void Try(int i, NestShape shape, Spot at)
    {
        double most = _best.Count < Followed ? double.PositiveInfinity : _best[^1].Cost, cost = Cost(i, at, most);
        if (cost >= most)
            return;
        if (_best.Count == Followed)
            _best.RemoveAt(Followed - 1);
        int k = _best.Count;
        while (k > 0 && _best[k - 1].Cost > cost)
            k--;
        _best.Insert(k, (cost, shape, at));
    }

    // overlaps of a place, each with its weight; stops where it is more than matters
    private double Cost(int i, Spot at, double most)
    {
        double cost = 0;
        for (int j = 0; j < _areas.Length && cost < most; j++)
        {
            if (_areas[j] is not { } area)
                continue;
            double deep = area.Depth(at - Standing(j), -Margin) + Margin;
            if (deep > 0)
                cost += _weights[i, j] * deep;
        }

        return cost;
    }

    // ever shorter steps in eight directions
    private (double Cost, Spot At) Downhill(int i, NestShape shape, Spot at, double cost, double step)
    {
        Room room = _table.Sheets[_sheet].Origins(shape);
        step *= 0.5;
        for (int steps = 0; steps < MostSteps && step > 2e-6 && cost > 0; steps++)
        {
            bool better = false;
            for (int k = 0; k < 8; k++)
            {
                Spot way = Ways[k], next = Within(room, new Spot(at.X + step * way.X, at.Y + step * way.Y));
                double c = Cost(i, next, cost);
                if (c >= cost * (1 - 1e-4))
                    continue;
                (cost, at, better) = (c, next, true);
            }

            if (!better)
                step *= 0.4;
        }

        return (cost, at);
    }

    private static readonly Spot[] Ways = [.. Enumerable.Range(0, 8).Select(k => new Spot(Math.Cos(k * Math.PI / 4), Math.Sin(k * Math.PI / 4)))];

    private static Spot Within(Room room, Spot p) => new(Math.Max(room.Left, Math.Min(room.Right, p.X)), Math.Max(room.Bottom, Math.Min(room.Top, p.Y)));

    private void Measure(int i)
    {
        Areas(i, _shapes[i]);
        int n = _shapes.Length;
        for (int j = 0; j <= n; j++)
        {
            double d = _areas[j] is { } area ? Math.Max(0, area.Depth(_at[i] - Standing(j), 0)) : 0;
            _depths[i, j] = d;
            if (j < n)
                (_depths[j, i], _weights[j, i]) = (d, _weights[i, j]);
        }
    }
}
