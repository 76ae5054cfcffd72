using System.Diagnostics;
using System.Globalization;
using Ramwright.Files;
using Ramwright.Frame;
using Ramwright.Ladders;
using Ramwright.Presses;

namespace Ramwright.Bench;

/// <summary>Full checks without end on every core: how many a second, and whether memory stays flat.</summary>
internal static class Steady
{
    private const int Reports = 10;

    /// <summary>Checks the example presses in turn, settled anew each time.</summary>
    /// <param name="checks">How many in all.</param>
    /// <param name="cores">On how many threads.</param>
    public static int Run(int checks, int cores)
    {
        string examples = Repository.Find("examples");
        PressOnDisk[] presses = [.. Directory.GetFiles(examples, "*.press.yaml").Order().Select(PressOnDisk.Open)];
        double sum = 0;
        for (int i = 0; i < 2000; i++)         // warm: the second compilation of what is hot
            sum += Safe(presses[i % presses.Length]);

        Console.WriteLine($"{presses.Length} examples in turn, {cores} threads, {checks} full checks, {Environment.ProcessorCount} cores, .NET {Environment.Version}");
        Console.WriteLine("  checks   checks/s   per cpu s   managed heap   working set   allocated a check");
        int done = 0;
        double slowest = double.PositiveInfinity;
        long firstHeap = 0, lastHeap = 0;
        for (int report = 1; report <= Reports; report++)
        {
            int part = checks / Reports;
            long allocated = GC.GetTotalAllocatedBytes();
            TimeSpan cpu = Process.GetCurrentProcess().TotalProcessorTime;
            var time = Stopwatch.StartNew();
            Parallel.For(0, cores, new ParallelOptions { MaxDegreeOfParallelism = cores }, core =>
            {
                for (int i = core; i < part; i += cores)
                    Safe(presses[i % presses.Length]);
            });
            double rate = part / time.Elapsed.TotalSeconds;
            // unlike checks a second this hardly depends on what else the machine is doing
            double perCpu = part / (Process.GetCurrentProcess().TotalProcessorTime - cpu).TotalSeconds;
            allocated = (GC.GetTotalAllocatedBytes() - allocated) / part;
            done += part;
            slowest = Math.Min(slowest, rate);
            lastHeap = GC.GetTotalMemory(forceFullCollection: true);
            if (report == 1)
                firstHeap = lastHeap;
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
                $"{done,8} {rate,10:0} {perCpu,11:0} {lastHeap / 1e6,11:0.00} MB {Environment.WorkingSet / 1e6,10:0.0} MB {allocated / 1e3,13:0.0} KB"));
        }

        Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
            $"slowest tenth {slowest:0} a second; heap from first to last tenth {(lastHeap - firstHeap) / 1e3:+0.0;-0.0} KB"));
        return 0;
    }

    /// <summary>How long one check takes step by step, µs, one thread.</summary>
    public static int Steps(int checks)
    {
        foreach (string file in Directory.GetFiles(Repository.Find("examples"), "*.press.yaml").Order())
        {
            PressOnDisk press = PressOnDisk.Open(file);
            Rig rig = Settled(press);
            FramePlan plan = FramePlan.Of(rig);
            Console.WriteLine(Path.GetFileName(file));
            Time("settle", checks, () => Settled(press));
            Time("draw up beams", checks, () => FramePlan.Of(rig));
            Time("assemble, factor and solve", checks, () => FrameSolver.Solve(plan.Model, plan.Cases));
            Time("full check of what is settled", checks, () => PressCheck.Of(rig));
        }

        return 0;
    }

    private static void Time(string what, int times, Func<object> run)
    {
        for (int i = 0; i < times / 5 + 50; i++)
            run();
        long allocated = GC.GetAllocatedBytesForCurrentThread();
        TimeSpan cpu = Process.GetCurrentProcess().UserProcessorTime;
        var time = Stopwatch.StartNew();
        for (int i = 0; i < times; i++)
            run();
        double wall = time.Elapsed.TotalMicroseconds / times;
        double busy = (Process.GetCurrentProcess().UserProcessorTime - cpu).TotalMicroseconds / times;
        allocated = (GC.GetAllocatedBytesForCurrentThread() - allocated) / times;
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  {what,-30} {wall,8:0.0} µs wall {busy,8:0.0} µs cpu {allocated / 1e3,7:0.0} KB"));
    }

    private static double Safe(PressOnDisk press) => PressCheck.Of(Settled(press)).Ladder.SafeRating;

    /// <summary>Settled anew, with the stock tables the press names.</summary>
    private static Rig Settled(PressOnDisk press) => Resolver.Resolve(press.Reading.Press!, press.Shelf);
}
