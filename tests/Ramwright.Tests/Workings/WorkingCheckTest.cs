using Ramwright.Quantities;
using Ramwright.Workings;
using Xunit.Sdk;

namespace Ramwright.Tests.Workings;

public class WorkingCheckTest
{
    private static readonly Citation Statics = Citation.Mechanics("statics");

    [Fact]
    public void HoldsWhenTextAndCodeAgree()
    {
        double d = 0.1, p = 70e6;
        var w = new Working();
        double A = w.Step("A", "piston area", "π d² / 4", Math.PI * d * d / 4, Dimension.Area, Statics, ("d", d, Dimension.Length));
        w.Step("F", "force", "p A", p * A, Dimension.Force, Statics, ("p", p, Dimension.Pressure), ("A", A, Dimension.Area));
        w.Take("f_y", "yield strength", 235e6, Dimension.Stress, Statics);

        WorkingCheck.Holds(w);
    }

    [Theory]
    [InlineData("p A", 6.0001, "F (force) = p A: the text comes to 6, the code to 6.0001")]
    [InlineData("p A", double.NaN, "NaN")]
    [InlineData("p + 1", 3, "A is given but does not occur")]
    [InlineData("p A k", 6, "«k» is not given")]
    [InlineData("p / (A − 3)", 6, "∞")]
    [InlineData("", 6, "nothing to hold it to")]
    public void NamesTheStepThatDoesNotHold(string formula, double recorded, string complaint)
    {
        var w = new Working();
        w.Step("F", "force", formula, recorded, Dimension.Force, Statics, ("p", 2, Dimension.Pressure), ("A", 3, Dimension.Area));

        var e = Assert.Throws<FailException>(() => WorkingCheck.Holds(w));

        Assert.Contains(complaint, e.Message.Replace("Infinity", "∞"));
    }

    [Fact]
    public void AllowsNothingBeyondRounding()
    {
        var w = new Working();
        w.Step("x", "x", "a", 1 + 2e-9, Dimension.Number, Statics, ("a", 1, Dimension.Number));

        Assert.Throws<FailException>(() => WorkingCheck.Holds(w));
    }
}
