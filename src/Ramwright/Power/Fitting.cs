using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Power;

/// <summary>Loss coefficients K of fittings in turbulent flow; the loss is K ρ u²/2.</summary>
/// <remarks>Laminar flow loses more at a fitting than K says; there the line's own friction outweighs it.</remarks>
public static class Fitting
{
    /// <summary>The coefficients.</summary>
    public static readonly Citation Source = new("fluid mechanics e-book", "table 2.1, minor losses, turbulent flow");

    /// <summary>Elbow of 90°.</summary>
    public const double Elbow90 = 0.9;
    /// <summary>Elbow of 45°.</summary>
    public const double Elbow45 = 0.42;
    /// <summary>Tee, through the branch.</summary>
    public const double Tee = 1.8;
    /// <summary>Return bend.</summary>
    public const double ReturnBend = 2.2;
    /// <summary>Globe valve, open.</summary>
    public const double GlobeValve = 10;
    /// <summary>Angle valve, open.</summary>
    public const double AngleValve = 5;
    /// <summary>Gate valve, open.</summary>
    public const double GateValve = 0.19;
    /// <summary>Out of a line into a tank or cylinder.</summary>
    public const double Exit = 1.0;
    /// <summary>From a tank or cylinder into a line.</summary>
    public const double Entry = 0.5;

    /// <summary>The coefficients of all that a line has, its entry and exit included.</summary>
    /// <param name="fittings">What stands on the line besides; null for nothing.</param>
    /// <exception cref="ArgumentOutOfRangeException">A count or coefficient that is negative.</exception>
    public static double Sum(Fittings? fittings)
    {
        if (fittings is null)
            return Entry + Exit;
        return Entry + Exit
            + Elbow90 * Of(fittings.Elbows) + Elbow45 * Of(fittings.HalfElbows) + Tee * Of(fittings.Tees)
            + ReturnBend * Of(fittings.ReturnBends) + GateValve * Of(fittings.GateValves) + AngleValve * Of(fittings.AngleValves)
            + GlobeValve * Of(fittings.GlobeValves) + Of(fittings.LossCoefficient);

        static double Of(double? said) => said is { } n ? Check.NotNegative(n, nameof(fittings)) : 0;
    }

    /// <summary>Pressure lost at fittings.</summary>
    /// <param name="sumK">Sum of their coefficients, 0 or more.</param>
    /// <param name="rho">Density, kg/m³, above zero.</param>
    /// <param name="u">Speed of the oil in the line, m/s, 0 or more.</param>
    /// <param name="w">Where to show the working.</param>
    /// <returns>Pa.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static double Loss(double sumK, double rho, double u, Working? w = null)
    {
        Check.NotNegative(sumK);
        Check.Positive(rho);
        Check.NotNegative(u);
        double dp = sumK * rho * u * u / 2;
        w?.Step("Δp", "pressure lost at fittings", "ΣK ρ u²/2", dp, Dimension.Pressure, Source,
            ("ΣK", sumK, Dimension.Number), ("ρ", rho, Dimension.Density), ("u", u, Dimension.Speed));
        return dp;
    }
}
