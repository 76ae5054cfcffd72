using System.ComponentModel;
using Spectre.Console.Cli;

namespace Ramwright.Cli;

/// <summary>What <c>new</c> takes.</summary>
internal sealed class NewSettings : CommandSettings
{
    [CommandArgument(0, "[FILE]")]
    [Description("Where to write it; left out, it is printed.")]
    public string? File { get; init; }

    [CommandOption("-f|--frame <KIND>")]
    [Description("Kind of frame: closed, open-front, tie-rod or free.")]
    [DefaultValue("closed")]
    public string Frame { get; init; } = "closed";
}
