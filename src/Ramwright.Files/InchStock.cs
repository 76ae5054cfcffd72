namespace Ramwright.Files;

/// <summary>What an inch workshop would name in place of the metric stock of our examples: of about the same size, and on its own dealer's list.</summary>
internal static class InchStock
{
    private static readonly Dictionary<string, string> Known = new(StringComparer.Ordinal)
    {
        ["UPN 200"] = "C8x13.75",
        ["2 x UPN 200"] = "2 x C8x13.75",
        ["HEB 160"] = "W6x25",
        ["HEB 200"] = "W8x31",
        ["CHS 48.3x3.2"] = "HSS1.9x0.145",
        ["SHS 50x5"] = "HSS2x2x3/16",
        ["SHS 60x60x3"] = "HSS2-1/2x2-1/2x1/8",
        ["flat 60x10"] = "flat 2-1/2x3/8 in",
        ["flat 200x40"] = "flat 8x1-1/2 in",
        ["round 30"] = "round 1-1/4 in",
        ["square 20"] = "square 3/4 in",
        ["square 30"] = "square 1-1/4 in",
        ["S235"] = "A36",
        ["S275"] = "A36",
        ["S355"] = "A572-50",
        ["M12"] = "1/2-13 UNC",
        ["M16"] = "5/8-11 UNC",
        ["M20"] = "3/4-10 UNC",
        ["M24"] = "1-8 UNC",
        ["M36"] = "1-1/2-6 UNC",
        ["M36x2"] = "1-1/2-12 UNF",
        ["M120x3"] = "4-3/4-8 UN",
        ["8.8"] = "SAE 5",
        ["G 3/8"] = "NPT 3/8",
        ["EN 853 2SN"] = "SAE 100R2AT",
    };

    /// <summary>The inch name of about the same; the name itself where none is known, as of oils and bar steels.</summary>
    public static string Of(string metric) => Known.GetValueOrDefault(metric, metric);
}
