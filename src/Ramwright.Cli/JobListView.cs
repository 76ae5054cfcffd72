using Ramwright.Ladders;
using Ramwright.Quantities;
using Ramwright.Squeeze;
using Spectre.Console;

namespace Ramwright.Cli;

/// <summary>All jobs of a press in brief.</summary>
internal static class JobListView
{
    public static void Show(PressCheck press, IReadOnlyList<JobAnswer> jobs, UnitSystem units, string file, IAnsiConsole screen)
    {
        screen.Heading("Jobs", " " + press.Rig.Name);
        screen.WriteLine();
        screen.Paragraph($"The press is good for {Force.Text(Math.Min(press.Ladder.SafeRating, press.Power.TrueForce), units)}: "
            + $"safe to {Force.Text(press.Ladder.SafeRating, units)}, and its pump gives {Force.Text(press.Power.TrueForce, units)}.");
        screen.WriteLine();
        foreach (JobAnswer job in jobs)
        {
            screen.Heading($"{Mark(job.Verdict)} {JobHeadline.Word(job.Verdict).ToUpperInvariant()}: {job.Check.Job.Name}", $" ({job.Check.Job.Kind})");
            screen.Paragraph(job.Saying(units), 2);
            screen.WriteLine();
        }

        JsonOut.Write(screen, $"Any of them at length: ramwright job {file} \"{jobs[0].Check.Job.Name}\"");
    }

    internal static string Mark(Verdict verdict) => verdict switch
    {
        Verdict.Holds => "+",
        Verdict.Marginal => "~",
        _ => "-",
    };
}
