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
        screen.MarkupLineInterpolated($"[bold]{rung.Id}[/]  {check.Rig.Name}");
        screen.WriteLine();
        CheckView.Paragraph($"The {rung.Part} {rung.Saying} at {Force.Text(rung.GivesAt, units)}; safe to {Force.Text(rung.SafeTo, units)}{(rung.Factor is { } factor ? $", a factor of {factor:0.00}" : "")}.", false, screen);
        CheckView.Paragraph($"The factor: {rung.FactorFrom}.", false, screen);
        CheckView.Paragraph($"The limit: {rung.Source}.", false, screen);
        screen.WriteLine();
        int number = 0;
        foreach (Step step in working.Steps)
        {
            string result = $"{step.Symbol} = {Readout.Text(step.Si, step.Dimension, units, 4)}";
            screen.WriteLine($"{++number,3}. {step.Meaning}");
            if (step.Formula.Length == 0)
            {
                screen.WriteLine($"       {result}");
            }
            else
            {
                screen.WriteLine($"       {step.Symbol} = {step.Formula}");
                foreach (Given given in step.Givens)
                    screen.WriteLine($"         {given.Symbol} = {Readout.Text(given.Si, given.Dimension, units, 4)}");
                screen.MarkupLineInterpolated($"       [bold]{result}[/]");
            }

            screen.MarkupLineInterpolated($"       [dim]{step.Source}[/]");
            screen.WriteLine();
        }

        foreach (string note in working.Notes)
            CheckView.Bullet("*", note, screen);
        foreach (string note in check.Response.Plan.Notes)
        {
            if (rung.Group is RungGroup.Frame or RungGroup.Joints or RungGroup.Stiffness)
                CheckView.Bullet("*", note, screen);
        }
    }
}
