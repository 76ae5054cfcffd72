using System.Collections.Concurrent;
using System.Diagnostics.CodeAnalysis;

namespace Ramwright.Stock;

/// <summary>Shapes that were worked out before, so that the same section asked for again need not be read and summed up anew.</summary>
/// <remarks>Forgets everything when it is full: a search through many sections must not fill the memory. Safe to share between threads.</remarks>
internal sealed class KnownShapes
{
    private const int Most = 1024, LongestText = 100;

    private readonly ConcurrentDictionary<(string Text, double? Apart), Shape> _read = new();
    private readonly ConcurrentDictionary<Shape, Shape> _shapes = new();

    /// <summary>What was read from these words before.</summary>
    public bool TryRead(string text, double? apart, [NotNullWhen(true)] out Shape? shape) => _read.TryGetValue((text, apart), out shape);

    /// <summary>Keeps what was read.</summary>
    public Shape Read(string text, double? apart, Shape shape)
    {
        if (text.Length > LongestText)
            return shape;
        if (_read.Count >= Most)
            _read.Clear();
        return _read.GetOrAdd((text, apart), shape);
    }

    /// <summary>The first shape that was equal to this one.</summary>
    public Shape Same(Shape shape)
    {
        if (_shapes.TryGetValue(shape, out Shape? known))
            return known;
        if (_shapes.Count >= Most)
            _shapes.Clear();
        return _shapes.GetOrAdd(shape, shape);
    }
}
