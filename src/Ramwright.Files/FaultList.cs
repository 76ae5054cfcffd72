using Ramwright.Files.Yaml;
using Ramwright.Presses;
using Ramwright.Quantities;

namespace Ramwright.Files;

/// <summary>Collects the faults of one file, up to a limit that a person could still read.</summary>
internal sealed class FaultList(string fileName, SourceText source)
{
    /// <summary>More faults than this are counted by nobody.</summary>
    public const int Limit = 100;

    private const int LongestLine = 400;
    private const int LongestText = 600;

    private readonly List<PlacedFault> _faults = [];

    public SourceText Source => source;
    public bool IsFull => _faults.Count >= Limit;
    public int Count => _faults.Count;

    public void Add(Place place, string path, string found, string wanted, string? nearest = null)
    {
        if (IsFull)
            return;
        string line = FaultWords.Clip(source.Line(place.Line), LongestLine);
        int length = Math.Clamp(place.Length, 0, Math.Max(0, line.Length - place.Column + 1));
        if (place.Length > 0 && length == 0)
            length = 1;             // just behind the end of the line
        _faults.Add(new PlacedFault(fileName, place.Line, place.Column, length, path,
            FaultWords.Clip(found, LongestText), FaultWords.Clip(wanted, LongestText), nearest, line));
    }

    /// <summary>Adds a fault where its value stands, with the value it clashes with in the person's own words.</summary>
    public void Add(Fault fault, SourceMap map, UnitSystem units)
    {
        string against = "";
        if (fault.Against is { } path && map.TryFind(path, out SourceMap.Spot? spot) && spot.Key is { } key)
        {
            string name = path[(path.LastIndexOf('.') + 1)..];
            against = spot.IsText
                ? $" ({name} is {FaultWords.Clip(source.Text.Substring(spot.Value.Offset, spot.Value.Length), 40)} on line {key.Line})"
                : $" ({name} stands on line {key.Line})";
        }

        Add(map.PointAt(fault.Path), fault.Path, fault.Found.Text(units) + against, fault.Wanted.Text(units), fault.Nearest);
    }

    public void Add(FaultList others)
    {
        foreach (PlacedFault fault in others._faults)
        {
            if (!IsFull)
                _faults.Add(fault);
        }
    }

    /// <summary>Whether one of the first so many faults lies at this path, or above or below it.</summary>
    public bool Touches(string path, int count)
    {
        foreach (PlacedFault fault in _faults.GetRange(0, Math.Min(count, _faults.Count)))
        {
            if (IsWithin(fault.Path, path) || IsWithin(path, fault.Path))
                return true;
        }

        return false;
    }

    /// <summary>Drops the faults that stand at or behind a line: they may be echoes of what broke there.</summary>
    public void DropFrom(int line) => _faults.RemoveAll(f => f.Line >= line);

    public IReadOnlyList<PlacedFault> InOrder()
    {
        var order = _faults.ToArray();
        Array.Sort(order, static (a, b) =>
            a.Line != b.Line ? a.Line.CompareTo(b.Line)
            : a.Column != b.Column ? a.Column.CompareTo(b.Column)
            : string.CompareOrdinal(a.Path, b.Path));
        return order;
    }

    private static bool IsWithin(string path, string above) =>
        path.Length > 0 && above.Length > 0 && path.StartsWith(above, StringComparison.Ordinal)
        && (path.Length == above.Length || path[above.Length] == '.');
}
