using CsCheck;
using Ramwright.Files;
using Ramwright.Quantities;
using Ramwright.Stock;

namespace Ramwright.Tests.Stock;

public class SectionTextTest
{
    [Theory]
    [InlineData("HEB 160", "HEB 160")]
    [InlineData("  heb160 ", "HEB 160")]
    [InlineData("HE 160 B", "HEB 160")]
    [InlineData("unp 200", "UPN 200")]
    [InlineData("2 x UPN 200", "2 x UPN 200")]
    [InlineData("2x UPN200", "2 x UPN 200")]
    [InlineData("2×upn200", "2 x UPN 200")]
    [InlineData("2 UPN 200", "2 x UPN 200")]
    [InlineData("2 x UPN 200 toes together", "2 x UPN 200 toes together")]
    [InlineData("2 x UPN 200, back to back", "2 x UPN 200")]
    [InlineData("HEB 160 turned", "HEB 160 turned")]
    [InlineData("2 x IPE 200 turned", "2 x IPE 200 turned")]
    [InlineData("flat 200x40", "flat 200x40")]
    [InlineData("flat bar 200 X 40 mm", "flat 200x40")]
    [InlineData("bar 200×40", "flat 200x40")]
    [InlineData("plate 300*25", "flat 300x25")]
    [InlineData("2 x flat 200x20", "2 x flat 200x20")]
    [InlineData("square 50", "square 50")]
    [InlineData("round 60", "round 60")]
    [InlineData("box 200x150x12", "box 200x150x12")]
    [InlineData("box 200x150x12x10", "box 200x150x12x10")]
    [InlineData("SHS 100x100x6", "SHS 100x100x6")]
    [InlineData("SHS 100x6", "SHS 100x100x6")]
    [InlineData("shs 100x100x6 cold", "SHS 100x100x6 cold")]
    [InlineData("RHS 140x90x7", "RHS 140x90x7")]
    [InlineData("CHS 88.9x5", "CHS 88.9x5")]
    [InlineData("CHS 90x5.5 cold formed", "CHS 90x5.5 cold")]
    [InlineData("L 80x80x8", "L 80x80x8")]
    [InlineData("l80×8", "L 80x80x8")]
    [InlineData("angle 100x65x8", "L 100x65x8")]
    [InlineData("100x65x8 angle iron", "L 100x65x8")]
    [InlineData("2 x L 80x80x8", "2 x L 80x80x8")]
    [InlineData("2 L 80x8 back to back", "2 x L 80x80x8")]
    [InlineData("L 81x61x7", "L 81x61x7")]
    [InlineData("T 100", "T 100")]
    [InlineData("tee 100x100x11", "T 100")]
    [InlineData("T 90x80x10", "T 90x80x10")]
    [InlineData("half IPE 200", "half IPE 200")]
    [InlineData("1/2 HE 160 B", "half HEB 160")]
    [InlineData("2 x half IPE 200", "2 x half IPE 200")]
    [InlineData("½ of an IPE 200", "half IPE 200")]
    [InlineData("PFC 200x90x30", "PFC 200x90x30")]
    [InlineData("PFC 200x90", "PFC 200x90x30")]
    [InlineData("200x90 channel", "PFC 200x90x30")]
    [InlineData("CHS 114.3x6.3", "CHS 114.3x6.3")]
    [InlineData("pipe 114.3x6.3", "CHS 114.3x6.3")]
    [InlineData("100x100x5 box section", "SHS 100x100x5")]
    [InlineData("2\" round bar", "round 2 in")]
    [InlineData("2 in round", "round 2 in")]
    [InlineData("Ø60", "round 60")]
    [InlineData("60 dia.", "round 60")]
    [InlineData("50 sq bar", "square 50")]
    [InlineData("200x40 flat", "flat 200x40")]
    [InlineData("4\" x 3/4\" flat", "flat 4x3/4 in")]
    [InlineData("8 x 1-1/2 in flat bar", "flat 8x1-1/2 in")]
    [InlineData("8\" x 1 1/2\" plate", "flat 8x1-1/2 in")]
    [InlineData("sq 1.25 in", "square 1-1/4 in")]
    [InlineData("box 6 in x 4 in x 1/4 in", "box 6x4x1/4 in")]
    [InlineData("round 0.405 in", "round 0.405 in")]
    [InlineData("2 x flat 6x3/4 in turned", "2 x flat 6x3/4 in turned")]
    [InlineData("flat 8\" x 40 mm", "flat 203.2x40")]
    public void Sections_are_read_as_the_trade_calls_them(string written, string name) =>
        Assert.Equal((name, name), (Sections.Read(written).Name, Sections.Read(name).Name));

