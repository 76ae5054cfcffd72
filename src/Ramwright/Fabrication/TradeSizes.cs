using Ramwright.Quantities;
using Ramwright.Stock;

namespace Ramwright.Fabrication;

/// <summary>What proposed parts are made of, as the trade of the person who makes them sells and drills it; common practice.</summary>
/// <remarks>Lengths in m. Only what we propose follows the tape: what the file describes, and what is assumed for the rating, is the same on any.</remarks>
internal sealed record TradeSizes
{
    private const double Inch = 0.0254;

    /// <summary>Thicknesses of plate.</summary>
    public required IReadOnlyList<double> Plates { get; init; }

    /// <summary>Thicknesses of flat bar.</summary>
    public required IReadOnlyList<double> Flats { get; init; }

    /// <summary>Blanks are cut to whole steps of this.</summary>
    public required double Step { get; init; }

    /// <summary>Length of a bar as it is sold.</summary>
    public required double Bar { get; init; }

    /// <summary>Thickness of a die shoe, the flat its keepers are of, and the play of a die between them.</summary>
    public required (double Shoe, double Wide, double Thick, double Play) Keeper { get; init; }

    /// <summary>Screw of a keeper, its hole, and what to ask for.</summary>
    public required (ScrewThread Thread, double Hole, string Ask) KeeperScrew { get; init; }

    /// <summary>How far past the ram's surface the roller of an anti-twist arm stands, how high the arm is, and what of its guide is fixed at either end.</summary>
    public required (double Past, double Height, double Ends) Arm { get; init; }

    /// <summary>Thickness of a foot plate under a light, a middling and a heavy press.</summary>
    public required (double Light, double Middling, double Heavy) Foot { get; init; }

    /// <summary>A foot plate beyond what stands on it, from its edge to an anchor, the anchor's hole, and its name.</summary>
    public required (double Beyond, double Edge, double Hole, string Name) Anchor { get; init; }

    private static readonly TradeSizes Metric = new()
    {
        Plates = [0.010, 0.012, 0.015, 0.020, 0.025, 0.030, 0.035, 0.040, 0.050, 0.060, 0.070, 0.080, 0.090, 0.100, 0.120, 0.150],
        Flats = [0.010, 0.012, 0.015, 0.020, 0.025, 0.030, 0.040, 0.050, 0.060, 0.080],
        Step = 0.005,
        Bar = 6,
        Keeper = (0.025, 0.030, 0.012, 0.5e-3),
        KeeperScrew = (new ScrewThread(0.012, 0.00175) { Name = "M12" }, 0.013, "socket head cap screw M12 x 30, 8.8 or better"),
        Arm = (0.10, 0.04, 0.05),
        Foot = (0.012, 0.015, 0.020),
        Anchor = (0.05, 0.025, 0.014, "anchor M12"),
    };

    private static readonly TradeSizes Inches = new()
    {
        Plates = [.. new[] { 0.375, 0.5, 0.625, 0.75, 1, 1.25, 1.5, 1.75, 2, 2.5, 3, 3.5, 4, 5, 6 }.Select(inch => inch * Inch)],
        Flats = [.. new[] { 0.375, 0.5, 0.625, 0.75, 1, 1.25, 1.5, 2, 2.5, 3 }.Select(inch => inch * Inch)],
        Step = Inch / 4,
        Bar = 240 * Inch,
        Keeper = (Inch, 1.25 * Inch, Inch / 2, 0.02 * Inch),
        KeeperScrew = (new ScrewThread(Inch / 2, Inch / 13) { Name = "1/2-13 UNC", Form = ThreadForm.Unified }, 9.0 / 16 * Inch, "socket head cap screw 1/2-13 UNC x 1-1/4 in, alloy steel"),
        Arm = (4 * Inch, 1.5 * Inch, 2 * Inch),
        Foot = (Inch / 2, 0.625 * Inch, 0.75 * Inch),
        Anchor = (2 * Inch, Inch, 9.0 / 16 * Inch, "anchor 1/2 in"),
    };

    /// <summary>The sizes of a trade.</summary>
    public static TradeSizes Of(UnitSystem units) => units == UnitSystem.Imperial ? Inches : Metric;

    /// <summary>A flat of these sizes, named as it is sold.</summary>
    public static Flat FlatOf(double height, double thickness, UnitSystem units) =>
        new(height, thickness) { Name = $"flat {SectionSizes.Named([height, thickness], units == UnitSystem.Imperial)}", Source = SectionText.AsGiven };
}
