using Ramwright.Files;
using Ramwright.Quantities;
using Ramwright.Stock;

namespace Ramwright.Tests.Stock;

/// <summary>Sections as a person asks for them.</summary>
internal static class Sections
{
    public static Shelf Shelf => StockTables.Built;

    public static Shape Read(string text)
    {
        Assert.True(SectionText.TryRead(text, Shelf, out Shape? shape, out ReadingFault? fault), $"{text}: {fault?.Found}; {fault?.Wanted}");
        return shape;
    }

    public static SectionProperties Of(string text) => Read(text).Properties;
}
