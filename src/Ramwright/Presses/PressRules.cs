namespace Ramwright.Presses;

/// <summary>draft</summary>
public static class PressRules
{
    /// <summary>draft</summary>
    public static IEnumerable<Fault> Of(Press press) { yield break; }
}
