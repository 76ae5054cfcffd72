using Ramwright.Workings;

namespace Ramwright.Presses;

/// <summary>Something in a press that cannot be, named by the path of the value: <c>frame.crown.section</c>.</summary>
/// <param name="Path">Keys from the top, joined by dots; list items by number from 0: <c>lines.0.bore</c>.</param>
/// <param name="Found">What is wrong.</param>
/// <param name="Wanted">What to write instead.</param>
/// <param name="Nearest">The nearest valid word, where there is one.</param>
/// <param name="Against">Path of the other value that it clashes with, where there is one.</param>
public sealed record Fault(string Path, Remark Found, Remark Wanted, string? Nearest = null, string? Against = null);
