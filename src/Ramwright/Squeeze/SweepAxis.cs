using Ramwright.Quantities;

namespace Ramwright.Squeeze;

/// <summary>What a sweep changes.</summary>
public enum SweepOf
{
    /// <summary>The thickness of the bar between the dies; its width, its bite and where it is to be taken go with it.</summary>
    Bar,
    /// <summary>The heat it comes out of the fire with.</summary>
    Heat,
    /// <summary>Width of the dies along the bar.</summary>
    DieWidth,
    /// <summary>Heat of the dies.</summary>
    DieHeat,
    /// <summary>Time from the fire to the first squeeze.</summary>
    Transfer,
}

/// <summary>One side of a grid, evenly divided.</summary>
/// <param name="Of">What is changed.</param>
/// <param name="From">First value, SI or °C.</param>
/// <param name="To">Last value, above <paramref name="From"/>.</param>
/// <param name="Count">How many values, 2 to 1000.</param>
public sealed record SweepAxis(SweepOf Of, double From, double To, int Count)
{
    /// <summary>First value.</summary>
    public double From { get; init; } = Check.NotNegative(From);
    /// <summary>Last value.</summary>
    public double To { get; init; } = Check.Above(To, From);
    /// <summary>How many values.</summary>
    public int Count { get; init; } = Count is >= 2 and <= 1000 ? Count : throw new ArgumentOutOfRangeException(nameof(Count), Count, "2 to 1000 values");

    /// <summary>A value by its number from 0.</summary>
    public double At(int i) => From + (To - From) * i / (Count - 1);

    /// <summary>What its values measure.</summary>
    public Dimension Dimension => DimensionOf(Of);

    /// <summary>What the values of a sweep measure.</summary>
    public static Dimension DimensionOf(SweepOf of) => of switch
    {
        SweepOf.Heat or SweepOf.DieHeat => Dimension.Temperature,
        SweepOf.Transfer => Dimension.Time,
        _ => Dimension.Length,
    };
}
