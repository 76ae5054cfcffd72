using CsCheck;
using Ramwright.Geometry;
using Ramwright.Stock;
using Ramwright.Strength;
using Ramwright.Workings;

namespace Ramwright.Tests.Strength;

public class WeldAroundTest
{
    private static readonly Citation Made = Citation.Practice("made up");
    private static readonly WeldPlane Plane = WeldPlane.OfSection;

    private static WeldGroup Around(Shape shape, double throat = 0.005) => WeldAround.Edge(Plane, shape.CentredOutline, throat);

    /// <summary>As long, centred alike, and as stiff about each axis.</summary>
    private static void Same(WeldGroup expected, WeldGroup computed, double tolerance)
    {
        Near.Relative(expected.Length, computed.Length, tolerance);
        Near.Relative(expected.Area, computed.Area, tolerance);
        Near.Absolute(0, (expected.Centroid - computed.Centroid).Length, tolerance * expected.Length);
        foreach (Vector axis in (Vector[])[Vector.Across, Vector.Deep, Vector.Up, new(1, 2, 3)])
            Near.Relative(expected.About(axis), computed.About(axis), 3 * tolerance);
    }

    [Fact]
    public void RoundAFlat()
    {
        WeldGroup hand = WeldOutline.Rectangle(Plane, 0.04, 0.2, 0.006), found = WeldAround.Edge(Plane, new Flat(0.2, 0.04) { Name = "f", Source = Made }.CentredOutline, 0.006);
        Same(hand, found, 1e-12);
        // the legs lie outside the flat, on the face: any pull uses both groups alike
        Gen.Double[0.1, 1].Array[6].Sample(f =>
        {
            Vector force = new(f[0], -f[1], f[2]), moment = new(f[3], f[4], -f[5]);
            Near.Relative(FilletWeld.Directional(hand, force, moment, Vector.Zero, 360e6, 0.8, PartialFactors.Recommended)!.Value.SafeTo,
                FilletWeld.Directional(found, force, moment, Vector.Zero, 360e6, 0.8, PartialFactors.Recommended)!.Value.SafeTo, 1e-9);
        }, iter: 50);
    }

    [Fact]
    public void RoundABar() => Same(WeldOutline.Circle(Plane, 0.06, 0.005), Around(new Round(0.06) { Name = "r", Source = Made }), 0.005);

    [Fact]
    public void ATubeIsWeldedOutsideOnly()
    {
        Same(WeldOutline.Circle(Plane, 0.06, 0.005), Around(new CircularHollow(0.06, 0.004) { Name = "t", Source = Made }), 0.005);
        // 4 sides less 8 corners of 9, and a whole turn of radius 9
        WeldGroup square = Around(RectangularHollow.Hot("s", 0.1, 0.1, 0.006));
        Near.Relative(0.4 - 8 * 0.009 + 2 * Math.PI * 0.009, square.Length, 0.001);
        Near.Absolute(0, square.Centroid.Length, 1e-12);
        Near.Relative(square.About(Vector.Deep), square.About(Vector.Up), 1e-9);
    }

    [Fact]
    public void AllRoundAProfile()
    {
        // h 200, b 100, t_w 6, t_f 10, r 12: 2h + 4b − 2t_w, and each of four roots a quarter turn for two legs
        var i = new ISection(0.2, 0.1, 0.006, 0.010, 0.012) { Name = "I", Source = Made };
        WeldGroup g = Around(i, 0.004);
        Near.Relative(0.4 + 0.4 - 0.012 - 4 * 0.012 * (2 - Math.PI / 2), g.Length, 0.001);
        Near.Absolute(0, g.Centroid.Length, 1e-12);
        Assert.All(g.Segments, s => Assert.True(Math.Abs(s.From.X) < 1e-12 && s.Throat == 0.004));
        // the middle of the root's arc lies on the arc
        double far = 0.003 + 0.012, up = 0.1 - 0.010 - 0.012;
        Assert.Equal(4, g.Segments.Count(s => Math.Abs(Math.Sqrt(Math.Pow(Math.Abs(s.From.Y) - far, 2) + Math.Pow(Math.Abs(s.From.Z) - up, 2)) - 0.012) < 1e-9
            && Math.Abs((far - Math.Abs(s.From.Y)) - (Math.Abs(s.From.Z) - up)) < 1e-9));
    }

