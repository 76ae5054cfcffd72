using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace Ramwright.Files.Yaml;

/// <summary>
/// Reads the part of YAML that a press file uses (keys, lists, one-line values, comments) into nodes that know their
/// place. What it does not use is refused: anchors, aliases, tags, several documents in one file, deep nesting.
/// </summary>
internal sealed class YamlTree
{
    /// <summary>Deepest nesting; a press needs five.</summary>
    public const int DeepestLevel = 16;

    /// <summary>Most keys, values and lists in one file; a press has a few hundred.</summary>
    public const int MostNodes = 20_000;

    private readonly FaultList _faults;
    private readonly SourceText _source;
    private readonly Parser _parser;
    private Node? _top;
    private bool _stopped;
    private int _brokenLine;
    private bool _saidNames;
    private int _nodes;

    private YamlTree(FaultList faults)
    {
        _faults = faults;
        _source = faults.Source;
        _parser = new Parser(new StringReader(_source.Text));
    }

    /// <summary>Reads a text.</summary>
    /// <param name="faults">Takes what is wrong; its source is what is read.</param>
    /// <param name="brokenLine">The line at which the text could not be read further; 0 when its end was reached.</param>
    /// <returns>The top of the tree; null when there is nothing in the text or nothing could be read.</returns>
    public static Node? Read(FaultList faults, out int brokenLine)
    {
        var tree = new YamlTree(faults);
        Node? top = null;
        try
        {
            top = tree.ReadDocument();
        }
        catch (Exception broken) when (broken is YamlException or InvalidOperationException or ArgumentException)
        {
            // The scanner answers some broken brackets with InvalidOperationException, without a place.
            int at = broken is YamlException placed && placed.Start.Line > 0 ? (int)placed.Start.Index : -1;
            tree._brokenLine = YamlTrouble.Report(faults, broken.Message, at);
            top = tree._top;
        }

        brokenLine = tree._brokenLine;
        return top;
    }

    private Node? ReadDocument()
    {
        while (Next() is { } e)
        {
            switch (e)
            {
                case StreamStart or DocumentStart or DocumentEnd when _top is null:
                    break;
                case DocumentStart:
                    _faults.Add(_source.At((int)e.Start.Index, 3), "", "a second document begins here",
                        "one press in one file: take the --- line and what follows it out");
                    _stopped = true;
                    return _top;
                case StreamEnd:
                    return _top;
                case NodeEvent or AnchorAlias when _top is null:
                    ReadNode(e, 1, n => _top ??= n);
                    break;
            }

            if (_stopped)
                return _top;
        }

        return _top;
    }

    private ParsingEvent? Next() => _parser.MoveNext() ? _parser.Current : null;

    // Each node is handed on as soon as it begins, so that what was read before a syntax error is not lost.
    private void ReadNode(ParsingEvent e, int level, Action<Node> keep)
    {
        Place start = _source.At((int)e.Start.Index, 1);
        if (++_nodes > MostNodes)
        {
            Stop(start, $"there are more than {MostNodes} keys and values; the rest was not read", "a press file: is this another kind of file?");
            return;
        }

        bool refused = Refuse(e, start);
        switch (e)
        {
            case Scalar scalar:
                keep(refused ? new RefusedNode(start) : Text(scalar));
                break;
            case MappingStart map:
                var keys = new KeysNode(start, [], map.Style == MappingStyle.Flow);
                keep(refused ? new RefusedNode(start) : keys);
                if (!TooDeep(level, start))
                    ReadKeys(keys, level);
                break;
            case SequenceStart:
                var list = new ListNode(start, []);
                keep(refused ? new RefusedNode(start) : list);
                if (!TooDeep(level, start))
                    ReadItems(list, level);
                break;
            default:
                keep(new RefusedNode(start));       // an alias
                break;
        }
    }

    private void ReadKeys(KeysNode keys, int level)
    {
        while (!_stopped && Next() is { } e and (NodeEvent or AnchorAlias))
        {
            TextNode? key = null;
            ReadNode(e, level + 1, n => key = n as TextNode);
            if (_stopped)
                return;
            if (key is null && e is not AnchorAlias)
            {
                _faults.Add(_source.At((int)e.Start.Index, 1), "", "a key must be a plain word",
                    "a word and a colon, such as bore: 100 mm");
            }

            if (Next() is not ({ } value and (NodeEvent or AnchorAlias)))
                return;
            TextNode? named = key;
            ReadNode(value, level + 1, n =>
            {
                if (named is not null)
                    keys.Entries.Add(new Entry(named, n));
            });
        }
    }

    private void ReadItems(ListNode list, int level)
    {
        while (!_stopped && Next() is { } e and (NodeEvent or AnchorAlias))
            ReadNode(e, level + 1, list.Items.Add);
    }

    private TextNode Text(Scalar scalar)
    {
        int start = (int)scalar.Start.Index;
        int end = Math.Min((int)scalar.End.Index, _source.Text.Length);
        bool quoted = scalar.Style is ScalarStyle.SingleQuoted or ScalarStyle.DoubleQuoted;
        while (end > start && char.IsWhiteSpace(_source.Text[end - 1]))
            end--;
        return new TextNode(_source.At(start, end - start), scalar.Value, scalar.Style == ScalarStyle.Plain, quoted);
    }

    private bool Refuse(ParsingEvent e, Place start)
    {
        int word = start.Offset;
        while (word < _source.Text.Length && !char.IsWhiteSpace(_source.Text[word]) && _source.Text[word] is not (',' or ']' or '}'))
            word++;
        Place place = start with { Length = Math.Max(1, word - start.Offset) };
        if (e is AnchorAlias alias)
        {
            SayOnce(place, $"*{alias.Value} stands for something written elsewhere; a press file does not use that",
                "the value itself, written out again; in quotes if it really begins with *");
            return true;
        }

        var node = (NodeEvent)e;
        if (!node.Anchor.IsEmpty)
        {
            SayOnce(place, $"&{node.Anchor.Value} names a value for use elsewhere; a press file does not use that",
                "the value alone; in quotes if it really begins with &");
            return true;
        }

        if (!node.Tag.IsEmpty)
        {
            _faults.Add(place, "", "a value that begins with ! has a special meaning in YAML; a press file does not use that",
                "the value alone; in quotes if it really begins with !");
            return true;
        }

        return false;
    }

    // Whoever uses names uses many; one word about it is enough.
    private void SayOnce(Place place, string found, string wanted)
    {
        if (!_saidNames)
            _faults.Add(place, "", found, wanted);
        _saidNames = true;
    }

    private bool TooDeep(int level, Place place)
    {
        if (level <= DeepestLevel)
            return false;
        Stop(place, $"keys are nested more than {DeepestLevel} deep here; the rest was not read",
            "a press needs five levels at most: look for a bracket too many");
        return true;
    }

    private void Stop(Place place, string found, string wanted)
    {
        _faults.Add(place, "", found, wanted);
        _brokenLine = place.Line;
        _stopped = true;
    }
}
