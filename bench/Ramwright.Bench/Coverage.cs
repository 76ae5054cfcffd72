using System.Diagnostics;
using System.Globalization;
using Ramwright.Files;
using Ramwright.Ladders;
using Ramwright.Proving;

namespace Ramwright.Bench;

/// <summary>How often the intervals of proving hold the truth over many made-up presses.</summary>
internal static class Coverage
{
    /// <summary>Runs every kind and says how many of them hold; 1 where one of them lies outside 93 to 97 %.</summary>
    public static int Run(int trials)
    {
        PressCheck wherry = Press("wherry-yard"), railing = Press("railing-shop");
        bool good = true;
        foreach (FrictionFrom from in Enum.GetValues<FrictionFrom>())
            good &= Say($"true force, friction from {from}", () => CoverageTrial.Force(wherry, from, trials, 11));
        good &= Say("stiffness", () => CoverageTrial.Stiffness(wherry, trials, 12));
        good &= Say("flow, electric pump", () => CoverageTrial.Pump(wherry, trials, 13));
        good &= Say("flow, air pump", () => CoverageTrial.Pump(railing, trials, 14));
        OneForce(wherry);
        return good ? 0 : 1;
    }

    /// <summary>How long one true force takes: budget, and drawing until it stands still.</summary>
    private static void OneForce(PressCheck check)
    {
        Reading[] readings = [.. Enumerable.Range(0, 5).Select(i => new Reading(i + 1, new DateOnly(2026, 5, 9), null, "x", ReadingKind.TopPressure) { Value = (212 + i % 2) * 1e5 })];
        var book = new ReadingBook(check, readings);
        int trials = TrueForce.Of(check, book)!.Drawn.Trials;
        var watch = Stopwatch.StartNew();
        for (int i = 0; i < 20; i++)
            TrueForce.Of(check, book);
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"one true force, drawn {trials} times: {watch.Elapsed.TotalMilliseconds / 20:0.0} ms"));
    }

    private static bool Say(string what, Func<(int Inside, int All)> trial)
    {
        var watch = Stopwatch.StartNew();
        (int inside, int all) = trial();
        double share = inside / (double)all;
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{what,-40} {inside} of {all}: {100 * share:0.0} % (stated 95.4 %), {watch.Elapsed.TotalSeconds:0.0} s"));
        return share is >= 0.93 and <= 0.97;
    }

    private static PressCheck Press(string example) =>
        CheckedPress.Of(PressOnDisk.Open(Path.Combine(Repository.Find("examples"), example + PressFile.Ending))).Check!;
}
