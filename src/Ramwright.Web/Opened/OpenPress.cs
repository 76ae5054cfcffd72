using Ramwright.Files;
using Ramwright.Files.Editing;
using Ramwright.Ladders;
using Ramwright.Solids;

namespace Ramwright.Web.Opened;

/// <summary>
/// One press file that is open on the bench, shared by everyone who looks at it: two tabs work on the same text, so neither can
/// lose what the other changed. Safe to call from many threads.
/// </summary>
public sealed class OpenPress
{
    private const int MostSteps = 500;

    private readonly object _gate = new();
    private readonly string _path, _fileName;
    private readonly Predicate<string>? _mayRead;
    private readonly LinkedList<string> _before = [];
    private readonly Stack<string> _after = [];
    private readonly KeptJoints _joints = new();
    private DiskText _disk;
    private (string Path, object Stroke)? _typing;
    private (DiskText Disk, CheckedPress Press)? _saved;
    private PressNow _now;

    /// <summary>Opens a press file.</summary>
    /// <param name="path">Where it lies.</param>
    /// <param name="mayRead">Whether a stock table that it names may be opened, by full path; null where any may.</param>
    /// <exception cref="IOException">It is not there, or cannot be read.</exception>
    public OpenPress(string path, Predicate<string>? mayRead = null)
    {
        _path = Path.GetFullPath(path);
        _fileName = Path.GetFileName(path);
        _mayRead = mayRead;
        _disk = DiskText.Read(_path);
        _now = Settled(_disk.Text, null, null);
    }

    /// <summary>Name of the file.</summary>
    public string FileName => _fileName;

    /// <summary>The press as it stands.</summary>
    public PressNow Now => Volatile.Read(ref _now);

    /// <summary>The press as it was last read from its file or saved to it.</summary>
    public CheckedPress Saved
    {
        get
        {
            DiskText disk;
            lock (_gate)
            {
                if (_saved is { } known && ReferenceEquals(known.Disk, _disk))
                    return known.Press;
                disk = _disk;
            }

            var press = CheckedPress.Of(disk.Text is null
                ? PressOnDisk.Read(disk.Bytes, _path, _fileName, _mayRead, _joints)
                : PressOnDisk.Read(disk.Text, _path, _fileName, _mayRead, _joints));
            lock (_gate)
                _saved = (disk, press);
            return press;
        }
    }

    /// <summary>Told after every change, on the thread that made it.</summary>
    public event Action? Changed;

    /// <summary>Sets one value. A value of nothing but spaces takes the key out.</summary>
    /// <param name="path">Its path: <c>frame.crown.section</c>.</param>
    /// <param name="value">As a person types it.</param>
    /// <param name="stroke">
    /// What belongs together: as long as one person types in one field it is one step to undo, and the text grows from where it
    /// was before, so that a key whose value is emptied and typed anew keeps its place and its comment.
    /// </param>
    public PressNow Set(string path, string value, object? stroke = null) => Edit(text =>
        value.Trim().Length == 0 ? Without(text, path) : TextEdit.Set(text, path, value.Trim()), path, stroke);

    /// <summary>Sets several values as one step.</summary>
    /// <param name="values">Paths and values, in the order in which they are to stand.</param>
    public PressNow Set(IReadOnlyList<(string Path, string Value)> values) =>
        Edit(text => values.Aggregate(text, (so, v) => TextEdit.Set(so, v.Path, v.Value)), values[0].Path, null);

    /// <summary>Takes a key out with all that stands under it; keys above it that hold nothing else go too.</summary>
    public PressNow Remove(string path) => Edit(text => Without(text, path), path, null);

    /// <summary>Makes one of a record's kinds of it; keys that only another kind has go out.</summary>
    /// <param name="path">Path of the record.</param>
    /// <param name="kind">The word; empty takes the whole record out.</param>
    /// <param name="foreign">Paths of the keys that the new kind does not know.</param>
    public PressNow SetKind(string path, string kind, IEnumerable<string> foreign) => Edit(text =>
    {
        if (kind.Length == 0)
            return Without(text, path);
        text = TextEdit.Set(text, path + ".kind", kind);
        foreach (string key in foreign)
            text = TextEdit.Remove(text, key);
        return text;
    }, path, null);

