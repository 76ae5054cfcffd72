using Ramwright.Frame;
using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Stock;

namespace Ramwright.Ladders;

/// <summary>
/// All presses one change away. The frame is walked by its described keys, so that a key added there is tried too: names from stock by
/// the next stronger, lengths by the next usual sizes, counts by more, yes or no by the other. <see cref="LiftSizes"/> holds what is
/// left alone and what is tried otherwise.
/// </summary>
internal sealed class LiftNeighbours
{
    private readonly Press _press;
    private readonly PressCheck _check;
    private readonly Shelf _shelf;
    private readonly UnitSystem _units;
    private readonly List<LiftChange> _found = [];
    private readonly Dictionary<string, Assumed> _assumed = new(StringComparer.Ordinal);

    private LiftNeighbours(Press press, PressCheck check, Shelf shelf, UnitSystem units)
    {
        (_press, _check, _shelf, _units) = (press, check, shelf, units);
        foreach (Assumed assumed in check.Rig.Assumed)
            _assumed.TryAdd(assumed.What, assumed);
    }

    /// <summary>The changes, in an order that depends on nothing but the press and the shelf.</summary>
    public static IReadOnlyList<LiftChange> Of(Press press, PressCheck check, Shelf shelf, UnitSystem units = UnitSystem.Metric)
    {
        var all = new LiftNeighbours(press, check, shelf, units);
        if (press.Frame is { } frame)
            all.Walk(frame, "frame", []);
        all.Alike();
        all._found.AddRange(LiftOutside.Of(press, check, shelf, units));
        return all._found;
    }

    private void Walk(object record, string path, IReadOnlyList<PressEdit> lead)
    {
        foreach (PressKey key in PressKeys.Of(record.GetType()))
        {
            string at = $"{path}.{key.Name}";
            object? value = key.Property.GetValue(record);
            Type type = Nullable.GetUnderlyingType(key.Property.PropertyType) ?? key.Property.PropertyType;
            if (LiftSizes.LeftAlone(at, key))
                continue;
            if (type == typeof(Weld))
                Welds(value as Weld, path, lead);
            else if (key.Stock is not null)
                Names(key.Stock.What, at, value as string, lead);
            else if (key.Measure is { } measure && type == typeof(double))
                Sizes(measure, at, value as double?, lead);
            else if (type == typeof(bool))
                Add(at, value is true ? "yes" : "no", value is true ? "no" : "yes", value is not true, lead);
            else if (value is System.Collections.IEnumerable items and not string)
                Items(items, at, lead);
            else if (value is not null && PressKeys.IsRecord(value.GetType()))
                Walk(value, at, lead);
            else if (value is null && type == typeof(Joint))
                Walk(new WeldedJoint(), at, [.. lead, new PressEdit($"{at}.{PressKeys.Kind}", "", "weld", "weld")]);
            else if (value is null && type == typeof(Stiffening))
                Plates(at, lead);
            else if (value is null && PressKeys.IsRecord(type) && !type.IsAbstract)
                Walk(Activator.CreateInstance(type)!, at, lead);
        }
    }

    private void Items(System.Collections.IEnumerable items, string path, IReadOnlyList<PressEdit> lead)
    {
        int i = 0;
        foreach (object? item in items)
        {
            if (item is not null && PressKeys.IsRecord(item.GetType()))
                Walk(item, $"{path}.{i}", lead);
            i++;
        }
    }

    private void Names(StockKind kind, string path, string? said, IReadOnlyList<PressEdit> lead)
    {
        bool common = path is "frame.section" or "frame.steel";
        switch (kind)
        {
            case StockKind.Section when (said ?? (common ? null : _press.Frame!.Section)) is { } section:
                foreach (string above in LiftSections.Above(section, _shelf))
                    Add(path, section, above, above, lead);
                break;
            case StockKind.Steel:
                string steel = said ?? (common ? null : _press.Frame!.Steel) ?? "unknown";
                // what lies in the heap does not get stronger by another name: to test it is the person's own decision
                if (Shelf.SameName(steel, "unknown"))
                    break;
                foreach (string stronger in LiftSizes.Steels(steel, _shelf, _units))
                    Add(path, steel, stronger, stronger, lead);
                break;
            case StockKind.Thread when said is not null && _shelf.TryThread(said, out ScrewThread? thread):
                foreach (string thicker in LiftSizes.Threads(thread.D, _shelf, _units))
                    Add(path, said, thicker, thicker, lead);
                break;
            case StockKind.PropertyClass:
                string now = said ?? "4.6";
                foreach (string stronger in LiftSizes.Classes(now, _shelf, _units))
                    Add(path, now, stronger, stronger, lead);
                break;
        }
    }

