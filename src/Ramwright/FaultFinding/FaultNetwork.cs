using System.Numerics;
using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.FaultFinding;

/// <summary>What is seen: a sign, there or not.</summary>
/// <param name="Sign">Its short name.</param>
/// <param name="Yes">Whether it is there.</param>
public readonly record struct Seen(string Sign, bool Yes);

/// <summary>Causes above, signs below: each cause may be there by itself, each sign comes from any of its causes or from none (noisy-OR).</summary>
/// <remarks>
/// P(sign not there | causes) = (1 − leak) Π (1 − q) over the causes that are there. Exact: the sum over subsets of the signs that are there, in each of which the
/// causes part into factors. It takes 2ⁿ steps for n signs there, whatever the number of causes.
/// </remarks>
public sealed class FaultNetwork
{
    /// <summary>The sum over subsets.</summary>
    public static readonly Citation Source = new("D. Heckerman, A tractable inference algorithm for diagnosing multiple diseases, UAI 1989", "Quickscore", Standing.FromMemory);

    /// <summary>Most signs that may be there at once.</summary>
    public const int MostSeen = 18;

    private readonly double[,] _q;      // cause by sign
    private readonly Dictionary<string, int> _signs;

    /// <summary>Makes a network.</summary>
    /// <param name="tables">Causes, signs and links; links between what is not there are left out.</param>
    /// <exception cref="ArgumentException">A chance outside 0 to 1, or a prior of one.</exception>
    public FaultNetwork(FaultTables tables)
    {
        ArgumentNullException.ThrowIfNull(tables);
        (Causes, Signs) = (tables.Causes, tables.Signs);
        _signs = Signs.Select((s, i) => (s.Id, i)).ToDictionary(s => s.Id, s => s.i, StringComparer.Ordinal);
        var causes = Causes.Select((c, i) => (c.Id, i)).ToDictionary(c => c.Id, c => c.i, StringComparer.Ordinal);
        foreach (Cause cause in Causes)
            Check.Loss(cause.Prior, cause.Id);
        foreach (Sign sign in Signs)
            Check.Loss(sign.Leak, sign.Id);
        _q = new double[Causes.Count, Signs.Count];
        foreach (Link link in tables.Links)
        {
            if (!(link.Chance is >= 0 and <= 1))
                throw new ArgumentException($"the chance of {link.Cause} showing {link.Sign} is {link.Chance}: from 0 to 1", nameof(tables));
            if (causes.TryGetValue(link.Cause, out int c) && _signs.TryGetValue(link.Sign, out int s))
                _q[c, s] = link.Chance;
        }
    }

    /// <summary>The causes.</summary>
    public IReadOnlyList<Cause> Causes { get; }
    /// <summary>The signs.</summary>
    public IReadOnlyList<Sign> Signs { get; }

    /// <summary>The network of one press: only causes and signs whose parts it has.</summary>
    /// <param name="rig">The press.</param>
    /// <param name="tables">What is known.</param>
    public static FaultNetwork Of(Rig rig, FaultTables tables)
    {
        ArgumentNullException.ThrowIfNull(tables);
        IReadOnlySet<string> parts = PressParts.Of(rig);
        return new FaultNetwork(tables with
        {
            Causes = [.. tables.Causes.Where(c => c.Needs.All(parts.Contains))],
            Signs = [.. tables.Signs.Where(s => s.Needs.All(parts.Contains))],
        });
    }

    /// <summary>How likely each cause is once something was seen.</summary>
    /// <param name="seen">What was seen; signs that the press cannot show are passed over.</param>
    /// <returns>By place of the cause; and how likely it was to see just this.</returns>
    /// <exception cref="ArgumentException">Too many signs at once, or signs that cannot all be.</exception>
    public (double[] Causes, double Evidence) Posterior(IEnumerable<Seen> seen)
    {
        ArgumentNullException.ThrowIfNull(seen);
        var state = new Dictionary<int, bool>();
        foreach (Seen s in seen)
        {
            if (_signs.TryGetValue(s.Sign, out int i))
                state[i] = s.Yes;
        }

        int[] there = [.. state.Where(s => s.Value).Select(s => s.Key)], not = [.. state.Where(s => !s.Value).Select(s => s.Key)];
        if (there.Length > MostSeen)
            throw new ArgumentException($"more than {MostSeen} signs at once", nameof(seen));
        (double[] causes, double evidence) = Sum<double>(there, not);
        // terms of either sign cancel: where little is left of them, 28 figures tell what 16 do not
        if (!(evidence > 1e-9))
            (causes, evidence) = Sum<decimal>(there, not);
        if (!(evidence > 1e-22))
            throw new ArgumentException("no cause in the table, nor chance, brings all of this about together", nameof(seen));
        return (causes, evidence);
    }

    private (double[] Causes, double Evidence) Sum<T>(int[] there, int[] not)
        where T : INumber<T>
    {
        int n = Causes.Count;
        T total = T.Zero;
        T[] prior = [.. Causes.Select(c => T.CreateChecked(c.Prior))], with = new T[n], without = new T[n], kept = new T[n];
        for (int subset = 0; subset < 1 << there.Length; subset++)
        {
            T product = int.PopCount(subset) % 2 == 0 ? T.One : -T.One;
            Array.Fill(without, T.One);
            foreach (int s in not)
                Miss(s);
            for (int k = 0; k < there.Length; k++)
            {
                if ((subset & 1 << k) != 0)
                    Miss(there[k]);
            }

            for (int c = 0; c < n; c++)
            {
                kept[c] = prior[c] * without[c] + T.One - prior[c];
                product *= kept[c];
            }

            total += product;
            for (int c = 0; c < n; c++)
                with[c] += product * prior[c] * without[c] / kept[c];

            void Miss(int s)
            {
                product *= T.One - T.CreateChecked(Signs[s].Leak);
                for (int c = 0; c < n; c++)
                    without[c] *= T.One - T.CreateChecked(_q[c, s]);
            }
        }

        double sum = double.CreateChecked(total);
        return ([.. with.Select(w => sum > 0 ? Math.Clamp(double.CreateChecked(w / total), 0, 1) : 0)], sum);
    }

    /// <summary>Chance that a cause shows a sign.</summary>
    /// <param name="cause">Place of the cause.</param>
    /// <param name="sign">Place of the sign.</param>
    public double Chance(int cause, int sign) => _q[cause, sign];
}
