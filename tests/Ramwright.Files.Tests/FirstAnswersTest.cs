using Ramwright.Files.Starting;
using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Stock;

namespace Ramwright.Files.Tests;

/// <summary>A few answers make a whole press file, and what was not answered says so.</summary>
public class FirstAnswersTest
{
    private static CheckedPress Check(FirstAnswers answers) => CheckedPress.Of(PressOnDisk.Read(answers.Text("x"), "x.press.yaml", "x"));

    public static TheoryData<string, string, string> Kinds()
    {
        var all = new TheoryData<string, string, string>();
        foreach (string cylinder in (string[])["", "double-acting", "single-acting"])
        {
            foreach (string pump in (string[])["", "electric", "air", "hand"])
            {
                foreach (string frame in (string[])["", "closed", "open-front"])
                    all.Add(cylinder, pump, frame);
            }
        }

        return all;
    }

    [Theory, MemberData(nameof(Kinds))]
    public void EveryChoiceGivesAnAnswer(string cylinder, string pump, string frame)
    {
        CheckedPress press = Check(new FirstAnswers { Cylinder = cylinder, Pump = pump, Frame = frame });

        Assert.Empty(press.Faults);
        Assert.NotNull(press.Check);
    }

    [Fact]
    public void TheFirstAnswerAloneIsInTheFileAndTheRestIsMarked()
    {
        var answers = new FirstAnswers { Bore = "4 in" };
        string text = answers.Text("Mine: the first");

        Assert.Contains("\n  bore: 4 in\n", text, StringComparison.Ordinal);
        Assert.DoesNotContain(answers.Taken, t => t.Path == "cylinder.bore");
        Assert.All(answers.Taken, t => Assert.Contains($": {t.Value}", text, StringComparison.Ordinal));
        Assert.Equal(answers.Taken.Count, text.Split("# taken for now: ").Length - 1);
        Press press = PressFile.Read(text, "x", StockTables.Built).Press!;
        Assert.Equal("Mine: the first", press.Name);
        Assert.Equal(0.1016, press.Cylinder!.Bore!.Value, 12);
    }

    [Theory, InlineData("4 in", UnitSystem.Imperial), InlineData("100 mm", UnitSystem.Metric)]
    public void WhatIsTakenIsOfTheTapeThatWasAnsweredIn(string bore, UnitSystem tape)
    {
        string text = new FirstAnswers { Bore = bore }.Text("mine");
        Assert.Equal(tape == UnitSystem.Metric, text.Contains(" mm", StringComparison.Ordinal));
        Assert.Equal(tape, PressFile.Read(text, "x", StockTables.Built).Units);
    }

    [Fact]
    public void EveryAnswerGivenLeavesNothingTaken()
    {
        var answers = new FirstAnswers
        {
            Cylinder = "single-acting",
            Bore = "75 mm",
            RatedPressure = "10,000 psi",
            Pump = "hand",
            PumpSize = "2.3 mL",
            Frame = "open-front",
            Daylight = "250 mm",
            Width = "150 mm",
            Section = "2 x UPN 240",
            Steel = "S355",
            Wanted = "15 US ton",
        };

        Assert.Empty(answers.Taken);
        Assert.Equal(("pump.per-stroke", "frame.throat"), (answers.PumpSizeKey, answers.WidthKey));
        Assert.Empty(Check(answers).Faults);
    }

    [Theory]
    [InlineData("20 tons", "wanted")]
    [InlineData("20 t\nframe: {}", "wanted")]
    [InlineData("'", "wanted")]
    [InlineData("# nothing", "wanted")]
    [InlineData("{ a: b }", "wanted")]
    public void WhateverIsTypedIsAFaultOfItsOwnFieldAndOfNoOther(string typed, string path) =>
        Assert.All(Check(new FirstAnswers { Wanted = typed }).Faults, f => Assert.Equal(path, f.Path));
}
