using CsCheck;
using Ramwright.Files;
using Ramwright.Stock;

namespace Ramwright.Tests.Stock;

public class KnownShapesTest
{
    private static Shape Read(Shelf shelf, string text, double? apart = null)
    {
        Assert.True(SectionText.TryRead(text, shelf, apart, out Shape? shape, out _), text);
        return shape;
    }

    [Fact]
    public void WhatWasReadBeforeIsTheSame()
    {
        Shelf shelf = StockTables.Built;

        Assert.Same(Read(shelf, "flat 200x30"), Read(shelf, "flat 200x30"));
        Assert.NotEqual(Read(shelf, "2 x UPN 160", 0.04), Read(shelf, "2 x UPN 160", 0.05));
        Assert.Equal(0.04, ((Pair)Read(shelf, "2 x UPN 160", 0.04)).Apart);
        Assert.Equal(0, ((Pair)Read(shelf, "2 x UPN 160")).Apart);
    }

    [Fact]
    public void AShelfWithOtherSectionsForgets()
    {
        Shape built = Read(StockTables.Built, "2 x HEB 160");
        var narrow = new ISection(0.160, 0.100, 0.008, 0.013, 0.015) { Name = "HEB 160", Source = SectionText.AsGiven };
        Shelf own = StockTables.Built with { Sections = [narrow] };

        Assert.Same(narrow, ((Pair)Read(own, "2 x HEB 160")).Half);
        Assert.Same(built, Read(StockTables.Built, "2 x HEB 160"));
    }

    [Fact]
    public void ASearchThroughManyDoesNotFillTheMemory()
    {
        var known = new KnownShapes();
        for (int i = 1; i <= 5_000; i++)
        {
            var shape = new Flat(i * 1e-3, 0.01) { Name = $"flat {i}x10", Source = SectionText.AsGiven };
            Assert.Same(shape, known.Same(shape));
            Assert.Same(shape, known.Read(shape.Name, null, shape));
        }

        int kept = Enumerable.Range(1, 5_000).Count(i => known.TryRead($"flat {i}x10", null, out _));
        Assert.InRange(kept, 1, 1_024);
    }

    [Fact]
    public void NamesAreTheSameAsTheirKeys() =>
        Gen.Select(Gen.Char[" xX×*aAß\t\u00A0é"].Array[0, 6], Gen.Char[" xX×*aAß\t\u00A0é"].Array[0, 6]).Sample((a, b) =>
            Shelf.SameName(new string(a), new string(b)) == (Shelf.Key(new string(a)) == Shelf.Key(new string(b))), iter: 5_000);
}
