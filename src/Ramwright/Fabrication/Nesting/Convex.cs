using NetTopologySuite.Geometries;
using NetTopologySuite.Triangulate.Polygon;
using NtsGeometry = NetTopologySuite.Geometries.Geometry;

namespace Ramwright.Fabrication.Nesting;

/// <summary>Takes polygons apart into convex pieces.</summary>
internal static class Convex
{
    private const double Least = 1e-12;

    /// <summary>Convex pieces that together are the polygon.</summary>
    public static IReadOnlyList<ConvexPiece> Pieces(NtsGeometry geometry)
    {
        var pieces = new List<ConvexPiece>();
        for (int i = 0; i < geometry.NumGeometries; i++)
        {
            if (geometry.GetGeometryN(i) is Polygon { IsEmpty: false } polygon)
                pieces.AddRange(Of(polygon));
        }

        return pieces;
    }

    private static IEnumerable<ConvexPiece> Of(Polygon polygon)
    {
        Spot[] ring = Ring(polygon.ExteriorRing);
        if (polygon.NumInteriorRings == 0 && IsConvex(ring))
            return [ConvexPiece.Of(ring)];
        var pieces = new List<List<Spot>>();
        NtsGeometry triangles = PolygonTriangulator.Triangulate(polygon);
        for (int i = 0; i < triangles.NumGeometries; i++)
        {
            Spot[] triangle = Ring(((Polygon)triangles.GetGeometryN(i)).ExteriorRing);
            if (triangle.Length == 3 && (triangle[1] - triangle[0]).Cross(triangle[2] - triangle[0]) > Least)
                pieces.Add([.. triangle]);
        }

        Merge(pieces);
        return pieces.Select(ConvexPiece.Of);
    }

    // two pieces with a common edge become one where that stays convex (Hertel and Mehlhorn)
    private static void Merge(List<List<Spot>> pieces)
    {
        for (int i = 0; i < pieces.Count; i++)
        {
            for (int j = i + 1; j < pieces.Count; j++)
            {
                if (Joined(pieces[i], pieces[j]) is not { } joined)
                    continue;
                pieces[i] = joined;
                pieces.RemoveAt(j);
                j = i;          // the greater piece may take in what the lesser could not
            }
        }
    }

    private static List<Spot>? Joined(List<Spot> a, List<Spot> b)
    {
        for (int i = 0; i < a.Count; i++)
        {
            int next = (i + 1) % a.Count, at = b.IndexOf(a[next]);
            if (at < 0 || b[(at + 1) % b.Count] != a[i])
                continue;
            var joined = new List<Spot>(a.Count + b.Count - 2);
            for (int k = 0; k < a.Count; k++)
                joined.Add(a[(next + k) % a.Count]);
            for (int k = 2; k < b.Count; k++)
                joined.Add(b[(at + k) % b.Count]);
            return IsConvex(joined) ? joined : null;
        }

        return null;
    }

    private static bool IsConvex(IReadOnlyList<Spot> ring)
    {
        for (int i = 0; i < ring.Count; i++)
        {
            Spot a = ring[i], b = ring[(i + 1) % ring.Count], c = ring[(i + 2) % ring.Count];
            if ((b - a).Cross(c - b) < -Least)
                return false;
        }

        return ring.Count >= 3;
    }

    /// <summary>Corners of a ring, anticlockwise, the last not repeated.</summary>
    public static Spot[] Ring(LineString ring)
    {
        Coordinate[] all = ring.Coordinates;
        Spot[] spots = [.. all.Take(all.Length - 1).Select(c => new Spot(c.X, c.Y))];
        if (NetTopologySuite.Algorithm.Orientation.IsCCW(ring.CoordinateSequence))
            return spots;
        Array.Reverse(spots);
        return spots;
    }
}
