namespace Ramwright.Tests.Cli;

public sealed class NewCommandTest : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("ramwright-test-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Theory]
    [InlineData("closed")]
    [InlineData("open-front")]
    [InlineData("tie-rod")]
    [InlineData("free")]
    public void AStarterIsAPressThatCanBeChecked(string kind)
    {
        string file = Path.Combine(_folder, "mine.press.yaml");

        Assert.Equal(0, Run.Command("new", file, "--frame", kind).Code);

        Assert.True(Run.Command("check", file).Code is 0 or 1);
    }

    [Fact]
    public void AFileThatIsThereIsLeftAsItIs()
    {
        string file = Path.Combine(_folder, "mine.press.yaml");
        File.WriteAllText(file, "my work");

        (int code, string text) = Run.Command("new", file);

        Assert.Equal(2, code);
        Assert.Contains("left as it is", string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)));
        Assert.Equal("my work", File.ReadAllText(file));
    }

    [Fact]
    public void AnUnknownFrameNamesTheKinds()
    {
        (int code, string text) = Run.Command("new", "--frame", "round");

        Assert.Equal(2, code);
        Assert.Contains("open-front", text);
    }
}
