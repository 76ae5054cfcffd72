using Ramwright.Workings;

namespace Ramwright.Stock;

/// <summary>Interference of the two press fits of the workshop by ISO 286: hole H7 with shaft p6 (a light press fit) or s6 (a firm one). Sizes in m.</summary>
/// <param name="Least">Smallest shaft less largest hole, on the diameter.</param>
/// <param name="Most">Largest shaft less smallest hole.</param>
public readonly record struct IsoFit(double Least, double Most)
{
    /// <summary>Limits of H7, p6 and s6.</summary>
    public static readonly Citation Source = new("ISO 286-2:2010", "limits of H7, p6, s6", Standing.FromMemory);

    /// <summary>The fits known.</summary>
    public static IReadOnlyList<string> Names { get; } = ["H7/p6", "H7/s6"];

    /// <summary>Greatest diameter in the table, m.</summary>
    public const double Largest = 0.120;

    /// <summary>Diameter above which the table begins, m.</summary>
    public const double Smallest = 0.006;

    // up to mm, H7 upper, p6 lower and upper, s6 lower and upper, µm
    private static readonly (double UpTo, double H7, double P6, double P6Upper, double S6, double S6Upper)[] Rows =
    [
        (10, 15, 15, 24, 23, 32),
        (18, 18, 18, 29, 28, 39),
        (30, 21, 22, 35, 35, 48),
        (50, 25, 26, 42, 43, 59),
        (65, 30, 32, 51, 53, 72),
        (80, 30, 32, 51, 59, 78),
        (100, 35, 37, 59, 71, 93),
        (120, 35, 37, 59, 79, 101),
    ];

    /// <summary>The interference of a fit; null where the fit or the diameter is not in the table.</summary>
    /// <param name="fit">H7/p6 or H7/s6.</param>
    /// <param name="d">Diameter, m.</param>
    public static IsoFit? Of(string fit, double d)
    {
        bool p = Shelf.SameName(fit, Names[0]), s = Shelf.SameName(fit, Names[1]);
        if (!p && !s || !(d > Smallest))
            return null;
        foreach (var row in Rows)
        {
            if (d * 1e3 <= row.UpTo + 1e-9)
                return p ? new((row.P6 - row.H7) * 1e-6, row.P6Upper * 1e-6) : new((row.S6 - row.H7) * 1e-6, row.S6Upper * 1e-6);
        }

        return null;
    }
}
