using Ramwright.Quantities;
using Ramwright.Workings;
using Spectre.Console;

namespace Ramwright.Cli;

/// <summary>The steps of a working on a terminal: what it is, the formula, the numbers put in, the result, the source.</summary>
internal static class WorkingView
{
    /// <summary>Steps and notes under a heading.</summary>
    public static void Show(string title, double wanted, UnitSystem units, IAnsiConsole screen, Action<Working> work)
    {
        var working = new Working();
        work(working);
        screen.WriteLine();
        screen.Heading("Working", " " + title);
        Steps(working, wanted, units, screen);
        foreach (Remark note in working.Notes)
            screen.Bullet("*", note.Text(units));
    }

    public static void Steps(Working working, double wanted, UnitSystem units, IAnsiConsole screen)
    {
        int number = 0;
        foreach (Step step in working.Steps)
        {
            string result = $"{step.Symbol} = {Value(step.Si, step.Dimension, step)}";
            if (step.IsPerNewton)
            {
                // what a person can picture: the same at the force that is wanted
                string asked = Readout.Text(wanted, Dimension.Force, units);
                string each = units == UnitSystem.Imperial ? $"for each newton ({Readout.Text(1, Dimension.Force, units, 4)}) at the ram" : "a newton";
                result += $" {each}; {Readout.Text(step.Si * wanted, step.Dimension, units, 4)} at the wanted {asked}";
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

        string Value(double si, Dimension dimension, Step step) => Readout.Text(step.IsNothing(si, dimension) ? 0 : si, dimension, units, 4);
    }
}
