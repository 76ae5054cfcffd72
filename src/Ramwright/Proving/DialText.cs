using Ramwright.Quantities;

namespace Ramwright.Proving;

/// <summary>A dial's travel as it is read: millimetres, or thousandths of an inch however many they are.</summary>
public static class DialText
{
    /// <summary>Writes it.</summary>
    /// <param name="si">m; must be finite.</param>
    /// <param name="units">What the dial reads.</param>
    public static string Of(double si, UnitSystem units) =>
        units == UnitSystem.Imperial && Quantities.Units.TryFind("thou", Dimension.Length, out Unit? thou)
            ? Readout.Text(si, thou, 2)
            : Readout.Text(si, Dimension.Length, units, 2);
}
