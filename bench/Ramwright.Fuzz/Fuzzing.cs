using System.Collections.Concurrent;
using System.Diagnostics;
using System.Runtime.InteropServices;
using Ramwright.Bench;
using Ramwright.Files;
using Ramwright.Frame;
using Ramwright.Ladders;
using Ramwright.Presses;
using Ramwright.Workings;

namespace Ramwright.Fuzz;

/// <summary>Runs inputs through reading, settling, checking and writing, and keeps what ends in anything but an answer or plain words.</summary>
/// <param name="count">How many inputs.</param>
/// <param name="seed">Number of the first input.</param>
internal sealed class Fuzzing(int count, int seed)
{
    private const double Slow = 1;

    private readonly Inputs _inputs = new();
    private readonly ConcurrentDictionary<string, int> _ends = new();
    private readonly ConcurrentDictionary<string, (int Times, int First)> _failures = new();
    private int _done;

    public int Run()
    {
        var time = Stopwatch.StartNew();
        Parallel.For(0, count, new ParallelOptions { MaxDegreeOfParallelism = Environment.ProcessorCount }, i =>
        {
            One(unchecked(seed * 1_000_003 + i));
            int done = Interlocked.Increment(ref _done);
            if (done % 10_000 == 0)
                Console.WriteLine($"{done} inputs, {time.Elapsed.TotalSeconds:0} s, {_failures.Count} kinds of failure");
        });
        Console.WriteLine();
        foreach ((string end, int times) in _ends.OrderByDescending(e => e.Value).ThenBy(e => e.Key, StringComparer.Ordinal))
            Console.WriteLine($"{times,8} {end}");
        string folder = Path.Combine(Repository.Find("src"), "..", ".build", "fuzz");
        foreach ((string what, (int times, int first)) in _failures.OrderByDescending(f => f.Value.Times))
        {
            Directory.CreateDirectory(folder);
            string file = Path.GetFullPath(Path.Combine(folder, $"{first}.press.yaml"));
            File.WriteAllBytes(file, _inputs.Of(first).Bytes);
            Console.WriteLine($"FAILED {times} times: {what}\n    first: {file}");
        }

        Console.WriteLine($"{count} inputs from seed {seed}: {_failures.Count} kinds of failure");
        return _failures.IsEmpty ? 0 : 1;
    }

    private void One(int number)
    {
        (string kind, byte[] bytes) = _inputs.Of(number);
        double before = ThreadTime();
        string end;
        try
        {
            end = Ends(bytes);
        }
        catch (Exception e)
        {
            string at = e.StackTrace?.Split('\n').FirstOrDefault(l => l.Contains("Ramwright", StringComparison.Ordinal))?.Trim() ?? "";
            Failed($"{e.GetType().Name}: {FirstLine(e.Message)} {at}", number);
            return;
        }

        double spent = ThreadTime() - before;
        if (spent > Slow)
            Failed($"took over {Slow} s of processor time ({kind})", number);
        _ends.AddOrUpdate($"{kind}: {end}", 1, (_, n) => n + 1);
    }

    /// <summary>How an input ends; throws where it must not.</summary>
    private static string Ends(byte[] bytes)
    {
        PressReading reading = PressFile.Read(bytes, "any.press.yaml", _ => StockTables.Built);
        FaultText.All(reading.Faults);
        FaultJson.Text(reading.Faults);
        PressOnDisk press = PressOnDisk.Settle(reading, StockTables.Built);
        if (press.Rig is not { } rig)
        {
            if (press.Faults.Count == 0 || press.Faults.Any(f => f.Found.Length == 0 || f.Wanted.Length == 0))
                throw new InvalidDataException("refused without a word");
            return "refused with its faults";
        }

        PressCheck check;
        try
        {
            check = PressCheck.Of(rig);
        }
        catch (PressFaultsException)
        {
            return "refused with its faults when checked";
        }
        catch (FrameMovesException)
        {
            return "refused: the frame would fold up";
        }

        Sound(check);
        return "checked in full";
    }

    private static void Sound(PressCheck check)
    {
        foreach (Rung rung in check.Ladder.Rungs)
        {
            if (!(rung.SafeTo >= 0 && double.IsFinite(rung.GivesAt) && double.IsFinite(rung.PressureScale)))
                throw new InvalidDataException($"{rung.Id} has a number that is none");
            var working = new Working();
            rung.Work(working);
            if (working.Steps.Any(s => !double.IsFinite(s.Si)))
                throw new InvalidDataException($"a step of {rung.Id} is no number");
        }

        string json = CheckJson.Text(check);
        if (json.Contains("NaN", StringComparison.Ordinal) || json.Contains('∞'))
            throw new InvalidDataException("the JSON has a number that is none");
    }

    private static string FirstLine(string text) => text.Split('\n')[0];

    private void Failed(string what, int number) =>
        _failures.AddOrUpdate(what, (1, number), (_, was) => (was.Times + 1, Math.Min(was.First, number)));

    /// <summary>Processor time of this thread, s, which does not grow when the machine is busy with something else.</summary>
    private static double ThreadTime()
    {
        if (OperatingSystem.IsLinux())
        {
            Span<long> time = stackalloc long[2];
            const int threadClock = 3;
            if (ClockGetTime(threadClock, ref MemoryMarshal.GetReference(time)) == 0)
                return time[0] + time[1] / 1e9;
        }

        return Environment.TickCount64 / 1e3;
    }

    [DllImport("libc", EntryPoint = "clock_gettime"), DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int ClockGetTime(int clock, ref long time);
}
