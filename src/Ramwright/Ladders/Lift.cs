using Ramwright.Frame;
using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Solids;
using Ramwright.Stock;

namespace Ramwright.Ladders;

/// <summary>What to change so that a press is safe to the wanted force, and what can break survives the most the pump can give.</summary>
/// <remarks>
/// Each change is tried by checking the changed press in full. Where no single change is enough, changes are put together: from each
/// round the most promising presses are kept and changed again, until some carry enough or there have been too many rounds; then each
/// step is made as small as still suffices. The same press gives the same answer, whatever the number of cores.
/// </remarks>
public sealed class Lift
{
    private const int MostRounds = 6;
    // no further round begins once so many presses have been checked: about a second on one core
    private const int MostLooked = 4000;
    private const int Kept = 14;
    // sizes of one set of keys that are kept beside each other: the nearest is not always on the way
    private const int KeptOfEach = 3;
    private const int Shown = 6;
    // below this a change does nothing for a rung
    private const double Little = 1e-3;

    private readonly Press _press;
    private readonly Shelf _shelf;
    private readonly UnitSystem _units;
    private readonly Action<int>? _progress;
    private readonly JointBook? _joints;
    private readonly HotSpotGuess _spots;
    private readonly double _massBefore;
    private readonly Dictionary<string, HashSet<string>> _helps = new(StringComparer.Ordinal);
    private readonly HashSet<string> _rungsBefore = new(StringComparer.Ordinal);
    private readonly Dictionary<string, string> _olds = new(StringComparer.Ordinal);
    private Tried? _best;
    private int _looked;

    private Lift(Press press, Shelf shelf, PressCheck before, UnitSystem units, Action<int>? progress, JointBook? joints)
    {
        (_press, _shelf, Before, _units, _progress, _joints, _spots) = (press, shelf, before, units, progress, joints, HotSpotGuess.Of(before));
        _massBefore = FrameMass.Of(before.Response);
        foreach (Rung rung in before.Ladder.Rungs)
            _rungsBefore.Add(rung.Id);
    }

    /// <summary>The press as it is.</summary>
    public PressCheck Before { get; }

    /// <summary>Whether it carries enough as it is.</summary>
    public bool IsEnough => Enough(Before);

    /// <summary>Ways to enough with the fewest keys; of these the mildest cost first, then the least steel.</summary>
    public IReadOnlyList<LiftWay> Ways { get; private set; } = [];

    /// <summary>Where no way was found, the best that was.</summary>
    public LiftWay? Nearest { get; private set; }

    /// <summary>How many presses were checked.</summary>
    public int Looked => _looked;

    /// <summary>Searches.</summary>
    /// <param name="press">A press that was read without faults.</param>
    /// <param name="shelf">Its stock.</param>
    /// <param name="units">Which sizes are usual where the press is built, and how values are written.</param>
    /// <param name="progress">Told now and then how many presses have been checked.</param>
    /// <param name="joints">Joints that were found from solids and kept.</param>
    /// <exception cref="PressFaultsException">The press cannot be built as it is.</exception>
    /// <exception cref="FrameMovesException">The frame could move freely.</exception>
    public static Lift Of(Press press, Shelf shelf, UnitSystem units = UnitSystem.Metric, Action<int>? progress = null, JointBook? joints = null)
    {
        ArgumentNullException.ThrowIfNull(press);
        ArgumentNullException.ThrowIfNull(shelf);
        var lift = new Lift(press, shelf, PressCheck.Of(JointBook.Springing(Resolver.Resolve(press, shelf), joints)), units, progress, joints);
        if (!lift.IsEnough)
            lift.Search();
        return lift;
    }

    private static bool Enough(PressCheck check) => check.MeetsWanted && check.AgainstMostPossible == Verdict.Holds;

    /// <summary>How far all rungs together fall short: 0 where it is enough.</summary>
    private double Shortfall(PressCheck check)
    {
        double sum = 0;
        foreach (Rung rung in check.Ladder.Rungs)
            sum += Short(rung, check);
        foreach ((_, double safe) in _spots.On(check))
            sum += Short(safe, check.Rig.Wanted);
        return sum;
    }

    private static double Short(Rung rung, PressCheck check)
    {
        double needed = check.Rig.Wanted;
        if (rung.MustSurvive)
            needed = Math.Max(needed, check.Power.MostPossibleForce / rung.PressureScale);
        return Short(rung.SafeTo, needed);
    }

    private static double Short(double safe, double needed) => safe >= needed * (1 - 1e-9) ? 0 : Math.Log(needed / Math.Max(safe, 1e-6 * needed));

