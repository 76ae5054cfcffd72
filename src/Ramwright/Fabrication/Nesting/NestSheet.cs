using NetTopologySuite.Geometries;
using Ramwright.Geometry;
using NtsGeometry = NetTopologySuite.Geometries.Geometry;

namespace Ramwright.Fabrication.Nesting;

/// <summary>A sheet: an upright rectangle, and what of it is not there.</summary>
internal sealed class NestSheet
{
    public NestSheet(IReadOnlyList<Corner> edge, double edgeGap, bool buy)
    {
        // no arc of a remnant may be taken for more steel than it is: holes are cut from outside, so the edge turns round
        Polygon sheet = NestShape.Closed([.. Inside(edge)]);
        Envelope e = sheet.EnvelopeInternal;
        Buy = buy;
        Area = sheet.Area;
        Polygon = sheet;
        Room = new Room(e.MinX + edgeGap, e.MaxX - edgeGap, e.MinY + edgeGap, e.MaxY - edgeGap);
        var whole = (Polygon)sheet.Factory.ToGeometry(e);
        NtsGeometry missing = whole.Difference(sheet);
        Missing = missing.IsEmpty ? [] : Convex.Pieces(edgeGap > 0 ? NestShape.Wider(missing, edgeGap) : missing);
    }

    /// <summary>Whether it has to be bought.</summary>
    public bool Buy { get; }

    public double Area { get; }

    public Polygon Polygon { get; }

    /// <summary>The rectangle that parts must stay in.</summary>
    public Room Room { get; }

    /// <summary>What parts must keep clear of: steel that is not there, and the gap to its edge.</summary>
    public IReadOnlyList<ConvexPiece> Missing { get; }

    // an arc of the sheet that bulges out is cut short by chords, one that bulges in by tangents
    private static IEnumerable<(double, double)> Inside(IReadOnlyList<Corner> edge) => Enumerable.Reverse(NestShape.Outside(edge.AsHole()));
}
