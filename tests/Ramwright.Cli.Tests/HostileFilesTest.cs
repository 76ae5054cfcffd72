using System.Diagnostics;
using System.Text;

namespace Ramwright.Tests.Cli;

/// <summary>Tests in this collection run alone, so that the processor time of the process is theirs.</summary>
[CollectionDefinition(nameof(Alone), DisableParallelization = true)]
public sealed class Alone;

/// <summary>Files made to hang or break a reader end in plain words within a second of processor time, in every command that reads one.</summary>
[Collection(nameof(Alone))]
public sealed class HostileFilesTest : IDisposable
{
    private const int FiftyMegabytes = 50_000_000;

    private readonly string _folder = Directory.CreateTempSubdirectory("ramwright-test-").FullName;

    // what is compiled at first use is not the file's doing
    public HostileFilesTest() => Run.Command("check", Run.Example("railing-shop.press.yaml"));

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    public static TheoryData<string> Kinds() =>
        ["aliases", "merge keys", "fifty megabytes", "fifty megabytes of one key", "brackets", "braces", "dashes", "deep keys", "not UTF-8", "UTF-16", "zeros", "long value", "many keys"];

    private static byte[] Bytes(string kind) => kind switch
    {
        "aliases" => Encoding.UTF8.GetBytes(Aliases()),
        "merge keys" => Encoding.UTF8.GetBytes("a: &a {x: 1}\n" + Times("b: {<<: [*a, *a, *a]}\n", 20_000)),
        "fifty megabytes" => Filled((byte)'x'),
        "fifty megabytes of one key" => Encoding.UTF8.GetBytes(Times("wanted: 25 t\n", FiftyMegabytes / 13)),
        "brackets" => Encoding.UTF8.GetBytes(new string('[', 900_000)),
        "braces" => Encoding.UTF8.GetBytes("frame: " + Times("{frame: ", 100_000)),
        "dashes" => Encoding.UTF8.GetBytes(Times("- ", 400_000)),
        "deep keys" => Encoding.UTF8.GetBytes(string.Concat(Enumerable.Range(0, 1300).Select(i => new string(' ', i) + "frame:\n"))),
        "not UTF-8" => [.. Encoding.UTF8.GetBytes("wanted: 25 t\noil: { temperature: 40 "), 0xB0, 0xC3, 0x28, 0xFF],
        "UTF-16" => Encoding.Unicode.GetPreamble().Concat(Encoding.Unicode.GetBytes("wanted: 25 t\n")).ToArray(),
        "zeros" => new byte[900_000],
        "long value" => Encoding.UTF8.GetBytes("wanted: " + new string('9', 900_000) + " t\n"),
        _ => Encoding.UTF8.GetBytes(string.Concat(Enumerable.Range(0, 60_000).Select(i => $"key{i}: {i}\n"))),
    };

    // nine levels of nine each: 387 million values, if anyone wrote them out
    private static string Aliases()
    {
        var text = new StringBuilder("a0: &a0 [x]\n");
        for (int i = 1; i <= 9; i++)
            text.Append($"a{i}: &a{i} [").AppendJoin(", ", Enumerable.Repeat($"*a{i - 1}", 9)).Append("]\n");
        return text.Append("wanted: *a9\n").ToString();
    }

    private static string Times(string part, int times) => string.Concat(Enumerable.Repeat(part, times));

    private static byte[] Filled(byte b)
    {
        byte[] bytes = new byte[FiftyMegabytes];
        Array.Fill(bytes, b);
        return bytes;
    }

    [Theory, MemberData(nameof(Kinds))]
    public void EndInPlainWordsWithinASecond(string kind)
    {
        string file = Path.Combine(_folder, "hostile.press.yaml");
        File.WriteAllBytes(file, Bytes(kind));

        foreach (string command in new[] { "check", "explain", "offset", "lift" })
        {
            TimeSpan before = Process.GetCurrentProcess().TotalProcessorTime;
            (int code, string text) = Run.Command(command, file);
            TimeSpan spent = Process.GetCurrentProcess().TotalProcessorTime - before;

            Assert.Equal(2, code);
            Assert.True(spent < TimeSpan.FromSeconds(1), $"{command}: {spent.TotalSeconds:0.0} s");
            Assert.Contains("hostile.press.yaml", text.Replace("\n", "", StringComparison.Ordinal));
            Assert.DoesNotContain("   at Ramwright", text);
            Assert.DoesNotContain("Exception", text);
            Assert.True(text.Length < 200_000);
        }
    }

    [Fact]
    public void AStockTableWithoutEndIsRefused()
    {
        string press = File.ReadAllText(Run.Example("railing-shop.press.yaml"));
        File.WriteAllBytes(Path.Combine(_folder, "huge.csv"), Filled((byte)','));
        string file = Path.Combine(_folder, "mine.press.yaml");
        File.WriteAllText(file, press + "\nstock: [huge.csv]\n");

        TimeSpan before = Process.GetCurrentProcess().TotalProcessorTime;
        (int code, string text) = Run.Command("check", file);

        Assert.Equal(2, code);
        Assert.True(Process.GetCurrentProcess().TotalProcessorTime - before < TimeSpan.FromSeconds(1));
        Assert.Contains("too long", string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)));
        Assert.Equal(2, Run.Command("stock", "UPN 200", "--table", Path.Combine(_folder, "huge.csv")).Code);
    }
}
