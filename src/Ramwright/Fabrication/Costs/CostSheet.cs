using Ramwright.Presses;

namespace Ramwright.Fabrication.Costs;

/// <summary>The bill of materials with prices as far as the file gives them.</summary>
/// <param name="Lines">The lines.</param>
/// <param name="Currency">What the money is called; empty where the file does not say.</param>
/// <param name="Instead">A finished press to compare with; null where the file gives none.</param>
public sealed record CostSheet(IReadOnlyList<CostLine> Lines, string Currency, FinishedPress? Instead)
{
    /// <summary>Left over where bars that the file does not list are bought whole and not cut to size by the merchant, kg; not in the sums.</summary>
    public double OverIfWhole { get; init; }

    /// <summary>What a kilogram of bought steel costs; null where not said.</summary>
    public double? SteelPerKg { get; init; }

    /// <summary>The same as <see cref="Outlay"/> with those bars paid for whole; null where there are none, or without a price.</summary>
    public double? OutlayWhole => OverIfWhole > 0 && SteelPerKg is { } each ? Outlay + OverIfWhole * each : null;

    /// <summary>Sum of the lines that have a price, hours counted.</summary>
    public double Total => Lines.Sum(l => l.Total ?? 0);

    /// <summary>The same without hours.</summary>
    public double Outlay => Lines.Where(l => l.Group != CostGroup.Work).Sum(l => l.Total ?? 0);

    /// <summary>Hours of work.</summary>
    public double Hours => Lines.Where(l => l.Group == CostGroup.Work).Sum(l => l.Quantity);

    /// <summary>Lines without a price: the sums are short by them.</summary>
    public IReadOnlyList<CostLine> WithoutPrice => [.. Lines.Where(l => l.Each is null)];

    /// <summary>Sum of a group.</summary>
    public double Of(CostGroup group) => Lines.Where(l => l.Group == group).Sum(l => l.Total ?? 0);

    /// <summary>What building saves over buying, hours not counted: below zero where buying is cheaper; null where no price of a finished press is given.</summary>
    public double? Saved => Instead?.Price - Outlay;

    /// <summary>What each hour of work saves or costs against buying; null without a finished press or without hours.</summary>
    public double? SavedAnHour => Hours > 0 ? Saved / Hours : null;
}
