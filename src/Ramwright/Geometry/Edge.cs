namespace Ramwright.Geometry;

/// <summary>Takes points along an edge, each with the stretch of edge it stands for.</summary>
internal interface IEdgeSum
{
    /// <summary>Adds the point (y, z) with the weighted steps dy and dz along the edge.</summary>
    void Add(double y, double z, double dy, double dz);
}

/// <summary>One edge of a loop: a straight line, or an arc given by the bulge of its first corner.</summary>
/// <remarks>
/// Edges are summed by Gauss-Legendre: two points on a straight piece, exact for the cubics that second moments need,
/// and twelve points on each quarter turn of an arc, which leaves an error near rounding.
/// </remarks>
internal readonly struct Edge
{
    // Half of the twelve Gauss-Legendre points on (-1, 1), and their weights; Abramowitz and Stegun, table 25.4.
    private static ReadOnlySpan<double> Point =>
    [
        0.125233408511469, 0.367831498998180, 0.587317954286617,
        0.769902674194305, 0.904117256370475, 0.981560634246719,
    ];

    private static ReadOnlySpan<double> Weight =>
    [
        0.249147045813403, 0.233492536538355, 0.203167426723066,
        0.160078328543346, 0.106939325995318, 0.047175336386512,
    ];

    private static readonly double Third = Math.Sqrt(1.0 / 3);

    private readonly Corner _a;
    private readonly Corner _b;
    private readonly double _yc, _zc, _r, _start, _sweep;

    public Edge(Corner a, Corner b)
    {
        _a = a;
        _b = b;
        if (a.Bulge == 0)
            return;

        double dy = b.Y - a.Y, dz = b.Z - a.Z, k = a.Bulge;
        double lift = (1 - k * k) / (4 * k);      // centre's distance left of the chord, over the chord
        _yc = (a.Y + b.Y) / 2 - lift * dz;
        _zc = (a.Z + b.Z) / 2 + lift * dy;
        _r = Math.Sqrt(dy * dy + dz * dz) * (1 + k * k) / (4 * Math.Abs(k));
        _start = Math.Atan2(a.Z - _zc, a.Y - _yc);
        _sweep = 4 * Math.Atan(k);
    }

    private bool IsArc => _a.Bulge != 0;

    public double Length => IsArc ? _r * Math.Abs(_sweep) : Math.Sqrt(Square(_b.Y - _a.Y) + Square(_b.Z - _a.Z));

    /// <summary>Sums along the edge, broken where it crosses the level <paramref name="cut"/>; NaN for no break.</summary>
    public void Sum<T>(ref T sum, double cut) where T : struct, IEdgeSum
    {
        if (IsArc)
            SumArc(ref sum, cut);
        else
            SumLine(ref sum, cut);
    }

    /// <summary>Widens the extents by this edge.</summary>
    public Extents Widen(Extents e)
    {
        e = Include(e, _a.Y, _a.Z);
        if (!IsArc)
            return e;

        double low = Math.Min(_start, _start + _sweep), high = Math.Max(_start, _start + _sweep);
        for (double q = Math.Ceiling(low / (Math.PI / 2)); q * (Math.PI / 2) <= high; q++)
        {
            (double sin, double cos) = Math.SinCos(q * (Math.PI / 2));
            e = Include(e, _yc + _r * cos, _zc + _r * sin);
        }

        return e;
    }

    private void SumLine<T>(ref T sum, double cut) where T : struct, IEdgeSum
    {
        double t = (cut - _a.Z) / (_b.Z - _a.Z);
        if (t is > 0 and < 1)
        {
            SumPiece(ref sum, 0, t);
            SumPiece(ref sum, t, 1);
        }
        else
        {
            SumPiece(ref sum, 0, 1);
        }
    }

    private void SumPiece<T>(ref T sum, double from, double to) where T : struct, IEdgeSum
    {
        double half = (to - from) / 2, mid = (to + from) / 2;
        double dy = (_b.Y - _a.Y) * half, dz = (_b.Z - _a.Z) * half;
        for (int side = -1; side <= 1; side += 2)
        {
            double t = mid + side * half * Third;
            sum.Add(_a.Y + t * (_b.Y - _a.Y), _a.Z + t * (_b.Z - _a.Z), dy, dz);
        }
    }

    private void SumArc<T>(ref T sum, double cut) where T : struct, IEdgeSum
    {
        Span<double> breaks = stackalloc double[8];      // as shares of the sweep
        int n = 0;
        breaks[n++] = 0;
        double k = (cut - _zc) / _r;
        if (k is > -1 and < 1)
        {
            double a = Math.Asin(k);
            AddBreaks(breaks, ref n, a);
            AddBreaks(breaks, ref n, Math.PI - a);
        }

        breaks[n++] = 1;
        breaks[..n].Sort();
        for (int i = 1; i < n; i++)
        {
            double span = breaks[i] - breaks[i - 1];
            int pieces = Math.Max(1, (int)Math.Ceiling(Math.Abs(span * _sweep) / (Math.PI / 2) - 1e-9));
            for (int p = 0; p < pieces; p++)
                SumTurn(ref sum, _start + _sweep * (breaks[i - 1] + span * p / pieces), _sweep * span / pieces);
        }
    }

    private void AddBreaks(Span<double> breaks, ref int n, double angle)
    {
        for (int turn = -2; turn <= 2; turn++)
        {
            double share = (angle + turn * 2 * Math.PI - _start) / _sweep;
            if (share is > 0 and < 1)
                breaks[n++] = share;
        }
    }

    private void SumTurn<T>(ref T sum, double from, double turn) where T : struct, IEdgeSum
    {
        double half = turn / 2, mid = from + half;
        for (int i = 0; i < Point.Length; i++)
        {
            for (int side = -1; side <= 1; side += 2)
            {
                (double sin, double cos) = Math.SinCos(mid + side * half * Point[i]);
                double step = _r * half * Weight[i];
                sum.Add(_yc + _r * cos, _zc + _r * sin, -step * sin, step * cos);
            }
        }
    }

    private static Extents Include(Extents e, double y, double z) => new(
        Math.Min(e.Left, y), Math.Max(e.Right, y), Math.Min(e.Bottom, z), Math.Max(e.Top, z));

    private static double Square(double x) => x * x;
}
