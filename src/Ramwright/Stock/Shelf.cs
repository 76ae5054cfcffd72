using System.Diagnostics.CodeAnalysis;

namespace Ramwright.Stock;

/// <summary>Everything that can be asked for by name. Immutable; built from tables by whoever reads them.</summary>
public sealed record Shelf
{
    /// <summary>Steels.</summary>
    public required IReadOnlyList<Steel> Steels { get; init; }
    /// <summary>Rolled and hollow sections.</summary>
    public required IReadOnlyList<Shape> Sections { get; init; }
    /// <summary>Bolt and rod classes, a row per range of diameters.</summary>
    public required IReadOnlyList<PropertyClass> Classes { get; init; }
    /// <summary>Coarse metric threads.</summary>
    public required IReadOnlyList<MetricThread> Threads { get; init; }
    /// <summary>Hoses.</summary>
    public required IReadOnlyList<HoseGrade> Hoses { get; init; }
    /// <summary>Oils.</summary>
    public required IReadOnlyList<OilGrade> Oils { get; init; }

    /// <summary>Finds a steel by its name.</summary>
    public bool TrySteel(string name, [NotNullWhen(true)] out Steel? steel) =>
        (steel = Steels.FirstOrDefault(s => SameName(s.Name, name))) is not null;

    /// <summary>Finds a class for a thread of diameter <paramref name="d"/>, m.</summary>
    public bool TryClass(string name, double d, [NotNullWhen(true)] out PropertyClass? found) =>
        (found = Classes.FirstOrDefault(c => SameName(c.Name, name) && d > c.Above && d <= c.UpTo)) is not null;

    /// <summary>Finds an oil by its grade.</summary>
    public bool TryOil(string name, [NotNullWhen(true)] out OilGrade? oil) =>
        (oil = Oils.FirstOrDefault(o => SameName(o.Name, name))) is not null;

    /// <summary>Whether two stock names are the same but for case and spaces.</summary>
    public static bool SameName(string a, string b) => Key(a) == Key(b);

    private static string Key(string name) =>
        string.Concat(name.Where(c => !char.IsWhiteSpace(c))).ToUpperInvariant();
}
