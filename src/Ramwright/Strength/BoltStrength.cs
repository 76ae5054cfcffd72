using Ramwright.Workings;

namespace Ramwright.Strength;

/// <summary>Strengths of bolts as EN 1993-1-8 counts them; lower than ISO 898-1 for thick 8.8.</summary>
public static class BoltStrength
{
    /// <summary>f_yb and f_ub by class.</summary>
    public static readonly Citation Source = new("EN 1993-1-8:2005", "table 3.1");

    /// <summary>Whether the code has the class at all.</summary>
    public static bool Covers(string boltClass) => Find(boltClass) is not null;

    /// <summary>Yield strength f_yb and tensile strength f_ub, Pa.</summary>
    /// <param name="boltClass">4.6, 4.8, 5.6, 5.8, 6.8, 8.8 or 10.9.</param>
    /// <exception cref="ArgumentException">Any other class; 12.9 is too hard and brittle for that code.</exception>
    public static (double Fyb, double Fub) Of(string boltClass) => Find(boltClass) ?? throw new ArgumentException(
        boltClass == "12.9"
            ? "class 12.9 is outside EN 1993-1-8: too hard, it may crack when plated or wet; take 10.9 or 8.8, or rate it by its proof load alone"
            : $"class {boltClass} is not in EN 1993-1-8, table 3.1: 4.6, 4.8, 5.6, 5.8, 6.8, 8.8 or 10.9",
        nameof(boltClass));

    private static (double, double)? Find(string boltClass) => boltClass switch
    {
        "4.6" => (240e6, 400e6),
        "4.8" => (320e6, 400e6),
        "5.6" => (300e6, 500e6),
        "5.8" => (400e6, 500e6),
        "6.8" => (480e6, 600e6),
        "8.8" => (640e6, 800e6),
        "10.9" => (900e6, 1000e6),
        _ => null,
    };
}
