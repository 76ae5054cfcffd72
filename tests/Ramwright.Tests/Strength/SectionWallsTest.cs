using CsCheck;
using Ramwright.Files;
using Ramwright.Frame;
using Ramwright.Stock;
using Ramwright.Strength;
using Ramwright.Workings;

namespace Ramwright.Tests.Strength;

public class SectionWallsTest
{
    private static readonly Citation Made = Citation.Practice("made up");
    private static readonly Actions Bent = new(0, 0, 0, 0, 1, 0), Pushed = new(-1, 0, 0, 0, 0, 0), Pulled = new(1, 0, 0, 0, 0, 0);

    private static Shape Named(string text)
    {
        Assert.True(SectionText.TryRead(text, StockTables.Built, null, out Shape? shape, out _), text);
        return shape;
    }

    private static ISection Welded(double h, double b, double tw, double tf) => new(h, b, tw, tf, 0) { Name = "I", Source = Made };

    [Fact]
    public void AWorkedExampleOfARolledBeam()
    {
        var r = new Reference("MB-01", "Steel Buildings in Europe, part 4, worked example A.1: IPE 330, S235, bent", Trust.FoundAndRecomputed);
        IReadOnlyList<Wall> walls = SectionWalls.Of(Named("IPE 330")).All;
        Wall flange = walls.First(w => w.Hold == WallHold.OneEdge), web = walls.Single(w => w.Hold == WallHold.BothEdges);
        r.Near("c of the flange, mm", 58.25, flange.C * 1e3, 1e-4);
        r.Near("c/t of the flange", 5.07, flange.C / flange.T, 0.002);
        r.Near("c of the web, mm", 271, web.C * 1e3, 1e-4);
        r.Near("c/t of the web", 36.1, web.C / web.T, 0.002);
        r.Exactly("class", SectionClass.One, SectionWalls.Of(Named("IPE 330")).Counted(Bent, 235e6).Class);
    }

    [Fact]
    public void LimitsOfClassThree()
    {
        var r = new Reference("MB-02", "EN 1993-1-1 table 5.2", Trust.Found);
        r.Near("web in bending", 124, PlateClass.InternalLimit(-1), 0.005);
        r.Near("web in compression", 42, PlateClass.InternalLimit(1), 1e-9);
        r.Near("flange in even compression", 14, PlateClass.OutstandLimit(1, 1), 1e-9);
        r.Near("flange, root neutral, tip pushed: 21 √0.57", 15.85, PlateClass.OutstandLimit(0, 1), 0.001);
        r.Near("flange, tip neutral, root pushed: 21 √1.70", 27.38, PlateClass.OutstandLimit(1, 0), 0.001);
        r.Near("flange, tip pulled as much as the root is pushed: 21 √23.8", 102.4, PlateClass.OutstandLimit(1, -1), 0.001);
    }

    // S275, ε = 0.924: class 3 up to (b + h)/2t = 10.6 and h/t = 13.9
    [Theory]
    [InlineData("L 80x80x8", false)]
    [InlineData("L 100x100x10", false)]
    [InlineData("L 100x100x8", true)]
    [InlineData("L 150x150x12", true)]
    [InlineData("L 100x65x8", false)]
    [InlineData("L 150x90x10", true)]
    public void APushedAngleIsOfTheClassOfSheetThree(string name, bool slender)
    {
        var r = new Reference("angles", $"{name}, S275, pushed: EN 1993-1-1 table 5.2 sheet 3", Trust.OwnNumbers);

        r.Exactly("class 4", slender, SectionWalls.Of(Named(name)).Counted(Pushed, 275e6).Class == SectionClass.Four);
    }

    [Fact]
    public void AStemIsHeldAtItsFootOnly()
    {
        // half IPE 300: stem (150 − 10.7 − 15)/7.1 = 17.5, flange (150 − 7.1)/2 − 15 = 56.45 over 10.7
        IReadOnlyList<Wall> walls = SectionWalls.Of(Named("half IPE 300")).All;
        Wall stem = walls.Single(w => w.Name == "stem");

        Assert.All(walls, w => Assert.Equal(WallHold.OneEdge, w.Hold));
        Near.Relative(124.3 / 7.1, stem.C / stem.T, 1e-6);
        Near.Relative(56.45 / 10.7, walls[0].C / walls[0].T, 1e-6);
        Assert.Equal(SectionClass.Four, SectionWalls.Of(Named("half IPE 300")).Counted(Pushed, 355e6).Class);
        // bent so that its tip is pulled it is far from buckling: My above zero pulls what lies above the centroid
        Assert.NotEqual(SectionClass.Four, SectionWalls.Of(Named("half IPE 300")).Counted(Bent, 355e6).Class);
    }

