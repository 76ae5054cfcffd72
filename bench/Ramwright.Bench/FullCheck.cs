using BenchmarkDotNet.Attributes;
using Ramwright.Files;
using Ramwright.Ladders;
using Ramwright.Presses;

namespace Ramwright.Bench;

/// <summary>Everything after the file is read: settle, power, frame, rungs, ladder.</summary>
[MemoryDiagnoser]
public class FullCheck
{
    private PressOnDisk _press = null!;

    /// <summary>The press that is checked.</summary>
    [Params("wherry-yard", "railing-shop")]
    public string Example { get; set; } = "";

    /// <summary>Reads the file once.</summary>
    [GlobalSetup]
    public void Read()
    {
        _press = PressOnDisk.Open(Path.Combine(Repository.Find("examples"), Example + ".press.yaml"));
    }

    /// <summary>A full check without working.</summary>
    [Benchmark]
    public double Check() => PressCheck.Of(Resolver.Resolve(_press.Reading.Press!, _press.Shelf)).Ladder.SafeRating;
}
