using NetTopologySuite.Geometries;
using Ramwright.Fabrication.Nesting;
using Ramwright.Geometry;

namespace Ramwright.Tests.Fabrication.Nesting;

/// <summary>Holds that no part of a nest meets another or leaves its sheet, by the true outlines and another way of reckoning than the search's.</summary>
internal static class Apart
{
    // two thousandths of a millimetre, which no torch sees; arcs are drawn so finely that their corners stand out of them by half of it
    private const double Hair = 2e-6, Fine = 1e-6;

    public static void Holds(NestGroup group, double partGap, double edgeGap)
    {
        foreach (Nest nest in group.Nests)
        {
            Polygon sheet = Polygon([nest.Sheet.Edge]);
            Polygon[] parts = [.. nest.Parts.Select(p => Polygon([.. p.Outline.Loops]))];
            for (int i = 0; i < parts.Length; i++)
            {
                Assert.True(sheet.Buffer(Hair).Covers(parts[i]), $"{nest.Parts[i].Part.Mark} leaves its sheet");
                Assert.True(parts[i].Distance(sheet.ExteriorRing) >= edgeGap - Hair, $"{nest.Parts[i].Part.Mark} is nearer to the edge than {edgeGap}");
                for (int j = 0; j < i; j++)
                {
                    if (partGap > 0)
                        Assert.True(parts[i].Distance(parts[j]) >= partGap - Hair, $"{nest.Parts[i].Part.Mark} and {nest.Parts[j].Part.Mark} are {parts[i].Distance(parts[j])} apart");
                    else
                        Assert.True(parts[i].Buffer(-Hair).Intersection(parts[j]).Area < 1e-12, $"{nest.Parts[i].Part.Mark} overlaps {nest.Parts[j].Part.Mark}");
                }
            }
        }
    }

    private static Polygon Polygon(IReadOnlyList<Corner>[] loops)
    {
        LinearRing[] rings = [.. new Outline(loops).Polygons(Fine).Select(p => new LinearRing([.. p.Append(p[0]).Select(c => new Coordinate(c.Y, c.Z))]))];
        return new Polygon(rings[0], rings[1..]);
    }
}
