using System.ComponentModel;
using Spectre.Console.Cli;

namespace Ramwright.Cli;

/// <summary>What <c>check</c> takes.</summary>
internal sealed class CheckSettings : PressSettings
{
    [CommandOption("-a|--all")]
    [Description("Everything: every rung, speed, loss, assumption and caution.")]
    public bool All { get; init; }

    [CommandOption("-g|--guesses")]
    [Description("Which of the assumptions the answer hangs on: what to measure first.")]
    public bool Guesses { get; init; }
}
