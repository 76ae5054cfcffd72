using Ramwright.Files;
using Ramwright.Frame;
using Ramwright.Geometry;
using Ramwright.Stock;
using Ramwright.Strength;
using Ramwright.Workings;

namespace Ramwright.Tests.Strength;

/// <summary>Walls of a section held against its outline: each runs in the middle of a leaf of metal as thick as it says.</summary>
public class WallsInTheMetalTest
{
    private static readonly Citation Made = Citation.Practice("made up");
    private static readonly Actions Pushed = new(-1, 0, 0, 0, 0, 0);

    private static Shape Named(string text)
    {
        if (text.StartsWith("slot ", StringComparison.Ordinal))
            return new Slotted(new ISection(0.3, 0.3, 0.03, 0.02, 0.015) { Name = "I", Source = Made }, double.Parse(text[5..]) / 1e3) { Name = text, Source = Made };
        Assert.True(SectionText.TryRead(text, StockTables.Built, null, out Shape? shape, out _), text);
        return shape;
    }

    [Theory]
    [InlineData("IPE 300", 4, 1)]
    [InlineData("HEB 160", 4, 1)]
    [InlineData("UPN 200", 2, 1)]
    [InlineData("L 150x90x10", 2, 0)]
    [InlineData("half IPE 300", 3, 0)]
    [InlineData("SHS 100x100x6", 0, 4)]
    [InlineData("RHS 120x80x6", 0, 4)]
    [InlineData("box 200x150x12", 0, 4)]
    [InlineData("slot 10", 4, 2)]
    [InlineData("slot 40", 4, 0)]
    public void EveryWallRunsInTheMiddleOfItsMetal(string name, int oneEdge, int bothEdges)
    {
        Shape shape = Named(name);
        IReadOnlyList<Wall> walls = SectionWalls.Of(shape).All;
        Outline outline = shape.CentredOutline;

        Assert.Equal(oneEdge, walls.Count(w => w.Hold == WallHold.OneEdge));
        Assert.Equal(bothEdges, walls.Count(w => w.Hold == WallHold.BothEdges));
        Assert.Equal(walls.Count, walls.Select(w => (Math.Round((w.Y1 + w.Y2) * 1e6), Math.Round((w.Z1 + w.Z2) * 1e6))).Distinct().Count());
        foreach (Wall w in walls)
        {
            double dy = w.Y2 - w.Y1, dz = w.Z2 - w.Z1, length = Math.Sqrt(dy * dy + dz * dz), ny = -dz / length, nz = dy / length;
            // an angle counts the mean of its legs, from the corner
            if (shape is not Angle)
                Near.Relative(w.C, length, 1e-9, w.Name);
            // sloping flanges are as thick as they say in the middle only
            foreach (double at in shape is Channel ? (double[])[0.4, 0.5, 0.6] : [0.12, 0.3, 0.5, 0.7, 0.88])
            {
                double y = w.Y1 + at * dy, z = w.Z1 + at * dz;
                foreach (int side in (int[])[1, -1])
                {
                    double within = shape is Channel ? 0.3 : 0.45, beyond = shape is Channel ? 0.7 : 0.55;
                    Assert.True(Metal(outline, y + side * within * w.T * ny, z + side * within * w.T * nz), $"{w.Name}: no metal at {at}");
                    if (shape is not Angle || at > 0.3)
                        Assert.False(Metal(outline, y + side * beyond * w.T * ny, z + side * beyond * w.T * nz), $"{w.Name}: metal beyond its face at {at}");
                }
            }

            if (w.Hold != WallHold.OneEdge)
                continue;
            // past its free edge the metal ends; before its held edge it goes on, but where a slot as wide as the web parts the flanges
            Assert.False(Metal(outline, w.Y2 + 0.02 * dy, w.Z2 + 0.02 * dz), $"{w.Name}: the free edge");
            Assert.Equal(name != "slot 40", Metal(outline, w.Y1 - 0.02 * dy, w.Z1 - 0.02 * dz));
        }
    }

    [Fact]
    public void AnUnequalAngleCountsTheGreaterOfLegAndMean()
    {
        // 14/11.5 of half of 150 + 90: 146.1; the long leg is more, the short one less
        IReadOnlyList<Wall> walls = SectionWalls.Of(Named("L 150x90x10")).All;
        Assert.Equal([146.087, 150], walls.Select(w => Math.Round(w.C * 1e3, 3)).Order());
    }