    private void Search()
    {
        var start = new Tried([], _press, Before, Shortfall(Before), 0);
        Tried[] first = Changed([start]);
        Learn(first);
        foreach (PressEdit edit in first.SelectMany(t => t.Changes[0].Edits))
            _olds.TryAdd(edit.Path, edit.Old);
        var found = new List<Tried>(first.Where(t => t.Short == 0));
        // what keeps all that the press can do comes first; what gives something up is shown beside it where it alone is enough
        bool keeps = Rounds(first, allowGivingUp: false, found);
        if (!keeps && found.Count == 0)
            Rounds(first, allowGivingUp: true, found);

        Ways =
        [
            .. found.AsParallel().AsOrdered().Select(Smallest).ToArray()
                .Order().DistinctBy(t => t.KeySet).DistinctBy(t => t.Outcome).Take(Shown)
                .OrderBy(t => t.Cost).ThenBy(t => Math.Round(t.Mass, 3)).ThenBy(t => t).Select(Way),
        ];
        if (Ways.Count == 0)
            Nearest = Way(_best ?? start);
    }

    private bool Rounds(Tried[] first, bool allowGivingUp, List<Tried> found)
    {
        bool Counts(Tried t) => (allowGivingUp || t.Cost != LiftCost.GivesUp) && !found.Any(f => f != t && t.AddsTo(f));
        bool any = first.Any(t => t.Short == 0 && Counts(t));
        Tried[] now = Promising(first.Where(t => t.Short > 0 && Counts(t)));
        for (int round = 2; round <= MostRounds && now.Length > 0 && _looked < MostLooked; round++)
        {
            Tried[] next = [.. Changed(now, allowGivingUp).Where(Counts)];
            Tried[] enough = [.. next.Where(t => t.Short == 0)];
            found.AddRange(enough.Order().Take(4 * Shown));
            // one round more than the first that found any: two small changes may cost less than one large
            if (any)
                break;
            any = enough.Length > 0;
            now = Promising(next.Where(t => t.Short > 0 && Counts(t)));
        }

        return any;
    }

    /// <summary>The few nearest of each set of keys, the nearest first.</summary>
    private Tried[] Promising(IEnumerable<Tried> tried)
    {
        Tried[] kept =
        [
            .. tried.GroupBy(t => t.KeySet)
                .SelectMany(g => g.OrderBy(t => t.Short).ThenBy(t => t).Take(KeptOfEach))
                .OrderBy(t => t.Short).ThenBy(t => t)
                .Take(Kept),
        ];
        if (kept.Length > 0 && (_best is null || kept[0].Short < _best.Short))
            _best = kept[0];
        return kept;
    }

    /// <summary>All presses one change further than these.</summary>
    private Tried[] Changed(Tried[] from, bool allowGivingUp = true)
    {
        var all = new List<(Tried From, LiftChange Change)>();
        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (Tried at in from)
        {
            HashSet<string> failing =
            [
                .. at.Check.Ladder.Rungs.Where(r => Short(r, at.Check) > 0).Select(r => r.Id),
                .. _spots.On(at.Check).Where(s => Short(s.SafeTo, at.Check.Rig.Wanted) > 0).Select(s => s.Id),
            ];
            foreach (LiftChange change in LiftNeighbours.Of(at.Press, at.Check, _shelf, _units))
            {
                if ((allowGivingUp || change.Cost != LiftCost.GivesUp) && MayHelp(change, failing) && seen.Add(at.With(change)))
                    all.Add((at, change));
            }
        }

        var done = new Tried?[all.Count];
        Parallel.For(0, done.Length, i => done[i] = Try(all[i].From, all[i].Change));
        Interlocked.Add(ref _looked, done.Length);
        _progress?.Invoke(_looked);
        return [.. done.OfType<Tried>()];
    }

    private Tried? Try(Tried from, LiftChange change) => Try([.. from.Changes, change], change.On(from.Press));

    private Tried? Try(IReadOnlyList<LiftChange> changes, Press press)
    {
        foreach (Fault _ in PressRules.Of(press, _shelf))
            return null;
        try
        {
            PressCheck check = PressCheck.Of(JointBook.Springing(Resolver.Resolve(press, _shelf), _joints));
            return new Tried(changes, press, check, Shortfall(check), FrameMass.Of(check.Response) - _massBefore);
        }
        catch (Exception e) when (e is ArgumentException or PressFaultsException or FrameMovesException or InvalidOperationException)
        {
            return null;        // such a press cannot be built or reckoned: no neighbour
        }
    }

