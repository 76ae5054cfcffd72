using System.Diagnostics.CodeAnalysis;
using Ramwright.Quantities;

namespace Ramwright.Stock;

/// <summary>
/// Reads a section as the trade calls it: a stock name (<c>HEB 160</c>), a pair (<c>2 x UPN 200</c>), or bar by its
/// dimensions (<c>flat 200x40</c>, <c>round 60</c>, <c>box 200x150x12</c>; millimetres unless a unit stands beside them).
/// </summary>
public static class SectionText
{
    /// <summary>Reads a section.</summary>
    /// <param name="text">What was written.</param>
    /// <param name="shelf">The sections that go by name.</param>
    /// <param name="shape">The section, when it could be read.</param>
    /// <param name="fault">What is wrong and the nearest names, when it could not.</param>
    public static bool TryRead(
        string text, Shelf shelf, [NotNullWhen(true)] out Shape? shape, [NotNullWhen(false)] out ReadingFault? fault)
    {
        shape = null;
        fault = new ReadingFault("not read yet", "nothing", 0, text.Length);
        return false;
    }
}
