using NetTopologySuite.Geometries;
using NtsGeometry = NetTopologySuite.Geometries.Geometry;

namespace Ramwright.Fabrication.Nesting;

/// <summary>A straight side of a part, with its steel on the left.</summary>
/// <param name="From">Where it begins.</param>
/// <param name="To">Where it ends.</param>
/// <param name="Way">Its heading, one long.</param>
/// <param name="Length">m.</param>
internal readonly record struct Side(Spot From, Spot To, Spot Way, double Length)
{
    /// <summary>Sides that lie nearer to each other than this touch, m, and whose headings differ by less.</summary>
    public const double Near = 1e-7, Askew = 1e-6;

    public static Side Of(Spot from, Spot to)
    {
        Spot d = to - from;
        double l = Math.Sqrt(d.Dot(d));
        return new Side(from, to, l > 0 ? new Spot(d.X / l, d.Y / l) : default, l);
    }

    /// <summary>All sides of a polygon.</summary>
    public static Side[] Round(NtsGeometry polygon)
    {
        var sides = new List<Side>();
        for (int i = 0; i < polygon.NumGeometries; i++)
        {
            if (polygon.GetGeometryN(i) is not Polygon { IsEmpty: false } one)
                continue;
            foreach (LineString ring in one.Holes.Prepend(one.ExteriorRing))
            {
                Spot[] spots = Convex.Ring(ring);
                // round a hole the steel lies outside
                if (ring != one.ExteriorRing)
                    Array.Reverse(spots);
                for (int k = 0; k < spots.Length; k++)
                    sides.Add(Of(spots[k], spots[(k + 1) % spots.Length]));
            }
        }

        return [.. sides];
    }

    /// <summary>Along how much of it another side lies against it, from the other side of the line, m.</summary>
    /// <param name="other">The other side.</param>
    /// <param name="moved">How far the other is moved.</param>
    public double Along(in Side other, Spot moved)
    {
        if (Way.Dot(other.Way) > 0 || Math.Abs(Way.Cross(other.Way)) > Askew)
            return 0;
        Spot c = other.From + moved - From;
        if (Math.Abs(Way.Cross(c)) > Near)
            return 0;
        double high = Way.Dot(c), low = high - other.Length;
        return Math.Max(0, Math.Min(Length, high) - Math.Max(0, low));
    }
}
