using Ramwright.Files;
using Ramwright.Presses;
using Ramwright.Stock;

namespace Ramwright.Tests.Stock;

public class PortThreadTest
{
    private static PortThread Named(string name)
    {
        Assert.True(StockTables.Built.TryPort(name, out PortThread? port), name);
        return port;
    }

    [Theory]
    [InlineData("NPT 1/8", 27), InlineData("NPT 1/4", 18), InlineData("NPT 3/8", 18), InlineData("NPT 1/2", 14), InlineData("NPT 3/4", 14), InlineData("NPT 1", 11.5)]
    public void NptPitches(string name, double tpi)
    {
        PortThread t = Named(name);
        var row = new Reference("LN-39", "ASME B1.20.1; 1/8 1/4 1/2 in EN 837-1 table 6, 3/4 on a thread page, rest from memory", Trust.Found);
        row.Near(name + ", threads an inch", tpi, 0.0254 / t.P, 1e-4);
        row.Near(name + ", angle, °", 60, t.Facts.Flank, 1e-12);
        row.Near(name + ", taper", 1.0 / 16, t.Facts.Taper, 1e-12);
    }

    [Theory]
    [InlineData("1/8", 28, 9.728), InlineData("1/4", 19, 13.157), InlineData("3/8", 19, 16.662), InlineData("1/2", 14, 20.955), InlineData("3/4", 14, 26.441), InlineData("1", 11, 33.249)]
    public void BspPitchesAndDiameters(string size, double tpi, double d)
    {
        var row = new Reference("LN-40", "ISO 228-1, ISO 7-1; pitches seen on thread pages, diameters but 33.25 from memory", Trust.Found);
        foreach (string name in new[] { "G " + size, "BSPP " + size, "R " + size, "Rc " + size, "BSPT " + size })
        {
            PortThread t = Named(name);
            row.Near(name + ", threads an inch", tpi, 0.0254 / t.P, 1e-4);
            row.Near(name + ", major diameter, mm", d, t.D * 1e3, 1e-6);
            row.Near(name + ", angle, °", 55, t.Facts.Flank, 1e-12);
        }

        Assert.False(Named("G " + size).Facts.Tapers);
        Assert.True(Named("R " + size).Facts.Tapers);
    }

    [Theory]
    [InlineData("ORB 4", 7.0 / 16, 20), InlineData("ORB 6", 9.0 / 16, 18), InlineData("ORB 8", 3.0 / 4, 16), InlineData("ORB 10", 7.0 / 8, 14), InlineData("ORB 12", 17.0 / 16, 12)]
    [InlineData("JIC 4", 7.0 / 16, 20), InlineData("JIC 6", 9.0 / 16, 18), InlineData("JIC 8", 3.0 / 4, 16), InlineData("JIC 10", 7.0 / 8, 14), InlineData("JIC 12", 17.0 / 16, 12)]
    public void UnifiedSizes(string name, double inches, double tpi)
    {
        var row = new Reference("LN-41", "ISO 11926-1, SAE J514", Trust.FromMemory);
        row.Near(name + ", in", inches, Named(name).D / 0.0254, 1e-4);
        row.Near(name + ", threads an inch", tpi, 0.0254 / Named(name).P, 1e-4);
    }

    [Theory]
    [InlineData("port M14x1.5", 14, 1.5), InlineData("ISO 6149 M16x1.5", 16, 1.5), InlineData("port M18x1.5", 18, 1.5), InlineData("port M22x1.5", 22, 1.5), InlineData("port M27x2", 27, 2)]
    public void MetricPorts(string name, double d, double pitch)
    {
        var row = new Reference("LN-41", "ISO 6149-1", Trust.FromMemory);
        row.Near(name + ", mm", d, Named(name).D * 1e3, 1e-9);
        row.Near(name + ", pitch, mm", pitch, Named(name).P * 1e3, 1e-9);
    }

    [Theory]
    [InlineData("NPT 1/2", "R 1/2", PortMatch.MustNot), InlineData("NPT 3/4", "G 3/4", PortMatch.MustNot), InlineData("NPT 1/4", "Rc 1/4", PortMatch.MustNot)]
    [InlineData("R 3/8", "G 3/8", PortMatch.MustNot), InlineData("G 3/8", "Rc 3/8", PortMatch.MustNot)]
    [InlineData("G 3/8", "G 3/8", PortMatch.FitsIf), InlineData("NPT 3/8", "NPT 3/8", PortMatch.FitsIf), InlineData("NPT 3/8", "NPTF 3/8", PortMatch.FitsIf)]
    [InlineData("NPTF 3/8", "NPTF 3/8", PortMatch.Fits), InlineData("JIC 6", "JIC 6", PortMatch.Fits), InlineData("ORB 6", "ORB 6", PortMatch.Fits)]
    [InlineData("JIC 6", "ORB 6", PortMatch.MustNot), InlineData("cone 12L", "port M18x1.5", PortMatch.MustNot), InlineData("cone 12L", "cone 10S", PortMatch.MustNot)]
    [InlineData("cone 12L", "cone 12L", PortMatch.Fits), InlineData("G 1/2", "port M22x1.5", PortMatch.Cannot), InlineData("JIC 6", "port M14x1.5", PortMatch.MustNot)]
    [InlineData("G 1/4", "G 3/8", PortMatch.Cannot), InlineData("JIC 6", "JIC 8", PortMatch.Cannot), InlineData("G 3/4", "port M27x2", PortMatch.MustNot)]
    [InlineData("BSPP 3/8", "G 3/8", PortMatch.FitsIf), InlineData("ORB 10", "port M22x1.5", PortMatch.Cannot)]
    public void Mating(string screwed, string port, PortMatch match)
    {
        PortMating mating = PortMating.Of(Named(screwed), Named(port));
        new Reference("LN-42", "thread pages; what must not be mated", Trust.Found).Exactly($"{screwed} into {port}", match, mating.Match);
        Assert.NotEmpty(mating.Why);
    }

