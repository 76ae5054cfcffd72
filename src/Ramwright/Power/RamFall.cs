using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Power;

/// <summary>How fast a raised ram comes down on oil that is let go. Seals, valves and fittings off the list would slow it: these are upper bounds.</summary>
public static class RamFall
{
    /// <summary>Oil out of an opening.</summary>
    public static readonly Citation Torricelli = Citation.Mechanics("outflow by Torricelli, nothing lost at the opening");

    /// <summary>Oil through a line under the load's own pressure.</summary>
    public static readonly Citation Balance = Citation.Mechanics("the load's pressure is what the lines lose; by iteration");

    /// <summary>A fall with nothing to hold it.</summary>
    public static readonly Citation Free = Citation.Mechanics("free fall over the stroke");

    /// <summary>Pressure that a load makes in the oil that holds it.</summary>
    /// <param name="m">Mass, kg, 0 or more.</param>
    /// <param name="A">Area that holds it, m², above zero.</param>
    /// <param name="w">Where to show the working.</param>
    /// <returns>Pa.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static double LoadPressure(double m, double A, Working? w = null)
    {
        Check.NotNegative(m);
        Check.Positive(A);
        double p = m * Gravity / A;
        w?.Step("p_L", "pressure of the load in the oil that holds it", "m g/A", p, Dimension.Pressure, RamForce.PressureOnArea,
            ("m", m, Dimension.Mass), ("g", Gravity, Dimension.Number), ("A", A, Dimension.Area));
        return p;
    }

    /// <summary>Standard gravity, m/s².</summary>
    public const double Gravity = 9.80665;

    /// <summary>Speed of the fall where the line itself is open: cut off or burst at the port.</summary>
    /// <param name="m">Mass, kg, 0 or more.</param>
    /// <param name="A">Area that holds it, m², above zero.</param>
    /// <param name="d">Bore of the port, m, above zero.</param>
    /// <param name="s">Stroke, m, above zero.</param>
    /// <param name="rho">Density of the oil, kg/m³, above zero.</param>
    /// <param name="w">Where to show the working.</param>
    /// <returns>m/s, no more than a free fall over the stroke.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static double FromOpenPort(double m, double A, double d, double s, double rho, Working? w = null)
    {
        Check.Positive(d);
        Check.Positive(s);
        Check.Positive(rho);
        double p = LoadPressure(m, A, w), a = CylinderAreas.Circle(d);
        double v = Math.Min(a / A * Math.Sqrt(2 * p / rho), Math.Sqrt(2 * Gravity * s));
        w?.Step("v", "speed of the fall, the port open", "min(a/A · √(2 p_L/ρ), √(2 g s))", v, Dimension.Speed, Torricelli,
            ("a", a, Dimension.Area), ("A", A, Dimension.Area), ("p_L", p, Dimension.Pressure), ("ρ", rho, Dimension.Density),
            ("g", Gravity, Dimension.Number), ("s", s, Dimension.Length));
        return v;
    }

    /// <summary>Speed of the fall where a valve opens the lines to the tank.</summary>
    /// <param name="m">Mass, kg, 0 or more.</param>
    /// <param name="A">Area that holds it, m², above zero.</param>
    /// <param name="s">Stroke, m, above zero.</param>
    /// <param name="lines">The lines the oil leaves through, one after the other; at least one.</param>
    /// <param name="duty">Which of them.</param>
    /// <param name="nu">Kinematic viscosity, m²/s, above zero.</param>
    /// <param name="rho">Density, kg/m³, above zero.</param>
    /// <param name="w">Where to show the working.</param>
    /// <returns>m/s, no more than a free fall over the stroke; null where no such line is known.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static double? ThroughLines(
        double m, double A, double s, IReadOnlyList<RigLine> lines, LineDuty duty, double nu, double rho, Working? w = null)
    {
        ArgumentNullException.ThrowIfNull(lines);
        Check.Positive(s);
        Check.Positive(nu);
        Check.Positive(rho);
        double p = LoadPressure(m, A, w), free = Math.Sqrt(2 * Gravity * s);
        var set = new LineSet(lines, duty, nu, rho);
        if (set.IsEmpty)
            return null;
        double lo = 0, hi = free * A;
        var loses = new Loses(set, p);
        if (loses.At(hi) < 0)
            Crossing.Narrow(loses, ref lo, ref hi);
        else
            lo = hi;
        w?.Take("Q", "flow at which the lines lose the load's pressure, or that of a free fall", lo, Dimension.Flow, Balance);
        return RamSpeed.Of(lo, A, w);
    }

    private readonly struct Loses(LineSet lines, double p) : IFalling
    {
        public double At(double Q) => p - lines.Loss(Q);
    }
}
