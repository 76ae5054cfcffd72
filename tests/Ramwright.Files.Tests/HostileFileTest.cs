using System.Text;

namespace Ramwright.Files.Tests;

/// <summary>Files made to choke a reader are refused from disk within a second of processor time.</summary>
[Collection(nameof(Alone))]
public sealed class HostileFileTest
{
    public static TheoryData<string> Kinds => [.. Files.Keys];

    private static readonly Dictionary<string, Func<byte[]>> Files = new()
    {
        ["a comment of 50 MB"] = () => Bytes("name: a\n# " + new string('x', 50_000_000)),
        ["50 MB of lines"] = () => Bytes(string.Concat(Enumerable.Repeat("wanted: 20 t\n", 4_000_000))),
        ["thirty tenfold aliases"] = () => Bytes("a0: &a0 [x, x, x, x, x, x, x, x, x, x]\n" + string.Concat(
            Enumerable.Range(1, 29).Select(i => $"a{i}: &a{i} [{string.Join(", ", Enumerable.Repeat($"*a{i - 1}", 10))}]\n"))),
        ["an alias of itself"] = () => Bytes("name: &a\n  - *a\n"),
        ["brackets half a million deep"] = () => Bytes("frame: " + new string('[', 490_000)),
        ["braces a quarter of a million deep"] = () => Bytes(string.Concat(Enumerable.Repeat("{a: ", 240_000))),
        ["a thousand levels of indentation"] = () => Bytes(string.Concat(Enumerable.Range(0, 1_300).Select(i => new string(' ', i) + "a:\n"))),
        ["noise"] = () => Noise(900_000),
        ["Latin-1"] = () => Encoding.Latin1.GetBytes("name: Spindelpresse für Gelände\nwanted: 20 t\n"),
        ["UTF-16"] = () => [.. Encoding.Unicode.GetPreamble(), .. Encoding.Unicode.GetBytes("name: a\nwanted: 20 t\n")],
        ["zeros"] = () => new byte[500_000],
    };

    [Theory, MemberData(nameof(Kinds))]
    public void IsRefusedWithinASecond(string kind)
    {
        string path = Path.Combine(Path.GetTempPath(), $"ramwright-{Guid.NewGuid():N}{PressFile.Ending}");
        File.WriteAllBytes(path, Files[kind]());
        try
        {
            PressOnDisk.Open(TestFiles.Of("Bad", "empty" + PressFile.Ending));     // warm
            var time = new CpuTime();

            PressOnDisk press = PressOnDisk.Open(path);
            string said = FaultText.All(press.Faults);

            time.MustBeBelow(1);
            Assert.Null(press.Rig);
            Assert.NotEmpty(press.Faults);
            Assert.InRange(said.Length, 1, 200_000);
        }
        finally
        {
            File.Delete(path);
        }
    }

    private static byte[] Bytes(string text) => Encoding.UTF8.GetBytes(text);

    private static byte[] Noise(int count)
    {
        byte[] noise = new byte[count];
        new Random(1).NextBytes(noise);
        return noise;
    }
}
