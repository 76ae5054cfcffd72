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
    private const int Reports = 10, Batches = 1001;

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
        double[] rates = new double[Reports], cpuRates = new double[Reports];
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
            (rates[report - 1], cpuRates[report - 1]) = (rate, perCpu);
            lastHeap = GC.GetTotalMemory(forceFullCollection: true);
            if (report == 1)
                firstHeap = lastHeap;
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
                $"{done,8} {rate,10:0} {perCpu,11:0} {lastHeap / 1e6,11:0.00} MB {Environment.WorkingSet / 1e6,10:0.0} MB {allocated / 1e3,13:0.0} KB"));
        }

        Array.Sort(rates);
        Array.Sort(cpuRates);
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
            $"median {rates[Reports / 2]:0} a second, {cpuRates[Reports / 2]:0} a second of processor time; slowest tenth {rates[0]:0}, {cpuRates[0]:0}; heap from first to last tenth {(lastHeap - firstHeap) / 1e3:+0.0;-0.0} KB"));
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
            Time("settle and check", checks, () => PressCheck.Of(Settled(press)));
        }

        Console.WriteLine("forty members, six cases");
        Time("check, factor and solve", checks, () => FrameSolver.Solve(FortyMembers.Model, FortyMembers.Cases));
        return 0;
    }

    /// <summary>Runs in batches, so that what else the machine does falls on some of them only; the middle one and the quickest are told.</summary>
    private static void Time(string what, int times, Func<object> run)
    {
        for (int i = 0; i < times / 5 + 50; i++)
            run();
        int each = Math.Max(1, times / Batches);
        double[] micro = new double[Batches];
        long allocated = GC.GetAllocatedBytesForCurrentThread();
        for (int batch = 0; batch < Batches; batch++)
        {
            var time = Stopwatch.StartNew();
            for (int i = 0; i < each; i++)
                run();
            micro[batch] = time.Elapsed.TotalMicroseconds / each;
        }

        allocated = (GC.GetAllocatedBytesForCurrentThread() - allocated) / (Batches * each);
        Array.Sort(micro);
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
            $"  {what,-30} median {micro[Batches / 2],7:0.0} µs, quickest {micro[0],7:0.0} µs {allocated / 1e3,7:0.0} KB"));
    }

    private static double Safe(PressOnDisk press) => PressCheck.Of(Settled(press)).Ladder.SafeRating;

    /// <summary>Settled anew, with the stock tables the press names.</summary>
    private static Rig Settled(PressOnDisk press) => Resolver.Resolve(press.Reading.Press!, press.Shelf);
}
