using Ramwright.Stock;
using Ramwright.Workings;

namespace Ramwright.Tests.Stock;

public class SteelTest
{
    private static Steel Named(string name)
    {
        Assert.True(Sections.Shelf.TrySteel(name, out Steel? steel), $"no {name}");
        return steel;
    }

    // ReH at 16, 40, 63, 80, 100, 150, 200, 250 mm, then Rm to 100 and to 150 mm
    [Theory]
    [InlineData("M-01", "S235", 235, 225, 215, 215, 215, 195, 185, 175, 360, 350)]
    [InlineData("M-02", "S275", 275, 265, 255, 245, 235, 225, 215, 205, 410, 400)]
    [InlineData("M-03", "S355", 355, 345, 335, 325, 315, 295, 285, 275, 470, 450)]
    public void Structural_steel_loses_strength_with_thickness(
        string id, string name, double t16, double t40, double t63, double t80, double t100, double t150, double t200, double t250,
        double Rm, double RmThick)
    {
        var row = new Reference(id, $"{name}: EN 10025-2 by a standards-summary page", Trust.Found);
        Steel steel = Named(name);
        double[] edges = [16, 40, 63, 80, 100, 150, 200, 250], expected = [t16, t40, t63, t80, t100, t150, t200, t250];

        for (int i = 0; i < edges.Length; i++)
        {
            row.Exactly($"ReH up to {edges[i]} mm, MPa", expected[i], steel.Fy(edges[i] / 1e3) / 1e6);
            if (i > 0)
                Assert.Equal(expected[i], steel.Fy((edges[i - 1] + 0.01) / 1e3) / 1e6);
        }

        row.Exactly("Rm up to 100 mm, MPa", Rm, steel.Fu(0.1) / 1e6);
        row.Exactly("Rm up to 150 mm, MPa", RmThick, steel.Fu(0.15) / 1e6);
        Assert.True(steel.Covers(0.25));
        Assert.False(steel.Covers(0.251));
    }

    // EN 1993-1-1:2005 table 3.1 for t up to 40 and 80 mm. The shelf keeps to EN 10025-2, which must not say more.
    [Theory]
    [InlineData("S235", 235, 360, 215, 360)]
    [InlineData("S275", 275, 430, 255, 410)]
    [InlineData("S355", 355, 510, 335, 470)]
    public void Structural_steel_is_nowhere_stronger_than_EN_1993_allows(string name, double fy40, double fu40, double fy80, double fu80)
    {
        var row = new Reference("M-04", $"{name}: EN 1993-1-1:2005 table 3.1, as an upper bound", Trust.FromMemory);
        Steel steel = Named(name);

        row.Exactly($"fy at 16 mm is {fy40} MPa", fy40, steel.Fy(0.016) / 1e6);
        Assert.True(steel.Fy(0.040) / 1e6 <= fy40);
        Assert.True(steel.Fu(0.040) / 1e6 <= fu40);
        Assert.True(steel.Fy(0.080) / 1e6 <= fy80);
        Assert.True(steel.Fu(0.080) / 1e6 <= fu80);
    }

    [Theory]
    [InlineData("M-05", "C45+QT", 16, 490, 700)]
    [InlineData("M-05", "C45+QT", 40, 430, 650)]
    [InlineData("M-05", "C45+QT", 100, 370, 630)]
    [InlineData("M-06", "C45+N", 16, 340, 620)]
    [InlineData("M-06", "C45+N", 40, 305, 580)]
    [InlineData("M-06", "C45+N", 100, 305, 580)]
    [InlineData("M-06", "C45+N", 160, 275, 560)]
    [InlineData("M-06", "C45+N", 250, 275, 560)]
    [InlineData("M-07", "42CrMo4+QT", 16, 900, 1100)]
    [InlineData("M-07", "42CrMo4+QT", 40, 750, 1000)]
    [InlineData("M-07", "42CrMo4+QT", 100, 650, 900)]
    [InlineData("M-07", "42CrMo4+QT", 160, 550, 800)]
    [InlineData("M-07", "42CrMo4+QT", 250, 500, 750)]
    public void Bar_steel_loses_strength_with_diameter(string id, string name, double d, double Re, double Rm)
    {
        var row = new Reference(id, $"{name}: steel data sheet after EN 10083", Trust.Found);
        Steel steel = Named(name);

        row.Exactly($"Re at {d} mm, MPa", Re, steel.Fy(d / 1e3) / 1e6);
        row.Exactly($"Rm at {d} mm, MPa", Rm, steel.Fu(d / 1e3) / 1e6);
        Assert.Null(steel.BetaW);
        Assert.NotEmpty(steel.Caution);
    }