    [Fact]
    public void AThinWebCountsTheStressAtWhichItIsJustClassThree()
    {
        // evenly pushed web 360/5 = 72: 235 (42/72)² MPa; bent c/t 360/2.5 = 144: 235 (42/(0.67 − 0.33)/144)², about 124² /144²
        ISection i = new(0.4, 0.1, 0.005, 0.02, 0) { Name = "I", Source = Made }, thin = new(0.4, 0.1, 0.0025, 0.02, 0) { Name = "I", Source = Made };
        var r = new Reference("MB-43", "EN 1993-1-1 5.5.2(9) with table 5.2: c/t 72 pushed, S235", Trust.OwnNumbers);
        r.Near("MPa", 235 * Math.Pow(42 / 72.0, 2), SectionWalls.Of(i).Counted(Pushed, 235e6).Fy / 1e6, 1e-9);
        r.Near("bent, c/t 144, MPa", 235 * Math.Pow(124 / 144.0, 2), SectionWalls.Of(thin).Counted(new Actions(0, 0, 0, 0, 1, 0), 235e6).Fy / 1e6, 0.01);
        Assert.Equal((SectionClass.One, 235e6), SectionWalls.Of(i).Counted(-1 * Pushed, 235e6));
        // bent about z its web, in the middle, feels nothing
        Assert.Equal((SectionClass.One, 235e6), SectionWalls.Of(thin).Counted(new Actions(0, 0, 0, 0, 0, 1), 235e6));
    }

    [Fact]
    public void AChannelBentByItsWebMindsWhichWay()
    {
        // Mz above zero pulls the web, which lies at −y, and pushes the thin flanges' tips
        var c = new Channel(0.2, 0.1, 0.01, 0.004, 0) { Name = "U", Source = Made };
        Assert.Equal(SectionClass.Four, SectionWalls.Of(c).Counted(new Actions(0, 0, 0, 0, 0, 1), 235e6).Class);
        Assert.NotEqual(SectionClass.Four, SectionWalls.Of(c).Counted(new Actions(0, 0, 0, 0, 0, -1), 235e6).Class);
    }

    [Fact]
    public void ABentTubeIsJudgedWhicheverWayItIsBent()
    {
        var tube = new CircularHollow(0.4, 0.002) { Name = "t", Source = Made };
        (SectionClass, double) pushed = SectionWalls.Of(tube).Counted(Pushed, 235e6);
        foreach (Actions a in (Actions[])[new(0, 0, 0, 0, 1, 0), new(0, 0, 0, 0, -1, 0), new(0, 0, 0, 0, 0, 1), new(0, 0, 0, 0, 0, -1), new(0, 0, 0, 0, 1, 1), new(0, 0, 0, 0, -1, 1)])
            Assert.Equal(pushed, SectionWalls.Of(tube).Counted(a, 235e6));
        Assert.Equal("a tube of 500 times its wall across buckles like a tin can and is not rated",
            SectionWalls.Of(new CircularHollow(0.5, 0.001) { Name = "t", Source = Made }).WhyNot(235e6));
        Assert.Throws<ArgumentOutOfRangeException>(() => SectionWalls.Of(new CircularHollow(0.5, 0.001) { Name = "t", Source = Made }).Counted(Pushed, 235e6));
        Assert.Throws<ArgumentNullException>(() => SectionWalls.Of(null!));
        Assert.Throws<ArgumentOutOfRangeException>(() => SectionWalls.Of(tube).Counted(new Actions(0, double.NaN, 0, 0, 0, 0), 235e6));
        Assert.Throws<ArgumentOutOfRangeException>(() => SectionWalls.Of(Named("flat 200x30")).Counted(Pushed, 0));
    }

