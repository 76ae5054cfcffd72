namespace Ramwright.Fabrication.Plates;

/// <summary>Single-stroke capitals and figures for scribing: a letter is one high and six tenths wide.</summary>
/// <remarks>Drawn for this on a grid of four by six; straight strokes only, so that any table follows them.</remarks>
public static class StrokeLetters
{
    private const double Wide = 0.6, Gap = 0.25;

    // strokes as columns and rows of the grid: "00 06" goes from column 0, row 0 up to row 6; a bar lifts the scriber
    private static readonly Dictionary<char, string> Drawn = new()
    {
        ['A'] = "00 26 40|12 32",
        ['B'] = "00 06 36 45 44 33 42 41 30 00|03 33",
        ['C'] = "41 30 10 01 05 16 36 45",
        ['D'] = "00 06 26 44 42 20 00",
        ['E'] = "40 00 06 46|03 33",
        ['F'] = "00 06 46|03 33",
        ['G'] = "45 36 16 05 01 10 30 41 43 23",
        ['H'] = "00 06|40 46|03 43",
        ['I'] = "20 26|10 30|16 36",
        ['J'] = "01 10 20 31 36|16 46",
        ['K'] = "00 06|46 03 40",
        ['L'] = "06 00 40",
        ['M'] = "00 06 23 46 40",
        ['N'] = "00 06 40 46",
        ['O'] = "10 01 05 16 36 45 41 30 10",
        ['P'] = "00 06 36 45 44 33 03",
        ['Q'] = "10 01 05 16 36 45 41 30 10|22 40",
        ['R'] = "00 06 36 45 44 33 03|23 40",
        ['S'] = "01 10 30 41 42 33 13 04 05 16 36 45",
        ['T'] = "20 26|06 46",
        ['U'] = "06 01 10 30 41 46",
        ['V'] = "06 20 46",
        ['W'] = "06 10 23 30 46",
        ['X'] = "00 46|06 40",
        ['Y'] = "06 23 46|23 20",
        ['Z'] = "06 46 00 40",
        ['0'] = "10 01 05 16 36 45 41 30 10|11 35",
        ['1'] = "14 26 20|10 30",
        ['2'] = "05 16 36 45 44 00 40",
        ['3'] = "05 16 36 45 44 33 42 41 30 10 01|13 33",
        ['4'] = "30 36 02 42",
        ['5'] = "46 06 03 33 42 41 30 10 01",
        ['6'] = "45 36 16 05 01 10 30 41 42 33 13 02",
        ['7'] = "06 46 10",
        ['8'] = "13 04 05 16 36 45 44 33 13 02 01 10 30 41 42 33",
        ['9'] = "01 10 30 41 45 36 16 05 04 13 33 44",
        ['-'] = "13 33",
        ['.'] = "20 21",
        ['/'] = "00 46",
        [' '] = "",
    };

    /// <summary>How wide a text is when its letters are one high.</summary>
    public static double Width(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return text.Length == 0 ? 0 : text.Length * (Wide + Gap) - Gap;
    }

    /// <summary>The strokes of a text, its lower left corner at the origin, letters one high. Letters that are not drawn become dashes.</summary>
    public static IEnumerable<IReadOnlyList<(double X, double Y)>> Of(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        for (int i = 0; i < text.Length; i++)
        {
            string strokes = Drawn.TryGetValue(char.ToUpperInvariant(text[i]), out string? found) ? found : Drawn['-'];
            foreach (string stroke in strokes.Split('|', StringSplitOptions.RemoveEmptyEntries))
            {
                double left = i * (Wide + Gap);
                yield return [.. stroke.Split(' ').Select(p => (left + (p[0] - '0') / 4.0 * Wide, (p[1] - '0') / 6.0))];
            }
        }
    }
}
