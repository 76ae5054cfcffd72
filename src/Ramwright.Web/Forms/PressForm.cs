using System.Globalization;
using Ramwright.Files;
using Ramwright.Files.Binding;
using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Web.Opened;

namespace Ramwright.Web.Forms;

/// <summary>The form of a press: every key that its records have, with what the file says, what is assumed, and what is wrong.</summary>
internal sealed class PressForm
{
    private readonly PressReading _reading;
    private readonly UnitSystem _units;
    private readonly Dictionary<string, (string Value, string Why)> _assumed = new(StringComparer.Ordinal);
    private readonly Dictionary<string, List<PlacedFault>> _faults = new(StringComparer.Ordinal);
    private readonly HashSet<string> _shown = new(StringComparer.Ordinal);

    private PressForm(PressNow now, UnitSystem units)
    {
        (_reading, _units) = (now.Read.Press.Reading, units);
        foreach (Assumed assumed in (now.Check?.Assumed ?? []).Concat(now.Check?.Rig.Jobs.SelectMany(j => j.Assumed) ?? []))
            _assumed.TryAdd(assumed.What, (assumed.Value(units), assumed.Why.Text(units)));
        foreach (PlacedFault fault in now.Read.Faults)
        {
            if (!_faults.TryGetValue(fault.Path, out List<PlacedFault>? here))
                _faults[fault.Path] = here = [];
            here.Add(fault);
        }

        RecordShape press = RecordShape.Of(typeof(Press));
        FormItem Top(string key) => Item(press.Find(key)!, key);
        FormItem frame = Top("frame");
        Func<FormItem, bool> isJoint = i => i.Path.StartsWith("frame.", StringComparison.Ordinal)
            && (i.Path.EndsWith("-joint", StringComparison.Ordinal) || i.Path.EndsWith("-pins", StringComparison.Ordinal));
        IReadOnlyList<FormItem> joints = frame is FormBox all ? [.. all.Items.Where(isJoint)] : [];
        if (frame is FormBox box)
            frame = box with { Items = [.. box.Items.Where(i => !isJoint(i))] };
        string[] placed = ["name", "wanted", "loading", "cylinder", "ram", "pull", "lines", "pump", "oil", "valves", "gauge", "frame", "factors"];
        Groups =
        [
            new FormGroup("Wanted use", [Top("name"), Top("wanted"), Top("loading"), Top("factors")]),
            new FormGroup("Power", [Top("pump"), Top("oil"), Top("valves"), Top("gauge")]),
            new FormGroup("Cylinder and lines", [Top("cylinder"), Top("lines"), Top("ram"), Top("pull")]),
            new FormGroup("Frame", [frame]),
            new FormGroup("Joints", joints),
            new FormGroup("In the shop", [.. press.Keys.Where(k => !placed.Contains(k.Key)).Select(k => Top(k.Key))]),
        ];
        Elsewhere = [.. now.Read.Faults.Where(f => !_shown.Contains(f.Path))];
    }

    /// <summary>The parts of the form.</summary>
    public IReadOnlyList<FormGroup> Groups { get; }

    /// <summary>The jobs, which have a page of their own as well.</summary>
    public FormList Jobs => (FormList)Groups[^1].Items.First(i => i.Path == "jobs");

    /// <summary>Faults that belong to no field on the form.</summary>
    public IReadOnlyList<PlacedFault> Elsewhere { get; }

    /// <summary>Makes the form.</summary>
    /// <param name="now">The press.</param>
    /// <param name="units">Units of what is assumed.</param>
    public static PressForm Of(PressNow now, UnitSystem units) => new(now, units);

    private FormItem Item(KeyShape key, string path)
    {
        string label = Words(key.Key);
        switch (key.Form)
        {
            case KeyForm.Record:
                return Box(RecordShape.Of(key.Element), path, label, key.Says);
            case KeyForm.Records or KeyForm.Texts:
                var items = new List<FormItem>();
                string one = label.EndsWith('s') ? label[..^1] : label;
                for (int i = 0; Said($"{path}.{i}"); i++)
                {
                    string at = $"{path}.{i}";
                    items.Add(key.Form == KeyForm.Records
                        ? Box(RecordShape.Of(key.Element), at, $"{one} {i + 1}", "")
                        : new FormValue(at, $"{one} {i + 1}", "", Faults(at), key, Written(at), "", ""));
                }

                string next = string.Create(CultureInfo.InvariantCulture, $"{path}.{items.Count}");
                (string nextPath, string nextValue) = key.Form == KeyForm.Records ? Begin(RecordShape.Of(key.Element), next, _reading.Units) : (next, "my-stock.csv");
                return new FormList(path, label, key.Says, Faults(path), items, nextPath, nextValue, one.ToLowerInvariant());
            default:
                (string assumed, string why) = Said(path) ? ("", "") : _assumed.GetValueOrDefault(path, OfTheWhole(key, path));
                return new FormValue(path, label, key.Says, Faults(path), key, Written(path), assumed, why) { Example = key.ExampleIn(_units) };
        }
    }

