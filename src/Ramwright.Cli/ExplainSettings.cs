using System.ComponentModel;
using Spectre.Console.Cli;

namespace Ramwright.Cli;

/// <summary>What <c>explain</c> takes.</summary>
internal sealed class ExplainSettings : PressSettings
{
    [CommandArgument(1, "[RUNG]")]
    [Description("The rung's name as the ladder gives it; left out, the lowest rung. A part's name lists its rungs.")]
    public string? Rung { get; init; }
}
