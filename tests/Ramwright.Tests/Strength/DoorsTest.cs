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
    public void WeldsOnTheDrawing()
    {
        WeldPlane p = WeldPlane.OfSection;
        Refuses(b => WeldOutline.Rectangle(p, b, 0.2, 0.006), 0.04, 0, -0.04);
        Refuses(d => WeldOutline.Rectangle(p, 0.04, d, 0.006), 0.2, 0, -0.2);
        Refuses(l => WeldOutline.TwoLines(p, l, 0.02, 0.005, false), 0.1, 0, -0.1);
        Refuses(d => WeldOutline.TwoLines(p, 0.1, d, 0.005, false), 0.02, 0, -0.02);
        Refuses(r => WeldOutline.Profile(p, 0.2, 0.1, 0.006, 0.01, r, 0.005, 0.004), 0.012, -0.001, 0.09, 0.047);
        Refuses(x => WeldSegment.Butt(x * Vector.Up, 0.2 * Vector.Up, 0.01, Vector.Across), 0.1, 0.2);
        Refuses(x => WeldSegment.Butt(0.2 * Vector.Up, x * Vector.Up, 0.01, Vector.Across), 0.1, 0.2);
        Refuses(a => WeldSegment.Butt(Vector.Zero, Vector.Up, a, Vector.Across), 0.01, 0);
        Refuses(x => new WeldPlane(Vector.Zero, x * Vector.Deep, Vector.Up), 1, 0);
        Assert.Throws<ArgumentException>(() => new WeldPlane(Vector.Zero, Vector.Deep, 2 * Vector.Deep));
        Assert.Throws<ArgumentException>(() => WeldSegment.Butt(Vector.Zero, Vector.Up, 0.01, Vector.Up));
        Assert.Throws<ArgumentNullException>(() => new WeldGroup(null!));
        Assert.Throws<ArgumentException>(() => new WeldGroup([]));
        Assert.Equal("a weld of 39 mm leaves 29 mm; it needs 30 mm to carry load",
            Assert.Throws<ArgumentException>(() => WeldSegment.Butt(Vector.Zero, 0.039 * Vector.Up, 0.005, Vector.Across).WithoutEnds()).Message);
        Near.Relative(0.036, WeldSegment.ShortestLength(0.006), 1e-12);
        Assert.Equal(0.005, new WeldGroup([.. WeldOutline.Rectangle(p, 0.04, 0.2, 0.006).Segments, .. WeldOutline.Rectangle(p, 0.05, 0.3, 0.005).Segments]).Thinnest);
    }

    [Fact]
    public void PatchesRodsAndRams()
    {
        Refuses(t => PlatePatch.RectangleSupported(1, 0.3, 0.3, t, 0), 0.03, 0);
        Refuses(b => PlatePatch.RectangleSupported(1, 0.3, b, 0.03, 0), 0.3, 0, 0.31);
        Refuses(a => PlatePatch.RectangleSupported(1, a, 0.3, 0.03, 0), 0.3, 0.29);
        Refuses(r => PlatePatch.RectangleSupported(1, 0.4, 0.3, 0.03, r), 0.075, -0.01, 0.08, 0.1);
        Refuses(r => PlatePatch.RectangleFixed(1, 0.4, 0.3, 0.03, r), 0, -0.01, 0.08);
        Refuses(a => PlatePatch.RoundSupported(1, a, 0.03, 0.01), 0.15, 0, 0.01);
        Refuses(r => PlatePatch.RoundSupported(1, 0.15, 0.03, r), 0, -0.01, 0.15, 0.2);
        Refuses(a => PlatePatch.RoundClamped(1, a, 0.03, 0.01), 0.15, 0, 0.01);
        Assert.Throws<ArgumentOutOfRangeException>(() => PlatePatch.Supported(0.9));
        Assert.Throws<ArgumentOutOfRangeException>(() => PlatePatch.Supported(double.NaN));
        Refuses(d => RoundBar.Yields(1, 0, d, 0, 235e6, One), 0.06, 0, -0.06);
        Refuses(b => RoundBar.Yields(1, 0, 0.06, b, 235e6, One), 0, -0.01, 0.06, 0.07);
        Refuses(b => RodBuckling.CriticalOfRound(210e9, 355e6, 0.06, 1, b), 0, -0.01, 0.06, 0.07);
        Refuses(d => RodBuckling.CriticalOfRound(210e9, 355e6, d, 1), 0.06, 0, -0.06);
        Refuses(n => RodBuckling.Buckles(1, 210e9, 355e6, 0.06, 1, n), 1, 0.99);
        Refuses(s => RodBuckling.Squashes(s, 355e6, 0.06, One), 1);
        Refuses(C => Preload.Separation(1e5, C), 0, -0.1, 1, 1.1);
        Refuses(F => Preload.Separation(F, 0.2), 0, -1);
        Refuses(F => Preload.Opens(0.5, F, 0.2), 1e5, 0);
        Refuses(L => RamGuides.AtGland(5, 0, L, 0.1), 0, -0.1);
        Refuses(L => RamGuides.AtPiston(5, 0, L, 0.1), 0, -0.1);
        Refuses(n => RamGuides.Presses(1, 0.1, 0.01, 3e7, n), 1, 0.99);
        Assert.Throws<ArgumentOutOfRangeException>(() => new TStub(0.04, 0.05, 0.1, 0.1, 0.02, 275e6, 3));
        Assert.Throws<ArgumentNullException>(() => InnerCorner.Curved(null!, 0.1));
        Assert.Throws<ArgumentNullException>(() => Tipping.CanTip(null!));
    }

    [Fact]
    public void FactorsReachTheSafeForce()
    {
        // each from its own formula: what is divided by γ_M0 falls with it
        static double Factor(Func<PartialFactors, Limit?> limit, PartialFactors f) => limit(f)!.Value.Factor;
        var m0 = new PartialFactors(1.1, 1, 1, 1);
        var pin = new Pin(0.03, 355e6, 470e6, 0.05, 0.01, 0.001, 235e6, 235e6);
        Assert.InRange(Factor(f => pin.Bending(1, f), m0), 1.05, 1.1);
        Near.Relative(1.1, Factor(f => NetSection.Tension(1, 1e-3, 1e-3, 235e6, 360e6, f), m0), 1e-12);
        Near.Relative(1.1, Factor(f => new TStub(0.04, 0.05, 0.1, 0.1, 0.010, 275e6).Gives(1, 350e3, f), m0), 1e-9);
        Near.Relative(1.1, NetSection.BalancedRatio(235e6, 360e6, PartialFactors.Recommended) / NetSection.BalancedRatio(235e6, 360e6, new PartialFactors(1.1)), 1e-12);
        // a hole that just counts no longer does when yield is divided by more
        Assert.False(NetSection.MayIgnoreHoles(1, 0.9, 235e6, 360e6, PartialFactors.Recommended));
        Assert.True(NetSection.MayIgnoreHoles(1, 0.9, 235e6, 360e6, new PartialFactors(1.1)));
        Near.Relative(1.1, Math.Pow(Pin.EyeOfStandardShape(1e5, 235e6, 1.1 * 1.1).Thickness / Pin.EyeOfStandardShape(1e5, 235e6).Thickness, 1), 1e-12);
        Near.Relative(1e5 * 1.1 / (2 * 0.01 * 235e6) + 0.02, Pin.EyeEdges(1e5, 0.01, 235e6, 0.03, 1.1).A, 1e-12);
        Near.Relative(200e3 / Math.Sqrt(3) / 1.1, TearOut.BlockResistance(0, 1e-3, 200e6, 360e6, false, 1.1, 1.25), 1e-12);
        Near.Relative(2 * 0.029 * 0.012 * 275e6 / Math.Sqrt(3) / 0.5, TearOut.PlugOut(0.5, 0.029, 0.012, 275e6, One)!.Value.GivesAt, 1e-12);
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
