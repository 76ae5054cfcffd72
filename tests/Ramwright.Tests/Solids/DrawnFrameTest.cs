using Ramwright.Frame;
using Ramwright.Presses;
using Ramwright.Solids;
using Ramwright.Tests.Frame;

namespace Ramwright.Tests.Solids;

/// <summary>Pins, washers, sleeves and frames by points and bars, as they are drawn; what cannot be drawn is refused with the part named.</summary>
public class DrawnFrameTest
{
    private const string Clasping = """
        kind: closed
        daylight: 800 mm
        width: 500 mm
        die-width: 80 mm
        upright: { section: flat 150x60 }
        crown: { section: 2 x UPN 200, apart: 60 mm }
        bed: { section: 2 x UPN 200, apart: 60 mm }
        """;

    private const string Welded = "{ kind: weld, fit: lapped, weld: { leg: 8 mm } }";

    private const string Rods = """
        kind: tie-rod
        daylight: 500 mm
        rods-across: 500 mm
        die-width: 80 mm
        crown-plate: { thickness: 60 mm, width: 200 mm }
        bed-plate: { thickness: 60 mm, width: 200 mm }
        """;

    private const string Wide = "member: { section: 2 x UPN 200, apart: 100 mm }";

    private const string Gate = """
        kind: free
        daylight: 400 mm
        section: flat 200x40
        cylinder-at: c2
        work-at: b2
        points:
          - { name: b1 }
          - { name: b2, right: 300 mm }
          - { name: b3, right: 600 mm }
          - { name: c1, up: 900 mm }
          - { name: c2, right: 300 mm, up: 900 mm }
          - { name: c3, right: 600 mm, up: 900 mm }
        bars:
          - { name: bed left, from: b1, to: b2 }
          - { name: bed right, from: b2, to: b3 }
          - { name: crown left, from: c1, to: c2 }
          - { name: crown right, from: c2, to: c3 }
          - { name: left leg, from: b1, to: c1, member: { section: flat 120x40 } }
          - { name: right leg, from: b3, to: c3, member: { section: flat 120x40 } }
        """;

    private static PressSolid Solid(string frame) => PressSolid.Of(Described.Rig(frame));

    private static double Opening(PressSolid solid)
    {
        SolidMesh mesh = solid.Mesh(solid.Usual.Over(0.4));
        SolidSolution s = new SolidSolver(mesh).Solve(DieLoads.Of(solid, mesh, SolidCase.Centred));
        return s.Mean(PressSolid.Shares(mesh, solid.Upper)).Z - s.Mean(PressSolid.Shares(mesh, solid.Lower)).Z;
    }

    private static SolidPart Part(PressSolid solid, string name) => solid.Parts.Single(p => p.Name == name);

    /// <summary>The crown pulls its pins up, the uprights hold them down; at the bed it is the other way round.</summary>
    [Theory, InlineData(true), InlineData(false)]
    public void PinsBearOnTheLoadedSideOnly(bool crown)
    {
        string pin = "{ kind: pin, fit: lapped, diameter: 40 mm, steel: C45+QT }";
        PressSolid solid = Solid($"{Clasping}\ncrown-joint: {(crown ? pin : Welded)}\nbed-joint: {(crown ? Welded : pin)}");
        int bar = solid.Parts.ToList().FindIndex(p => p.Name == (crown ? "left crown pin" : "left bed pin"));
        Cuboid box = solid.Parts[bar].Blocks[0];

        Near.Relative(Math.PI / 4 * 0.04 * 0.04, box.Along(0) * box.Along(2), 1e-9, "the round's area");
        Near.Relative(Math.PI / 64 * Math.Pow(0.04, 4), box.Along(0) * Math.Pow(box.Along(2), 3) / 12, 1e-9, "its second moment");
        foreach (Bond bond in solid.Bonds.Where(b => b.A == bar))
        {
            bool upright = solid.Parts[bond.B].Name.Contains("upright", StringComparison.Ordinal);
            Assert.Equal(upright == crown ? box.Z1 : box.Z0, bond.Where.Z0, 9);
            Assert.Equal(0.01, bond.Where.Along(0), 9);
        }

        Assert.Equal(3, solid.Bonds.Count(b => b.A == bar));
        Assert.Contains(solid.Notes, n => n.Words.Contains("a quarter of their diameter", StringComparison.Ordinal));
        Assert.NotNull(solid.Yields[bar]);
    }

