using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using Ramwright.Quantities;

namespace Ramwright.Stock;

/// <summary>
/// Everything that can be asked for by name. Immutable; built from tables by whoever reads them. Names are compared
/// without regard to case and spaces.
/// </summary>
public sealed record Shelf
{
    private readonly IReadOnlyList<Steel> _steels = [];
    private readonly IReadOnlyList<Shape> _sections = [];
    private readonly IReadOnlyList<ScrewThread> _threads = [];
    private Dictionary<string, Steel>? _steelsByName;
    private Dictionary<string, Shape>? _byName;
    private Dictionary<string, ScrewThread>? _threadsByName;

    /// <summary>Steels.</summary>
    public required IReadOnlyList<Steel> Steels
    {
        get => _steels;
        init
        {
            _steels = value;
            _steelsByName = null;
        }
    }
    /// <summary>Rolled and hollow sections.</summary>
    public required IReadOnlyList<Shape> Sections
    {
        get => _sections;
        init
        {
            _sections = value;
            _byName = null;
            Known = new KnownShapes();
        }
    }
    /// <summary>What was read from these sections before.</summary>
    internal KnownShapes Known { get; private init; } = new();
    /// <summary>Bolt and rod classes, a row per range of diameters.</summary>
    public required IReadOnlyList<PropertyClass> Classes { get; init; }
    /// <summary>Threads that go by name: coarse metric ones, UNC, UNF and UN.</summary>
    public required IReadOnlyList<ScrewThread> Threads
    {
        get => _threads;
        init
        {
            _threads = value;
            _threadsByName = null;
        }
    }
    /// <summary>Hoses.</summary>
    public required IReadOnlyList<HoseGrade> Hoses { get; init; }
    /// <summary>Oils.</summary>
    public required IReadOnlyList<OilGrade> Oils { get; init; }
    /// <summary>Threads of lines and ports.</summary>
    public IReadOnlyList<PortThread> Ports { get; init; } = [];

    /// <summary>A shelf with nothing on it.</summary>
    public static Shelf Empty { get; } = new()
    {
        Steels = [],
        Sections = [],
        Classes = [],
        Threads = [],
        Hoses = [],
        Oils = [],
    };

    /// <summary>Finds a steel by its name.</summary>
    public bool TrySteel(string name, [NotNullWhen(true)] out Steel? steel) =>
        (_steelsByName ??= Index(_steels, s => s.Name)).TryGetValue(Key(name), out steel);

    /// <summary>Finds a section that goes by name; pairs and bars by dimensions are read by <see cref="SectionText"/>.</summary>
    public bool TrySection(string name, [NotNullWhen(true)] out Shape? section)
    {
        _byName ??= Index(_sections, s => s.Name);
        return _byName.TryGetValue(Key(name), out section);
    }

    /// <summary>Finds a class for a thread of diameter <paramref name="d"/>, m.</summary>
    public bool TryClass(string name, double d, [NotNullWhen(true)] out PropertyClass? found) =>
        (found = Classes.FirstOrDefault(c => SameName(c.Name, name) && d > c.Above && d <= c.UpTo)) is not null;

    /// <summary>Finds a thread as <see cref="ThreadText"/> reads it: by its name, or any by size and pitch, <c>M36x2</c>, <c>3/4-12 UN</c>.</summary>
    /// <remarks>A pitch given is taken as given, be it a standard one or not; it must be less than a quarter of the diameter.</remarks>
    public bool TryThread(string name, [NotNullWhen(true)] out ScrewThread? thread)
    {
        ArgumentNullException.ThrowIfNull(name);
        string key = Key(name);
        if ((_threadsByName ??= Index(_threads, t => t.Name)).TryGetValue(key, out thread))
            return true;
        if (!ThreadText.TryRead(name, out ThreadCall call))
            return false;

        thread = Threads.FirstOrDefault(t => t.Form == call.Form && Math.Abs(t.D - call.D) < 1e-9
            && (call.P is { } p ? Math.Abs(t.P - p) < 1e-9 : call.Series.Length > 0) && t.Name.EndsWith(call.Series, StringComparison.OrdinalIgnoreCase));
        if (thread is null && call is { P: { } own, Series: "" or "UN" } && call.D is >= 1e-3 and <= 0.5 && own >= 0.2e-3 && own < call.D / 4 + 1e-9)
            thread = Made(call, own);
        return thread is not null;
    }

    private static ScrewThread Made(ThreadCall call, double p) => new(call.D, p)
    {
        Form = call.Form,
        Name = call.Form == ThreadForm.Unified
            ? string.Create(CultureInfo.InvariantCulture, $"{call.Size}-{0.0254 / p:0.###} UN")
            : string.Create(CultureInfo.InvariantCulture, $"M{call.D * 1000:0.###}x{p * 1000:0.###}"),
    };

