using System.Collections.Concurrent;
using System.Reflection;
using System.Text;
using Ramwright.Files;

namespace Ramwright.Web.Opened;

/// <summary>The folder that the bench was opened on: its presses, and nothing else on this machine.</summary>
public sealed class BenchFolder
{
    private readonly ConcurrentDictionary<string, Lazy<OpenPress>> _open = new(StringComparer.Ordinal);
    private readonly string _root;

    /// <param name="folder">The folder.</param>
    public BenchFolder(string folder)
    {
        Folder = Path.GetFullPath(folder);
        _root = Path.TrimEndingDirectorySeparator(Real(Folder)) + Path.DirectorySeparatorChar;
    }

    public string Folder { get; }

    /// <summary>The presses in the folder by file name without its ending.</summary>
    public IReadOnlyList<string> Names =>
    [
        .. new DirectoryInfo(Folder).EnumerateFiles("*" + PressFile.Ending).Where(f => Holds(f.FullName))
            .Select(f => f.Name[..^PressFile.Ending.Length]).Where(n => n.Length > 0).Order(StringComparer.OrdinalIgnoreCase),
    ];

    /// <summary>The open press of a name; null where the folder has none of that name.</summary>
    /// <exception cref="IOException">It cannot be read.</exception>
    public OpenPress? Find(string name)
    {
        if (name.Length is 0 or > 200 || name.AsSpan().ContainsAny("/\\\0"))
            return null;
        string path = Path.Combine(Folder, name + PressFile.Ending);
        // an open press may have been made a link since
        if (!Holds(path))
            return null;
        if (_open.TryGetValue(path, out Lazy<OpenPress>? known))
            return known.Value;
        if (!File.Exists(path))
            return null;
        try
        {
            return _open.GetOrAdd(path, p => new Lazy<OpenPress>(() => new OpenPress(p, Holds))).Value;
        }
        catch
        {
            _open.TryRemove(path, out _);       // a failed first reading is not kept
            throw;
        }
    }

    /// <summary>Where the readings of a press lie; null where that would be outside the folder.</summary>
    /// <param name="name">The press.</param>
    public string? ReadingsOf(string name)
    {
        if (name.Length is 0 or > 200 || name.AsSpan().ContainsAny("/\\\0"))
            return null;
        string path = Ramwright.Files.Readings.ReadingLog.PathFor(Path.Combine(Folder, name + PressFile.Ending));
        return Holds(path) ? path : null;
    }

    /// <summary>What a new press can begin with: name and what it is.</summary>
    public static IReadOnlyList<(string Id, string Says)> Patterns { get; } =
    [
        ("wherry-yard", "A boatyard's 25 t closed frame on an electric power pack"),
        ("railing-shop", "A railing restorer's 20 t open-front forging press on an air-driven pump"),
        ("drainage-mill-puller", "A hollow-plunger pulling rig on tie rods"),
        .. Starter.Kinds.Select(kind => (kind, $"Starter: {kind} frame, every key with its meaning")),
    ];

    /// <summary>Writes a copy of an example or starter into the folder; never over a file that is there.</summary>
    /// <param name="pattern">Which.</param>
    /// <param name="name">What the press shall be called: letters, digits, spaces, - and _.</param>
    /// <returns>Empty, or why it was not done.</returns>
    public string Copy(string pattern, string name)
    {
        using Stream? stream = Assembly.GetExecutingAssembly().GetManifestResourceStream($"Examples/{pattern}{PressFile.Ending}");
        if (stream is null && !Starter.Kinds.Contains(pattern))
            return "there is no such example";
        return Create(name, stream is null ? Starter.Text(pattern) : new StreamReader(stream).ReadToEnd());
    }

    /// <summary>Writes a new press file into the folder; never over a file that is there.</summary>
    /// <param name="name">What the press shall be called: letters, digits, spaces, - and _.</param>
    /// <param name="text">The file.</param>
    /// <returns>Empty, or why it was not done.</returns>
    public string Create(string name, string text)
    {
        name = name.Trim();
        if (!IsName(name))
            return "a name of letters, digits, spaces, - and _, please";
        try
        {
            using var file = new FileStream(Path.Combine(Folder, name + PressFile.Ending), FileMode.CreateNew, FileAccess.Write);
            file.Write(Encoding.UTF8.GetBytes(text));
            return "";
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return File.Exists(Path.Combine(Folder, name + PressFile.Ending))
                ? $"{name} is there already and is left as it is; choose another name"
                : $"it could not be written: {e.Message}";
        }
    }

    /// <summary>Whether a file lies in this folder, links followed.</summary>
    public bool Holds(string path) => Real(Path.GetFullPath(path)).StartsWith(_root, StringComparison.Ordinal);

    private static bool IsName(string name) =>
        name.Length is > 0 and <= 100 && name.All(c => char.IsLetterOrDigit(c) || c is ' ' or '-' or '_');

    // every link on the way followed, not the last one only
    private static string Real(string path)
    {
        if (Path.GetDirectoryName(path) is not { } above)
            return path;
        string at = Path.Combine(Real(above), Path.GetFileName(path));
        FileSystemInfo here = Directory.Exists(at) ? new DirectoryInfo(at) : new FileInfo(at);
        try
        {
            return here.ResolveLinkTarget(returnFinalTarget: true)?.FullName is { } target && target != at ? Real(target) : at;
        }
        catch (IOException)
        {
            return at;
        }
    }
}
