using System.Diagnostics;
using System.Globalization;
using Ramwright.Files;
using Ramwright.Files.Readings;

namespace Ramwright.Tests.Readings;

public sealed class ReadingLogTest : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("ramwright-log").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    private string NewLog() => Path.Combine(_folder, Guid.NewGuid().ToString("N") + ReadingLog.Ending);

    private static string Line(int i, string who = "Ines") => string.Create(CultureInfo.InvariantCulture, $"2026-05-09 {who} top-pressure {200 + i % 9} bar step={i} note=\"°C, one line\"");

    [Fact]
    public void ItLiesBesideThePressFile()
    {
        Assert.Equal("/a/b.readings", ReadingLog.PathFor("/a/b.press.yaml"));
        Assert.Empty(ReadingLog.Load(NewLog()).Readings);
        Assert.Empty(ReadingLog.Load(NewLog()).Faults);
    }

    [Fact]
    public void WhatIsAddedIsReadInItsOrder()
    {
        string log = NewLog();
        for (int i = 0; i < 20; i++)
            ReadingLog.Append(log, Line(i));
        ReadingLog read = ReadingLog.Load(log);
        Assert.Empty(read.Faults);
        Assert.Equal(Enumerable.Range(0, 20), read.Readings.Select(r => r.Step!.Value));
        Assert.Equal(Enumerable.Range(1, 20), read.Readings.Select(r => r.Line));
    }

    [Fact]
    public void BadLinesAreSaidWithTheirNumberSkippedAndKept()
    {
        string log = NewLog(), text = $"# begun\n\n{Line(1)}\nwhatever this is\n{Line(2)}\r\n2026-05-09 Ines bore 12x mm\n";
        File.WriteAllText(log, text);
        ReadingLog read = ReadingLog.Load(log);
        Assert.Equal([3, 5], read.Readings.Select(r => r.Line));
        Assert.Equal([4, 6], read.Faults.Select(f => f.Line));
        ReadingLog.Append(log, Line(3));
        Assert.StartsWith(text, File.ReadAllText(log), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("2026-05-09 Ines top-pressure 20")]
    [InlineData("2026-05-09 Ines top-pressure 205 bar note=\"half")]
    [InlineData("2026-05-09 Ines oil 41 °")]
    [InlineData("2026-05-09 Ines top-pressure 205 bar")]
    public void ALineCutOffIsNeverTakenForWholeNorGluedToTheNext(string torn)
    {
        string log = NewLog();
        File.WriteAllText(log, Line(1) + "\n" + torn);
        ReadingLog cut = ReadingLog.Load(log);
        Assert.Single(cut.Readings);
        Assert.Equal(2, Assert.Single(cut.Faults).Line);
        ReadingLog.Append(log, Line(2));
        ReadingLog after = ReadingLog.Load(log);
        Assert.Equal([1, 3], after.Readings.Select(r => r.Line));
        Assert.Contains("cut off", Assert.Single(after.Faults).Found, StringComparison.Ordinal);
        Assert.Contains(torn, File.ReadAllText(log), StringComparison.Ordinal);
    }

    [Fact]
    public void ALineCutInTheMiddleOfASignIsSaidToo()
    {
        string log = NewLog();
        byte[] whole = System.Text.Encoding.UTF8.GetBytes("2026-05-09 Ines oil 41 °C\n");
        // between the two bytes of °
        File.WriteAllBytes(log, whole[..^3]);
        ReadingLog.Append(log, Line(2));
        ReadingLog read = ReadingLog.Load(log);
        Assert.Equal(2, Assert.Single(read.Readings).Line);
        Assert.Equal(1, Assert.Single(read.Faults).Line);
    }

    [Fact]
    public void EveryPlaceThatALineCanBeCutAtIsSurvived()
    {
        byte[] whole = System.Text.Encoding.UTF8.GetBytes(Line(0) + "\n" + Line(1) + "\n");
        for (int length = 0; length <= whole.Length; length++)
        {
            string log = NewLog();
            File.WriteAllBytes(log, whole[..length]);
            ReadingLog.Append(log, Line(2));
            ReadingLog read = ReadingLog.Load(log);
            int ended = whole[..length].Count(b => b == '\n');
            Assert.Equal(ended + 1, read.Readings.Count);
            Assert.Equal(2, read.Readings[^1].Step);
            Assert.Equal(length > 0 && whole[length - 1] != '\n' ? 1 : 0, read.Faults.Count);
        }
    }

    [Theory]
    [InlineData("two\nlines")]
    [InlineData("a\rb")]
    [InlineData("a\u0000b")]
    public void MoreThanOneLineIsRefused(string line) => Assert.Throws<ArgumentException>(() => ReadingLog.Append(NewLog(), line));

    [Fact]
    public void ManyMayAddAtOnce()
    {
        string log = NewLog();
        Parallel.For(0, 8, who =>
        {
            for (int i = 0; i < 25; i++)
                ReadingLog.Append(log, Line(i, "W" + who));
        });
        ReadingLog read = ReadingLog.Load(log);
        Assert.Empty(read.Faults);
        Assert.Equal(200, read.Readings.Count);
        foreach (var one in read.Readings.GroupBy(r => r.Who))
            Assert.Equal(Enumerable.Range(0, 25), one.Select(r => r.Step!.Value));
    }

    /// <summary>
    /// The program itself is started 200 times to add readings as fast as it can and killed at a random moment. What it had said was written must be there, whole,
    /// whatever came after.
    /// </summary>
    [Fact]
    public async Task TwoHundredKillsLoseNoReadingThatWasConfirmed()
    {
        string log = NewLog();
        var random = new Random(17);
        var confirmed = new List<string>();
        int cut = 0;
        for (int kill = 0; kill < 200; kill += 10)
        {
            // ten at once: they also add against one another
            string[][] each = await Task.WhenAll(Enumerable.Range(kill, 10).Select(n => KilledWriter(log, "K" + n.ToString(CultureInfo.InvariantCulture), random.Next(1, 12))));
            confirmed.AddRange(each.SelectMany(e => e));
        }

        ReadingLog read = ReadingLog.Load(log);
        var there = read.Readings.Select(r => $"{r.Who} {r.Step}").ToHashSet();
        Assert.True(confirmed.Count > 200, $"only {confirmed.Count} readings were confirmed: nothing was really tried");
        Assert.DoesNotContain(confirmed, c => !there.Contains(c));
        Assert.Equal(there.Count, read.Readings.Count);
        cut = read.Faults.Count;
        Assert.All(read.Faults, f => Assert.Contains("cut off", f.Found, StringComparison.Ordinal));
        // every line of the file is one that was meant, or is said to be cut off: nothing is glued together
        Assert.Equal(File.ReadAllLines(log).Length, read.Readings.Count + cut);
    }

    private static async Task<string[]> KilledWriter(string log, string who, int afterLines)
    {
        string writer = Path.Combine(AppContext.BaseDirectory, "Ramwright.Proving.Tests.dll");
        using Process process = Process.Start(new ProcessStartInfo("dotnet", [writer, log, who])
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        })!;
        var said = new List<string>();
        while (said.Count < afterLines && await process.StandardOutput.ReadLineAsync() is { } line)
            said.Add(line);
        process.Kill();         // SIGKILL: nothing is flushed, nothing is tidied up
        // what it had said before it died counts too
        while (await process.StandardOutput.ReadLineAsync() is { } line)
            said.Add(line);
        await process.WaitForExitAsync();
        Assert.True(said.Count > 0, await process.StandardError.ReadToEndAsync());
        // the last line of its voice may itself be cut
        return [.. said.Where(s => s.EndsWith('.')).Select(s => s[..^1])];
    }
}
