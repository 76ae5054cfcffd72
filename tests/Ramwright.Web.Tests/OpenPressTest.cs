using System.Text;
using Ramwright.Files;
using Ramwright.Solids;
using Ramwright.Tests;
using Ramwright.Web.Opened;

namespace Ramwright.Web.Tests;

/// <summary>One press file open on the bench: edits, steps back, and saving that never loses anybody's work.</summary>
public sealed class OpenPressTest : IDisposable
{
    private readonly TestFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    private OpenPress Wherry() => new(_folder.Copy("wherry-yard"));

    [Fact]
    public void AChangedValueChangesTheAnswerAndNothingElseInTheText()
    {
        OpenPress press = Wherry();
        PressNow was = press.Now;

        PressNow now = press.Set("cylinder.bore", "100 mm");

        // thrust goes with the bore squared, and with nothing else: no relief setting has moved
        Near.Relative(100.0 * 100 / (125.0 * 125), now.Check!.Power.MostPossibleForce / was.Check!.Power.MostPossibleForce, 1e-9);
        Assert.Equal(was.Text!.Replace("bore: 125 mm", "bore: 100 mm", StringComparison.Ordinal), now.Text);
        Assert.True(now.IsUnsaved);
        Assert.Equal(was.Text, File.ReadAllText(_folder.Path("wherry-yard")));
    }

    [Fact]
    public void WhileFaultsStandTheLastGoodAnswerIsKeptAndMarked()
    {
        OpenPress press = Wherry();
        PressNow good = press.Now;

        PressNow bad = press.Set("cylinder.bore", "125 furlongs");
        PressNow again = press.Set("cylinder.bore", "125 mm");

        Assert.True(bad.IsStale);
        Assert.Same(good.Check, bad.Check);
        Assert.Equal("cylinder.bore", Assert.Single(bad.Read.Faults).Path);
        Assert.False(again.IsStale);
        Assert.NotSame(good.Check, again.Check);
        Assert.False(again.IsUnsaved);
    }

    [Fact]
    public void UndoAndRedoWalkThroughEveryText()
    {
        OpenPress press = Wherry();
        string[] texts = [press.Now.Text!, press.Set("wanted", "20 t").Text!, press.Set("pump.relief", "200 bar").Text!, press.Remove("gauge").Text!];

        for (int i = 2; i >= 0; i--)
            Assert.Equal(texts[i], press.Undo().Text);
        Assert.False(press.Now.CanUndo);
        Assert.Equal(texts[0], press.Undo().Text);
        for (int i = 1; i <= 3; i++)
            Assert.Equal(texts[i], press.Redo().Text);
        Assert.False(press.Now.CanRedo);

        press.Undo();
        press.Set("wanted", "18 t");

        Assert.False(press.Now.CanRedo);
    }

    [Fact]
    public void TypingInOneFieldIsOneStepAndKeepsPlaceAndComment()
    {
        OpenPress press = Wherry();
        string first = press.Now.Text!;
        var stroke = new object();

        foreach (string typed in (string[])["30", "3", "", "2", "28", "28 t"])
            press.Set("cylinder.rated-force", typed, stroke);

        Assert.Equal(first.Replace("rated-force: 30 t ", "rated-force: 28 t ", StringComparison.Ordinal), press.Now.Text);
        Assert.Contains("28 t           # what the seller calls it", press.Now.Text, StringComparison.Ordinal);
        PressNow back = press.Undo();
        Assert.Equal(first, back.Text);
        Assert.False(back.CanUndo);
    }

