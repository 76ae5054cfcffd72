using Ramwright.Ladders;
using Ramwright.Quantities;

namespace Ramwright.Cli;

/// <summary>A ram force on a terminal.</summary>
internal static class Force
{
    public static string Text(double newtons, UnitSystem units) => ForceText.Of(newtons, units);
}
