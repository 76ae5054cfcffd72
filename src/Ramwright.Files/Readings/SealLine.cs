using Ramwright.Proving;

namespace Ramwright.Files.Readings;

/// <summary>A seal of the list: where it sits, and the ring that suits.</summary>
/// <param name="Where">As the log calls it.</param>
/// <param name="Choice">The ring; null where none suits.</param>
public sealed record SealLine(string Where, SealChoice? Choice)
{
    /// <summary>Seals whose grooves were measured, the last measurement of each. A place with "still" or "static" in its name does not slide.</summary>
    /// <param name="book">The readings.</param>
    public static IReadOnlyList<SealLine> Of(ReadingBook book)
    {
        ArgumentNullException.ThrowIfNull(book);
        return
        [
            .. book.Of(ReadingKind.Groove).GroupBy(r => r.At).Select(g => g.Last())
                .Select(r => new SealLine(r.At, r.Bore is { } bore
                    ? SealChoice.For(r.Value, bore, r.Width, r.At.Contains("still", StringComparison.Ordinal) || r.At.Contains("static", StringComparison.Ordinal) ? SealDuty.Still : SealDuty.Sliding)
                    : null)),
        ];
    }
}
