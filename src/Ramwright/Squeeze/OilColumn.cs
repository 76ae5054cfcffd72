namespace Ramwright.Squeeze;

/// <summary>
/// Oil that gives: its density rises as 1 + p/K. Amounts are counted in cubic metres at no pressure. Energies follow from that law without
/// further approximation, so that a balance can close.
/// </summary>
internal static class OilColumn
{
    /// <summary>Energy stored in each cubic metre of oil at a pressure, J/m³: K (ln(1 + z) − z/(1 + z)), z = p/K.</summary>
    public static double Stored(double p, double K)
    {
        double z = Math.Max(0, p) / K;
        return z < 1e-4 ? K * z * z * (0.5 - 2 * z / 3) : K * (Math.Log(1 + z) - z / (1 + z));
    }

    /// <summary>Energy that a cubic metre of oil carries along in a flow under pressure, J/m³: K ln(1 + p/K).</summary>
    public static double Carried(double p, double K)
    {
        double z = Math.Max(0, p) / K;
        return z < 1e-4 ? K * z * (1 - 0.5 * z) : K * Math.Log(1 + z);
    }
}
