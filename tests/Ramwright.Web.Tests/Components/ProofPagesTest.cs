using Bunit;
using Microsoft.Extensions.DependencyInjection;
using Ramwright.Files.Readings;
using Ramwright.Proving;
using Ramwright.Tests;
using Ramwright.Web.Bench;
using Ramwright.Web.Pages;

namespace Ramwright.Web.Tests.Components;

public sealed class ProofPagesTest : BenchContext
{
    public ProofPagesTest() => DefaultWaitTimeout = TimeSpan.FromSeconds(10);

    private string Log => ReadingLog.PathFor(Folder.Path("wherry-yard"));

    private IRenderedComponent<T> Page<T>(bool readings = false, string who = "Ines")
        where T : ProofView
    {
        Folder.Copy("wherry-yard");
        if (readings)
            File.Copy(Path.Combine(Repository.Folder("examples"), "wherry-yard.readings"), Log, overwrite: true);
        Services.GetRequiredService<ViewChoice>().Who = who;
        return Render<T>(p => p.Add(x => x.Name, "wherry-yard"));
    }

    /// <summary>Touches the page on its own thread, so that no drawing comes between finding and touching.</summary>
    private static void On<T>(IRenderedComponent<T> page, Action touch)
        where T : ProofView =>
        page.InvokeAsync(touch).GetAwaiter().GetResult();

    /// <summary>Closes the steps before one.</summary>
    private static void OnTo(IRenderedComponent<ProvePage> page, int step)
    {
        for (int i = 1; i < step; i++)
        {
            On(page, () => page.Find("#held").Click());
            page.WaitForAssertion(() => Assert.Contains($"Step {i + 1} of 13", page.Find("#step").TextContent, StringComparison.Ordinal));
        }
    }

    [Fact]
    public void AStepIsFilledInAndClosed()
    {
        IRenderedComponent<ProvePage> page = Page<ProvePage>();
        Assert.Contains("Step 1 of 13", page.Find("#step").TextContent, StringComparison.Ordinal);
        Assert.Empty(page.FindAll("#dial-opening"));        // parts are seated: no dial is read yet
        OnTo(page, 3);
        On(page, () => page.Find("#dial-opening").Change("0.18"));
        On(page, () => page.Find("#dial-crown").Change("0.06 mm"));
        On(page, () => page.Find("#step-gauge").Change("51"));
        On(page, () => page.Find("#held").Click());
        page.WaitForAssertion(() => Assert.Contains("Step 4 of 13", page.Find("#step").TextContent, StringComparison.Ordinal));
        ReadingLog log = ReadingLog.Load(Log);
        Assert.Empty(log.Faults);
        Reading[] dials = [.. log.Readings.Where(r => r.Kind == ReadingKind.Dial)];
        Assert.Equal(["opening", "crown"], dials.Select(d => d.At));
        Assert.All(dials, d => Near.Relative(51e5, d.Pressure!.Value, 1e-9));
        Assert.Equal(0.18e-3, dials[0].Value, 9);
        Assert.Equal([1, 2, 3], log.Readings.Where(r => r.Kind == ReadingKind.Done && r.Word == "held").Select(r => r.Step!.Value));
        Assert.All(log.Readings, r => Assert.Equal("Ines", r.Who));
    }

