using Ramwright.Quantities;
using Spectre.Console;

namespace Ramwright.Cli;

/// <summary>The words after <c>--units</c>.</summary>
internal static class UnitsOption
{
    public static UnitSystem Read(string word) =>
        word.Equals("imperial", StringComparison.OrdinalIgnoreCase) ? UnitSystem.Imperial : UnitSystem.Metric;

    public static ValidationResult Check(string word) =>
        word.Equals("metric", StringComparison.OrdinalIgnoreCase) || word.Equals("imperial", StringComparison.OrdinalIgnoreCase)
            ? ValidationResult.Success()
            : ValidationResult.Error($"no units are called \"{word}\"; write --units metric or --units imperial");
}
