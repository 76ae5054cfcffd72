using CsCheck;
using Ramwright.Geometry;
using Ramwright.Stock;

namespace Ramwright.Tests.Stock;

/// <summary>What must hold of every section, whatever its dimensions.</summary>
public class ShapePropertiesTest
{
    private static readonly Gen<double> Unit = Gen.Double[0, 1];

    private static ISection I(double h, double b, double tw, double tf, double r) => new(h, b, tw, tf, r) { Name = "I", Source = SectionText.AsGiven };
    private static Channel U(double h, double b, double tw, double tf, double r) => new(h, b, tw, tf, r, r / 2, 0.08) { Name = "U", Source = SectionText.AsGiven };
    private static RectangularHollow R(double h, double b, double t) => RectangularHollow.Hot("R", h, b, t);
    private static Box B(double h, double b, double tw, double tf) => new(h, b, tw, tf) { Name = "B", Source = SectionText.AsGiven };
    private static Flat F(double h, double t) => new(h, t) { Name = "F", Source = SectionText.AsGiven };

    private static readonly Gen<Shape> Any = Gen.Select(Gen.Int[0, 7], Unit, Unit, Unit, Unit).Select((kind, a, b, c, d) =>
    {
        double h = 0.08 + 0.4 * a, w = 0.06 + 0.2 * b, tw = 0.004 + 0.01 * c, tf = 0.006 + 0.01 * d;
        return (Shape)(kind switch
        {
            0 => I(h, w, tw, tf, 0.01),
            1 => U(h + 0.06, w, tw, tf + 0.08 * w / 2, 0.008),
            2 => R(h, w, tw),
            3 => B(h, w, tw, tf),
            4 => F(h, tf),
            5 => new Angle(h, w, tw, 0.01, tw / 2) { Name = "L", Source = SectionText.AsGiven },
            6 => new Tee(h, w, tw, tf, 0.01, 0.002, 0.0005, 0.3 * a * tw / h) { Name = "T", Source = SectionText.AsGiven },
            _ => new Round(w) { Name = "round", Source = SectionText.AsGiven },
        });
    });

    [Fact]
    public void Bigger_dimension_never_lowers_area_or_stiffness()
    {
        Gen.Select(Gen.Int[0, 3], Gen.Int[0, 4], Unit.Array[5], Gen.Double[1.001, 1.15]).Sample((kind, which, u, more) =>
        {
            double[] d = [0.12 + 0.3 * u[0], 0.10 + 0.1 * u[1], 0.005 + 0.005 * u[2], 0.008 + 0.006 * u[3], 0.006 + 0.006 * u[4]];
            double[] e = [.. d];
            e[which] *= more;
            SectionProperties p = Make(kind, d).Properties, q = Make(kind, e).Properties;
            const double Still = 1 - 1e-9;

            Assert.True(q.A >= p.A * Still, $"A {p.A} {q.A}");
            Assert.True(q.Iy >= p.Iy * Still, $"Iy {p.Iy} {q.Iy}");
            if (!(kind == 1 && which is 0 or 2))     // a thicker web draws a channel's centroid towards itself: Iz need not rise
                Assert.True(q.Iz >= p.Iz * Still, $"Iz {p.Iz} {q.Iz}");
            Assert.True(q.Wply >= p.Wply * Still, $"Wply {p.Wply} {q.Wply}");
        }, iter: 500);

        static Shape Make(int kind, double[] d) => kind switch
        {
            0 => I(d[0], d[1], d[2], d[3], d[4]),
            1 => new Channel(d[0], d[1], d[2], d[3], d[4]) { Name = "U", Source = SectionText.AsGiven },
            2 => R(d[0], d[1], d[2]),
            _ => B(d[0], d[1], d[2], d[3]),
        };
    }

    [Fact]
    public void Pair_has_twice_the_area_and_the_strong_axis_of_one()
    {
        Gen.Select(Any, Gen.Double[0, 0.2], Gen.Bool).Sample((half, gap, toes) =>
        {
            SectionProperties one = half.Properties;
            SectionProperties two = new Pair(half, gap, toes) { Name = "pair", Source = half.Source }.Properties;
            SectionProperties loose = new Pair(half, gap, toes, Tied: false) { Name = "pair", Source = half.Source }.Properties;

            Near.Relative(2 * one.A, two.A, 1e-9);
            Near.Relative(2 * one.Iy, two.Iy, 1e-9);
            Near.Relative(2 * one.Wply, two.Wply, 1e-8);
            Near.Relative(2 * one.Width + gap, two.Width, 1e-9);
            Assert.True(two.Iz >= 2 * one.Iz * (1 - 1e-9));
            Near.Absolute(two.Left, two.Right, 1e-12);
            // Steiner: each half's centroid lies half the gap and its distance to the inner edge from the middle.
            double arm = gap / 2 + (toes ? one.Right : one.Left);
            Near.Relative(2 * (one.Iz + one.A * arm * arm), two.Iz, 1e-9);
            Near.Relative(2 * one.Iz, loose.Iz, 1e-12);
        }, iter: 500);
    }