    /// <summary>Strips a quarter of the pin wide hold against turning so little that the beams' hinge is found again: what is left is the pins' own give.</summary>
    [Fact]
    public void PinnedCornersHardlyHoldTheCrown()
    {
        string pin = "crown-joint: { kind: pin, fit: lapped, diameter: 40 mm, steel: C45+QT }", bed = $"bed-joint: {Welded}";
        double pinned = Opening(Solid($"{Clasping}\n{pin}\n{bed}")), welded = Opening(Solid($"{Clasping}\ncrown-joint: {Welded}\n{bed}"));
        double beams = FrameResponse.Of(FramePlan.Of(Described.Rig($"{Clasping}\n{pin}\n{bed}"))).DaylightGrowth;

        Assert.True(pinned > 1.15 * welded, $"pinned {pinned * 1e9:F2}, welded {welded * 1e9:F2} nm/N");
        Assert.InRange(pinned / beams, 1, 1.6);
    }

    [Fact]
    public void ABedOnPinsLeavesTheOtherHolesEmpty()
    {
        PressSolid solid = Solid($"{Clasping}\ncrown-joint: {Welded}\nbed-pins: {{ diameter: 40 mm, pitch: 120 mm, count: 3, steel: C45+QT }}");
        IReadOnlyList<Cuboid> cuts = Part(solid, "left upright").Cuts;

        Assert.Equal([0, 0.12, 0.24], cuts.Select(c => Math.Round(c.Middle(2), 6)).Order());
        Assert.Single(solid.Parts, p => p.Name == "right bed pin");
    }

    [Fact]
    public void AWasherStandsBetweenNutAndPlate()
    {
        PressSolid bare = Solid($"{Rods}\nrod: {{ thread: M36, class: 8.8 }}"), with = Solid($"{Rods}\nrod: {{ thread: M36, class: 8.8, washer: {{ outside: 115 mm, thickness: 25 mm }} }}");
        double top(PressSolid s) => Part(s, "left tie rod").Blocks.Max(b => b.Z1);

        Near.Absolute(0.025, top(with) - top(bare), 1e-9, "the nut moves out by the washer");
        Near.Relative(Math.PI / 4 * 0.115 * 0.115, with.Parts.First(p => p.Name.StartsWith("washer", StringComparison.Ordinal)).Blocks[0] is var w ? w.Along(0) * w.Along(1) : 0, 1e-9, "its area");
        Assert.Equal(4, with.Parts.Count(p => p.Name.StartsWith("washer", StringComparison.Ordinal)));
    }

    [Theory, InlineData("preload: 150 kN", true), InlineData("preload: 0 kN", false), InlineData("preload: 20 kN", false)]
    public void SleevesAreThereWhilePreloadLasts(string preload, bool there)
    {
        PressSolid solid = Solid($"{Rods}\nrod: {{ thread: M36, class: 8.8, seat: sleeve, sleeve: {{ outside: 90 mm, inside: 45 mm }}, {preload} }}");

        Assert.Equal(there ? 2 : 0, solid.Parts.Count(p => p.Name.EndsWith("sleeve", StringComparison.Ordinal)));
        Assert.Contains(solid.Notes, n => n.Words.Contains("sleeves", StringComparison.Ordinal));
        if (there)
            Near.Relative(Math.PI / 4 * (0.09 * 0.09 - 0.045 * 0.045), Part(solid, "left sleeve").Blocks.Sum(b => b.Along(0) * b.Along(1)), 1e-9, "its area");
    }

    /// <summary>A tube is drawn as a square one of its area, whatever its bore; where the bore is not too narrow, of its stiffness in bending too.</summary>
    [Theory, InlineData(0.09, true), InlineData(0.05, true), InlineData(0.03, true), InlineData(0.014, false), InlineData(0.002, false)]
    public void ATubeKeepsItsArea(double bore, bool bending)
    {
        IReadOnlyList<Wall> walls = Wall.Of(new Ramwright.Stock.CircularHollow(0.1, (0.1 - bore) / 2, false) { Name = "tube", Source = Ramwright.Stock.SectionText.AsGiven });
        double width(Wall w) => w.Y1 - w.Y0;
        double depth(Wall w) => w.Z1 - w.Z0;

        Near.Relative(Math.PI / 4 * (0.01 - bore * bore), walls.Sum(w => width(w) * depth(w)), 1e-9, "area");
        double I = walls.Sum(w => width(w) * Math.Pow(depth(w), 3) / 12 + width(w) * depth(w) * Math.Pow((w.Z0 + w.Z1) / 2, 2));
        Near.Relative(Math.PI / 64 * (1e-4 - Math.Pow(bore, 4)), I, bending ? 1e-9 : 0.06, "second moment");
    }

