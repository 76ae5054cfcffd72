using Ramwright.Proving;
using Ramwright.Workings;

namespace Ramwright.Tests.Proving;

public class SealTest
{
    [Theory]
    [InlineData("CM-10", 2.83, 4.8, 0.198, 0.720)]
    [InlineData("CM-11", 3.10, 4.8, 0.122, 0.658)]
    public void SqueezeAndFill(string id, double depth, double width, double squeeze, double fill)
    {
        var row = new Reference(id, "ISO 3601-2, by a groove guide's page", Trust.FoundAndRecomputed);
        var w = new Working();
        row.Within("squeeze", squeeze, SealChoice.SqueezeOf(3.53e-3, depth / 1e3, w), 0.001);
        row.Within("fill", fill, SealChoice.FillOf(3.53e-3, depth / 1e3, width / 1e3, w), 0.001);
        WorkingCheck.Holds(w);
    }

    [Theory]
    [InlineData(10, 6.07, 1.78)]
    [InlineData(28, 34.65, 1.78)]
    [InlineData(50, 133.07, 1.78)]
    [InlineData(110, 9.19, 2.62)]
    [InlineData(149, 71.12, 2.62)]
    [InlineData(178, 247.32, 2.62)]
    [InlineData(210, 18.64, 3.53)]
    [InlineData(222, 37.69, 3.53)]
    [InlineData(258, 151.99, 3.53)]
    [InlineData(325, 37.47, 5.33)]
    [InlineData(363, 158.12, 5.33)]
    [InlineData(425, 113.67, 6.99)]
    [InlineData(437, 151.77, 6.99)]
    public void SizesAreThoseOfTheSeries(int code, double inside, double section)
    {
        var row = new Reference("OR-01", "ISO 3601-1, inch series", Trust.FromMemory);
        ORingSize size = ORingSize.All.Single(s => s.Code == code);
        row.Within($"{code}: d_1, mm", inside, size.Inside * 1e3, 0.03);
        row.Within($"{code}: d_2, mm", section, size.Section * 1e3, 0.006);
    }

    [Fact]
    public void CodesStandOnceAndGrowInTheirSection()
    {
        Assert.Equal(ORingSize.All.Count, ORingSize.All.Select(s => s.Code).Distinct().Count());
        foreach (var section in ORingSize.All.GroupBy(s => s.Section))
            Assert.Equal(section.Select(s => s.Inside).Order(), section.OrderBy(s => s.Code).Select(s => s.Inside));
    }

    [Fact]
    public void AGrooveFindsItsRing()
    {
        // a piston of 125 mm bore, groove 118.8 deep for a 3.53 ring: 247 lies stretched by one or two in a hundred
        SealChoice choice = SealChoice.For(0.1188, 0.125, 4.8e-3, SealDuty.Sliding)!;
        Assert.Equal(3.53e-3, choice.Size.Section, 5);
        Assert.InRange(choice.Squeeze, 0.10, 0.15);
        Assert.InRange(choice.Stretch, 0, 0.05);
        Assert.Empty(choice.Remarks);
        // far too deep for any ring
        Assert.Null(SealChoice.For(0.080, 0.125, null, SealDuty.Sliding));
        // one that drags is said
        Assert.NotEmpty(SealChoice.For(0.1193, 0.125, 4.0e-3, SealDuty.Sliding)!.Remarks);
    }
}