    /// <summary>Finds a hose of a type by its bore, m, within half a millimetre: makers round 9.5 mm and 3/8 in alike.</summary>
    public bool TryHose(string type, double bore, [NotNullWhen(true)] out HoseGrade? hose)
    {
        hose = Hoses
            .Where(h => SameName(h.Type, type) && Math.Abs(h.Bore - bore) <= 0.5e-3)
            .MinBy(h => Math.Abs(h.Bore - bore));
        return hose is not null;
    }

    /// <summary>Finds a thread of a line or port: <c>G 3/8</c>, <c>JIC 6</c>, <c>cone 12L</c>.</summary>
    public bool TryPort(string name, [NotNullWhen(true)] out PortThread? port) =>
        (port = Ports.FirstOrDefault(p => SameName(p.Name, name))) is not null;

    /// <summary>Finds an oil by its grade: <c>VG 46</c>, <c>ISO VG 46</c>.</summary>
    public bool TryOil(string name, [NotNullWhen(true)] out OilGrade? oil)
    {
        ArgumentNullException.ThrowIfNull(name);
        string key = Key(name);
        if (key.StartsWith("ISO", StringComparison.Ordinal))
            key = key[3..];
        return (oil = Oils.FirstOrDefault(o => SameName(o.Name, key))) is not null;
    }

    /// <summary>The steels whose names are nearest to what was written.</summary>
    public IReadOnlyList<string> NearestSteels(string written, int count = 3) =>
        NearestWord.Ranked(written, Steels.Select(s => s.Name), count);

    /// <summary>The sections whose names are nearest to what was written.</summary>
    public IReadOnlyList<string> NearestSections(string written, int count = 3) =>
        NearestWord.Ranked(written, Sections.Select(s => s.Name), count);

    /// <summary>The classes whose names are nearest to what was written.</summary>
    public IReadOnlyList<string> NearestClasses(string written, int count = 3) =>
        NearestWord.Ranked(written, Classes.Select(c => c.Name), count);

    /// <summary>The threads whose names are nearest to what was written.</summary>
    public IReadOnlyList<string> NearestThreads(string written, int count = 3) =>
        NearestWord.Ranked(written, Threads.Select(t => t.Name), count);

    /// <summary>The hose types whose names are nearest to what was written.</summary>
    public IReadOnlyList<string> NearestHoses(string written, int count = 3) =>
        NearestWord.Ranked(written, Hoses.Select(h => h.Type), count);

    /// <summary>The oils whose names are nearest to what was written.</summary>
    public IReadOnlyList<string> NearestOils(string written, int count = 3) =>
        NearestWord.Ranked(written, Oils.Select(o => o.Name), count);

    /// <summary>Whether two stock names are the same but for case, spaces, and × for x.</summary>
    public static bool SameName(string a, string b)
    {
        ArgumentNullException.ThrowIfNull(a);
        ArgumentNullException.ThrowIfNull(b);
        int i = 0, j = 0;
        while (true)
        {
            while (i < a.Length && char.IsWhiteSpace(a[i]))
                i++;
            while (j < b.Length && char.IsWhiteSpace(b[j]))
                j++;
            if (i == a.Length || j == b.Length)
                return i == a.Length && j == b.Length;
            if (Key(a[i++]) != Key(b[j++]))
                return false;
        }
    }

    /// <summary>A name without what does not count, to compare by: no spaces, capitals, X for the sign of multiplication.</summary>
    public static string Key(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        Span<char> key = name.Length <= 256 ? stackalloc char[name.Length] : new char[name.Length];
        int length = 0;
        foreach (char c in name)
        {
            if (!char.IsWhiteSpace(c))
                key[length++] = Key(c);
        }

        return new string(key[..length]);
    }

    private static char Key(char c) => c is '×' or '*' ? 'X' : char.ToUpperInvariant(c);

    /// <inheritdoc/>
    public bool Equals(Shelf? other) => ReferenceEquals(this, other);

    /// <inheritdoc/>
    public override int GetHashCode() => System.Runtime.CompilerServices.RuntimeHelpers.GetHashCode(this);

    // the first of a name counts: a person's own rows stand in front
    private static Dictionary<string, T> Index<T>(IReadOnlyList<T> rows, Func<T, string> nameOf)
    {
        var index = new Dictionary<string, T>(rows.Count);
        foreach (T row in rows)
            index.TryAdd(Key(nameOf(row)), row);
        return index;
    }
}
