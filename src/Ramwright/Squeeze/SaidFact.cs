using Ramwright.Workings;

namespace Ramwright.Squeeze;

/// <summary>A number as it is said: what it is, how much, and what there is to add.</summary>
/// <param name="What">What it is, in a word or three.</param>
/// <param name="Value">How much, with its unit.</param>
/// <param name="Remark">What there is to add; may be empty.</param>
public readonly record struct SaidFact(string What, string Value, string Remark);
