using Ramwright.Files;
using Ramwright.Files.Drawings;
using Ramwright.Ladders;
using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Squeeze;
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
            return screen.Refuse(settings.Json, $"{press.Rig.Name} names no jobs. Write them under jobs: in its file; ramwright new --full shows every kind.");

        if (settings.Job is null)
            return All(press, settings, units);
        RigJob? job = press.Rig.Jobs.FirstOrDefault(j => j.Name.Equals(settings.Job, StringComparison.OrdinalIgnoreCase));
        if (job is null)
        {
            string[] names = [.. press.Rig.Jobs.Select(j => j.Name)];
            return screen.Refuse(settings.Json, $"no job is called \"{settings.Job}\"; nearest: {NearestWord.Ranked(settings.Job, names, 1)[0]}",
                "This press has: " + string.Join(", ", names));
        }

        if (settings.Sweep is { } grid)
            return Sweep(press, job, grid, settings, units, cancellationToken);
        JobAnswer answer = JobAnswer.Of(press, job);
        if (settings.Json)
            JsonOut.Write(screen, JobJson.Text(answer));
        else
            JobView.Show(answer, units, settings.Working, settings.File, screen);
        if (settings.Out is { } file && answer.Time is { } time && !Drawn(SqueezeChart.Of(time, press.Rig.Name, units), file, settings.Json))
            return ExitCode.WrongInput;
        return Code(answer);
    }

    private int Sweep(PressCheck press, RigJob job, string grid, JobSettings settings, UnitSystem units, CancellationToken cancel)
    {
        if (job is not RigHotSqueeze hot)
            return screen.Refuse(settings.Json, $"\"{job.Name}\" is no hot squeeze; only those are swept.");

        if (SweepGrid.Read(grid, hot, out string why) is not ({ } across, { } up))
            return screen.Refuse(settings.Json, $"--sweep {grid}: {why}");

        SqueezePress squeezes = SqueezePress.Of(press);
        SqueezeSweep? sweep = null;
        if (settings.Json || !screen.Profile.Capabilities.Interactive)
        {
            sweep = SqueezeSweep.Of(hot, squeezes, across, up, null, cancel);
        }
        else
        {
            screen.Progress().Columns(new TaskDescriptionColumn(), new ProgressBarColumn(), new PercentageColumn(), new RemainingTimeColumn()).Start(bars =>
            {
                ProgressTask bar = bars.AddTask("squeezes", maxValue: across.Count * up.Count);
                sweep = SqueezeSweep.Of(hot, squeezes, across, up, _ => bar.Increment(1), cancel);
            });
        }

        if (settings.Json)
            JsonOut.Write(screen, JobTimeJson.Text(sweep!, press.Rig.Name));
        else
            SweepView.Show(sweep!, press.Rig.Name, units, screen);
        if (settings.Out is { } file && !Drawn(SqueezeChart.Of(sweep!, press.Rig.Name, units), file, settings.Json))
            return ExitCode.WrongInput;
        return ExitCode.Holds;
    }

    private bool Drawn(Sheet sheet, string file, bool quiet)
    {
        try
        {
            File.WriteAllText(file, SvgSheet.Write(sheet));
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            screen.Refuse(quiet, Refusal.NotWritten(file, fault));
            return false;
        }

        if (!quiet)
            screen.WriteLine($"{file} is drawn. Print it at full size on A4.");
        return true;
    }

    private int All(PressCheck press, JobSettings settings, UnitSystem units)
    {
        IReadOnlyList<JobAnswer> all = JobAnswer.All(press);
        if (settings.Json)
            JsonOut.Write(screen, JobJson.Text(press, all));
        else
            JobListView.Show(press, all, units, settings.File, screen);
        return all.Max(Code);
    }

    private static int Code(JobAnswer answer) => answer.Verdict == Verdict.DoesNotHold ? ExitCode.DoesNotHold : ExitCode.Holds;
}