    [Fact]
    public void Turning_swaps_the_axes()
    {
        Any.Sample(shape =>
        {
            SectionProperties p = shape.Properties;
            var turned = new Turned(shape) { Name = "turned", Source = shape.Source };
            SectionProperties q = turned.Properties;
            AreaMoments m = turned.Outline.Moments();

            Assert.Equal((p.A, p.Iy, p.Iz), (q.A, q.Iz, q.Iy));
            Assert.Equal((p.Avz, p.Asz, p.Wely, p.Wply), (q.Avy, q.Asy, q.Welz, q.Wplz));
            Near.Relative(m.Iy, q.Iy, 1e-9);
            Near.Relative(turned.Outline.Extents().Top - m.Z, q.Top, 1e-9);
            Near.Relative(m.Y - turned.Outline.Extents().Left, q.Left, 1e-9);
        }, iter: 300);
    }

    [Fact]
    public void Hole_takes_from_everything_that_carries()
    {
        Gen.Select(Any, Gen.Enum<HolePlace>(), Gen.Double[0.004, 0.04], Gen.Int[1, 3]).Sample((shape, place, width, count) =>
        {
            if (Drilled.WhyNot(shape, place, width, count) is not null)
                return;
            SectionProperties p = shape.Properties, q = Drilled.Through(shape, place, width, count).Properties;

            Assert.True(q.A < p.A);
            Assert.True(q.Iy < p.Iy);
            Assert.True(q.Iz < p.Iz);
            if (shape is not (Angle or Tee))            // a hole on the thick side draws the axis towards the thin one
                Assert.True(q.Wely < p.Wely);
            Assert.True(q.Wply < p.Wply);
            Assert.True(q.Avz <= p.Avz && q.Avz > 0);
            Assert.True(q.Avy <= p.Avy && q.Avy > 0);
        }, iter: 500);
    }

    [Fact]
    public void Every_property_is_a_finite_number_above_zero_and_plastic_exceeds_elastic()
    {
        Any.Sample(shape =>
        {
            SectionProperties p = shape.Properties;
            double[] all = [p.A, p.Iy, p.Iz, p.Wely, p.Welz, p.Wply, p.Wplz, p.Avz, p.Avy, p.Asz, p.Asy, p.It, p.Wt, p.Top, p.Bottom, p.Left, p.Right, p.Thickness];

            Assert.All(all, x => Assert.True(x > 0 && double.IsFinite(x), $"{shape.Name}: {string.Join(' ', all)}"));
            Assert.True(p.Iw >= 0);
            Assert.True(p.Wply > p.Wely);
            Assert.True(p.Wplz > p.Welz);
            Assert.True(p.It <= (p.Iy + p.Iz) * (1 + 1e-9));                   // a circle is the stiffest shape of its polar moment
            Assert.True(Math.Max(p.Avz, p.Avy) <= p.A);
        }, iter: 500);
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(0)]
    [InlineData(-0.1)]
    [InlineData(double.PositiveInfinity)]
    public void Dimensions_that_are_none_are_refused(double x)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => I(x, 0.1, 0.005, 0.008, 0.01));
        Assert.Throws<ArgumentOutOfRangeException>(() => I(0.2, 0.1, x, 0.008, 0.01));
        Assert.Throws<ArgumentOutOfRangeException>(() => U(0.2, 0.1, 0.005, x, 0.01));
        Assert.Throws<ArgumentOutOfRangeException>(() => R(0.2, x, 0.005));
        Assert.Throws<ArgumentOutOfRangeException>(() => B(0.2, 0.1, 0.005, x));
        Assert.Throws<ArgumentOutOfRangeException>(() => F(x, 0.02));
        Assert.Throws<ArgumentOutOfRangeException>(() => new Round(x) { Name = "", Source = SectionText.AsGiven });
        if (x != 0)
            Assert.Throws<ArgumentOutOfRangeException>(() => new Pair(F(0.2, 0.02), x) { Name = "", Source = SectionText.AsGiven });
    }
}
