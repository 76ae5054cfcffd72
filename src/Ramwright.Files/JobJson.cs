using System.Text.Json;
using Ramwright.Jobs;
using Ramwright.Ladders;
using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Squeeze;
using Ramwright.Workings;

namespace Ramwright.Files;

/// <summary>Jobs on a press as JSON with stable names; forces in kN, lengths in mm.</summary>
public static class JobJson
{
    /// <summary>All jobs, each with its verdict and peak.</summary>
    public static string Text(PressCheck press, IReadOnlyList<JobAnswer> jobs)
    {
        ArgumentNullException.ThrowIfNull(press);
        ArgumentNullException.ThrowIfNull(jobs);
        return JsonText.Object(json =>
        {
            json.WriteString("press", press.Rig.Name);
            json.WriteNumber("safeRatingKN", Kilo(press.Ladder.SafeRating));
            json.WriteNumber("trueKN", Kilo(press.Power.TrueForce));
            json.List("jobs", jobs, Brief);
        });
    }

    /// <summary>One job at length.</summary>
    public static string Text(JobAnswer answer)
    {
        ArgumentNullException.ThrowIfNull(answer);
        return JsonText.Object(json =>
        {
            Write(json, answer);
            if (answer.Time is not null)
                JobTimeJson.Write(json, answer.Time);
        });
    }

    private static void Brief(Utf8JsonWriter json, JobAnswer answer)
    {
        JobCheck check = answer.Check;
        json.WriteString("name", check.Job.Name);
        json.WriteString("kind", check.Job.Kind);
        json.WriteString("verdict", JobHeadline.Word(answer.Verdict));
        json.WriteString("saying", answer.Saying());
        json.Object("peakKN", peak =>
        {
            peak.WriteNumber("low", Kilo(check.Demand.Peak.Low));
            peak.WriteNumber("likely", Kilo(check.Demand.Peak.Likely));
            peak.WriteNumber("high", Kilo(check.Demand.Peak.High));
        });
        if (answer.AsItCools is { } cooled)
            json.WriteNumber("asItCoolsKN", Kilo(cooled));
    }

    private static void Write(Utf8JsonWriter json, JobAnswer answer)
    {
        JobCheck check = answer.Check;
        Demand demand = check.Demand;
        Brief(json, answer);
        json.WriteString("press", check.Press.Rig.Name);
        json.WriteString("spread", demand.Spread);
        json.WriteNumber("availableKN", Kilo(check.Available));
        json.WriteNumber("travelMm", Milli(demand.Travel));
        json.WriteNumber("energyJ", Round(demand.Energy));
        if (check.Time is { } time)
            json.WriteNumber("seconds", Round(time));
        else
            json.WriteNull("seconds");
        if (check.GaugeAt(answer.Likely) is { } gauge)
            json.WriteNumber("gaugeBar", Round(gauge / 1e5));
        json.List("curve", demand.Curve, (point, at) =>
        {
            point.WriteNumber("travelMm", Milli(at.Travel));
            point.WriteNumber("forceKN", Kilo(at.Force));
        });
        json.List("limits", answer.Limits, (limit, l) =>
        {
            limit.WriteString("id", l.Id);
            limit.WriteString("verdict", JobHeadline.Word(l.Verdict));
            limit.WriteString("why", l.Why.Text());
        });
        json.List("facts", demand.Facts, (fact, f) =>
        {
            fact.WriteString("what", f.What);
            fact.WriteNumber("si", Round(f.Si));
            fact.WriteString("text", Readout.Text(f.Si, f.Dimension));
            fact.WriteString("remark", f.Note?.Text() ?? "");
        });
        if (check.DrawingOut is { } drawn)
            Write(json, drawn);
        if (check.Chart.Count > 0)
        {
            json.List("bendChart", check.Chart, (place, p) =>
            {
                place.WriteNumber("thicknessMm", Milli(p.Thickness));
                place.WriteNumber("openingMm", Milli(p.Opening));
                place.WriteNumber("kNPerMetre", Kilo(p.PerMetre));
                place.WriteNumber("longestMm", Milli(p.Longest));
                place.WriteBoolean("suits", p.Suits);
            });
        }

        if (check.SnapThrough is { } snap)
        {
            json.Object("letsGo", let =>
            {
                let.WriteNumber("atKN", Kilo(snap.Force));
                let.WriteNumber("energyJ", Round(snap.Energy));
                let.WriteNumber("freeTravelMm", Milli(snap.FreeTravel));
                let.WriteNumber("reversalUpToKN", Kilo(snap.GreatestReversal));
            });
        }

        json.List("flags", demand.Flags.Select(f => f.Text()));
        json.List("assumed", check.Job.Assumed, (assumed, a) =>
        {
            assumed.WriteString("what", a.What);
            assumed.WriteString("value", a.Value(UnitSystem.Metric));
            assumed.WriteString("why", a.Why.Text());
        });
        json.List("cautions", demand.Cautions);
        var working = new Working();
        check.Work(working);
        json.List("working", working.Steps, (step, s) =>
        {
            step.WriteString("symbol", s.Symbol);
            step.WriteString("meaning", s.Meaning);
            step.WriteString("formula", s.Formula);
            step.WriteNumber("si", s.Si);
            step.WriteString("text", Readout.Text(s.Si, s.Dimension, digits: 4));
            step.WriteString("source", s.Source.ToString());
        });
    }

    private static void Write(Utf8JsonWriter json, DrawingOut drawn) => json.Object("drawingOut", plan =>
    {
        plan.WriteNumber("squeezes", drawn.Squeezes);
        plan.WriteNumber("quarterTurns", drawn.Turns);
        plan.WriteNumber("heats", drawn.Heats);
        plan.WriteBoolean("reached", drawn.Reached);
        plan.WriteNumber("lengthBeforeMm", Milli(drawn.LengthBefore));
        plan.WriteNumber("lengthAfterMm", Milli(drawn.LengthAfter));
        plan.List("passes", drawn.Passes, (pass, p) =>
        {
            pass.WriteNumber("number", p.Number);
            pass.WriteNumber("heightMm", Milli(p.Height));
            pass.WriteNumber("widthMm", Milli(p.Width));
            pass.WriteNumber("lengthMm", Milli(p.Length));
            pass.WriteNumber("squeezes", p.Squeezes);
            pass.WriteNumber("hotKN", Kilo(p.Force));
            pass.WriteNumber("coldKN", Kilo(p.ColdForce));
            pass.WriteNumber("heat", p.Heat);
        });
    });

    private static double Kilo(double si) => Round(si / 1e3);

    private static double Milli(double si) => Round(si * 1e3);

    private static double Round(double value) => JsonText.Round(value);
}
