using Ramwright.Ladders;
using Ramwright.Measuring;
using Ramwright.Proving;
using Ramwright.Workings;

namespace Ramwright.Tests.Proving;

public class StiffnessTest
{
    private static IReadOnlyList<Stiffness> Of(PressCheck check, IEnumerable<string> readings) => Stiffness.Of(check, ProvedPress.Book(check, readings));

    [Fact]
    public void ASlopeLeavesTheSeatingOut()
    {
        var row = new Reference("UP-09", "least squares by hand", Trust.OwnNumbers);
        var w = new Working();
        var line = LineFit.Of([20e3, 40e3, 60e3, 80e3, 100e3], [.26e-3, .42e-3, .59e-3, .74e-3, .91e-3], w);
        row.Near("slope, mm/kN", 0.00810, line.Slope * 1e6, 0.002);
        row.Near("intercept, mm", 0.098, line.Intercept * 1e3, 0.002);
        row.Near("k, kN/mm", 123.5, 1 / line.Slope / 1e6, 0.002);
        row.Near("residual, mm", 0.0052, line.Residual * 1e3, 0.02);
        row.Near("u_k, share", 0.010, line.SlopeU / line.Slope, 0.05);
        WorkingCheck.Holds(w);
    }

    [Theory]
    [InlineData("wherry-yard")]
    [InlineData("railing-shop")]
    [InlineData("drainage-mill-puller")]
    public void WhatTheModelDoesIsFoundAgain(string example)
    {
        PressCheck check = ProvedPress.Press(example);
        var made = new MadeUpReadings(check, 7);
        IReadOnlyList<Stiffness> found = Of(check, made.Dials(MadeUpReadings.AsSaid(check), 0.3e-6));
        Assert.NotEmpty(found);
        foreach (Stiffness s in found)
        {
            Near.Relative(s.Predicted, s.Measured!.Value, 0.02, s.Point.Name);
            Assert.False(s.IsSofter);
            Assert.False(s.IsSet);
            Assert.Empty(s.Outliers);
            Assert.InRange(s.Hysteresis!.Value, -0.05, 0.05);
            var w = new Working();
            s.Work(w);
            WorkingCheck.Holds(w);
            Near.Relative(s.Measured.Value, w.Steps.Single(x => x.Symbol == "k").Si, 1e-9, "k");
        }
    }

    [Fact]
    public void ASetBeyondTheDialStops()
    {
        PressCheck check = ProvedPress.Press("wherry-yard");
        string[] with = [.. new MadeUpReadings(check, 3).Dials(MadeUpReadings.AsSaid(check), 1e-6, set: 0.06e-3)];
        Assert.All(Of(check, with), s => Assert.True(s.IsSet));
        Assert.Contains(ProvedPress.Proof(check, with).Stops, s => s.Contains("a set of", StringComparison.Ordinal));
        string[] without = [.. new MadeUpReadings(check, 3).Dials(MadeUpReadings.AsSaid(check), 1e-6)];
        Assert.Empty(ProvedPress.Proof(check, without).Stops);
    }

    [Fact]
    public void HysteresisIsFoundAgain()
    {
        PressCheck check = ProvedPress.Press("wherry-yard");
        Stiffness opening = Of(check, new MadeUpReadings(check, 4).Dials(MadeUpReadings.AsSaid(check), 0.1e-6, loop: 0.08)).Single(s => s.Point.Name == "opening");
        Assert.InRange(opening.Hysteresis!.Value, 0.06, 0.10);
    }

    [Fact]
    public void AMisreadDialIsNamed()
    {
        PressCheck check = ProvedPress.Press("wherry-yard");
        string[] lines = [.. new MadeUpReadings(check, 5).Dials(new Dictionary<string, double> { ["opening"] = MadeUpReadings.AsSaid(check)["opening"] }, 1e-6)];
        int wrong = Array.FindIndex(lines, l => l.Contains("step=6", StringComparison.Ordinal));
        lines[wrong] = "dial 1.37 mm " + lines[wrong][lines[wrong].IndexOf("at=", StringComparison.Ordinal)..];
        Stiffness s = Assert.Single(Of(check, lines));
        Assert.Equal(wrong + 1, Assert.Single(s.Outliers).From.Line);
        Near.Relative(s.Predicted, s.Measured!.Value, 0.02, "without it");
    }

    [Fact]
    public void ADialBeyondItsStopReadingStops()
    {
        PressCheck check = ProvedPress.Press("wherry-yard");
        PlanStep step = TestPlan.Of(check).Steps[3];
        DialForecast dial = step.Dials.Single(d => d.Place == "opening");
        string Read(double x) => $"dial {ProvedPress.Mm(x)} at=opening pressure={ProvedPress.Bar(step.Pressure)} way=up";
        Assert.Empty(ProvedPress.Proof(check, "dial 0 mm at=opening pressure=0 bar way=up", Read(dial.StopAt * 0.99)).Stops);
        Assert.Single(ProvedPress.Proof(check, "dial 0 mm at=opening pressure=0 bar way=up", Read(dial.StopAt * 1.01)).Stops);
    }

    [Fact]
    public void TwoReadingsTellNoSlope()
    {
        PressCheck check = ProvedPress.Press("wherry-yard");
        Stiffness s = Assert.Single(Of(check, ["dial 0.4 mm at=opening pressure=100 bar", "dial 0.8 mm at=opening pressure=200 bar"]));
        Assert.Null(s.Measured);
        Assert.Null(s.Set);
    }
}
