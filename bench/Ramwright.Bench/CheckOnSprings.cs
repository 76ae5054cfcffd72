using System.Diagnostics;
using System.Globalization;
using Ramwright.Files;
using Ramwright.Ladders;
using Ramwright.Presses;
using Ramwright.Solids;

namespace Ramwright.Bench;

/// <summary>
/// An everyday check of a press whose joints' springs are kept beside its file: file and springs read, looked up by geometry, beams solved on them, ladder drawn up. By the processor's time of this
/// process, which hardly grows while the machine does other work.
/// </summary>
internal static class CheckOnSprings
{
    /// <summary>What one check may take of the processor, ms.</summary>
    private const double Wanted = 5;
    private const int Batches = 20;

    /// <summary>Every example; 1 where one takes longer than is wanted.</summary>
    /// <param name="checks">Checks of each.</param>
    public static int Run(int checks)
    {
        bool good = true;
        Console.WriteLine("| example | springs | check, median | slowest batch | read and settled | springs found | checked | allocated |\n|---|---|---:|---:|---:|---:|---:|---:|");
        foreach (string source in Directory.EnumerateFiles(Repository.Find("examples"), "*" + PressFile.Ending).Order(StringComparer.Ordinal))
        {
            string folder = Directory.CreateTempSubdirectory("springs").FullName;
            try
            {
                good &= Example(source, folder, Math.Max(1, checks / Batches)) < Wanted;
            }
            finally
            {
                Directory.Delete(folder, true);
            }
        }

        return good ? 0 : 1;
    }

    private static double Example(string source, string folder, int batch)
    {
        string file = Path.Combine(folder, Path.GetFileName(source)), joints = JointsFile.PathOf(file);
        foreach (string other in Directory.EnumerateFiles(Path.GetDirectoryName(source)!))
            File.Copy(other, Path.Combine(folder, Path.GetFileName(other)));
        File.Delete(joints);
        var book = new JointBook();
        bool found = book.Of(PressOnDisk.Open(file).Rig!) is not null;
        if (found && JointsFile.Write(joints, book) is { } unwritten)
            throw new IOException(unwritten);
        Rig rig = PressOnDisk.Open(file).Rig!;
        if (rig.Springs is null == found)
            throw new InvalidOperationException($"{file}: its springs were not found again");
        Rig bare = rig with { Springs = null };
        double read = Middle(Times(() => PressFile.Load(file, _ => null), batch)), opened = Middle(Times(() => PressOnDisk.Open(file), batch));
        double looked = found ? Middle(Times(() => JointBook.Springing(bare, JointsFile.Read(joints, out _)!), batch)) : 0;
        double checkedIn = Middle(Times(() => PressCheck.Of(rig), batch));
        double[] whole = Times(() => PressCheck.Of(PressOnDisk.Open(file).Rig!), batch);
        long before = GC.GetAllocatedBytesForCurrentThread();
        PressCheck.Of(PressOnDisk.Open(file).Rig!);
        long allocated = GC.GetAllocatedBytesForCurrentThread() - before;
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
            $"| {Path.GetFileName(source)[..^PressFile.Ending.Length]} | {(found ? "kept" : "none")} | {Middle(whole):0.00} ms | {whole.Max():0.00} ms | {opened - looked:0.00} ms (file alone {read:0.00}) | {looked:0.00} ms | {checkedIn:0.00} ms | {allocated / 1024} KB |"));
        return Middle(whole);
    }

    // of the processor, ms for one, each batch; what is hot is compiled first, twice over, which is not counted
    private static double[] Times(Action what, int batch)
    {
        var warm = Stopwatch.StartNew();
        for (int i = 0; i < 200 || warm.ElapsedMilliseconds < 500; i++)
            what();
        Thread.Sleep(300);
        return [.. Enumerable.Range(0, Batches).Select(_ =>
        {
            TimeSpan start = Process.GetCurrentProcess().TotalProcessorTime;
            for (int i = 0; i < batch; i++)
                what();
            return (Process.GetCurrentProcess().TotalProcessorTime - start).TotalMilliseconds / batch;
        })];
    }

    private static double Middle(double[] times) => times.Order().ElementAt(times.Length / 2);
}
