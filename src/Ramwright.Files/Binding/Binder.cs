using System.Reflection;
using Ramwright.Files.Yaml;
using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Stock;

namespace Ramwright.Files.Binding;

/// <summary>
/// Turns the nodes of a press file into the records of a press. It never stops at a fault: what can be read is read, so
/// that everything wrong is reported at once.
/// </summary>
/// <param name="faults">Takes what is wrong.</param>
/// <param name="map">Takes where each value stands.</param>
/// <param name="shelf">Where stock names are looked up; null leaves them unchecked.</param>
/// <param name="isWhole">Whether the whole file was read; if not, nothing is called missing.</param>
/// <param name="tape">What the person measures in: examples are given in it.</param>
internal sealed class Binder(FaultList faults, SourceMap map, Shelf? shelf, bool isWhole, UnitSystem tape)
{
    private (KeysNode? Of, HashSet<string> Keys) _written = (null, []);

    private const string KindKey = "kind", KindByAnotherName = "type";

    private readonly ValueReader _values = new(faults, shelf, tape);

    /// <summary>Binds the top of a file.</summary>
    public Press? Bind(Node top)
    {
        map.Add("", null, faults.Source.At(0, faults.Source.Text.Length), isText: false);
        if (top is KeysNode keys)
            return (Press?)Record(keys, RecordShape.Of(typeof(Press)), "", new Place(1, 1, 0, 0));
        if (top is TextNode { IsVoid: false } or ListNode)
        {
            faults.Add(top.Place, "", top is ListNode ? "the file is a list" : "the file is one text without keys",
                $"keys with values, one in a line, such as {RecordShape.Of(typeof(Press)).Find("wanted")!.ExampleLine(tape)}");
        }

        return null;
    }

    private object? Record(KeysNode node, RecordShape shape, string path, Place owner)
    {
        RecordShape? settled = shape.Kinds.Count == 0 ? shape : Kind(node, shape, path, owner);
        IReadOnlyList<RecordShape> candidates = settled is null ? shape.Kinds : [settled];
        object? record = settled is null ? null : Activator.CreateInstance(settled.Type);
        var written = new Dictionary<string, int>(StringComparer.Ordinal);
        for (int i = 0; i < node.Entries.Count && !faults.IsFull; i++)
        {
            (TextNode key, Node value) = node.Entries[i];
            string at = path.Length == 0 ? key.Text : $"{path}.{key.Text}";
            if (CutByComma(node, i, at))
            {
                written.TryAdd(key.Text, key.Place.Line);
                i++;
                continue;
            }

            if (!written.TryAdd(key.Text, key.Place.Line))
            {
                faults.Add(key.Place, at, $"{FaultWords.Quote(key.Text)} stands here a second time; the first is on line {written[key.Text]}",
                    "one of the two, the other taken out");
                continue;
            }

            map.Add(at, key.Place, value.Place, value is TextNode);
            if (key.Text == KindKey && shape.Kinds.Count > 0)
                continue;
            if (key.Text == KindByAnotherName && !node.Entries.Any(e => e.Key.Text == KindKey) && shape.Kinds.Count > 0 && OtherwiseNamed(node, shape) is not null)
                continue;       // said already
            KeyShape? found = Find(candidates, key.Text);
            if (found is null)
            {
                if (Unknown(key, node, shape, settled, candidates, path, at) is { } meant)
                    written.TryAdd(meant, key.Place.Line);       // not missing, only misspelt
            }
            else if (Value(value, found, at, key.Place) is { } read && record is not null)
                found.Property.SetValue(record, read);
        }

        if (isWhole && settled is not null)
            Missing(settled, written, path, owner);
        return record;
    }

    private RecordShape? Kind(KeysNode node, RecordShape shape, string path, Place owner)
    {
        foreach ((TextNode key, Node value) in node.Entries)
        {
            if (key.Text != KindKey)
                continue;
            string at = $"{path}.{KindKey}";
            if (value is TextNode { IsVoid: false } word)
            {
                foreach (RecordShape kind in shape.Kinds)
                {
                    if (kind.Kind == word.Text)
                        return kind;
                }

                faults.Add(word.Place, at, $"there is no {FaultWords.Owner(path)} of kind {FaultWords.Quote(word.Text)}",
                    KindWords(shape), NearestWord.Among(word.Text, KindNames(shape)));
            }
            else if (value is not RefusedNode)
                faults.Add(key.Place, at, $"{FaultWords.Owner(path)} does not say its kind", KindWords(shape), OnlyKindWith(node, shape));
            return null;
        }

        if (OtherwiseNamed(node, shape) is { } type)
        {
            string? meant = type.Value is TextNode { IsVoid: false } said ? NearestWord.Among(said.Text, KindNames(shape)) : null;
            faults.Add(type.Key.Place, $"{path}.{KindKey}", $"{FaultWords.Owner(path)} says its kind by {KindKey}:, not by {type.Key.Text}:", $"{KindKey}: {KindWords(shape)}", meant);
            return shape.Kinds.FirstOrDefault(k => k.Kind == meant);
        }

        if (isWhole)
        {
            faults.Add(owner, $"{path}.{KindKey}", $"{FaultWords.Owner(path)} does not say its kind",
                "kind: " + KindWords(shape), OnlyKindWith(node, shape));
        }

        return null;
    }

