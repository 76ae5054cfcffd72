using System.ComponentModel;
using Spectre.Console.Cli;

namespace Ramwright.Cli;

/// <summary>What <c>draw</c> is told.</summary>
internal sealed class DrawSettings : PressSettings
{
    [CommandOption("-o|--out <FILE>")]
    [Description("Where the drawing goes, as SVG; without it, to the screen.")]
    public string? Out { get; init; }

    [CommandOption("--at <FORCE>")]
    [Description("Shade each part by how much of it a ram force uses: \"20 t\".")]
    public string? At { get; init; }

    [CommandOption("--bent")]
    [Description("How the frame bends at the force, or at the wanted one, drawn larger than it is, with the true figures.")]
    public bool Bent { get; init; }
}