    /// <summary>Which rungs each key moves, seen once on the press as it is.</summary>
    private void Learn(Tried[] first)
    {
        foreach (Tried tried in first)
        {
            string keys = tried.Changes[0].Keys;
            if (!_helps.TryGetValue(keys, out HashSet<string>? helped))
                _helps[keys] = helped = new HashSet<string>(StringComparer.Ordinal);
            var was = Before.Ladder.Rungs.ToDictionary(r => r.Id, r => r.SafeTo, StringComparer.Ordinal);
            double less = tried.Check.Power.MostPossibleForce / Before.Power.MostPossibleForce;
            foreach (Rung rung in Before.Ladder.Rungs)
            {
                if (less < 1 - Little && rung.MustSurvive)
                    helped.Add(rung.Id);
            }

            foreach (Rung rung in tried.Check.Ladder.Rungs)
            {
                if (was.Remove(rung.Id, out double before) && rung.SafeTo > before * (1 + Little))
                    helped.Add(rung.Id);
            }

            helped.UnionWith(was.Keys);     // the rung is gone
        }
    }

    private bool MayHelp(LiftChange change, HashSet<string> failing) =>
        !_helps.TryGetValue(change.Keys, out HashSet<string>? helped) || helped.Overlaps(failing) || !failing.IsSubsetOf(_rungsBefore);

    /// <summary>The same keys with every step as small as still suffices.</summary>
    private Tried Smallest(Tried way)
    {
        for (int i = 0; i < way.Changes.Count; i++)
        {
            LiftChange change = way.Changes[i];
            Press without = way.Changes.Where((_, k) => k != i).Aggregate(_press, (p, c) => c.On(p));
            if (Try([.. way.Changes.Where((_, k) => k != i)], without) is { } base0)
            {
                if (base0.Short == 0)
                {
                    way = base0;        // it was not needed after all
                    i--;
                    continue;
                }

                foreach (LiftChange other in LiftNeighbours.Of(without, base0.Check, _shelf, _units).Where(c => c.Keys == change.Keys))
                {
                    List<LiftChange> changes = [.. way.Changes];
                    changes[i] = other;
                    if (Try(changes, changes.Aggregate(_press, (p, c) => c.On(p))) is { Short: 0 } smaller && smaller.CompareTo(way) < 0)
                        way = smaller;
                    Interlocked.Increment(ref _looked);
                }
            }
        }

        return way;
    }

    private LiftWay Way(Tried t)
    {
        // a later size was found beside an earlier one: what it replaces is what the file says
        LiftChange[] changes = [.. t.Changes.Select(c => c with { Edits = [.. c.Edits.Select(e => e with { Old = _olds.GetValueOrDefault(e.Path, e.Old) })] })];
        return new LiftWay(changes, t.Press, t.Check, t.Mass, _press.PricePerKg is { } price ? t.Mass * price : null)
        {
            HotSpots = [.. _spots.On(t.Check)],
        };
    }

    /// <summary>A press that was tried; in order the fewest keys come first, then the mildest cost, the least steel, the safest.</summary>
    private sealed record Tried(IReadOnlyList<LiftChange> Changes, Press Press, PressCheck Check, double Short, double Mass) : IComparable<Tried>
    {
        public LiftCost Cost => Changes.Count == 0 ? LiftCost.Work : Changes.Max(c => c.Cost);

        public string KeySet => string.Join(' ', _keys.Order(StringComparer.Ordinal));

        private int Keys => _keys.Count;

        private readonly HashSet<string> _keys = [.. Changes.SelectMany(c => c.Edits).Select(e => e.Path)];

        /// <summary>Whether it sets all keys that another sets.</summary>
        public bool AddsTo(Tried other) => _keys.IsSupersetOf(other._keys);

        /// <summary>The same for two ways of writing one press.</summary>
        public (double, double, string) Outcome => (Math.Round(Mass, 3), Math.Round(Check.Ladder.SafeRating, 3), Check.Ladder.Governing.Id);

        private string Values => string.Join(' ', Changes.SelectMany(c => c.Edits).Select(e => $"{e.Path}={e.New}"));

        /// <summary>All values set once a change is made too: the same for the same press, in whatever order it was reached.</summary>
        public string With(LiftChange change)
        {
            var last = new SortedDictionary<string, string?>(StringComparer.Ordinal);
            foreach (PressEdit edit in Changes.Append(change).SelectMany(c => c.Edits))
                last[edit.Path] = edit.New;
            return string.Join(' ', last.Select(e => $"{e.Key}={e.Value}"));
        }

        public int CompareTo(Tried? other)
        {
            if (other is null)
                return -1;
            int by = Keys.CompareTo(other.Keys);
            if (by == 0)
                by = Cost.CompareTo(other.Cost);
            if (by == 0)
                by = Math.Round(Mass, 3).CompareTo(Math.Round(other.Mass, 3));
            if (by == 0)
                by = -Math.Round(Check.Ladder.SafeRating, 3).CompareTo(Math.Round(other.Check.Ladder.SafeRating, 3));
            return by != 0 ? by : string.CompareOrdinal(Values, other.Values);
        }
    }
}