    [Fact]
    public void ClassesOfInternalPartsBetweenTheTabulatedEnds()
    {
        // α 0.75: 396/(13·0.75 − 1) = 45.26 and 456/8.75 = 52.11; α 0.25: 36/0.25 = 144 and 41.5/0.25 = 166
        var r = new Reference("MB-44", "EN 1993-1-1 table 5.2, internal parts bent and pushed, S235", Trust.OwnNumbers);
        foreach ((double alpha, double psi, double ct, SectionClass expected) in (ReadOnlySpan<(double, double, double, SectionClass)>)[
            (0.75, -0.3, 45.2, SectionClass.One), (0.75, -0.3, 45.3, SectionClass.Two), (0.75, -0.3, 52.1, SectionClass.Two), (0.75, -0.3, 52.2, SectionClass.Three),
            (0.25, -3, 143.9, SectionClass.One), (0.25, -3, 144.1, SectionClass.Two), (0.25, -3, 165.9, SectionClass.Two), (0.25, -3, 166.1, SectionClass.Three),
            (0, -3, 400, SectionClass.One)])
            r.Exactly($"α {alpha}, c/t {ct}", expected, PlateClass.Internal(ct * 0.01, 0.01, 235e6, alpha, psi));
        r.Near("limit at ψ −2: 62·3·√2", 263.04, PlateClass.InternalLimit(-2), 1e-4);
        var hard = new Reference("MB-45", "EN 1993-1-1 table 5.2, S355, ε 0.8136", Trust.OwnNumbers);
        hard.Exactly("α 0.75, c/t 40 of 36.8", SectionClass.Two, PlateClass.Internal(0.40, 0.01, 355e6, 0.75, -0.3));
        // 50, 70 and 90 ε²: 33.1, 46.3, 59.6
        foreach ((double dt, SectionClass expected) in (ReadOnlySpan<(double, SectionClass)>)[
            (33, SectionClass.One), (34, SectionClass.Two), (46, SectionClass.Two), (47, SectionClass.Three), (59, SectionClass.Three), (60, SectionClass.Four)])
            hard.Exactly($"tube, d/t {dt}", expected, PlateClass.Tube(dt * 0.01, 0.01, 355e6));
        Assert.Throws<ArgumentOutOfRangeException>(() => PlateClass.Internal(1, 0.01, 235e6, 1.1, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => PlateClass.Internal(1, 0.01, 235e6, -0.1, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => PlateClass.Internal(1, 0.01, 235e6, 1, 1.1));
        Assert.Throws<ArgumentOutOfRangeException>(() => PlateClass.Internal(1, 0.01, 235e6, 0.2, -3.1));
    }

    [Fact]
    public void WebsStockyInShear()
    {
        // 72 ε: S355 58.6
        var r = new Reference("MB-51", "EN 1993-1-5 5.1(2), η 1: h_w/t_w up to 72 ε", Trust.FromMemory);
        r.Exactly("S235, 71.9", true, WebShear.IsStocky(0.719, 0.01, 235e6));
        r.Exactly("S235, 72.1", false, WebShear.IsStocky(0.721, 0.01, 235e6));
        r.Exactly("S355, 58.5", true, WebShear.IsStocky(0.585, 0.01, 355e6));
        r.Exactly("S355, 58.7", false, WebShear.IsStocky(0.587, 0.01, 355e6));
        // in S355 a web of 80 buckles at 0.83/(80/86.4/0.8136) of its shear
        new Reference("MB-04", "EN 1993-1-5 5.3, table 5.1: h_w/t_w, S355", Trust.OwnNumbers)
            .Near("h_w/t 80", 0.83 / (80 / (86.4 * 0.81362)), SectionWalls.Of(new ISection(0.84, 0.3, 0.01, 0.02, 0) { Name = "I", Source = Made }).InShear(355e6), 1e-4);
    }

    [Fact]
    public void LimitsOfOutstandsBetweenTheTabulatedEnds()
    {
        var r = new Reference("MB-46", "EN 1993-1-5 table 4.2, 21 √k_σ", Trust.OwnNumbers);
        r.Near("tip pushed, root pulled as much: 21 √0.85", 19.361, PlateClass.OutstandLimit(-1, 1), 1e-4);
        r.Near("root pushed, tip half as much: 21 √(0.578/0.84)", 17.420, PlateClass.OutstandLimit(1, 0.5), 1e-4);
        r.Near("root pushed, tip pulled half as much: 21 √8.475", 61.135, PlateClass.OutstandLimit(1, -0.5), 1e-4);
        r.Near("root pushed, tip pulled twice as much: no more than at −1", 102.45, PlateClass.OutstandLimit(1, -2), 1e-4);
        Assert.Equal(double.PositiveInfinity, PlateClass.OutstandLimit(0, -1));
    }

    /// <summary>Even-odd; the arcs of roots and corners taken for their chords, which no wall comes near.</summary>
    private static bool Metal(Outline outline, double y, double z)
    {
        bool inside = false;
        foreach (IReadOnlyList<Corner> loop in outline.Loops)
        {
            for (int i = 0; i < loop.Count; i++)
            {
                Corner a = loop[i], b = loop[(i + 1) % loop.Count];
                if ((a.Z > z) != (b.Z > z) && y < a.Y + (z - a.Z) / (b.Z - a.Z) * (b.Y - a.Y))
                    inside = !inside;
            }
        }

        return inside;
    }
}
