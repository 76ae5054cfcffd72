using System.Text.Json;
using Ramwright.FaultFinding;
using Ramwright.Measuring;
using Ramwright.Presses;
using Ramwright.Proving;

namespace Ramwright.Files.Readings;

/// <summary>Proving as JSON with stable names; forces in kN, lengths in mm, pressures in bar, stiffness in kN/mm.</summary>
public static class ProveJson
{
    /// <summary>The signs of trouble that can be seen on a press.</summary>
    public static string Text(FaultNetwork network)
    {
        ArgumentNullException.ThrowIfNull(network);
        return JsonText.Object(json => json.List("signs", network.Signs.Where(s => s.IsSymptom), (inner, sign) =>
        {
            inner.WriteString("id", sign.Id);
            inner.WriteString("question", sign.Question);
        }));
    }

    /// <summary>Plan, readings and all that follows.</summary>
    public static string Text(Proof proof)
    {
        ArgumentNullException.ThrowIfNull(proof);
        return JsonText.Object(json =>
        {
            json.WriteString("press", proof.Check.Rig.Name);
            json.WriteNumber("safeRatingKN", Kilo(proof.Check.Ladder.SafeRating));
            json.List("stops", proof.Stops);
            json.Object("plan", plan => Plan(plan, proof.Plan));
            json.WriteNumber("readings", proof.Log.Readings.Count);
            json.List("logFaults", proof.Log.Faults, (fault, f) =>
            {
                fault.WriteNumber("line", f.Line);
                fault.WriteString("found", f.Found);
                fault.WriteString("wanted", f.Wanted);
                fault.WriteString("source", f.Source);
            });
            if (proof.Untold is { } untold)
                json.WriteString("noForceBecause", untold);
            if (proof.Force is { } force)
                json.Object("trueForce", to => Force(to, force));
            json.List("pump", proof.Pump, Pump);
            json.List("compared", proof.Compared, (to, c) =>
            {
                to.WriteString("what", c.What);
                to.WriteNumber("measuredSi", JsonText.Round(c.Measured.Value));
                to.WriteNumber("standardSi", JsonText.Round(c.Measured.U));
                if (c.Model is { } model)
                    to.WriteNumber("modelSi", JsonText.Round(model));
                to.WriteBoolean("apart", c.IsApart);
            });
            json.List("leakDown", proof.Leaks, (to, l) =>
            {
                to.WriteNumber("line", l.From.Line);
                to.WriteNumber("fellBar", Bar(l.Fall));
                if (l.ByCooling is { } by)
                    to.WriteNumber("byCoolingBar", Bar(by));
                to.WriteBoolean("mayBeCooling", l.MayBeCooling);
                to.WriteNumber("lostMlPerMin", JsonText.Round(l.Rate * 6e7));
                to.WriteNumber("ramSinksMm", JsonText.Round(l.Drift * 1e3));
            });
            json.List("stiffness", proof.Stiffness, Write);
            if (proof.Diagnosis is { } why)
                json.List("diagnosis", why.Explanations, Write);
            json.Object("service", to => Service(to, proof.Service));
        });
    }

    /// <summary>A search for a fault.</summary>
    public static string Text(FaultSearch search)
    {
        ArgumentNullException.ThrowIfNull(search);
        return JsonText.Object(json =>
        {
            json.List("seen", search.Seen, (to, s) =>
            {
                to.WriteString("sign", s.Sign.Id);
                to.WriteBoolean("yes", s.Yes);
            });
            json.List("suspects", search.Suspects, (to, s) =>
            {
                to.WriteString("cause", s.Cause.Id);
                to.WriteString("says", s.Cause.Says);
                to.WriteNumber("chance", JsonText.Round(s.Chance));
                to.WriteNumber("before", JsonText.Round(s.Before));
                to.WriteString("standing", s.Cause.Standing);
                to.WriteString("do", s.Cause.Do);
                to.WriteBoolean("opensLine", s.Cause.Opens);
                to.List("because", s.Because.Select(b => b.Id));
            });
            json.List("tests", search.Tests, (to, t) =>
            {
                to.WriteString("sign", t.Sign.Id);
                to.WriteString("question", t.Sign.Question);
                to.WriteNumber("minutes", t.Sign.Minutes);
                to.WriteNumber("yesChance", JsonText.Round(t.Yes));
                to.WriteNumber("bits", JsonText.Round(t.Gain));
                to.WriteBoolean("opensLine", t.Sign.Opens);
            });
            json.List("beforeOpening", search.BeforeOpening);
        });
    }

