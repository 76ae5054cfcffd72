namespace Ramwright.Quantities;

/// <summary>Why a text could not be read as a quantity, in words for the person who wrote it.</summary>
/// <param name="Found">What is wrong with what stands there.</param>
/// <param name="Wanted">What to write instead, with an example.</param>
/// <param name="Offset">Where in the text the trouble starts, counted from 0.</param>
/// <param name="Length">How many characters it covers.</param>
public sealed record ReadingFault(string Found, string Wanted, int Offset, int Length);
