using Ramwright.Files.Making;

namespace Ramwright.Tests.Fabrication.Making;

public sealed class OutFolderTest : IDisposable
{
    private static readonly OutFile[] Files = [OutFile.OfText("a.txt", "new a"), OutFile.OfText("plates/b.dxf", "new b"), OutFile.OfText("plates/c.dxf", "new c")];

    private readonly string _home = Directory.CreateTempSubdirectory("ramwright-out-").FullName;

    private string Folder => Path.Combine(_home, "deep", "out");

    public void Dispose() => Directory.Delete(_home, recursive: true);

    [Fact]
    public void FilesAreWrittenAndNothingElseIsLeft()
    {
        Assert.Null(OutFolder.Write(Folder, Files, replace: false));

        Assert.Equal(["deep", "deep/out", "deep/out/a.txt", "deep/out/plates", "deep/out/plates/b.dxf", "deep/out/plates/c.dxf"], All());
        Assert.Equal("new c", File.ReadAllText(Path.Combine(Folder, "plates/c.dxf")));
    }

    [Fact]
    public void WhatIsThereIsNeverReplacedUnasked()
    {
        Directory.CreateDirectory(Path.Combine(Folder, "plates"));
        File.WriteAllText(Path.Combine(Folder, "plates/c.dxf"), "mine");

        string? fault = OutFolder.Write(Folder, Files, replace: false);

        Assert.Contains("plates/c.dxf is in", fault, StringComparison.Ordinal);
        Assert.Contains("--force", fault, StringComparison.Ordinal);
        Assert.Equal(["deep", "deep/out", "deep/out/plates", "deep/out/plates/c.dxf"], All());
        Assert.Equal("mine", File.ReadAllText(Path.Combine(Folder, "plates/c.dxf")));

        Assert.Null(OutFolder.Write(Folder, Files, replace: true));
        Assert.Equal("new c", File.ReadAllText(Path.Combine(Folder, "plates/c.dxf")));
        Assert.Equal(6, All().Length);
    }

    [Theory]
    [InlineData("a.txt"), InlineData("plates/b.dxf"), InlineData("plates/c.dxf")]
    public void ABreakAtAnyFileLeavesEverythingAsItWas(string at)
    {
        Directory.CreateDirectory(Folder);
        File.WriteAllText(Path.Combine(Folder, "a.txt"), "old a");
        string[] before = All();

        string? fault = OutFolder.Write(Folder, Files, replace: true, step: name =>
        {
            if (name == at)
                throw new IOException("No space left on device", 28);
        });

        Assert.Contains("the disk is full", fault, StringComparison.Ordinal);
        Assert.Contains("Nothing was left behind", fault, StringComparison.Ordinal);
        Assert.Equal(before, All());
        Assert.Equal("old a", File.ReadAllText(Path.Combine(Folder, "a.txt")));
    }

    [Fact]
    public void AFolderThatMayNotBeWrittenIsSaid()
    {
        if (OperatingSystem.IsWindows() || Environment.UserName == "root")
            return;         // whoever may do anything is refused nothing
        Directory.CreateDirectory(Folder);
        File.SetUnixFileMode(Folder, UnixFileMode.UserRead | UnixFileMode.UserExecute);
        try
        {
            Assert.Contains("you may not write there", OutFolder.Write(Folder, Files, replace: false), StringComparison.Ordinal);
        }
        finally
        {
            File.SetUnixFileMode(Folder, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
        }

        Assert.Equal(["deep", "deep/out"], All());
    }

    [Fact]
    public void AFileSystemThatTakesNoFilesIsSaidInOneLine()
    {
        if (!Directory.Exists("/proc/self"))
            return;

        string? fault = OutFolder.Write("/proc/self/out", Files, replace: false);

        Assert.StartsWith("/proc/self/out could not be written: ", fault, StringComparison.Ordinal);
        Assert.DoesNotContain('\n', fault!);
    }

    [Fact]
    public void ALinkThatLeadsOutIsNotFollowed()
    {
        if (OperatingSystem.IsWindows())
            return;
        string elsewhere = Path.Combine(_home, "elsewhere");
        Directory.CreateDirectory(elsewhere);
        Directory.CreateDirectory(Folder);
        Directory.CreateSymbolicLink(Path.Combine(Folder, "plates"), elsewhere);

        Assert.Contains("is a link that leads out", OutFolder.Write(Folder, Files, replace: true), StringComparison.Ordinal);
        Assert.Empty(Directory.GetFileSystemEntries(elsewhere));

        // a file that is a link is itself replaced, not what it leads to
        Directory.Delete(Path.Combine(Folder, "plates"));
        File.WriteAllText(Path.Combine(elsewhere, "target"), "theirs");
        File.CreateSymbolicLink(Path.Combine(Folder, "a.txt"), Path.Combine(elsewhere, "target"));
        Assert.Null(OutFolder.Write(Folder, Files, replace: true));
        Assert.Equal("theirs", File.ReadAllText(Path.Combine(elsewhere, "target")));
        Assert.Equal("new a", File.ReadAllText(Path.Combine(Folder, "a.txt")));
    }

    [Fact]
    public void AFileInTheWayIsSaid()
    {
        Directory.CreateDirectory(Path.GetDirectoryName(Folder)!);
        File.WriteAllText(Folder, "a file");
        Assert.Contains("is a file; name a folder", OutFolder.Write(Folder, Files, replace: true), StringComparison.Ordinal);
        File.Delete(Folder);

        Directory.CreateDirectory(Folder);
        File.WriteAllText(Path.Combine(Folder, "plates"), "a file");
        Assert.Contains("is a file where a folder is needed", OutFolder.Write(Folder, Files, replace: true), StringComparison.Ordinal);
        File.Delete(Path.Combine(Folder, "plates"));

        Directory.CreateDirectory(Path.Combine(Folder, "a.txt"));
        Assert.Contains("is a folder where a file is to go", OutFolder.Write(Folder, Files, replace: true), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("../a"), InlineData("/a"), InlineData("a/../../b"), InlineData(""), InlineData("a//b"), InlineData("a\\b")]
    public void ANameThatLeadsOutIsRefused(string name) =>
        Assert.Throws<ArgumentException>(() => OutFolder.Write(Folder, [OutFile.OfText(name, "x")], replace: true));

    [Theory]
    [InlineData("Plate under the cylinder's flange", "plate-under-the-cylinder-s-flange"), InlineData("../../etc/passwd", "etc-passwd"), InlineData("Ärmel", "rmel"), InlineData("CON", "con")]
    public void AnyWordsMakeAFileName(string words, string slug) => Assert.Equal(slug, OutFile.Slug(words));

    private string[] All() => [.. Directory.GetFileSystemEntries(_home, "*", SearchOption.AllDirectories).Select(f => Path.GetRelativePath(_home, f).Replace('\\', '/')).Order(StringComparer.Ordinal)];
}
