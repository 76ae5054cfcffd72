namespace Ramwright.Files.Yaml;

/// <summary>A piece of a YAML text with the place it stands at.</summary>
internal abstract record Node(Place Place);

/// <summary>One word or line. <paramref name="IsPlain"/>: written without quotes, so characters and text agree.</summary>
internal sealed record TextNode(Place Place, string Text, bool IsPlain, bool IsQuoted) : Node(Place)
{
    /// <summary>Nothing was written: <c>bore:</c> with an empty rest of the line, <c>~</c> or <c>null</c>.</summary>
    public bool IsVoid => IsPlain && Text is "" or "~" or "null" or "Null" or "NULL";
}

/// <summary>Keys with their values, in the order they were written.</summary>
internal sealed record KeysNode(Place Place, List<Entry> Entries, bool IsFlow) : Node(Place);

/// <summary>One key with its value.</summary>
internal sealed record Entry(TextNode Key, Node Value);      // a class: generic code over it is then compiled ahead of time

/// <summary>A list.</summary>
internal sealed record ListNode(Place Place, List<Node> Items) : Node(Place);

/// <summary>Something already refused; nothing more is said about it.</summary>
internal sealed record RefusedNode(Place Place) : Node(Place);
