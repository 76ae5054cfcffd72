using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Strength;

/// <summary>Set screws with a cup point, driven against a shank: what pulls the shank out from under them.</summary>
public static class SetScrew
{
    /// <summary>Holding power of socket set screws, properly seated.</summary>
    public static readonly Citation Source = new("Shigley's Mechanical Engineering Design, 9th ed.", "7-6, table 7-4", Standing.FromMemory);

    /// <summary>Factor on it under a steady load, 1.5 to 2 in the same place.</summary>
    public const double UsualFactor = 2;

    private const double Inch = 0.0254, PoundForce = 4.4482216152605;

    // inch, lbf
    private static readonly (double D, double P)[] Table =
    [
        (0.250, 1000), (0.3125, 1500), (0.375, 2000), (0.4375, 2500), (0.5, 3000), (0.5625, 3500),
        (0.625, 4000), (0.75, 5000), (0.875, 6000), (1.0, 7000),
    ];

    /// <summary>Smallest and greatest diameter of the table, m.</summary>
    public static (double From, double UpTo) Range => (Table[0].D * Inch, Table[^1].D * Inch);

    /// <summary>Force along the shank that one screw holds, N; straight lines between the sizes of the table.</summary>
    /// <param name="d">Diameter of the screw, m: a quarter to one inch.</param>
    /// <exception cref="ArgumentOutOfRangeException">A size outside the table.</exception>
    public static double Holds(double d)
    {
        double x = Check.Positive(d) / Inch;
        if (!(x >= Table[0].D * (1 - 1e-9) && x <= Table[^1].D * (1 + 1e-9)))
            throw new ArgumentOutOfRangeException(nameof(d), d, "the table goes from a quarter to one inch");
        for (int i = 1; i < Table.Length; i++)
        {
            ((double d0, double p0), (double d1, double p1)) = (Table[i - 1], Table[i]);
            if (x <= d1 || i == Table.Length - 1)
                return (p0 + (p1 - p0) * (x - d0) / (d1 - d0)) * PoundForce;
        }

        throw new InvalidOperationException("the table is empty");
    }

    /// <summary>Ram force at which the shank slips from under its screws.</summary>
    /// <param name="share">Force along the shank per newton at the ram, either sign.</param>
    /// <param name="d">Diameter of the screws, m.</param>
    /// <param name="count">How many of them.</param>
    /// <param name="factor">Factor on the holding power, at least 1. It stands alone.</param>
    /// <param name="w">Where to write it down.</param>
    public static Limit? Slips(double share, double d, int count, double factor = UsualFactor, Working? w = null)
    {
        Check.AtLeast(factor, 1);
        ArgumentOutOfRangeException.ThrowIfLessThan(count, 1);
        double P = Holds(d), u = Math.Abs(Check.Finite(share)) / (count * P);
        w?.Take("P_h", "holding power of one screw of this size", P, Dimension.Force, Source);
        w?.Step("u", "share of it used by one newton", "abs(f) / (n P_h)", u, Dimension.Number, Source,
            ("f", share, Dimension.Force), ("n", count, Dimension.Count), ("P_h", P, Dimension.Force));
        return Limit.FromUse(u, 1, factor, w);
    }
}