    private static void Plan(Utf8JsonWriter json, TestPlan plan)
    {
        json.WriteNumber("proofKN", Kilo(plan.Proof.Force));
        json.WriteNumber("proofBar", Bar(plan.Proof.Pressure));
        json.WriteNumber("factor", JsonText.Round(plan.Proof.Factor));
        json.WriteString("reason", plan.Proof.Reason(Quantities.UnitSystem.Metric));
        json.List("looks", plan.Looks, Task);
        json.List("unloaded", plan.Unloaded, Task);
        json.List("steps", plan.Steps, (to, s) =>
        {
            to.WriteNumber("number", s.Number);
            to.WriteString("what", s.What);
            to.WriteString("way", KeyNames.Written(s.Way.ToString()));
            to.WriteNumber("bar", Bar(s.Pressure));
            to.WriteNumber("thrustKN", Kilo(s.Thrust));
            to.WriteNumber("ramKN", Kilo(s.RamForce));
            to.WriteNumber("holdSeconds", s.Dwell);
            to.WriteString("setting", s.Setting);
            to.List("dials", s.Dials, (dial, d) =>
            {
                dial.WriteString("at", d.Place);
                dial.WriteNumber("expectedMm", JsonText.Round(d.Expected * 1e3));
                dial.WriteNumber("stopMm", JsonText.Round(d.StopAt * 1e3));
            });
        });
        json.List("measures", plan.Measures, Task);
        json.List("after", plan.After, Task);
        json.List("stand", plan.Stand);
        json.List("stop", plan.Stops);
        json.List("distances", plan.Distances, (to, d) =>
        {
            to.WriteString("guard", d.What);
            to.WriteNumber("mm", JsonText.Round(d.S * 1e3));
        });
    }

    private static void Task(Utf8JsonWriter json, PlanTask task)
    {
        json.WriteString("name", task.Name);
        json.WriteString("what", task.What);
        if (task.Stop.Length > 0)
            json.WriteString("stop", task.Stop);
    }

    private static void Force(Utf8JsonWriter json, TrueForce force)
    {
        json.WriteNumber("kN", Kilo(force.Value));
        json.WriteNumber("statedKN", Kilo(force.Stated));
        json.WriteString("statedBy", force.Agrees ? "propagation" : "drawing");
        json.WriteNumber("propagatedKN", Kilo(force.Force.Value));
        json.WriteNumber("standardKN", Kilo(force.Force.Combined));
        json.WriteNumber("expandedKN", Kilo(force.Force.Expanded));
        json.WriteNumber("k", JsonText.Round(force.Force.Coverage));
        if (double.IsFinite(force.Force.EffectiveDof))
            json.WriteNumber("effectiveDof", JsonText.Round(force.Force.EffectiveDof));
        json.WriteNumber("bar", Bar(force.Pressure));
        json.WriteNumber("modelKN", Kilo(force.Model));
        json.WriteNumber("en", JsonText.Round(force.En));
        if (force.SoldAs is { } sold)
            json.WriteNumber("soldAsKN", Kilo(sold));
        json.WriteString("frictionFrom", KeyNames.Written(force.FrictionFrom.ToString()));
        json.List("budget", force.Force.Budget, (to, line) =>
        {
            to.WriteString("symbol", line.Input.Symbol);
            to.WriteString("meaning", line.Input.Meaning);
            to.WriteString("from", line.Input.From);
            to.WriteNumber("contributionKN", Kilo(line.Contribution));
            to.WriteNumber("share", JsonText.Round(line.Share));
        });
        json.Object("drawn", to =>
        {
            to.WriteNumber("trials", force.Drawn.Trials);
            to.WriteNumber("kN", Kilo(force.Drawn.Value));
            to.WriteNumber("standardKN", Kilo(force.Drawn.U));
            to.WriteNumber("lowKN", Kilo(force.Drawn.Low));
            to.WriteNumber("highKN", Kilo(force.Drawn.High));
            to.WriteBoolean("agrees", force.Agrees);
        });
        json.List("taken", force.Taken);
    }

