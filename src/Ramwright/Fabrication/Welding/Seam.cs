using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Stock;
using Ramwright.Workings;

namespace Ramwright.Fabrication.Welding;

/// <summary>One kind of seam of the press, as often as it occurs.</summary>
public sealed record Seam
{
    /// <summary>What it joins: <c>crown joint</c>.</summary>
    public required string Name { get; init; }
    /// <summary>Path of its weld in the press file.</summary>
    public required string Key { get; init; }
    /// <summary>Where it runs, in words.</summary>
    public required string Where { get; init; }
    /// <summary>Fillet or butt.</summary>
    public required WeldKind Kind { get; init; }
    /// <summary>Throat of a fillet, thickness of a butt, m.</summary>
    public required double Throat { get; init; }
    /// <summary>Length at one place, m.</summary>
    public required double Length { get; init; }
    /// <summary>How many such places.</summary>
    public required int Count { get; init; }
    /// <summary>The part whose end or edge is welded.</summary>
    public required KnownSteel Standing { get; init; }
    /// <summary>The part it is welded to.</summary>
    public required KnownSteel Through { get; init; }
    /// <summary>Cross-section of each way by which heat leaves, m².</summary>
    public required IReadOnlyList<double> Ways { get; init; }
    /// <summary>Outline of each of those, m.</summary>
    public required IReadOnlyList<double> Outlines { get; init; }

    /// <summary>Leg of a fillet, m.</summary>
    public double Leg => Throat * Math.Sqrt(2);

    /// <summary>How the heat of a run leaves.</summary>
    public RunPlace Place => Kind == WeldKind.Butt ? RunPlace.Butt : RunPlace.Tee;

    /// <summary>The thicker part, m.</summary>
    public double Thicker => Math.Max(Standing.Thickness, Through.Thickness);

    /// <summary>Combined thickness, m: the standing part, and two ways out through the one it stands on.</summary>
    public double Combined => MethodA.Combined(Standing.Thickness, Through.Thickness, 2);

    /// <summary>How a butt weld's edges are prepared; empty for a fillet.</summary>
    public Remark Preparation => Kind == WeldKind.Fillet ? "" : ButtEdges.Of(Throat).Words;

    /// <summary>Area to fill, with a tenth for its crown, m².</summary>
    public double Area => WeldDeposit.Crown * (Kind == WeldKind.Fillet ? WeldDeposit.Fillet(Leg) : ButtEdges.Of(Throat).Area);

    /// <summary>About how long the outline of a section is, m, by its area and wall.</summary>
    internal static double OutlineOf(Shape shape) => 2 * shape.Properties.A / shape.Thinnest + 2 * shape.Thinnest;
}

/// <summary>Edges of a full-penetration weld between a part's end and a face; ISO 9692-1 shapes, from memory.</summary>
/// <param name="Area">Area to fill, m².</param>
/// <param name="Words">In words.</param>
public sealed record ButtEdges(double Area, Remark Words)
{
    private const double Gap = 2e-3, Face = 2e-3, Bevel = 45 * Math.PI / 180;

    /// <summary>Thinnest part that is bevelled, m.</summary>
    public const double BevelFrom = 4e-3;
    /// <summary>Thinnest part that is bevelled from both sides, m.</summary>
    public const double BothSidesFrom = 16e-3;

    /// <summary>Edges for a thickness.</summary>
    /// <param name="t">m.</param>
    public static ButtEdges Of(double t) => t < BevelFrom
        ? new(t * Gap, new Remark("proposed: square edge, gap {0}", About(Gap)))
        : t < BothSidesFrom
            ? new(WeldDeposit.Bevel(t, Gap, Face, Bevel), new Remark("proposed: one bevel of 45°, face {0}, gap {1}, back run after grinding to sound metal", About(Face), About(Gap)))
            : new(2 * WeldDeposit.Bevel(t / 2, Gap, Face / 2, Bevel), new Remark("proposed: a bevel of 45° on both sides, face {0}, gap {1}, second side after grinding to sound metal", About(Face), About(Gap)));

    private static Given About(double m) => Remark.About(m, Dimension.Length);
}
