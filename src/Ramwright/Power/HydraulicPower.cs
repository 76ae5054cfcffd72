using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Power;

/// <summary>Power, flow and torque of a pump that turns.</summary>
public static class HydraulicPower
{
    /// <summary>Power of a flow under pressure.</summary>
    public static readonly Citation PressureTimesFlow = Citation.Mechanics("work of a flow under pressure");

    /// <summary>Flow of a pump by its displacement.</summary>
    public static readonly Citation Displacing = Citation.Mechanics("swept volume times speed, less leakage");

    /// <summary>Power at the shaft of a pump.</summary>
    /// <param name="p">Pressure, Pa, 0 or more.</param>
    /// <param name="Q">Delivered flow, m³/s, 0 or more.</param>
    /// <param name="eta">Overall efficiency, above 0, at most 1; 1 gives the power in the oil itself.</param>
    /// <param name="w">Where to show the working.</param>
    /// <returns>W.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static double Of(double p, double Q, double eta = 1, Working? w = null)
    {
        Check.NotNegative(p);
        Check.NotNegative(Q);
        Check.Efficiency(eta);
        double P = p * Q / eta;
        w?.Step("P", "power at the shaft", "p Q/η", P, Dimension.Power, PressureTimesFlow,
            ("p", p, Dimension.Pressure), ("Q", Q, Dimension.Flow), ("η", eta, Dimension.Ratio));
        return P;
    }

    /// <summary>Flow a stage delivers.</summary>
    /// <param name="V">Swept volume a turn, m³, above zero.</param>
    /// <param name="n">Speed, 1/s, above zero.</param>
    /// <param name="eta_v">Volumetric efficiency, above 0, at most 1.</param>
    /// <param name="w">Where to show the working.</param>
    /// <returns>m³/s.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static double Flow(double V, double n, double eta_v = 1, Working? w = null)
    {
        Check.Positive(V);
        Check.Positive(n);
        Check.Efficiency(eta_v);
        double Q = V * n * eta_v;
        w?.Step("Q", "flow of the stage", "V n η_v", Q, Dimension.Flow, Displacing,
            ("V", V, Dimension.Displacement), ("n", n, Dimension.RotationalSpeed), ("η_v", eta_v, Dimension.Ratio));
        return Q;
    }

    /// <summary>Pressure at which a motor carries a stated power.</summary>
    /// <param name="P">Power at the shaft, W, above zero.</param>
    /// <param name="V">Swept volume a turn, m³, above zero.</param>
    /// <param name="n">Speed, 1/s, above zero.</param>
    /// <param name="eta_m">Mechanical efficiency, above 0, at most 1.</param>
    /// <param name="w">Where to show the working.</param>
    /// <returns>Pa.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static double PressureAt(double P, double V, double n, double eta_m = 1, Working? w = null)
    {
        Check.Positive(P);
        Check.Positive(V);
        Check.Positive(n);
        Check.Efficiency(eta_m);
        double p = P * eta_m / (V * n);
        w?.Step("p_M", "pressure at which the motor is fully loaded", "P η_m/(V n)", p, Dimension.Pressure, PressureTimesFlow,
            ("P", P, Dimension.Power), ("η_m", eta_m, Dimension.Ratio), ("V", V, Dimension.Displacement), ("n", n, Dimension.RotationalSpeed));
        return p;
    }

    /// <summary>Torque of a shaft.</summary>
    /// <param name="P">Power, W, 0 or more.</param>
    /// <param name="n">Speed, 1/s, above zero.</param>
    /// <returns>N·m.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static double Torque(double P, double n)
    {
        Check.NotNegative(P);
        Check.Positive(n);
        return P / (2 * Math.PI * n);
    }

    /// <summary>Line current of a three-phase motor.</summary>
    /// <param name="P">Power at the shaft, W, 0 or more.</param>
    /// <param name="U">Voltage between two lines, V, above zero.</param>
    /// <param name="cosPhi">Power factor, above 0, at most 1.</param>
    /// <param name="eta">Efficiency of the motor, above 0, at most 1.</param>
    /// <returns>A.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static double LineCurrent(double P, double U, double cosPhi, double eta)
    {
        Check.NotNegative(P);
        Check.Positive(U);
        Check.Efficiency(cosPhi);
        Check.Efficiency(eta);
        return P / (Math.Sqrt(3) * U * cosPhi * eta);
    }
}
