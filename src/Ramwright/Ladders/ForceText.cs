using Ramwright.Quantities;

namespace Ramwright.Ladders;

/// <summary>A ram force as it is talked about: kilonewtons with tonnes beside, or US tons.</summary>
public static class ForceText
{
    private const double Tonne = 9806.65;

    /// <summary>Writes a force.</summary>
    /// <param name="newtons">N; must be finite.</param>
    /// <param name="units">Which units.</param>
    public static string Of(double newtons, UnitSystem units) =>
        units == UnitSystem.Imperial
            ? Readout.Text(newtons, Dimension.Force, units)
            : $"{Readout.Text(newtons, Dimension.Force, units)} ({newtons / Tonne:0.0} t)";
}