    private static void Pump(Utf8JsonWriter json, PumpFit fit)
    {
        json.WriteString("stage", fit.Stage);
        json.WriteBoolean("fitted", fit.Fit is not null);
        json.List("points", fit.Points, (to, t) =>
        {
            to.WriteNumber("line", t.From.Line);
            to.WriteNumber("bar", Bar(t.Pressure));
            to.WriteNumber("litresPerMinute", JsonText.Round(t.Flow * 6e4));
            if (fit.FlowAt(t.Pressure) is { } at)
                to.WriteNumber("curveLitresPerMinute", JsonText.Round(at.Value * 6e4));
            to.WriteBoolean("outlier", fit.Outliers.Contains(t));
        });
    }

    private static void Write(Utf8JsonWriter json, Stiffness s)
    {
        json.WriteString("at", s.Point.Name);
        json.WriteNumber("reckonedKNPerMm", JsonText.Round(s.Predicted / 1e6));
        if (s.Measured is { } m)
        {
            json.WriteNumber("measuredKNPerMm", JsonText.Round(m.Value / 1e6));
            json.WriteNumber("expandedKNPerMm", JsonText.Round(m.Expanded / 1e6));
            json.WriteNumber("k", JsonText.Round(m.Coverage));
        }

        json.WriteBoolean("softer", s.IsSofter);
        if (s.Hysteresis is { } loop)
            json.WriteNumber("hysteresis", JsonText.Round(loop));
        if (s.Set is { } set)
            json.WriteNumber("setMm", JsonText.Round(set * 1e3));
        json.WriteNumber("setLimitMm", JsonText.Round(s.SetLimit * 1e3));
        json.WriteBoolean("stop", s.IsSet);
    }

    private static void Write(Utf8JsonWriter json, Explanation e)
    {
        json.WriteString("name", e.Name);
        json.WriteString("says", e.Says);
        json.WriteString("look", e.Look);
        json.WriteNumber("left", JsonText.Round(e.Factor));
        json.WriteNumber("misfit", JsonText.Round(e.Misfit));
        json.WriteNumber("weight", JsonText.Round(e.Weight));
    }

    private static void Service(Utf8JsonWriter json, ServiceState service)
    {
        json.WriteNumber("squeezes", service.Squeezes);
        json.WriteNumber("aDay", JsonText.Round(service.ADay));
        json.List("lives", service.Lives, (to, l) =>
        {
            to.WriteString("rung", l.Life.Rung);
            to.WriteString("where", l.Life.Spot);
            to.WriteNumber("used", JsonText.Round(l.Used));
        });
        json.List("due", service.Due, (to, d) =>
        {
            to.WriteString("what", d.What);
            if (d.Last is { } last)
                to.WriteString("last", last.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture));
            if (d.Due is { } due)
                to.WriteString("due", due.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture));
            to.WriteString("why", d.Why);
        });
    }

    private static double Kilo(double n) => JsonText.Round(n / 1e3);

    private static double Bar(double p) => JsonText.Round(p / 1e5);
}