    [Fact]
    public void ASlenderFlangeCountsTheStressAtWhichItIsJustClassThree()
    {
        // c/t = (300 − 6)/2/6 = 24.5: 235 (14/24.5)² MPa
        SectionWalls walls = SectionWalls.Of(Welded(0.3, 0.3, 0.006, 0.006));
        (SectionClass its, double fy) = walls.Counted(Bent, 355e6);

        Assert.Equal(SectionClass.Four, its);
        Near.Relative(235e6 * Math.Pow(14 / 24.5, 2), fy, 1e-9);
        Assert.Equal((SectionClass.One, 355e6), walls.Counted(Pulled, 355e6));
    }

    [Fact]
    public void TurningAShapeTurnsItsWalls()
    {
        ISection upright = Welded(0.4, 0.1, 0.005, 0.02);
        SectionWalls asIs = SectionWalls.Of(upright), turned = SectionWalls.Of(new Turned(upright) { Name = "T", Source = Made });

        Assert.Equal(asIs.Counted(new Actions(-0.1, 0, 0, 0, 1, 0), 275e6), turned.Counted(new Actions(-0.1, 0, 0, 0, 0, 1), 275e6));
        Assert.Equal(SectionClass.Four, asIs.Counted(Pushed, 275e6).Class);
        Assert.Equal(SectionClass.One, asIs.Counted(new Actions(0, 0, 0, 0, 0, 1), 275e6).Class);
    }

    [Theory]
    [InlineData("HEB 160", SectionClass.One)]
    [InlineData("UPN 200", SectionClass.One)]
    [InlineData("flat 200x30", SectionClass.One)]
    [InlineData("round 60", SectionClass.One)]
    public void StockInAPressIsStocky(string name, SectionClass expected) =>
        Assert.Equal(expected, SectionWalls.Of(Named(name)).Counted(Bent, 275e6).Class);

    [Theory]
    [InlineData("L 80x80x8", 275e6, false)]      // 10 of 11.5 ε = 10.6
    [InlineData("L 90x90x7", 235e6, true)]       // 12.9 of 11.5
    [InlineData("L 100x100x8", 355e6, true)]     // 12.5 of 9.4
    public void EvenlyPushedAnglesFollowTheirOwnSheet(string name, double fy, bool thin)
    {
        var angle = (Angle)Named(name);
        double mean = (angle.B + angle.H) / (2 * angle.T), limit = 11.5 * Math.Sqrt(235e6 / fy);
        (SectionClass its, double counted) = SectionWalls.Of(angle).Counted(Pushed, fy);
        Assert.Equal(thin, its == SectionClass.Four);
        new Reference("MB-05", $"EN 1993-1-1 table 5.2 sheet 3, (b+h)/2t of {name}, with 5.5.2(9)", Trust.OwnNumbers)
            .Near("MPa", fy / 1e6 * Math.Min(1, Math.Pow(limit / mean, 2)), counted / 1e6, 1e-9);
    }

    [Theory]
    [InlineData("T 100", SectionClass.One)]
    public void TheStemOfATIsAnOutstand(string name, SectionClass pulled)
    {
        var tee = (Tee)Named(name);
        Assert.Equal(pulled, SectionWalls.Of(tee).Counted(Pulled, 275e6).Class);
        double of = (tee.H - tee.Tf - tee.R1) / tee.Tw, eps = Math.Sqrt(235.0 / 355);
        Assert.Equal(of <= 9 * eps ? SectionClass.One : of <= 10 * eps ? SectionClass.Two : SectionClass.Three, SectionWalls.Of(tee).Counted(Pushed, 355e6).Class);
    }

    [Fact]
    public void AnglesCountTheirWholeLegs()
    {
        var r = new Reference("MB-05", "EN 1993-1-1 table 5.2 sheet 3, angles pushed along: (b + h)/2t up to 11.5 ε, S235", Trust.FromMemory);
        static SectionClass Pressed(double leg) => SectionWalls.Of(new Angle(leg, leg, 0.01, 0) { Name = "L", Source = Made }).Counted(Pushed, 235e6).Class;
        r.Exactly("leg/t 11.4", SectionClass.Three, Pressed(0.114));
        r.Exactly("leg/t 11.6", SectionClass.Four, Pressed(0.116));
        Assert.Equal(SectionClass.One, SectionWalls.Of(Named("L 80x80x10")).Counted(Pulled, 275e6).Class);
    }

