using System.Collections.Concurrent;
using System.Diagnostics;
using System.Globalization;
using System.Runtime.InteropServices;
using Ramwright.Bench;
using Ramwright.Files;
using Ramwright.Files.Drawings;
using Ramwright.Frame;
using Ramwright.Ladders;
using Ramwright.Presses;
using Ramwright.Quantities;
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
    private readonly string _folder = Path.GetFullPath(Path.Combine(Repository.Find("src"), "..", ".build", "fuzz"));
    private int _done;
    private (double Spent, int Number, string Kind) _slowest;

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
        foreach ((string what, (int times, int first)) in _failures.OrderByDescending(f => f.Value.Times))
            Console.WriteLine($"FAILED {times} times: {what}\n    first: {first}.press.yaml");
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"slowest: {_slowest.Spent * 1e3:0} ms of processor time, input {_slowest.Number}, {_slowest.Kind}"));
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
            end = Ends(bytes, everything: number % 5 == 0);
        }
        catch (Exception e)
        {
            string at = e.StackTrace?.Split('\n').FirstOrDefault(l => l.Contains("Ramwright", StringComparison.Ordinal))?.Trim() ?? "";
            Failed($"{e.GetType().Name}: {FirstLine(e.Message)} {at}", number);
            return;
        }

        double spent = ThreadTime() - before;
        lock (_ends)
        {
            if (spent > _slowest.Spent)
                _slowest = (spent, number, kind);
        }

        if (spent > Slow)
            Failed($"took over {Slow} s of processor time ({kind})", number);
        _ends.AddOrUpdate($"{kind}: {end}", 1, (_, n) => n + 1);
    }

    /// <summary>How an input ends; throws where it must not.</summary>
    private static string Ends(byte[] bytes, bool everything)
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
        catch (PressFaultsException refused)
        {
            // only as far as the first number, so that alike ends are counted together
            return $"refused when checked: {string.Concat(refused.Faults[0].Found.Text().TakeWhile(c => !char.IsAsciiDigit(c)))}";
        }
        catch (FrameMovesException)
        {
            return "refused: the frame would fold up";
        }

        Sound(check, bytes, everything);
        return "checked in full";
    }

    private static void Sound(PressCheck check, ReadOnlySpan<byte> written, bool everything)
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

        if (!everything)
            return;
        check.Cautions(UnitSystem.Imperial);
        string json = CheckJson.Text(check) + OffCentreJson.Text(check, check.OffCentre()) + SvgSheet.Write(PressDrawing.Of(check, at: check.Rig.Wanted));
        // a press may well be called NaN
        if (json.Contains("NaN", StringComparison.Ordinal) && written.IndexOf("NaN"u8) < 0 || json.Contains('∞') && written.IndexOf("∞"u8) < 0)
            throw new InvalidDataException("the JSON or the drawing has a number that is none");
    }

    private static string FirstLine(string text) => text.Split('\n')[0];

    /// <summary>Keeps the first input of each kind of failure as a file.</summary>
    private void Failed(string what, int number)
    {
        if (_failures.AddOrUpdate(what, (1, number), (_, was) => (was.Times + 1, Math.Min(was.First, number))).Times > 1)
            return;
        Directory.CreateDirectory(_folder);
        File.WriteAllBytes(Path.Combine(_folder, $"{number}.press.yaml"), _inputs.Of(number).Bytes);
        Console.WriteLine($"FAILED: {what}\n    {Path.Combine(_folder, $"{number}.press.yaml")}");
    }

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
