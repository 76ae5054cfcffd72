using System.Text.Json;
using Ramwright.Jobs;
using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Squeeze;

namespace Ramwright.Files;

/// <summary>Jobs in time and sweeps as JSON with stable names.</summary>
public static class JobTimeJson
{
    /// <summary>A sweep as an object of its own.</summary>
    public static string Text(SqueezeSweep sweep, string press)
    {
        ArgumentNullException.ThrowIfNull(sweep);
        return JsonText.Object(json =>
        {
            json.WriteString("press", press);
            json.WriteString("job", sweep.Job.Name);
            json.WriteString("title", SqueezeWords.Title(sweep));
            json.WriteNumber("target", JsonText.Round(sweep.Target));
            Axis(json, "across", sweep.Across);
            Axis(json, "up", sweep.Up);
            json.List("done", sweep.Done().Select((band, i) => (Band: band, Across: sweep.Across.At(i))), (at, one) =>
            {
                at.WriteNumber("across", JsonText.Round(one.Across));
                Maybe(at, "least", one.Band?.Least);
                Maybe(at, "greatest", one.Band?.Greatest);
            });
            json.List("points", Enumerable.Range(0, sweep.Points.Count), (point, n) =>
            {
                SweepPoint p = sweep.Points[n];
                point.WriteNumber("across", JsonText.Round(sweep.Across.At(n % sweep.Across.Count)));
                point.WriteNumber("up", JsonText.Round(sweep.Up.At(n / sweep.Across.Count)));
                point.WriteBoolean("done", p.IsDone);
                point.WriteString("ended", p.Ends is { } end ? Word(end) : "not-begun");
                point.WriteString("stoppedBy", Word(p.StoppedBy));
                point.WriteNumber("heightLeft", JsonText.Round(p.Left));
                point.WriteNumber("peakKN", JsonText.Round(p.PeakForce / 1e3));
                point.WriteNumber("seconds", JsonText.Round(p.Time));
                point.WriteNumber("endHeatC", JsonText.Round(p.EndHeat));
            });
        });
    }

    /// <summary>Writes a job in time under the name <c>time</c>.</summary>
    internal static void Write(Utf8JsonWriter json, JobInTime time) => json.Object("time", at =>
    {
        SqueezeResult r = time.First;
        at.WriteString("saying", SqueezeWords.Of(r));
        at.WriteBoolean("done", r.IsDone);
        at.WriteString("ended", Word(r.End));
        at.WriteString("stoppedBy", Word(r.StoppedBy));
        at.Object("phasesS", phases =>
        {
            foreach ((SqueezePhase phase, double t) in r.Times)
                phases.WriteNumber(Word(phase), JsonText.Round(t));
        });
        at.WriteNumber("travelMm", JsonText.Round(r.Travel * 1e3));
        Maybe(at, "heightMm", r.Height * 1e3);
        at.WriteNumber("peakKN", JsonText.Round(r.PeakForce / 1e3));
        at.WriteNumber("peakBar", JsonText.Round(r.PeakPressure / 1e5));
        at.WriteNumber("workJ", JsonText.Round(r.Work));
        Maybe(at, "touchC", r.AtTouch);
        Maybe(at, "endColdestC", r.AtEnd?.Coldest);
        Maybe(at, "endMeanC", r.AtEnd?.Mean);
        Maybe(at, "endHottestC", r.AtEnd?.Hottest);
        Maybe(at, "receiverBar", r.Receiver / 1e5);
        at.WriteNumber("freeAirL", JsonText.Round(r.AirTaken * 1e3));
        at.List("points", r.Points, (point, p) =>
        {
            point.WriteNumber("s", JsonText.Round(p.Time));
            point.WriteString("phase", Word(p.Phase));
            point.WriteNumber("travelMm", JsonText.Round(p.Travel * 1e3));
            point.WriteNumber("forceKN", JsonText.Round(p.Force / 1e3));
            point.WriteNumber("bar", JsonText.Round(p.Pressure / 1e5));
            Maybe(point, "meanC", p.Mean);
            Maybe(point, "coldestC", p.Coldest);
            Maybe(point, "hottestC", p.Hottest);
            Maybe(point, "receiverBar", p.Receiver / 1e5);
        });
        at.List("balances", r.Balances, (balance, b) =>
        {
            balance.WriteString("name", b.Name);
            balance.WriteNumber("inSi", JsonText.Round(b.In));
            balance.WriteNumber("outSi", JsonText.Round(b.Out));
            balance.WriteNumber("missing", JsonText.Round(b.Error));
            balance.List("parts", b.Parts, (part, p) =>
            {
                part.WriteString("name", p.Name);
                part.WriteNumber("si", JsonText.Round(p.Value));
            });
        });
        if (time.Heats is { } heats)
            Heats(at, heats);
        if (time.Hour is { } hour)
            Hour(at, hour);
        at.List("sources", time.Sources, (source, one) =>
        {
            source.WriteString("what", one.What);
            source.WriteString("source", one.Source.ToString());
        });
        at.List("flags", time.Flags.Select(f => f.Text()));
        at.List("assumed", r.Assumed, (assumed, a) =>
        {
            assumed.WriteString("what", a.What);
            assumed.WriteString("value", a.Value(UnitSystem.Metric));
            assumed.WriteString("why", a.Why.Text());
        });
    });

