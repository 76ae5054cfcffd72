using Ramwright.Workings;

namespace Ramwright.Fabrication.Drilling;

/// <summary>How much deeper than its thread a blind hole is drilled.</summary>
public static class BlindHole
{
    /// <summary>Where it comes from.</summary>
    public static readonly Citation Source = new("DIN 76-1", "run-out of blind holes, e1, regular", Standing.FromMemory);

    // pitch, run-out, mm
    private static readonly (double P, double E)[] Regular =
        [(1, 5.1), (1.25, 6.2), (1.5, 7.3), (1.75, 8.3), (2, 9.3), (2.5, 11.2), (3, 13.1), (3.5, 15.2), (4, 16.8), (4.5, 18.4), (5, 20.8), (5.5, 22.4), (6, 24)];

    /// <summary>From the last full thread to the bottom of the drilled cylinder, m; between the table's pitches in proportion.</summary>
    /// <param name="pitch">m.</param>
    public static double RunOut(double pitch)
    {
        double p = Quantities.Check.Positive(pitch) * 1000;
        for (int i = 1; i < Regular.Length; i++)
        {
            if (p > Regular[i].P)
                continue;
            (double p0, double e0) = p < Regular[0].P ? (0, 0) : Regular[i - 1];
            (double p1, double e1) = p < Regular[0].P ? Regular[0] : Regular[i];
            return (e0 + (e1 - e0) * (p - p0) / (p1 - p0)) / 1000;
        }

        return 4 * p / 1000;
    }
}
