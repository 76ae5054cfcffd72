using Ramwright.Stock;

namespace Ramwright.Tests.Stock;

public class HollowSectionsTest
{
    // cm; A, Iy, Wely, Wply, iy, Iz, Welz, Wplz, iz, It, Ct
    [Theory]
    [InlineData("S-16", "SHS 100x100x6", "EN 10210-2, open-source section data", Trust.FoundAndRecomputed, 0.005, 22.2, 323, 64.6, 77.6, 3.82, 323, 64.6, 77.6, 3.82, 513, 94.3)]
    [InlineData("S-17", "RHS 120x80x6", "EN 10210-2, open-source section data", Trust.FoundAndRecomputed, 0.005, 22.2, 423, 70.6, 87.3, 4.37, 222, 55.6, 65.5, 3.17, 468, 89.6)]
    [InlineData("S-18", "SHS 100x100x6 cold", "EN 10219-2", Trust.FromMemoryAndRecomputed, 0.005, 21.6, 311, 62.3, 75.1, 3.79, 311, 62.3, 75.1, 3.79, 514, 94.1)]
    [InlineData("S-19", "RHS 120x80x6 cold", "EN 10219-2", Trust.FromMemoryAndRecomputed, 0.005, 21.6, 406, 67.7, 84.3, 4.33, 215, 53.8, 63.6, 3.15, 469, 89.4)]
    [InlineData("S-20", "RHS 60x40x4 cold", "EN 10219-2, hollow-section table page (A, Iy, Wel,y, Wpl,y, iy), rest recomputed", Trust.FoundAndRecomputed, 0.003, 6.95, 30.99, 10.33, 13.16, 2.11, 16.28, 8.14, 9.89, 1.53, 36.7, 13.7)]
    public void Hollow_sections_have_their_printed_properties(
        string id, string name, string source, Trust trust, double tolerance, double A, double Iy, double Wely, double Wply, double radiusY,
        double Iz, double Welz, double Wplz, double radiusZ, double It, double Ct)
    {
        var row = new Reference(id, $"{name}: {source}", trust);
        SectionProperties p = Sections.Of(name);

        row.Near("A, cm²", A, p.A * 1e4, tolerance);
        row.Near("Iy, cm⁴", Iy, p.Iy * 1e8, tolerance);
        row.Near("Wel,y, cm³", Wely, p.Wely * 1e6, tolerance);
        row.Near("Wpl,y, cm³", Wply, p.Wply * 1e6, tolerance);
        row.Near("iy, cm", radiusY, p.RadiusY * 1e2, tolerance);
        row.Near("Iz, cm⁴", Iz, p.Iz * 1e8, tolerance);
        row.Near("Wel,z, cm³", Welz, p.Welz * 1e6, tolerance);
        row.Near("Wpl,z, cm³", Wplz, p.Wplz * 1e6, tolerance);
        row.Near("iz, cm", radiusZ, p.RadiusZ * 1e2, tolerance);
        row.Near("It, cm⁴", It, p.It * 1e8, tolerance);
        row.Near("Ct, cm³", Ct, p.Wt * 1e6, 0.005);
    }

    [Theory]
    [InlineData("HSS 3x3x1/4", 2.44, 3.02)]
    [InlineData("HSS 4x4x1/4", 3.37, 7.80)]
    [InlineData("HSS 4x4x3/8", 4.78, 10.3)]
    [InlineData("HSS 5x5x3/8", 6.18, 21.7)]
    [InlineData("HSS 6x6x3/8", 7.58, 39.5)]
    [InlineData("HSS 6x4x1/4", 4.30, 20.9)]
    [InlineData("HSS 8x4x3/8", 7.58, 58.7)]
    [InlineData("HSS 6.625x0.280", 5.20, 26.4)]
    public void American_hollow_sections_by_their_design_wall(string name, double A, double Ix)
    {
        const double inch = 0.0254;
        var row = new Reference("HSS, " + name, "AISC Manual tables 1-11 to 1-13", Trust.FromMemory);
        SectionProperties p = Sections.Of(name);

        row.Near("A, in²", A, p.A / (inch * inch), 0.01);
        row.Near("Ix, in⁴", Ix, p.Iy / Math.Pow(inch, 4), 0.01);
    }

    [Fact]
    public void A_thin_welded_box_twists_like_the_hollow_section_of_its_middle_lines()
    {
        // With square corners the formula of EN 10210-2 and Bredt's are the same but for the open part's corners.
        SectionProperties box = Sections.Of("box 200x150x4");
        var tube = new RectangularHollow(0.2, 0.15, 0.004, 0, 0) { Name = "sharp", Source = SectionText.AsGiven };

        Near.Relative(tube.Properties.It, box.It, 1e-6);
        Near.Relative(tube.Properties.Wt, box.Wt, 1e-6);
        Near.Relative(tube.Properties.A, box.A, 1e-12);
        Near.Relative(tube.Properties.Iy, box.Iy, 1e-12);
    }
}