    [Fact]
    public void FacesOfAPairTooCloseForATorchAreLeftOut()
    {
        Shape half = new Flat(0.1, 0.01) { Name = "f", Source = Made };
        double Length(double apart) => Around(new Pair(half, apart) { Name = "p", Source = Made }, 0.004).Length;

        // two of 220 round; the faces of 100 that look at each other go where they stand closer than three throats, 12 mm
        Near.Relative(0.44, Length(0.0125), 1e-9);
        Near.Relative(0.24, Length(0.0115), 1e-9);
    }

    [Fact]
    public void ButtWeldsFollowTheSameEdge()
    {
        Outline edge = new Flat(0.2, 0.04) { Name = "f", Source = Made }.CentredOutline;
        WeldGroup butt = WeldAround.Edge(Plane, edge, 0.006, butt: true);
        Same(WeldAround.Edge(Plane, edge, 0.006), butt, 1e-12);
        // pulled square to the face the butt weld is as strong as the metal
        Near.Relative(0.48 * 0.006 * 235e6, ButtWeld.Yield(butt, Vector.Across, Vector.Zero, Vector.Zero, 235e6, new PartialFactors(1, 1, 1, 1))!.Value.GivesAt, 1e-9);
        Assert.Throws<ArgumentNullException>(() => WeldAround.Edge(null!, edge, 0.006));
        Assert.Throws<ArgumentNullException>(() => WeldAround.Edge(Plane, null!, 0.006));
        Assert.Throws<ArgumentOutOfRangeException>(() => WeldAround.Edge(Plane, edge, 0));
    }

    private static readonly Gen<WeldGroup> AnyGroup = Gen.Double[-0.2, 0.2].Array[24].Select(x => new WeldGroup([.. from i in Enumerable.Range(0, 4)
        select WeldSegment.Butt(new(x[6 * i], x[6 * i + 1] + 0.5 * i, x[6 * i + 2] + 0.5 * (i % 2)), new(x[6 * i + 3] + 0.5, x[6 * i + 4] + 0.5 * i, x[6 * i + 5] + 0.5 * (i % 2)), 0.003 + 0.001 * i, Vector.Up)]));

    [Fact]
    public void TheTurnAnswersTheMomentWhicheverWayTheWeldsLie() => Gen.Select(AnyGroup, Gen.Double[-1, 1].Array[6]).Sample((g, f) =>
    {
        Vector moment = new(f[0], f[1], f[2]), force = new(f[3], f[4], f[5]);
        Near.Absolute(0, (g.Times(g.Turn(moment, force)) - moment).Length, 1e-9);
    }, iter: 200);

    [Fact]
    public void StressesBalanceWhatActs() => Gen.Select(AnyGroup, Gen.Double[-1, 1].Array[9]).Sample((g, f) =>
    {
        // along a straight weld stress runs linearly, its moment quadratically: Simpson's rule is exact
        Vector force = new(f[0], f[1], f[2]), moment = new(f[3], f[4], f[5]), at = new(f[6], f[7], f[8]);
        Vector sum = Vector.Zero, turn = Vector.Zero;
        foreach (WeldSegment s in g.Segments)
        {
            foreach ((double t, double k) in (ReadOnlySpan<(double, double)>)[(0, 1 / 6.0), (0.5, 4 / 6.0), (1, 1 / 6.0)])
            {
                Vector p = s.From + t * (s.To - s.From), dF = k * s.Area * g.StressAt(force, moment, at, p);
                sum += dF;
                turn += (p - at).Cross(dF);
            }
        }

        Near.Absolute(0, (sum - force).Length, 1e-9);
        Near.Absolute(0, (turn - moment).Length, 1e-8);
    }, iter: 200);

    [Fact]
    public void TheThroatOfAFilletStandsBetweenItsLegs()
    {
        // legs along Deep and Across: the throat runs down their bisector, so what pulls along it shears the throat, what pulls square to it tears it
        var g = new WeldGroup([WeldSegment.Fillet(Vector.Zero, 0.1 * Vector.Up, 0.005, Vector.Deep, Vector.Across)]);
        Vector middle = 0.05 * Vector.Up;
        var one = new PartialFactors(1, 1, 1, 1);
        double Use(Vector f) => 1 / FilletWeld.Directional(g, f, Vector.Zero, middle, 360e6, 0.8, one)!.Value.GivesAt * 360e6 * 0.1 * 0.005;
        Near.Relative(1 / 0.9, Use((Vector.Deep - Vector.Across).Unit), 1e-9);
        Near.Relative(Math.Sqrt(3) * 0.8, Use((Vector.Deep + Vector.Across).Unit), 1e-9);
        Near.Relative(Math.Sqrt(3) * 0.8, Use(Vector.Up), 1e-9);
    }
}
