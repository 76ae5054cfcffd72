using Ramwright.Quantities;

namespace Ramwright.Presses;

/// <summary>Bar, flat, tube or pipe bent over two supports.</summary>
[Says("bar, flat, pipe or tube bent between two supports and a former"), Kind("bend")]
public sealed record BarBend : Job
{
    /// <summary>Section.</summary>
    [Needed, Says("its section: round, square, flat, pipe or tube"), StockName(StockKind.Section, "CHS 48.3x3.2")]
    public string? Bar { get; init; }

    /// <summary>Flat bar bent the hard way.</summary>
    [Says("flat bar stands on its narrow side and is bent the hard way")]
    public bool? OnEdge { get; init; }

    /// <summary>Its steel.</summary>
    [Says("its steel, bent cold"), StockName(StockKind.Steel, "S235")]
    public string? Steel { get; init; }

    /// <summary>Between the supports, m.</summary>
    [Needed, Says("distance between the supports"), Measure(Dimension.Length, "500 mm", UpTo = 10)]
    public double? Span { get; init; }

    /// <summary>Radius to the centre line, m.</summary>
    [Says("radius of the bend, to the centre line"), Measure(Dimension.Length, "150 mm", UpTo = 20)]
    public double? Radius { get; init; }

    /// <summary>Angle bent through when it is done, rad.</summary>
    [Says("angle bent through when done"), Measure(Dimension.Angle, "45°", UpTo = 2.1)]
    public double? Angle { get; init; }

    /// <summary>Temperature, °C, where it is bent hot.</summary>
    [Says("how hot it is, where it is bent hot"), Measure(Dimension.Temperature, "950 °C", From = 0, UpTo = 1500)]
    public double? Heat { get; init; }

    /// <summary>Carbon, share of one, where it is bent hot.</summary>
    [Says("its carbon, where it is bent hot"), Measure(Dimension.Ratio, "0.2 %", From = 0, UpTo = 0.05)]
    public double? Carbon { get; init; }
}
