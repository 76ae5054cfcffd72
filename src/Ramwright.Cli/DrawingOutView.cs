using Ramwright.Jobs;
using Ramwright.Presses;
using Ramwright.Quantities;
using Spectre.Console;

namespace Ramwright.Cli;

/// <summary>The schedule of a bar that is drawn out: a line for each pass.</summary>
internal static class DrawingOutView
{
    public static void Show(DrawingOut drawn, RigHotSqueeze job, UnitSystem units, IAnsiConsole screen)
    {
        screen.Heading("Drawing out");
        RigDrawingOut plan = job.DrawingOut!;
        string Mm(double x) => Readout.Text(x, Dimension.Length, units);
        screen.Paragraph(
            $"{drawn.Squeezes} squeezes in {drawn.Passes.Count} passes, {(plan.QuarterTurns ? $"{drawn.Turns} quarter turns" : "not turned")}, about {drawn.Heats} "
            + $"{(drawn.Heats == 1 ? "heat" : "heats")}. {Mm(drawn.LengthBefore)} of bar becomes {Mm(drawn.LengthAfter)}; the volume stays.");
        if (!drawn.Reached)
            screen.Bullet("!", "The size wanted is not reached this way: turn the bar, take less at a time, or take a narrower bite.");
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
        screen.Paragraph("Hot and cold: the force at the beginning and at the end of a heat. Heats are counted by cooling in air alone; cold dies need more of them. "
            + "Passes may be one pair more or less.");
        screen.WriteLine();
    }
}
