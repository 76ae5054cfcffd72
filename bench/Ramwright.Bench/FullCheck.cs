using BenchmarkDotNet.Attributes;
using Ramwright.Files;
using Ramwright.Ladders;
using Ramwright.Presses;

namespace Ramwright.Bench;

/// <summary>Everything after the file is read: settle, power, frame, rungs, ladder.</summary>
[MemoryDiagnoser]
public class FullCheck
{
    private PressReading _reading = null!;

    /// <summary>The press that is checked.</summary>
    [Params("wherry-yard", "railing-shop")]
    public string Example { get; set; } = "";

    /// <summary>Reads the file once.</summary>
    [GlobalSetup]
    public void Read()
    {
        DirectoryInfo? at = new(AppContext.BaseDirectory);
        while (at is not null && !File.Exists(Path.Combine(at.FullName, "Ramwright.slnx")))
            at = at.Parent;
        _reading = PressOnDisk.Open(Path.Combine(at!.FullName, "examples", Example + ".press.yaml")).Reading;
    }

    /// <summary>A full check without working.</summary>
    [Benchmark]
    public double Check() => PressCheck.Of(Resolver.Resolve(_reading.Press!, StockTables.Built)).Ladder.SafeRating;
}