    [Fact]
    public void Sizes_mean_what_the_name_says()
    {
        Assert.Equal((0.2, 0.04), Sections.Read("flat 200x40") is Flat f ? (f.H, f.T) : default);
        Assert.Equal(0.06, Assert.IsType<Round>(Sections.Read("round 60")).D);
        var box = Assert.IsType<Box>(Sections.Read("box 200x150x12x10"));
        Assert.Equal((0.2, 0.15, 0.012, 0.010), (box.H, box.B, box.Tw, box.Tf));
        var cold = Assert.IsType<RectangularHollow>(Sections.Read("RHS 120x80x6 cold"));
        Assert.Equal((0.120, 0.080, 0.012, 0.006, true), (cold.H, cold.B, cold.Ro, Math.Round(cold.Ri, 9), cold.ColdFormed));
        Near.Relative(0.02, Assert.IsType<RectangularHollow>(Sections.Read("SHS 150x8 cold")).Ro, 1e-12);
        Near.Relative(0.0375, Assert.IsType<RectangularHollow>(Sections.Read("SHS 200x12.5 cold")).Ro, 1e-12);
    }

    [Theory]
    [InlineData("flat 8\"x1-1/2\"", 0.2032, 0.0381)]
    [InlineData("flat 8 in x 1.5 in", 0.2032, 0.0381)]
    [InlineData("flat 8x1-1/2 in", 0.2032, 0.0381)]
    [InlineData("flat 8\" x 40", 0.2032, 0.040)]
    public void Inches_are_read_where_they_are_marked(string written, double h, double t)
    {
        var flat = Assert.IsType<Flat>(Sections.Read(written));

        Near.Relative(h, flat.H, 1e-12);
        Near.Relative(t, flat.T, 1e-12);
    }

    [Fact]
    public void Pairs_stand_as_far_apart_as_asked()
    {
        Assert.True(SectionText.TryRead("2 x UPN 200", StockTables.Built, 0.060, out Shape? pair, out _));

        Assert.Equal(0.060, Assert.IsType<Pair>(pair).Apart);
        Near.Relative(0.150 + 0.060, pair.Properties.Width, 1e-12);
        Assert.Equal(0.1, ((Pair)pair).WithGap(0.1).Apart);
    }

