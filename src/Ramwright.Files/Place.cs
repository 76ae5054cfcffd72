namespace Ramwright.Files;

/// <summary>A stretch of a text.</summary>
/// <param name="Line">Line, counted from 1.</param>
/// <param name="Column">Column of its first character, counted from 1 in UTF-16 units.</param>
/// <param name="Offset">Where it starts in the whole text, counted from 0.</param>
/// <param name="Length">How many characters it covers; it may run over several lines.</param>
public readonly record struct Place(int Line, int Column, int Offset, int Length);
