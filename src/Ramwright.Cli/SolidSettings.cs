using System.ComponentModel;
using Spectre.Console.Cli;

namespace Ramwright.Cli;

/// <summary>What <c>solid</c> is told.</summary>
internal sealed class SolidSettings : PressSettings
{
    [CommandOption("--cell <SIZE>")]
    [Description("Longest cell beside a face of the finer grid: \"8 mm\"; left out, what suits the frame. Half as long takes about six times as long.")]
    public string? Cell { get; init; }

    [CommandOption("--all")]
    [Description("All load cases of the file, not only work in the middle.")]
    public bool All { get; init; }

    [CommandOption("--vtu <FILE>")]
    [Description("Write the finer grid, its movement and stress for general-purpose viewers, as VTK XML.")]
    public string? Vtu { get; init; }

    [CommandOption("--keep-joints")]
    [Description("Keep what solids of the joints by themselves give beside the press file, in NAME.joints.json: every command then takes their springs in place of the rules, and the ladder has rungs for the hot spots at their welds.")]
    public bool Keep { get; init; }
}