    [Fact]
    public void NoTwoFamiliesEverFit()
    {
        foreach (PortThread a in StockTables.Built.Ports)
        {
            foreach (PortThread b in StockTables.Built.Ports)
            {
                bool pipes = a.Family is PortFamily.Npt or PortFamily.Nptf && b.Family is PortFamily.Npt or PortFamily.Nptf;
                if (a.Family != b.Family && !pipes)
                    Assert.True(PortMating.Of(a, b).Match >= PortMatch.MustNot, $"{a.Name} into {b.Name}");
            }
        }
    }

    [Theory]
    [InlineData(PortFamily.BritishParallel, false), InlineData(PortFamily.UnifiedBoss, false), InlineData(PortFamily.MetricBoss, false), InlineData(PortFamily.Flare37, false)]
    [InlineData(PortFamily.Npt, true), InlineData(PortFamily.BritishTaper, true)]
    public void TapeBelongsOnTapersOnly(PortFamily family, bool tape) =>
        new Reference("LN-43", "thread pages", Trust.Found).Exactly($"sealant on {family}", tape, PortFamilyFacts.Of(family).Seals.Contains(PortSeal.Sealant));

    private static Rig Rig(string inlet) => Resolver.Resolve(PressFile.Read($$"""
        wanted: 10 t
        cylinder: { kind: double-acting, bore: 100 mm }
        pump: { kind: electric, motor: 2.2 kW }
        lines: [ { bore: 9.5 mm, rating: 330 bar, inlet: {{inlet}} } ]
        frame: { kind: closed, daylight: 600 mm, width: 500 mm, section: HEB 160 }
        """, "test.press.yaml", StockTables.Built).Press!, StockTables.Built);

    [Fact]
    public void AMixedPairIsACautionThatNamesBothThreadsAndSeals()
    {
        string caution = Assert.Single(Rig("{ thread: NPT 1/2, port: G 1/2 }").Cautions, c => c.Text().Contains("inlet of hose")).Text();
        Assert.Contains("NPT 1/2 (60°, 14 threads an inch, taper 1 in 16, sealed by sealant on the thread)", caution);
        Assert.Contains("G 1/2 (55°, 14 threads an inch, parallel, sealed by a bonded washer", caution);
    }

    [Fact]
    public void ThreadsThatCannotMeetAreAFaultWithItsPlace()
    {
        var thrown = Assert.Throws<PressFaultsException>(() => Rig("{ thread: G 1/4, port: G 3/8 }"));
        Assert.Equal("lines.0.inlet.port", Assert.Single(thrown.Faults).Path);
    }

    [Fact]
    public void TapeOnAParallelThreadIsTold()
    {
        Assert.Contains(Rig("{ thread: G 3/8, port: G 3/8, seal: sealant }").Cautions, c => c.Text().Contains("does not seal a parallel thread"));
        Assert.Contains(Rig("{ thread: G 3/8, port: G 3/8 }").Cautions, c => c.Text().Contains("does not say which"));
        Assert.DoesNotContain(Rig("{ thread: G 3/8, port: G 3/8, seal: bonded-washer }").Cautions, c => c.Text().Contains("inlet"));
        Assert.DoesNotContain(Rig("{ thread: JIC 6, port: JIC 6 }").Cautions, c => c.Text().Contains("inlet"));
    }

    [Theory]
    [InlineData("EN 853 2SN", 6.4, 100), InlineData("EN 853 2SN", 9.5, 130), InlineData("EN 853 2SN", 12.7, 180), InlineData("EN 853 2SN", 19, 240)]
    [InlineData("EN 857 2SC", 9.5, 90), InlineData("EN 857 2SC", 12.7, 130), InlineData("SAE 100R2AT", 12.7, 178)]
    public void BendRadii(string type, double bore, double mm)
    {
        Assert.True(StockTables.Built.TryHose(type, bore / 1e3, out HoseGrade? hose));
        new Reference("LN-H1", "EN 853 table 5, EN 857 table 5, SAE J517", Trust.FromMemory).Near($"{type} {bore} mm, bend radius, mm", mm, hose.BendRadius!.Value * 1e3, 1e-9);
    }
}
