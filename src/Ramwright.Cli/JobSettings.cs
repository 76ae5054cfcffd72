using System.ComponentModel;
using Spectre.Console.Cli;

namespace Ramwright.Cli;

/// <summary>What <c>job</c> takes.</summary>
internal sealed class JobSettings : PressSettings
{
    [CommandArgument(1, "[JOB]")]
    [Description("The job's name as the file has it; left out, all jobs in brief.")]
    public string? Job { get; init; }

    [CommandOption("-w|--working")]
    [Description("Show the working of the force: formula, values, source.")]
    public bool Working { get; init; }

    [CommandOption("--sweep <GRID>")]
    [Description("Follow the squeeze over a grid: \"heat=900..1250 °C/36, bar=10..60 mm/26\", or usual.")]
    public string? Sweep { get; init; }

    [CommandOption("-o|--out <FILE>")]
    [Description("Draw the curves, or the sweep's chart to pin up, as SVG.")]
    public string? Out { get; init; }
}
