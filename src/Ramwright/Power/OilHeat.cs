using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Power;

/// <summary>Where the lost power goes: heat in the oil and out through the tank's walls.</summary>
public static class OilHeat
{
    /// <summary>Specific heat of mineral oil, J/(kg·K).</summary>
    public const double SpecificHeat = 1900;

    /// <summary>Specific heat of steel, J/(kg·K).</summary>
    public const double SteelSpecificHeat = 490;

    /// <summary>Heat a tank's walls pass to free air, W/(m²·K).</summary>
    public const double FreeAir = 12;

    /// <summary>Warmest the oil should be where the pump draws it, °C.</summary>
    public const double Warmest = 60;

    /// <summary>Where that limit stands.</summary>
    public static readonly Citation WarmestSource = new("ISO 4413", "oil at the pump's inlet, 60 °C; a summary of it was seen");

    /// <summary>How a tank warms.</summary>
    public static readonly Citation Warming = Citation.Mechanics("heat balance of a tank of one temperature");

    /// <summary>Heat through a tank's walls.</summary>
    public static readonly Citation WallSource = Citation.Practice("a tank with free air passes 11 to 12 W/(m² K), one with little air half of it");

    /// <summary>Rise of oil that is throttled.</summary>
    /// <param name="dp">Pressure lost, Pa, 0 or more.</param>
    /// <param name="rho">Density, kg/m³, above zero.</param>
    /// <param name="c">Specific heat, J/(kg·K), above zero.</param>
    /// <returns>K.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static double ThrottlingRise(double dp, double rho, double c = SpecificHeat)
    {
        Check.NotNegative(dp);
        Check.Positive(rho);
        Check.Positive(c);
        return dp / (rho * c);
    }

    /// <summary>Heat a stream of oil carries for each kelvin.</summary>
    /// <param name="Q">Flow, m³/s, 0 or more.</param>
    /// <param name="rho">Density, kg/m³, above zero.</param>
    /// <param name="c">Specific heat, J/(kg·K), above zero.</param>
    /// <returns>W/K.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static double StreamHeat(double Q, double rho, double c = SpecificHeat)
    {
        Check.NotNegative(Q);
        Check.Positive(rho);
        Check.Positive(c);
        return Q * rho * c;
    }

    /// <summary>Rise over the room at which a tank loses as much heat as it gets.</summary>
    /// <param name="P">Heat, W, 0 or more.</param>
    /// <param name="area">Walls that the air reaches, m², above zero.</param>
    /// <param name="U">Heat passed, W/(m²·K), above zero: 5.8 with little air to 12 with free air.</param>
    /// <returns>K.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static double SteadyRise(double P, double area, double U)
    {
        Check.NotNegative(P);
        Check.Positive(area);
        Check.Positive(U);
        return P / (U * area);
    }

    /// <summary>Wall area that keeps a tank to a rise.</summary>
    /// <param name="P">Heat, W, 0 or more.</param>
    /// <param name="rise">K, above zero.</param>
    /// <param name="U">Heat passed, W/(m²·K), above zero.</param>
    /// <returns>m².</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static double AreaFor(double P, double rise, double U)
    {
        Check.NotNegative(P);
        Check.Positive(rise);
        Check.Positive(U);
        return P / (U * rise);
    }

    /// <summary>Heat that oil and tank take up for each kelvin.</summary>
    /// <param name="oil">Oil, m³, 0 or more.</param>
    /// <param name="rho">Its density, kg/m³, above zero.</param>
    /// <param name="steel">Steel, kg, 0 or more.</param>
    /// <returns>J/K.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static double Capacity(double oil, double rho, double steel)
    {
        Check.NotNegative(oil);
        Check.Positive(rho);
        Check.NotNegative(steel);
        return oil * rho * SpecificHeat + steel * SteelSpecificHeat;
    }

    /// <summary>Time in which a tank rises by so much: <see cref="RiseAfter"/> turned round.</summary>
    /// <param name="rise">Rise asked about, K, 0 or more.</param>
    /// <param name="steady">Rise it tends to, K, 0 or more.</param>
    /// <param name="capacity">J/K, above zero.</param>
    /// <param name="UA">Heat its walls pass for each kelvin, W/K, above zero.</param>
    /// <param name="w">Where to show the working.</param>
    /// <returns>s; null where it never rises so far.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static double? TimeToRise(double rise, double steady, double capacity, double UA, Working? w = null)
    {
        Check.NotNegative(rise);
        Check.NotNegative(steady);
        Check.Positive(capacity);
        Check.Positive(UA);
        if (rise >= steady * (1 - 1e-9))
            return null;
        double t = -capacity / UA * Math.Log(1 - rise / steady);
        w?.Step("t", "time until the oil is as warm as it should be", "−C/H · ln(1 − ΔT/ΔT_s)", t, Dimension.Time, Warming,
            ("C", capacity, Dimension.Number), ("H", UA, Dimension.Number), ("ΔT", rise, Dimension.Number), ("ΔT_s", steady, Dimension.Number));
        return t;
    }

    /// <summary>Rise of a tank after a time.</summary>
    /// <param name="steady">Rise it tends to, K, 0 or more.</param>
    /// <param name="capacity">J/K, above zero.</param>
    /// <param name="UA">Heat its walls pass for each kelvin, W/K, above zero.</param>
    /// <param name="t">Time, s, 0 or more.</param>
    /// <returns>K.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static double RiseAfter(double steady, double capacity, double UA, double t)
    {
        Check.NotNegative(steady);
        Check.Positive(capacity);
        Check.Positive(UA);
        Check.NotNegative(t);
        return steady * (1 - Math.Exp(-t * UA / capacity));
    }
}
