using Ramwright.Presses;

namespace Ramwright.Files;

/// <summary>What came of reading a press file.</summary>
/// <param name="FileName">Name of the file, as the person gave it.</param>
/// <param name="Press">The press; null when there is any fault, so that nothing is computed from half a file.</param>
/// <param name="Faults">Everything that is wrong, in the order of the file.</param>
/// <param name="Map">Where each value stands.</param>
public sealed record PressReading(string FileName, Press? Press, IReadOnlyList<PlacedFault> Faults, SourceMap Map);
