using Ramwright.Proving;
using Ramwright.Quantities;

namespace Ramwright.Files.Dossier;

/// <summary>The proof test as a sheet to be filled in by hand: the plan of the proving room, with boxes for a pen.</summary>
internal static class ProofChapter
{
    public static Chapter Of(Papers p)
    {
        TestPlan plan = TestPlan.Of(p.Check, p.Units);
        var blocks = new List<Block>
        {
            new Prose("To be filled in with a pen at the press. A frame that is proved can still wear out or crack: prove again after every change, every overload, and at least once a year.", Tone.Warn),
            new Prose($"Proof: {p.F(plan.Proof.Force)}. {plan.Proof.Reason(p.Units)} On the gauge {p.T(plan.ProofStep.Pressure, Dimension.Pressure)}, whole marks and never above: {DialText.Forces(plan.ProofStep, p.Units)}."),
            new Heading("Where to stand, what to keep away"),
            new Items(plan.Stand),
            new Heading("Stop at once"),
            new Items(plan.Stops),
            new Heading("Before any pressure"),
            new Items([.. plan.Looks.Select(Said)], ItemMark.Box),
            new Heading("With the ram free"),
            new Items([.. plan.Unloaded.Select(Said)], ItemMark.Box),
            new Heading("Dials"),
            new Items([.. plan.Points.Select(d => $"{Word(d.Name)}: {d.Says}")]),
            new Heading("Steps"),
            new Grid([new("", 0.5, true), new("step", 2.6), new("gauge to", 1.1, true), new("gauge read", 1.1), new("hold", 0.9, true), new("dials should show; stop at", 3.5), new("dials read", 1.9), new("seen, heard", 1.5)],
                [.. plan.Steps.Select(s => Step(p, s))]) { Ruled = true },
        };
        if (plan.Measures.Count > 0)
        {
            blocks.Add(new Heading("Measured besides"));
            blocks.Add(new Grid([new("what", 6), new("stop, or not passed", 2.6), new("read", 1.8)], [.. plan.Measures.Select(m => (IReadOnlyList<string>)[m.What, m.Stop, ""])]) { Ruled = true });
        }

        blocks.Add(new Heading("After"));
        blocks.Add(new Items([.. plan.After.Select(Said)], ItemMark.Box));
        blocks.Add(new Heading("Result"));
        blocks.Add(new Items(["Passed: no set beyond the error of the dials, no crack, no leak, no joint that slipped.", "Not passed. What was found, and what is done about it:"], ItemMark.Box));
        blocks.Add(new Grid([new("date", 2), new("oil temperature", 2), new("gauge, number", 2.4), new("by whom", 3), new("signature", 3)], [["", "", "", "", ""]]) { Ruled = true });
        return new Chapter("Proof test", blocks);
    }

    private static string Said(PlanTask task) => task.Stop.Length > 0 ? $"{End(task.What)} Stop: {task.Stop}" : task.What;

    private static string End(string text) => text.EndsWith('.') || text.EndsWith(':') ? text : text + ".";

    private static string Word(string name) => name.Replace('-', ' ');

    private static IReadOnlyList<string> Step(Papers p, PlanStep s) =>
    [
        $"{s.Number}", s.What + (s.RamForce > 0 ? $": {p.F(s.Thrust)} by area, {p.F(s.RamForce)} at the ram" : ""), p.T(s.Pressure, Dimension.Pressure), "", WeldChapter.Hours(s.Dwell),
        string.Join("\n", s.Dials.Select(d => $"{Word(d.Place)} {DialText.Of(d.Expected, p.Units)}; {DialText.Of(d.StopAt, p.Units)}")),
        string.Join("\n", s.Dials.Select(d => $"{Word(d.Place)}")), "",
    ];
}
