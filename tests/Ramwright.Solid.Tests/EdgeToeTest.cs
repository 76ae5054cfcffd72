using Ramwright.Geometry;
using Ramwright.Solid.Tests.Bricks;
using Ramwright.Solid.Tests.Calculix;
using Ramwright.Solid.Tests.Frames;
using Ramwright.Solids;
using Ramwright.Tests;

namespace Ramwright.Solid.Tests;

/// <summary>Toes on a plate's narrow edge: which they are, and how near they are read.</summary>
public class EdgeToeTest
{
    private const double T = 0.01, End = 0.05, Far = 0.2, Half = 0.04;
    private static readonly Cuboid Plate = new(0, Far, 0, T / 2, 0, Half);

    // a plate 80 by 10 with a gusset 100 by 50 on both of its edges, an eighth of it, pulled by 1 Pa
    private static WeldToe Toe(double leg) => new(0, "plate", 0, End + leg, 1, T, 2, Half, 1, Plate) { OnEdge = true, Leg = leg };

    private static readonly double[] Halves = [-0.0015, -0.0005, 0.0005, 0.0015];

    private static SolidModel Pulled(IEnumerable<Cuboid> lines, double fine, double coarse, bool middles)
    {
        var mesh = new BrickMesh([(0, Plate), (1, new Cuboid(0, End, 0, T / 2, Half, Half + 0.05))], [], [new Bond(0, 1, Cuboid.Everywhere)], [.. lines], fine, coarse, middles);
        var model = new SolidModel(mesh);
        for (int axis = 0; axis < 3; axis++)
            model.HoldPlane(axis, 0, axis);
        model.Push(mesh.Mesh.Face(0, 0, Far, Cuboid.Everywhere), Half * T / 2 * Vector.Across);
        return model;
    }

    private static IEnumerable<Cuboid> Lines(WeldToe toe) => ToeLines.Of([toe], [new SolidPart("plate", [Plate])], [], []);

    private static double Own(WeldToe toe, IEnumerable<Cuboid> lines, double fine) => HotSpot.Along(toe, HotSpotTest.Solve(Pulled(lines, fine, 2.5 * fine, false))).Values.First().Stress;

    /// <summary>On cells as a frame has them, against bricks of twenty nodes with more of them round the corner; bricks of half a millimetre all round gave 1.843 and 1.278 when tried.</summary>
    [SolidTheory, InlineData(0.0, 0.005), InlineData(0.0, 0.01), InlineData(0.006, 0.005), InlineData(0.006, 0.01)]
    public void AGussetOnAPlatesEdge(double leg, double cells)
    {
        WeldToe toe = Toe(leg);
        SolidModel fine = Pulled([.. Lines(toe), .. Halves.SelectMany(h => new[] { Cuboid.Everywhere.With(0, End + h, End + h), Cuboid.Everywhere.With(2, Half + h, Half + h) })], 0.0025, 0.01, true);
        SolidAnswer answer = Solver.Solve(fine);
        double[] read = [.. Enumerable.Range(0, 3).Select(i => HotSpotTest.OnFace(fine, answer, toe.Place(i), Half))];
        double calculix = 3 * read[0] - 3 * read[1] + read[2], own = Own(toe, Lines(toe), cells);

        new Reference("HS-edge", $"CalculiX {Solver.Version}, C3D20R bricks of half a millimetre round the corner, σ at 4, 8 and 12 mm: gusset 100 by 50 on both edges of a plate 80 by 10", Trust.Recomputed)
            .Near($"hot-spot over plain stress, toe {1e3 * leg:0} mm before the corner, cells of {1e3 * cells:0} mm", calculix, own, 0.03);
        Assert.True(own > 1.05 * HotSpot.Along(toe with { OnEdge = false, Thickness = 0.03 }, HotSpotTest.Solve(Pulled(Lines(toe with { OnEdge = false, Thickness = 0.03 }), cells, 2.5 * cells, false)))
            .Values.First().Stress, "at 0.4 and 1.0 t of a bar of 30 mm it would come out lower");
    }

    /// <summary>Where a face stands where a plane should, stress is taken between it and the next.</summary>
    [Fact]
    public void APlaneThatIsALittleOffIsMadeUpFor()
    {
        WeldToe toe = Toe(0.006);
        double[] planes = [.. toe.Planes.Where(p => Math.Abs(p - toe.Place(0)) > 1e-6), toe.Place(0) + 4e-4];
        Cuboid[] Along(double[] at) => [.. at.Select(x => Cuboid.Everywhere.With(0, x, x))];

        Near.Relative(Own(toe, Along([.. toe.Planes]), 0.005), Own(toe, Along(planes), 0.005), 0.02, "a plane 0.4 mm off");
        Assert.Empty(HotSpot.Along(toe, HotSpotTest.Solve(Pulled([], 0.05, 0.05, false))));
    }

    [Fact]
    public void TypesAreThoseOfTheRules()
    {
        var rule = new Reference("HS-type", "IMO, Common Structural Rules, part 1, chapter 9, section 5, table 1: type a on a plate's surface, type b round a plate's edge", Trust.Found);
        // along x, z up: how deep and how wide the wall is that the toe stands on
        WeldToe Above(double deep, double wide) => WeldToe.Of(0, "", [new Cuboid(0, 1, 0, wide, 0, deep)], 0, 0, 1, 0.008).Last();
        rule.Exactly("bar 200 by 30 on edge", 1.0, Above(0.2, 0.03).OnEdge ? 1 : 0);
        rule.Exactly("the same lying flat", 0.0, Above(0.03, 0.2).OnEdge ? 1 : 0);
        Assert.Equal(0.03, Above(0.2, 0.03).Thickness);
        Assert.Equal(0.03, Above(0.03, 0.2).Thickness);
        Assert.True(Above(0.06, 0.06).OnEdge, "a square bar is neither: the nearer reading");
    }

    [Theory, InlineData("C-01", 12, 12), InlineData("C-10", 0, 12), InlineData("C-06", 0, 12), InlineData("C-16", 8, 12), InlineData("C-17", 4, 12), InlineData("O-01", 4, 8), InlineData("O-14", 4, 6), InlineData("O-11", 0, 6)]
    public void BarsHaveEdgesFlangesFaces(string id, int edges, int all)
    {
        IReadOnlyList<WeldToe> toes = PressSolid.Of(Rigs.With(Studies.Named(id).Frame)).Toes;

        Assert.Equal((edges, all), (toes.Count(t => t.OnEdge), toes.Count));
        Assert.All(toes, t => Assert.Equal(t.OnEdge ? 0.012 : t.Thickness, Math.Abs(t.Place(t.Reading.Count - 1) - t.At), 1e-12));
    }

    [Fact]
    public void AToeThatIsNotReadIsNamed()
    {
        SolidCheck solid = SolidCheck.Of(Rigs.With(Studies.Named("C-02").Frame), 0.016);
        Assert.Empty(HotSpot.Unread(solid));
        HotSpot lost = solid.Centred.HotSpots[3];

        SolidCheck less = solid with { Cases = [solid.Centred with { HotSpots = [.. solid.Centred.HotSpots.Where(h => h != lost)] }], Springs = solid.Springs! with { Upper = solid.Springs.Upper with { Toes = [] } } };

        IReadOnlyList<string> said = HotSpot.Unread(less);
        Assert.Single(said, s => s.StartsWith($"Stress at the toe of {lost.Toe.Name} is not read", StringComparison.Ordinal));
        Assert.Equal(6, said.Count(s => s.Contains("crown joint", StringComparison.Ordinal) && s.Contains("no rung", StringComparison.Ordinal)));
    }
}
