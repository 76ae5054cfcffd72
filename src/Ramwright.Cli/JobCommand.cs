using Ramwright.Files;
using Ramwright.Ladders;
using Ramwright.Presses;
using Ramwright.Quantities;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Ramwright.Cli;

/// <summary>Whether the press can do its jobs: all in brief, or one at length.</summary>
internal sealed class JobCommand(IAnsiConsole screen) : Command<JobSettings>
{
    public override int Execute(CommandContext context, JobSettings settings, CancellationToken cancellationToken)
    {
        if (PressLoad.Open(settings, screen) is not var (_, press, units))
            return ExitCode.WrongInput;
        if (press.Rig.Jobs.Count == 0)
        {
            screen.WriteLine($"{press.Rig.Name} names no jobs. Write them under jobs: in its file; ramwright new FILE shows every kind.");
            return ExitCode.WrongInput;
        }

        if (settings.Job is null)
            return All(press, settings, units);
        RigJob? job = press.Rig.Jobs.FirstOrDefault(j => j.Name.Equals(settings.Job, StringComparison.OrdinalIgnoreCase));
        if (job is null)
        {
            string[] names = [.. press.Rig.Jobs.Select(j => j.Name)];
            screen.WriteLine($"no job is called \"{settings.Job}\"; nearest: {NearestWord.Ranked(settings.Job, names, 1)[0]}");
            screen.WriteLine("This press has: " + string.Join(", ", names));
            return ExitCode.WrongInput;
        }

        JobCheck check = JobCheck.Of(press, job);
        if (settings.Json)
            JsonOut.Write(screen, JobJson.Text(check));
        else
            JobView.Show(check, units, settings.Working, settings.File, screen);
        return Code(check);
    }

    private int All(PressCheck press, JobSettings settings, UnitSystem units)
    {
        IReadOnlyList<JobCheck> all = JobCheck.All(press);
        if (settings.Json)
            JsonOut.Write(screen, JobJson.Text(press, all));
        else
            JobListView.Show(press, all, units, settings.File, screen);
        return all.Max(Code);
    }

    private static int Code(JobCheck check) => check.Verdict == Verdict.DoesNotHold ? ExitCode.DoesNotHold : ExitCode.Holds;
}
