using Ramwright.Geometry;
using Ramwright.Stock;

namespace Ramwright.Tests.Stock;

public class BarsAndHolesTest
{
    private const double Exact = 0.0001;

    [Fact]
    public void Round_bar_has_its_closed_forms()
    {
        var row = new Reference("S-21", "round bar 60 mm, closed forms", Trust.Recomputed);
        SectionProperties p = Sections.Of("round 60");

        row.Near("A, mm²", 2827.43, p.A * 1e6, Exact);
        row.Near("I, mm⁴", 636172.5, p.Iy * 1e12, Exact);
        row.Near("Wel, mm³", 21205.75, p.Wely * 1e9, Exact);
        row.Near("Wpl, mm³", 36000, p.Wply * 1e9, Exact);
        row.Near("Ip, mm⁴", 1272345, p.It * 1e12, Exact);
    }

    [Fact]
    public void Two_flats_on_edge_have_their_closed_forms()
    {
        var row = new Reference("S-22", "two flats 200 x 20 on edge, closed forms", Trust.Recomputed);
        SectionProperties p = Sections.Of("2 x flat 200x20");

        row.Near("I, cm⁴", 2666.67, p.Iy * 1e8, Exact);
        row.Near("Wel, cm³", 266.67, p.Wely * 1e6, Exact);
    }

    [Fact]
    public void Plates_welded_to_flanges_add_by_the_parallel_axis()
    {
        var row = new Reference("S-23", "HEB 160 with plates 100 x 12 on both flanges: 2492 + 2 (1.44 + 12 · 8.6²)", Trust.Recomputed);
        var plate = new Outline([Loops.Rectangle(-0.05, 0.05, 0.08, 0.092)]);
        Outline built = Sections.Read("HEB 160").Outline.With(plate).With(plate.Upended());

        row.Near("I, cm⁴", 4269.9, built.Moments().Iy * 1e8, Exact);
        row.Near("Q of one plate, cm³", 103.2, (plate.FirstMomentAbove(0.08) + 0.08 * plate.Area()) * 1e6, Exact);
    }

    [Fact]
    public void Hole_at_mid_depth_takes_area_but_hardly_stiffness()
    {
        var row = new Reference("S-24", "HEB 160 with a 40 mm hole through the web at mid-depth", Trust.Recomputed);
        SectionProperties p = Drilled.Through(Sections.Read("HEB 160"), HolePlace.Web, 0.040).Properties;

        row.Near("A, cm²", 51.05, p.A * 1e4, 0.0002);
        row.Near("Iy, cm⁴", 2487.7, p.Iy * 1e8, 0.0002);
    }

    [Fact]
    public void Hole_away_from_mid_depth_costs_more()
    {
        var row = new Reference("S-25", "the same hole 40 mm from mid-depth, about the old axis", Trust.Recomputed);
        SectionProperties whole = Sections.Of("HEB 160");
        SectionProperties p = Drilled.Through(Sections.Read("HEB 160"), HolePlace.Web, 0.040, offset: 0.040).Properties;

        double shift = (p.Top - p.Bottom) / 2;
        row.Near("loss of I, %", 2.23, (1 - (p.Iy + p.A * shift * shift) / whole.Iy) * 100, 0.003);
    }

    [Fact]
    public void Two_holes_in_the_tension_flange_shift_the_axis()
    {
        var row = new Reference("L-17", "HEB 160, two 22 mm holes in the tension flange", Trust.Recomputed);
        SectionProperties whole = Sections.Of("HEB 160");
        SectionProperties p = Drilled.Through(Sections.Read("HEB 160"), HolePlace.TensionFlange, 0.022, 2).Properties;
        double shift = p.Bottom - whole.Bottom, aboutOldAxis = p.Iy + p.A * shift * shift;

        row.Near("shift of the axis, mm", 8.66, shift * 1e3, 0.003);
        row.Near("In about the old axis, cm⁴", 2182.2, aboutOldAxis * 1e8, 0.003);
        row.Near("loss of I about the old axis, %", 12.43, (1 - aboutOldAxis / whole.Iy) * 100, 0.003);
        row.Near("In about the new axis, cm⁴", 2145.8, p.Iy * 1e8, 0.003);
        row.Near("W on the tension side, cm³", 242.0, p.Wely * 1e6, 0.003);
    }

