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
    [Description("Keep the joints' springs beside the press file, in NAME.joints.json: every other command then takes them in place of the rules.")]
    public bool Keep { get; init; }
}
