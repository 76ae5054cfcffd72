using Ramwright.Files.Readings;
using Ramwright.Measuring;
using Ramwright.Proving;
using Ramwright.Quantities;
using Spectre.Console;

namespace Ramwright.Cli;

/// <summary>Stiffness against what is reckoned, and why it is softer, on a terminal.</summary>
internal static class ProveStiffnessView
{
    public static void Show(Proof proof, IAnsiConsole screen)
    {
        screen.Heading("Stiffness", " " + proof.Check.Rig.Name);
        screen.WriteLine();
        if (proof.Stiffness.Count == 0)
            screen.Paragraph($"No dial was read yet: dial {(proof.Units == UnitSystem.Imperial ? "0.024 in at=opening pressure=1,500 psi" : "0.62 mm at=opening pressure=105 bar")} way=up. Places: " + string.Join(", ", proof.Plan.Points.Select(p => p.Name)) + ".");
        foreach (Stiffness s in proof.Stiffness)
            One(s, proof.Units, screen);
        ProveView.LogFaults(proof.Log, screen);
        if (proof.Diagnosis is not { } why)
            return;
        screen.Heading("Why it is softer", " one thing of the model changed at a time, the likeliest first");
        if (why.Warning.Length > 0)
            screen.Paragraph(why.Warning, margin: 2);
        foreach (Explanation e in why.Explanations.Where(e => e.Weight > 0.005))
        {
            screen.Fact(Readout.Text(e.Weight, Dimension.Ratio, digits: 2), e.Name, $"{e.Says}: {Readout.Text(e.Factor, Dimension.Ratio, digits: 2)} of it left; misfit {Readout.Number(e.Misfit, 2)} for {why.Places} dials (as said {Readout.Number(why.MisfitAsSaid, 2)})");
            screen.Paragraph(string.Join("; ", e.Shown.Select(x => $"{x.Place} measured {Per(x.Measured, proof.Units)}, explained {Per(x.Explained, proof.Units)}")), margin: 38);
            screen.Paragraph("Look: " + e.Look, margin: 38);
        }
    }

    private static string Per(double perNewton, UnitSystem units)
    {
        double force = units == UnitSystem.Imperial ? 10 * 8896.443 : 1e5;
        return $"{Readout.Text(perNewton * force, Dimension.Length, units, 3)} at {Readout.Text(force, Dimension.Force, units)}";
    }

    private static void One(Stiffness s, UnitSystem units, IAnsiConsole screen)
    {
        string Length(double m) => Readout.Text(m, Dimension.Length, units, 2);
        screen.Heading(s.Point.Name, " " + s.Point.Says);
        if (s.Measured is { } m)
        {
            screen.Fact("measured", UncertainText.Of(m.Value, m.Expanded, Dimension.Stiffness, units), $"k = {m.Coverage:0.0#}; {s.Line!.Points} readings above the seating; to improve first: {m.BySource[0].From}");
        }
        else
        {
            screen.Fact("measured", "not told", "three readings going up above a fifth of the greatest force are the least");
        }

        screen.Fact("reckoned", Readout.Text(s.Predicted, Dimension.Stiffness, units), s.IsSofter ? "SOFTER than that, beyond what readings and model may be off" : s.Measured is null ? "" : "agrees, within what readings and model may be off");
        if (s.Point.Unseen > 0)
            screen.Paragraph($"Between the dies, where they sink into what holds them as well: {Readout.Text(1 / (s.Point.PerNewton + s.Point.Unseen), Dimension.Stiffness, units)} reckoned.", margin: 2);
        if (s.Hysteresis is { } loop)
            screen.Fact("hysteresis", Readout.Text(Math.Max(0, loop), Dimension.Ratio, digits: 2), "coming down against going up: friction and slip of joints");
        if (s.Set is { } set)
            screen.Fact("set", Length(set), s.IsSet ? $"STOP: more than the dial can be off, {Length(s.SetLimit)}" : $"none that this dial can tell: up to {Length(s.SetLimit)}");
        foreach (DialReading r in s.Outliers)
            screen.Paragraph($"line {r.From.Line} does not lie on the line with the others", margin: 2);
        screen.WriteLine();
    }
}
