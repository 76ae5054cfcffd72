using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Power;

/// <summary>Energy that is let go at once when something breaks or a valve is opened fast.</summary>
public static class StoredEnergy
{
    /// <summary>Energy of something elastic.</summary>
    public static readonly Citation Elastic = Citation.Mechanics("energy of an elastic body: half of load times give");

    /// <summary>Energy in oil under pressure.</summary>
    /// <param name="p">Pressure, Pa, 0 or more.</param>
    /// <param name="V">Oil, m³, 0 or more.</param>
    /// <param name="K">Bulk modulus, Pa, above zero.</param>
    /// <param name="w">Where to show the working.</param>
    /// <returns>J.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static double InOil(double p, double V, double K = BulkModulus.MineralOil, Working? w = null)
    {
        Check.NotNegative(p);
        Check.NotNegative(V);
        Check.Positive(K);
        double E = p * p * V / (2 * K);
        w?.Step("E", "energy in the oil", "p² V/(2 K)", E, Dimension.Energy, Elastic,
            ("p", p, Dimension.Pressure), ("V", V, Dimension.Volume), ("K", K, Dimension.Stress));
        return E;
    }

    /// <summary>Energy in a frame under load.</summary>
    /// <param name="F">Force, N, 0 or more.</param>
    /// <param name="k">Stiffness, N/m, above zero.</param>
    /// <param name="w">Where to show the working.</param>
    /// <returns>J.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static double InFrame(double F, double k, Working? w = null)
    {
        Check.NotNegative(F);
        Check.Positive(k);
        double E = F * F / (2 * k);
        w?.Step("E", "energy in the frame", "F²/(2 k)", E, Dimension.Energy, Elastic,
            ("F", F, Dimension.Force), ("k", k, Dimension.Stiffness));
        return E;
    }
}