    /// <summary>Whoever adds a shape says how its walls buckle, or that it has none: how many are held at both edges, and how many at one.</summary>
    [Theory]
    [InlineData("HEB 160", 1, 4)]
    [InlineData("UPN 200", 1, 2)]
    [InlineData("L 80x80x10", 0, 2)]
    [InlineData("box 200x150x12", 4, 0)]
    [InlineData("SHS 100x100x6", 4, 0)]
    [InlineData("flat 200x30", 0, 0)]
    [InlineData("round 60", 0, 0)]
    [InlineData("half IPE 300", 0, 3)]
    public void WallsOfStockAreKnown(string name, int both, int one)
    {
        IReadOnlyList<Wall> walls = SectionWalls.Of(Named(name)).All;
        Assert.Equal((both, one), (walls.Count(w => w.Hold == WallHold.BothEdges), walls.Count(w => w.Hold == WallHold.OneEdge)));
    }

    [Fact]
    public void NoShapeIsForgotten() => Assert.Equal(
        ["Angle", "Box", "Channel", "CircularHollow", "Drilled", "Flat", "ISection", "Pair", "RectangularHollow", "Round", "Slotted", "Tee", "Turned"],
        typeof(Shape).Assembly.GetTypes().Where(t => t.IsSubclassOf(typeof(Shape))).Select(t => t.Name).Order(StringComparer.Ordinal));

    [Fact]
    public void ThinTubesCountLess()
    {
        var r = new Reference("MB-03", "AISC 360-16 E7-6: F_y (0.038 E/(F_y D/t) + 2/3), D/t 200, F_y 235", Trust.OwnNumbers);
        var tube = new CircularHollow(0.4, 0.002) { Name = "t", Source = Made };
        r.Near("MPa", 0.038 * 210e3 / 200 + 235 * 2.0 / 3, SectionWalls.Of(tube).Counted(Pushed, 235e6).Fy / 1e6, 1e-9);
        Assert.NotNull(SectionWalls.Of(new CircularHollow(0.5, 0.001) { Name = "t", Source = Made }).WhyNot(235e6));
        Assert.Null(SectionWalls.Of(tube).WhyNot(235e6));
    }

    [Fact]
    public void AThickerWallNeverCountsLess() =>
        Gen.Select(Gen.Double[0.003, 0.02], Gen.Double[0.003, 0.02], Gen.Double[-1, 1], Gen.Double[-0.1, 0.1], Gen.Double[-0.02, 0.02], Gen.Double[1, 1.5])
            .Sample((tw, tf, n, my, mz, more) =>
            {
                var a = new Actions(n, 0, 0, 0, my + 1e-3, mz);
                double thin = MemberSection.Yield(a, Welded(0.4, 0.3, tw, tf).Properties, SectionWalls.Of(Welded(0.4, 0.3, tw, tf)).Counted(a, 275e6).Fy, PartialFactors.Recommended)!.Value.SafeTo;
                double thick = MemberSection.Yield(a, Welded(0.4, 0.3, tw, tf * more).Properties, SectionWalls.Of(Welded(0.4, 0.3, tw, tf * more)).Counted(a, 275e6).Fy, PartialFactors.Recommended)!.Value.SafeTo;
                // a stronger flange moves stress between flange and web a little
                Assert.True(thick >= thin * 0.98, $"{thin} {thick}");
            }, iter: 300);

    [Fact]
    public void ThinWebsBuckleInShear()
    {
        // EN 1993-1-5 5.3: χ_w = 0.83/λ̄_w from 72 ε on, h_w/t 124.3: λ̄_w = 124.3/86.4
        var r = new Reference("MB-04", "EN 1993-1-5 5.3, table 5.1: h_w/t_w, S235", Trust.OwnNumbers);
        r.Near("h_w/t 124.3", 0.83 / (124.3 / 86.4), SectionWalls.Of(Welded(0.01 * 124.3 + 0.04, 0.3, 0.01, 0.02)).InShear(235e6), 0.001);
        r.Near("h_w/t 71", 1, SectionWalls.Of(Welded(0.75, 0.3, 0.01, 0.02)).InShear(235e6), 1e-12);
    }

    [Fact]
    public void WorkingHolds()
    {
        foreach (Actions a in (Actions[])[Bent, Pushed, new(-0.2, 0, 0, 0, 1, 0.1), new(0.9, 0, 0, 0, 0.2, -0.1), new(0, 0, 0, 0, 0, 1)])
        {
            foreach (Shape shape in (Shape[])[Welded(0.9, 0.3, 0.004, 0.02), Welded(0.3, 0.3, 0.012, 0.005), new CircularHollow(0.4, 0.002) { Name = "t", Source = Made },
                RectangularHollow.Cold("r", 0.3, 0.2, 0.003)])
            {
                var w = new Working();
                (_, double fy) = SectionWalls.Of(shape).Counted(a, 355e6, w);
                if (fy < 355e6)
                {
                    WorkingCheck.Holds(w);
                    Near.Relative(fy, w.Steps[^1].Si, 1e-12);
                }
            }
        }
    }
}
