using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Power;

/// <summary>Work and power of compressing air, and what a compressor delivers for its motor.</summary>
public static class AirCompression
{
    /// <summary>Exponent of air, cp/cv.</summary>
    public const double k = 1.4;

    /// <summary>Isentropic power over motor power of a small workshop compressor, where nothing is stated.</summary>
    public const double UsualEfficiency = 0.60;

    /// <summary>Work of compression.</summary>
    public static readonly Citation WorkSource = new("Machinery's Handbook, 31st ed.", "Tables 36 and 37, compressing air, k = 1.4");

    /// <summary>What a small compressor makes of its motor power.</summary>
    public static readonly Citation EfficiencySource = Citation.Practice("small piston compressors turn about 60 % of the motor power into isentropic work");

    /// <summary>Mean pressure of isothermal compression, the least there is.</summary>
    /// <param name="p">Pressure made, Pa above the atmosphere, 0 or more.</param>
    /// <param name="p1">Intake, Pa absolute, above zero.</param>
    /// <returns>Pa; times the free air it is the power.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static double IsothermalMeanPressure(double p, double p1 = Atmosphere.Pressure)
    {
        Check.NotNegative(p);
        Check.Positive(p1);
        return p1 * Math.Log((p + p1) / p1);
    }

    /// <summary>Mean pressure of isentropic (adiabatic) compression in stages of equal ratio, cooled back between them.</summary>
    /// <param name="p">Pressure made, Pa above the atmosphere, 0 or more.</param>
    /// <param name="stages">Number of stages, 1 or more.</param>
    /// <param name="p1">Intake, Pa absolute, above zero.</param>
    /// <returns>Pa; times the free air it is the power.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static double IsentropicMeanPressure(double p, int stages = 1, double p1 = Atmosphere.Pressure)
    {
        Check.NotNegative(p);
        Check.Positive(p1);
        ArgumentOutOfRangeException.ThrowIfLessThan(stages, 1);
        return stages * k / (k - 1) * p1 * (Math.Pow((p + p1) / p1, (k - 1) / (k * stages)) - 1);
    }

    /// <summary>Free air a compressor delivers for its motor power, where the maker does not say.</summary>
    /// <param name="motor">Motor power, W, above zero.</param>
    /// <param name="p">Pressure it works against, Pa above the atmosphere, above zero.</param>
    /// <param name="eta">Isentropic power over motor power, above 0, at most 1.</param>
    /// <param name="w">Where to show the working.</param>
    /// <returns>m³/s of free air.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static double DeliveryFor(double motor, double p, double eta = UsualEfficiency, Working? w = null)
    {
        Check.Positive(motor);
        Check.Positive(p);
        Check.Efficiency(eta);
        double p_m = IsentropicMeanPressure(p);
        w?.Step("p_m", "mean pressure of isentropic compression", "k p_1 (((p + p_1)/p_1)^((k − 1)/k) − 1)/(k − 1)", p_m, Dimension.Stress, WorkSource,
            ("k", k, Dimension.Number), ("p_1", Atmosphere.Pressure, Dimension.Stress), ("p", p, Dimension.Pressure));
        double Q_c = eta * motor / p_m;
        w?.Step("Q_c", "free air delivered for this motor", "η P/p_m", Q_c, Dimension.FreeAir, EfficiencySource,
            ("η", eta, Dimension.Ratio), ("P", motor, Dimension.Power), ("p_m", p_m, Dimension.Stress));
        return Q_c;
    }

    /// <summary>Air a piston compressor sweeps.</summary>
    /// <param name="cylinders">Number of cylinders, 1 or more.</param>
    /// <param name="bore">m, above zero.</param>
    /// <param name="stroke">m, above zero.</param>
    /// <param name="n">Speed, 1/s, above zero.</param>
    /// <param name="eta_v">Volumetric efficiency; 1 gives the swept volume, 0.60 to 0.75 the free air of a small single-stage machine.</param>
    /// <returns>m³/s.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static double Swept(int cylinders, double bore, double stroke, double n, double eta_v = 1)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(cylinders, 1);
        Check.Positive(bore);
        Check.Positive(stroke);
        Check.Positive(n);
        Check.Efficiency(eta_v);
        return cylinders * CylinderAreas.Circle(bore) * stroke * n * eta_v;
    }
}
