using System.ComponentModel;
using System.Globalization;
using Spectre.Console.Cli;

namespace Ramwright.Cli;

/// <summary>What <c>prove</c> takes.</summary>
internal sealed class ProveSettings : PressSettings
{
    [CommandOption("--plan")]
    [Description("The whole test plan: looks, steps, readings expected, stops.")]
    public bool Plan { get; init; }

    [CommandOption("--sheet <FILE>")]
    [Description("Write the test plan as a one-page sheet to print and fill in (HTML).")]
    public string? Sheet { get; init; }

    [CommandOption("--force")]
    [Description("The true force with its uncertainty, and the budget it comes from.")]
    public bool TrueForce { get; init; }

    [CommandOption("--stiffness")]
    [Description("How stiff it is against what is reckoned, and why it is softer.")]
    public bool Stiffness { get; init; }

    [CommandOption("--service")]
    [Description("Squeezes, life used, what is due, seals.")]
    public bool Service { get; init; }

    [CommandOption("--fault <SIGNS>")]
    [Description("Signs of trouble by commas, as \"low-pressure, frost=no\"; \"?\" lists them.")]
    public string? Fault { get; init; }

    [CommandOption("--certificate <FILE>")]
    [Description("Write the builder's own record of the test (HTML).")]
    public string? Certificate { get; init; }

    [CommandOption("-w|--working")]
    [Description("Show the working: formula, values, source.")]
    public bool Working { get; init; }

    [CommandOption("--add <READING>")]
    [Description("Add a reading to the log: \"bore 125.04 mm instrument=M1\"; day and name are put before it.")]
    public string[]? Add { get; init; }

    [CommandOption("--who <NAME>")]
    [Description("Who read it; left out, the name you are logged in by.")]
    public string? Who { get; init; }

    [CommandOption("--count <CSV>")]
    [Description("Count squeezes in a logger's file of pressures and add them: one number a line, or the last of each line, in bar or with a unit in the head; - reads from a pipe.")]
    public string? Count { get; init; }

    [CommandOption("--day <DATE>")]
    [Description("The day to reckon what is due from, and to write readings under, as 2026-03-14; left out, today.")]
    public string? Day { get; init; }

    /// <summary>The moment that the command takes for now.</summary>
    public DateTime Now => Day is { } day ? DateTime.ParseExact(day, "yyyy-MM-dd", CultureInfo.InvariantCulture) : DateTime.Now;

    public override Spectre.Console.ValidationResult Validate() =>
        Day is { } day && !DateTime.TryParseExact(day, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out _)
            ? Spectre.Console.ValidationResult.Error($"--day {day}: a day as 2026-03-14")
            : base.Validate();
}
