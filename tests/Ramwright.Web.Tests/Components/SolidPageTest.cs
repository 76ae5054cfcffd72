using Bunit;
using Ramwright.Files;
using Ramwright.Solids;
using Ramwright.Web.Pages;
using Ramwright.Web.Solid;

namespace Ramwright.Web.Tests.Components;

public sealed class SolidPageTest : BenchContext
{
    [Fact]
    public void ItKeepsTheJointsWhenAskedAndSaysSoAfterwards()
    {
        JSInterop.Mode = JSRuntimeMode.Loose;
        Folder.Copy("railing-shop");
        IRenderedComponent<SolidPage> page = Render<SolidPage>(p => p.Add(s => s.Name, "railing-shop"));
        page.WaitForElement("#keep-joints", TimeSpan.FromSeconds(120));
        Assert.Contains("Keep them beside the press file", page.Markup, StringComparison.Ordinal);

        page.Find("#keep-joints").Click();

        page.WaitForAssertion(() => Assert.Contains("They are kept beside the press file", page.Markup, StringComparison.Ordinal), TimeSpan.FromSeconds(60));
        Assert.Empty(page.FindAll("#keep-joints"));
        Assert.True(File.Exists(JointsFile.PathOf(Folder.Path("railing-shop"))));

        page.Find("#drop-joints").Click();

        page.WaitForAssertion(() => Assert.False(File.Exists(JointsFile.PathOf(Folder.Path("railing-shop")))), TimeSpan.FromSeconds(60));
    }

    [Fact]
    public void TheFinerAnswerStandsAtTheEndInPlainWords()
    {
        JSInterop.Mode = JSRuntimeMode.Loose;
        Folder.Copy("wherry-yard");
        IRenderedComponent<SolidPage> page = Render<SolidPage>(p => p.Add(s => s.Name, "wherry-yard"));

        page.WaitForElement("#keep-joints", TimeSpan.FromSeconds(120));
        Assert.Empty(page.FindAll("#first-look"));
        page.WaitForAssertion(() => Assert.Empty(page.FindAll(".working-on")), TimeSpan.FromSeconds(60));
        Assert.DoesNotContain("grid", page.Markup.Replace("grid-", "", StringComparison.Ordinal), StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public void AFirstLookIsMarkedAndSaysWhetherMoreIsToCome()
    {
        CheckedPress press = CheckedPress.Of(PressOnDisk.Read(Example.Text("wherry-yard"), "x" + PressFile.Ending, "x"));
        SolidCheck? first = null;
        SolidCheck whole = SolidCheck.Of(press.Check!.Rig, cell: 0.04, progress: p => first ??= p.SoFar);
        string Words(SolidCheck of, bool solving) => Render<SolidFigures>(p => p.Add(f => f.Of, of).Add(f => f.Answer, of.Centred).Add(f => f.Check, press.Check!)
            .Add(f => f.Force, press.Check!.Rig.Wanted).Add(f => f.IsSolving, solving)).Markup;

        Assert.Contains("coarsely cut", Words(first!, true), StringComparison.Ordinal);
        Assert.Contains("The finer figures take its place", Words(first!, true), StringComparison.Ordinal);
        Assert.Contains("stopped before it was cut finer", Words(first!, false), StringComparison.Ordinal);
        Assert.DoesNotContain("coarsely cut", Words(whole, false), StringComparison.Ordinal);
    }

    [Fact]
    public void EveryStageOfASolveBringsWhatIsKnownAndItsShareOnlyGrows()
    {
        CheckedPress press = CheckedPress.Of(PressOnDisk.Read(Example.Text("railing-shop"), "x" + PressFile.Ending, "x"));
        var told = new List<SolidProgress>();

        SolidCheck whole = SolidCheck.Of(press.Check!.Rig, cell: 0.03, progress: told.Add);

        SolidCheck[] known = [.. told.Select(t => t.SoFar).OfType<SolidCheck>()];
        Assert.Equal(2, known.Length);
        Assert.Null(known[0].Centred.Coarse);
        Assert.Equal(whole.Centred.Coarse, known[0].Centred.Fine);
        Assert.Same(whole.Cases, known[1].Cases);
        Assert.Equal(told.Select(t => t.Share).Order(), told.Select(t => t.Share));
        Assert.InRange(told[^1].Share, 0.99, 1);
    }

    [Theory]
    [InlineData(0.5, 0.5, "")]
    [InlineData(10, 0.01, "")]
    [InlineData(4, 0.4, "about 6 s left")]
    [InlineData(8, 0.4, "about 10 s left")]
    [InlineData(12, 0.5, "about 10 s left")]
    [InlineData(12, 0.95, "nearly there")]
    public void WhatIsLeftIsSaidRoughlyAndNotBeforeItCanBeKnown(double seconds, double share, string says) =>
        Assert.Equal(says, SolidRun.LeftText(seconds, share));
}