    /// <summary>Takes the last step back.</summary>
    public PressNow Undo() => Change(() =>
    {
        if (_before.Last is not { } last || _now.Text is not { } text)
            return _now;
        _before.RemoveLast();
        _after.Push(text);
        _typing = null;
        return Settled(last.Value, _now.Check, _now.Theirs);
    });

    /// <summary>Does the last step that was taken back again.</summary>
    public PressNow Redo() => Change(() =>
    {
        if (_now.Text is not { } text || !_after.TryPop(out string? next))
            return _now;
        Remember(text);
        _typing = null;
        return Settled(next, _now.Check, _now.Theirs);
    });

    /// <summary>
    /// Saves. Where the file has changed on disk since it was read, nothing is written and <see cref="PressNow.Theirs"/> holds what
    /// stands there, for a person to choose.
    /// </summary>
    /// <param name="step">Told of every step of the write; null for none.</param>
    public PressNow Save(Action<WholeWrite.Before>? step = null) => Change(() => Write(step));

    /// <summary>Keeps joints that were found from solids beside the file; the answer then stands on them.</summary>
    public PressNow KeepJoints(JointBook joints) => Change(() =>
    {
        string path = JointsFile.PathOf(_path);
        if (_mayRead?.Invoke(path) == false)
            return _now with { Version = _now.Version + 1, Refusal = $"{Path.GetFileName(path)} leads out of its folder: it is not written" };
        if (JointsFile.Write(path, joints) is { } unwritten)
            return _now with { Version = _now.Version + 1, Refusal = unwritten };
        _joints.Forget();
        return Settled(_now.Text, _now.Check, _now.Theirs);
    });

    /// <summary>Takes away the joints that were kept beside the file: the answer stands on the rules again.</summary>
    public PressNow DropJoints() => Change(() =>
    {
        string path = JointsFile.PathOf(_path);
        if (_mayRead?.Invoke(path) == false)
            return _now with { Version = _now.Version + 1, Refusal = $"{Path.GetFileName(path)} leads out of its folder: it is not taken away" };
        try
        {
            File.Delete(path);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return _now with { Version = _now.Version + 1, Refusal = $"{Path.GetFileName(path)} could not be taken away: {e.Message}" };
        }

        return Settled(_now.Text, _now.Check, _now.Theirs);
    });

    /// <summary>Saves what is here over what someone else wrote; if that too has changed meanwhile, it is shown and nothing is written.</summary>
    public PressNow KeepMine() => Change(() =>
    {
        if (_now.Theirs is { } theirs)
            _disk = theirs with { HasMark = _disk.HasMark };
        return Write(null);
    });

    /// <summary>Takes what someone else wrote; what was here can be had back by undo.</summary>
    public PressNow TakeTheirs() => Change(() => _now.Theirs is { } theirs ? Take(theirs) : _now);

    /// <summary>Looks whether the file has changed: with nothing unsaved here it is taken over, otherwise a person must choose.</summary>
    public PressNow Look() => Change(() =>
    {
        if (_mayRead?.Invoke(_path) == false)
            return _now;
        DiskText disk;
        try
        {
            disk = DiskText.Read(_path);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return _now;        // gone: what is here is all there is, and saving puts it back
        }

        if (disk.Same(_disk))
            return _now.Theirs is null ? _now : Settled(_now.Text, _now.Check, null);
        if (_now.Theirs is { } known && known.Same(disk))
            return _now;
        return _now.IsUnsaved ? Settled(_now.Text, _now.Check, disk) : Take(disk);
    });

    private PressNow Take(DiskText theirs)
    {
        if (_now.Text is { } text && text != theirs.Text)
            Remember(text);
        _after.Clear();
        _typing = null;
        _disk = theirs;
        return Settled(theirs.Text, _now.Check, null);
    }

