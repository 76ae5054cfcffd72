using Ramwright.Files;
using Ramwright.Ladders;
using Ramwright.Quantities;
using Ramwright.Solids;
using Ramwright.Workings;

namespace Ramwright.Tests.Cli;

/// <summary>Examples and first files on an inch tape: no page, drawing or answer speaks metric, and the press is rated as it is on a metric one.</summary>
public sealed class InchExamplesTest : IDisposable
{
    private static readonly string[] Examples = ["wherry-yard", "railing-shop", "drainage-mill-puller", "salvage"];

    private readonly string _folder = Directory.CreateTempSubdirectory("ramwright-inch-").FullName;

    public InchExamplesTest()
    {
        foreach (string table in Directory.EnumerateFiles(Repository.Folder("examples"), "*.csv"))
            File.Copy(table, Path.Combine(_folder, Path.GetFileName(table)));
    }

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    public static TheoryData<string> Presses() => [.. Examples, .. Starter.Kinds, .. Starter.Kinds.Select(k => k + " in full")];

    [Theory, MemberData(nameof(Presses))]
    public void NothingThatIsReadIsMetric(string press)
    {
        string file = Write(press);

        foreach (string command in (string[])["check --all", "check --guesses", "lift", "offset", "explain", "make", "prove", "prove --plan --working", "prove --force --working", "prove --stiffness --working", "prove --service", "job"])
        {
            if (command == "lift" && press.EndsWith("in full", StringComparison.Ordinal))
                continue;       // it tries every key there is, and says no more than of the first file
            string[] words = command.Split(' ');
            (int code, string text) = Run.Command([words[0], file, .. words[1..]]);
            Assert.True(code is 0 or 1 || command == "job", text);
            None(text, command);
        }
    }

    [Theory, MemberData(nameof(Presses))]
    public void NothingThatIsMadeOrPrintedIsMetric(string press)
    {
        string made = Path.Combine(_folder, "made");
        (int code, string text) = Run.Command("make", Write(press), "--out", made);

        Assert.True(code is 0 or 1, text);
        string[] pages = [.. Directory.EnumerateFiles(made, "*", SearchOption.AllDirectories).Where(f => Path.GetExtension(f) is ".html" or ".svg")];
        Assert.NotEmpty(pages);
        foreach (string page in pages)
            None(InchWords.OfPage(File.ReadAllText(page)), Path.GetFileName(page));
    }

    [Theory, MemberData(nameof(Presses))]
    public void NoJobIsMetric(string press)
    {
        string file = Write(press);
        foreach (string job in PressOnDisk.Read(File.ReadAllText(file), file, "inch").Rig?.Jobs.Select(j => j.Name) ?? [])
        {
            (int code, string text) = Run.Command("job", file, job);
            Assert.True(code is 0 or 1, text);
            None(text, job);
        }
    }

    [Theory, MemberData(nameof(Presses))]
    public void WhatIsSimplifiedInTheSolidIsNotMetric(string press)
    {
        string file = Write(press);
        try
        {
            foreach (Remark note in PressSolid.Of(PressOnDisk.Read(File.ReadAllText(file), file, "inch").Rig!).Notes)
                None(note.Text(UnitSystem.Imperial), "solid");
        }
        catch (SolidFaultException cannot)
        {
            None(cannot.Says.Text(UnitSystem.Imperial), "solid");
        }
    }

    /// <summary>What is assumed for the rating must not hang on the tape: one press, one answer.</summary>
    [Theory, InlineData("wherry-yard"), InlineData("railing-shop"), InlineData("drainage-mill-puller"), InlineData("salvage")]
    public void TheTapeDoesNotChangeTheAnswer(string example)
    {
        string inch = Write(example), metric = Run.Example($"{example}.press.yaml");
        (PressOnDisk a, PressOnDisk b) = (PressOnDisk.Read(File.ReadAllText(metric), metric, "metric"), PressOnDisk.Read(File.ReadAllText(inch), inch, "inch"));

        Assert.Equal((UnitSystem.Metric, UnitSystem.Imperial), (a.Reading.Units, b.Reading.Units));
        (Ladder before, Ladder after) = (PressCheck.Of(a.Rig!).Ladder, PressCheck.Of(b.Rig!).Ladder);
        Assert.Equal(before.Rungs.Select(r => r.Id).Order(), after.Rungs.Select(r => r.Id).Order());
        foreach (Rung one in before.Rungs)
            Near.Relative(one.SafeTo, after.Rungs.First(r => r.Id == one.Id).SafeTo, 1e-6, one.Id);
    }

    private static void None(string text, string where) => Assert.Equal("", string.Join('\n', InchWords.Metric(text).Select(l => $"{where}: {l}")));

    private string Write(string press)
    {
        string file = Path.Combine(_folder, "inch.press.yaml"), kind = press.Replace(" in full", "", StringComparison.Ordinal);
        File.WriteAllText(file, Examples.Contains(press) ? InchTape.Rewritten(File.ReadAllText(Run.Example($"{press}.press.yaml")))
            : kind == press ? Starter.First(kind, UnitSystem.Imperial)
            : InchTape.Rewritten(Starter.Text(kind)));
        string readings = Path.Combine(Repository.Folder("examples"), $"{press}.readings");
        if (File.Exists(readings))
            File.WriteAllText(Path.Combine(_folder, "inch.readings"), InchTape.Rewritten(File.ReadAllText(readings)));
        return file;
    }
}
