using Ramwright.Geometry;
using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Strength;

/// <summary>Any welds that carry a force and a moment together, each a straight line with a throat.</summary>
/// <remarks>
/// The parts joined are taken as rigid and every bit of weld as equally stiff in all directions, so the force per throat area at a point r from the centroid is
/// s = F/A + θ × r with J θ = M, J = ∫ (r² 1 − r r') a dl. For a flat group this gives the handbook's polar moment in torsion and its second moments
/// in bending, for any other group their natural extension. Immutable.
/// </remarks>
public sealed class WeldGroup
{
    /// <summary>Welds treated as lines.</summary>
    public static readonly Citation Source = new("Shigley's Mechanical Engineering Design, 9th ed.", "9-3 and 9-4, tables 9-1 and 9-2");

    private readonly double _xx, _yy, _zz, _xy, _yz, _zx;
    private readonly (double Value, Vector Axis)[] _principal;
    private readonly double _reach;

    /// <summary>Takes the welds of a group.</summary>
    /// <param name="segments">At least one.</param>
    public WeldGroup(IReadOnlyList<WeldSegment> segments)
    {
        ArgumentNullException.ThrowIfNull(segments);
        if (segments.Count == 0)
            throw new ArgumentException("a weld group needs at least one weld", nameof(segments));
        Segments = [.. segments];
        Vector first = Vector.Zero;
        foreach (WeldSegment s in Segments)
        {
            Area += s.Area;
            Length += s.Length;
            first += s.Area / 2 * (s.From + s.To);
        }

        Centroid = first / Area;
        foreach (WeldSegment s in Segments)
        {
            // ∫ x y dl over a line from p to q is L (2 p p + 2 q q + p q + q p)/6 in each pair of coordinates.
            Vector p = s.From - Centroid, q = s.To - Centroid;
            double k = s.Area / 6;
            double xx = k * 2 * (p.X * p.X + q.X * q.X + p.X * q.X);
            double yy = k * 2 * (p.Y * p.Y + q.Y * q.Y + p.Y * q.Y);
            double zz = k * 2 * (p.Z * p.Z + q.Z * q.Z + p.Z * q.Z);
            _xx += yy + zz;
            _yy += zz + xx;
            _zz += xx + yy;
            _xy -= k * (2 * p.X * p.Y + 2 * q.X * q.Y + p.X * q.Y + q.X * p.Y);
            _yz -= k * (2 * p.Y * p.Z + 2 * q.Y * q.Z + p.Y * q.Z + q.Y * p.Z);
            _zx -= k * (2 * p.Z * p.X + 2 * q.Z * q.X + p.Z * q.X + q.Z * p.X);
            _reach = Math.Max(_reach, Math.Max(p.Length, q.Length));
        }

        _principal = Principal();
    }

    /// <summary>The welds.</summary>
    public IReadOnlyList<WeldSegment> Segments { get; }

    /// <summary>Throat area, m².</summary>
    public double Area { get; }

    /// <summary>Length of all welds, m.</summary>
    public double Length { get; }

    /// <summary>Centre of the throat area, m.</summary>
    public Vector Centroid { get; }

    /// <summary>Smallest throat in the group, m.</summary>
    public double Thinnest => Segments.Min(s => s.Throat);

    /// <summary>Second moment of the throat area about an axis through the centroid, m⁴: ∫ (distance from the axis)² a dl.</summary>
    /// <param name="axis">Its direction.</param>
    public double About(Vector axis) => axis.Dot(Times(axis)) / Check.Positive(axis.Dot(axis), nameof(axis));

    /// <summary>J v, the moment that goes with a turn v.</summary>
    internal Vector Times(Vector v) => new(
        _xx * v.X + _xy * v.Y + _zx * v.Z,
        _xy * v.X + _yy * v.Y + _yz * v.Z,
        _zx * v.X + _yz * v.Y + _zz * v.Z);

    /// <summary>Rows of J, for showing.</summary>
    internal (double XX, double YY, double ZZ, double XY, double YZ, double ZX) Tensor => (_xx, _yy, _zz, _xy, _yz, _zx);

    /// <summary>Moment about the centroid of a force and a moment given at another point.</summary>
    public Vector MomentAtCentroid(Vector force, Vector moment, Vector at) => moment + (at - Centroid).Cross(force);

    /// <summary>The turn θ with J θ = M, Pa/m.</summary>
    /// <param name="moment">Moment about the centroid, N·m.</param>
    /// <param name="force">Force on the group, N; only to judge what is rounding in the moment.</param>
    /// <exception cref="ArgumentException">The group is one straight line and the moment would turn it about itself.</exception>
    public Vector Turn(Vector moment, Vector force)
    {
        double large = _principal.Max(e => e.Value), scale = moment.Length + force.Length * _reach;
        Vector theta = Vector.Zero;
        foreach ((double value, Vector axis) in _principal)
        {
            double m = moment.Dot(axis);
            if (value > 1e-12 * large)
                theta += m / value * axis;
            else if (Math.Abs(m) > 1e-9 * scale)
                throw new ArgumentException("one straight line of weld cannot hold a moment about itself; add a weld beside it", nameof(moment));
        }

        return theta;
    }

    /// <summary>Force per throat area that a force and moment cause at a point of the group, Pa.</summary>
    /// <param name="force">Force, N.</param>
    /// <param name="moment">Moment, N·m.</param>
    /// <param name="at">Where both act, m.</param>
    /// <param name="point">Where to look, m.</param>
    public Vector StressAt(Vector force, Vector moment, Vector at, Vector point)
    {
        Vector theta = Turn(MomentAtCentroid(Acting.Finite(force), Acting.Finite(moment), Acting.Finite(at)), force);
        return force / Area + theta.Cross(point - Centroid);
    }

    // Jacobi's rotations on the symmetric 3 × 3 tensor.
    private (double, Vector)[] Principal()
    {
        double[,] m = { { _xx, _xy, _zx }, { _xy, _yy, _yz }, { _zx, _yz, _zz } };
        double[,] v = { { 1, 0, 0 }, { 0, 1, 0 }, { 0, 0, 1 } };
        double size = Math.Max(_xx, Math.Max(_yy, _zz));
        for (int sweep = 0; sweep < 60; sweep++)
        {
            int p = 0, q = 1;
            if (Math.Abs(m[0, 2]) > Math.Abs(m[p, q]))
                (p, q) = (0, 2);
            if (Math.Abs(m[1, 2]) > Math.Abs(m[p, q]))
                (p, q) = (1, 2);
            if (Math.Abs(m[p, q]) <= 1e-17 * size)
                break;
            double half = (m[q, q] - m[p, p]) / (2 * m[p, q]);
            double t = (half >= 0 ? 1 : -1) / (Math.Abs(half) + Math.Sqrt(half * half + 1));
            double c = 1 / Math.Sqrt(t * t + 1), s = t * c;
            for (int i = 0; i < 3; i++)
                (m[i, p], m[i, q]) = (c * m[i, p] - s * m[i, q], s * m[i, p] + c * m[i, q]);
            for (int i = 0; i < 3; i++)
                (m[p, i], m[q, i]) = (c * m[p, i] - s * m[q, i], s * m[p, i] + c * m[q, i]);
            for (int i = 0; i < 3; i++)
                (v[i, p], v[i, q]) = (c * v[i, p] - s * v[i, q], s * v[i, p] + c * v[i, q]);
        }

        return [.. Enumerable.Range(0, 3).Select(i => (m[i, i], new Vector(v[0, i], v[1, i], v[2, i])))];
    }
}
