using System.Diagnostics;
using BenchmarkDotNet.Attributes;
using Ramwright.Files;
using Ramwright.Ladders;
using Ramwright.Presses;
using Ramwright.Squeeze;

namespace Ramwright.Bench;

/// <summary>One hot squeeze followed in time, and many on a grid.</summary>
[MemoryDiagnoser]
public class OneSqueeze
{
    private SqueezePress _press = null!;
    private SqueezeWork _work = null!;

    /// <summary>The press that squeezes.</summary>
    [Params("wherry-yard", "railing-shop")]
    public string Example { get; set; } = "";

    /// <summary>Checks the press once.</summary>
    [GlobalSetup]
    public void Read()
    {
        RigHotSqueeze job;
        (_press, job) = Made(Example);
        _work = SqueezeWork.Of(job, _press);
    }

    /// <summary>Approach, pressing, letting off and return, with all its points.</summary>
    [Benchmark]
    public double Squeeze() => SqueezeRun.Of(_press, _work).Time;

    /// <summary>A sweep by stopwatch: points, seconds.</summary>
    public static int Sweep(int across, int up)
    {
        (SqueezePress press, RigHotSqueeze job) = Made("railing-shop");
        var watch = Stopwatch.StartNew();
        TimeSpan before = Process.GetCurrentProcess().TotalProcessorTime;
        SqueezeSweep sweep = SqueezeSweep.Of(job, press, new SweepAxis(SweepOf.Heat, 850, 1250, across), new SweepAxis(SweepOf.Bar, 0.006, 0.08, up));
        TimeSpan cpu = Process.GetCurrentProcess().TotalProcessorTime - before;
        Console.WriteLine($"{sweep.Points.Count} squeezes in {watch.Elapsed.TotalSeconds:0.0} s on {Environment.ProcessorCount} cores, {cpu.TotalSeconds:0.0} s of processor; {sweep.Points.Count(p => p.IsDone)} done");
        return 0;
    }

    // the blank of the railing shop, on either press
    private static (SqueezePress Press, RigHotSqueeze Job) Made(string example)
    {
        RigHotSqueeze job = Check("railing-shop").Rig.Jobs.OfType<RigHotSqueeze>().First();
        return (SqueezePress.Of(Check(example)), job);
    }

    private static PressCheck Check(string example)
    {
        DirectoryInfo? at = new(AppContext.BaseDirectory);
        while (at is not null && !File.Exists(Path.Combine(at.FullName, "Ramwright.slnx")))
            at = at.Parent;
        return CheckedPress.Of(PressOnDisk.Open(Path.Combine(at!.FullName, "examples", example + ".press.yaml"))).Check!;
    }
}
