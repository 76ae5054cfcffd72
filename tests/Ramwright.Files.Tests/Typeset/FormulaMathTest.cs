using System.Xml.Linq;
using Ramwright.Files.Typeset;
using Ramwright.Ladders;
using Ramwright.Workings;

namespace Ramwright.Files.Tests.Typeset;

/// <summary>Formulas are set as a printer would set them, every one that the examples' working holds.</summary>
public class FormulaMathTest
{
    public static TheoryData<string> Examples => [.. Directory.GetFiles(TestFiles.InHouse("examples"), "*.press.yaml").Select(f => Path.GetFileName(f)!)];

    [Theory]
    [InlineData("a + b / c", "<mi>a</mi><mo>+</mo><mfrac><mrow><mi>b</mi></mrow><mrow><mi>c</mi></mrow></mfrac>")]
    [InlineData("F L³ / (48 E I)", "<mfrac><mrow><mi>F</mi><mo>\u2062</mo><msup><mrow><mi>L</mi></mrow><mrow><mn>3</mn></mrow></msup></mrow><mrow><mn>48</mn><mo>\u2062</mo><mi>E</mi><mo>\u2062</mo><mi>I</mi></mrow></mfrac>")]
    [InlineData("(a + b) c", "<mo>(</mo><mi>a</mi><mo>+</mo><mi>b</mi><mo>)</mo><mo>\u2062</mo><mi>c</mi>")]
    [InlineData("√(σ² + 3 τ²)", "<msqrt><mrow><msup><mrow><mi>σ</mi></mrow><mrow><mn>2</mn></mrow></msup><mo>+</mo><mn>3</mn><mo>\u2062</mo><msup><mrow><mi>τ</mi></mrow><mrow><mn>2</mn></mrow></msup></mrow></msqrt>")]
    [InlineData("abs(M_y) / W_ply", "<mfrac><mrow><mrow><mo>|</mo><msub><mi>M</mi><mtext>y</mtext></msub><mo>|</mo></mrow></mrow><mrow><msub><mi>W</mi><mtext>ply</mtext></msub></mrow></mfrac>")]
    [InlineData("min(a, b)", "<mi>min</mi><mo>\u2061</mo><mrow><mo>(</mo><mi>a</mi><mo separator=\"true\">,</mo><mi>b</mi><mo>)</mo></mrow>")]
    [InlineData("-x^(1 / m)", "<mo>−</mo><msup><mrow><mi>x</mi></mrow><mrow><mfrac><mrow><mn>1</mn></mrow><mrow><mi>m</mi></mrow></mfrac></mrow></msup>")]
    public void Is_set_as_printed(string formula, string wanted) =>
        Assert.Equal($"<math xmlns=\"http://www.w3.org/1998/Math/MathML\"><mrow>{wanted}</mrow></math>", FormulaMath.Expression(formula));

    [Theory]
    [InlineData("a +")]
    [InlineData("(a")]
    [InlineData("a = b")]
    [InlineData("a ) b")]
    public void What_is_no_formula_is_refused(string formula) => Assert.Throws<FormatException>(() => FormulaMath.Expression(formula));

    [Theory, MemberData(nameof(Examples))]
    public void Every_step_of_every_rung_can_be_set(string example)
    {
        PressCheck check = PressCheck.Of(PressOnDisk.Open(TestFiles.InHouse("examples", example)).Rig!);
        int set = 0;
        foreach (Rung rung in check.Ladder.Rungs)
        {
            var w = new Working();
            rung.Work(w);
            foreach (Step step in w.Steps.Where(s => s.Formula.Length > 0))
            {
                XElement math = XDocument.Parse(FormulaMath.Equation(step.Symbol, step.Formula)).Root!;
                foreach (Given given in step.Givens)
                    Assert.Contains(FormulaMath.Symbol(given.Symbol)[54..^14], math.ToString(SaveOptions.DisableFormatting), StringComparison.Ordinal);
                set++;
            }
        }

        Assert.True(set > 50);
    }
}
