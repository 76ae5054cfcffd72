using System.Globalization;
using Ramwright.Stock;

namespace Ramwright.Files;

/// <summary>Finds sections by what they are called: a kind, sizes, pieces of a name: <c>angle</c>, <c>100x50 channel</c>, <c>UB 203</c>.</summary>
internal static class SectionSearch
{
    // A nominal 203 is 206.8 deep in the next weight up.
    private const double Near = 0.02;

    /// <summary>The sections that every word fits; none where there is no word.</summary>
    public static IEnumerable<Shape> Find(string words, IEnumerable<Shape> sections)
    {
        string[] each = words.Replace('×', 'x').Replace('*', 'x').Split((char[])[' ', ',', '\t'], StringSplitOptions.RemoveEmptyEntries);
        return each.Length == 0 ? [] : sections.Where(s => Array.TrueForAll(each, word => Fits(word, s)));
    }

    private static bool Fits(string word, Shape section) =>
        Shelf.Key(section.Name).Contains(Shelf.Key(word), StringComparison.Ordinal)
        || (Kind(word) is { } isKind ? isKind(section) : Sizes(word) is { } sizes && HasSizes(section, sizes));

    private static Predicate<Shape>? Kind(string word) => word.ToLowerInvariant().TrimEnd('s') switch
    {
        "channel" => s => s is Channel,
        "angle" => s => s is Angle,
        "tee" => s => s is Tee,
        "beam" or "joist" or "girder" or "column" or "i" or "h" => s => s is ISection,
        "tube" or "pipe" or "hollow" => s => s is CircularHollow or RectangularHollow,
        "square" => s => s is RectangularHollow r && r.H == r.B,
        "rectangular" => s => s is RectangularHollow r && r.H != r.B,
        "round" => s => s is CircularHollow,
        "box" => s => s is RectangularHollow or Box,
        "flat" or "bar" => s => s is Flat,
        _ => null,
    };

    private static double[]? Sizes(string word)
    {
        string[] parts = word.ToLowerInvariant().Split('x');
        var sizes = new double[parts.Length];
        for (int i = 0; i < parts.Length; i++)
        {
            if (!double.TryParse(parts[i].EndsWith("mm", StringComparison.Ordinal) ? parts[i][..^2] : parts[i],
                NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out sizes[i]))
            {
                return null;
            }
        }

        return sizes;
    }

    private static bool HasSizes(Shape section, double[] mm)
    {
        double[] has = section switch
        {
            ISection i => [i.H, i.B],
            Channel c => [c.H, c.B],
            Angle a => [a.H, a.B, a.T],
            Tee t => [t.H, t.B, t.Tw],
            RectangularHollow r => [r.H, r.B, r.T],
            CircularHollow c => [c.D, c.T],
            Flat f => [f.H, f.T],
            Box b => [b.H, b.B, b.Tw],
            _ => [],
        };
        return mm.Length <= has.Length && mm.Zip(has).All(both => Math.Abs(both.First / 1000 / both.Second - 1) <= Near);
    }
}
