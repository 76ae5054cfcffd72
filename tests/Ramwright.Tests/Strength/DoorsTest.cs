using Ramwright.Frame;
using Ramwright.Geometry;
using Ramwright.Stock;
using Ramwright.Strength;

namespace Ramwright.Tests.Strength;

/// <summary>No number that is none, and none outside its range, comes into the room.</summary>
public class DoorsTest
{
    private static readonly PartialFactors One = new(1, 1, 1, 1);
    private static readonly WeldGroup Weld = WeldOutline.Rectangle(WeldPlane.OfSection, 0.04, 0.2, 0.006);

    /// <summary>Lets the good value in, and refuses the bad ones, infinity and what is no number.</summary>
    private static void Refuses(Func<double, object?> call, double good, params ReadOnlySpan<double> bad)
    {
        call(good);
        foreach (double x in (double[])[.. bad, double.NaN, double.PositiveInfinity, double.NegativeInfinity])
            Assert.ThrowsAny<ArgumentException>(() => call(x));
    }

    [Fact]
    public void Plates()
    {
        Refuses(F => AnnularPlate.MomentAtHole(F, 0.2, 0.1, 0.15), 1);
        Refuses(b => AnnularPlate.MomentAtHole(1, 0.2, b, 0.15), 0.1, 0, -0.1, 0.16);
        Refuses(a => AnnularPlate.MomentAtHole(1, a, 0.1, 0.1), 0.2, 0.1, 0.05);
        Refuses(r => AnnularPlate.MomentAtHole(1, 0.2, 0.1, r), 0.2, 0.21, 0.09);
        Refuses(f => AnnularPlate.Yields(f, 0.2, 0.1, 0.15, 0.01, 235e6, One), 1);
        Refuses(t => AnnularPlate.Yields(1, 0.2, 0.1, 0.15, t, 235e6, One), 0.01, 0);
    }

    [Fact]
    public void Barrels()
    {
        Refuses(ri => Barrel.Lame(ri, 0.05, 20e6, 5e6, 0.05), 0.03, 0, -0.03, 0.05);
        Refuses(ro => Barrel.Lame(0.03, ro, 20e6, 5e6, 0.03), 0.05, 0.03);
        Refuses(p => Barrel.Lame(0.03, 0.05, p, 5e6, 0.03), 0, -1);
        Refuses(p => Barrel.Lame(0.03, 0.05, 20e6, p, 0.03), 0, -1);
        Refuses(b => Barrel.YieldPressure(b, 0.125, 355e6), 0.1, 0, -0.1, 0.125);
        Refuses(o => Barrel.YieldPressure(0.1, o, 355e6), 0.125, 0.1);
        Refuses(n => Barrel.Yields(1, 0.1, 0.125, 355e6, n), 1, 0.99);
        Refuses(p => Barrel.Yields(p, 0.1, 0.125, 355e6), 1);
        Assert.Null(Barrel.Yields(-1, 0.1, 0.125, 355e6));
    }

    [Fact]
    public void Bars()
    {
        Refuses(c => new Column(2, 2, BucklingCurve.A, BucklingCurve.A, 1, 1, c), 1, 0, -0.5, 1.01);
        Refuses(l => ColumnBuckling.Chi(l, BucklingCurve.A), 0, -0.1);
        Refuses(n => ColumnBuckling.WithBending(new Actions(-1, 0, 0, 0, n, 0), Sections.Heb160, new Column(2, 2, BucklingCurve.A, BucklingCurve.A), 235e6, One), 1);
        Refuses(N => CurvedBeam.Stress(CurvedSection.Rectangle(0.04, 0.2, 0.05), N, 0.35), 1);
        Refuses(M => CurvedBeam.Stress(CurvedSection.Rectangle(0.04, 0.2, 0.05), 1, M), 1);
        Refuses(b => CurvedSection.Trapezoid(b, 0.04, 0.12, 0.08), 0.08, 0, -0.08);
        Refuses(b => CurvedSection.Trapezoid(0.04, b, 0.12, 0.08), 0.08, 0, -0.08);
        Refuses(r => CurvedSection.Circle(0.05, r), 0.06, 0.025, 0.02);
        Refuses(t => DetailCategory.Toe(t, 0.01), 0.04, 0);
        Refuses(t => DetailCategory.Toe(0.04, t), 0.01, 0);
        Refuses(a => AmericanFillet.DirectionFactor(a), 1, -0.1, 1.6, 3);
    }

