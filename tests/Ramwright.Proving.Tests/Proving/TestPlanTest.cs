using Ramwright.Ladders;
using Ramwright.Power;
using Ramwright.Presses;
using Ramwright.Proving;
using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Tests.Proving;

public class TestPlanTest
{
    public static TheoryData<string> Examples => ["wherry-yard", "railing-shop", "drainage-mill-puller", "salvage"];

    [Fact]
    public void AStructureIsProvedAtFiveQuartersOfItsRating()
    {
        var row = new Reference("UP-13", "EN 13155-style static proof of lifting gear", Trust.FromMemory);
        PressCheck check = ProvedPress.Press("wherry-yard");
        var w = new Working();
        var proof = ProofForce.Of(check, w: w);
        row.Near("proof over safe rating", 1.25, proof.Force / check.Ladder.SafeRating, 1e-9);
        row.Exactly("dwell, s", 600.0, TestPlan.Of(check).Steps.Single(s => s.What.StartsWith("PROOF", StringComparison.Ordinal)).Dwell);
        WorkingCheck.Holds(w);
    }

    [Theory, MemberData(nameof(Examples))]
    public void NoProofComesNearerThanATenthToWhatBreaksAPart(string example)
    {
        PressCheck check = ProvedPress.Press(example);
        foreach (double factor in new[] { 1, 1.25, 1.6, 3 })
        {
            TestPlan plan = TestPlan.Of(check, factor: factor);
            Assert.True(plan.Proof.Force <= factor * check.Ladder.SafeRating * (1 + 1e-9));
            foreach (Rung rung in check.Ladder.Rungs.Where(r => r.MustSurvive))
            {
                Assert.True(plan.Proof.Force <= rung.GivesAt * rung.PressureScale / 1.1 * (1 + 1e-9), $"{rung.Id} at {factor}");
                // every step is a pressure: nothing lost, its thrust is the most the frame can feel
                Assert.All(plan.Steps, s => Assert.True(s.Pressure * check.Power.Areas.Force <= rung.GivesAt * rung.PressureScale / 1.1 * (1 + 1e-9)));
            }
        }
    }

    [Fact]
    public void WhatHoldsTheProofBackIsNamed()
    {
        PressCheck check = ProvedPress.Press("wherry-yard");
        var proof = ProofForce.Of(check, 1.9);
        Rung lowest = check.Ladder.Rungs.Where(r => r.MustSurvive).MinBy(r => r.GivesAt * r.PressureScale)!;
        Assert.Same(lowest, proof.Holds);
        Near.Relative(lowest.GivesAt * lowest.PressureScale / 1.1, proof.Force, 1e-12, "proof");
        Assert.Contains(lowest.Part, proof.Reason(UnitSystem.Metric), StringComparison.Ordinal);
    }

    [Fact]
    public void APumpThatCannotReachItIsSaid()
    {
        PressCheck check = ProvedPress.Press("railing-shop", "air-pressure: 6.3 bar", "air-pressure: 2.6 bar");
        var proof = ProofForce.Of(check);
        Assert.True(proof.OutOfReach);
        Near.Relative(check.Power.MostPossibleForce, proof.Force, 1e-9, "proof");
        Assert.Contains("cannot make more", proof.Reason(UnitSystem.Metric), StringComparison.Ordinal);
    }

    [Theory, MemberData(nameof(Examples))]
    public void StepsGoUpProveComeDownAndRepeatTheRating(string example)
    {
        PressCheck check = ProvedPress.Press(example);
        TestPlan plan = TestPlan.Of(check);
        Assert.Equal(Enumerable.Range(1, plan.Steps.Count), plan.Steps.Select(s => s.Number));
        PlanStep proof = plan.Steps.MaxBy(s => s.Pressure)!;
        Assert.InRange(proof.Thrust, plan.Proof.Force * 0.97, plan.Proof.Force * (1 + 1e-9));
        PlanStep[] before = [.. plan.Steps.Where(s => s.Number > 2 && s.Number <= proof.Number)];
        Assert.Equal(before.Select(s => s.Pressure).Order(), before.Select(s => s.Pressure));
        Assert.Contains(plan.Steps, s => s.Number > proof.Number && s.Way == Way.Up && s.Pressure < proof.Pressure);
        Assert.Equal(0, plan.Steps[^1].Pressure);
        foreach (PlanStep step in plan.Steps)
        {
            Near.Absolute(RamForce.Net(step.Pressure, check.Power.Areas.Force, check.Rig.Cylinder.SealFriction, OilToRam.SpringOf(check.Rig.Cylinder).Value), step.RamForce, 1e-6, "ram force");
            Assert.All(step.Dials, d => Assert.True(d.StopAt > d.Expected));
        }
    }

    [Fact]
    public void DialsShowWhatTheFrameDoes()
    {
        PressCheck check = ProvedPress.Press("wherry-yard");
        var points = DialPoint.Of(check.Response).ToDictionary(p => p.Name, p => p.PerNewton);
        // the dies sink into the webs besides; that no dial beside them shows
        Near.Relative(check.Response.DaylightGrowth - check.Response.Plan.Pressing, points["opening"], 1e-9, "opening");
        Assert.True(points["crown"] > 0 && points["bed"] > 0 && points["crown"] + points["bed"] < points["opening"]);
        PressCheck open = ProvedPress.Press("railing-shop");
        var arms = DialPoint.Of(open.Response).ToDictionary(p => p.Name, p => p.PerNewton);
        Assert.True(arms["throat"] > 0 && arms["throat"] < arms["opening"]);
    }

