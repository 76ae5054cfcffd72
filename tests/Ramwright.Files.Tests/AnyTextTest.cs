using System.Text;
using CsCheck;

namespace Ramwright.Files.Tests;

/// <summary>Whatever a hand, an editor or a broken disk does to a press file, reading it ends soon and in plain words.</summary>
[Collection(nameof(Alone))]
public sealed class AnyTextTest
{
    private static readonly string[] Starters = [.. Starter.Kinds.Select(k => Starter.Text(k)), .. Starter.Kinds.Select(k => StarterTest.Variants(Starter.Text(k))[0])];

    // Characters that mean something to YAML or to quantities come more often.
    private static readonly Gen<char> Char = Gen.OneOf(
        Gen.Char[" \t\n\r:#-{}[],'\"&*!|>%@`?~<.0123456789\\\0\u00A0\u2028\u0085\uFEFF\uD800é°½×"],
        Gen.Char);

    private static readonly Gen<(int Kind, double At, double Length, string Text)> Change =
        Gen.Select(Gen.Int[0, 3], Gen.Double[0, 1], Gen.Double[0, 1], Char.Array[1, 4].Select(c => new string(c)));

    public AnyTextTest() => PressFile.Read(Starters[0], "warm", TestShelf.Shelf);

    [Fact]
    public void ChangedStartersAlwaysEndInAPressOrFaults() =>
        Gen.Select(Gen.Int[0, Starters.Length - 1], Change.Array[1, 6]).Sample((starter, changes) =>
        {
            string text = Starters[starter];
            foreach (var (kind, at, length, put) in changes)
                text = Changed(text, kind, at, length, put);
            Check(text);
        }, iter: 1500, threads: 1);

    [Fact]
    public void AnyTextEndsInFaults() =>
        Char.Array[0, 200].Select(c => new string(c)).Sample(Check, iter: 1500, threads: 1);

    [Fact]
    public void AnyBytesEndInFaults() =>
        Gen.Byte.Array[0, 300].Sample(bytes =>
        {
            PressReading reading = PressFile.Read(bytes, "any.press.yaml", _ => TestShelf.Shelf);
            FaultText.All(reading.Faults);
            Assert.NotEmpty(reading.Faults);
        }, iter: 1500, threads: 1);

    [Fact]
    public void AnyValueBehindAnyKeyEndsInAPressOrFaults()
    {
        string[] lines = StarterTest.Variants(Starter.Text("closed"))[0].Split('\n');
        Gen.Select(Gen.Int[0, lines.Length - 1], Char.Array[0, 20].Select(c => new string(c))).Sample((at, value) =>
        {
            string[] changed = [.. lines];
            int colon = changed[at].IndexOf(':');
            if (colon >= 0)
                changed[at] = changed[at][..(colon + 1)] + " " + value;
            Check(string.Join('\n', changed));
        }, iter: 1500, threads: 1);
    }

    // Shapes of text that make careless readers slow or deep.
    [Theory]
    [InlineData("[", "")]
    [InlineData("{a: ", "")]
    [InlineData("- ", "")]
    [InlineData("a: 1\n", "")]
    [InlineData("a", "")]
    [InlineData("a ", "")]
    [InlineData("\n", "")]
    [InlineData(" ", "x")]
    [InlineData("\"", "")]
    [InlineData("'", "")]
    [InlineData("#", "")]
    [InlineData("? ", "")]
    [InlineData("k: &a [*a]\n", "")]
    [InlineData("- {bore: 1}\n", "")]
    [InlineData("x: {bore: 1, ", "")]
    [InlineData("wanted: 1 t\n\t", "")]
    [InlineData("---\n", "")]
    [InlineData("! ", "")]
    [InlineData("é", ": x")]
    public void AlmostAMegabyteOfAnythingEndsSoon(string part, string end)
    {
        string text = string.Concat(Enumerable.Repeat(part, (PressFile.LongestFile - end.Length) / part.Length)) + end;
        var time = new CpuTime();

        PressReading reading = PressFile.Read(text, "x" + PressFile.Ending, TestShelf.Shelf);

        time.MustBeBelow(1);
        Assert.NotEmpty(reading.Faults);
        Assert.True(FaultText.All(reading.Faults).Length < 200_000);
    }

    private static void Check(string text)
    {
        var time = new CpuTime();
        PressReading reading = PressFile.Read(text, "any.press.yaml", TestShelf.Shelf);
        string shown = FaultText.All(reading.Faults);
        time.MustBeBelow(1);
        Assert.Equal(reading.Press is null, reading.Faults.Count > 0);
        foreach (PlacedFault fault in reading.Faults)
        {
            Assert.True(fault.Found.Length > 0 && fault.Wanted.Length > 0, shown);
            Assert.InRange(fault.Line, 0, text.Length + 1);
            Assert.DoesNotContain("Exception", fault.Found);
        }
    }

    private static string Changed(string text, int kind, double at, double length, string put)
    {
        int from = (int)(at * text.Length), count = Math.Min((int)(length * length * 40), text.Length - from);
        return kind switch
        {
            0 => text.Remove(from, count),
            1 => text.Insert(from, text.Substring(from, count)),
            2 => text.Insert(from, put),
            _ => new StringBuilder(text).Remove(from, Math.Min(put.Length, text.Length - from)).Insert(from, put).ToString(),
        };
    }
}
