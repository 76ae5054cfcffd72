using System.ComponentModel;
using Spectre.Console.Cli;

namespace Ramwright.Cli;

/// <summary>What <c>open</c> takes.</summary>
internal sealed class OpenSettings : CommandSettings
{
    [CommandArgument(0, "[FILE|FOLDER]")]
    [Description("The press file to show, or a folder of them; this folder where nothing is said.")]
    public string Place { get; init; } = ".";

    [CommandOption("--port <PORT>")]
    [Description("Port on 127.0.0.1; 8370 or any free one where nothing is said.")]
    public int? Port { get; init; }

    [CommandOption("--lan")]
    [Description("Let others on the same net use it, a phone in the workshop: prints a key that they must show.")]
    public bool Lan { get; init; }

    [CommandOption("--no-browser")]
    [Description("Only print the address.")]
    public bool NoBrowser { get; init; }
}
