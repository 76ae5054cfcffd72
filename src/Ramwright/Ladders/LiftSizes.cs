using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Stock;

namespace Ramwright.Ladders;

/// <summary>Which sizes of a key are tried, and which keys are left alone. Usual sizes are common practice.</summary>
internal static class LiftSizes
{
    private static readonly double[] Lengths =
    [
        .. new[]
        {
            3, 4, 5, 6, 8, 10, 12, 15, 20, 25, 30, 35, 40, 45, 50, 55, 60, 65, 70, 75, 80, 90, 100, 110, 120, 130, 140, 150, 160, 180, 200,
            220, 240, 260, 280, 300, 350, 400, 450, 500, 600, 700, 800, 900, 1000,
        }.Select(mm => mm / 1e3),
    ];
    private static readonly double[] Legs = [.. new[] { 3, 4, 5, 6, 8, 10, 12, 14, 16, 18, 20, 25 }.Select(mm => mm / 1e3)];
    private static readonly double[] Shares = [0.95, 0.9, 0.85, 0.8, 0.7, 0.6];
    private static readonly string[] UsualThreads = ["M8", "M10", "M12", "M16", "M20", "M24", "M30", "M36", "M42", "M48"];
    private static readonly string[] UsualClasses = ["4.6", "5.6", "8.8", "10.9"];
    private static readonly string[] UsualSteels = ["S235", "S275", "S355"];

    /// <summary>What cannot be chosen: it follows from bought parts, or from what the press is for.</summary>
    public static bool LeftAlone(string path, PressKey key) =>
        key.Name is "ram-drop" or "arm-reach" or "play" or "gap" or "shear-planes" or "fit"
        || key.Property.PropertyType == typeof(IReadOnlyList<Opening>)
        || path.EndsWith(".openings", StringComparison.Ordinal);

    /// <summary>The sizes to try in place of one, the nearest first.</summary>
    public static IEnumerable<double> Of(string path, Dimension dimension, double now)
    {
        if (dimension == Dimension.Count)
            return now < 64 ? [now + 1, now + 2, now + 4] : [];
        if (dimension != Dimension.Length)
            return [];
        if (IsOpening(path))
            return Less(now);
        IEnumerable<double> more = Lengths.Where(s => s > now * 1.001).Take(4);
        // what narrower dies allow the frame is only what they ask of the work
        return path == "frame.die-width" ? more : more.Concat(Lengths.Where(s => s < now * 0.999).TakeLast(2).Reverse());
    }

    /// <summary>Some shares of a length, in whole steps of 5 mm, or of 1 mm below 100 mm.</summary>
    public static IEnumerable<double> Less(double now)
    {
        double step = now >= 0.1 ? 0.005 : 0.001, last = now;
        foreach (double share in Shares)
        {
            double less = Math.Floor(now * share / step + 1e-9) * step;
            if (!(less > 0 && less < last * (1 - 1e-9)))
                continue;
            last = less;
            yield return less;
        }
    }

    public static LiftCost CostOf(string path) =>
        IsOpening(path) ? LiftCost.GivesUp : path == "frame.die-width" ? LiftCost.Part : LiftCost.Work;

    private static bool IsOpening(string path) => path is "frame.daylight" or "frame.width" or "frame.throat";

    public static bool Allows(MeasureAttribute measure, double value) =>
        (double.IsNaN(measure.From) ? value > measure.Above : value >= measure.From) && value <= measure.UpTo;

    public static IEnumerable<double> WeldsAbove(double now) => Legs.Where(s => s > now * 1.01).Take(5);

    /// <summary>Common structural steels of greater yield, for bought steel in place of what there is.</summary>
    public static IEnumerable<string> Steels(string now, Shelf shelf)
    {
        const double usual = 0.016;
        double least = shelf.TrySteel(now, out Steel? steel) ? steel.Fy(usual) : 0;
        return UsualSteels.Where(s => shelf.TrySteel(s, out Steel? other) && other.Fy(usual) > least * 1.001);
    }

    public static IEnumerable<string> Threads(double d, Shelf shelf) =>
        UsualThreads.Where(t => shelf.TryThread(t, out ScrewThread? thread) && thread.D > d * 1.001).Take(4);

    public static IEnumerable<string> Classes(string now, Shelf shelf)
    {
        const double usual = 0.020;
        double least = shelf.TryClass(now, usual, out PropertyClass? held) ? held.Fub : 0;
        return UsualClasses.Where(c => shelf.TryClass(c, usual, out PropertyClass? other) && other.Fub > least * 1.001);
    }
}
