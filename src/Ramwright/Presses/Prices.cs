using Ramwright.Quantities;

namespace Ramwright.Presses;

/// <summary>What things cost, in the person's own money.</summary>
[Says("what things cost, in your own money")]
public sealed record Prices
{
    /// <summary>What the money is called.</summary>
    [Says("what your money is called")]
    public string? Currency { get; init; }

    /// <summary>Bought steel, a kilogram.</summary>
    [Says("a kilogram of bought steel; price-per-kg where this is not said"), Measure(Dimension.Number, "1.6", From = 0, UpTo = 1e6)]
    public double? SteelPerKg { get; init; }

    /// <summary>Scrap, a kilogram.</summary>
    [Says("what the dealer pays for a kilogram of scrap: the worth of offcuts and remnants; 0 where they are free"), Measure(Dimension.Number, "0.2", From = 0, UpTo = 1e6)]
    public double? ScrapPerKg { get; init; }

    /// <summary>Filler, a kilogram.</summary>
    [Says("a kilogram of rods or wire"), Measure(Dimension.Number, "6", From = 0, UpTo = 1e6)]
    public double? FillerPerKg { get; init; }

    /// <summary>Gas, a cubic metre at the pressure of the air.</summary>
    [Says("a cubic metre of welding gas"), Measure(Dimension.Number, "12", From = 0, UpTo = 1e6)]
    public double? GasPerCubicMetre { get; init; }

    /// <summary>Heat for preheating, a kilowatt-hour.</summary>
    [Says("a kilowatt-hour of torch gas"), Measure(Dimension.Number, "0.3", From = 0, UpTo = 1e6)]
    public double? FuelPerKwh { get; init; }

    /// <summary>Oil, a litre.</summary>
    [Says("a litre of hydraulic oil"), Measure(Dimension.Number, "4", From = 0, UpTo = 1e6)]
    public double? OilPerLitre { get; init; }

    /// <summary>An hour of work.</summary>
    [Says("what an hour of your work is worth to you"), Measure(Dimension.Number, "35", From = 0, UpTo = 1e6)]
    public double? AnHour { get; init; }

    /// <summary>Things bought.</summary>
    [Says("things to buy: cylinder, pump, bolts, hoses, paint")]
    public IReadOnlyList<BoughtThing>? Bought { get; init; }

    /// <summary>Work besides welding.</summary>
    [Says("hours of work besides welding: sawing, drilling, fitting")]
    public IReadOnlyList<WorkHours>? Work { get; init; }

    /// <summary>A finished press to compare with.</summary>
    [Says("a finished press that you could buy in its place")]
    public FinishedPress? Instead { get; init; }
}

/// <summary>A thing bought.</summary>
[Says("a thing to buy")]
public sealed record BoughtThing
{
    /// <summary>What it is.</summary>
    [Needed, Says("what it is")]
    public string? Name { get; init; }

    /// <summary>Price of one.</summary>
    [Says("price of one; left out where it is not known yet"), Measure(Dimension.Number, "240", From = 0, UpTo = 1e9)]
    public double? Price { get; init; }

    /// <summary>How many.</summary>
    [Says("how many"), Measure(Dimension.Count, "1", From = 1, UpTo = 10000)]
    public double? Count { get; init; }

    /// <summary>Whether it is there already.</summary>
    [Says("it is there already and costs nothing more")]
    public bool? InHand { get; init; }
}

/// <summary>Hours of work.</summary>
[Says("hours of work")]
public sealed record WorkHours
{
    /// <summary>What is done.</summary>
    [Needed, Says("what is done")]
    public string? Name { get; init; }

    /// <summary>How long it takes, s.</summary>
    [Needed, Says("how long it takes"), Measure(Dimension.Time, "6 h", From = 0, UpTo = 3.6e7)]
    public double? Time { get; init; }
}

/// <summary>A finished press that can be bought.</summary>
[Says("a finished press that you could buy in its place")]
public sealed record FinishedPress
{
    /// <summary>What it is.</summary>
    [Says("what it is")]
    public string? Name { get; init; }

    /// <summary>Its price.</summary>
    [Needed, Says("its price, delivered"), Measure(Dimension.Number, "2400", From = 0, UpTo = 1e9)]
    public double? Price { get; init; }
}
