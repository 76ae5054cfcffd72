using Ramwright.Quantities;

namespace Ramwright.Ladders;

/// <summary>A way to a press that is enough, in words.</summary>
public static class LiftWords
{
    /// <summary>The steel that comes on and what else it asks: <c>+12.7 kg, another bought part</c>.</summary>
    /// <param name="way">The way.</param>
    /// <param name="units">The reader's units.</param>
    public static string Asks(LiftWay way, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(way);
        string price = way.AddedPrice is { } money ? $", costs {Readout.Number(money, 3)}" : "";
        string steel = Math.Abs(way.AddedMass) < 0.05 ? "no more steel" : $"{(way.AddedMass > 0 ? "+" : "")}{Readout.Text(way.AddedMass, Dimension.Mass, units)}{price}";
        return steel + way.Cost switch { LiftCost.Part => ", another bought part", LiftCost.GivesUp => ", gives something up", _ => "" };
    }

    /// <summary>Whether it then holds what its pump can ever give: <c>holds the most possible, 264 kN (26.9 t)</c>.</summary>
    /// <param name="way">The way.</param>
    /// <param name="units">The reader's units.</param>
    public static string MostPossible(LiftWay way, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(way);
        string most = $"the most possible, {ForceText.Of(way.Check.Power.MostPossibleForce, units)}";
        return way.Check.AgainstMostPossible == Verdict.Holds ? $"holds {most}" : $"does not hold {most}, with its margin";
    }
}
