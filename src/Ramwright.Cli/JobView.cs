using Ramwright.Jobs;
using Ramwright.Ladders;
using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Squeeze;
using Ramwright.Workings;
using Spectre.Console;

namespace Ramwright.Cli;

/// <summary>One job on a terminal, 80 columns wide: verdict, force, what limits it, facts, schedule or chart, flags, cautions.</summary>
internal static class JobView
{
    private const int LongestBar = 30;

    public static void Show(JobAnswer answer, UnitSystem units, bool working, string file, IAnsiConsole screen)
    {
        (JobCheck check, JobInTime? time) = answer;
        screen.Heading(check.Job.Name, $" ({check.Job.Kind}) on {check.Press.Rig.Name}");
        screen.WriteLine();
        screen.Loud(answer.Saying(units));
        screen.WriteLine();
        Facts(JobFacts.Forces(answer, units), screen);
        Curve(check.Demand, answer.AsItCools is not null, units, screen);
        Limits(answer, units, screen);
        if (time is not null)
            JobTimeView.Show(time, units, screen);
        else
            screen.Bullet("?", "The squeeze could not be followed in time; what stands above is for steady motion.");
        Facts(check, units, screen);
        if (check.DrawingOut is { } drawn)
            DrawingOutView.Show(drawn, (RigHotSqueeze)check.Job, units, screen);
        if (check.Chart.Count > 0)
            BendChartView.Show(check, units, screen);
        Shock(check, units, screen);
        Flags(check.Demand, units, screen);
        Assumed(answer, units, screen);
        if (working)
            Working(check, time, units, screen);
        screen.Heading("Cautions");
        foreach (string caution in check.Demand.Cautions)
            screen.Bullet("!", caution);
        screen.WriteLine();
        if (!working)
            JsonOut.Write(screen, $"How the force comes about: ramwright job {file} \"{check.Job.Name}\" --working");     // whole, to be copied
    }

    internal static void Facts(IEnumerable<SaidFact> facts, IAnsiConsole screen)
    {
        foreach (SaidFact fact in facts)
            screen.Fact(fact.What, fact.Value, fact.Remark);
        screen.WriteLine();
    }

    private static void Curve(Demand demand, bool cools, UnitSystem units, IAnsiConsole screen)
    {
        screen.Heading("Force against travel", cools ? " hot, at first" : "");
        var table = new Table { Border = TableBorder.None, ShowHeaders = true };
        Unit length = Readout.UnitFor(Dimension.Length, units), force = Readout.UnitFor(Dimension.Force, units);
        table.AddColumn(Column($"travel, {length.Symbol}", right: true));
        table.AddColumn(Column($"force, {force.Symbol}", right: true));
        table.AddColumn(Column("", right: false));
        double most = Math.Max(demand.PeakAt.Force, 1e-9);
        foreach (ForceAt at in Picked(demand.Curve))
        {
            table.AddRow(new Text(Readout.Number(length.FromSi(at.Travel))), new Text(Readout.Number(force.FromSi(at.Force))),
                new Text(new string('█', (int)Math.Round(at.Force / most * LongestBar))));
        }

        screen.Write(table);
        screen.WriteLine();
    }

    // about ten points, both ends among them
    private static IEnumerable<ForceAt> Picked(IReadOnlyList<ForceAt> curve)
    {
        int parts = Math.Min(10, curve.Count - 1);
        for (int i = 0; i <= parts; i++)
            yield return curve[i * (curve.Count - 1) / parts];
    }

    private static void Limits(JobAnswer answer, UnitSystem units, IAnsiConsole screen)
    {
        screen.Heading("What limits it");
        foreach (JobLimit limit in answer.Limits)
            screen.Bullet(JobListView.Mark(limit.Verdict), $"{limit.Id}: {limit.Why.Text(units)}");
        screen.WriteLine();
    }

    private static void Facts(JobCheck check, UnitSystem units, IAnsiConsole screen)
    {
        if (check.Demand.Facts.Count == 0)
            return;
        screen.Heading("Good to know");
        foreach (Fact fact in check.Demand.Facts)
            Wide(screen, fact.What, Readout.Text(fact.Si, fact.Dimension, units), fact.Note?.Text(units) ?? "");
        screen.WriteLine();
    }

    private static void Shock(JobCheck check, UnitSystem units, IAnsiConsole screen)
    {
        if (check.SnapThrough is null)
            return;
        screen.Heading("When it lets go");
        Facts(JobFacts.LettingGo(check, units), screen);
    }

    private static void Flags(Demand demand, UnitSystem units, IAnsiConsole screen)
    {
        if (demand.Flags.Count == 0)
            return;
        screen.Heading("How far to trust it");
        foreach (Remark flag in demand.Flags)
            screen.Bullet("?", flag.Text(units));
        screen.WriteLine();
    }

    private static void Assumed(JobAnswer answer, UnitSystem units, IAnsiConsole screen)
    {
        IReadOnlyList<Assumed> all = answer.Assumed;
        if (all.Count == 0)
            return;
        string job = answer.Check.Job.Path + ".";
        screen.Heading("Assumed", $"{all.Count} {(all.Count == 1 ? "thing" : "things")} the file does not say; write the key to say otherwise");
        foreach (Assumed a in all)
            screen.Paragraph($"{(a.What.StartsWith(job, StringComparison.Ordinal) ? a.What[job.Length..] : a.What)}: {a.Value(units)}  ({a.Why.Text(units)})", 2);
        screen.WriteLine();
    }

    private static void Working(JobCheck check, JobInTime? time, UnitSystem units, IAnsiConsole screen)
    {
        screen.Heading("Working");
        var working = new Working();
        check.Work(working);
        int number = 0;
        foreach (Step step in working.Steps)
        {
            screen.Paragraph($"{++number,3}. {step.Meaning}");
            if (step.Formula.Length > 0)
            {
                Indented($"{step.Symbol} = {step.Formula}");
                Indented("with " + string.Join(", ", step.Givens.Select(g => $"{g.Symbol} = {Readout.Text(g.Si, g.Dimension, units, 4)}")));
            }

            Indented($"{step.Symbol} = {Readout.Text(step.Si, step.Dimension, units, 4)}");
            Indented(step.Source.ToString());
        }

        foreach (Remark note in working.Notes)
            screen.Bullet("*", note.Text(units));
        if (time is not null)
        {
            screen.WriteLine();
            screen.Heading("In time", " what it leans on");
            foreach ((string what, Citation source) in time.Sources)
                screen.Bullet("*", $"{what}: {source}");
        }

        screen.WriteLine();

        void Indented(string text) => screen.Paragraph(text, 5);
    }

    internal static TableColumn Column(string title, bool right) => new(new Text(title, new Style(decoration: Decoration.Dim)))
    {
        Padding = new Padding(1, 0, 1, 0),
        Alignment = right ? Justify.Right : Justify.Left,
        NoWrap = true,
    };

    // as a fact, with room for more words in front
    private static void Wide(IAnsiConsole screen, string what, string value, string remark) =>
        screen.Write(new Lines(new Cell(2, what, 24), new Cell(27, value, 12, new Style(decoration: Decoration.Bold)), new Cell(40, remark)));
}
