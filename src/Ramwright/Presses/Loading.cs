using Ramwright.Quantities;

namespace Ramwright.Presses;

/// <summary>How squarely the work is pressed.</summary>
[Says("how squarely the work is pressed")]
public sealed record Loading
{
    /// <summary>How far the load may stand off centre to left or right, m.</summary>
    [Says("how far off centre the work may stand, left or right"), Measure(Dimension.Length, "40 mm", From = 0, UpTo = 2)]
    public double? OffCentreAcross { get; init; }

    /// <summary>How far the load may stand off centre to front or back, m.</summary>
    [Says("how far off centre the work may stand, front or back"), Measure(Dimension.Length, "20 mm", From = 0, UpTo = 2)]
    public double? OffCentreDeep { get; init; }

    /// <summary>Side load on the ram as a share of the ram force.</summary>
    [Says("side load on the ram as a share of the ram force"), Measure(Dimension.Ratio, "2 %", From = 0, UpTo = 0.5)]
    public double? SideLoad { get; init; }

    /// <summary>How far the dies may open out of parallel, metre per metre.</summary>
    [Says("how far the dies may open out of parallel"), Measure(Dimension.Slope, "1.5 mm/m", UpTo = 0.1)]
    public double? AllowedOpening { get; init; }

    /// <summary>How many squeezes at the wanted force it is to stand.</summary>
    [Says("how many squeezes at the wanted force it must stand"), Measure(Dimension.Count, "20000", From = 1, UpTo = 1e9)]
    public double? Squeezes { get; init; }

    /// <summary>Squeezes a day, to turn their number into days.</summary>
    [Says("how many squeezes you make on a working day"), Measure(Dimension.Count, "40", From = 1, UpTo = 1e6)]
    public double? SqueezesADay { get; init; }

    /// <summary>Last part of the stroke, under load, m.</summary>
    [Says("last part of the stroke, where the ram works"), Measure(Dimension.Length, "30 mm", From = 0, UpTo = 5)]
    public double? PressingPart { get; init; }

    /// <summary>Force over that part, N.</summary>
    [Says("ram force over that part, on the average"), Measure(Dimension.Force, "12 t", From = 0, UpTo = 20e6)]
    public double? PressingForce { get; init; }
}
