using System.Text;

namespace Ramwright.Files;

/// <summary>Prints faults for a person: where, what is wrong, the line with a mark under it, what to write instead.</summary>
/// <example><code>
/// wherry-yard.press.yaml:14:10  no steel is called "S275JRR"
///     steel: S275JRR
///            ^^^^^^^
///     wanted: a steel from stock, such as S275; nearest: S275JR
/// </code></example>
public static class FaultText
{
    private const string Margin = "    ";
    private const string WantedLabel = Margin + "wanted: ";

    /// <summary>One fault, its lines ended by LF.</summary>
    /// <param name="fault">The fault.</param>
    /// <param name="width">Columns of the screen or page, at least 40.</param>
    public static string Of(PlacedFault fault, int width = 100)
    {
        ArgumentNullException.ThrowIfNull(fault);
        width = Math.Max(40, width);
        var text = new StringBuilder();
        string where = fault.Line > 0 ? $"{fault.File}:{fault.Line}:{fault.Column}" : fault.File;
        Wrap(text, $"{FaultWords.Clean(where)}  {FaultWords.Clean(fault.Found)}", "", Margin + Margin, width);
        if (fault.Length > 0 && fault.Source.Length > 0)
            Mark(text, fault, width - Margin.Length);
        string wanted = fault.Nearest is null ? fault.Wanted : $"{fault.Wanted}; nearest: {fault.Nearest}";
        if (wanted.Length > 0)
            Wrap(text, FaultWords.Clean(wanted), WantedLabel, new string(' ', WantedLabel.Length), width);
        return text.ToString();
    }

    /// <summary>Several faults with an empty line between, and how many they are.</summary>
    public static string All(IReadOnlyList<PlacedFault> faults, int width = 100)
    {
        ArgumentNullException.ThrowIfNull(faults);
        var text = new StringBuilder();
        foreach (PlacedFault fault in faults)
            text.Append(Of(fault, width)).Append('\n');
        if (faults.Count > 0)
        {
            text.Append(faults.Count == 1 ? "1 fault" : $"{faults.Count} faults");
            text.Append(faults.Count >= FaultList.Limit ? "; there may be more\n" : "\n");
        }

        return text.ToString();
    }

    // The line without its indentation, or the part of a long line around the mark, and carets below.
    private static void Mark(StringBuilder text, PlacedFault fault, int room)
    {
        string line = fault.Source;
        int mark = Math.Min(fault.Column - 1, line.Length);
        int first = 0;
        while (first < mark && char.IsWhiteSpace(line[first]))
            first++;
        int last = line.TrimEnd().Length;
        string before = "", after = "";
        if (last - first > room)
        {
            if (mark - first > room * 2 / 3)
            {
                first = mark - room / 3;
                before = "…";
            }

            if (last - first > room - before.Length)
            {
                last = first + room - before.Length - 1;
                after = "…";
            }
        }

        if (last < first)
            last = first;
        text.Append(Margin).Append(before).Append(FaultWords.Clean(line[first..last])).Append(after).Append('\n');
        text.Append(Margin);
        int blank = before.Length;
        for (int i = first; i < mark && i < line.Length; i++)
            blank += Columns(line[i]);
        int carets = 0;
        for (int i = mark; i < Math.Min(mark + fault.Length, last); i++)
            carets += Columns(line[i]);
        text.Append(' ', blank).Append('^', Math.Max(1, carets)).Append('\n');
    }

    private static void Wrap(StringBuilder text, string words, string first, string next, int width)
    {
        string indent = first;
        int start = 0;
        while (true)
        {
            int room = Math.Max(10, width - indent.Length);
            if (words.Length - start <= room)
            {
                text.Append(indent).Append(words, start, words.Length - start).Append('\n');
                return;
            }

            int cut = words.LastIndexOf(' ', start + room, room);
            int end = cut > start ? cut : start + room;
            text.Append(indent).Append(words.AsSpan(start, end - start).TrimEnd()).Append('\n');
            start = cut > start ? cut + 1 : end;
            while (start < words.Length && words[start] == ' ')
                start++;
            indent = next;
        }
    }

    // Columns a character takes on a screen: none for a combining mark, two for East Asian wide ones. A pair of
    // surrogates is taken as one wide character.
    private static int Columns(char c) => c switch
    {
        >= '\u0300' and <= '\u036F' => 0,
        >= '\u1100' and <= '\u115F' or >= '\u2E80' and <= '\uA4CF' or >= '\uAC00' and <= '\uD7A3'
            or >= '\uF900' and <= '\uFAFF' or >= '\uFE30' and <= '\uFE6F' or >= '\uFF00' and <= '\uFF60' => 2,
        _ => 1,
    };
}
