using System.Globalization;
using Ramwright.Quantities;

namespace Ramwright.Proving;

/// <summary>Writes a result with its uncertainty: the uncertainty to two figures, the value to the same place.</summary>
public static class UncertainText
{
    private const double Tonne = 9806.65, UsTon = 8896.443230521;

    /// <summary>A ram force in tons with its uncertainty: <c>23.6 t ± 0.8 t (k = 2.0, 95 %)</c>.</summary>
    /// <param name="force">The force.</param>
    /// <param name="units">Tonnes or US tons.</param>
    public static string Force(TrueForce force, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(force);
        (double ton, string name) = Ton(units);
        string how = $"k = {force.StatedCoverage.ToString("0.0#", CultureInfo.InvariantCulture)}, {Readout.Text(force.Force.Level, Dimension.Ratio, digits: 2)}";
        return $"{Of(force.Value / ton, force.Stated / ton, name)} ({how})";
    }

    /// <summary>A force in tons as it is sold: <c>30 t</c>.</summary>
    /// <param name="newtons">N.</param>
    /// <param name="units">Tonnes or US tons.</param>
    public static string Tons(double newtons, UnitSystem units)
    {
        (double ton, string name) = Ton(units);
        return $"{Readout.Number(newtons / ton)} {name}";
    }

    /// <summary>A result in the unit its dimension is shown in.</summary>
    /// <param name="value">Result, SI.</param>
    /// <param name="U">Uncertainty, SI.</param>
    /// <param name="dimension">What it measures.</param>
    /// <param name="units">Which units.</param>
    public static string Of(double value, double U, Dimension dimension, UnitSystem units)
    {
        Unit unit = Readout.UnitFor(dimension, units);
        return Of(unit.FromSi(value), unit.FromSi(U) - unit.FromSi(0), unit.Symbol);
    }

    private static string Of(double value, double U, string unit)
    {
        if (!(U > 0))
            return $"{Readout.Number(value)} {unit} ± 0";
        // two figures, or one where the second would be finer than anybody reads: 0.80 is 0.8
        int places = Math.Max(0, 1 - (int)Math.Floor(Math.Log10(U)));
        string form = "F" + Math.Min(9, places).ToString(CultureInfo.InvariantCulture);
        return $"{value.ToString(form, CultureInfo.InvariantCulture)} {unit} ± {U.ToString(form, CultureInfo.InvariantCulture)} {unit}";
    }

    private static (double Newtons, string Name) Ton(UnitSystem units) => units == UnitSystem.Imperial ? (UsTon, "US ton") : (Tonne, "t");
}
