using Ramwright.Frame;
using Ramwright.Ladders;
using Ramwright.Presses;
using Ramwright.Strength;
using Ramwright.Tests.Frame;
using Ramwright.Workings;

namespace Ramwright.Tests.Ladders;

public class BedHeightsTest
{
    private static Rig Press(double daylight, string pins) => Described.Rig($$"""
        kind: closed
        daylight: {{daylight:0.###}} mm
        width: 500 mm
        section: 2 x UPN 180
        steel: S275
        bed-pins: { diameter: 40 mm, steel: C45+QT, {{pins}} }
        """);

    private static Bolt M20(string grade)
    {
        Assert.True(Ramwright.Files.StockTables.Built.TryClass(grade, 0.02, out Ramwright.Stock.PropertyClass? found));
        return new Bolt(new Ramwright.Stock.ScrewThread(0.02, 0.0025) { Name = "M20" }, found);
    }

    private static Rung Of(PressCheck check, string id) => check.Ladder.Rungs.Single(r => r.Id == id);

    [Fact]
    public void EachRungIsTheWorstOfAllHeights()
    {
        PressCheck all = PressCheck.Of(Press(900, "pitch: 150 mm, count: 4, edge: 200 mm"));
        PressCheck[] one = [.. Enumerable.Range(0, 4).Select(i => PressCheck.Of(Press(900 - 150 * i, "pitch: 150 mm, count: 1, edge: 200 mm")))];

        foreach (string id in new[] { "crown-bending", "bed-bending", "upright-bending", "upright-joint-holes", "bed-joint-pin-shear", "crown-joint-weld" })
            Near.Relative(one.Min(c => Of(c, id).SafeTo), Of(all, id).SafeTo, 1e-9, id);
        Assert.Contains(all.Ladder.Rungs, r => r.Mode.Contains(" up", StringComparison.Ordinal));
    }

    [Fact]
    public void TheHeightIsSaidWithTheRung()
    {
        PressCheck all = PressCheck.Of(Press(900, "pitch: 150 mm, count: 4"));

        foreach (Rung rung in all.Ladder.Rungs.Where(r => r.Mode.EndsWith(" up", StringComparison.Ordinal)))
        {
            var working = new Working();
            rung.Work(working);
            WorkingCheck.Holds(working);
            Assert.Contains(working.Steps, s => Math.Abs(s.Si - rung.SafeTo) <= 1e-9 * rung.SafeTo);
        }
    }

    [Fact]
    public void SteelBelowThePinTearsOut()
    {
        PressCheck check = PressCheck.Of(Press(900, "pitch: 150 mm, count: 4, edge: 60 mm, middle: 16 mm"));
        double most = check.Response.Solutions.Max(s => check.Response.Plan.Joints.Where(j => j.Key == "frame.bed-joint")
            .Max(j => s.At(j.Numbers[0], j.X) is var a && j.Numbers.Count == 2 ? new[] { 0, 1 }.Select(i => s.At(j.Numbers[i], j.X)).Aggregate((N: 0.0, Vy: 0.0, Vz: 0.0),
                (sum, b) => (sum.N + b.N, sum.Vy + b.Vy, sum.Vz + b.Vz)) is var t ? Math.Sqrt(t.N * t.N + t.Vy * t.Vy + t.Vz * t.Vz) : 0 : Math.Abs(a.Vz)));

        // two planes from the hole of 41 to the end: 39.5 by 16 each, at 275/√3
        new Reference("V-11", "two planes at the shear yield strength", Trust.Recomputed)
            .Near("tear-out of an upright below its pin, kN", 2 * 39.5 * 16 * 275 / Math.Sqrt(3) / most / 1e3, Of(check, "upright-tear-out").GivesAt / 1e3, 1e-6);
    }

    [Fact]
    public void UprightsAreDrilledAllTheWayUp()
    {
        Rig rig = Press(900, "pitch: 150 mm, count: 4");
        PlanPart upright = FramePlan.Of(rig).Parts.Single(p => p.Member.Part == "upright");

        // holes of 41 through both webs of 8
        Near.Relative(upright.Member.Shape.Properties.A - 2 * 0.041 * 0.008, upright.Member.JointNet!.Properties.A, 1e-6, "what the holes leave");
        Assert.All(upright.Stations, s => Assert.Equal(PlanCut.Both, s.Cut));
    }

    [Fact]
    public void FacesHeldByFriction()
    {
        var group = BoltGroup.Grid(M20("8.8"), 2, 1, 0.1, 0.1);
        Limit limit = group.Slips(new Actions(0, 0, 1, 0, 0, 0), 0.3)!.Value;

        // 0.7 f_ub A_s = 137.2 kN a bolt (F-21), two bolts, one plane
        new Reference("F-21", "EN 1993-1-8:2005, eq. 3.6 and 3.7", Trust.OwnNumbers).Near("slip of two M20 8.8, μ 0.3, kN", 2 * 0.3 * 137.2, limit.GivesAt / 1e3, 2e-3);
        Near.Relative(1.1, limit.Factor, 1e-12, "γ_M3,ser");
        Assert.Throws<InvalidOperationException>(() => BoltGroup.Grid(M20("4.6"), 2, 1, 0.1, 0.1)
            .Slips(new Actions(0, 0, 1, 0, 0, 0), 0.3));
    }

    [Fact]
    public void OrdinaryBoltsSlipOnceAndItIsSaid()
    {
        const string joint = "{ kind: bolt, thread: M24, class: 8.8, count: 4";
        string Frame(string more) => $$"""
            kind: closed
            daylight: 700 mm
            width: 500 mm
            section: 2 x UPN 180
            crown-joint: {{joint}}{{more}} }
            bed-joint: {{joint}}{{more}} }
            """;

        // holes of 26 in both parts: twice 2 at each end of the uprights
        Assert.Contains(Described.Rig(Frame("")).Cautions, c => c.Text().Contains("up to 8 mm", StringComparison.Ordinal));
        Assert.DoesNotContain(Described.Rig(Frame(", friction: 0.3")).Cautions, c => c.Text().Contains("slip once", StringComparison.Ordinal));
        Assert.Contains(PressCheck.Of(Described.Rig(Frame(", friction: 0.3"))).Ladder.Rungs, r => r.Id == "crown-joint-slip");
    }
}
