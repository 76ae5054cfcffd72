using Ramwright.Quantities;
using Ramwright.Stock;

namespace Ramwright.Ladders;

/// <summary>The next sections up: of the same series from stock, or bar of the next usual sizes.</summary>
internal static class LiftSections
{
    private const int Most = 9;
    // each step adds about a tenth of steel, so that nine more than double it
    private const double Step = 1.1;

    // usual widths and thicknesses of flat bar, and diameters of round, m; common practice
    private static readonly double[] Heights =
        [.. new[] { 30, 40, 50, 60, 70, 80, 90, 100, 110, 120, 130, 140, 150, 160, 180, 200, 220, 250, 300, 350, 400 }.Select(mm => mm / 1e3)];
    private static readonly double[] Thicknesses = [.. new[] { 5, 6, 8, 10, 12, 15, 20, 25, 30, 35, 40, 50, 60, 70, 80 }.Select(mm => mm / 1e3)];

    private const double Inch = 0.0254;
    private static readonly double[] HeightsInch =
        [.. new[] { 1, 1.25, 1.5, 1.75, 2, 2.25, 2.5, 2.75, 3, 3.5, 4, 4.5, 5, 6, 7, 8, 9, 10, 12, 14, 16 }.Select(inch => inch * Inch)];
    private static readonly double[] ThicknessesInch =
        [.. new[] { 0.1875, 0.25, 0.3125, 0.375, 0.5, 0.625, 0.75, 0.875, 1, 1.25, 1.5, 1.75, 2, 2.5, 3 }.Select(inch => inch * Inch)];

    /// <summary>Names of stronger sections than the one named, the lighter first; none where the name cannot be read.</summary>
    public static IReadOnlyList<string> Above(string name, Shelf shelf)
    {
        if (!SectionText.TryRead(name, shelf, out Shape? shape, out ReadingFault? _))
            return [];
        string turned = "", pair = "", facing = "";
        if (shape is Turned t)
            (shape, turned) = (t.Of, " turned");
        if (shape is Pair p)
            (shape, pair, facing) = (p.Half, "2 x ", p.ToesTogether ? " toes together" : "");
        // what is named in inches is sold in inches
        bool inches = shape.Name.EndsWith(" in", StringComparison.Ordinal);
        (double[] heights, double[] thicknesses) = inches ? (HeightsInch, ThicknessesInch) : (Heights, Thicknesses);
        string Sizes(params double[] sizes) => SectionSizes.Named(sizes, inches);
        IEnumerable<string> above = shape switch
        {
            Flat f when f.H == f.T => Next(thicknesses, f.H, Most).Select(a => $"square {Sizes(a)}"),
            Flat f => Next(thicknesses, f.T, 4).Select(w => $"flat {Sizes(f.H, w)}")
                .Concat(Next(heights, f.H, 5).Select(h => $"flat {Sizes(h, f.T)}"))
                .Concat(Next(heights, f.H, 3).Zip(Next(thicknesses, f.T, 3), (h, w) => $"flat {Sizes(h, w)}")),
            Round r => Next(heights.Concat(thicknesses).Order(), r.D, Most).Select(d => $"round {Sizes(d)}"),
            Box b => Next(thicknesses, Math.Min(b.Tw, b.Tf), 3).Select(w => $"box {Sizes(b.H, b.B, w)}")
                .Concat(Next(heights, b.H, 4).Select(h => $"box {Sizes(h, b.B, b.Tw, b.Tf)}")),
            _ => OfSeries(shape, shelf),
        };
        return [.. above.Select(one => pair + one + facing + turned)];
    }

    /// <summary>The best in bending of each next weight class in the same series.</summary>
    private static IEnumerable<string> OfSeries(Shape shape, Shelf shelf)
    {
        string series = Series(shape.Name);
        SectionProperties now = shape.Properties;
        Shape[] heavier =
        [
            .. shelf.Sections
                .Where(s => s.GetType() == shape.GetType() && Series(s.Name) == series)
                .Where(s => s.Properties.A > now.A * 1.001 && s.Properties.Wely > now.Wely * 1.001)
                .OrderBy(s => s.Properties.A).ThenBy(s => s.Name, StringComparer.Ordinal),
        ];
        int found = 0;
        for (int i = 0; i < heavier.Length && found < Most; found++)
        {
            double limit = heavier[i].Properties.A * Step;
            int best = i;
            for (; i < heavier.Length && heavier[i].Properties.A < limit; i++)
            {
                if (heavier[i].Properties.Wely > heavier[best].Properties.Wely)
                    best = i;
            }

            yield return heavier[best].Name;
        }
    }

    /// <summary>Letters in front of the sizes, and how it was formed.</summary>
    private static string Series(string name)
    {
        int end = 0;
        while (end < name.Length && !char.IsAsciiDigit(name[end]))
            end++;
        return name[..end].Trim() + (name.EndsWith("cold", StringComparison.OrdinalIgnoreCase) ? " cold" : "");
    }

    private static IEnumerable<double> Next(IEnumerable<double> sizes, double now, int count) =>
        sizes.Where(s => s > now * 1.001).Distinct().Take(count);
}
