namespace Ramwright.Presses;

/// <summary>One key of a press file set to another value.</summary>
/// <param name="Path">Keys from the top, joined by dots: <c>frame.crown.section</c>; list items by number: <c>lines.0.type</c>.</param>
/// <param name="Old">What stands there now as a file would write it, or what was assumed; empty where there is nothing.</param>
/// <param name="New">What is to stand there, as a file would write it; null: the key taken out.</param>
/// <param name="Value">The same as the record holds it: SI, a name, a word of an enum, yes or no; null: unsaid.</param>
public sealed record PressEdit(string Path, string Old, string? New, object? Value)
{
    /// <summary>The press with the key set.</summary>
    /// <exception cref="ArgumentException">No such key, or a value that does not belong there.</exception>
    public Press On(Press press) => PressKeys.With(press, Path, Value);
}