    private static void Heats(Utf8JsonWriter json, WorkInHeats heats) => json.Object("heats", at =>
    {
        at.WriteBoolean("done", heats.IsDone);
        at.WriteString("stoppedBy", Word(heats.StoppedBy));
        at.WriteNumber("squeezes", heats.Squeezes);
        at.WriteNumber("inOneHeat", heats.InOneHeat);
        at.WriteNumber("peakKN", JsonText.Round(heats.PeakForce / 1e3));
        at.List("list", heats.Heats, (one, h) =>
        {
            one.WriteNumber("number", h.Number);
            one.WriteNumber("squeezes", h.Squeezes);
            one.WriteNumber("seconds", JsonText.Round(h.Time));
            one.WriteNumber("firstTouchC", JsonText.Round(h.FirstTouch));
            one.WriteNumber("lastTouchC", JsonText.Round(h.LastTouch));
            one.WriteNumber("peakKN", JsonText.Round(h.PeakForce / 1e3));
        });
    });

    private static void Hour(Utf8JsonWriter json, HourOfWork hour) => json.Object("hour", at =>
    {
        at.WriteNumber("rounds", JsonText.Round(hour.Rounds));
        at.WriteNumber("roundS", JsonText.Round(hour.RoundTime));
        at.WriteNumber("lowestBar", JsonText.Round(hour.Lowest / 1e5));
        at.WriteNumber("needsBar", JsonText.Round(hour.Needs / 1e5));
        at.WriteNumber("waitingS", JsonText.Round(hour.Waiting));
        at.WriteNumber("compressorRuns", JsonText.Round(hour.CompressorRuns));
        at.WriteNumber("starts", hour.Starts);
        at.WriteBoolean("starved", hour.Starved);
    });

    private static void Axis(Utf8JsonWriter json, string name, SweepAxis axis) => json.Object(name, at =>
    {
        at.WriteString("of", KeyNames.Written(axis.Of.ToString()));
        at.WriteString("si", axis.Dimension == Dimension.Temperature ? "°C" : axis.Dimension == Dimension.Time ? "s" : "m");
        at.WriteNumber("from", JsonText.Round(axis.From));
        at.WriteNumber("to", JsonText.Round(axis.To));
        at.WriteNumber("count", axis.Count);
    });

    private static string Word<T>(T value) where T : struct, Enum => KeyNames.Written(value.ToString());

    private static void Maybe(Utf8JsonWriter json, string name, double? value)
    {
        if (value is { } number)
            json.WriteNumber(name, JsonText.Round(number));
    }
}
