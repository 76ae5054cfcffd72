using Ramwright.Ladders;
using Ramwright.Strength;
using Ramwright.Workings;

namespace Ramwright.Proving;

/// <summary>How much of a detail's life is used.</summary>
/// <param name="Life">The detail.</param>
/// <param name="Used">Share of its life, 1 when used up; the standard's factors are in it.</param>
/// <param name="BeyondCurve">Squeezes whose stress is beyond what the curves may judge; they are counted as the whole life if there are any.</param>
public sealed record LifeUsed(FatigueLife Life, double Used, double BeyondCurve)
{
    /// <summary>Detail by detail, the one with most life used first.</summary>
    /// <param name="check">The press.</param>
    /// <param name="squeezes">What it has done.</param>
    /// <remarks>
    /// Each squeeze is taken as its range of pressure times the area, nothing lost, from nothing; the range from a pressure that is kept on is smaller. Damage adds
    /// up by Palmgren-Miner.
    /// </remarks>
    public static IReadOnlyList<LifeUsed> Of(PressCheck check, IReadOnlyList<SqueezeBlock> squeezes)
    {
        ArgumentNullException.ThrowIfNull(check);
        ArgumentNullException.ThrowIfNull(squeezes);
        double A = check.Power.Areas.Force;
        return
        [
            .. check.Ladder.Rungs.Select(r => r.Fatigue).OfType<FatigueLife>()
                .Select(life => One(life, squeezes, A))
                .OrderByDescending(u => u.Used).ThenBy(u => u.Life.Squeezes ?? double.PositiveInfinity).ThenBy(u => u.Life.Rung, StringComparer.Ordinal),
        ];
    }

    private static LifeUsed One(FatigueLife life, IReadOnlyList<SqueezeBlock> squeezes, double A)
    {
        double beyond = 0;
        var within = new List<(double, double?)>();
        foreach (SqueezeBlock block in squeezes)
        {
            double? stands = life.At(block.Range * A);
            if (stands is 0)
                beyond += block.Count;
            else
                within.Add((block.Count, stands));
        }

        double sum = MinerSum.Of(within);
        return new LifeUsed(life, beyond > 0 ? Math.Max(1, sum) : sum, beyond);
    }

    /// <summary>Writes how one detail's share came about.</summary>
    /// <param name="check">The press.</param>
    /// <param name="squeezes">What it has done.</param>
    /// <param name="w">Where to.</param>
    public void Show(PressCheck check, IReadOnlyList<SqueezeBlock> squeezes, Working w)
    {
        ArgumentNullException.ThrowIfNull(check);
        ArgumentNullException.ThrowIfNull(squeezes);
        ArgumentNullException.ThrowIfNull(w);
        double A = check.Power.Areas.Force;
        MinerSum.Of([.. squeezes.Select(b => (b.Count, Life.At(b.Range * A))).Where(b => b.Item2 is not 0)], w);
    }
}
