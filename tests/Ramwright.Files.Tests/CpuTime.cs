using System.Diagnostics;

namespace Ramwright.Files.Tests;

/// <summary>Tests in this collection run alone, so that the processor time of the process is theirs.</summary>
[CollectionDefinition(nameof(Alone), DisableParallelization = true)]
public sealed class Alone;

/// <summary>Processor time, which does not grow when the machine is busy with something else.</summary>
internal readonly struct CpuTime()
{
    private readonly TimeSpan _start = Process.GetCurrentProcess().TotalProcessorTime;

    public void MustBeBelow(double seconds)
    {
        double spent = (Process.GetCurrentProcess().TotalProcessorTime - _start).TotalSeconds;
        Assert.True(spent < seconds, $"{spent:0.0} s");
    }
}
