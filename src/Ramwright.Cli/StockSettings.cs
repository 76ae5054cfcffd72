using System.ComponentModel;
using Ramwright.Quantities;
using Spectre.Console.Cli;

namespace Ramwright.Cli;

/// <summary>What <c>stock</c> takes.</summary>
internal sealed class StockSettings : CommandSettings
{
    [CommandArgument(0, "[NAME]")]
    [Description("A name, part of one, or a kind and size: \"UPN 200\", \"100x50 channel\", angle, \"2 x UPN 200\", \"flat 200x40\", S275, M24, \"3/4 UNC\", 8.8, \"VG 46\", 2SN. Left out: what there is.")]
    public string? Name { get; init; }

    [CommandOption("-u|--units <UNITS>")]
    [Description("Units to read: metric or imperial.")]
    [DefaultValue("metric")]
    public string Units { get; init; } = "metric";

    [CommandOption("--table <FILE>")]
    [Description("Your own stock table (CSV), on top of what ships.")]
    public string? Table { get; init; }

    [CommandOption("--json")]
    [Description("Print one JSON object.")]
    public bool Json { get; init; }

    public UnitSystem System => UnitsOption.Read(Units);

    public override Spectre.Console.ValidationResult Validate() => UnitsOption.Check(Units);
}