    [Fact]
    public void EmptyingTheLastKeyOfARecordTakesTheRecordOut()
    {
        OpenPress press = Wherry();
        string was = press.Now.Text!;
        press.Set("ram.weight", "40 kg");
        press.Set("factors.steel", "1.6");
        string grown = press.Now.Text!;

        press.Set("factors.steel", "");

        Assert.NotEqual(was, grown);
        Assert.DoesNotContain("factors", press.Now.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void TwoWhoEditOnePressBothKeepTheirWork()
    {
        OpenPress press = Wherry();

        Parallel.Invoke(
            () => Type(press, "cylinder.stroke", "251 mm", "252 mm", "253 mm", "254 mm"),
            () => Type(press, "frame.daylight", "701 mm", "702 mm", "703 mm", "704 mm"),
            () => Type(press, "name", "one", "two", "three", "four"));

        PressNow now = press.Now;
        Assert.Contains("stroke: 254 mm", now.Text, StringComparison.Ordinal);
        Assert.Contains("daylight: 704 mm", now.Text, StringComparison.Ordinal);
        Assert.Contains("name: four", now.Text, StringComparison.Ordinal);
        Assert.NotNull(now.Read.Check);
    }

    private static void Type(OpenPress press, string path, params string[] values)
    {
        var stroke = new object();
        foreach (string value in values)
            press.Set(path, value, stroke);
    }

    [Fact]
    public void SavingChangesTheBytesOfThatValueAlone()
    {
        string path = _folder.Path("marked");
        byte[] was = [0xEF, 0xBB, 0xBF, .. Encoding.UTF8.GetBytes(Example.Text("wherry-yard").ReplaceLineEndings("\r\n"))];
        File.WriteAllBytes(path, was);
        var press = new OpenPress(path);

        press.Set("pump.relief", "200 bar");
        PressNow saved = press.Save();

        byte[] expected = [0xEF, 0xBB, 0xBF, .. Encoding.UTF8.GetBytes(Example.Text("wherry-yard").ReplaceLineEndings("\r\n").Replace("relief: 215 bar", "relief: 200 bar", StringComparison.Ordinal))];
        Assert.Equal(expected, File.ReadAllBytes(path));
        Assert.False(saved.IsUnsaved);
        Assert.True(saved.CanUndo);
        Assert.Single(Directory.GetFiles(_folder.Folder));
    }

    [Fact]
    public void ANewerFileOnDiskIsNeverOverwritten()
    {
        OpenPress press = Wherry();
        string path = _folder.Path("wherry-yard");
        press.Set("wanted", "20 t");
        string theirs = File.ReadAllText(path).Replace("wanted: 25 t", "wanted: 24 t", StringComparison.Ordinal);
        File.WriteAllText(path, theirs);

        PressNow now = press.Save();

        Assert.Equal(theirs, File.ReadAllText(path));
        Assert.Equal(theirs, now.Theirs!.Text);
        Assert.Contains("wanted: 20 t", now.Text, StringComparison.Ordinal);
        Assert.True(now.IsUnsaved);
    }

    [Fact]
    public void TheirsCanBeTakenAndMineIsHadBackByUndo()
    {
        OpenPress press = Wherry();
        string path = _folder.Path("wherry-yard");
        string mine = press.Set("wanted", "20 t").Text!;
        File.AppendAllText(path, "# theirs\n");
        press.Save();

        PressNow taken = press.TakeTheirs();
        PressNow back = press.Undo();
        PressNow saved = press.Save();

        Assert.EndsWith("# theirs\n", taken.Text, StringComparison.Ordinal);
        Assert.False(taken.IsUnsaved);
        Assert.Null(taken.Theirs);
        Assert.Equal(mine, back.Text);
        Assert.Null(saved.Theirs);
        Assert.Equal(mine, File.ReadAllText(path));
    }

    [Fact]
    public void MineCanBeKeptButNotOverAThirdThatNobodySaw()
    {
        OpenPress press = Wherry();
        string path = _folder.Path("wherry-yard");
        string mine = press.Set("wanted", "20 t").Text!;
        File.AppendAllText(path, "# second\n");
        press.Save();
        File.AppendAllText(path, "# third\n");

        PressNow unseen = press.KeepMine();
        string stood = File.ReadAllText(path);
        PressNow seen = press.KeepMine();

        Assert.EndsWith("# third\n", unseen.Theirs!.Text, StringComparison.Ordinal);
        Assert.EndsWith("# third\n", stood, StringComparison.Ordinal);
        Assert.Null(seen.Theirs);
        Assert.Equal(mine, File.ReadAllText(path));
    }

    [Fact]
    public void AFileChangedOutsideIsTakenOverWhereNothingIsUnsaved()
    {
        OpenPress press = Wherry();
        File.WriteAllText(_folder.Path("wherry-yard"), press.Now.Text!.Replace("wanted: 25 t", "wanted: 24 t", StringComparison.Ordinal));

        PressNow now = press.Look();

        Assert.Contains("wanted: 24 t", now.Text, StringComparison.Ordinal);
        Assert.Null(now.Theirs);
        Assert.Contains("wanted: 25 t", press.Undo().Text, StringComparison.Ordinal);
    }

    public static TheoryData<int> Steps() => [.. Enum.GetValues<WholeWrite.Before>().Select(s => (int)s)];

    [Theory, MemberData(nameof(Steps))]
    public void AWriteBrokenOffAtAnyStepLeavesTheOldFileWhole(int step)
    {
        OpenPress press = Wherry();
        string path = _folder.Path("wherry-yard");
        byte[] was = File.ReadAllBytes(path);
        press.Set("wanted", "20 t");

        PressNow now = press.Save(at =>
        {
            if (at == (WholeWrite.Before)step)
                throw new IOException("the power went");
        });

        Assert.Equal(was, File.ReadAllBytes(path));
        Assert.Contains("the power went", now.Refusal, StringComparison.Ordinal);
        Assert.True(now.IsUnsaved);
        Assert.Equal("", press.Save().Refusal);
        Assert.Contains("wanted: 20 t", File.ReadAllText(path), StringComparison.Ordinal);
    }

    // what a killed process leaves: the state between two steps, with nobody to tidy up
    [Theory, MemberData(nameof(Steps))]
    public void AtEveryStepTheFileOnDiskIsWhole(int step)
    {
        OpenPress press = Wherry();
        string path = _folder.Path("wherry-yard");
        string was = File.ReadAllText(path);
        press.Set("wanted", "20 t");
        string? seen = null;

        press.Save(at =>
        {
            if (at == (WholeWrite.Before)step)
                seen = File.ReadAllText(path);
        });

        Assert.Equal(was, seen);
    }

    [Fact]
    public void ModeOfTheFileStaysAndALinkIsFollowed()
    {
        if (OperatingSystem.IsWindows())
            return;
        string path = _folder.Copy("wherry-yard"), link = _folder.Path("link");
        File.SetUnixFileMode(path, UnixFileMode.UserRead | UnixFileMode.UserWrite);
        File.CreateSymbolicLink(link, path);
        var press = new OpenPress(link);

        press.Set("wanted", "20 t");
        press.Save();

        Assert.NotNull(new FileInfo(link).LinkTarget);
        Assert.Contains("wanted: 20 t", File.ReadAllText(path), StringComparison.Ordinal);
        Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite, File.GetUnixFileMode(path));
    }

    [Theory]
    [InlineData("\u0000\u0001", "there is a control character")]
    [InlineData("", "the file says nothing")]
    [InlineData("wanted: [1, 2\nframe: {{{{", "")]
    public void WhateverTheFileHoldsItOpensWithItsFaults(string text, string found)
    {
        string path = _folder.Path("odd");
        File.WriteAllText(path, text);

        PressNow now = new OpenPress(path).Now;

        Assert.Null(now.Check);
        Assert.NotEmpty(now.Read.Faults);
        Assert.Contains(found, now.Read.Faults[0].Found, StringComparison.Ordinal);
    }

    [Fact]
    public void BytesThatAreNoTextAreShownAsAFaultAndNeverWritten()
    {
        string path = _folder.Path("bytes");
        File.WriteAllBytes(path, [0x77, 0xB0, 0xFF]);
        var press = new OpenPress(path);

        press.Set("wanted", "20 t");
        press.Save();

        Assert.Contains("UTF-8", press.Now.Read.Faults[0].Found, StringComparison.Ordinal);
        Assert.Equal([0x77, 0xB0, 0xFF], File.ReadAllBytes(path));
    }

    [Fact]
    public void KeptJointsLieBesideTheFileAndTheAnswerStandsOnThem()
    {
        OpenPress press = new(_folder.Copy("railing-shop"));
        PressNow was = press.Now;
        var joints = new JointBook();
        joints.Of(was.Check!.Rig);

        PressNow now = press.KeepJoints(joints);

        Assert.Empty(now.Refusal);
        Assert.Equal(was.Text, now.Text);
        Assert.False(now.IsUnsaved);
        Assert.True(File.Exists(JointsFile.PathOf(_folder.Path("railing-shop"))));
        Assert.Contains(now.Check!.Ladder.Rungs, r => r.Id == "upper-arm-toe-hot-spot-fatigue");
        Assert.DoesNotContain(was.Check.Ladder.Rungs, r => r.Id == "upper-arm-toe-hot-spot-fatigue");

        PressNow back = press.DropJoints();

        Assert.False(File.Exists(JointsFile.PathOf(_folder.Path("railing-shop"))));
        Assert.Equal(was.Check.Ladder.SafeRating, back.Check!.Ladder.SafeRating);
        Assert.Equal(was.Check.Ladder.Rungs.Count, back.Check.Ladder.Rungs.Count);
    }

    [Fact]
    public void KeptJointsAreReadAgainOnlyWhereTheirFileIsAnother()
    {
        string path = JointsFile.PathOf(_folder.Path("x"));
        var kept = new KeptJoints();
        Assert.Null(kept.Read(path, out _));

        JointsFile.Write(path, new JointBook());
        JointBook? first = kept.Read(path, out _);
        Assert.NotNull(first);
        Assert.Same(first, kept.Read(path, out _));

        // another time, as of another run of the solver
        File.SetLastWriteTimeUtc(path, DateTime.UtcNow.AddMinutes(1));
        JointBook? second = kept.Read(path, out _);
        Assert.NotSame(first, second);

        kept.Forget();
        Assert.NotSame(second, kept.Read(path, out _));

        File.WriteAllText(path, "{");
        Assert.Null(kept.Read(path, out string unread));
        Assert.Contains("cannot be read", unread, StringComparison.Ordinal);

        File.Delete(path);
        Assert.Null(kept.Read(path, out unread));
        Assert.Empty(unread);
    }

    [Fact]
    public void WhatAnotherProgramKeepsBesideTheFileIsSeenAtTheNextEdit()
    {
        OpenPress press = new(_folder.Copy("wherry-yard"));
        Assert.Null(press.Now.Read.Press.Joints);
        JointsFile.Write(JointsFile.PathOf(_folder.Path("wherry-yard")), new JointBook());

        JointBook? kept = press.Set("wanted", "20 t").Read.Press.Joints;

        Assert.NotNull(kept);
        Assert.Same(kept, press.Set("wanted", "21 t").Read.Press.Joints);
    }
}
