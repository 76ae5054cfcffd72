using Ramwright.Files;
using Ramwright.Geometry;
using Ramwright.Quantities;
using Ramwright.Stock;

namespace Ramwright.Tests.Geometry;

/// <summary>The faces that a section turns to what is set against it.</summary>
public class SeenFacesTest
{
    private static IReadOnlyList<SeenFace> Of(string section, double? apart = null)
    {
        Assert.True(SectionText.TryRead(section, StockTables.Built, apart, out Shape? shape, out ReadingFault? fault), fault?.Found?.ToString());
        return shape!.CentredOutline.FromBelow();
    }

    private static void Is(IReadOnlyList<SeenFace> seen, params (double From, double To, double Depth)[] expected)
    {
        Assert.Equal(expected.Length, seen.Count);
        for (int i = 0; i < expected.Length; i++)
        {
            Near.Absolute(expected[i].From * 1e-3, seen[i].From, 1e-6);
            Near.Absolute(expected[i].To * 1e-3, seen[i].To, 1e-6);
            Near.Absolute(expected[i].Depth * 1e-3, seen[i].Depth, 1e-6);
        }
    }

    [Fact]
    public void AFlangeIsSeenWhole() => Is(Of("HEB 160"), (-80, 80, 0));

    // flanges 13 thick stand in front of a web 8 thick
    [Fact]
    public void BetweenFlangesTheWebIsSeen()
    {
        IReadOnlyList<SeenFace> seen = [.. Of("HEB 160 turned").Where(f => f.To - f.From > 20e-3 || f.Depth < 1e-3)];

        Is(seen, (-80, -67, 0), (-52, 52, 76), (67, 80, 0));
    }

    [Fact]
    public void HalvesThatTouchShowOneFaceAndHalvesApartShowTwo()
    {
        Is(Of("2 x UPN 200"), (-75, 75, 0));
        Is(Of("2 x UPN 200", 0.1), (-125, -50, 0), (50, 125, 0));
        Is(Of("2 x UPN 200 toes together", 0.05), (-100, -25, 0), (25, 100, 0));
    }

    [Theory]
    [InlineData("SHS 100x100x6", 50)]
    [InlineData("CHS 88.9x5", 44.45)]
    [InlineData("round 60", 30)]
    [InlineData("flat 200x30", 15)]
    [InlineData("box 200x150x12", 75)]
    public void RoundedAndRoundCountAsWideAsTheyAre(string section, double half)
    {
        IReadOnlyList<SeenFace> seen = Of(section);

        Is(seen, (-half, half, 0));
    }
}