    /// <summary>Preload may last on the whole, and yet a sleeve's edge lifts where the crown bends.</summary>
    [Fact]
    public void ASleeveWhoseEdgeLiftsIsNamed()
    {
        double Parted(string preload)
        {
            PressSolid solid = Solid($"{Rods.Replace("thickness: 60", "thickness: 50", StringComparison.Ordinal)}\nrod: {{ thread: M36, class: 8.8, seat: sleeve, sleeve: {{ outside: 90 mm, inside: 45 mm }}, preload: {preload} }}");
            SolidMesh mesh = solid.Mesh(solid.Usual.Over(0.4));
            SolidSolution solution = new SolidSolver(mesh).Solve(DieLoads.Of(solid, mesh, SolidCase.Centred));
            double parted = solid.Shut.Max(s => s.Parted(solution, 98.1e3));
            Assert.Equal(parted > 0.05, ShutFace.Notes(solid, solution, 98.1e3).Any(n => n.Words.Contains("sleeve", StringComparison.Ordinal)));
            return parted;
        }

        Assert.InRange(Parted("60 kN"), 0.1, 0.9);
        Assert.InRange(Parted("350 kN"), 0, 0.05);
    }

    /// <summary>Where the bed runs through, the legs end at its face; bars in a line with one section are one piece.</summary>
    [Fact]
    public void BarsEndAtTheFaceOfWhatRunsThrough()
    {
        PressSolid solid = Solid(Gate);

        Assert.Equal(["bed", "crown", "left leg", "right leg"], solid.Parts.Select(p => p.Name));
        Cuboid Extent(string name) => Part(solid, name).Blocks.Aggregate((a, b) => new Cuboid(Math.Min(a.X0, b.X0), Math.Max(a.X1, b.X1), Math.Min(a.Y0, b.Y0), Math.Max(a.Y1, b.Y1), Math.Min(a.Z0, b.Z0), Math.Max(a.Z1, b.Z1)));
        Assert.Equal(Extent("bed").Z1, Extent("left leg").Z0, 9);
    }

    [Fact]
    public void WhatCannotBeDrawnIsNamed()
    {
        string Fault(string frame) => Assert.Throws<SolidFaultException>(() => Opening(Solid(frame))).Message;
        // the gate itself is drawn whole: it opens about as its beams do
        Near.Relative(FrameResponse.Of(FramePlan.Of(Described.Rig(Gate))).DaylightGrowth, Opening(Solid(Gate)), 0.12, "opening of the gate");

        // a stay from corner to corner
        string stay = Fault(Gate + "\n  - { name: stay, from: b1, to: c2, member: { section: flat 60x10 } }");
        Assert.Contains("stay", stay);
        Assert.Contains("aslant", stay);
        // a leg that stands in the gap between the halves of the crown
        Assert.Contains("bed, left leg and right leg", Fault(Gate.Replace("from: c1, to: c2", $"from: c1, to: c2, {Wide}", StringComparison.Ordinal).Replace("from: c2, to: c3", $"from: c2, to: c3, {Wide}", StringComparison.Ordinal)));
        // faces a tenth of a millimetre apart in a frame of one metre
        string sliver = Fault(Gate.Replace("from: b2, to: b3", "from: b2, to: b3, member: { section: flat 200.2x40 }", StringComparison.Ordinal));
        Assert.Contains("bed right", sliver);
        Assert.Contains("0.1 mm", sliver);
        Assert.Contains("held", Fault(Gate.Replace("name: b1 }", "name: b1, held: yes }", StringComparison.Ordinal).Replace("name: b3,", "name: b3, held: yes,", StringComparison.Ordinal)));
        Assert.Contains("left leg", Fault(Gate.Replace("left leg, from: b1, to: c1", "left leg, from: b1, to: c1, to-joint: { kind: pin, diameter: 40 mm }", StringComparison.Ordinal)));
        // one piece that is said to lap
        Assert.Contains("lap", Fault($"{Clasping.Replace("crown: { section: 2 x UPN 200, apart: 60 mm }", "crown: { section: HEB 160 }", StringComparison.Ordinal)}\ncrown-joint: {Welded}\nbed-joint: {Welded}"));
        // a pin as thick as the upright is wide
        Assert.Contains("pin", Fault($"{Clasping.Replace("flat 150x60", "flat 40x60", StringComparison.Ordinal)}\ncrown-joint: {{ kind: pin, fit: lapped, diameter: 60 mm, steel: C45+QT }}\nbed-joint: {Welded}"));
    }
}
