using System.Globalization;
using Ramwright.Files.Drawings;
using Ramwright.Ladders;
using Ramwright.Measuring;
using Ramwright.Proving;
using Ramwright.Quantities;

namespace Ramwright.Files.Readings;

/// <summary>The builder's own record of a test: what was tested, by whom, with what, what came out, what was not tested.</summary>
public static class Certificate
{
    /// <summary>What it is and what it is not.</summary>
    public const string Standing =
        "This is the builder's own record of their own test. It is no inspection by a third party, no approval and no declaration of conformity, and it does not stand in for any of them where the law asks for one.";

    /// <summary>Writes it as a page that stands by itself.</summary>
    /// <param name="proof">The press and its readings.</param>
    public static string Html(Proof proof)
    {
        ArgumentNullException.ThrowIfNull(proof);
        UnitSystem units = proof.Units;
        ReadingBook book = proof.Book;
        string[] who = [.. book.All.Select(r => r.Who).Distinct()];
        var page = new HtmlPage($"Record of test: {proof.Check.Rig.Name}");
        page.Put("h1", $"Record of test: {proof.Check.Rig.Name}").Put("p", Standing, "stop");
        page.Put("p", book.All.Count == 0
            ? "Nothing has been read yet."
            : $"Tested {Day(book.All.Min(r => r.Day))} to {Day(book.All.Max(r => r.Day))} by {string.Join(", ", who)}. Written {Day(proof.Today)} from {book.All.Count} readings in {System.IO.Path.GetFileName(proof.Log.Path)}.");
        foreach (string stop in proof.Stops)
            page.Put("p", $"NOT PASSED: {stop}.", "stop big");
        Proof(page, proof, units);
        Force(page, proof, units);
        Stiffnesses(page, proof, units);
        if (proof.Compared.Count > 0)
        {
            page.Put("h2", "Beside the model").Table(["what", "measured*", "model*", "remark"], proof.Compared.Select(c => (IReadOnlyList<string>)
                [c.What, UncertainText.Of(c.Measured.Value, 2 * c.Measured.U, c.Dimension, units), c.Model is { } m ? Readout.Text(m, c.Dimension, units) : "-", c.IsApart ? "apart: " + c.Remark : "-"]));
        }

        if (proof.Leaks.Count > 0)
            page.Put("h2", "Leak-down").List(proof.Leaks.Select(l => LeakText.Of(l, units)));
        page.Put("h2", "Instruments").List(Instruments(book));
        page.Put("h2", "What was looked at").Table(["what", "found", "day", "who"], book.Of(ReadingKind.Look).GroupBy(r => r.At).Select(g => g.Last())
            .Select(r => (IReadOnlyList<string>)[r.At, r.Word == "ok" ? "in order" : r.Word == "not-ok" ? "NOT in order" : "not looked at", Day(r.Day), r.Who]));
        page.Put("h2", "What was not tested").List(NotTested.Of(proof));
        page.Put("h2", "Readings of the loaded steps")
            .Table(["day", "who", "what", "value*", "at", "gauge*", "way", "instrument"], book.All.Where(r => r.Kind is ReadingKind.Dial or ReadingKind.Load or ReadingKind.TopPressure or ReadingKind.LeakDown)
                .Select(r => (IReadOnlyList<string>)
                [
                    Day(r.Day), r.Who, ReadingForm.Of(r.Kind).Name, Readout.Text(r.Value, ReadingForm.Of(r.Kind).Measures!.Value, units), Or(r.At),
                    r.Pressure is { } p ? Readout.Text(p, Dimension.Pressure, units) : "-", r.Way is { } w ? (w == Way.Up ? "up" : "down") : "-", Or(r.Instrument),
                ]));
        page.Raw("<div class=\"sign\"><div>place, day</div><div>builder, name and signature</div></div>");
        return page.ToString();
    }

