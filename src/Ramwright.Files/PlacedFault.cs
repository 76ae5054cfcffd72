namespace Ramwright.Files;

/// <summary>
/// Something wrong in a file, where it stands, and what to write instead. Its properties are the stable names of the
/// JSON form.
/// </summary>
/// <param name="File">Name of the file, as the person gave it.</param>
/// <param name="Line">Line, counted from 1.</param>
/// <param name="Column">Column, counted from 1.</param>
/// <param name="Length">How many characters of that line it covers; 0 where there is nothing to point at.</param>
/// <param name="Path">Path of the value, <c>frame.crown.section</c>; empty for the file as a whole.</param>
/// <param name="Found">What is wrong.</param>
/// <param name="Wanted">What to write instead.</param>
/// <param name="Nearest">The nearest valid word, where there is one.</param>
/// <param name="Source">The line as it stands in the file.</param>
public sealed record PlacedFault(
    string File, int Line, int Column, int Length, string Path, string Found, string Wanted, string? Nearest, string Source);
