using Ramwright.Stock;

namespace Ramwright.Tests.Stock;

public class RolledSectionsTest
{
    private const string Data = "open-source section data after EN 10365";
    private const string Channels = "channel table page after DIN 1026-1";
    private const double Fine = 0.003, Torsion = 0.05, Warping = 0.03;

    // cm; A, Iy, Wely, Wply, iy, Iz, Welz, Wplz, iz, It, Iw (10³ cm⁶), Avz
    [Theory]
    [InlineData("S-01", "IPE 160", 20.09, 869.3, 108.7, 123.9, 6.58, 68.31, 16.66, 26.10, 1.84, 3.60, 3.96, 9.66)]
    [InlineData("S-02", "IPE 200", 28.48, 1943, 194.3, 220.6, 8.26, 142.4, 28.47, 44.61, 2.24, 6.98, 12.99, 14.00)]
    [InlineData("S-03", "IPE 240", 39.12, 3892, 324.3, 366.6, 9.97, 283.6, 47.27, 73.92, 2.69, 12.88, 37.39, 19.14)]
    [InlineData("S-04", "HEA 160", 38.77, 1673, 220.1, 245.1, 6.57, 615.6, 76.95, 117.6, 3.98, 12.19, 31.41, 13.21)]
    [InlineData("S-05", "HEA 200", 53.83, 3692, 388.6, 429.5, 8.28, 1336, 133.6, 203.8, 4.98, 20.98, 108.0, 18.08)]
    [InlineData("S-06", "HEB 160", 54.25, 2492, 311.5, 354.0, 6.78, 889.2, 111.2, 170.0, 4.05, 31.24, 47.94, 17.59)]
    [InlineData("S-07", "HEB 200", 78.08, 5696, 569.6, 642.5, 8.54, 2003, 200.3, 305.8, 5.07, 59.28, 171.1, 24.83)]
    [InlineData("S-08", "HEB 220", 91.04, 8091, 735.5, 827.0, 9.43, 2843, 258.5, 393.9, 5.59, 76.57, 295.4, 27.92)]
    [InlineData("S-09", "UB 203x133x25", 32.0, 2340, 230, 258, 8.56, 308, 46.2, 70.9, 3.10, 5.96, 29.3, 12.8)]
    [InlineData("S-10", "UC 152x152x30", 38.3, 1748, 222, 248, 6.76, 560, 73.3, 111.6, 3.83, 10.5, 30.8, 11.56)]
    public void I_sections_have_their_printed_properties(
        string id, string name, double A, double Iy, double Wely, double Wply, double radiusY,
        double Iz, double Welz, double Wplz, double radiusZ, double It, double Iw, double Avz)
    {
        var row = new Reference(id, $"{name}: {Data}", Trust.FoundAndRecomputed);
        SectionProperties p = Sections.Of(name);

        row.Near("A, cm²", A, p.A * 1e4, Fine);
        row.Near("Iy, cm⁴", Iy, p.Iy * 1e8, Fine);
        row.Near("Wel,y, cm³", Wely, p.Wely * 1e6, Fine);
        row.Near("Wpl,y, cm³", Wply, p.Wply * 1e6, Fine);
        row.Near("iy, cm", radiusY, p.RadiusY * 1e2, Fine);
        row.Near("Iz, cm⁴", Iz, p.Iz * 1e8, Fine);
        row.Near("Wel,z, cm³", Welz, p.Welz * 1e6, Fine);
        row.Near("Wpl,z, cm³", Wplz, p.Wplz * 1e6, Fine);
        row.Near("iz, cm", radiusZ, p.RadiusZ * 1e2, Fine);
        row.Near("It, cm⁴", It, p.It * 1e8, Torsion);
        row.Near("Iw, 10³ cm⁶", Iw, p.Iw * 1e9, Warping);
        row.Near("Avz, cm²", Avz, p.Avz * 1e4, Fine);
    }