    /// <summary>The line that means the kind and calls it something else; null where there is none, or where that key is one of its own.</summary>
    private static Entry? OtherwiseNamed(KeysNode node, RecordShape shape) =>
        shape.Kinds.Any(k => k.Find(KindByAnotherName) is not null) ? null : node.Entries.FirstOrDefault(e => e.Key.Text == KindByAnotherName);

    private object? Value(Node value, KeyShape key, string path, Place owner)
    {
        if (value is RefusedNode)
            return null;
        bool isVoid = value is TextNode { IsVoid: true };
        switch (key.Form)
        {
            case KeyForm.Record:
                if (value is KeysNode keys)
                    return Record(keys, RecordShape.Of(key.Element), path, owner);
                if (!isVoid)
                    WrongForm(value, key, path, "keys under it");
                return null;
            case KeyForm.Records or KeyForm.Texts:
                if (value is ListNode list)
                    return Items(list, key, path);
                if (!isVoid)
                    WrongForm(value, key, path, "a list, each item begun with a dash");
                return null;
            default:
                if (value is TextNode { IsVoid: false } text)
                    return _values.Read(text, key, path);
                if (isVoid)
                {
                    faults.Add(owner, path, $"{key.Key} has no value",
                        $"{key.ExampleLine(tape)} ({key.Says}){(key.IsNeeded ? "" : ", or no such line")}");
                }
                else
                    WrongForm(value, key, path, "one value");
                return null;
        }
    }

    private Array Items(ListNode list, KeyShape key, string path)
    {
        Array items = Array.CreateInstance(key.Element, list.Items.Count);
        for (int i = 0; i < list.Items.Count && !faults.IsFull; i++)
        {
            Node item = list.Items[i];
            string at = $"{path}.{i}";
            map.Add(at, null, item.Place, item is TextNode);
            object? read = null;
            if (item is KeysNode keys && key.Form == KeyForm.Records)
                read = Record(keys, RecordShape.Of(key.Element), at, keys.Place);
            else if (item is TextNode { IsVoid: false } text && key.Form == KeyForm.Texts)
                read = _values.Read(text, key, at);
            else if (item is not RefusedNode)
            {
                string example = key.Form == KeyForm.Texts ? "my-stock.csv" : RecordShape.Of(key.Element).ExampleIn(tape);
                faults.Add(item.Place, at,
                    $"item {i + 1} of {path} wants {(key.Form == KeyForm.Texts ? "one text" : "keys under it")}, not {FormOf(item)}", "- " + example);
            }

            if (read is not null)
                items.SetValue(read, i);
        }

        return items;
    }

    private void Missing(RecordShape shape, Dictionary<string, int> written, string path, Place owner)
    {
        foreach (KeyShape key in shape.Keys)
        {
            if (!key.IsNeeded)
                continue;
            string at = path.Length == 0 ? key.Key : $"{path}.{key.Key}";
            bool empty = key.Form is KeyForm.Record or KeyForm.Records or KeyForm.Texts
                && map.TryFind(at, out SourceMap.Spot? spot) && spot.IsText && spot.Value.Length == 0;
            if (written.ContainsKey(key.Key) && !empty)
                continue;
            string from = path.Length == 0 ? "" : $" from {FaultWords.Owner(path)}";
            Place place = empty ? map.PointAt(at) : owner;
            string found = empty ? $"{key.Key} has nothing under it" : $"{key.Key} is missing{from}{(key.Says == "the " + key.Key ? "" : ": " + key.Says)}";
            string kinds = key.Form == KeyForm.Record && RecordShape.Of(key.Element).Kinds.Count > 0
                ? "; kinds: " + KindWords(RecordShape.Of(key.Element))
                : "";
            faults.Add(place, at, found, $"a line such as {key.ExampleLine(tape)}{kinds}");
        }
    }

