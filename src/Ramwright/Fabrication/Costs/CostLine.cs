namespace Ramwright.Fabrication.Costs;

/// <summary>What kind of thing costs money.</summary>
public enum CostGroup
{
    /// <summary>Steel that is cut.</summary>
    Steel,
    /// <summary>What is bought finished: cylinder, pump, bolts, oil.</summary>
    Bought,
    /// <summary>Filler, gas, heat.</summary>
    Welding,
    /// <summary>Hours.</summary>
    Work,
}

/// <summary>One line of the bill of materials.</summary>
/// <param name="Group">What kind of thing.</param>
/// <param name="What">What it is.</param>
/// <param name="Quantity">How much of it, in <paramref name="Unit"/>.</param>
/// <param name="Unit">kg, m3, kWh, L, h; empty for a count.</param>
/// <param name="Each">Price of one unit; null where none is given.</param>
/// <param name="Note">Where it is from, or what is open.</param>
public sealed record CostLine(CostGroup Group, string What, double Quantity, string Unit, double? Each, string Note = "")
{
    /// <summary>What it costs; null where no price is given.</summary>
    public double? Total => Each * Quantity;
}
