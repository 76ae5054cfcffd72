using System.Globalization;
using Ramwright.Quantities;
using Ramwright.Stock;

namespace Ramwright.Files.Binding;

/// <summary>A thread told by its diameter alone, <c>1 in</c> or <c>24 mm</c>: several threads have it, so which one is asked.</summary>
internal static class ThreadSeries
{
    // two names of one size differ by less than this, m
    private const double Same = 0.05e-3;

    /// <summary>What is wrong and what to say instead; null where it is no diameter.</summary>
    /// <param name="said">What was written.</param>
    /// <param name="ofPort">Whether a line is screwed in there: pipe threads are named by another measure than their own.</param>
    /// <param name="shelf">The threads there are.</param>
    public static (string Found, string Wanted)? Asked(string said, bool ofPort, Shelf shelf)
    {
        string bare = said.Trim();
        if (bare.Length > 0 && char.IsAsciiDigit(bare[^1]))
            bare += " in";      // 3/4 and no more is how an inch bolt is asked for
        if (!QuantityText.TryRead(bare, Dimension.Length, out Quantity size, out _) || !(size.Si > 0))
            return null;
        string[] names = ofPort
            ? [.. shelf.Ports.Where(p => NamedBy(p.Name, bare)).Select(p => p.Name)]
            : [.. shelf.Threads.Where(t => Math.Abs(t.D - size.Si) < Same).Select(WithPitch)];
        string found = $"{FaultWords.Quote(said)} is a size, not the name of a thread";
        if (names.Length == 0)
            return (found, ofPort ? "its family and size, such as G 3/8, NPT 3/8 or JIC 6: read it off the port or count the threads"
                : "size and series, such as M24, M24x2, 1-8 UNC or 1-14 UN");
        return names.Length == 1
            ? (found, names[0])
            : (found, $"say which: {FaultWords.List(names)}; count them on the thread");
    }

    private static string WithPitch(ScrewThread thread) => thread.Form == ThreadForm.Metric
        ? string.Create(CultureInfo.InvariantCulture, $"{thread.Name} (pitch {thread.P * 1e3:0.##} mm)")
        : string.Create(CultureInfo.InvariantCulture, $"{thread.Name} ({0.0254 / thread.P:0.#} threads an inch)");

    /// <summary>Whether the size in a port thread's name is the one that was said: 3/8 in G 3/8.</summary>
    private static bool NamedBy(string name, string said)
    {
        string size = said.EndsWith(" in", StringComparison.Ordinal) ? said[..^3].Trim() : said.TrimEnd('"', '\u2033', ' ');
        return name.EndsWith(" " + size, StringComparison.Ordinal) || name.StartsWith(size + " ", StringComparison.Ordinal);
    }
}
