using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Jobs;

/// <summary>Something a person wants to know about a job besides its force.</summary>
/// <param name="What">In a few words: <c>shortest leg</c>.</param>
/// <param name="Si">The value, SI.</param>
/// <param name="Dimension">What it measures.</param>
/// <param name="Note">What to make of it.</param>
public sealed record Fact(string What, double Si, Dimension Dimension, Remark? Note = null);
