using Ramwright.Stock;
using Ramwright.Workings;

namespace Ramwright.Fabrication.Drilling;

/// <summary>Holes that a bolt goes through.</summary>
/// <param name="Fine">m.</param>
/// <param name="Medium">m.</param>
/// <param name="Coarse">m.</param>
public sealed record ClearanceHole(double Fine, double Medium, double Coarse)
{
    /// <summary>Where the sizes come from.</summary>
    public static readonly Citation Source = new("ISO 273:1979", "fine, medium and coarse series");

    // mm: bolt, fine, medium, coarse
    private static readonly double[][] Sizes =
    [
        [6, 6.4, 6.6, 7], [8, 8.4, 9, 10], [10, 10.5, 11, 12], [12, 13, 13.5, 14.5], [14, 15, 15.5, 16.5], [16, 17, 17.5, 18.5], [18, 19, 20, 21],
        [20, 21, 22, 24], [22, 23, 24, 26], [24, 25, 26, 28], [27, 28, 30, 32], [30, 31, 33, 35], [33, 34, 36, 38], [36, 37, 39, 42], [39, 40, 42, 45],
        [42, 43, 45, 48], [45, 46, 48, 52], [48, 50, 52, 56], [52, 54, 56, 62], [56, 58, 62, 66], [60, 62, 66, 70], [64, 66, 70, 74],
    ];

    /// <summary>Holes for a metric bolt; null where the standard has no row for it.</summary>
    /// <param name="d">Diameter of the bolt, m.</param>
    public static ClearanceHole? Of(double d)
    {
        foreach (double[] row in Sizes)
        {
            if (Math.Abs(row[0] / 1000 - d) < 1e-6)
                return new ClearanceHole(row[1] / 1000, row[2] / 1000, row[3] / 1000);
        }

        return null;
    }

    /// <summary>The hole to drill where nothing else is said, m: the medium series, or what EN 1090-2 allows for bolts that have no row.</summary>
    public static double Usual(ScrewThread thread)
    {
        ArgumentNullException.ThrowIfNull(thread);
        return thread.Form == ThreadForm.Metric && Of(thread.D) is { } hole ? hole.Medium : ScrewThread.UsualHole(thread.D);
    }
}
