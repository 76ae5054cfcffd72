using Ramwright.Fabrication.Drilling;
using Ramwright.Fabrication.Welding;
using Ramwright.Ladders;
using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Files.Dossier;

/// <summary>Every working: formula, numbers put in, result, source.</summary>
internal static class WorkingChapter
{
    public static Chapter Of(Papers p)
    {
        var blocks = new List<Block> { new Prose("For every limit of the ladder, every seam and every torque: symbol, formula, numbers put in, result, and where the formula comes from. Values a newton are for one newton at the ram.", Tone.Quiet) };
        foreach (Rung rung in p.Check.Ladder.Rungs)
        {
            var working = new Working();
            rung.Work(working);
            blocks.Add(new Heading($"{rung.Id}: the {rung.Part} {rung.Mode}", 3));
            blocks.Add(new Prose($"Gives at {p.F(rung.GivesAt)}, safe to {p.F(rung.SafeTo)}. Factor: {rung.FactorFrom}. Limit: {rung.Source}.", Tone.Quiet));
            Add(blocks, working, p);
        }

        foreach (WeldLine line in p.Welds.Lines)
        {
            var working = new Working();
            WeldLine.Of(line.Seam, p.Rig.Welding, p.Units, working);
            blocks.Add(new Heading($"Weld: {line.Seam.Name}", 3));
            Add(blocks, working, p);
        }

        foreach (BoltRow bolt in p.Drilling.Bolts.Where(b => b.Setting is not null).DistinctBy(b => (b.Thread, b.Grade)))
        {
            var working = new Working();
            Tightening.Set(bolt.Thread, bolt.Yield, working);
            blocks.Add(new Heading($"Torque: {bolt.Thread.Name} {bolt.Grade}", 3));
            Add(blocks, working, p);
        }

        return new Chapter("Appendix: workings", blocks);
    }

    private static void Add(List<Block> blocks, Working working, Papers p)
    {
        int number = 0;
        foreach (Step step in working.Steps)
        {
            string Value(double si, Dimension dimension) => Readout.Text(step.IsNothing(si, dimension) ? 0 : si, dimension, p.Units, 4);
            string result = Value(step.Si, step.Dimension) + (step.IsPerNewton ? " a newton" : "");
            blocks.Add(new StepLine(++number, step.Meaning, step.Symbol, step.Formula, string.Join(", ", step.Givens.Select(g => $"{g.Symbol} = {Value(g.Si, g.Dimension)}")), result, step.Source.ToString()));
        }

        if (working.Notes.Count > 0)
            blocks.Add(new Items([.. working.Notes.Select(n => n.Text(p.Units))]));
    }
}