    private PressNow Write(Action<WholeWrite.Before>? step)
    {
        if (_now.Text is not { } text)
            return _now;
        if (_mayRead?.Invoke(_path) == false)
            return _now with { Version = _now.Version + 1, Refusal = $"{_fileName} has become a link out of its folder: it is not written" };
        byte[] bytes = _disk.With(text);
        DiskText? theirs = null;
        bool StillGood()
        {
            // a file that was deleted is put back: nothing of anyone's is lost by that
            theirs = File.Exists(_path) ? DiskText.Read(_path) : null;
            return theirs is null || theirs.Same(_disk) || theirs.Bytes.AsSpan().SequenceEqual(bytes);
        }

        try
        {
            if (!WholeWrite.Replace(_path, bytes, StillGood, step))
                return Settled(text, _now.Check, theirs);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return _now with { Version = _now.Version + 1, Refusal = $"{_fileName} could not be saved: {e.Message}" };
        }

        _disk = DiskText.Of(bytes);
        _typing = null;
        return Settled(text, _now.Check, null);
    }

    private PressNow Edit(Func<string, string> edit, string path, object? stroke) => Change(() =>
    {
        if (_now.Text is not { } text)
            return _now with { Version = _now.Version + 1, Refusal = "this file is no text that can be edited here" };
        bool goesOn = stroke is not null && _typing is { } typing && typing.Path == path && typing.Stroke == stroke && _before.Last is not null;
        string from = goesOn ? _before.Last!.Value : text;
        string to;
        try
        {
            to = edit(from);
        }
        catch (Exception e) when (e is ArgumentException or FormatException or KeyNotFoundException)
        {
            return _now with { Version = _now.Version + 1, Refusal = $"{path} cannot be written here: {e.Message.Split(" (Parameter", 2)[0]}" };
        }

        if (to.Length > PressFile.LongestFile)
            return _now with { Version = _now.Version + 1, Refusal = "the file would be too long for a press file" };
        if (!goesOn && to != from)
        {
            Remember(from);
            _typing = stroke is null ? null : (path, stroke);
        }

        if (to == text)
            return _now.Refusal.Length == 0 ? _now : _now with { Version = _now.Version + 1, Refusal = "" };
        _after.Clear();
        return Settled(to, _now.Check, _now.Theirs);
    });

    private void Remember(string text)
    {
        _before.AddLast(text);
        if (_before.Count > MostSteps)
            _before.RemoveFirst();
    }

    private static string Without(string text, string path)
    {
        text = TextEdit.Remove(text, path);
        for (int dot = path.LastIndexOf('.'); dot > 0; dot = path.LastIndexOf('.', dot - 1))
        {
            string above = path[..dot];
            var sheet = new EditSheet(text);
            if (!sheet.Map.TryFind(above, out _) || sheet.Children(above).Count > 0)
                break;
            text = TextEdit.Remove(text, above);
        }

        return text;
    }

    private PressNow Settled(string? text, PressCheck? last, DiskText? theirs)
    {
        CheckedPress read = CheckedPress.Of(text is null
            ? PressOnDisk.Read(_disk.Bytes, _path, _fileName, _mayRead, _joints)
            : PressOnDisk.Read(text, _path, _fileName, _mayRead, _joints));
        return new PressNow
        {
            Version = (_now?.Version ?? 0) + 1,
            Text = text,
            Read = read,
            Check = read.Check ?? last,
            IsUnsaved = text is not null && text != _disk.Text,
            CanUndo = _before.Count > 0,
            CanRedo = _after.Count > 0,
            Theirs = theirs,
        };
    }

    private PressNow Change(Func<PressNow> change)
    {
        PressNow was, now;
        lock (_gate)
        {
            was = _now;
            now = change();
            Volatile.Write(ref _now, now);
        }

        if (!ReferenceEquals(now, was))
            Changed?.Invoke();
        return now;
    }
}
