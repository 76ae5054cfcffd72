using AngleSharp.Dom;
using Bunit;
using Microsoft.AspNetCore.Components.Web;
using Ramwright.Quantities;
using Ramwright.Web.Bench;
using Ramwright.Web.Opened;

namespace Ramwright.Web.Tests.Components;

public sealed class ValueFieldTest : BenchContext
{
    private readonly OpenPress _press;
    private readonly IRenderedComponent<FormView> _form;

    public ValueFieldTest()
    {
        _press = new OpenPress(Folder.Copy("wherry-yard"));
        var desk = new EditDesk(_press);
        _form = Render<FormView>(p => p.Add(f => f.Now, _press.Now).Add(f => f.Desk, desk).Add(f => f.Units, UnitSystem.Metric));
    }

    private IElement Field(string path) => _form.Find($"[id='in-{path}']");

    private void Again() => _form.Render(p => p.Add(f => f.Now, _press.Now));

    [Fact]
    public void WhatIsTypedStandsInTheFileAtOnce()
    {
        Field("pump.relief").Focus();
        Field("pump.relief").Input("150 bar");

        _form.WaitForAssertion(() => Assert.Contains("relief: 150 bar", _press.Now.Text, StringComparison.Ordinal));
    }

    [Fact]
    public void ATypingErrorIsToldAtItsFieldAndReadAloud()
    {
        Field("pump.relief").Focus();
        Field("pump.relief").Input("150 bat");
        _form.WaitForAssertion(() => Assert.Single(_press.Now.Read.Faults));
        Again();

        IElement field = Field("pump.relief");
        Assert.Equal("true", field.GetAttribute("aria-invalid"));
        string told = _form.Find($"[id='{field.GetAttribute("aria-describedby")!.Split(' ')[0]}']").TextContent;
        Assert.Contains(_press.Now.Read.Faults[0].Found, told, StringComparison.Ordinal);
    }

    [Fact]
    public void StockIsPickedByKindAndSizeWithTheKeyboard()
    {
        const string path = "frame.crown.section";
        Field(path).Focus();
        Field(path).Input("100x50 channel");
        _form.WaitForAssertion(() => Assert.NotEmpty(_form.FindAll($"[id='list-{path}'] [role=option]")), TimeSpan.FromSeconds(20));
        IReadOnlyList<IElement> options = _form.FindAll($"[id='list-{path}'] [role=option]");
        Assert.Equal("true", Field(path).GetAttribute("aria-expanded"));
        string first = options[0].TextContent;

        Field(path).KeyDown(new KeyboardEventArgs { Key = "ArrowDown" });
        _form.WaitForAssertion(() => Assert.Equal($"list-{path}-0", Field(path).GetAttribute("aria-activedescendant")), TimeSpan.FromSeconds(20));
        Field(path).KeyDown(new KeyboardEventArgs { Key = "Enter" });

        _form.WaitForAssertion(() => Assert.Contains($"crown: {{ section: {first}", _press.Now.Text, StringComparison.Ordinal), TimeSpan.FromSeconds(20));
        _form.WaitForAssertion(() => Assert.Empty(_form.FindAll($"[id='list-{path}'] [role=option]")), TimeSpan.FromSeconds(20));
    }

    [Fact]
    public void EveryFieldHasALabelOfItsOwn()
    {
        foreach (IElement field in _form.FindAll("input, select"))
            Assert.NotEmpty(_form.Find($"label[for='{field.Id}']").TextContent.Trim());
    }
}