    [Fact]
    public void Quenched_C45_is_not_covered_beyond_100_mm() => Assert.False(Named("C45+QT").Covers(0.101));

    [Fact]
    public void Unknown_steel_is_the_lowest_structural_grade_and_says_so()
    {
        Steel unknown = Named("unknown"), s235 = Named("S235");

        foreach (double t in new[] { 0.004, 0.016, 0.03, 0.05, 0.09, 0.12, 0.25 })
        {
            Assert.Equal(s235.Fy(t), unknown.Fy(t));
            Assert.Equal(s235.Fu(t), unknown.Fu(t));
        }

        Assert.Contains("without papers", unknown.Caution, StringComparison.Ordinal);
        Assert.Equal(Standing.Practice, unknown.Source.Standing);
        Assert.DoesNotContain(Sections.Shelf.Steels, s => s.BetaW is not null && s.Fy(0.01) < unknown.Fy(0.01));
    }

    [Theory]
    [InlineData("S275JR", "S275")]
    [InlineData("s355 j2", "S355")]
    [InlineData("43A", "S275")]
    [InlineData("St 52-3", "S355")]
    public void Other_names_have_the_strengths_of_their_grade(string name, string grade)
    {
        Assert.Equal(Named(grade).Bands, Named(name).Bands);
        Assert.Equal(Named(grade).BetaW, Named(name).BetaW);
    }

    [Theory]
    [InlineData("4.6", 20, 240, 400)]
    [InlineData("5.6", 20, 300, 500)]
    [InlineData("8.8", 12, 640, 800)]
    [InlineData("8.8", 24, 640, 800)]
    [InlineData("10.9", 24, 900, 1000)]
    public void Bolt_classes_have_their_nominal_strengths(string name, double d, double fyb, double fub)
    {
        var row = new Reference("M-11", $"class {name}, M{d}: EN 1993-1-8 table 3.1 by a bolt page", Trust.Found);
        Assert.True(Sections.Shelf.TryClass(name, d / 1e3, out PropertyClass? found));

        row.Exactly("fyb, MPa", fyb, found.Fyb / 1e6);
        row.Exactly("fub, MPa", fub, found.Fub / 1e6);
    }

    [Theory]
    [InlineData("spring steel", "weld")]
    [InlineData("leaf spring", "weld")]
    [InlineData("5160", "weld")]
    [InlineData("rail", "preheat")]
    [InlineData("fork tine", "weld")]
    [InlineData("tool steel", "without warning")]
    [InlineData("axle", "fumes")]
    [InlineData("rebar", "weld")]
    public void Found_steel_is_counted_no_stronger_than_unknown_steel_and_has_a_caution_of_its_own(string name, string says)
    {
        Steel found = Named(name), unknown = Named("unknown");

        Assert.Equal(unknown.Bands, found.Bands);
        Assert.Contains(says, found.Caution, StringComparison.Ordinal);
        Assert.Null(found.BetaW);
        Assert.Equal(Standing.Practice, found.Source.Standing);
    }

    [Fact]
    public void Iron_is_weaker_than_unknown_steel_and_cast_iron_is_refused()
    {
        Assert.True(Named("wrought iron").Fy(0.02) < Named("unknown").Fy(0.02));
        Assert.NotEmpty(Named("cast iron").Refused);
        Assert.NotEmpty(Named("ductile iron").Refused);
        Assert.All(Sections.Shelf.Steels.Where(s => !s.Name.Contains("iron", StringComparison.Ordinal)), s => Assert.Empty(s.Refused));
    }
}
