namespace Ramwright.Geometry;

/// <summary>
/// Areas and moments of an outline by summing along its edge (Green's theorem), exact for straight edges and to rounding
/// for arcs. A member throws <see cref="ArgumentException"/> where the outline encloses nothing or is turned inside out.
/// </summary>
public static class OutlineMeasures
{
    /// <summary>Area, centroid and second moments about the centroid.</summary>
    public static AreaMoments Moments(this Outline outline)
    {
        // About the middle of the extents first, so that far-off coordinates cost no digits.
        Extents e = outline.Extents();
        var sum = new MomentSum { Y0 = (e.Left + e.Right) / 2, Z0 = (e.Bottom + e.Top) / 2 };
        outline.Sum(ref sum);
        double A = sum.A;
        if (!(A > 0) || !double.IsFinite(A))
            throw new ArgumentException("The outline encloses no area; outer loops run anticlockwise, holes clockwise.", nameof(outline));

        double y = sum.Sy / A, z = sum.Sz / A;
        return new AreaMoments(
            A, sum.Y0 + y, sum.Z0 + z, sum.Szz - A * z * z, sum.Syy - A * y * y, sum.Syz - A * y * z);
    }

    /// <summary>Area, m².</summary>
    public static double Area(this Outline outline) => outline.Moments().A;

    /// <summary>Length of all loops, holes included, m.</summary>
    public static double Perimeter(this Outline outline)
    {
        double length = 0;
        foreach (Edge edge in outline.Edges())
            length += edge.Length;
        return length;
    }

    /// <summary>The upright rectangle that just holds the outline.</summary>
    public static Extents Extents(this Outline outline)
    {
        ArgumentNullException.ThrowIfNull(outline);
        var e = new Extents(double.PositiveInfinity, double.NegativeInfinity, double.PositiveInfinity, double.NegativeInfinity);
        foreach (Edge edge in outline.Edges())
            e = edge.Widen(e);
        if (!double.IsFinite(e.Width) || !double.IsFinite(e.Height))
            throw new ArgumentException("The outline has no corners, or a corner that is not finite.", nameof(outline));
        return e;
    }

    /// <summary>Area above the level <paramref name="z"/>, m².</summary>
    public static double AreaAbove(this Outline outline, double z) => outline.Above(z).A;

    /// <summary>
    /// First moment of what lies above the level <paramref name="z"/>, about that level, m³. About another axis at height
    /// <c>z0</c> add <c>AreaAbove(z) · (z − z0)</c>.
    /// </summary>
    public static double FirstMomentAbove(this Outline outline, double z) => outline.Above(z).S;

    /// <summary>The level with half the area above it, m: the plastic neutral axis of bending about y-y.</summary>
    public static double HalfAreaLevel(this Outline outline) => HalfAreaLevel(outline, outline.Moments());

    /// <summary>Plastic modulus for bending about the horizontal axis, m³: ∫ |z − c| dA about the level of half the area.</summary>
    public static double PlasticModulus(this Outline outline)
    {
        AreaMoments m = outline.Moments();
        double c = HalfAreaLevel(outline, m);
        // Above and below: S_above − S_below, and S_above + S_below = A (z̄ − c).
        double above = outline.FirstMomentAbove(c);
        return 2 * above - m.A * (m.Z - c);
    }

    private static double HalfAreaLevel(Outline outline, AreaMoments m)
    {
        double half = m.A / 2, even = 1e-12 * m.A;
        if (Math.Abs(outline.AreaAbove(m.Z) - half) <= even)
            return m.Z;

        // False position; an end that stays twice is halved so that it cannot stick (Illinois), and every third step
        // halves the bracket, for walls that begin abruptly.
        Extents e = outline.Extents();
        double low = e.Bottom, high = e.Top, overLow = half, overHigh = -half;
        int moved = 0;
        for (int i = 1; i <= 300 && high - low > 1e-15 * e.Height; i++)
        {
            double level = i % 3 == 0 ? (low + high) / 2 : low + (high - low) * overLow / (overLow - overHigh);
            double over = outline.AreaAbove(level) - half;
            if (Math.Abs(over) <= even)
                return level;

            if (over > 0)
            {
                low = level;
                overLow = over;
                overHigh = moved > 0 ? overHigh / 2 : overHigh;
                moved = 1;
            }
            else
            {
                high = level;
                overHigh = over;
                overLow = moved < 0 ? overLow / 2 : overLow;
                moved = -1;
            }
        }

        return (low + high) / 2;
    }

    private static AboveSum Above(this Outline outline, double z)
    {
        var sum = new AboveSum { Level = z };
        outline.Sum(ref sum, z);
        return sum;
    }

    private static void Sum<T>(this Outline outline, ref T sum, double cut = double.NaN) where T : struct, IEdgeSum
    {
        foreach (IReadOnlyList<Corner> loop in outline.Loops)
        {
            for (int i = 0; i < loop.Count; i++)
                new Edge(loop[i], loop[(i + 1) % loop.Count]).Sum(ref sum, cut);
        }
    }

    private static IEnumerable<Edge> Edges(this Outline outline)
    {
        foreach (IReadOnlyList<Corner> loop in outline.Loops)
        {
            for (int i = 0; i < loop.Count; i++)
                yield return new Edge(loop[i], loop[(i + 1) % loop.Count]);
        }
    }

    private struct MomentSum : IEdgeSum
    {
        public double Y0, Z0, A, Sy, Sz, Syy, Szz, Syz;

        public void Add(double y, double z, double dy, double dz)
        {
            y -= Y0;
            z -= Z0;
            A += (y * dz - z * dy) / 2;
            Sy += y * y * dz / 2;
            Sz -= z * z * dy / 2;
            Syy += y * y * y * dz / 3;
            Szz -= z * z * z * dy / 3;
            Syz += y * y * z * dz / 2;
        }
    }

    private struct AboveSum : IEdgeSum
    {
        public double Level, A, S;

        public void Add(double y, double z, double dy, double dz)
        {
            double over = z - Level;
            if (over <= 0)
                return;
            A -= over * dy;
            S -= over * over * dy / 2;
        }
    }
}
