using System.ComponentModel;
using Ramwright.Files;
using Ramwright.Quantities;
using Spectre.Console.Cli;

namespace Ramwright.Cli;

/// <summary>What every command on a press file takes.</summary>
internal class PressSettings : CommandSettings
{
    [CommandArgument(0, "<FILE>")]
    [Description("The press file, NAME.press.yaml.")]
    public string File { get; init; } = "";

    [CommandOption("-u|--units <UNITS>")]
    [Description("Units to read: metric or imperial; left out, those the file measures in.")]
    public string? Units { get; init; }

    [CommandOption("--json")]
    [Description("Print one JSON object, SI and named units, for scripts.")]
    public bool Json { get; init; }

    /// <summary>The units asked for, or those of the file.</summary>
    public UnitSystem UnitsOf(PressOnDisk press) => Units is null ? press.Reading.Units : UnitsOption.Read(Units);

    public override Spectre.Console.ValidationResult Validate() => Units is null ? Spectre.Console.ValidationResult.Success() : UnitsOption.Check(Units);
}
