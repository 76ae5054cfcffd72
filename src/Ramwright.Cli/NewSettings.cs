using System.ComponentModel;
using Ramwright.Quantities;
using Spectre.Console;
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

    [CommandOption("-u|--units <UNITS>")]
    [Description("Sizes to begin with: metric or imperial.")]
    [DefaultValue("metric")]
    public string Units { get; init; } = "metric";

    [CommandOption("--full")]
    [Description("Every key there is, each with its meaning, used or behind #.")]
    public bool Full { get; init; }

    [CommandOption("--json")]
    [Description("Print one JSON object, for scripts.")]
    public bool Json { get; init; }

    public override ValidationResult Validate()
    {
        ValidationResult units = UnitsOption.Check(Units);
        return units.Successful && Full && UnitsOption.Read(Units) == UnitSystem.Imperial
            ? ValidationResult.Error("the full starter is written in metric sizes only: leave out --units, and write inches where you have them")
            : units;
    }
}
