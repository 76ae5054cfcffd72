using System.Collections.Concurrent;
using System.Reflection;
using Ramwright.Presses;
using Ramwright.Quantities;

namespace Ramwright.Files.Binding;

/// <summary>
/// The keys of one record of a press, found by reflection once and kept. A record that comes in several kinds has
/// those instead of keys of its own.
/// </summary>
internal sealed class RecordShape
{
    private static readonly ConcurrentDictionary<Type, RecordShape> Known = new();

    private RecordShape(Type type)
    {
        Type = type;
        foreach (object attribute in type.GetCustomAttributes(inherit: false))
        {
            if (attribute is SaysAttribute says)
                Says = says.Text;
            else if (attribute is KindAttribute kind)
                Kind = kind.Word;
        }

        if (type.IsAbstract)
            Kinds = FindKinds(type);
        else
            Keys = FindKeys(type);
    }

    public Type Type { get; }
    public string Says { get; } = "";

    /// <summary>The word behind <c>kind:</c>; null for a record that comes in one kind only.</summary>
    public string? Kind { get; }

    /// <summary>The kinds it comes in; empty for a record of one kind.</summary>
    public IReadOnlyList<RecordShape> Kinds { get; } = [];

    /// <summary>Its keys, those it shares with other kinds first.</summary>
    public IReadOnlyList<KeyShape> Keys { get; } = [];

    /// <summary>How a person would write it on one line, with what is needed only.</summary>
    /// <param name="tape">What they measure in.</param>
    public string ExampleIn(UnitSystem tape)
    {
        RecordShape shape = Kinds.Count > 0 ? Kinds[0] : this;
        var parts = new List<string>();
        if (shape.Kind is not null)
            parts.Add($"kind: {shape.Kind}");
        foreach (KeyShape key in shape.Keys)
        {
            if (key.IsNeeded)
                parts.Add(key.ExampleLine(tape));
        }

        if (parts.Count == 0 || (parts.Count == 1 && shape.Kind is not null && shape.Keys.Count > 1))
            parts.Add((shape.Chief ?? shape.Keys[0]).ExampleLine(tape));
        return $"{{ {string.Join(", ", parts)} }}";
    }

    /// <summary>The first key that holds a name from stock or a measure: what a person means who writes only one value.</summary>
    public KeyShape? Chief
    {
        get
        {
            foreach (KeyShape key in Keys)
            {
                if (key.Form is KeyForm.Measure or KeyForm.StockName)
                    return key;
            }

            return null;
        }
    }

    /// <summary>How a person would write it who wrote only one value for it; null where more is needed.</summary>
    public string? ExampleWith(string value)
    {
        if (Kinds.Count > 0 || Kind is not null || Chief is not { } chief)
            return null;
        foreach (KeyShape key in Keys)
        {
            if (key.IsNeeded && key != chief)
                return null;
        }

        // a bare number wants the unit that such a thing is usually given in
        bool bare = value.Length > 0 && value.All(c => char.IsAsciiDigit(c) || c is '.' or '/');
        string unit = bare && chief.Measure is { } measure ? measure.Example.TrimStart([.. "0123456789.,/- "]) : "";
        return $"{{ {chief.Key}: {value}{(unit.Length > 0 ? " " + unit : "")} }}";
    }

    /// <summary>The shape of a type.</summary>
    public static RecordShape Of(Type type) =>
        Known.TryGetValue(type, out RecordShape? shape) ? shape : Known.GetOrAdd(type, new RecordShape(type));

    /// <summary>The key of that name; null if there is none.</summary>
    public KeyShape? Find(string key)
    {
        foreach (KeyShape shape in Keys)
        {
            if (shape.Key == key)
                return shape;
        }

        return null;
    }

    // named, not searched for: a look through all types of the engine costs every start some milliseconds
    private static List<RecordShape> FindKinds(Type type) =>
        [.. (type.GetCustomAttribute<KindsAttribute>()?.Types ?? []).Select(Of)];

    private static List<KeyShape> FindKeys(Type type)
    {
        var keys = new List<KeyShape>();
        Collect(type, keys);
        return keys;
    }

    private static void Collect(Type type, List<KeyShape> keys)
    {
        if (type.BaseType is { } above && above != typeof(object))
            Collect(above, keys);
        foreach (PropertyInfo property in type.GetProperties(
            BindingFlags.Public | BindingFlags.Instance | BindingFlags.DeclaredOnly))
        {
            if (property.CanWrite)
                keys.Add(new KeyShape(property));
        }
    }
}
