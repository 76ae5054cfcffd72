using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Fabrication.Welding;

/// <summary>Heat that an arc brings into the steel.</summary>
public static class HeatInput
{
    /// <summary>Source of the formula and of k.</summary>
    public static readonly Citation Source = new("EN 1011-1:2009", "19 and table 1");

    /// <summary>A heat input as it is said: kJ/mm, or kJ/in.</summary>
    /// <param name="Q">kJ/mm.</param>
    /// <param name="units">Which units.</param>
    public static string Text(double Q, UnitSystem units) => units == UnitSystem.Metric ? $"{Readout.Number(Q, 2)} kJ/mm" : $"{Readout.Number(Q * 25.4, 2)} kJ/in";

    /// <summary>Thermal efficiency k of a process.</summary>
    public static double Efficiency(WeldingProcess process) => process == WeldingProcess.Tig ? 0.6 : 0.8;

    /// <summary>Heat input Q, kJ/mm.</summary>
    /// <param name="k">Thermal efficiency: 1 submerged arc, 0.8 stick and wire, 0.6 TIG.</param>
    /// <param name="U">Voltage, V.</param>
    /// <param name="I">Current, A.</param>
    /// <param name="v">Travel, mm/s.</param>
    /// <param name="w">Where to write it down.</param>
    public static double Of(double k, double U, double I, double v, Working? w = null)
    {
        double Q = Check.Positive(k) * Check.Positive(U) * Check.Positive(I) / (1000 * Check.Positive(v));
        w?.Step("Q", "heat input, kJ/mm", "k U I / (1000 v)", Q, Dimension.Number, Source,
            ("k", k, Dimension.Number), ("U", U, Dimension.Number), ("I", I, Dimension.Number), ("v", v, Dimension.Number));
        return Q;
    }
}
