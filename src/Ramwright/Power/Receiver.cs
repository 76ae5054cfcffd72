using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Power;

/// <summary>Air in and out of a receiver, at one temperature. All air flows are free air.</summary>
public static class Receiver
{
    /// <summary>Air in a vessel by the gas law.</summary>
    public static readonly Citation GasLaw = Citation.Mechanics("gas law at one temperature: free air is V Δp/p_atm");

    /// <summary>Free air in a receiver between two pressures.</summary>
    /// <param name="V">Volume, m³, above zero.</param>
    /// <param name="dp">Pressure difference, Pa, 0 or more.</param>
    /// <param name="atm">The atmosphere, Pa absolute, above zero.</param>
    /// <returns>m³ of free air.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static double FreeAir(double V, double dp, double atm = Atmosphere.Pressure)
    {
        Check.Positive(V);
        Check.NotNegative(dp);
        Check.Positive(atm);
        return V * dp / atm;
    }

    /// <summary>Time to raise or lower a receiver's pressure with a steady surplus of air in or out.</summary>
    /// <param name="V">Volume, m³, above zero.</param>
    /// <param name="dp">Pressure difference, Pa, 0 or more.</param>
    /// <param name="q">Free air, what goes in less what goes out or the reverse, m³/s, above zero.</param>
    /// <param name="atm">The atmosphere, Pa absolute, above zero.</param>
    /// <param name="w">Where to show the working.</param>
    /// <returns>s.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static double Time(double V, double dp, double q, double atm = Atmosphere.Pressure, Working? w = null)
    {
        Check.Positive(q);
        double t = FreeAir(V, dp, atm) / q;
        w?.Step("t", "time for the receiver's pressure to change", "V Δp/(p_atm q)", t, Dimension.Time, GasLaw,
            ("V", V, Dimension.Volume), ("Δp", dp, Dimension.Pressure), ("p_atm", atm, Dimension.Stress), ("q", q, Dimension.FreeAir));
        return t;
    }

    /// <summary>
    /// Time until a full receiver has fallen to a pressure while air is drawn: first with the compressor at rest, from cut-in on
    /// with the compressor running.
    /// </summary>
    /// <param name="V">Volume, m³, above zero.</param>
    /// <param name="cutOut">Pressure at which the compressor stops, Pa, not below <paramref name="cutIn"/>.</param>
    /// <param name="cutIn">Pressure at which it starts, Pa, 0 or more.</param>
    /// <param name="to">Pressure asked about, Pa, 0 or more.</param>
    /// <param name="demand">Free air drawn, m³/s, above zero.</param>
    /// <param name="delivered">Free air the compressor delivers, m³/s, 0 or more.</param>
    /// <param name="w">Where to show the working.</param>
    /// <returns>s; 0 where it is never above that pressure; null where the compressor keeps up and it never falls so low.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static double? TimeToFall(
        double V, double cutOut, double cutIn, double to, double demand, double delivered, Working? w = null)
    {
        Check.NotNegative(cutIn);
        Check.AtLeast(cutOut, cutIn);
        Check.NotNegative(to);
        Check.Positive(demand);
        Check.NotNegative(delivered);
        if (to >= cutOut)
            return 0;
        double atRest = Time(V, cutOut - Math.Max(to, cutIn), demand, w: w);
        if (to >= cutIn)
            return atRest;
        // A surplus so small that the fall would take for ever counts as keeping up.
        return demand - delivered > 1e-9 * demand
            ? atRest + Time(V, cutIn - to, demand - delivered, w: w)
            : null;
    }

    /// <summary>Leak found by letting the closed system bleed down.</summary>
    /// <param name="V">Volume of the system, m³, above zero.</param>
    /// <param name="dp">Fall in pressure, Pa, 0 or more.</param>
    /// <param name="t">Time it took, s, above zero.</param>
    /// <param name="factor">Correction to working pressure; the trade takes 1.25 where the pressure fell to half.</param>
    /// <param name="atm">The atmosphere, Pa absolute, above zero.</param>
    /// <returns>m³/s of free air. It is a flow, not a share of what the compressor delivers.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static double Leak(double V, double dp, double t, double factor = 1, double atm = Atmosphere.Pressure)
    {
        Check.Positive(t);
        Check.Positive(factor);
        return FreeAir(V, dp, atm) / t * factor;
    }
}
