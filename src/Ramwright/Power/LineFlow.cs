using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Power;

/// <summary>Oil through a smooth hose or pipe.</summary>
public static class LineFlow
{
    /// <summary>Greatest Reynolds number at which the flow is surely laminar. From there on the turbulent value is taken, which is the higher.</summary>
    public const double LaminarBelow = 2000;

    /// <summary>Greatest Reynolds number for which Blasius' formula holds.</summary>
    public const double BlasiusUpTo = 1e5;

    /// <summary>Reynolds' number.</summary>
    public static readonly Citation ReynoldsSource = new("Crane, Flow of Fluids, TP 410M (1999)", "Reynolds number; Darcy's formula");

    /// <summary>Laminar friction.</summary>
    public static readonly Citation LaminarSource = new("Crane, Flow of Fluids, TP 410M (1999)", "laminar flow, f = 64/Re; Fluid Power Engineering (Rabie), App. 2B for the limit");

    /// <summary>Turbulent friction of a smooth pipe.</summary>
    public static readonly Citation BlasiusSource = new("Blasius 1913", "smooth pipe, f = 0.3164/Re^0.25", Standing.FromMemory);

    /// <summary>Mean speed of the oil.</summary>
    /// <param name="Q">Flow, m³/s, 0 or more.</param>
    /// <param name="D">Bore, m, above zero.</param>
    /// <param name="w">Where to show the working.</param>
    /// <returns>m/s.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static double Velocity(double Q, double D, Working? w = null)
    {
        Check.NotNegative(Q);
        Check.Positive(D);
        double u = 4 * Q / (Math.PI * D * D);
        w?.Step("u", "speed of the oil", "4 Q/(π D²)", u, Dimension.Speed, RamSpeed.Continuity,
            ("Q", Q, Dimension.Flow), ("D", D, Dimension.Length));
        return u;
    }

    /// <summary>Bore for a flow at a speed.</summary>
    /// <param name="Q">Flow, m³/s, 0 or more.</param>
    /// <param name="u">Speed of the oil, m/s, above zero.</param>
    /// <returns>m.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static double BoreFor(double Q, double u)
    {
        Check.NotNegative(Q);
        Check.Positive(u);
        return Math.Sqrt(4 * Q / (Math.PI * u));
    }

    /// <summary>Reynolds' number.</summary>
    /// <param name="u">Speed of the oil, m/s, 0 or more.</param>
    /// <param name="D">Bore, m, above zero.</param>
    /// <param name="nu">Kinematic viscosity, m²/s, above zero.</param>
    /// <param name="w">Where to show the working.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static double Reynolds(double u, double D, double nu, Working? w = null)
    {
        Check.NotNegative(u);
        Check.Positive(D);
        Check.Positive(nu);
        double Re = u * D / nu;
        w?.Step("Re", "Reynolds number", "u D/ν", Re, Dimension.Number, ReynoldsSource,
            ("u", u, Dimension.Speed), ("D", D, Dimension.Length), ("ν", nu, Dimension.KinematicViscosity));
        return Re;
    }

    /// <summary>Darcy's friction factor of a smooth pipe: laminar below <see cref="LaminarBelow"/>, Blasius from there on.</summary>
    /// <param name="Re">Reynolds number, above zero, at most <see cref="BlasiusUpTo"/>.</param>
    /// <param name="w">Where to show the working.</param>
    /// <returns>
    /// The factor. Between 2000 and 4000 no value can be trusted: the turbulent one is taken because it is the higher.
    /// </returns>
    /// <exception cref="ArgumentOutOfRangeException">A number outside its range.</exception>
    public static double Friction(double Re, Working? w = null)
    {
        Check.Positive(Re);
        if (Re > BlasiusUpTo)
            Check.Refuse(nameof(Re), Re, $"at most {BlasiusUpTo}, where Blasius' formula ends: the line is far too small");
        double f = Factor(Re);
        if (Re < LaminarBelow)
            w?.Step("f", "friction factor, laminar", "64/Re", f, Dimension.Number, LaminarSource, ("Re", Re, Dimension.Number));
        else
            w?.Step("f", "friction factor, turbulent in a smooth pipe", "0.3164/Re^0.25", f, Dimension.Number, BlasiusSource, ("Re", Re, Dimension.Number));
        return f;
    }

    /// <summary>Pressure lost along a line.</summary>
    /// <param name="Q">Flow, m³/s, 0 or more.</param>
    /// <param name="D">Bore, m, above zero.</param>
    /// <param name="L">Length, m, 0 or more.</param>
    /// <param name="nu">Kinematic viscosity, m²/s, above zero.</param>
    /// <param name="rho">Density, kg/m³, above zero.</param>
    /// <param name="sumK">Sum of the loss coefficients of its fittings (<see cref="Fitting"/>), 0 or more.</param>
    /// <param name="w">Where to show the working.</param>
    /// <returns>Pa.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range, or a flow too fast for Blasius' formula.</exception>
    public static double Loss(double Q, double D, double L, double nu, double rho, double sumK = 0, Working? w = null)
    {
        Check.NotNegative(L);
        Check.Positive(rho);
        Check.NotNegative(sumK);
        double u = Velocity(Q, D, w), Re = Reynolds(u, D, nu, w);
        if (Re < Still)
            return 0;
        double f = Friction(Re, w);
        double dp = (f * L / D + sumK) * rho * u * u / 2;
        w?.Step("Δp", "pressure lost in the line", "(f L/D + ΣK) ρ u²/2", dp, Dimension.Pressure, ReynoldsSource,
            ("f", f, Dimension.Number), ("L", L, Dimension.Length), ("D", D, Dimension.Length), ("ΣK", sumK, Dimension.Number),
            ("ρ", rho, Dimension.Density), ("u", u, Dimension.Speed));
        return dp;
    }

    /// <summary>Below this Reynolds number oil stands still: 64/Re would leave the numbers that a machine can write.</summary>
    internal const double Still = 1e-12;

    /// <summary>The friction factor with no check at the door; beyond Blasius' range it runs on, a little low.</summary>
    internal static double Factor(double Re) =>
        Re < LaminarBelow ? 64 / Re : 0.3164 / Math.Sqrt(Math.Sqrt(Re));
}
