using Ramwright.Presses;

namespace Ramwright.Files.Binding;

/// <summary>Where in a press file each key is valid, to tell a person who wrote it elsewhere.</summary>
internal static class KeyPlaces
{
    private const int MostNamed = 3;

    private static Dictionary<string, List<Spot>>? _spots;

    private readonly record struct Spot(string Path, string? Kind, bool InItems);

    /// <summary>The places where a key is valid, as words; null when it is valid nowhere.</summary>
    /// <param name="key">The key.</param>
    /// <param name="path">Where it was written: another kind of the same record comes before any other place.</param>
    public static string? Of(string key, string path)
    {
        Dictionary<string, List<Spot>> spots = _spots ??= Walk();
        if (!spots.TryGetValue(key, out List<Spot>? found))
            return null;
        var same = new List<string>();
        var all = new List<string>();
        foreach (Spot spot in found)
        {
            if (spot.Path == path)
                same.Add(Words(spot));
            all.Add(Words(spot));
        }

        List<string> named = same.Count > 0 ? same : all;
        return named.Count <= MostNamed
            ? FaultWords.List(named)
            : string.Join(", ", named[..MostNamed]) + " and the like";
    }

    private static string Words(Spot spot)
    {
        string place = spot.Path.Length == 0 ? "at the top, without indentation"
            : spot.InItems ? $"in each item of {spot.Path}"
            : $"under {spot.Path}";
        return spot.Kind is null ? place : $"{place} of kind {spot.Kind}";
    }

    private static Dictionary<string, List<Spot>> Walk()
    {
        var spots = new Dictionary<string, List<Spot>>(StringComparer.Ordinal);
        Visit(RecordShape.Of(typeof(Press)), "", inItems: false, spots);
        return spots;
    }

    private static void Visit(RecordShape shape, string path, bool inItems, Dictionary<string, List<Spot>> spots)
    {
        foreach (RecordShape kind in shape.Kinds)
            Visit(kind, path, inItems, spots);
        foreach (KeyShape key in shape.Keys)
        {
            // A key that every kind shares belongs to no kind in particular.
            string? kind = key.Property.DeclaringType == shape.Type ? shape.Kind : null;
            var spot = new Spot(path, kind, inItems);
            if (!spots.TryGetValue(key.Key, out List<Spot>? found))
                spots[key.Key] = found = [];
            if (!found.Contains(spot))
                found.Add(spot);
            string below = path.Length == 0 ? key.Key : $"{path}.{key.Key}";
            if (key.Form is KeyForm.Record or KeyForm.Records)
                Visit(RecordShape.Of(key.Element), below, key.Form == KeyForm.Records, spots);
        }
    }
}
