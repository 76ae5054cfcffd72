using System.Diagnostics.CodeAnalysis;

namespace Ramwright.Files;

/// <summary>
/// Where each value of a press file stands in its text, by the path of the value: <c>frame.crown.section</c>,
/// <c>lines.0.bore</c>. An editor replaces the characters of a value's place and leaves the rest, comments included.
/// </summary>
public sealed class SourceMap
{
    private readonly Dictionary<string, Spot> _spots = new(StringComparer.Ordinal);

    /// <summary>Where a key and its value stand.</summary>
    /// <param name="Key">The key; null for an item of a list and for the whole file.</param>
    /// <param name="Value">The value, quotes and brackets included; of length 0 where nothing was written.</param>
    /// <param name="IsText">Whether the value is one word or line, not keys or a list.</param>
    public sealed record Spot(Place? Key, Place Value, bool IsText);

    /// <summary>Every path that was written; the whole file is the empty path.</summary>
    public IReadOnlyDictionary<string, Spot> Spots => _spots;

    /// <summary>Finds what stands at a path.</summary>
    public bool TryFind(string path, [NotNullWhen(true)] out Spot? spot) => _spots.TryGetValue(path, out spot);

    /// <summary>
    /// The place to point at when something is wrong at a path: the value if it is one word, the key above it if it
    /// holds more, and the nearest path above where nothing was written.
    /// </summary>
    public Place PointAt(string path)
    {
        for (string at = path; ; at = Above(at))
        {
            if (_spots.TryGetValue(at, out Spot? spot))
            {
                bool whole = at == path && spot.IsText && spot.Value.Length > 0;
                return whole ? spot.Value : spot.Key ?? spot.Value with { Length = Math.Min(spot.Value.Length, 1) };
            }

            if (at.Length == 0)
                return new Place(1, 1, 0, 0);
        }
    }

    internal void Add(string path, Place? key, Place value, bool isText) =>
        _spots.TryAdd(path, new Spot(key, value, isText));

    private static string Above(string path)
    {
        int dot = path.LastIndexOf('.');
        return dot < 0 ? "" : path[..dot];
    }
}
