using System.ComponentModel;
using Spectre.Console.Cli;

namespace Ramwright.Cli;

/// <summary>What <c>check</c> takes.</summary>
internal sealed class CheckSettings : PressSettings
{
    [CommandOption("-a|--all")]
    [Description("Show every rung, those far above any force in question too.")]
    public bool All { get; init; }
}