    private static void Proof(HtmlPage page, Proof proof, UnitSystem units)
    {
        ProofForce p = proof.Plan.Proof;
        PlanStep[] proofs = [.. proof.Plan.Steps.Where(s => s.Pressure >= p.Pressure * 0.98 && s.Way == Way.Up)];
        double at = proofs.Select(s => s.Pressure).DefaultIfEmpty(p.Pressure).Max(), thrust = at * proof.Check.Power.Areas.Force;
        bool held = proofs.Any(s => proof.Closed.TryGetValue(s.Number, out string? word) && word == "held");
        page.Put("h2", "Proof").Put("p", held
            ? $"Held at {Readout.Text(at, Dimension.Pressure, units)}, {ForceText.Of(thrust, units)} with nothing lost: {p.Reason(units)}"
            : $"The proof step ({Readout.Text(p.Pressure, Dimension.Pressure, units)}, {ForceText.Of(p.Force, units)}) is not closed as held in the log.", held ? "big" : "");
        page.Put("p", $"Safe rating by reckoning: {ForceText.Of(proof.Check.Ladder.SafeRating, units)}, by the {proof.Check.Ladder.Governing.Part}. {proof.Closed.Count(c => c.Value == "held")} of {proof.Plan.Steps.Count} steps held.");
    }

    private static void Force(HtmlPage page, Proof proof, UnitSystem units)
    {
        page.Put("h2", "True force");
        if (proof.Force is not { } force)
        {
            page.Put("p", proof.Untold is { } why ? $"None: {why}." : "Not measured.");
            return;
        }

        page.Put("p", force.Saying(units), "big")
            .Put("p", $"at {Readout.Text(force.Pressure, Dimension.Pressure, units)} on the gauge. Combined standard uncertainty {Readout.Text(force.Force.Combined, Dimension.Force, units, 2)} by JCGM 100:2008; "
                + $"with k = {force.Force.Coverage.ToString("0.00", CultureInfo.InvariantCulture)} for {Readout.Text(force.Force.Level, Dimension.Ratio, digits: 4)} that makes {Readout.Text(force.Force.Expanded, Dimension.Force, units, 2)}. "
                + $"Drawn {Readout.Number(force.Drawn.Trials, 7)} times by JCGM 101:2008: {Readout.Text(force.Drawn.Low, Dimension.Force, units, 4)} to {Readout.Text(force.Drawn.High, Dimension.Force, units, 4)}. "
                + (force.Agrees ? "The two agree." : "Where the two differ the drawn interval is the one stated."));
        page.Table(["", "what", "from", "standard*", "share*"], force.Force.Budget.Select(b => (IReadOnlyList<string>)
            [b.Input.Symbol, b.Input.Meaning, b.Input.From, Readout.Text(b.Contribution, Dimension.Force, units, 2), Readout.Text(b.Share, Dimension.Ratio, digits: 2)]));
        page.List(force.Taken);
    }

    private static void Stiffnesses(HtmlPage page, Proof proof, UnitSystem units)
    {
        if (proof.Stiffness.Count == 0 && proof.Pump.Count == 0)
            return;
        page.Put("h2", "Stiffness and pump").Table(["dial at", "measured*", "reckoned there*", "hysteresis*", "set*", "allowed*"], proof.Stiffness.Select(s => (IReadOnlyList<string>)
        [
            s.Point.Name, s.Measured is { } m ? UncertainText.Of(m.Value, m.Expanded, Dimension.Stiffness, units) : "-", Readout.Text(s.Predicted, Dimension.Stiffness, units),
            s.Hysteresis is { } loop ? Readout.Text(Math.Max(0, loop), Dimension.Ratio, digits: 2) : "-", s.Set is { } set ? Readout.Text(set, Dimension.Length, units, 2) : "not read", Readout.Text(s.SetLimit, Dimension.Length, units, 2),
        ]));
        page.Raw("<div class=\"plots\">");
        foreach (Stiffness s in proof.Stiffness)
            page.Raw(SvgSheet.Write(ProofChart.Of(s, units)));
        foreach (PumpFit fit in proof.Pump)
            page.Raw(SvgSheet.Write(ProofChart.Of(fit, units)));
        page.Raw("</div>");
    }

    private static IEnumerable<string> Instruments(ReadingBook book)
    {
        foreach (Instrument i in book.Instruments)
            yield return $"{i.Name}: {i.Why.Text(book.Units)}";
        foreach (ReadingKind kind in new[] { ReadingKind.TopPressure, ReadingKind.Dial, ReadingKind.Bore, ReadingKind.TimeOut, ReadingKind.Load })
        {
            if (book.Of(kind).Count > 0 && book.For(kind) is { Assumed: true } usual)
                yield return $"{usual.Name} for {ReadingForm.Of(kind).Name}: nothing is said of it; {usual.Why.Text(book.Units)}";
        }
    }

    private static string Or(string text) => text.Length > 0 ? text : "-";

    private static string Day(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
