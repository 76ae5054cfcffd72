using Ramwright.Ladders;

namespace Ramwright.Files;

/// <summary>What the answer hangs on, as JSON with stable names.</summary>
public static class GuessJson
{
    /// <summary>An object of its own.</summary>
    public static string Text(PressCheck check, IReadOnlyList<Guess> guesses)
    {
        ArgumentNullException.ThrowIfNull(check);
        ArgumentNullException.ThrowIfNull(guesses);
        return JsonText.Object(json =>
        {
            json.WriteString("press", check.Rig.Name);
            json.WriteNumber("safeRatingKN", JsonText.Round(check.Ladder.SafeRating / 1e3));
            json.WriteNumber("swing", Guesses.Swing);
            json.List("guesses", guesses, (at, guess) =>
            {
                at.WriteString("path", guess.Assumed.What);
                at.WriteNumber("assumedSi", JsonText.Round(guess.Assumed.Si));
                Safe(at, "safeIfLessKN", guess.Less);
                Safe(at, "safeIfMoreKN", guess.More);
                at.WriteNumber("moves", JsonText.Round(guess.Moves));
            });
        });
    }

    private static void Safe(System.Text.Json.Utf8JsonWriter json, string name, double? force)
    {
        if (force is { } f)
            json.WriteNumber(name, JsonText.Round(f / 1e3));
        else
            json.WriteNull(name);
    }
}