    // Says that a key is not known here, and returns the one that was probably meant.
    private string? Unknown(
        TextNode key, KeysNode node, RecordShape shape, RecordShape? settled, IReadOnlyList<RecordShape> candidates,
        string path, string at)
    {
        string owner = settled?.Kind is { } kind ? $"{FaultWords.Owner(path)} of kind {kind}" : FaultWords.Owner(path);
        string found = $"{owner} has no key {FaultWords.Quote(key.Text)}";
        if (shape.Kinds.Count == 0 && key.Text == KindKey && shape.Find(KindKey) is null)
        {
            faults.Add(key.Place, at, $"{owner} comes in one kind only", "this key taken out");
            return null;
        }

        if (key.Text.Contains('\u00A0'))
        {
            faults.Add(key.Place, at, "a non-breaking space stands in this key, as copied from a web page", "plain spaces around the key");
            return key.Text.Replace('\u00A0', ' ').Trim();
        }

        if (KeyPlaces.Of(key.Text, path) is { } elsewhere)
        {
            faults.Add(key.Place, at, found, $"{key.Text} goes {elsewhere}");
            return null;
        }

        var names = new List<string>();
        var free = new List<string>();
        foreach (RecordShape candidate in candidates)
        {
            foreach (KeyShape valid in candidate.Keys)
            {
                if (names.Contains(valid.Key))
                    continue;
                names.Add(valid.Key);
                if (!IsWritten(node, valid.Key))
                    free.Add(valid.Key);
            }
        }

        string wanted = free.Count == 0 ? "this key taken out: every other is there already"
            : free.Count == 1 ? free[0]
            : "one of " + string.Join(", ", free);
        string? nearest = NearestWord.Among(key.Text, names);
        faults.Add(key.Place, at, found, wanted, nearest);
        return nearest;
    }

    private void WrongForm(Node value, KeyShape key, string path, string wants)
    {
        string example = key.ExampleLine(tape);
        if (value is TextNode text && key.Form == KeyForm.Record)
        {
            foreach (RecordShape kind in RecordShape.Of(key.Element).Kinds)
            {
                if (kind.Kind == text.Text)
                    example = $"{key.Key}: {kind.ExampleIn(tape)}";
            }

            if (text is { IsPlain: true, Text.Length: < 30 } && RecordShape.Of(key.Element).ExampleWith(text.Text) is { } own)
                example = $"{key.Key}: {own}";
        }
        else if (key.Form is KeyForm.Records or KeyForm.Texts)
        {
            string item = key.Form == KeyForm.Records ? RecordShape.Of(key.Element).ExampleIn(tape)
                : value is TextNode { Text.Length: < 30 } one ? one.Text
                : "my-stock.csv";
            example = $"below {key.Key}: a line for each, - {item}";
        }

        faults.Add(value is TextNode ? value.Place : map.PointAt(path), path,
            $"{key.Key} wants {wants}, not {FormOf(value)}", example);
    }

    // Inside { } a comma ends a value: relief: 10,000 psi is cut after the 10.
    private bool CutByComma(KeysNode node, int i, string path)
    {
        if (!node.IsFlow || i + 1 >= node.Entries.Count || node.Entries[i].Value is not TextNode { IsPlain: true } head)
            return false;
        (TextNode tail, Node rest) = node.Entries[i + 1];
        if (rest is not TextNode { Text: "" } || tail.Text.Length < 3 || head.Text.Length == 0
            || !char.IsAsciiDigit(head.Text[^1]) || !char.IsAsciiDigit(tail.Text[0])
            || tail.Place.Offset != head.Place.Offset + head.Place.Length + 1)
            return false;
        string whole = $"{head.Text},{tail.Text}";
        Place place = head.Place with { Length = head.Place.Length + 1 + tail.Place.Length };
        faults.Add(place, path, $"inside {{ }} the comma ends the value after {head.Text}",
            $"the value in quotes, \"{FaultWords.Clip(whole, 40)}\", or without its comma, {FaultWords.Clip(head.Text + tail.Text, 40)}");
        return true;
    }

    private static KeyShape? Find(IReadOnlyList<RecordShape> candidates, string key)
    {
        foreach (RecordShape candidate in candidates)
        {
            if (candidate.Find(key) is { } found)
                return found;
        }

        return null;
    }

    // the same keys are asked about for every fault of one node, which may have as many as a file has lines
    private bool IsWritten(KeysNode node, string key)
    {
        if (!ReferenceEquals(_written.Of, node))
            _written = (node, [.. node.Entries.Select(e => e.Key.Text)]);
        return _written.Keys.Contains(key);
    }

    private static string? OnlyKindWith(KeysNode node, RecordShape shape)
    {
        string? only = null;
        foreach (RecordShape kind in shape.Kinds)
        {
            bool fits = node.Entries.Count > 0;
            foreach (Entry entry in node.Entries)
                fits &= entry.Key.Text == KindKey || kind.Find(entry.Key.Text) is not null;
            if (!fits)
                continue;
            if (only is not null)
                return null;
            only = kind.Kind;
        }

        return only;
    }

    private static string KindWords(RecordShape shape)
    {
        var words = new List<string>();
        foreach (RecordShape kind in shape.Kinds)
            words.Add($"{kind.Kind} ({kind.Says})");
        return FaultWords.List(words);
    }

    private static List<string> KindNames(RecordShape shape)
    {
        var names = new List<string>();
        foreach (RecordShape kind in shape.Kinds)
            names.Add(kind.Kind ?? "");
        return names;
    }

    private static string FormOf(Node node) => node switch
    {
        KeysNode => "keys with values",
        ListNode => "a list",
        TextNode { IsVoid: true } => "an empty place",
        TextNode text => FaultWords.Quote(text.Text),
        _ => "that",
    };
}
