using System.ComponentModel;
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
    [Description("Units to read: metric or imperial.")]
    [DefaultValue("metric")]
    public string Units { get; init; } = "metric";

    [CommandOption("--json")]
    [Description("Print one JSON object, SI and named units, for scripts.")]
    public bool Json { get; init; }

    public UnitSystem System => UnitsOption.Read(Units);

    public override Spectre.Console.ValidationResult Validate() => UnitsOption.Check(Units);
}
