using System.ComponentModel;
using System.Globalization;
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

    [CommandOption("--date <DAY>")]
    [Description("The day that stands on the papers, as 2026-11-28; today where nothing is said.")]
    public string? Date { get; init; }

    /// <summary>The day that stands on the papers.</summary>
    public DateOnly Day => TryDay(out DateOnly day) ? day : DateOnly.FromDateTime(DateTime.Now);

    public override Spectre.Console.ValidationResult Validate() => Rounds is < 0 or > 1_000_000
        ? Spectre.Console.ValidationResult.Error("--rounds: a number from 0 to 1000000 is wanted")
        : Date is not null && !TryDay(out _)
        ? Spectre.Console.ValidationResult.Error($"--date {Date}: a day written as 2026-11-28 is wanted")
        : base.Validate();

    private bool TryDay(out DateOnly day) => DateOnly.TryParseExact(Date, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out day);
}