    private void Sizes(MeasureAttribute measure, string path, double? said, IReadOnlyList<PressEdit> lead)
    {
        double? now = said ?? (_assumed.GetValueOrDefault(path) as AssumedMeasure)?.Si;
        if (now is not { } value || !(value > 0))
            return;         // nothing that has a size
        foreach (double size in LiftSizes.Of(path, measure.Dimension, value, _units))
        {
            if (LiftSizes.Allows(measure, size))
                Add(path, Written(value, measure.Dimension, _units), Written(size, measure.Dimension, _units), size, lead, LiftSizes.CostOf(path));
        }
    }

    private void Welds(Weld? said, string joint, IReadOnlyList<PressEdit> lead)
    {
        string path = $"{joint}.weld";
        if (said?.Kind == WeldKind.Butt)
            return;
        double? throat = said?.Throat ?? (said?.Leg is { } z ? z / Math.Sqrt(2) : Assumed(joint));
        if (throat is not { } a)
            return;
        bool byThroat = said?.Throat is not null;
        (string key, double now) = byThroat ? ("throat", a) : ("leg", a * Math.Sqrt(2));
        string old = Written(now, Dimension.Length, _units);
        foreach (double size in LiftSizes.WeldsAbove(now, _units))
            Add($"{path}.{key}", old, Written(size, Dimension.Length, _units), size, lead);
        List<PressEdit> butt = [.. lead];
        if (said?.Leg is not null)
            butt.Add(new PressEdit($"{path}.leg", old, null, null));
        if (byThroat)
            butt.Add(new PressEdit($"{path}.throat", Written(a, Dimension.Length, _units), null, null));
        Add($"{path}.kind", "fillet", "butt", WeldKind.Butt, butt);
    }

    private void Plates(string path, IReadOnlyList<PressEdit> lead)
    {
        foreach (double size in LiftSizes.Plates(_units))
            Add($"{path}.thickness", "none", Written(size, Dimension.Length, _units), size, lead);
    }

    /// <summary>Throat of a weld whose size was assumed.</summary>
    private double? Assumed(string joint)
    {
        foreach (PlanJoint drawn in _check.Response.Plan.Joints)
        {
            if (drawn.Key != joint)
                continue;
            return drawn.Joint switch
            {
                RigWeldedJoint { Weld.Kind: WeldKind.Fillet } w => w.Weld.Throat,
                RigSlottedJoint { Weld.Kind: WeldKind.Fillet } s => s.Weld.Throat,
                _ => null,
            };
        }

        return null;
    }

    private void Add(string path, string old, string to, object value, IReadOnlyList<PressEdit> lead, LiftCost cost = LiftCost.Work) =>
        _found.Add(new LiftChange([.. lead, new PressEdit(path, old, to, value)], cost));

    /// <summary>Crown and bed, both arms, both joints: what is the same in parts that are alike is also changed in all of them at once.</summary>
    private void Alike()
    {
        var groups = _found
            .Where(c => c.Edits[^1].Path.Count(d => d == '.') >= 2)
            .GroupBy(c => (Suffix(c.Edits[^1].Path), c.Edits[^1].Old, c.Edits[^1].New, c.Cost))
            .Where(g => g.Count() > 1)
            .Select(g => new LiftChange([.. g.SelectMany(c => c.Edits)], g.Key.Cost))
            .ToArray();
        _found.AddRange(groups);
    }

    private static string Suffix(string path) => path[(path.IndexOf('.', path.IndexOf('.', StringComparison.Ordinal) + 1) + 1)..];

    /// <summary>As a file would write it, in the units of its own tape; no thousandths of an inch, which read badly there.</summary>
    internal static string Written(double si, Dimension dimension, UnitSystem units) => dimension == Dimension.Length && units == UnitSystem.Imperial
        ? Readout.Text(si, Readout.UnitFor(dimension, units), 5)
        : Readout.Text(si, dimension, units, units == UnitSystem.Imperial ? 5 : 6);
}
