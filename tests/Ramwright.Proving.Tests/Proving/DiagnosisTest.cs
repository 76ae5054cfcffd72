using Ramwright.Ladders;
using Ramwright.Proving;

namespace Ramwright.Tests.Proving;

public class DiagnosisTest
{
    private static Diagnosis Of(PressCheck check, IReadOnlyDictionary<string, double> truth, ulong seed = 11) =>
        Diagnosis.Of(check, Stiffness.Of(check, ProvedPress.Book(check, new MadeUpReadings(check, seed).Dials(truth, 2e-6))))!;

    [Theory]
    [InlineData("wherry-yard", "section of the crown", 0.5)]
    [InlineData("wherry-yard", "section of the bed", 0.5)]
    [InlineData("wherry-yard", "section of the upright", 0.35)]
    [InlineData("wherry-yard", "crown joint", 0.2)]
    [InlineData("wherry-yard", "bed joint", 0.2)]
    [InlineData("drainage-mill-puller", "section of the far end", 0.5)]
    [InlineData("drainage-mill-puller", "tie rods", 0.6)]
    public void TheThingThatWasChangedIsFoundFirst(string example, string change, double factor)
    {
        PressCheck check = ProvedPress.Press(example);
        Diagnosis why = Of(check, MadeUpReadings.Changed(check, change, factor, joints: true));
        Assert.Equal(change, why.Explanations[0].Name);
        Assert.True(why.Explanations[0].Misfit < why.MisfitAsSaid / 3, $"{why.Explanations[0].Misfit} of {why.MisfitAsSaid}");
        Assert.InRange(why.Explanations[0].Factor, factor * 0.6, Math.Min(1, factor * 1.6));
        Near.Absolute(1, why.Explanations.Sum(e => e.Weight), 1e-9, "weights");
        foreach ((string place, double measured, double explained) in why.Explanations[0].Shown)
            Near.Absolute(measured, explained, 0.03 * MadeUpReadings.AsSaid(check)["opening"] + 0.08 * measured, place);
    }

    [Fact]
    public void WithoutADialAcrossTheJointSlipAndLongUprightsLookAlikeAndThatIsSaid()
    {
        PressCheck check = ProvedPress.Press("wherry-yard");
        Diagnosis why = Of(check, MadeUpReadings.Changed(check, "crown joint", 0.2));
        Assert.EndsWith("joint", why.Explanations[0].Name, StringComparison.Ordinal);
        Assert.Contains("crown-joint", why.Warning, StringComparison.Ordinal);
    }

    [Fact]
    public void DialsAllOffAlikePointToTheForce()
    {
        PressCheck check = ProvedPress.Press("wherry-yard");
        Diagnosis why = Of(check, MadeUpReadings.AsSaid(check).ToDictionary(p => p.Key, p => 1.25 * p.Value));
        Assert.Equal("the force itself", why.Explanations[0].Name);
        Near.Relative(0.8, why.Explanations[0].Factor, 0.06, "factor");
    }

    [Fact]
    public void AMissingWeldOnAnOpenFrontIsFound()
    {
        PressCheck check = ProvedPress.Press("railing-shop");
        string joint = ModelChange.Of(check.Response).First(c => c.Says.Contains("weld", StringComparison.Ordinal)).Name;
        IReadOnlyDictionary<string, double> truth = MadeUpReadings.Changed(check, joint, 0.02);
        IReadOnlyDictionary<string, double> asSaid = MadeUpReadings.AsSaid(check);
        Assert.True(truth["opening"] > 1.2 * asSaid["opening"]);
        Diagnosis why = Of(check, truth);
        Assert.Equal(joint, why.Explanations[0].Name);
    }

    [Fact]
    public void OneDialCannotTellAndThatIsSaid()
    {
        PressCheck check = ProvedPress.Press("wherry-yard");
        double opening = MadeUpReadings.Changed(check, "section of the crown", 0.4)["opening"];
        Diagnosis why = Of(check, new Dictionary<string, double> { ["opening"] = opening });
        Assert.Equal(1, why.Places);
        Assert.Contains("One dial alone", why.Warning, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("wherry-yard")]
    [InlineData("railing-shop")]
    [InlineData("drainage-mill-puller")]
    [InlineData("salvage")]
    public void AFactorOfOneChangesNothingAndLessIsNeverStiffer(string example)
    {
        PressCheck check = ProvedPress.Press(example);
        double before = MadeUpReadings.AsSaid(check)["opening"];
        foreach (ModelChange change in ModelChange.Of(check.Response))
        {
            Near.Relative(before, MadeUpReadings.Changed(check, change.Name, 1)["opening"], 1e-9, change.Name);
            double half = MadeUpReadings.Changed(check, change.Name, Math.Max(change.Least, 0.5))["opening"], least = MadeUpReadings.Changed(check, change.Name, change.Least)["opening"];
            Assert.True(half >= before * (1 - 1e-9) && least >= half * (1 - 1e-9), $"{change.Name}: {before} {half} {least}");
        }
    }
}
