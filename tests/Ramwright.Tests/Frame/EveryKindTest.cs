using Ramwright.Frame;
using Ramwright.Ladders;
using Ramwright.Presses;
using Ramwright.Workings;

namespace Ramwright.Tests.Frame;

/// <summary>What must hold for a frame of any kind.</summary>
public class EveryKindTest
{
    public static TheoryData<string> Names() => [.. Described.Kinds.Keys];

    [Theory, MemberData(nameof(Names))]
    public void EveryCaseBalances(string name)
    {
        FrameResponse response = FrameResponse.Of(FramePlan.Of(Described.Rig(Described.Kinds[name])));

        Assert.All(response.Solutions, s => Assert.True(Equilibrium.Residual(response.Plan.Model, s) < 1e-9, s.Case.Name));
    }

    /// <summary>Every load case is in balance by itself: the support holds the frame in place and carries nothing.</summary>
    [Theory, MemberData(nameof(Names))]
    public void TheSupportCarriesNothing(string name)
    {
        FrameResponse response = FrameResponse.Of(FramePlan.Of(Described.Rig(Described.Kinds[name])));

        foreach (FrameSolution s in response.Solutions)
        {
            foreach (Support support in response.Plan.Model.Supports)
            {
                (var force, var moment) = s.Reaction(support.Node);
                Near.Absolute(0, force.Length, 1e-9, $"{s.Case.Name}, force");
                Near.Absolute(0, moment.Length, 1e-9, $"{s.Case.Name}, moment");
            }
        }
    }

    /// <summary>The steel to be cut weighs about what the beams between their nodes weigh: ends overlap, nothing is lost.</summary>
    [Theory, MemberData(nameof(Names))]
    public void EveryKindHasItsSteel(string name)
    {
        FramePlan plan = FramePlan.Of(Described.Rig(Described.Kinds[name]));
        double beams = Enumerable.Range(0, plan.Model.Members.Count).Where(i => plan.Model.Members[i].Part != "tie rod")
            .Sum(i => plan.Model.Members[i].Section.A * MemberAxes.Of(plan.Model, i).Length * 7850);

        double steel = FrameBody.Of(Described.Rig(Described.Kinds[name])).Pieces.Where(p => p.Member.Part is not ("tie rod" or "sleeve")).Sum(p => p.Mass);

        Assert.InRange(steel / beams, 0.75, 1.8);
    }

    [Theory, MemberData(nameof(Names))]
    public void EveryRungsWorkingFollowsFromItsOwnText(string name)
    {
        PressCheck check = PressCheck.Of(Described.Rig(Described.Kinds[name]));

        Assert.All(check.Ladder.Rungs, rung =>
        {
            var working = new Working();
            rung.Work(working);
            WorkingCheck.Holds(working);
            Assert.Contains(working.Steps, s => Math.Abs(s.Si - rung.SafeTo) <= 1e-9 * rung.SafeTo);
            Assert.Contains(working.Steps, s => Math.Abs(s.Si - rung.GivesAt) <= 1e-9 * rung.GivesAt);
        });
    }
}
