using Ramwright.Files.Yaml;
using Ramwright.Presses;
using Ramwright.Quantities;

namespace Ramwright.Files;

/// <summary>What came of reading a press file.</summary>
public sealed record PressReading
{
    private readonly SourceText _source;

    internal PressReading(string fileName, SourceText source, Press? press, IReadOnlyList<PlacedFault> faults, SourceMap map)
    {
        _source = source;
        FileName = fileName;
        Press = press;
        Faults = faults;
        Map = map;
    }

    /// <summary>Name of the file, as the person gave it.</summary>
    public string FileName { get; }

    /// <summary>The text that was read, without a byte order mark; the places of <see cref="Map"/> count in it.</summary>
    public string Text => _source.Text;

    /// <summary>The press; null when there is any fault, so that nothing is computed from half a file.</summary>
    public Press? Press { get; }

    /// <summary>Everything that is wrong, in the order of the file.</summary>
    public IReadOnlyList<PlacedFault> Faults { get; }

    /// <summary>The units this person measures in: those in which most lengths of the file are written.</summary>
    public UnitSystem Units { get; internal init; }

    /// <summary>Where each value stands.</summary>
    public SourceMap Map { get; }

    /// <summary>Finds the places of faults that came to light after reading, in the order of the file.</summary>
    public IReadOnlyList<PlacedFault> Placed(IEnumerable<Fault> faults)
    {
        ArgumentNullException.ThrowIfNull(faults);
        var placed = new FaultList(FileName, _source);
        foreach (Fault fault in faults)
            placed.Add(fault, Map, Units);
        return placed.InOrder();
    }
}
