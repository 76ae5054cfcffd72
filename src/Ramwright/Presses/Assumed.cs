namespace Ramwright.Presses;

/// <summary>Something the file left unsaid and the program filled in.</summary>
/// <param name="What">The path of the key that would override it: <c>cylinder.rod</c>.</param>
/// <param name="Value">What was assumed, with its unit.</param>
/// <param name="Why">Why that.</param>
public sealed record Assumed(string What, string Value, string Why);
