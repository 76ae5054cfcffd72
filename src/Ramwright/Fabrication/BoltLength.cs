using Ramwright.Quantities;
using Ramwright.Stock;

namespace Ramwright.Fabrication;

/// <summary>The length of bolt to ask for.</summary>
public static class BoltLength
{
    // preferred nominal lengths up to 200 mm, then by twenties; ISO 4014, from memory
    private static readonly double[] Lengths =
    [
        16, 20, 25, 30, 35, 40, 45, 50, 55, 60, 65, 70, 80, 90, 100, 110, 120, 130, 140, 150, 160, 180, 200, 220, 240, 260, 280, 300, 320, 340, 360, 380, 400, 420, 440, 460, 480, 500,
    ];

    /// <summary>Least length under the head, m: what it grips, two washers and a nut, and two threads beyond.</summary>
    /// <param name="thread">Its thread.</param>
    /// <param name="grip">What it grips, m.</param>
    /// <remarks>Washers of 0.17 d each and a nut of 0.9 d are no thinner than those of ISO 7089 and ISO 4032 from M8 to M36.</remarks>
    public static double Least(ScrewThread thread, double grip)
    {
        ArgumentNullException.ThrowIfNull(thread);
        return Check.NotNegative(grip) + (2 * 0.17 + 0.9) * thread.D + 2 * thread.P;
    }

    /// <summary>What to ask for: the next length that is made, metric or in quarter inches; threaded bar where none is.</summary>
    /// <param name="thread">Its thread.</param>
    /// <param name="grip">What it grips, m.</param>
    public static string Ask(ScrewThread thread, double grip)
    {
        double least = Least(thread, grip);
        if (thread.Form != ThreadForm.Metric)
            return $"bolt {thread.Name} x {Readout.Number(Math.Ceiling(least / 0.0254 * 4 - 1e-9) / 4, 4)} in";
        double next = Lengths.FirstOrDefault(l => l >= least * 1000 - 1e-9);
        return next > 0 ? $"bolt {thread.Name} x {Readout.Number(next, 4)}" : $"threaded bar {thread.Name}, {Readout.Text(least, Dimension.Length)}, with a second nut";
    }
}
