using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Strength;

/// <summary>Damage of cycles of unlike size: the shares of life that each uses, added up. At 1 the life is used.</summary>
public static class MinerSum
{
    /// <summary>The rule.</summary>
    public static readonly Citation Source = new("EN 1993-1-9:2005", "annex A, A.5 (Palmgren-Miner)", Standing.FromMemory);

    /// <summary>Adds up.</summary>
    /// <param name="cycles">How often (0 or more), and how often that is stood; null for without end.</param>
    /// <param name="w">Where to show the working.</param>
    /// <returns>D; infinite never: what stands nothing at all is refused.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A negative number of cycles, or a life of none.</exception>
    public static double Of(IEnumerable<(double Cycles, double? Life)> cycles, Working? w = null)
    {
        ArgumentNullException.ThrowIfNull(cycles);
        double sum = 0;
        foreach ((double n, double? life) in cycles)
        {
            Check.NotNegative(n);
            if (life is not { } N)
                continue;
            double share = n / Check.Positive(N);
            sum += share;
            w?.Step("D_i", "share of life used", "n_i / N_i", share, Dimension.Number, Source, ("n_i", n, Dimension.Count), ("N_i", N, Dimension.Number));
        }

        return sum;
    }
}
