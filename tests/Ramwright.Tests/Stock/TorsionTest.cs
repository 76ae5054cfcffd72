using Ramwright.Stock;

namespace Ramwright.Tests.Stock;

public class TorsionTest
{
    // a/b, c1 of the stress, c2 of the twist
    [Theory]
    [InlineData(1, 0.208, 0.1406)]
    [InlineData(1.2, 0.219, 0.1661)]
    [InlineData(1.5, 0.231, 0.1958)]
    [InlineData(2, 0.246, 0.229)]
    [InlineData(2.5, 0.258, 0.249)]
    [InlineData(3, 0.267, 0.263)]
    [InlineData(4, 0.282, 0.281)]
    [InlineData(5, 0.291, 0.291)]
    [InlineData(10, 0.312, 0.312)]
    public void Rectangle_twists_by_its_printed_coefficients(double ratio, double c1, double c2)
    {
        const double b = 0.02;
        string source = $"rectangle a/b = {ratio}: Timoshenko; Beer and Johnston table 3.1";
        SectionProperties p = new Flat(ratio * b, b) { Name = "flat", Source = SectionText.AsGiven }.Properties;

        new Reference("B-23", source, Trust.FromMemoryAndRecomputed).Near("c1", c1, p.Wt / (ratio * b * b * b), 0.003);
        new Reference("B-24", source, Trust.FromMemoryAndRecomputed).Near("c2", c2, p.It / (ratio * Math.Pow(b, 4)), 0.003);
    }

    [Fact]
    public void Channel_under_a_whole_torque_is_stressed_as_reckoned()
    {
        // T-12: 20 kN on the web's middle, 23.55 mm from the shear centre.
        var row = new Reference("T-12", "UPN 200, τ = T tf/It with the printed It", Trust.OwnNumbers);

        row.Near("τ, MPa", 45.5, 20e3 * 0.02355 / Sections.Of("UPN 200").Wt / 1e6, 0.01);
    }

    // Parallel-flange channels: It as the section tables print it, cm⁴.
    [Theory]
    [InlineData("UPE 160", 5.20)]
    [InlineData("UPE 200", 8.89)]
    [InlineData("UPE 240", 15.1)]
    public void Channels_with_parallel_flanges_twist_as_printed(string name, double It)
    {
        var row = new Reference("It of UPE", $"{name}: DIN 1026-2 section tables", Trust.FromMemory);

        row.Near("It, cm⁴", It, Sections.Of(name).It * 1e8, 0.01);
    }
}
