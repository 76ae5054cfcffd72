using Ramwright.Files;
using Ramwright.Stock;

namespace Ramwright.Tests.Stock;

public class ShelfTest
{
    private static readonly Shelf Shelf = StockTables.Built;

    // bore mm, bar
    [Theory]
    [InlineData("LN-02", "EN 853 2SN", 6.4, 400)]
    [InlineData("LN-02", "EN 853 2SN", 8, 350)]
    [InlineData("LN-02", "EN 853 2SN", 9.525, 330)]
    [InlineData("LN-02", "EN 853 2SN", 12.5, 275)]
    [InlineData("LN-02", "EN 853 2SN", 16, 250)]
    [InlineData("LN-02", "EN 853 2SN", 19, 215)]
    public void Hoses_are_found_by_type_and_bore(string id, string type, double bore, double bar)
    {
        var row = new Reference(id, $"{type}, {bore} mm: EN 853:2015 table 4", Trust.FromMemoryAndRecomputed);
        Assert.True(Shelf.TryHose(type, bore / 1e3, out HoseGrade? hose));

        row.Near("working pressure, bar", bar, hose.WorkingPressure / 1e5, 1e-9);
    }

    [Fact]
    public void No_hose_of_a_type_stands_in_for_another()
    {
        Assert.False(Shelf.TryHose("EN 853 2SN", 0.0110, out _));
        Assert.False(Shelf.TryHose("EN 853 2ST", 0.0095, out _));
        Assert.DoesNotContain(Shelf.Hoses, h => h.Type.StartsWith("EN 853", StringComparison.Ordinal) && h.WorkingPressure > 500e5);
    }

    [Theory]
    [InlineData("VG 46", 46, 6.8)]
    [InlineData("ISO VG 32", 32, 5.4)]
    [InlineData("vg46", 46, 6.8)]
    public void Oils_are_found_by_grade(string name, double nu40, double nu100)
    {
        Assert.True(Shelf.TryOil(name, out OilGrade? oil));

        Near.Relative(nu40, oil.Nu40 * 1e6, 1e-9);
        Near.Relative(nu100, oil.Nu100 * 1e6, 1e-9);
    }

    [Theory]
    [InlineData("HEB160")]
    [InlineData("heb 160")]
    [InlineData("W8×31")]
    [InlineData("SHS 100 x 100 x 6")]
    public void Sections_are_found_whatever_the_case_and_spaces(string name) => Assert.True(Shelf.TrySection(name, out _));

    [Fact]
    public void Nearest_names_come_first()
    {
        Assert.Equal("S275JR", Shelf.NearestSteels("S275JRR")[0]);
        Assert.Equal("HEB 160", Shelf.NearestSections("HEB 165")[0]);
        Assert.Equal("IPE 200", Shelf.NearestSections("IEP 200")[0]);
        Assert.Equal("8.8", Shelf.NearestClasses("8-8")[0]);
        Assert.Equal("M24", Shelf.NearestThreads("M25")[0]);
        Assert.Equal("EN 853 2SN", Shelf.NearestHoses("EN853 2SM")[0]);
        Assert.Equal("VG 46", Shelf.NearestOils("VG 45")[0]);
        Assert.Equal(5, Shelf.NearestSections("HEB", 5).Count);
    }

    [Fact]
    public void Shelf_with_other_sections_finds_those()
    {
        Assert.True(Shelf.TrySection("HEB 160", out Shape? heb));
        Shelf other = Shelf with { Sections = [new Flat(0.2, 0.04) { Name = "rail web", Source = SectionText.AsGiven }] };

        Assert.NotNull(heb);
        Assert.True(other.TrySection("Rail Web", out _));
        Assert.False(other.TrySection("HEB 160", out _));
    }

    [Fact]
    public void Every_name_on_the_shelf_reads_back_as_itself()
    {
        foreach (Shape section in Shelf.Sections)
            Assert.Same(section, Sections.Read(section.Name));
        foreach (Steel steel in Shelf.Steels)
            Assert.True(Shelf.TrySteel(steel.Name, out Steel? found) && found.Bands == steel.Bands, steel.Name);
        Assert.True(Shelf.Sections.Count > 600);
    }

    [Fact]
    public void Copies_with_another_name_are_not_the_same_but_have_the_same_properties()
    {
        Shape heb = Sections.Read("HEB 160");
        SectionProperties before = heb.Properties;
        Shape renamed = heb with { Name = "column" };

        Assert.NotEqual(heb, renamed);
        Assert.Equal(before, renamed.Properties);
        Assert.Equal(new Flat(0.2, 0.04) { Name = "a", Source = SectionText.AsGiven }, new Flat(0.2, 0.04) { Name = "a", Source = SectionText.AsGiven });
        Assert.Equal("HEB 160", heb.ToString());
    }

    [Fact]
    public void Properties_may_be_asked_for_from_many_threads()
    {
        Shape[] fresh = [.. Enumerable.Range(1, 50).Select(i => new ISection(0.2, 0.2, 0.009, 0.015 + i * 1e-5, 0.018)
        {
            Name = $"I {i}",
            Source = SectionText.AsGiven,
        })];

        double[] many = new double[50];
        Parallel.For(0, 2000, i => many[i % 50] = fresh[i % 50].Properties.Iy);

        for (int i = 0; i < 50; i++)
            Assert.Equal(fresh[i].Properties.Iy, many[i]);
    }
}