    [Fact]
    public void Welds()
    {
        Refuses(f => FilletWeld.Directional(Weld, Vector.Up, Vector.Zero, Vector.Zero, f, 0.8, One), 360e6, 0, -1);
        Refuses(m => FilletWeld.Directional(Weld, Vector.Up, m * Vector.Up, Vector.Zero, 360e6, 0.8, One), 1);
        Refuses(x => FilletWeld.Directional(Weld, Vector.Up, Vector.Zero, x * Vector.Up, 360e6, 0.8, One), 1);
        Refuses(x => FilletWeld.Directional(Weld, x * Vector.Up, Vector.Zero, Vector.Zero, 360e6, 0.8, One), 1);
        Refuses(f => ButtWeld.Yield(Weld, Vector.Up, Vector.Zero, Vector.Zero, f, One), 235e6, 0, -1);
    }

    [Fact]
    public void Bolts()
    {
        var bolt = new Bolt(new ScrewThread(0.02, 0.0025) { Name = "M20" }, BoltGroupTest.Class("8.8"));
        BoltGroup pair = BoltGroup.Grid(bolt, 2, 1, 0.1, 0);
        Refuses(p => BoltGroup.Grid(bolt, 2, 1, p, 0), 0.1, -0.1);
        Refuses(p => BoltGroup.Grid(bolt, 1, 2, 0, p), 0.1, -0.1);
        Refuses(k => pair.Tension(new Actions(1, 0, 0, 0, 0, 0), One, k), 1, 0.9);
        Refuses(k => pair.Combined(new Actions(1, 0, 0, 0, 0, 0), One, k), 1, 0.9);
        Refuses(N => pair.Forces(new Actions(N, 0, 0, 0, 0, 0)), 1);
        Assert.Throws<ArgumentOutOfRangeException>(() => BoltGroup.Grid(bolt, 0, 1, 0.1, 0.1));
        Assert.Throws<ArgumentOutOfRangeException>(() => BoltGroup.Grid(bolt, 1, 0, 0.1, 0.1));
        Assert.Throws<ArgumentOutOfRangeException>(() => BoltGroup.Grid(bolt, 1, 1, 0.1, 0.1, 3));
        Assert.Throws<ArgumentException>(() => new BoltGroup(bolt, []));
        Assert.Throws<ArgumentNullException>(() => new BoltGroup(null!, [new BoltPlace(0, 0)]));
        Assert.Throws<ArgumentNullException>(() => new BoltGroup(bolt, null!));
    }

    [Fact]
    public void Fatigue()
    {
        Assert.Throws<ArgumentNullException>(() => FatigueCurve.Range(null!, 1e5));
        Assert.Throws<ArgumentNullException>(() => FatigueCurve.Life(null!, 1e6));
        Assert.Throws<ArgumentNullException>(() => FatigueCurve.FatigueLimit(null!));
        Assert.Throws<ArgumentNullException>(() => FatigueCurve.CutOff(null!));
        Assert.Throws<ArgumentNullException>(() => FatigueCurve.Cap(null!, 235e6));
        var strength = new FatigueStrength(1e5, 275e6, DetailCategory.Root, DetailCategory.FilletShear);
        Assert.Throws<ArgumentNullException>(() => strength.Force(1, 1, null!));
        Assert.Throws<ArgumentNullException>(() => strength.Squeezes(1, 1, 1, null!));
        Assert.Throws<ArgumentException>(() => new FatigueStrength(1e5, 275e6, DetailCategory.Root, DetailCategory.Root));
        Assert.Throws<ArgumentNullException>(() => WeldFatigue.Root(null!, Vector.Up, Vector.Zero, Vector.Zero, strength));
        Assert.Throws<ArgumentNullException>(() => WeldFatigue.Root(Weld, Vector.Up, Vector.Zero, Vector.Zero, null!));
    }
}