    // a member that says no section or steel of its own has that of the whole frame
    private (string Value, string Why) OfTheWhole(KeyShape key, string path) =>
        key.Key is "section" or "steel" && path.Split('.') is ["frame", var member, _] && ShapeAt("frame." + member)?.Find("section") is not null
            && Written("frame." + key.Key) is { Length: > 0 } whole
            ? (whole, "said for the whole frame")
            : ("", "");

    // A new item needs one thing written: its kind, or the first key that counts, as an example that is changed at once.
    private static (string Path, string Value) Begin(RecordShape shape, string path, UnitSystem tape)
    {
        if (shape.Kinds.Count > 0)
            return ($"{path}.kind", shape.Kinds[0].Kind!);
        KeyShape first = shape.Keys.FirstOrDefault(k => k.IsNeeded && k.Form is not (KeyForm.Record or KeyForm.Records)) ?? shape.Chief ?? shape.Keys[0];
        return ($"{path}.{first.Key}", first.ExampleIn(tape));
    }

    private FormBox Box(RecordShape shape, string path, string label, string says)
    {
        IReadOnlyList<PlacedFault> faults = Faults(path);
        if (shape.Kinds.Count == 0)
            return new FormBox(path, label, says, faults, [], "", false, Said(path), [.. shape.Keys.Select(k => Item(k, $"{path}.{k.Key}"))]);

        string said = Written(path + ".kind");
        string kind = said.Length > 0 ? said : _assumed.GetValueOrDefault(path + ".kind", ("", "")).Item1;
        RecordShape? chosen = shape.Kinds.FirstOrDefault(k => k.Kind == kind);
        return new FormBox(path, label, says, [.. faults, .. Faults(path + ".kind")], [.. shape.Kinds.Select(k => (k.Kind!, k.Says))],
            kind, said.Length > 0, Said(path), chosen is null ? [] : [.. chosen.Keys.Select(k => Item(k, $"{path}.{k.Key}"))]);
    }

    /// <summary>Paths written under a record that a kind of it does not know.</summary>
    public static IEnumerable<string> Foreign(PressNow now, string path, string kind)
    {
        if (ShapeAt(path)?.Kinds.FirstOrDefault(k => k.Kind == kind) is not { } shape)
            return [];
        string prefix = path + ".";
        return
        [
            .. now.Read.Press.Reading.Map.Spots.Keys.Where(p => p.StartsWith(prefix, StringComparison.Ordinal)).Select(p => p[prefix.Length..])
                .Where(k => !k.Contains('.') && k != "kind" && shape.Find(k) is null).Select(k => prefix + k),
        ];
    }

    // The record at a path; below a record of several kinds any kind that knows the key will do.
    private static RecordShape? ShapeAt(string path)
    {
        RecordShape? at = RecordShape.Of(typeof(Press));
        foreach (string key in path.Split('.'))
        {
            if (at is null || int.TryParse(key, NumberStyles.None, CultureInfo.InvariantCulture, out _))
                continue;
            KeyShape? found = at.Find(key) ?? at.Kinds.Select(k => k.Find(key)).FirstOrDefault(k => k is not null);
            at = found is { Form: KeyForm.Record or KeyForm.Records } ? RecordShape.Of(found.Element) : null;
        }

        return at;
    }

    private IReadOnlyList<PlacedFault> Faults(string path)
    {
        _shown.Add(path);
        return _faults.GetValueOrDefault(path, []);
    }

    private bool Said(string path) => _reading.Map.TryFind(path, out _);

    private string Written(string path)
    {
        if (!_reading.Map.TryFind(path, out SourceMap.Spot? spot) || !spot.IsText || spot.Value.Length == 0)
            return "";
        string text = _reading.Text.Substring(spot.Value.Offset, spot.Value.Length);
        return text switch
        {
            ['\'', .. string inside, '\''] => inside.Replace("''", "'", StringComparison.Ordinal),
            ['"', .. string inside, '"'] => inside,
            _ => text,
        };
    }

    private static string Words(string key) => char.ToUpperInvariant(key[0]) + key[1..].Replace('-', ' ');
}
