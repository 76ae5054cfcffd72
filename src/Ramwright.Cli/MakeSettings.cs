using System.ComponentModel;
using Spectre.Console.Cli;

namespace Ramwright.Cli;

/// <summary>What <c>make</c> is told.</summary>
internal sealed class MakeSettings : PressSettings
{
    [CommandOption("-o|--out <DIR>")]
    [Description("The folder that the files go into; without it the list is shown and nothing is written.")]
    public string? Out { get; init; }

    [CommandOption("--force")]
    [Description("Replace files of the same names that are there already.")]
    public bool Force { get; init; }
}
