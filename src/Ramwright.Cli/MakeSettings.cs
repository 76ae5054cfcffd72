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

    [CommandOption("--rounds <N>")]
    [Description("How many plans to try for the nests beyond the first; s or Esc stops with the best so far.")]
    [DefaultValue(0)]
    public int Rounds { get; init; }

    [CommandOption("--seed <N>")]
    [Description("Seed of the search for nests: the same seed and rounds give the same nests.")]
    [DefaultValue(1)]
    public int Seed { get; init; }

    public override Spectre.Console.ValidationResult Validate() => Rounds is < 0 or > 1_000_000
        ? Spectre.Console.ValidationResult.Error("--rounds: a number from 0 to 1000000 is wanted")
        : base.Validate();
}
