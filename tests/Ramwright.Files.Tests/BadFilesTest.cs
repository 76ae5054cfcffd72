namespace Ramwright.Files.Tests;

/// <summary>
/// Every file in Bad/ is refused, and the whole message is the text beside it. To accept new wording, run once with
/// RAMWRIGHT_APPROVE=1 and read the differences.
/// </summary>
public sealed class BadFilesTest
{
    public static TheoryData<string> Names()
    {
        var names = new TheoryData<string>();
        foreach (string file in Directory.EnumerateFiles(TestFiles.Of("Bad"), "*" + PressFile.Ending).Order())
            names.Add(Path.GetFileName(file)[..^PressFile.Ending.Length]);
        return names;
    }

    [Theory, MemberData(nameof(Names))]
    public void IsRefusedInTheseWords(string name)
    {
        byte[] bytes = File.ReadAllBytes(TestFiles.Of("Bad", name + PressFile.Ending));

        CheckedPress press = CheckedPress.Of(PressOnDisk.Settle(PressFile.Read(bytes, name + PressFile.Ending, _ => TestShelf.Shelf), TestShelf.Shelf));

        Assert.Null(press.Check);
        Assert.NotEmpty(press.Faults);
        Assert.DoesNotContain(press.Faults, f => f.Found.Contains("cannot be reckoned", StringComparison.Ordinal));
        Approved.Matches(FaultText.All(press.Faults, 90), TestFiles.Of("Bad", name + ".expected.txt"));
    }

    [Fact]
    public void EveryExpectedTextHasItsFile()
    {
        foreach (string text in Directory.EnumerateFiles(TestFiles.Of("Bad"), "*.expected.txt"))
            Assert.True(File.Exists(text.Replace(".expected.txt", PressFile.Ending)), text);
    }

    [Fact]
    public void ThereAreMany() => Assert.True(Names().Count >= 45);
}
