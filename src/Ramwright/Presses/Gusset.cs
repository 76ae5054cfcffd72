using Ramwright.Quantities;
using Ramwright.Stock;

namespace Ramwright.Presses;

/// <summary>Triangular plates in the inner corner of a welded joint.</summary>
[Says("triangular plates welded into the inner corner of the joint")]
public sealed record Gusset
{
    /// <summary>Leg along the beam or arm, m.</summary>
    [Needed, Says("its leg along the beam or arm"), Measure(Dimension.Length, "120 mm", UpTo = 3)]
    public double? LegAlong { get; init; }

    /// <summary>Leg along the upright or column, m.</summary>
    [Needed, Says("its leg along the upright or column"), Measure(Dimension.Length, "120 mm", UpTo = 3)]
    public double? LegUp { get; init; }

    /// <summary>Thickness of each plate, m.</summary>
    [Needed, Says("thickness of each plate"), Measure(Dimension.Length, "12 mm", UpTo = 0.2)]
    public double? Thickness { get; init; }

    /// <summary>Plates in each corner.</summary>
    [Says("how many stand side by side in each corner"), Measure(Dimension.Count, "2", From = 1, UpTo = 6)]
    public double? Count { get; init; }

    /// <summary>Its weld.</summary>
    [Says("its weld along both legs, on both faces of the plate")]
    public Weld? Weld { get; init; }

    /// <summary>Its steel.</summary>
    [Says("its steel"), StockName(StockKind.Steel, "S275")]
    public string? Steel { get; init; }
}

/// <summary>Gussets of a corner with every number settled. SI.</summary>
/// <param name="LegAlong">Leg along the beam or arm, m.</param>
/// <param name="LegUp">Leg along the upright or column, m.</param>
/// <param name="Thickness">Of each plate, m.</param>
/// <param name="Count">Plates side by side.</param>
/// <param name="Weld">Along both legs.</param>
/// <param name="Steel">Its steel.</param>
public sealed record RigGusset(double LegAlong, double LegUp, double Thickness, int Count, RigWeld Weld, Steel Steel)
{
    /// <summary>Greatest ratio of one leg to the other for which the limit of slenderness was found.</summary>
    public const double MostRatio = 2;

    /// <summary>Yield strength, Pa.</summary>
    public double Fy => Steel.Fy(Thickness);
    /// <summary>Tensile strength, Pa.</summary>
    public double Fu => Steel.Fu(Thickness);

    /// <summary>Leg in the plane of the joint, m: along the upright, unless the beam lies over the upright's end.</summary>
    public double InPlane(BeamFit fit) => fit == BeamFit.Over ? LegAlong : LegUp;
    /// <summary>Leg square to the plane of the joint, m.</summary>
    public double Square(BeamFit fit) => fit == BeamFit.Over ? LegUp : LegAlong;

    /// <summary>The shorter leg over the thickness may not be more than this, so that the plate yields before it buckles.</summary>
    /// <param name="fy">Its yield strength, Pa.</param>
    /// <remarks>250/√F_y with F_y in ksi: 42.8 for 235 MPa.</remarks>
    public static double MostSlender(double fy) => 250 * Math.Sqrt(6.894757e6 / Check.Positive(fy));
}
