using Ramwright.Quantities;

namespace Ramwright.Presses;

/// <summary>A block of timber pressed.</summary>
[Says("a block of timber pressed along or across its grain"), Kind("crush-timber")]
public sealed record CrushTimber : Job
{
    /// <summary>Kind of wood.</summary>
    [Needed, Says("the wood")]
    public Wood? Wood { get; init; }

    /// <summary>One side of the pressed face, m.</summary>
    [Needed, Says("width of the face pressed on"), Measure(Dimension.Length, "100 mm", UpTo = 2)]
    public double? Width { get; init; }

    /// <summary>The other, m.</summary>
    [Needed, Says("length of the face pressed on"), Measure(Dimension.Length, "100 mm", UpTo = 5)]
    public double? Length { get; init; }

    /// <summary>Height under the ram, m.</summary>
    [Needed, Says("height of the block under the ram"), Measure(Dimension.Length, "200 mm", UpTo = 5)]
    public double? Height { get; init; }

    /// <summary>Across the grain.</summary>
    [Says("the ram presses across the grain, as on a sleeper")]
    public bool? AcrossGrain { get; init; }

    /// <summary>Green or dry.</summary>
    [Says("the wood is green; no: dry, 12 % moisture")]
    public bool? Green { get; init; }
}

/// <summary>Kinds of wood with published strengths.</summary>
public enum Wood
{
    /// <summary>Red oak.</summary>
    RedOak,
    /// <summary>White oak.</summary>
    WhiteOak,
    /// <summary>White ash.</summary>
    WhiteAsh,
    /// <summary>Beech.</summary>
    Beech,
    /// <summary>Hickory.</summary>
    Hickory,
    /// <summary>Sugar maple.</summary>
    SugarMaple,
    /// <summary>Douglas fir.</summary>
    DouglasFir,
    /// <summary>Eastern white pine.</summary>
    WhitePine,
}
