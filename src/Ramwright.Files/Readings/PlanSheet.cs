using Ramwright.Ladders;
using Ramwright.Proving;
using Ramwright.Quantities;

namespace Ramwright.Files.Readings;

/// <summary>The test plan as a sheet to print and fill in with a pen.</summary>
public static class PlanSheet
{
    /// <summary>Writes it as a page that stands by itself.</summary>
    /// <param name="proof">The press, its plan, and what was read so far.</param>
    public static string Html(Proof proof)
    {
        ArgumentNullException.ThrowIfNull(proof);
        TestPlan plan = proof.Plan;
        UnitSystem units = proof.Units;
        Unit length = Readout.UnitFor(Dimension.Length, units);
        string Length(double m) => Readout.Number(length.FromSi(m), 2);
        var page = new HtmlPage($"Test sheet: {plan.Press}", "tight");
        page.Put("h1", $"Test sheet: {plan.Press}")
            .Put("p", $"Proof {ForceText.Of(plan.Proof.Force, units)}: {plan.Proof.Reason(units)}")
            .Put("p", $"On the gauge {Readout.Text(plan.ProofStep.Pressure, Dimension.Pressure, units)}, whole marks and never above: {DialText.Forces(plan.ProofStep, units)}.")
            .Raw("<div class=\"stop\"><b>Stop, let all pressure off and find out why:</b> ").Put("span", string.Join("; ", plan.Stops) + ".").Raw("</div>");
        page.Put("h2", "Where to stand").List(plan.Stand);
        foreach (SafetyDistance d in plan.Distances)
            page.Put("p", $"{d.What}: at least {Readout.Text(d.S, Dimension.Length, units, 4)} from the dies ({SafetyDistance.Source}).");
        page.Put("h2", "Loaded steps: one solid block, centred; wait the dwell out, read, write")
            .Table(
                ["", "step|", "gauge*", "by area*", "at the ram*", "hold*", .. plan.Points.Select(p => $"{p.Name}, {length.Symbol}: expect / stop*"), .. plan.Points.Select(p => $"{p.Name} read"), "gauge after", "held?"],
                plan.Steps.Select(s => (IReadOnlyList<string>)
                [
                    s.Number.ToString(System.Globalization.CultureInfo.InvariantCulture), s.What, Readout.Text(s.Pressure, Dimension.Pressure, units),
                    Readout.Text(s.Thrust, Dimension.Force, units), Readout.Text(s.RamForce, Dimension.Force, units), Hold(s.Dwell),
                    .. plan.Points.Select(p => s.Dials.FirstOrDefault(d => d.Place == p.Name) is not { } d ? "-"
                        : s.Way == Way.Up ? $"{Length(d.Expected)} / {Length(d.StopAt)}" : s.Pressure > 0 ? $"about {Length(d.Expected)}" : "0"),
                    .. plan.Points.Select(_ => s.Dials.Count > 0 ? "" : "-"), "", "",
                ]));
        if (plan.Steps.FirstOrDefault(s => s.Pressure > 0) is { Setting: { } setting })
            page.Put("p", $"How the pressure is made to stop: {setting}, and so on step by step.", "quiet");
        page.Raw("<div class=\"two\">");
        Tasks(page, "1. Look at, before any pressure", plan.Looks);
        Tasks(page, "2. With nothing under the ram", plan.Unloaded);
        page.Raw("<section>").Put("h2", "3. Dials").List(plan.Points.Select(p => $"{p.Name}: {p.Says}")).Raw("</section>");
        Tasks(page, "4. Measure besides", plan.Measures);
        Tasks(page, "5. After", plan.After);
        page.Raw("</div>");
        page.Raw("<div class=\"sign\"><div>instruments, class, last compared</div><div>oil and air temperature</div><div>day</div><div>who</div></div>");
        return page.ToString();
    }

    private static string Hold(double seconds) => seconds >= 60 ? $"{seconds / 60:0.#} min" : $"{seconds:0} s";

    private static void Tasks(HtmlPage page, string title, IReadOnlyList<PlanTask> tasks)
    {
        page.Raw("<section>").Put("h2", title).Raw("<ul class=\"boxes\">");
        foreach (PlanTask task in tasks)
            page.Raw($"<li>{HtmlPage.Safe(task.What)}{(task.Stop.Length > 0 ? $". <b>Stop:</b> {HtmlPage.Safe(task.Stop)}." : "")}</li>");
        page.Raw("</ul></section>");
    }
}