    [Theory]
    [InlineData("HEB 165", "no section is called \"HEB 165\"", "HEB 160", 0, 7)]
    [InlineData("2 x UPM 200", "no section is called \"UPM 200\"", "UPN 200", 4, 7)]
    [InlineData("flat 200", "\"flat 200\" has one size that does not fit", "flat 200x40", 0, 8)]
    [InlineData("flat 200x40x3", "\"flat 200x40x3\" has 3 sizes that do not fit", "flat 200x40", 0, 13)]
    [InlineData("flat 200xforty", "\"forty\" is not a size", "200x40", 9, 5)]
    [InlineData("flat 200x4000000", "\"4000000\" is 4000000 mm", "3 m", 9, 7)]
    [InlineData("flat 0x40", "\"0\" is 0 mm", "3 m", 5, 1)]
    [InlineData("SHS 100x90x6", "\"SHS 100x90x6\" has 3 sizes that do not fit", "SHS 100x100x6", 0, 12)]
    [InlineData("SHS 20x12", "these sizes do not make a section: T is 12 mm; it must be more than 0 mm and less than 10 mm", "SHS 100x100x6", 0, 9)]
    [InlineData("HEB 160 toes together", "one HEB 160 has no second to face", "a pair: 2 x HEB 160", 0, 21)]
    [InlineData("2 x IPE 200 toes together", "IPE 200 has no toes", "channels", 0, 25)]
    [InlineData("round", "\"round\" has no size", "round 60", 0, 5)]
    [InlineData("2 x flat", "\"flat\" has no size", "flat 200x40", 4, 4)]
    [InlineData("UB 203x133", "\"UB 203x133\" comes in 2 sizes", "nearest: UB 203x133x25, UB 203x133x30", 0, 10)]
    [InlineData("100x50 channel", "\"100x50 channel\" may be any of 2 channels", "nearest: UPN 100, PFC 100x50x10", 0, 14)]
    [InlineData("101x51 channel", "no channel of this depth and width is in stock: \"101x51 channel\"", "UPN 100", 0, 14)]
    [InlineData("half UPN 200", "half of UPN 200 is no T", "half IPE 200", 0, 12)]
    [InlineData("L 80x80", "these sizes do not make a section: T is 80 mm; it must be more than 0 mm and less than 80 mm", "L 80x80x8", 0, 7)]
    [InlineData("2 x ", "no section is called \"2 x\"", "nearest", 0, 3)]
    [InlineData("", "nothing is named", "HEB 160", 0, 0)]
    public void Faults_say_what_is_wrong_and_where(string written, string found, string wanted, int offset, int length)
    {
        Assert.False(SectionText.TryRead(written, StockTables.Built, out Shape? shape, out ReadingFault? fault));

        Assert.Null(shape);
        Assert.Equal(found, fault.Found);
        Assert.Contains(wanted, fault.Wanted, StringComparison.Ordinal);
        Assert.Equal((offset, length), (fault.Offset, fault.Length));
    }

    [Fact]
    public void Gap_is_for_pairs_only()
    {
        Assert.False(SectionText.TryRead("HEB 160", StockTables.Built, 0.06, out _, out ReadingFault? one));
        Assert.False(SectionText.TryRead("2 x HEB 160", StockTables.Built, -0.06, out _, out ReadingFault? below));
        Assert.False(SectionText.TryRead("2 x HEB 160", StockTables.Built, double.NaN, out _, out _));

        Assert.Equal("one HEB 160 has no gap", one.Found);
        Assert.Equal("the gap of the pair is less than nothing", below.Found);
    }

    [Theory]
    [InlineData("flat 8x1", "flat 8x1 in, or flat 8x1 mm")]
    [InlineData("box 8x4x1/4", "box 8x4x1/4 in, or box 8x4x1/4 mm")]
    [InlineData("flat 4x1/2", "flat 4x1/2 in, or flat 4x1/2 mm")]
    [InlineData("L 3x3x1/4", "angle 3x3x1/4 in, or angle 3x3x1/4 mm")]
    public void Sizes_that_may_be_inches_are_asked_about(string text, string wanted)
    {
        Assert.False(SectionText.TryRead(text, StockTables.Built, out _, out ReadingFault? fault));
        Assert.Contains("may be inches or millimetres", fault.Found, StringComparison.Ordinal);
        Assert.Equal("with its unit: " + wanted, fault.Wanted);
        Assert.True(SectionText.TryRead(text + " in", StockTables.Built, out _, out _));
    }

    [Fact]
    public void Any_text_is_read_or_refused_and_never_throws()
    {
        string[] pieces = ["2", " x ", "x", "UPN", "HEB", " ", "flat", "box", "SHS", "200", "40", "1/0", "1-1/2\"", "L", "half ", " round", "T", "in", "cold", " turned", "-", "\"", "9e9", "é", " toes together", "."];
        Shelf few = StockTables.Built with { Sections = [.. StockTables.Built.Sections.Where((_, i) => i % 40 == 0)] };
        Gen.Int[0, pieces.Length - 1].Select(i => pieces[i]).Array[0, 8].Select(string.Concat).Sample(text =>
        {
            bool read = SectionText.TryRead(text, few, out Shape? shape, out ReadingFault? fault);
            if (!read)
            {
                Assert.NotNull(fault);
                Assert.InRange(fault.Offset, 0, text.Length);
                Assert.InRange(fault.Offset + fault.Length, 0, Math.Max(text.Length, fault.Offset + 1));
            }
            else
            {
                Assert.True(shape!.Properties.A > 0 && double.IsFinite(shape.Properties.Wply));
            }
        }, iter: 3000);
    }
}
