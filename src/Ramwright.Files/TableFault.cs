namespace Ramwright.Files;

/// <summary>Something in a stock table that cannot be used; the rest of the table still is.</summary>
/// <param name="File">The file's name.</param>
/// <param name="Line">The line, counted from 1.</param>
/// <param name="Found">What is wrong with what stands there.</param>
/// <param name="Wanted">What to write instead.</param>
public sealed record TableFault(string File, int Line, string Found, string Wanted)
{
    /// <summary><c>my-steel.csv:7  found; wanted</c>.</summary>
    public override string ToString() => $"{File}:{Line}  {Found}; {Wanted}";
}
