using Ramwright.Files.Readings;
using Ramwright.Measuring;
using Ramwright.Proving;
using Ramwright.Quantities;
using Spectre.Console;

namespace Ramwright.Cli;

/// <summary>The true force on a terminal: sentence, budget, drawing, pump.</summary>
internal static class ProveForceView
{
    public static void Show(Proof proof, IAnsiConsole screen)
    {
        screen.Heading("True force", " " + proof.Check.Rig.Name);
        screen.WriteLine();
        if (proof.Force is not { } force)
        {
            screen.Paragraph(proof.Untold is { } why ? $"None: {why}." : $"Not measured yet. It wants gauge pressure with the ram dead against a block, at relief or stall, five times: top-pressure {(proof.Units == UnitSystem.Imperial ? "3,050 psi" : "212 bar")}.");
            Pump(proof, screen);
            return;
        }

        screen.Loud(force.Saying(proof.Units));
        screen.Paragraph($"at {Readout.Text(force.Pressure, Dimension.Pressure, proof.Units)}; {Readout.Text(force.Force.Level, Dimension.Ratio, digits: 4)} of such intervals hold the true value"
            + $"{(double.IsInfinity(force.Force.EffectiveDof) ? "" : $"; {Readout.Number(Math.Floor(force.Force.EffectiveDof))} effective degrees of freedom")}.");
        screen.Paragraph(Remark(force, proof.Units));
        screen.WriteLine();
        screen.Heading("Budget", " share of the variance, the greatest first");
        foreach (BudgetLine line in force.Force.Budget)
        {
            screen.Write(new Lines(
                new Cell(2, line.Input.Symbol, 5), new Cell(7, Readout.Text(Math.Max(-1, line.Share), Dimension.Ratio, digits: 2), 9, Right: true),
                new Cell(17, "± " + Readout.Text(line.Contribution, Dimension.Force, proof.Units, 2), 14), new Cell(32, $"{line.Input.Meaning}; {line.Input.From}")));
        }

        screen.WriteLine();
        (string from, double share) = force.ImproveFirst;
        screen.Paragraph($"To improve first: {from} ({Readout.Text(share, Dimension.Ratio, digits: 2)} of the variance).");
        (double low, double high, double tolerance, bool agree) = force.Drawn.Against(force.Force, TrueForce.Figures);
        screen.Paragraph($"Drawn {Readout.Number(force.Drawn.Trials, 7)} times: {Readout.Text(force.Drawn.Value, Dimension.Force, proof.Units, 4)}, interval {Readout.Text(force.Drawn.Low, Dimension.Force, proof.Units, 4)} "
            + $"to {Readout.Text(force.Drawn.High, Dimension.Force, proof.Units, 4)}; its ends lie {Readout.Text(low, Dimension.Force, proof.Units, 2)} and {Readout.Text(high, Dimension.Force, proof.Units, 2)} from those above"
            + $"{(agree ? ", within" : ", beyond")} the tolerance of {Readout.Text(tolerance, Dimension.Force, proof.Units, 2)} ({MonteCarlo.Validation}).{(agree ? "" : " So the drawn interval is the one stated: one input that may stand anywhere between two bounds rules the budget.")}");
        foreach (string taken in force.Taken)
            screen.Bullet("-", taken);
        screen.WriteLine();
        Pump(proof, screen);
        Leaks(proof, screen);
        Beside(proof, screen);
    }

    private static void Beside(Proof proof, IAnsiConsole screen)
    {
        if (proof.Compared.Count == 0)
            return;
        screen.WriteLine();
        screen.Heading("Beside the model");
        foreach (Compared c in proof.Compared)
        {
            screen.Fact(c.What, UncertainText.Of(c.Measured.Value, 2 * c.Measured.U, c.Dimension, proof.Units),
                c.Model is not { } model ? "the model says nothing of it" : $"model {Readout.Text(model, c.Dimension, proof.Units)}{(c.IsApart ? "; APART: " + c.Remark : "")}");
        }
    }

    private static void Leaks(Proof proof, IAnsiConsole screen)
    {
        foreach (LeakDown leak in proof.Leaks)
            screen.Paragraph(LeakText.Of(leak, proof.Units));
    }

    /// <summary>How the measured force stands to the model and to the label.</summary>
    public static string Remark(TrueForce force, UnitSystem units)
    {
        string model = Math.Abs(force.En) <= 1 ? $"the model's {Force.Text(force.Model, units)} lies within that"
            : force.En < 0 ? $"less than the model's {Force.Text(force.Model, units)}: look at the gauge, the bore, the friction" : $"more than the model's {Force.Text(force.Model, units)}: look at the gauge and the bore";
        return force.SoldAs is { } sold ? $"{model}; sold as {UncertainText.Tons(sold, units)}" : model;
    }

    private static void Pump(Proof proof, IAnsiConsole screen)
    {
        foreach (PumpFit fit in proof.Pump)
        {
            screen.Heading("Pump", $" {fit.Stage}, {fit.Points.Count} timed strokes");
            if (fit.Fit is null)
                screen.Paragraph("Too few strokes, or all at one pressure: four at three pressures draw a curve.", margin: 2);
            foreach (TimedFlow t in fit.Points)
            {
                bool off = fit.Outliers.Contains(t);
                screen.Write(new Lines(
                    new Cell(2, Readout.Text(t.Pressure, Dimension.Pressure, proof.Units), 12), new Cell(15, UncertainText.Of(t.Flow, 2 * t.U, Dimension.Flow, proof.Units), 30),
                    new Cell(46, (fit.FlowAt(t.Pressure) is { } at ? $"curve {Readout.Text(at.Value, Dimension.Flow, proof.Units)}" : "") + (off ? $"; line {t.From.Line} does not belong with the others" : ""))));
            }

            screen.WriteLine();
        }
    }
}
