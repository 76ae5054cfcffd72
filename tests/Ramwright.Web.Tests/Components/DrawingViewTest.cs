using Bunit;
using Ramwright.Ladders;
using Ramwright.Quantities;
using Ramwright.Web.Bench;

namespace Ramwright.Web.Tests.Components;

public sealed class DrawingViewTest : BenchContext
{
    private readonly PressCheck _check = Check("railing-shop");
    private readonly ViewChoice _view = new();
    private string _part = "";

    private IRenderedComponent<DrawingView> Drawing(string part = "") =>
        Render<DrawingView>(p => p.Add(d => d.Check, _check).Add(d => d.View, _view).Add(d => d.Part, part).Add(d => d.PartChanged, chosen => _part = chosen));

    private string Share(string part, double force) =>
        $"{part} ({_check.Ladder.Rungs.Where(r => r.Part == part || r.Part.StartsWith(part + " ", StringComparison.Ordinal)).Max(r => force / r.SafeTo) * 100:0} %)";

    [Fact]
    public void PartsCarryTheirShareAtTheForceLookedAt()
    {
        IRenderedComponent<DrawingView> drawing = Drawing();
        Assert.Contains(Share("upper arm", _check.Rig.Wanted), drawing.Markup, StringComparison.Ordinal);

        drawing.Find("#own-force").Change("5 t");

        Assert.Equal(LookAt.Own, _view.At);
        Assert.Contains(Share("upper arm", 5 * 9806.65), drawing.Markup, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("5 tons")]
    [InlineData("-5 t")]
    [InlineData("0 t")]
    [InlineData("<b>")]
    public void AForceThatIsNoneIsToldAndTheOldOneStays(string typed)
    {
        IRenderedComponent<DrawingView> drawing = Drawing();

        drawing.Find("#own-force").Change(typed);

        Assert.NotEmpty(drawing.Find("#own-fault").TextContent);
        Assert.Equal(LookAt.Wanted, _view.At);
    }

    [Fact]
    public void HowItBendsShowsTheTrueFigureInTheChosenLoadCase()
    {
        IRenderedComponent<DrawingView> drawing = Drawing();
        drawing.Find("#bent").Click();
        string Growth(int at) => $"the daylight grows by {Readout.Text(_check.Rig.Wanted * _check.Response.Growth(at), Dimension.Length)}";
        Assert.Contains(Growth(_check.WorstOpening.Case), drawing.Markup, StringComparison.Ordinal);

        drawing.Find("#bent-case").Change("0");

        Assert.Contains(Growth(0), drawing.Markup, StringComparison.Ordinal);
    }

    [Fact]
    public void AChosenPartLiesOpenWithItsRungsAndTheWayToItsValues()
    {
        Drawing().FindAll("[data-pick]").Single(b => b.TextContent == "column").Click();
        Assert.Equal("column", _part);

        IRenderedComponent<DrawingView> drawing = Drawing("column");
        Assert.Equal(_check.Ladder.Rungs.Count(r => PartPaths.Concerns(r, "column")), drawing.FindAll(".picked tbody tr").Count);
        Assert.Equal("frame.column", drawing.Find(".picked .small").GetAttribute("data-goto"));
    }
}