    [Fact]
    public void EveryJointIsLookedAt()
    {
        Assert.Contains(TestPlan.Of(ProvedPress.Press("wherry-yard")).Looks, t => t.Name == "bolts-crown-joint" && t.What.Contains("M24", StringComparison.Ordinal));
        Assert.Contains(TestPlan.Of(ProvedPress.Press("railing-shop")).Looks, t => t.Name.StartsWith("weld-", StringComparison.Ordinal));
        Assert.Contains(TestPlan.Of(ProvedPress.Press("drainage-mill-puller")).Looks, t => t.Name == "tie-rods");
    }

    [Fact]
    public void ItSpeaksTheReadersUnits()
    {
        TestPlan plan = TestPlan.Of(ProvedPress.Press("wherry-yard"), UnitSystem.Imperial);
        Assert.Contains("psi", plan.Steps[2].Setting, StringComparison.Ordinal);
        Assert.DoesNotContain(plan.Looks.Concat(plan.Unloaded).Concat(plan.Measures), t => System.Text.RegularExpressions.Regex.IsMatch(t.What, @"\d bar"));
        // set points are round numbers of the gauge
        Assert.All(plan.Steps, s => Near.Absolute(Math.Round(s.Pressure / 68947.57) * 68947.57, s.Pressure, 10, "psi by ten"));
    }

    [Fact]
    public void APressThatIsNotSafeToItsReliefIsNotHandedBackToIt()
    {
        PressCheck weak = ProvedPress.Press("wherry-yard", "relief: 215 bar", "relief: 250 bar");
        var use = SettingInUse.Of(weak);
        Assert.False(use.IsSafe);
        TestPlan plan = TestPlan.Of(weak, UnitSystem.Imperial);
        string below = $"at or below {SettingInUse.Below(use.Safe, UnitSystem.Imperial)}";
        Assert.Contains(plan.After, t => t.Name == "reset" && t.What.Contains(below, StringComparison.Ordinal) && t.What.Contains("not back to", StringComparison.Ordinal));
        Assert.Contains(plan.Looks, t => t.Name == "relief" && t.What.EndsWith("later " + below, StringComparison.Ordinal));

        // an air pump has no relief valve: its regulator is the limit
        PressCheck air = ProvedPress.Press("railing-shop");
        double ratio = ((RigAirPump)air.Rig.Pump).EffectiveRatio;
        Assert.Contains(TestPlan.Of(air).After, t => t.What.StartsWith($"air regulator at or below {SettingInUse.Below(SettingInUse.Of(air).Safe / ratio, UnitSystem.Metric)},", StringComparison.Ordinal));

        PressCheck sound = ProvedPress.Press("wherry-yard");
        Assert.True(SettingInUse.Of(sound).IsSafe);
        Assert.Contains(TestPlan.Of(sound).After, t => t.Name == "reset" && t.What.Contains("back to", StringComparison.Ordinal) && !t.What.Contains("not back", StringComparison.Ordinal));
    }

    [Theory, InlineData(1066.9, "1060 psi"), InlineData(1060.0, "1060 psi"), InlineData(999.96, "999 psi"), InlineData(87.19, "87.1 psi")]
    public void ALimitIsRoundedDownInTheUnitThatIsRead(double psi, string text) =>
        Assert.Equal(text, SettingInUse.Below(psi * 6894.757293168, UnitSystem.Imperial));

    [Theory]
    [InlineData("wherry-yard")]
    [InlineData("railing-shop")]
    [InlineData("drainage-mill-puller")]
    public void TheDialAtTheOpeningSeesTheDaylightLessWhatTheDiesSink(string example)
    {
        PressCheck check = ProvedPress.Press(example);
        DialPoint opening = DialPoint.Of(check.Response)[0];
        Assert.Equal(example != "drainage-mill-puller", opening.Unseen > 0);       // a hollow plunger has no dies
        Near.Relative(check.Response.DaylightGrowth, opening.PerNewton + opening.Unseen, 1e-12);
    }

    [Theory]
    [InlineData("wherry-yard")]
    [InlineData("railing-shop")]
    public void TheProofStepSaysBothItsForces(string example)
    {
        PressCheck check = ProvedPress.Press(example);
        var plan = TestPlan.Of(check);
        Assert.StartsWith("PROOF", plan.ProofStep.What, StringComparison.Ordinal);
        Assert.True(plan.ProofStep.Thrust <= plan.Proof.Force);
        Assert.True(plan.Proof.Pressure - plan.ProofStep.Pressure < 1e5, "within one mark of the gauge");
        string said = DialText.Forces(plan.ProofStep, UnitSystem.Metric);
        Assert.Contains(ForceText.Of(plan.ProofStep.Thrust, UnitSystem.Metric), said, StringComparison.Ordinal);
        Assert.Contains(ForceText.Of(plan.ProofStep.RamForce, UnitSystem.Metric), said, StringComparison.Ordinal);
    }
}
