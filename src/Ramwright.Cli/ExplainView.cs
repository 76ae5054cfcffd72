using Ramwright.Ladders;
using Ramwright.Quantities;
using Ramwright.Workings;
using Spectre.Console;

namespace Ramwright.Cli;

/// <summary>The working of one rung on a terminal: what it is, the formula, the numbers put in, the result, the source.</summary>
internal static class ExplainView
{
    public static void Show(PressCheck check, Rung rung, Working working, UnitSystem units, IAnsiConsole screen)
    {
        screen.Heading(rung.Id, " " + check.Rig.Name);
        screen.WriteLine();
        screen.Paragraph($"The {rung.Part} {rung.Saying} at {Force.Text(rung.GivesAt, units)}; safe to {Force.Text(rung.SafeTo, units)}{(rung.Factor is { } factor ? $", a factor of {factor:0.00}" : "")}.");
        screen.Paragraph($"The factor: {rung.FactorFrom}.");
        screen.Paragraph($"The limit: {rung.Source}.");
        screen.WriteLine();
        WorkingView.Steps(working, check.Rig.Wanted, units, screen);
        foreach (Remark note in working.Notes)
            screen.Bullet("*", note.Text(units));
        foreach (Remark note in check.Response.Plan.Notes)
        {
            if (rung.Group is RungGroup.Frame or RungGroup.Joints or RungGroup.Stiffness)
                screen.Bullet("*", note.Text(units));
        }
    }
}
