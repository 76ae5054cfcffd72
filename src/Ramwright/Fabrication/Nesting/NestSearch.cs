namespace Ramwright.Fabrication.Nesting;

/// <summary>How far a search has come.</summary>
/// <param name="Round">Plans tried.</param>
/// <param name="Rounds">Plans to be tried.</param>
/// <param name="Placed">Parts placed in the best plan.</param>
/// <param name="Parts">Parts to be placed.</param>
/// <param name="Filled">Area of parts over area of the sheets that the best plan opens.</param>
public readonly record struct NestProgress(int Round, int Rounds, int Placed, int Parts, double Filled);

/// <summary>Fills sheets by touch, in order and by pushing, and keeps the best plan.</summary>
/// <remarks>It counts rounds, not seconds: the same seed and rounds give the same plan on every machine.</remarks>
internal sealed class NestSearch
{
    /// <summary>More parts than this are laid in order only.</summary>
    private const int ManyParts = 100;

    /// <summary>Of all rounds these shares lay next what touches most, and let parts overlap and push them apart.</summary>
    private const double TouchingShare = 0.5, PushingShare = 0.3;

    private readonly IReadOnlyList<IReadOnlyList<NestShape>> _kinds;
    private readonly int[] _kindOf;
    private readonly NestTable _table;
    private readonly NestScore _score;

    /// <param name="kinds">Each kind of part in its turns.</param>
    /// <param name="kindOf">The kind of each part.</param>
    /// <param name="sheets">The sheets: those that are there from the smallest up, then those to be bought.</param>
    public NestSearch(IReadOnlyList<IReadOnlyList<NestShape>> kinds, int[] kindOf, IReadOnlyList<NestSheet> sheets)
    {
        (_kinds, _kindOf) = (kinds, kindOf);
        _table = new NestTable(sheets, kinds.Sum(k => k.Count));
        _score = new NestScore(_table, kindOf.Sum(k => kinds[k][0].Area));
    }

    /// <summary>Runs it.</summary>
    /// <param name="rounds">Plans to try beyond the first ones.</param>
    /// <param name="seed">Seed of the draws.</param>
    /// <param name="goOn">Told of each round; false ends the search with the best plan so far.</param>
    /// <returns>For each part where it lies; null where it found no room.</returns>
    public IReadOnlyList<Placement?> Run(int rounds, ulong seed, Func<NestProgress, bool>? goOn)
    {
        var draw = new SeededDraw(seed);
        int round = 0;
        bool stopped = false;
        bool few = _kindOf.Length <= ManyParts;
        var order = new OrderSearch(_kinds, _kindOf, _table, _score);
        Placement?[] best = order.Begin(few);
        // a plan in order leaves what is left over in one piece: another one must be better
        int touching = few ? (int)(rounds * TouchingShare) : 0, pushing = (int)(rounds * PushingShare), inOrder = rounds - touching - pushing;
        if (few && !IsFull(best))
        {
            var touch = new TouchSearch(_kinds, _kindOf, _table, draw);
            touch.Begin(Offer);
            while (touching-- > 0 && !IsFull(best) && GoesOn())
                touch.Try(Offer);
        }

        if (!stopped && !IsFull(best))
            order.Run(inOrder, draw, laid => { Offer(laid); return IsFull(best); }, GoesOn);
        if (!stopped && !IsFull(best))
            best = new NestPressing(_kinds, _kindOf, _table, draw).Run(best, pushing, now => (best = now) == now && GoesOn());
        goOn?.Invoke(Progress(best, rounds, rounds));
        return best;

        double Offer(Placement?[] laid)
        {
            double score = _score.Of(laid);
            if (score < _score.Of(best))
                best = laid;
            return score;
        }

        bool GoesOn()
        {
            round++;
            stopped = stopped || goOn?.Invoke(Progress(best, round, rounds)) == false;
            return !stopped;
        }
    }

    // nothing better can come of it: all lies on the first sheet
    private static bool IsFull(Placement?[] laid) => laid.All(p => p is { Sheet: 0 });

    private NestProgress Progress(Placement?[] laid, int round, int rounds)
    {
        double parts = 0;
        var opened = new HashSet<int>();
        foreach (Placement? p in laid)
        {
            if (p is not { } at)
                continue;
            parts += at.Shape.Area;
            opened.Add(at.Sheet);
        }

        double sheets = opened.Sum(s => _table.Sheets[s].Area);
        return new NestProgress(round, rounds, laid.Count(p => p is not null), _kindOf.Length, sheets > 0 ? parts / sheets : 0);
    }
}