    [Fact]
    public void WhatTheOilPushesStandsApartFromWhatTheWorkFeels()
    {
        IRenderedComponent<ProvePage> page = Page<ProvePage>();

        string[] heads = [.. page.FindAll("#steps thead tr:nth-child(2) th").Select(h => h.TextContent)];
        Assert.Equal(["the oil pushes", "the work feels"], heads[..2]);
        string[] eighth = [.. page.FindAll("#steps tbody tr")[7].Children.Select(c => c.TextContent)];
        double pushes = double.Parse(eighth[2].Split(' ')[0], System.Globalization.CultureInfo.InvariantCulture), feels = double.Parse(eighth[3].Split(' ')[0], System.Globalization.CultureInfo.InvariantCulture);
        Assert.InRange(feels, 0.8 * pushes, 0.999 * pushes);
        OnTo(page, 3);
        Assert.Contains("The oil pushes", page.Find("#step").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void WithoutANameNothingIsWritten()
    {
        IRenderedComponent<ProvePage> page = Page<ProvePage>(who: "");
        On(page, () => page.Find("#held").Click());
        page.WaitForAssertion(() => Assert.Contains("who reads it", page.Find("#refused").TextContent, StringComparison.Ordinal));
        Assert.False(File.Exists(Log));
        On(page, () => page.Find("#who").Change("Jonas"));
        On(page, () => page.Find("#held").Click());
        page.WaitForAssertion(() => Assert.True(File.Exists(Log)));
    }

    [Fact]
    public void ADialThatCannotBeReadIsSaidAndNothingIsWritten()
    {
        IRenderedComponent<ProvePage> page = Page<ProvePage>();
        OnTo(page, 3);
        On(page, () => page.Find("#dial-opening").Change("0.18 bar"));
        On(page, () => page.Find("#held").Click());
        page.WaitForAssertion(() => Assert.NotEmpty(page.FindAll("#refused")));
        Assert.Equal(2, ReadingLog.Load(Log).Readings.Count);
        Assert.Contains("Step 3 of 13", page.Find("#step").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void ADialBeyondItsStopReadingStopsLoudly()
    {
        IRenderedComponent<ProvePage> page = Page<ProvePage>();
        Assert.Empty(page.FindAll(".halt"));
        OnTo(page, 3);
        On(page, () => page.Find("#dial-opening").Change("0.5 mm"));
        On(page, () => page.Find("#held").Click());
        page.WaitForAssertion(() => Assert.Contains("beyond its stop reading", page.Find(".halt").TextContent, StringComparison.Ordinal));
    }

    [Fact]
    public void TheDwellIsCountedDown()
    {
        IRenderedComponent<ProvePage> page = Page<ProvePage>();
        On(page, () => page.Find("#start-dwell").Click());
        page.WaitForAssertion(() => Assert.Matches("^(1:00|0:5[0-9])$", page.Find("#dwell").TextContent));
        page.WaitForAssertion(() => Assert.Matches("^0:5[0-8]$", page.Find("#dwell").TextContent));
        On(page, () => page.Find("#held").Click());
        page.WaitForAssertion(() => Assert.NotEmpty(page.FindAll("#start-dwell")));
    }

    [Fact]
    public void WhatIsLookedAtIsWrittenDown()
    {
        IRenderedComponent<ProvePage> page = Page<ProvePage>();
        On(page, () => page.Find("#task-gauge button").Click());
        page.WaitForAssertion(() => Assert.Equal("true", page.Find("#task-gauge button").GetAttribute("aria-pressed")));
        On(page, () => page.FindAll("#task-cracks button")[1].Click());
        page.WaitForAssertion(() => Assert.Contains("not in order", page.Find(".halt").TextContent, StringComparison.Ordinal));
        Assert.Equal(["gauge", "cracks"], ReadingLog.Load(Log).Readings.Select(r => r.At));
    }

    [Fact]
    public void AnyReadingCanBeWrittenAndGivesTheTrueForce()
    {
        IRenderedComponent<ProvePage> page = Page<ProvePage>();
        On(page, () => page.Find("#entry-kind").Change("instrument"));
        On(page, () => page.Find("#entry-value").Change("G1"));
        On(page, () => page.Find("#entry-measures").Change("pressure"));
        On(page, () => page.Find("#entry-range").Change("250 bar"));
        On(page, () => page.Find("#entry-class").Change("1"));
        On(page, () => page.Find("#entry form").Submit());
        page.WaitForAssertion(() => Assert.Contains("Written", page.Find("#entry-said").TextContent, StringComparison.Ordinal));
        On(page, () => page.Find("#entry-kind").Change("top-pressure"));
        On(page, () => page.Find("#entry-value").Change("212"));
        On(page, () => page.Find("#entry-instrument").Change("G1"));
        On(page, () => page.Find("#entry form").Submit());
        page.WaitForAssertion(() => Assert.Equal(2, ReadingLog.Load(Log).Readings.Count));
        IRenderedComponent<MeasuredPage> measured = Render<MeasuredPage>(p => p.Add(x => x.Name, "wherry-yard"));
        Assert.Matches(@"\d+\.\d+ t ± \d+\.\d+ t \(k = .*sold as 30 t", measured.Find("#true-force").TextContent);
    }

    [Fact]
    public void ASlippedDigitIsRefusedAndOneInTheLogIsStruckOut()
    {
        IRenderedComponent<ProvePage> page = Page<ProvePage>();
        On(page, () => page.Find("#entry-kind").Change("top-pressure"));
        On(page, () => page.Find("#entry-value").Change("2120"));
        On(page, () => page.Find("#entry form").Submit());
        page.WaitForAssertion(() => Assert.Contains("can show", page.Find("#entry-said").TextContent, StringComparison.Ordinal));
        Assert.False(File.Exists(Log));

        ReadingLog.Append(Log, "2026-05-09 Ines top-pressure 2120 bar");
        page.WaitForAssertion(() => Assert.Contains("line 1: 2120 bar", page.Find(".halt").TextContent, StringComparison.Ordinal));
        On(page, () => page.Find("#entry-kind").Change("strike"));
        On(page, () => page.Find("#entry-value").Change("1"));
        On(page, () => page.Find("#entry form").Submit());
        page.WaitForAssertion(() => Assert.Empty(page.FindAll(".halt")));
        Assert.Contains("top-pressure 2120 bar", page.Find("#log s").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void ABadEntryIsSaidInTheLogsOwnWords()
    {
        IRenderedComponent<ProvePage> page = Page<ProvePage>();
        On(page, () => page.Find("#entry-kind").Change("bore"));
        On(page, () => page.Find("#entry-value").Change("125 bar"));
        On(page, () => page.Find("#entry form").Submit());
        page.WaitForAssertion(() => Assert.Contains("fault", page.Find("#entry-said").ClassName!, StringComparison.Ordinal));
        Assert.False(File.Exists(Log));
    }

    [Fact]
    public void WhatTheCommandLineAddsIsSeen()
    {
        IRenderedComponent<ProvePage> page = Page<ProvePage>();
        ReadingLog.Append(Log, "2026-05-09 Jonas look ok at=relief");
        page.WaitForAssertion(() => Assert.Equal("true", page.Find("#task-relief button").GetAttribute("aria-pressed")));
    }

    [Fact]
    public void MeasuredShowsBudgetPlotsWithErrorBarsAndTheRecord()
    {
        IRenderedComponent<MeasuredPage> page = Page<MeasuredPage>(readings: true);
        Assert.Contains("to improve first", page.Find("#force").TextContent, StringComparison.OrdinalIgnoreCase);
        Assert.Equal(3, page.FindAll("#stiffness .plot").Count);
        // bars up and across with a stop at each end: more lines than readings
        Assert.True(page.FindAll("#at-opening .wide svg line, #at-opening .wide svg polyline, #at-opening .wide svg path").Count > 20);
        Assert.Contains("does not belong", page.Find("#pump").TextContent, StringComparison.Ordinal);
        Assert.Contains("no inspection by a third party", page.Find("#record").TextContent, StringComparison.Ordinal);
        Assert.Empty(page.FindAll("#why"));
    }

    [Fact]
    public void ASofterPressIsExplained()
    {
        Folder.Copy("railing-shop");
        File.Copy(Path.Combine(Repository.Folder("examples"), "railing-shop.readings"), ReadingLog.PathFor(Folder.Path("railing-shop")));
        IRenderedComponent<MeasuredPage> page = Render<MeasuredPage>(p => p.Add(x => x.Name, "railing-shop"));
        Assert.StartsWith("upper arm joint", page.Find("#why .suspects li div:nth-child(2) b").TextContent, StringComparison.Ordinal);
        Assert.NotEmpty(page.FindAll(".halt"));
    }

    [Fact]
    public void AFaultIsFoundByAsking()
    {
        IRenderedComponent<UpkeepPage> page = Page<UpkeepPage>();
        Assert.Empty(page.FindAll("#suspects"));
        On(page, () => page.FindAll(".symptoms button").Single(b => b.TextContent.Contains("howls", StringComparison.Ordinal)).Click());
        string before = page.Find("#next-test .ask").TextContent;
        Assert.NotEmpty(page.Find("#suspects").TextContent);
        Assert.Contains("gauge at zero", page.Find("#before-opening").TextContent, StringComparison.Ordinal);
        On(page, () => page.FindAll("#next-test button")[0].Click());
        Assert.NotEqual(before, page.Find("#next-test .ask").TextContent);
        Assert.Contains("take back", page.Find("#faults-found").TextContent, StringComparison.Ordinal);
        On(page, () => page.FindAll("#faults-found button").Single(b => b.TextContent.Contains("Write these signs", StringComparison.Ordinal)).Click());
        page.WaitForAssertion(() => Assert.Equal(2, ReadingLog.Load(Log).Readings.Count(r => r.Kind == ReadingKind.Sign)));
    }

    [Fact]
    public void ServiceDoneTodayIsNoLongerDue()
    {
        IRenderedComponent<UpkeepPage> page = Page<UpkeepPage>();
        ReadingLog.Append(Log, "2019-05-09 Jonas note \"built\"");
        page.WaitForAssertion(() => Assert.Contains(page.FindAll(".due li.bad"), l => l.QuerySelector("b")!.TextContent == "oil change"));
        page.InvokeAsync(() => page.FindAll(".due li").Single(l => l.QuerySelector("b")!.TextContent == "oil change").QuerySelector("button")!.Click());
        page.WaitForAssertion(() => Assert.DoesNotContain(page.FindAll(".due li.bad"), l => l.QuerySelector("b")!.TextContent == "oil change"));
    }

    [Fact]
    public void BrokenLinesOfTheLogAreShownWithTheirNumber()
    {
        Folder.Copy("wherry-yard");
        File.WriteAllText(Log, "2026-05-09 Ines bore 125 mm\n<b>whatever</b>\n2026-05-09 Ines bo");
        IRenderedComponent<ProvePage> page = Render<ProvePage>(p => p.Add(x => x.Name, "wherry-yard"));
        string faults = page.Find("#log .faults").TextContent;
        Assert.Contains("line 2:", faults, StringComparison.Ordinal);
        Assert.Contains("line 3:", faults, StringComparison.Ordinal);
        Assert.Empty(page.FindAll("#log .faults li b"));
    }
}
