using System.Diagnostics;
using System.Globalization;
using Ramwright.Fabrication;
using Ramwright.Fabrication.Nesting;
using Ramwright.Geometry;
using Ramwright.Presses;
using Ramwright.Tests.Fabrication.Nesting;

namespace Ramwright.Bench;

/// <summary>Sixty parts of a press on four remnants, two of them odd; and puzzles whose full layout is known.</summary>
internal static class NestSixty
{
    /// <summary>Searches some rounds and tells what came of it.</summary>
    public static int Run(int rounds, int seed)
    {
        (RigSheet[] sheets, PlatePart[] parts) = Puzzle.Sixty();
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

    /// <summary>A thousand parts on bought sheets: how long the first plan takes.</summary>
    /// <param name="length">Of a sheet 2 m wide, m.</param>
    /// <param name="kinds">0 takes the seven shapes of the sixty; else so many kinds of odd shapes.</param>
    public static int Many(int kinds, double length)
    {
        PlatePart[] parts = kinds == 0 ? [.. Puzzle.Sixty().Parts.Select(p => p with { Count = p.Count * 50 / 3 })]
            : [.. Enumerable.Range(0, kinds).Select(k => Puzzle.Shards(0.8, 0.6, 20, k)[k % 20] with { Mark = $"M{k}", Count = 1000 / kinds })];
        var watch = Stopwatch.StartNew();
        NestGroup nest = NestPlan.Of(parts, [Puzzle.Sheet(length, 2.0, 0, buy: true)], RigCutting.Usual, new NestEffort());
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
            $"{parts.Sum(p => p.Count)} parts of {parts.Length} kinds: first plan in {watch.Elapsed.TotalSeconds:0.0} s, {nest.Nests.Count} sheets, {nest.Filled:0.000} of them, {nest.Without.Sum(w => w.Count)} without"));
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
}
