using Ramwright.Web.Opened;

namespace Ramwright.Web.Tests;

/// <summary>The bench reaches the presses of its folder and nothing else.</summary>
public sealed class BenchFolderTest : IDisposable
{
    private readonly TestFolder _folder = new(), _other = new();

    public void Dispose()
    {
        _folder.Dispose();
        _other.Dispose();
    }

    [Fact]
    public void EveryoneWhoOpensAPressHasTheSameOne()
    {
        _folder.Copy("wherry-yard");
        var bench = new BenchFolder(_folder.Folder);
        OpenPress?[] found = new OpenPress?[8];

        Parallel.For(0, found.Length, i => found[i] = bench.Find("wherry-yard"));

        Assert.All(found, p => Assert.Same(found[0], p));
        Assert.NotNull(found[0]);
    }

    [Theory]
    [InlineData("../wherry-yard")]
    [InlineData("..\\wherry-yard")]
    [InlineData("/etc/passwd")]
    [InlineData("..")]
    [InlineData("")]
    [InlineData("wherry-yard\0")]
    public void ANameIsNeverAPath(string name)
    {
        _other.Copy("wherry-yard");
        Assert.Null(new BenchFolder(_folder.Folder).Find(name));
    }

    [Fact]
    public void ALinkOutOfTheFolderIsNotFollowed()
    {
        if (OperatingSystem.IsWindows())
            return;
        File.CreateSymbolicLink(_folder.Path("outside"), _other.Copy("wherry-yard"));
        var bench = new BenchFolder(_folder.Folder);

        Assert.Empty(bench.Names);
        Assert.Null(bench.Find("outside"));
    }

    [Fact]
    public void AnOpenPressThatBecomesALinkOutIsNeitherReadNorWritten()
    {
        if (OperatingSystem.IsWindows())
            return;
        string outside = _other.Copy("wherry-yard"), before = File.ReadAllText(outside);
        _folder.Copy("railing-shop");
        var bench = new BenchFolder(_folder.Folder);
        OpenPress press = bench.Find("railing-shop")!;
        press.Set("wanted", "21 t");
        File.Delete(_folder.Path("railing-shop"));
        File.CreateSymbolicLink(_folder.Path("railing-shop"), outside);

        press.Look();
        press.Save();

        Assert.Contains("link", press.Now.Refusal, StringComparison.Ordinal);
        Assert.Equal(before, File.ReadAllText(outside));
        Assert.Null(bench.Find("railing-shop"));
    }

    [Fact]
    public void AStockTableOutsideTheFolderIsNotRead()
    {
        string table = Path.Combine(_other.Folder, "steels.csv");
        File.WriteAllText(table, "secret");
        File.WriteAllText(_folder.Path("sly"), Example.Text("wherry-yard") + $"\nstock: ['{Path.GetRelativePath(_folder.Folder, table)}']\n");

        PressNow now = new BenchFolder(_folder.Folder).Find("sly")!.Now;

        Assert.Contains("cannot be opened", Assert.Single(now.Read.Faults).Found, StringComparison.Ordinal);
    }

    [Fact]
    public void ACopyIsWrittenOnceAndNeverOverAFile()
    {
        var bench = new BenchFolder(_folder.Folder);

        Assert.Equal("", bench.Copy("railing-shop", " my press "));
        Assert.NotEqual("", bench.Copy("wherry-yard", "my press"));
        Assert.NotEqual("", bench.Copy("wherry-yard", "../my press"));
        Assert.NotEqual("", bench.Copy("no such thing", "third"));

        Assert.Equal(["my press"], bench.Names);
        Assert.Equal(Example.Text("railing-shop"), File.ReadAllText(_folder.Path("my press")));
    }

    [Fact]
    public void EveryPatternGivesAPressWithAnAnswer()
    {
        var bench = new BenchFolder(_folder.Folder);
        foreach ((string id, _) in BenchFolder.Patterns)
        {
            Assert.Equal("", bench.Copy(id, "press of " + id));
            PressNow now = bench.Find("press of " + id)!.Now;
            Assert.True(now.Check is not null, id + ": " + string.Join("; ", now.Read.Faults.Select(f => f.Found)));
        }
    }
}
