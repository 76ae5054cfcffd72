using Ramwright.Presses;

namespace Ramwright.Files.Binding;

/// <summary>Where in a press file each key is valid, to tell a person who wrote it elsewhere.</summary>
internal static class KeyPlaces
{
    private const int MostNamed = 3;

    private static Dictionary<string, List<string>>? _places;

    /// <summary>The places where a key is valid, as words; null when it is valid nowhere.</summary>
    public static string? Of(string key)
    {
        Dictionary<string, List<string>> places = _places ??= Walk();
        if (!places.TryGetValue(key, out List<string>? found))
            return null;
        return found.Count <= MostNamed
            ? FaultWords.List(found)
            : FaultWords.List(found[..MostNamed]) + " and the like";
    }

    private static Dictionary<string, List<string>> Walk()
    {
        var places = new Dictionary<string, List<string>>(StringComparer.Ordinal);
        Visit(RecordShape.Of(typeof(Press)), "", "at the top", places);
        return places;
    }

    private static void Visit(RecordShape shape, string path, string place, Dictionary<string, List<string>> places)
    {
        foreach (RecordShape kind in shape.Kinds)
            Visit(kind, path, $"{place} of kind {kind.Kind}", places);
        foreach (KeyShape key in shape.Keys)
        {
            if (!places.TryGetValue(key.Key, out List<string>? found))
                places[key.Key] = found = [];
            if (!found.Contains(place))
                found.Add(place);
            string below = path.Length == 0 ? key.Key : $"{path}.{key.Key}";
            if (key.Form == KeyForm.Record)
                Visit(RecordShape.Of(key.Element), below, "under " + below, places);
            else if (key.Form == KeyForm.Records)
                Visit(RecordShape.Of(key.Element), below, "in each item of " + below, places);
        }
    }
}
