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
    private static readonly double[] LengthsInch =
    [
        .. new[]
        {
            0.125, 0.1875, 0.25, 0.3125, 0.375, 0.5, 0.625, 0.75, 0.875, 1, 1.25, 1.5, 1.75, 2, 2.5, 3, 3.5, 4, 4.5, 5, 5.5, 6, 7, 8, 9, 10, 12, 14, 16, 18,
            20, 24, 28, 32, 36, 40,
        }.Select(inch => inch * Inch),
    ];
    private static readonly double[] LegsInch = [.. new[] { 0.125, 0.1875, 0.25, 0.3125, 0.375, 0.5, 0.625, 0.75, 0.875, 1 }.Select(inch => inch * Inch)];
    private static readonly string[] ThreadsInch = ["3/8-16 UNC", "1/2-13 UNC", "5/8-11 UNC", "3/4-10 UNC", "7/8-9 UNC", "1-8 UNC", "1-1/4-7 UNC", "1-1/2-6 UNC", "1-3/4-5 UNC", "2-4.5 UNC"];
    private static readonly string[] ClassesInch = ["SAE 2", "SAE 5", "SAE 8"];
    private static readonly string[] SteelsInch = ["A36", "A572-50"];
    private const double Inch = 0.0254;
    private static readonly double[] Shares = [0.95, 0.9, 0.85, 0.8, 0.7, 0.6];
    private static readonly string[] UsualThreads = ["M8", "M10", "M12", "M16", "M20", "M24", "M30", "M36", "M42", "M48"];
    private static readonly string[] UsualClasses = ["4.6", "5.6", "8.8", "10.9"];
    private static readonly string[] UsualSteels = ["S235", "S275", "S355"];

    /// <summary>What cannot be chosen: it follows from bought parts, or from what the press is for.</summary>
    public static bool LeftAlone(string path, PressKey key) =>
        key.Name is "horizontal" or "ram-drop" or "arm-reach" or "play" or "gap" or "shear-planes" or "fit"
        || key.Property.PropertyType == typeof(IReadOnlyList<Opening>)
        || path.EndsWith(".openings", StringComparison.Ordinal);

    /// <summary>The sizes to try in place of one, the nearest first.</summary>
    public static IEnumerable<double> Of(string path, Dimension dimension, double now, UnitSystem units)
    {
        if (dimension == Dimension.Count)
            return now < 64 ? [now + 1, now + 2, now + 4] : [];
        if (dimension != Dimension.Length)
            return [];
        if (IsOpening(path))
            return Less(now, units);
        double[] lengths = units == UnitSystem.Imperial ? LengthsInch : Lengths;
        IEnumerable<double> more = lengths.Where(s => s > now * 1.001).Take(4);
        // what narrower dies allow the frame is only what they ask of the work
        return path == "frame.die-width" ? more : more.Concat(lengths.Where(s => s < now * 0.999).TakeLast(2).Reverse());
    }

    /// <summary>Some shares of a length, in whole steps of 5 mm, or of 1 mm below 100 mm; of a quarter or a sixteenth of an inch.</summary>
    public static IEnumerable<double> Less(double now, UnitSystem units)
    {
        double step = Step(now, units), last = now;
        foreach (double share in Shares)
        {
            double less = Math.Floor(now * share / step + 1e-9) * step;
            if (!(less > 0 && less < last * (1 - 1e-9)))
                continue;
            last = less;
            yield return less;
        }
    }

    /// <summary>What lengths of a size are rounded to, m.</summary>
    public static double Step(double now, UnitSystem units) =>
        units == UnitSystem.Imperial ? (now >= 4 * Inch ? Inch / 4 : Inch / 16) : now >= 0.1 ? 0.005 : 0.001;

    public static LiftCost CostOf(string path) =>
        IsOpening(path) ? LiftCost.GivesUp : path == "frame.die-width" ? LiftCost.Part : LiftCost.Work;

    private static bool IsOpening(string path) => path is "frame.daylight" or "frame.width" or "frame.throat";

    public static bool Allows(MeasureAttribute measure, double value) =>
        (double.IsNaN(measure.From) ? value > measure.Above : value >= measure.From) && value <= measure.UpTo;

    /// <summary>Plates to weld in beside a web, thin and thick.</summary>
    public static IReadOnlyList<double> Plates(UnitSystem units) => units == UnitSystem.Imperial ? [0.375 * Inch, 0.625 * Inch] : [0.010, 0.015];

    public static IEnumerable<double> WeldsAbove(double now, UnitSystem units) => (units == UnitSystem.Imperial ? LegsInch : Legs).Where(s => s > now * 1.01).Take(5);

    /// <summary>Common structural steels of greater yield, for bought steel in place of what there is.</summary>
    public static IEnumerable<string> Steels(string now, Shelf shelf, UnitSystem units)
    {
        const double usual = 0.016;
        double least = shelf.TrySteel(now, out Steel? steel) ? steel.Fy(usual) : 0;
        return (units == UnitSystem.Imperial ? SteelsInch : UsualSteels).Where(s => shelf.TrySteel(s, out Steel? other) && other.Fy(usual) > least * 1.001);
    }

    public static IEnumerable<string> Threads(double d, Shelf shelf, UnitSystem units) =>
        (units == UnitSystem.Imperial ? ThreadsInch : UsualThreads).Where(t => shelf.TryThread(t, out ScrewThread? thread) && thread.D > d * 1.001).Take(4);

    public static IEnumerable<string> Classes(string now, Shelf shelf, UnitSystem units)
    {
        const double usual = 0.020;
        double least = shelf.TryClass(now, usual, out PropertyClass? held) ? held.Fub : 0;
        return (units == UnitSystem.Imperial ? ClassesInch : UsualClasses).Where(c => shelf.TryClass(c, usual, out PropertyClass? other) && other.Fub > least * 1.001);
    }
}
