using BenchmarkDotNet.Attributes;
using Ramwright.Files;
using Ramwright.Ladders;
using Ramwright.Solids;

namespace Ramwright.Bench;

/// <summary>An everyday check of a press whose joints' springs are kept beside its file: file and springs read, looked up by geometry, beams solved on them, ladder drawn up.</summary>
[MemoryDiagnoser]
public class CheckOnSprings
{
    private string _folder = "", _file = "";

    /// <summary>The press that is checked.</summary>
    [Params("wherry-yard", "railing-shop", "drainage-mill-puller")]
    public string Example { get; set; } = "";

    /// <summary>Solves the joints once and keeps their springs.</summary>
    [GlobalSetup]
    public void Keep()
    {
        _folder = Directory.CreateTempSubdirectory("springs").FullName;
        _file = Path.Combine(_folder, Example + ".press.yaml");
        File.Copy(Path.Combine(Repository.Find("examples"), Example + ".press.yaml"), _file);
        var book = new JointBook();
        book.Of(PressOnDisk.Open(_file).Rig!);
        if (JointsFile.Write(JointsFile.PathOf(_file), book) is { } unwritten)
            throw new IOException(unwritten);
        if (PressOnDisk.Open(_file).Rig!.Springs is null)
            throw new InvalidOperationException($"{Example}: its springs were not found again");
    }

    /// <summary>Takes the copy away.</summary>
    [GlobalCleanup]
    public void Clear() => Directory.Delete(_folder, true);

    /// <summary>From the files on disk to the ladder.</summary>
    [Benchmark]
    public double Check() => PressCheck.Of(PressOnDisk.Open(_file).Rig!).Ladder.SafeRating;
}
