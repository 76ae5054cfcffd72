using Ramwright.Fabrication;
using Ramwright.Geometry;
using Ramwright.Presses;
using Ramwright.Stock;
using Ramwright.Workings;

namespace Ramwright.Tests.Fabrication.Nesting;

/// <summary>Sheets cut up into parts at random: a layout that fills the sheet is then known to exist.</summary>
internal static class Puzzle
{
    public static readonly Steel S275 = new() { Name = "S275", Bands = [new StrengthBand(1, 275e6, 410e6)], Source = Citation.Practice("for tests") };

    public static readonly RigCutting Close = RigCutting.Usual with { PartGap = 0, EdgeGap = 0 };

    public static RigSheet Sheet(double width, double height, int count = 1, bool buy = false) => new("sheet", 0.01, S275, Loops.Rectangle(0, width, 0, height), count, buy);

    /// <summary>Rectangles by cuts from edge to edge.</summary>
    public static IReadOnlyList<PlatePart> Guillotine(double width, double height, int pieces, int seed)
    {
        var random = new Random(seed);
        var all = new List<(double W, double H)> { (width, height) };
        while (all.Count < pieces)
        {
            int i = all.IndexOf(all.MaxBy(r => r.W * r.H));
            (double w, double h) = all[i];
            double share = 0.3 + 0.4 * random.NextDouble();
            all.RemoveAt(i);
            all.AddRange(w > h ? [(w * share, h), (w - w * share, h)] : [(w, h * share), (w, h - h * share)]);
        }

        return [.. all.Select((r, i) => Plate($"R{i + 1}", Loops.Rectangle(0, r.W, 0, r.H)))];
    }

    /// <summary>Polygons by straight cuts across whatever piece is greatest.</summary>
    public static IReadOnlyList<PlatePart> Shards(double width, double height, int pieces, int seed)
    {
        var random = new Random(seed);
        var all = new List<List<(double X, double Y)>> { new() { (0, 0), (width, 0), (width, height), (0, height) } };
        while (all.Count < pieces)
        {
            List<(double X, double Y)> greatest = all.MaxBy(Area)!;
            all.Remove(greatest);
            (List<(double, double)> a, List<(double, double)> b) = Cut(greatest, random);
            all.Add(a);
            all.Add(b);
        }

        return [.. all.Select((p, i) => Plate($"S{i + 1}", [.. p.Select(c => new Corner(c.X - p.Min(q => q.X), c.Y - p.Min(q => q.Y)))]))];
    }

    /// <summary>Sixty parts of seven shapes, and four remnants, two of them odd, too small for all of them.</summary>
    public static (RigSheet[] Sheets, PlatePart[] Parts) Sixty() =>
    (
        [
            Remnant("long strip", Loops.Rectangle(0, 1.0, 0, 0.26)),
            Remnant("corner off", Polygon((0, 0), (0.7, 0), (0.7, 0.3), (0.45, 0.5), (0, 0.5))),
            Remnant("L", Polygon((0, 0), (0.9, 0), (0.9, 0.36), (0.4, 0.36), (0.4, 0.8), (0, 0.8))),
            Remnant("square", Loops.Rectangle(0, 0.62, 0, 0.7)),
        ],
        [
            Plate("A", Polygon((0, 0), (0.18, 0), (0.18, 0.02), (0.02, 0.18), (0, 0.18)), 16),
            Plate("B", Loops.Rectangle(0, 0.22, 0, 0.14), 8),
            Plate("C", Loops.Circle(0.16), 6),
            Plate("D", Loops.Rectangle(0, 0.30, 0, 0.06), 8),
            Plate("E", Polygon((0, 0), (0.24, 0), (0.24, 0.07), (0.07, 0.07), (0.07, 0.2), (0, 0.2)), 6),
            Plate("F", Loops.Rounded((0, 0, 0.02), (0.2, 0, 0.02), (0.16, 0.15, 0.02), (0.04, 0.15, 0.02)), 8),
            Plate("G", Loops.Rectangle(0, 0.09, 0, 0.09), 8),
        ]
    );

    private static RigSheet Remnant(string name, IReadOnlyList<Corner> edge) => new(name, 0.01, S275, edge, 1, false);

    private static Corner[] Polygon(params (double Y, double Z)[] corners) => [.. corners.Select(c => new Corner(c.Y, c.Z))];

    public static PlatePart Plate(string mark, IReadOnlyList<Corner> edge, int count = 1) => new()
    {
        Mark = mark,
        Name = mark,
        Of = "puzzle",
        Count = count,
        Steel = S275,
        Thickness = 0.01,
        Blank = new Outline([edge]),
    };

    private static (List<(double, double)>, List<(double, double)>) Cut(List<(double X, double Y)> p, Random random)
    {
        // from a point on one edge to a point on an edge about opposite
        int n = p.Count, i = random.Next(n), j = (i + n / 2) % n;
        (double X, double Y) On(int k)
        {
            double t = 0.3 + 0.4 * random.NextDouble();
            return (p[k].X + t * (p[(k + 1) % n].X - p[k].X), p[k].Y + t * (p[(k + 1) % n].Y - p[k].Y));
        }

        (double X, double Y) a = On(i), b = On(j);
        var one = new List<(double, double)> { a };
        for (int k = (i + 1) % n; ; k = (k + 1) % n)
        {
            one.Add(p[k]);
            if (k == j)
                break;
        }

        one.Add(b);
        var other = new List<(double, double)> { b };
        for (int k = (j + 1) % n; ; k = (k + 1) % n)
        {
            other.Add(p[k]);
            if (k == i)
                break;
        }

        other.Add(a);
        return (one, other);
    }

    private static double Area(List<(double X, double Y)> p) =>
        Math.Abs(Enumerable.Range(0, p.Count).Sum(i => p[i].X * p[(i + 1) % p.Count].Y - p[(i + 1) % p.Count].X * p[i].Y)) / 2;
}
