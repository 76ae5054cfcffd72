using System.Diagnostics;
using System.Globalization;
using Ramwright.Fabrication;
using Ramwright.Fabrication.Nesting;
using Ramwright.Geometry;
using Ramwright.Presses;
using Ramwright.Stock;
using Ramwright.Tests.Fabrication.Nesting;
using Ramwright.Workings;

namespace Ramwright.Bench;

/// <summary>Sixty parts of a press on four remnants, two of them odd; and puzzles whose full layout is known.</summary>
internal static class NestSixty
{
    private static readonly Steel S275 = new() { Name = "S275", Bands = [new StrengthBand(1, 275e6, 410e6)], Source = Citation.Practice("made up") };

    /// <summary>Searches some rounds and tells what came of it.</summary>
    public static int Run(int rounds, int seed)
    {
        RigSheet[] sheets =
        [
            Sheet("long strip", Loops.Rectangle(0, 1.0, 0, 0.26)),
            Sheet("corner off", Polygon((0, 0), (0.7, 0), (0.7, 0.3), (0.45, 0.5), (0, 0.5))),
            Sheet("L", Polygon((0, 0), (0.9, 0), (0.9, 0.36), (0.4, 0.36), (0.4, 0.8), (0, 0.8))),
            Sheet("square", Loops.Rectangle(0, 0.62, 0, 0.7)),
        ];
        PlatePart[] parts =
        [
            Plate("A", Polygon((0, 0), (0.18, 0), (0.18, 0.02), (0.02, 0.18), (0, 0.18)), 16),
            Plate("B", Loops.Rectangle(0, 0.22, 0, 0.14), 8), Plate("C", Loops.Circle(0.16), 6), Plate("D", Loops.Rectangle(0, 0.30, 0, 0.06), 8),
            Plate("E", Polygon((0, 0), (0.24, 0), (0.24, 0.07), (0.07, 0.07), (0.07, 0.2), (0, 0.2)), 6),
            Plate("F", Loops.Rounded((0, 0, 0.02), (0.2, 0, 0.02), (0.16, 0.15, 0.02), (0.04, 0.15, 0.02)), 8), Plate("G", Loops.Rectangle(0, 0.09, 0, 0.09), 8),
        ];
        double area = parts.Sum(p => p.Count * p.Outline.Area()), room = sheets.Sum(s => new Outline([s.Edge]).Area());
        long first = 0;
        var watch = Stopwatch.StartNew();
        NestGroup nest = NestPlan.Of(parts, sheets, RigCutting.Usual, new NestEffort(rounds, (ulong)seed, p =>
        {
            if (p.Round == 1)
                first = watch.ElapsedMilliseconds;
            return true;
        }));
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
            $"{parts.Sum(p => p.Count)} parts, {area:0.000} m² on four remnants of {room:0.000} m²: first plans in {first} ms, {rounds} rounds in {watch.Elapsed.TotalSeconds:0.0} s"));
        foreach (Nest n in nest.Nests)
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  {n.Sheet.Name,-12} {n.Parts.Count,3} parts {n.Filled:0.000}, with gaps {n.Taken:0.000}"));
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  {nest.Nests.Sum(n => n.Parts.Count)} placed, {nest.Filled:0.000} of what is opened; bound by area {nest.Bound:0.000}"));
        return 0;
    }

    /// <summary>Sheets cut up at random, whose full layout is known.</summary>
    public static int Puzzles(int rounds)
    {
        foreach (int pieces in (int[])[8, 12, 15, 20, 25, 30])
        {
            foreach (bool shards in (bool[])[false, true])
            {
                IReadOnlyList<PlatePart> parts = shards ? Puzzle.Shards(1.0, 0.7, pieces, pieces) : Puzzle.Guillotine(1.0, 0.7, pieces, pieces);
                var watch = Stopwatch.StartNew();
                NestGroup nest = NestPlan.Of(parts, [Puzzle.Sheet(1.0, 0.7)], Puzzle.Close, new NestEffort(rounds));
                Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{pieces,3} {(shards ? "shards" : "rectangles"),-10} {nest.Filled:0.000} in {watch.Elapsed.TotalSeconds:0.0} s"));
            }
        }

        return 0;
    }

    private static RigSheet Sheet(string name, IReadOnlyList<Corner> edge) => new(name, 0.012, S275, edge, 1, false);

    private static Corner[] Polygon(params (double Y, double Z)[] corners) => [.. corners.Select(c => new Corner(c.Y, c.Z))];

    private static PlatePart Plate(string mark, IReadOnlyList<Corner> edge, int count) =>
        new() { Mark = mark, Name = mark, Of = "bench", Count = count, Steel = S275, Thickness = 0.012, Outline = new Outline([edge]) };
}