    [Fact]
    public void Holes_in_both_flanges_leave_the_axis_where_it_was()
    {
        var row = new Reference("L-18", "HEB 160, two 22 mm holes in each flange", Trust.Recomputed);
        SectionProperties p = Drilled.Through(Sections.Read("HEB 160"), HolePlace.BothFlanges, 0.022, 2).Properties;

        row.Near("In, cm⁴", 1872.4, p.Iy * 1e8, 0.003);
        row.Near("Wn, cm³", 234.0, p.Wely * 1e6, 0.003);
        Near.Absolute(p.Top, p.Bottom, 1e-12);
    }

    [Fact]
    public void Slot_for_a_bar_leaves_the_flange_tips()
    {
        // HEB 160, slot 42: four tips 59 x 13, far beyond the root.
        var row = new Reference("slot", "HEB 160 slotted 42 mm: four rectangles 59 x 13 mm", Trust.Recomputed);
        var heb = (ISection)Sections.Read("HEB 160");
        SectionProperties p = new Slotted(heb, 0.042) { Name = "slotted", Source = heb.Source }.Properties;

        row.Near("A, cm²", 4 * 5.9 * 1.3, p.A * 1e4, 1e-9);
        row.Near("Iy, cm⁴", 4 * (5.9 * Math.Pow(1.3, 3) / 12 + 5.9 * 1.3 * Math.Pow(7.35, 2)), p.Iy * 1e8, 1e-9);
        row.Near("Wply, cm³", 4 * 5.9 * 1.3 * 7.35, p.Wply * 1e6, 1e-9);
    }

    [Theory]
    [InlineData(4)]
    [InlineData(8)]
    [InlineData(12)]
    [InlineData(25)]
    [InlineData(37)]
    [InlineData(60)]
    public void Slot_takes_what_lies_within_its_width(double slot)
    {
        // What is lost is the I between −s/2 and s/2, measured by cutting the whole outline laid on its side.
        var heb = (ISection)Sections.Read("HEB 160");
        Shape cut = new Slotted(heb, slot / 1000) { Name = "slotted", Source = heb.Source };
        Outline side = heb.Outline.QuarterTurned();

        double within = heb.Properties.A - 2 * side.AreaAbove(slot / 2000);

        Near.Relative(heb.Properties.A - within, cut.Properties.A, 1e-9);
        Near.Relative(2 * (side.FirstMomentAbove(slot / 2000) + slot / 2000 * side.AreaAbove(slot / 2000)), cut.Properties.Wplz, 1e-9);
    }

    [Fact]
    public void Holes_that_do_not_fit_are_refused_in_words()
    {
        Shape heb = Sections.Read("HEB 160");

        Assert.Equal("2 holes of 62 mm do not fit in the flange of HEB 160: 61 mm of it is straight on each side of the web",
            Drilled.WhyNot(heb, HolePlace.TensionFlange, 0.062, 2));
        Assert.Equal("a hole of 140 mm does not fit in the 134 mm clear height of the web of HEB 160",
            Drilled.WhyNot(heb, HolePlace.Web, 0.140));
        Assert.Equal("round 60 has no web to drill", Drilled.WhyNot(Sections.Read("round 60"), HolePlace.Web, 0.01));
        Assert.Null(Drilled.WhyNot(heb, HolePlace.Web, 0.040));
        Assert.Throws<ArgumentException>(() => Drilled.Through(heb, HolePlace.Web, 0.140));
        Assert.Throws<ArgumentException>(() => Drilled.Through(heb, HolePlace.Web, double.NaN));
    }

    [Fact]
    public void Hole_in_a_tapered_flange_follows_its_slope()
    {
        // UPN 200 flange between root and toe: mean thickness under the hole times its width.
        var upn = (Channel)Sections.Read("UPN 200");
        SectionProperties p = Drilled.Through(upn, HolePlace.TensionFlange, 0.022).Properties;
        double middle = (upn.Tw + upn.R1 + upn.B - upn.R2) / 2;

        Near.Relative(0.022 * upn.FlangeAt(middle), upn.Properties.A - p.A, 1e-9);
    }

    [Fact]
    public void Hole_through_a_pair_goes_through_both_webs()
    {
        Shape pair = Sections.Read("2 x UPN 200");
        Shape drilled = Drilled.Through(pair, HolePlace.Web, 0.040);

        Near.Relative(2 * 0.040 * 0.0085, pair.Properties.A - drilled.Properties.A, 1e-9);
    }
}
