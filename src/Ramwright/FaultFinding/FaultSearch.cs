using Ramwright.Presses;
using Ramwright.Workings;

namespace Ramwright.FaultFinding;

/// <summary>How likely a cause is.</summary>
/// <param name="Cause">The cause.</param>
/// <param name="Chance">0 to 1.</param>
/// <param name="Before">What it was before anything was seen.</param>
/// <param name="Because">Signs seen that speak for it, the strongest first.</param>
public sealed record Suspect(Cause Cause, double Chance, double Before, IReadOnlyList<Sign> Because);

/// <summary>A test that may be made next.</summary>
/// <param name="Sign">What to find out.</param>
/// <param name="Yes">How likely the answer is yes.</param>
/// <param name="Gain">How much less will be unsure after it, on the average, bits.</param>
/// <param name="PerMinute">The same for each minute it takes.</param>
public sealed record NextTest(Sign Sign, double Yes, double Gain, double PerMinute);

/// <summary>From what was seen to the likely causes, what to look at next, and what to do safely first.</summary>
public sealed record FaultSearch
{
    /// <summary>How the next test is chosen.</summary>
    public static readonly Citation Source = Citation.Practice("expected fall of the entropy of the single causes for each minute");

    /// <summary>Causes, the likeliest first.</summary>
    public required IReadOnlyList<Suspect> Suspects { get; init; }
    /// <summary>Tests, the most telling for its time first.</summary>
    public required IReadOnlyList<NextTest> Tests { get; init; }
    /// <summary>What was seen and counted.</summary>
    public required IReadOnlyList<(Sign Sign, bool Yes)> Seen { get; init; }
    /// <summary>What stands before any step that opens a line.</summary>
    public required IReadOnlyList<string> BeforeOpening { get; init; }

    /// <summary>Searches.</summary>
    /// <param name="rig">The press.</param>
    /// <param name="tables">What is known.</param>
    /// <param name="seen">What was seen.</param>
    public static FaultSearch Of(Rig rig, FaultTables tables, IReadOnlyList<Seen> seen)
    {
        ArgumentNullException.ThrowIfNull(rig);
        ArgumentNullException.ThrowIfNull(seen);
        var network = FaultNetwork.Of(rig, tables);
        (double[] now, _) = network.Posterior(seen);
        var state = new Dictionary<string, bool>(StringComparer.Ordinal);
        foreach (Seen s in seen)
            state[s.Sign] = s.Yes;      // what was seen last stands
        double before = Entropy(now);
        var tests = new List<NextTest>();
        foreach (Sign sign in network.Signs)
        {
            if (sign.IsSymptom || state.ContainsKey(sign.Id))
                continue;
            (double yes, double gain) = Gain(network, seen, sign, before);
            tests.Add(new NextTest(sign, yes, gain, gain / sign.Minutes));
        }

        return new FaultSearch
        {
            Suspects =
            [
                .. network.Causes.Select((c, i) => new Suspect(c, now[i], c.Prior, Because(network, i, state)))
                    .OrderByDescending(s => s.Chance).ThenBy(s => s.Cause.Id, StringComparer.Ordinal),
            ],
            Tests = [.. tests.Where(t => t.Gain > 1e-6).OrderByDescending(t => t.PerMinute).ThenBy(t => t.Sign.Id, StringComparer.Ordinal)],
            Seen = [.. network.Signs.Where(s => state.ContainsKey(s.Id)).Select(s => (s, state[s.Id]))],
            BeforeOpening = SafeOpening.Of(rig),
        };
    }

    private static (double Yes, double Gain) Gain(FaultNetwork network, IReadOnlyList<Seen> seen, Sign sign, double before)
    {
        (double[] Causes, double Evidence)? yes = Try(network, [.. seen, new Seen(sign.Id, true)]), no = Try(network, [.. seen, new Seen(sign.Id, false)]);
        double y = yes?.Evidence ?? 0, n = no?.Evidence ?? 0, all = y + n;
        if (!(all > 0))
            return (0, 0);
        double after = (yes is { } a ? y * Entropy(a.Causes) : 0) + (no is { } b ? n * Entropy(b.Causes) : 0);
        return (y / all, Math.Max(0, before - after / all));
    }

    private static (double[], double)? Try(FaultNetwork network, IReadOnlyList<Seen> seen)
    {
        try
        {
            return network.Posterior(seen);
        }
        catch (ArgumentException)
        {
            return null;        // an answer that cannot come
        }
    }

    private static Sign[] Because(FaultNetwork network, int cause, Dictionary<string, bool> state)
    {
        return
        [
            .. network.Signs.Select((s, i) => (Sign: s, Chance: network.Chance(cause, i)))
                .Where(s => s.Chance > 0 && state.TryGetValue(s.Sign.Id, out bool yes) && yes)
                .OrderByDescending(s => s.Chance).Select(s => s.Sign),
        ];
    }

    private static double Entropy(double[] chances)
    {
        double sum = 0;
        foreach (double p in chances)
            sum += Bits(p) + Bits(1 - p);
        return sum;

        static double Bits(double p) => p > 0 ? -p * Math.Log2(p) : 0;
    }
}