    [Fact]
    public void Wide_flange_W8x31_has_its_printed_properties()
    {
        var row = new Reference("S-11", "W8x31: open-source section data after AISC Manual table 1-1", Trust.FoundAndRecomputed);
        var memory = new Reference("S-11", "W8x31: AISC Manual table 1-1", Trust.FromMemoryAndRecomputed);
        SectionProperties p = Sections.Of("W8x31");
        const double inch = 0.0254, Fair = 0.005;

        memory.Near("A, in²", 9.13, p.A / Math.Pow(inch, 2), Fair);
        row.Near("Ix, in⁴", 110, p.Iy / Math.Pow(inch, 4), Fair);
        row.Near("Sx, in³", 27.5, p.Wely / Math.Pow(inch, 3), Fair);
        row.Near("Zx, in³", 30.4, p.Wply / Math.Pow(inch, 3), Fair);
        row.Near("rx, in", 3.47, p.RadiusY / inch, Fair);
        memory.Near("Iy, in⁴", 37.1, p.Iz / Math.Pow(inch, 4), Fair);
        memory.Near("ry, in", 2.02, p.RadiusZ / inch, Fair);
        memory.Near("J, in⁴", 0.536, p.It / Math.Pow(inch, 4), 0.03);
    }

    // cm; A, Iy, Wely, Wply, iy, Iz, Welz, Wplz, iz, ys, ym, It
    [Theory]
    [InlineData("S-12", "UPN 160", 24.0, 925, 116, 138, 6.21, 85.3, 18.3, 35.2, 1.89, 1.84, 3.56, 7.39)]
    [InlineData("S-13", "UPN 200", 32.2, 1910, 191, 228, 7.70, 148, 27.0, 51.8, 2.14, 2.01, 3.94, 11.9)]
    [InlineData("S-14", "UPN 240", 42.3, 3600, 300, 358, 9.22, 248, 39.6, 75.7, 2.42, 2.23, 4.39, 19.7)]
    public void Channels_have_their_printed_properties(
        string id, string name, double A, double Iy, double Wely, double Wply, double radiusY,
        double Iz, double Welz, double Wplz, double radiusZ, double ys, double ym, double It)
    {
        var row = new Reference(id, $"{name}: {Channels}", Trust.FoundAndRecomputed);
        var memory = new Reference(id, $"{name}: DIN 1026-1", Trust.FromMemory);
        SectionProperties p = Sections.Of(name);
        const double Fair = 0.006;

        row.Near("A, cm²", A, p.A * 1e4, Fair);
        row.Near("Iy, cm⁴", Iy, p.Iy * 1e8, Fair);
        row.Near("Wel,y, cm³", Wely, p.Wely * 1e6, Fair);
        row.Near("Wpl,y, cm³", Wply, p.Wply * 1e6, Fair);
        row.Near("iy, cm", radiusY, p.RadiusY * 1e2, Fair);
        row.Near("Iz, cm⁴", Iz, p.Iz * 1e8, Fair);
        row.Near("Wel,z, cm³", Welz, p.Welz * 1e6, Fair);
        row.Near("Wpl,z, cm³", Wplz, p.Wplz * 1e6, Fair);
        row.Near("iz, cm", radiusZ, p.RadiusZ * 1e2, Fair);
        row.Near("ys, cm", ys, p.Left * 1e2, Fair);
        memory.Near("ym, cm", ym, -p.ShearCentreY * 1e2, 0.03);
        memory.Near("It, cm⁴", It, p.It * 1e8, Torsion);
    }

    [Theory]
    [InlineData("UPN 160", 20.95, 7.5)]
    [InlineData("UPN 200", 23.55, 8.5)]
    [InlineData("UPN 240", 26.35, 9.5)]
    public void Shear_centre_of_a_channel_lies_outside_its_web(string name, double e, double tw)
    {
        var row = new Reference("S-15", $"{name}: DIN 1026-1, ym − ys + tw/2", Trust.FromMemoryAndRecomputed);
        SectionProperties p = Sections.Of(name);

        double fromWeb = -p.ShearCentreY - p.Left + tw / 2 / 1e3;

        row.Near("shear centre from the web's middle, mm", e, fromWeb * 1e3, 0.03);
    }

    [Fact]
    public void Leaving_the_root_fillets_out_would_show()
    {
        var bare = new ISection(0.160, 0.160, 0.008, 0.013, 0) { Name = "HEB 160 without fillets", Source = SectionText.AsGiven };

        Near.Relative(52.32, bare.Properties.A * 1e4, 1e-4);
    }
}
