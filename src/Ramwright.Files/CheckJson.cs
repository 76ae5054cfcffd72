using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using Ramwright.Ladders;
using Ramwright.Power;
using Ramwright.Presses;
using Ramwright.Quantities;

namespace Ramwright.Files;

/// <summary>A checked press as one JSON object with stable names; forces in kN, lengths in mm, pressure in bar.</summary>
public static class CheckJson
{
    /// <summary>Writing options shared by the program's JSON: readable, and with × and ² as they are.</summary>
    internal static readonly JsonWriterOptions Options = new() { Indented = true, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>The words for verdicts.</summary>
    public static string Word(Verdict verdict) => verdict switch
    {
        Verdict.Holds => "holds",
        Verdict.Marginal => "marginal",
        _ => "does not hold",
    };

    /// <summary>Writes a check.</summary>
    public static string Text(PressCheck check)
    {
        ArgumentNullException.ThrowIfNull(check);
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, Options))
            Write(json, check);
        return Encoding.UTF8.GetString(stream.ToArray());
    }

    private static void Write(Utf8JsonWriter json, PressCheck check)
    {
        json.WriteStartObject();
        json.WriteString("press", check.Rig.Name);
        json.WriteString("verdict", Word(check.Verdict));
        json.WriteString("againstWanted", Word(check.AgainstWanted));
        json.WriteString("againstMostPossible", Word(check.AgainstMostPossible));
        json.WriteBoolean("meetsWanted", check.MeetsWanted);
        json.WriteNumber("wantedKN", Kilo(check.Rig.Wanted));
        json.WriteNumber("safeRatingKN", Kilo(check.Ladder.SafeRating));
        json.WriteString("governing", check.Ladder.Governing.Id);

        json.WriteStartObject("force");
        json.WriteNumber("trueKN", Kilo(check.Power.TrueForce));
        json.WriteNumber("mostPossibleKN", Kilo(check.Power.MostPossibleForce));
        json.WriteNumber("pressureBar", Round(check.Power.TruePressure / 1e5));
        json.WriteString("limitedBy", check.Power.TrueForceLimitedBy);
        json.WriteString("mostPossibleLimitedBy", check.Power.MostPossibleLimitedBy);
        json.WriteEndObject();

        json.WriteStartArray("speeds");
        foreach (SpeedAtLoad at in check.Power.Speeds)
        {
            json.WriteStartObject();
            json.WriteNumber("loadKN", Kilo(at.Load));
            json.WriteNumber("mmPerS", Round(at.Speed * 1e3));
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteNumber("strokeSeconds", Round(check.Power.Times.FullStroke));

        json.WriteStartArray("rungs");
        foreach (Rung rung in check.Ladder.Rungs)
            Write(json, rung);
        json.WriteEndArray();

        OffCentreJson.Write(json, check.OffCentre());
        json.WriteNumber("daylightGrowthMm", Round(check.DaylightGrowth * 1e3));
        json.WriteNumber("openingMmPerM", Round(check.Opening * 1e3));
        json.WriteNumber("stiffnessKNPerMm", Round(check.Response.Stiffness / 1e6));

        json.WriteStartArray("assumed");
        foreach (Assumed a in check.Assumed)
        {
            json.WriteStartObject();
            json.WriteString("what", a.What);
            json.WriteString("value", a.Value(UnitSystem.Metric));
            json.WriteString("why", a.Why);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("cautions");
        foreach (string caution in check.Cautions())
            json.WriteStringValue(caution);
        json.WriteEndArray();
        json.WriteEndObject();
    }

    /// <summary>Writes a rung as an object.</summary>
    internal static void Write(Utf8JsonWriter json, Rung rung)
    {
        json.WriteStartObject();
        json.WriteString("id", rung.Id);
        json.WriteString("part", rung.Part);
        json.WriteString("mode", rung.Mode);
        json.WriteString("group", KeyNames.Written(rung.Group.ToString()));
        json.WriteNumber("givesAtKN", Kilo(rung.GivesAt));
        json.WriteNumber("safeToKN", Kilo(rung.SafeTo));
        if (rung.Factor is { } factor)
            json.WriteNumber("factor", Round(factor));
        else
            json.WriteNull("factor");
        json.WriteString("factorFrom", rung.FactorFrom);
        json.WriteString("source", rung.Source.ToString());
        json.WriteEndObject();
    }

    private static double Kilo(double newtons) => Round(newtons / 1e3);

    /// <summary>Six figures are more than any input has.</summary>
    internal static double Round(double value)
    {
        if (value == 0)
            return 0;
        double scale = Math.Pow(10, 5 - Math.Floor(Math.Log10(Math.Abs(value))));
        return double.IsFinite(scale) ? Math.Round(value * scale) / scale : value;
    }
}
