using System.Globalization;

namespace Ramwright.Files.Editing;

/// <summary>
/// Changes single values in the text of a press file. Every character outside the value, comments included, stays as it is;
/// a key that was not there gets a place of its own, written the way its neighbours are.
/// </summary>
public static class TextEdit
{
    /// <summary>Sets the value at a path, adding the keys above it where they are missing.</summary>
    /// <param name="text">The file.</param>
    /// <param name="path">The path: <c>frame.crown.section</c>, <c>lines.0.bore</c>; one past the end of a list begins a new item.</param>
    /// <param name="value">What to write there, as a person would; quotes are added where they are needed.</param>
    /// <exception cref="ArgumentException">The path goes through a value, or past the end of a list.</exception>
    public static string Set(string text, string path, string value)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentException.ThrowIfNullOrEmpty(path);
        ArgumentNullException.ThrowIfNull(value);
        var sheet = new EditSheet(text);
        if (!sheet.Map.TryFind(path, out SourceMap.Spot? spot))
            return Add(sheet, path, value);
        if (!spot.IsText)
            throw new ArgumentException($"{path} holds keys or a list, not one value", nameof(path));
        string written = Quoting.Written(value, sheet.IsInFlow(path));
        return spot.Value.Length > 0
            ? sheet.Text.Remove(spot.Value.Offset, spot.Value.Length).Insert(spot.Value.Offset, written)
            : sheet.Text.Insert(sheet.AfterColon(spot.Key!.Value), " " + written);
    }

    /// <summary>Takes the value at a path out, and its key with it. A comment on the same line stays.</summary>
    /// <returns>The text; the same text where nothing stood at the path.</returns>
    public static string Remove(string text, string path)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentException.ThrowIfNullOrEmpty(path);
        var sheet = new EditSheet(text);
        if (!sheet.Map.TryFind(path, out SourceMap.Spot? spot))
            return sheet.Text;
        int from = spot.Key?.Offset ?? spot.Value.Offset, to = sheet.End(path);
        return sheet.IsInFlow(path) ? WithoutInFlow(sheet.Text, from, to) : WithoutLines(sheet, from, to);
    }

    private static string Add(EditSheet sheet, string path, string value)
    {
        // the nearest path above that is there, and what has to be written below it
        int dot = path.Length;
        string above, rest;
        do
        {
            dot = path.LastIndexOf('.', dot - 1);
            above = dot < 0 ? "" : path[..dot];
            rest = path[(dot + 1)..];
        }
        while (dot >= 0 && !sheet.Map.TryFind(above, out _));

        if (!sheet.Map.TryFind(above, out SourceMap.Spot? owner))
            return sheet.Text + Block(rest, value, 0, sheet.NewLine) + sheet.NewLine;     // an empty file
        if (owner is { IsText: true, Value.Length: > 0 } && above.Length > 0)
            throw new ArgumentException($"{above} is one value; nothing can stand below it", nameof(path));

        IReadOnlyList<string> children = sheet.Children(above);
        if (int.TryParse(First(rest), NumberStyles.None, CultureInfo.InvariantCulture, out int item) && item != children.Count)
            throw new ArgumentException($"{above} has {children.Count} items; the next is {above}.{children.Count}", nameof(path));
        if (owner.Value.Length > 0 && sheet.Text[owner.Value.Offset] is '{' or '[')
            return AddInFlow(sheet, owner, children, Flow(rest, value));

        if (children.Count == 0)
        {
            int indent = above.Length == 0 ? 0 : sheet.IndentOf(owner.Key!.Value) + 2;
            int end = above.Length == 0 ? sheet.Text.Length : sheet.LineEnd(owner.Key!.Value.Offset);
            return Insert(sheet, end, Block(rest, value, indent, sheet.NewLine));
        }

        string last = children[^1];
        return Insert(sheet, sheet.LineEnd(sheet.End(last)), Block(rest, value, sheet.IndentOfChild(last), sheet.NewLine));
    }

    private static string Insert(EditSheet sheet, int at, string block)
    {
        bool first = at == 0 || sheet.Text[at - 1] == '\n';
        return sheet.Text.Insert(at, first ? block + sheet.NewLine : sheet.NewLine + block);
    }

    private static string AddInFlow(EditSheet sheet, SourceMap.Spot owner, IReadOnlyList<string> children, string entry)
    {
        int close = sheet.ClosingBracket(owner.Value.Offset);
        if (children.Count == 0)
            return sheet.Text.Remove(owner.Value.Offset + 1, close - owner.Value.Offset - 1).Insert(owner.Value.Offset + 1, $" {entry} ");
        return sheet.Text.Insert(sheet.End(children[^1]), ", " + entry);
    }

    private static string WithoutInFlow(string text, int from, int to)
    {
        int after = to;
        while (after < text.Length && char.IsWhiteSpace(text[after]))
            after++;
        if (after < text.Length && text[after] == ',')
        {
            after++;
            while (after < text.Length && text[after] == ' ')
                after++;
            return text.Remove(from, after - from);
        }

        int before = from;
        while (before > 0 && char.IsWhiteSpace(text[before - 1]))
            before--;
        if (before > 0 && text[before - 1] == ',')
            from = before - 1;
        return text.Remove(from, to - from);
    }

    private static string WithoutLines(EditSheet sheet, int from, int to)
    {
        string text = sheet.Text;
        int end = sheet.LineEnd(to), start = from;
        while (start > 0 && text[start - 1] is ' ' or '-')
            start--;
        string comment = text[to..end].Trim();
        bool shares = text[start..from].Contains('-');      // the first key of a list's item: the dash must stay for the next
        if (shares && text[from..to].Contains(':') && NextKey(text, end, from - start) is { } next)
            return text.Remove(from, next - from).Insert(from, comment.Length > 0 ? comment + sheet.NewLine + new string(' ', from - start) : "");
        if (comment.Length > 0)
            return text.Remove(from, to - from).Remove(from, text[to..end].Length - text[to..end].TrimStart().Length);
        if (end < text.Length)
            end += text[end] == '\r' ? 2 : 1;
        else if (start > 0)
            start -= start > 1 && text[start - 2] == '\r' ? 2 : 1;
        return text.Remove(start, end - start);
    }

    // where the next line's key stands when it belongs to the same item: as far in as the one that goes
    private static int? NextKey(string text, int lineEnd, int indent)
    {
        int at = lineEnd;
        while (at < text.Length && text[at] is '\r' or '\n')
            at++;
        int key = at;
        while (key < text.Length && text[key] == ' ')
            key++;
        return key - at == indent && key < text.Length && text[key] is not ('-' or '#') ? key : null;
    }

    private static string First(string path) => path.Split('.', 2)[0];

    /// <summary>Keys one below the other: <c>crown:</c>, <c>  section: HEB 160</c>; the first step of a list's item is its dash.</summary>
    private static string Block(string path, string value, int indent, string newLine)
    {
        string[] steps = path.Split('.');
        string pad = new(' ', indent);
        bool item = int.TryParse(steps[0], NumberStyles.None, CultureInfo.InvariantCulture, out _);
        if (item)
            return steps.Length == 1 ? $"{pad}- {Quoting.Written(value, false)}" : $"{pad}- {{ {Flow(string.Join('.', steps[1..]), value)} }}";
        return steps.Length == 1
            ? $"{pad}{steps[0]}: {Quoting.Written(value, false)}"
            : $"{pad}{steps[0]}:{newLine}{Block(string.Join('.', steps[1..]), value, indent + 2, newLine)}";
    }

    /// <summary>Keys inside each other's brackets: <c>crown: { section: HEB 160 }</c>.</summary>
    private static string Flow(string path, string value)
    {
        string[] steps = path.Split('.', 2);
        bool item = int.TryParse(steps[0], NumberStyles.None, CultureInfo.InvariantCulture, out _);
        if (steps.Length == 1)
            return item ? Quoting.Written(value, true) : $"{steps[0]}: {Quoting.Written(value, true)}";
        bool list = int.TryParse(First(steps[1]), NumberStyles.None, CultureInfo.InvariantCulture, out _);
        string inner = list ? $"[ {Flow(steps[1], value)} ]" : $"{{ {Flow(steps[1], value)} }}";
        return item ? inner : $"{steps[0]}: {inner}";
    }
}
