namespace Ramwright.Ladders;

/// <summary>All limits of a press, the lowest first.</summary>
public sealed class Ladder
{
    private Ladder(IReadOnlyList<Rung> rungs) => Rungs = rungs;

    /// <summary>The rungs, by the force they are safe to, then by name.</summary>
    public IReadOnlyList<Rung> Rungs { get; }

    /// <summary>The lowest rung.</summary>
    public Rung Governing => Rungs[0];

    /// <summary>What the press is safe to, N: its lowest rung.</summary>
    public double SafeRating => Governing.SafeTo;

    /// <summary>Sorts rungs into a ladder.</summary>
    /// <exception cref="ArgumentException">No rungs, two of one name, or one whose forces are no forces.</exception>
    public static Ladder Of(IEnumerable<Rung> rungs)
    {
        Rung[] sorted = [.. rungs];
        if (sorted.Length == 0)
            throw new ArgumentException("a ladder needs a rung");
        foreach (Rung rung in sorted)
        {
            if (!(rung.SafeTo >= 0 && rung.GivesAt >= rung.SafeTo * (1 - 1e-12) && double.IsFinite(rung.GivesAt)))
                throw new ArgumentException($"rung {rung.Id} has no sensible forces: gives at {rung.GivesAt}, safe to {rung.SafeTo}");
        }

        Array.Sort(sorted, (a, b) =>
        {
            int byForce = a.SafeTo.CompareTo(b.SafeTo);
            return byForce != 0 ? byForce : string.CompareOrdinal(a.Id, b.Id);
        });
        for (int i = 0; i < sorted.Length; i++)
        {
            for (int j = i + 1; j < sorted.Length; j++)
            {
                if (sorted[i].Id == sorted[j].Id)
                    throw new ArgumentException($"two rungs are called {sorted[i].Id}");
            }
        }

        return new Ladder(sorted);
    }

    /// <summary>How the press stands against the force it is wanted for.</summary>
    /// <param name="wanted">N.</param>
    public Verdict Against(double wanted) => Stand(wanted, _ => true, _ => 1);

    /// <summary>How the parts that can break stand against the most the pump can give.</summary>
    /// <param name="mostPossible">Thrust of the oil with nothing lost, N.</param>
    public Verdict Surviving(double mostPossible) => Stand(mostPossible, rung => rung.MustSurvive, rung => rung.PressureScale);

    /// <summary>Thrust of the oil, nothing lost, that all parts which can break are safe to, N; infinite where none can.</summary>
    public double ThrustBorne
    {
        get
        {
            double least = double.PositiveInfinity;
            foreach (Rung rung in Rungs)
            {
                if (rung.MustSurvive)
                    least = Math.Min(least, rung.SafeTo * rung.PressureScale);
            }

            return least;
        }
    }

    private Verdict Stand(double force, Func<Rung, bool> counts, Func<Rung, double> scale)
    {
        Verdict verdict = Verdict.Holds;
        // a hair's breadth of rounding must not turn "wanted 25 t, relief set for 25 t" into a failure
        double asked = force * (1 - 1e-9);
        foreach (Rung rung in Rungs)
        {
            if (!counts(rung))
                continue;
            if (rung.GivesAt * scale(rung) < asked)
                return Verdict.DoesNotHold;
            if (rung.SafeTo * scale(rung) < asked)
                verdict = Verdict.Marginal;
        }

        return verdict;
    }
}
