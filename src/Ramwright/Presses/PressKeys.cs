using System.Collections.Concurrent;
using System.Reflection;

namespace Ramwright.Presses;

/// <summary>The keys of a press by their paths: what there is, and the same press with one of them set.</summary>
public static class PressKeys
{
    /// <summary>The key that picks one kind of a record.</summary>
    public const string Kind = "kind";

    private static readonly ConcurrentDictionary<Type, PressKey[]> Known = new();
    private static readonly MethodInfo Clone = typeof(object).GetMethod("MemberwiseClone", BindingFlags.Instance | BindingFlags.NonPublic)!;

    /// <summary>The keys of a record, those it shares with other kinds first.</summary>
    public static IReadOnlyList<PressKey> Of(Type record)
    {
        ArgumentNullException.ThrowIfNull(record);
        return Known.GetOrAdd(record, static type =>
        {
            var keys = new List<PressKey>();
            Collect(type, keys);
            return [.. keys];
        });
    }

    /// <summary>Whether a type is one of the records that a press is made of.</summary>
    public static bool IsRecord(Type type) =>
        type is { IsClass: true } && type.Namespace == typeof(Press).Namespace && type.IsDefined(typeof(SaysAttribute), inherit: false);

    /// <summary>The press with one key set; records on the way that are not there yet are made.</summary>
    /// <param name="press">The press; it stays as it is.</param>
    /// <param name="path">The key's path. The path of a <c>kind</c> makes a record of that kind.</param>
    /// <param name="value">What to set; for a <c>kind</c> its word.</param>
    /// <exception cref="ArgumentException">No such key, a value that does not belong there, or a record whose kind is not said.</exception>
    public static Press With(Press press, string path, object? value)
    {
        ArgumentNullException.ThrowIfNull(press);
        ArgumentException.ThrowIfNullOrEmpty(path);
        return (Press)Set(press, typeof(Press), path.Split('.'), 0, path, value)!;
    }

    private static object? Set(object? at, Type type, string[] parts, int i, string path, object? value)
    {
        if (i == parts.Length)
            return value;
        if (type.IsGenericType && type.GetGenericTypeDefinition() == typeof(IReadOnlyList<>))
            return SetItem(at, type.GetGenericArguments()[0], parts, i, path, value);
        if (parts[i] == Kind && i == parts.Length - 1 && type.IsAbstract)
            return OfKind(at, type, value as string, path);
        if (at is null && (type.IsAbstract || !IsRecord(type)))
            throw new ArgumentException($"nothing stands at {string.Join('.', parts[..i])} yet: say its kind first", nameof(path));
        object copy = at is null ? Activator.CreateInstance(type)! : Clone.Invoke(at, null)!;
        foreach (PressKey key in Of(copy.GetType()))
        {
            if (key.Name != parts[i])
                continue;
            object? set = Set(key.Property.GetValue(copy), key.Property.PropertyType, parts, i + 1, path, value);
            key.Property.SetValue(copy, set);
            return copy;
        }

        throw new ArgumentException($"a press has no key {path}", nameof(path));
    }

    private static Array SetItem(object? at, Type element, string[] parts, int i, string path, object? value)
    {
        int count = at is System.Collections.ICollection there ? there.Count : 0;
        if (!int.TryParse(parts[i], out int number) || number < 0 || number >= count)
            throw new ArgumentException($"a press has no item {path}", nameof(path));
        Array copy = Array.CreateInstance(element, count);
        int n = 0;
        foreach (object? item in (System.Collections.IEnumerable)at!)
            copy.SetValue(n == number ? Set(item, element, parts, i + 1, path, value) : item, n++);
        return copy;
    }

    private static object OfKind(object? at, Type type, string? word, string path)
    {
        foreach (Type kind in type.Assembly.GetTypes())
        {
            if (kind.BaseType == type && kind.GetCustomAttribute<KindAttribute>()?.Word == word)
                return at?.GetType() == kind ? at : Activator.CreateInstance(kind)!;
        }

        throw new ArgumentException($"there is no kind {word} for {path}", nameof(word));
    }

    private static void Collect(Type type, List<PressKey> keys)
    {
        if (type.BaseType is { } above && above != typeof(object))
            Collect(above, keys);
        foreach (PropertyInfo property in type.GetProperties(BindingFlags.Public | BindingFlags.Instance | BindingFlags.DeclaredOnly))
        {
            if (property.CanWrite)
            {
                keys.Add(new PressKey(KeyNames.Written(property.Name), property,
                    property.GetCustomAttribute<MeasureAttribute>(), property.GetCustomAttribute<StockNameAttribute>()));
            }
        }
    }
}

/// <summary>One key of a record.</summary>
/// <param name="Name">As a file writes it.</param>
/// <param name="Property">The property behind it.</param>
/// <param name="Measure">What it measures, where it carries a unit.</param>
/// <param name="Stock">Which shelf its name lies on, where it is a name.</param>
public sealed record PressKey(string Name, PropertyInfo Property, MeasureAttribute? Measure, StockNameAttribute? Stock);
