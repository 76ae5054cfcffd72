using Ramwright.Jobs;
using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Squeeze;
using Spectre.Console;

namespace Ramwright.Cli;

/// <summary>The schedule of a bar that is drawn out: a line for each pass.</summary>
internal static class DrawingOutView
{
    public static void Show(DrawingOut drawn, RigHotSqueeze job, UnitSystem units, IAnsiConsole screen)
    {
        screen.Heading("Drawing out");
        screen.Paragraph(JobFacts.Schedule(drawn, job.DrawingOut!.QuarterTurns, units));
        if (!drawn.Reached)
            screen.Bullet("!", JobFacts.NotReached);
        Unit length = Readout.UnitFor(Dimension.Length, units), force = Readout.UnitFor(Dimension.Force, units);
        var table = new Table { Border = TableBorder.None, ShowHeaders = true };
        foreach (string title in new[] { "pass", $"high, {length.Symbol}", $"wide, {length.Symbol}", $"long, {length.Symbol}", "squeezes", $"hot, {force.Symbol}", $"cold, {force.Symbol}", "heat" })
            table.AddColumn(JobView.Column(title, right: true));
        foreach (DrawingPass pass in drawn.Passes)
        {
            table.AddRow($"{pass.Number}", Readout.Number(length.FromSi(pass.Height)), Readout.Number(length.FromSi(pass.Width)), Readout.Number(length.FromSi(pass.Length), 4),
                $"{pass.Squeezes}", Readout.Number(force.FromSi(pass.Force)), Readout.Number(force.FromSi(pass.ColdForce)), $"{pass.Heat}");
        }

        screen.Write(table);
        screen.Paragraph(JobFacts.ScheduleNote);
        screen.WriteLine();
    }
}
