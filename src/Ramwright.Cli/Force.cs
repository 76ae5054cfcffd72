using Ramwright.Quantities;

namespace Ramwright.Cli;

/// <summary>A ram force as it is talked about: kilonewtons with tonnes beside, or US tons.</summary>
internal static class Force
{
    private const double Tonne = 9806.65;

    public static string Text(double newtons, UnitSystem units) =>
        units == UnitSystem.Imperial
            ? Readout.Text(newtons, Dimension.Force, units)
            : $"{Readout.Text(newtons, Dimension.Force, units)} ({newtons / Tonne:0.0} t)";
}
