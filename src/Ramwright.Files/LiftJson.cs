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
        return JsonText.Object(json =>
        {
            PressCheck before = lift.Before;
            json.WriteString("press", before.Rig.Name);
            json.WriteNumber("wantedKN", Kilo(before.Rig.Wanted));
            State(json, before);
            json.WriteBoolean("isEnough", lift.IsEnough);
            json.WriteNumber("looked", lift.Looked);
            json.List("ways", lift.Ways, Write);
            if (lift.Nearest is { } nearest)
                json.Object("nearest", inner => Write(inner, nearest));
        });
    }

    private static void Write(Utf8JsonWriter json, LiftWay way)
    {
        json.List("changes", way.Edits, (change, edit) =>
        {
            change.WriteString("key", edit.Path);
            change.WriteString("old", edit.Old);
            change.WriteString("new", edit.New);
        });
        json.WriteString("cost", KeyNames.Written(way.Cost.ToString()));
        json.WriteNumber("addedKg", Math.Round(way.AddedMass, 3));
        if (way.AddedPrice is { } price)
            json.WriteNumber("addedPrice", Math.Round(price, 2));
        State(json, way.Check);
        if (way.HotSpots.Count > 0)
            json.List("hotSpotsTakenAsBefore", way.HotSpots, (spot, h) =>
            {
                spot.WriteString("rung", h.Rung);
                spot.WriteNumber("safeToKN", Kilo(h.SafeTo));
            });
    }

    private static void State(Utf8JsonWriter json, PressCheck check)
    {
        json.WriteNumber("safeRatingKN", Kilo(check.Ladder.SafeRating));
        json.WriteString("governing", check.Ladder.Governing.Id);
        json.WriteNumber("mostPossibleKN", Kilo(check.Power.MostPossibleForce));
        json.WriteString("againstWanted", CheckJson.Word(check.AgainstWanted));
        json.WriteString("againstMostPossible", CheckJson.Word(check.AgainstMostPossible));
    }

    private static double Kilo(double newtons) => JsonText.Round(newtons / 1e3);
}
