using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Solids;

/// <summary>How stress is read before a weld's toe and carried on to it: on a plate's face at shares of its thickness, on a plate's edge at lengths, because there the plate's thickness says nothing of how fast stress fades.</summary>
public sealed class ToeReading
{
    private const string Iiw = "A. Hobbacher (ed.), Recommendations for fatigue design of welded joints and components, IIW-1823-07";

    /// <summary>On a face, type "a": in a straight line.</summary>
    public static readonly ToeReading Face = new(byThickness: true, [0.4, 1.0], [1.67, -0.67], new Citation(Iiw, "2.2.3, structural hot-spot stress, type a, fine mesh: 1.67 σ(0.4t) − 0.67 σ(1.0t)"));

    /// <summary>On an edge, type "b": along a parabola.</summary>
    public static readonly ToeReading Edge = new(byThickness: false, [0.004, 0.008, 0.012], [3, -3, 1],
        new Citation(Iiw, "2.2.3, structural hot-spot stress, type b, fine mesh: 3 σ(4 mm) − 3 σ(8 mm) + σ(12 mm)", Standing.FromMemory));

    private readonly bool _byThickness;
    private readonly double[] _at, _weights;

    private ToeReading(bool byThickness, double[] at, double[] weights, Citation source) => (_byThickness, _at, _weights, Source) = (byThickness, at, weights, source);

    /// <summary>Where the rule comes from.</summary>
    public Citation Source { get; }

    /// <summary>How many places are read.</summary>
    public int Count => _at.Length;

    /// <summary>What the toe stands on, in words.</summary>
    public string On => _byThickness ? "on a face" : "on an edge";

    /// <summary>Where all are read, in words.</summary>
    public string Text => _byThickness ? "at 0.4 and 1.0 t, on a face" : "at 4, 8 and 12 mm, on an edge";

    /// <summary>How far before the toe a place is, m.</summary>
    /// <param name="place">Its number from 0, the nearest first.</param>
    /// <param name="thickness">Of the wall, m.</param>
    public double Before(int place, double thickness) => _byThickness ? _at[place] * thickness : _at[place];

    /// <summary>The same in words.</summary>
    public string Name(int place, UnitSystem units) => _byThickness ? FormattableString.Invariant($"{_at[place]:0.0} t") : Readout.Text(_at[place], Dimension.Length, units);

    /// <summary>At the toe, from what was read.</summary>
    /// <param name="read">Stress at each place, the nearest first.</param>
    public double AtToe(IReadOnlyList<double> read)
    {
        ArgumentNullException.ThrowIfNull(read);
        double sum = 0;
        for (int i = 0; i < _weights.Length; i++)
            sum += _weights[i] * read[i];
        return sum;
    }
}
