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
        int number = 0;
        foreach (Step step in working.Steps)
        {
            string result = $"{step.Symbol} = {Value(step.Si, step.Dimension, step)}";
            if (step.IsPerNewton)
            {
                // what a person can picture: the same at the force that is wanted
                string wanted = Readout.Text(check.Rig.Wanted, Dimension.Force, units);
                result += $" a newton; {Readout.Text(step.Si * check.Rig.Wanted, step.Dimension, units, 4)} at the wanted {wanted}";
            }

            screen.WriteLine($"{++number,3}. {step.Meaning}");
            if (step.Formula.Length > 0)
            {
                Indented($"{step.Symbol} = {step.Formula}");
                if (step.Givens.Count > 0)
                    Indented("with " + string.Join(", ", step.Givens.Select(g => $"{g.Symbol} = {Value(g.Si, g.Dimension, step)}")));
            }

            Indented(result, new Style(decoration: Decoration.Bold));
            Indented(step.Source.ToString(), new Style(decoration: Decoration.Dim));
            screen.WriteLine();
        }

        void Indented(string text, Style? style = null) => screen.Paragraph(text, margin: 7, style);

        string Value(double si, Dimension dimension, Step step) => Readout.Text(IsNothing(si, dimension, step) ? 0 : si, dimension, units, 4);

        foreach (string note in working.Notes)
            screen.Bullet("*", note);
        foreach (string note in check.Response.Plan.Notes)
        {
            if (rung.Group is RungGroup.Frame or RungGroup.Joints or RungGroup.Stiffness)
                screen.Bullet("*", note);
        }
    }

    /// <summary>What rounding leaves of nothing, beside values of its own kind or beside one newton.</summary>
    private static bool IsNothing(double si, Dimension dimension, Step step)
    {
        double size = dimension is Dimension.Force or Dimension.Moment ? 1e-3 : 0;
        foreach (Given given in step.Givens)
        {
            if (given.Dimension == dimension)
                size = Math.Max(size, Math.Abs(given.Si));
        }

        return Math.Abs(si) < 1e-9 * size;
    }
}
