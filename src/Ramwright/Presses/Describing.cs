using Ramwright.Quantities;

namespace Ramwright.Presses;

/// <summary>What a property or record means, in the words of the trade. Readers, schema and starter files take it from here.</summary>
/// <param name="text">One short sentence without a full stop.</param>
[AttributeUsage(AttributeTargets.Property | AttributeTargets.Class | AttributeTargets.Field)]
public sealed class SaysAttribute(string text) : Attribute
{
    /// <summary>The meaning.</summary>
    public string Text { get; } = text;
}

/// <summary>The property must be stated; nothing sensible can be assumed for it.</summary>
[AttributeUsage(AttributeTargets.Property)]
public sealed class NeededAttribute : Attribute;

/// <summary>Marks one kind of a record that comes in several kinds: <c>kind: electric</c>.</summary>
/// <param name="word">The word that stands after <c>kind:</c>.</param>
[AttributeUsage(AttributeTargets.Class)]
public sealed class KindAttribute(string word) : Attribute
{
    /// <summary>The word.</summary>
    public string Word { get; } = word;
}

/// <summary>The kinds that a record comes in, in the order in which they are offered.</summary>
/// <param name="types">A record of each kind, marked by <see cref="KindAttribute"/>.</param>
[AttributeUsage(AttributeTargets.Class, Inherited = false)]
public sealed class KindsAttribute(params Type[] types) : Attribute
{
    /// <summary>The kinds.</summary>
    public IReadOnlyList<Type> Types { get; } = types;
}

/// <summary>The property carries a unit. Bounds are in the SI unit of its dimension.</summary>
/// <param name="dimension">What it measures.</param>
/// <param name="example">How a person would write it.</param>
[AttributeUsage(AttributeTargets.Property)]
public sealed class MeasureAttribute(Dimension dimension, string example) : Attribute
{
    /// <summary>What it measures.</summary>
    public Dimension Dimension { get; } = dimension;
    /// <summary>How a person would write it.</summary>
    public string Example { get; } = example;
    /// <summary>The value must be greater than this; zero unless said.</summary>
    public double Above { get; init; }
    /// <summary>The value may be as small as this; overrides <see cref="Above"/> when it is a number.</summary>
    public double From { get; init; } = double.NaN;
    /// <summary>The greatest value that makes sense on a workshop press.</summary>
    public double UpTo { get; init; } = double.PositiveInfinity;
}

/// <summary>The text is a name from stock.</summary>
/// <param name="what">Which shelf it lies on.</param>
/// <param name="example">How a person would write it.</param>
[AttributeUsage(AttributeTargets.Property)]
public sealed class StockNameAttribute(StockKind what, string example) : Attribute
{
    /// <summary>Which shelf it lies on.</summary>
    public StockKind What { get; } = what;
    /// <summary>How a person would write it.</summary>
    public string Example { get; } = example;
}

/// <summary>The shelves of stock.</summary>
public enum StockKind
{
    /// <summary>A steel.</summary>
    Steel,
    /// <summary>A section.</summary>
    Section,
    /// <summary>A strength class of bolts.</summary>
    PropertyClass,
    /// <summary>A metric thread.</summary>
    Thread,
    /// <summary>An oil grade.</summary>
    Oil,
    /// <summary>A hose type.</summary>
    Hose,
    /// <summary>A thread of a line or port.</summary>
    Port,
}
