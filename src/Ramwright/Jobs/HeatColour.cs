using Ramwright.Workings;

namespace Ramwright.Jobs;

/// <summary>What hot steel looks like in the dim light of a forge.</summary>
/// <remarks>
/// Two published scales differ by up to 100 °C; this follows the one that names more colours. By eye a heat is known to 50 °C at best, and
/// bright light hides 50 to 100 °C.
/// </remarks>
public static class HeatColour
{
    /// <summary>Where the scale comes from.</summary>
    public static readonly Citation Source = new("Chapman, Workshop Technology part 1, 5th ed. 1972", "temper and heat colours");

    /// <summary>How far a heat read by eye may be off, °C, at best.</summary>
    public const double ByEye = 50;

    private static readonly (double From, string Name)[] Scale =
    [
        (426, "black red"), (594, "very dark red"), (705, "dark red"), (815, "cherry red"), (871, "light cherry red"), (982, "orange"),
        (1093, "yellow"), (1259, "yellow white"), (1315, "white"),
    ];

    /// <summary>The colour at a temperature.</summary>
    /// <param name="T">°C.</param>
    /// <returns>Its name; empty below what glows.</returns>
    public static string At(double T)
    {
        string name = "";
        foreach ((double from, string colour) in Scale)
        {
            if (T >= from)
                name = colour;
        }

        return name;
    }

    /// <summary>What a colour of the scale is in degrees, as a clause to follow others; empty for a word that is no colour of it.</summary>
    /// <param name="colour">A word, in whatever case.</param>
    public static string InWords(string colour)
    {
        ArgumentNullException.ThrowIfNull(colour);
        for (int i = 0; i < Scale.Length; i++)
        {
            if (!Scale[i].Name.Equals(colour.Trim(), StringComparison.OrdinalIgnoreCase))
                continue;
            string up = i + 1 < Scale.Length ? $" to {Scale[i + 1].From:0} °C" : " and more";
            return FormattableString.Invariant($"; {Scale[i].Name} in dim light is {Scale[i].From:0} °C{up}, by eye {ByEye:0} °C off is good");
        }

        return "";
    }
}
