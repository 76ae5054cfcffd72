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
        Free = edgeGap > 0 ? sheet.Buffer(-edgeGap).Area : sheet.Area;
        NtsGeometry kept = edgeGap > 0 && !missing.IsEmpty ? NestShape.Wider(missing, edgeGap) : missing;
        Missing = missing.IsEmpty ? [] : Convex.Pieces(kept);
        MissingSides = Side.Round(kept);
    }

    /// <summary>The sides of what parts must keep clear of, its inside on the left.</summary>
    public Side[] MissingSides { get; }

    /// <summary>Whether it has to be bought.</summary>
    public bool Buy { get; }

    public double Area { get; }

    public Polygon Polygon { get; }

    /// <summary>What parts can claim of it, m²: what lies within its edge gap.</summary>
    public double Free { get; }

    /// <summary>The rectangle that parts must stay in.</summary>
    public Room Room { get; }

    /// <summary>What parts must keep clear of: steel that is not there, and the gap to its edge.</summary>
    public IReadOnlyList<ConvexPiece> Missing { get; }

    /// <summary>Where a part's origin may come so that it stays in the rectangle; narrower than nothing where it does not fit.</summary>
    public Room Origins(NestShape shape) =>
        new(Room.Left - shape.Room.Left, Room.Right - shape.Room.Right, Room.Bottom - shape.Room.Bottom, Room.Top - shape.Room.Top);

    // an arc of the sheet that bulges out is cut short by chords, one that bulges in by tangents
    private static IEnumerable<(double, double)> Inside(IReadOnlyList<Corner> edge) => Enumerable.Reverse(NestShape.Outside(edge.AsHole()));
}
