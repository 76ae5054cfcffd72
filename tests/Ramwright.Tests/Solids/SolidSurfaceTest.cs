using Ramwright.Geometry;
using Ramwright.Solids;

namespace Ramwright.Tests.Solids;

public class SolidSurfaceTest
{
    /// <summary>The triangles close round the steel: their areas as vectors add up to nothing, and the volume they hold is that of the parts.</summary>
    [Fact]
    public void ClosesRoundTheSteelAndFacesOutward()
    {
        SolidMesh mesh = SolidMesh.Of(
            [new SolidPart("bar", [new Cuboid(0, 0.3, 0, 0.05, 0, 0.1)]), new SolidPart("lug", [new Cuboid(0.1, 0.2, 0.05, 0.09, 0, 0.04)])],
            [new Bond(0, 1, Cuboid.Everywhere)], new CellSizes(0.02, 0.05));
        Dictionary<int, double> left = mesh.Face(0, 0, 0, Cuboid.Everywhere), right = mesh.Face(0, 0, 0.3, Cuboid.Everywhere);
        var pull = left.ToDictionary(s => s.Key, s => -s.Value * Vector.Across);
        foreach ((int node, double share) in right)
            pull[node] = share * Vector.Across;
        SolidSurface surface = SolidSurface.Of(new SolidSolver(mesh).Solve(pull));

        (Vector area, double volume) = (Vector.Zero, 0);
        for (int t = 0; t < surface.Triangles.Count; t += 3)
        {
            (Vector a, Vector b, Vector c) = (surface.Places[surface.Triangles[t]], surface.Places[surface.Triangles[t + 1]], surface.Places[surface.Triangles[t + 2]]);
            area += (b - a).Cross(c - a) / 2;
            volume += a.Dot(b.Cross(c)) / 6;
        }

        // between bar and lug one face is drawn, of one of them: what it adds or takes is its own area and volume, and no more
        Near.Absolute(0, area.X, 1e-12, "area");
        Near.Absolute(0, area.Z, 1e-12, "area");
        Assert.InRange(Math.Abs(area.Y), 0, 0.1 * 0.04 + 1e-9);
        Near.Relative(0.3 * 0.05 * 0.1 + 0.1 * 0.04 * 0.04, volume, 0.2, "volume");
        Assert.All(surface.Stress, s => Assert.InRange(s, 0, 10));
    }
}
