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

    [CommandOption("--line <FROM_TO>")]
    [Description("Stress along a line, across, deep and up from the middle of the bed's or lower arm's beam: \"0 mm, 0 mm, 0 mm to 0 mm, 0 mm, 700 mm\".")]
    public string? Line { get; init; }

    [CommandOption("--tied")]
    [Description("Take bolted faces as one over all of their contact, as clamping holds them; left out, they hold together round the bolts only.")]
    public bool Tied { get; init; }

    [CommandOption("--keep-joints")]
    [Description("Keep what solids of the joints by themselves give beside the press file, in NAME.joints.json: every command then takes their springs in place of the rules, and the ladder has rungs for the hot spots at their welds.")]
    public bool Keep { get; init; }

    public override Spectre.Console.ValidationResult Validate() => Tied && Keep
        ? Spectre.Console.ValidationResult.Error("--keep-joints keeps springs of open faces: leave --tied out")
        : base.Validate();
}
