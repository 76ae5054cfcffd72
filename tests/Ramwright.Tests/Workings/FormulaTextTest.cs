using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Tests.Workings;

/// <summary>a = 2, b = 3, c = 5, d = 7, x = −4 and a few symbols as the standards write them.</summary>
public class FormulaTextTest
{
    private static readonly Given[] Givens =
    [
        ("a", 2, Dimension.Number), ("b", 3, Dimension.Number), ("c", 5, Dimension.Number), ("d", 7, Dimension.Number),
        ("x", -4, Dimension.Number), ("b_eff", 11, Dimension.Length), ("γ_M2", 1.25, Dimension.Number),
        ("F'", 13, Dimension.Force), ("σ₁", 17, Dimension.Stress), ("R_p0.2", 19, Dimension.Stress), ("e", 23, Dimension.Length),
        ("Δp", 29, Dimension.Pressure),
    ];

    [Theory]
    [InlineData("a", 2)]
    [InlineData("a b", 6)]
    [InlineData("2 a b c", 60)]
    [InlineData("2a", 4)]
    [InlineData("a + b c", 17)]
    [InlineData("a − b − c", -6)]
    [InlineData("a - b", -1)]
    [InlineData("−a²", -4)]
    [InlineData("(−a)²", 4)]
    [InlineData("−a b + c", -1)]
    [InlineData("a · b", 6)]
    [InlineData("a*b", 6)]
    [InlineData("a × b", 6)]
    [InlineData("c / a", 2.5)]
    [InlineData("d / a / c", 0.7)]
    [InlineData("d / a · c", 17.5)]
    [InlineData("d / (a c)", 0.7)]
    [InlineData("a b / c", 1.2)]
    [InlineData("a b / (c d)", 6.0 / 35)]
    [InlineData("c / a + b c", 17.5)]
    [InlineData("(a + b)(c − d)", -10)]
    [InlineData("a (b + c)", 16)]
    [InlineData("a(b + c)", 16)]
    [InlineData("(b + c)a", 16)]
    [InlineData("((a))", 2)]
    [InlineData("a²", 4)]
    [InlineData("b³", 27)]
    [InlineData("a⁴", 16)]
    [InlineData("a¹⁰", 1024)]
    [InlineData("a⁻¹", 0.5)]
    [InlineData("a^b", 8)]
    [InlineData("a^-1", 0.5)]
    [InlineData("a^(b − 1)", 4)]
    [InlineData("a^2.5", 5.656854249492381)]
    [InlineData("a² b", 12)]
    [InlineData("a²b", 12)]
    [InlineData("a² / b", 4.0 / 3)]
    [InlineData("a b²", 18)]
    [InlineData("(a b)²", 36)]
    [InlineData("√(a + d)", 3)]
    [InlineData("√(a)√(a)", 2)]
    [InlineData("c / √(a + d)", 5.0 / 3)]
    [InlineData("√2 a", 2.8284271247461903)]
    [InlineData("(√a)²", 2)]
    [InlineData("∛(b³)", 3)]
    [InlineData("π a² / 4", Math.PI)]
    [InlineData("½ a b", 3)]
    [InlineData("(1/2) a b", 3)]
    [InlineData("1e-3 a", 0.002)]
    [InlineData("1.5e6", 1.5e6)]
    [InlineData("0.9·10⁻³", 0.0009)]
    [InlineData("min(a, b c, x)", -4)]
    [InlineData("max(a, b c, x)", 15)]
    [InlineData("abs(x) a", 8)]
    [InlineData("min(1, max(a, b) / 6)", 0.5)]
    [InlineData("sqrt(a d + a)", 4)]
    [InlineData("sin(π / 6)", 0.5)]
    [InlineData("cos(π / 3)²", 0.25)]
    [InlineData("tan(π / 4)", 1)]
    [InlineData("atan(1)", Math.PI / 4)]
    [InlineData("ln(exp(a))", 2)]
    [InlineData("log10(1000)", 3)]
    [InlineData("2 e", 46)]
    [InlineData("b_eff γ_M2", 13.75)]
    [InlineData("F' + σ₁", 30)]
    [InlineData("0.9 R_p0.2", 17.1)]
    [InlineData("Δp a", 58)]
    public void ComesTo(string formula, double expected) =>
        Near.Relative(expected, FormulaText.Evaluate(formula, Givens), 1e-14, formula);

    [Theory]
    [InlineData("", "missing")]
    [InlineData("a +", "missing")]
    [InlineData("a / b c", "reads in two ways")]
    [InlineData("a / b (c + d)", "reads in two ways")]
    [InlineData("1/2 a b", "reads in two ways")]
    [InlineData("a b / c d", "reads in two ways")]
    [InlineData("a / b² c", "reads in two ways")]
    [InlineData("√a²", "reads in two ways")]
    [InlineData("√(a)²", "reads in two ways")]
    [InlineData("a^b^c", "reads in two ways")]
    [InlineData("a²³^b", "reads in two ways")]
    [InlineData("10 000", "two numbers")]
    [InlineData("a · −b", "did not expect «−»")]
    [InlineData("a − −b", "did not expect «−»")]
    [InlineData("a⁻", "raised minus")]
    [InlineData("q", "«q» is not given")]
    [InlineData("ab", "«ab» is not given")]
    [InlineData("A", "«A» is not given")]
    [InlineData("a = b", "did not expect «=»")]
    [InlineData("= b", "right of the =")]
    [InlineData("(a + b", "closing bracket")]
    [InlineData("a + b)", "did not expect «)»")]
    [InlineData("(a, b)", "did not expect «,»")]
    [InlineData("sin a", "in brackets")]
    [InlineData("sin(a, b)", "one argument")]
    [InlineData("min(a)", "two or more")]
    [InlineData("1.2.3", "no number")]
    [InlineData("a $ b", "did not expect «$»")]
    public void RefusesWhatReadsInTwoWaysOrInNone(string formula, string because)
    {
        var e = Assert.Throws<FormatException>(() => FormulaText.Evaluate(formula, Givens));
        Assert.Contains(because, e.Message);
    }

    [Theory]
    [InlineData("1 / (a − 2)")]
    [InlineData("√(x)")]
    [InlineData("ln(0)")]
    public void RefusesAValueThatIsNotFinite(string formula) =>
        Assert.Throws<ArithmeticException>(() => FormulaText.Evaluate(formula, Givens));

    [Theory]
    [InlineData("sin")]
    [InlineData("π")]
    [InlineData("p,max")]
    [InlineData("2a")]
    [InlineData("a b")]
    [InlineData("")]
    public void RefusesASymbolThatAFormulaCannotCarry(string symbol) =>
        Assert.Throws<FormatException>(() => FormulaText.Evaluate("1", (Given)(symbol, 1, Dimension.Number)));

    [Fact]
    public void RefusesASymbolGivenTwice() =>
        Assert.Throws<FormatException>(() => FormulaText.Evaluate("a", ("a", 1, Dimension.Number), ("a", 2, Dimension.Number)));
}
