using Ramwright.Stock;

namespace Ramwright.Tests.Stock;

public class CurvesAndShearTest
{
    [Theory]
    [InlineData("IPE 200", BucklingCurve.A, BucklingCurve.B)]
    [InlineData("HEB 160", BucklingCurve.B, BucklingCurve.C)]
    [InlineData("HEB 400", BucklingCurve.A, BucklingCurve.B)]
    [InlineData("HEB 160 turned", BucklingCurve.C, BucklingCurve.B)]
    [InlineData("UPN 200", BucklingCurve.C, BucklingCurve.C)]
    [InlineData("SHS 100x100x6", BucklingCurve.A, BucklingCurve.A)]
    [InlineData("SHS 100x100x6 cold", BucklingCurve.C, BucklingCurve.C)]
    [InlineData("CHS 88.9x5", BucklingCurve.A, BucklingCurve.A)]
    [InlineData("flat 200x40", BucklingCurve.C, BucklingCurve.C)]
    [InlineData("round 60", BucklingCurve.C, BucklingCurve.C)]
    [InlineData("box 500x500x10", BucklingCurve.B, BucklingCurve.B)]
    [InlineData("box 200x150x12", BucklingCurve.C, BucklingCurve.C)]
    public void Buckling_curves_are_chosen_by_shape(string name, BucklingCurve y, BucklingCurve z)
    {
        var row = new Reference("curves", $"{name}: EN 1993-1-1:2005 table 6.2", Trust.FromMemory);
        Shape shape = Sections.Read(name);

        row.Exactly("curve y-y", y, shape.CurveY);
        row.Exactly("curve z-z", z, shape.CurveZ);
    }

    // mm²: L-26 gives Vpl = Av fy/√3 for the shear areas.
    [Theory]
    [InlineData("HEB 160", 235, 238.7)]
    [InlineData("IPE 200", 275, 222.3)]
    [InlineData("HEB 220", 275, 443.3)]
    [InlineData("IPE 240", 275, 303.9)]
    public void Web_carries_its_plastic_shear(string name, double fy, double Vpl)
    {
        var row = new Reference("L-26", $"{name}: EN 1993-1-1 6.2.6", Trust.OwnNumbers);

        row.Near("Vpl, kN", Vpl, Sections.Of(name).Avz * fy / Math.Sqrt(3) * 1e3, 0.003);
    }

    [Fact]
    public void Solid_bar_is_held_to_its_greatest_shear_stress()
    {
        var row = new Reference("B-08", "flat 200 x 40, V = 100 kN: τmax = 3/2 V/A", Trust.FromMemoryAndRecomputed);

        row.Near("τmax, MPa", 18.75, 100e3 / Sections.Of("flat 200x40").Avz / 1e6, 1e-9);
    }

    [Fact]
    public void Hollow_sections_share_shear_by_their_sides()
    {
        SectionProperties rhs = Sections.Of("RHS 120x80x6"), chs = Sections.Of("CHS 88.9x5"), pair = Sections.Of("2 x UPN 200"), upn = Sections.Of("UPN 200");

        Near.Relative(rhs.A * 120 / 200, rhs.Avz, 1e-12);
        Near.Relative(rhs.A * 80 / 200, rhs.Avy, 1e-12);
        Near.Relative(2 * chs.A / Math.PI, chs.Avz, 1e-9);
        Near.Relative(upn.A - 2 * 0.075 * 0.0115 + (0.0085 + 0.0115) * 0.0115, upn.Avz, 1e-12);
        Near.Relative(2 * upn.Avz, pair.Avz, 1e-12);
    }

    [Fact]
    public void Shear_deflects_a_tube_between_the_thin_and_the_solid()
    {
        SectionProperties thin = Sections.Of("CHS 300x1"), thick = Sections.Of("CHS 60x29");

        Near.Relative(2 * 1.3 / (4 + 3 * 0.3), thin.Asz / thin.A, 0.001);         // Cowper: thin round tube
        Near.Relative(6 * 1.3 / (7 + 6 * 0.3), thick.Asz / thick.A, 0.01);        // Cowper: solid round bar
    }
}
