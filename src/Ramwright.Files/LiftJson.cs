using System.Text;
using System.Text.Json;
using Ramwright.Ladders;
using Ramwright.Presses;

namespace Ramwright.Files;

/// <summary>What to change so that a press carries more, as JSON with stable names; each change by the path of its key.</summary>
public static class LiftJson
{
    /// <summary>Writes what was found.</summary>
    public static string Text(Lift lift)
    {
        ArgumentNullException.ThrowIfNull(lift);
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, CheckJson.Options))
        {
            PressCheck before = lift.Before;
            json.WriteStartObject();
            json.WriteString("press", before.Rig.Name);
            json.WriteNumber("wantedKN", Kilo(before.Rig.Wanted));
            State(json, before);
            json.WriteBoolean("isEnough", lift.IsEnough);
            json.WriteNumber("looked", lift.Looked);
            json.WriteStartArray("ways");
            foreach (LiftWay way in lift.Ways)
                Write(json, way);
            json.WriteEndArray();
            if (lift.Nearest is { } nearest)
            {
                json.WritePropertyName("nearest");
                Write(json, nearest);
            }

            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(stream.ToArray());
    }

    private static void Write(Utf8JsonWriter json, LiftWay way)
    {
        json.WriteStartObject();
        json.WriteStartArray("changes");
        foreach (PressEdit edit in way.Edits)
        {
            json.WriteStartObject();
            json.WriteString("key", edit.Path);
            json.WriteString("old", edit.Old);
            json.WriteString("new", edit.New);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteString("cost", KeyNames.Written(way.Cost.ToString()));
        json.WriteNumber("addedKg", Math.Round(way.AddedMass, 3));
        if (way.AddedPrice is { } price)
            json.WriteNumber("addedPrice", Math.Round(price, 2));
        State(json, way.Check);
        json.WriteEndObject();
    }

    private static void State(Utf8JsonWriter json, PressCheck check)
    {
        json.WriteNumber("safeRatingKN", Kilo(check.Ladder.SafeRating));
        json.WriteString("governing", check.Ladder.Governing.Id);
        json.WriteNumber("mostPossibleKN", Kilo(check.Power.MostPossibleForce));
        json.WriteString("againstWanted", CheckJson.Word(check.AgainstWanted));
        json.WriteString("againstMostPossible", CheckJson.Word(check.AgainstMostPossible));
    }

    private static double Kilo(double newtons) => CheckJson.Round(newtons / 1e3);
}
