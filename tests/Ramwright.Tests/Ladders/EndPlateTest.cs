using Ramwright.Frame;
using Ramwright.Ladders;
using Ramwright.Presses;
using Ramwright.Strength;
using Ramwright.Tests.Frame;
using Ramwright.Workings;

namespace Ramwright.Tests.Ladders;

public class EndPlateTest
{
    private static Rig Press(string more = "", string upright = "HEB 200") => Described.Rig($$"""
        kind: closed
        daylight: 600 mm
        width: 500 mm
        section: {{upright}}
        steel: S275
        crown-joint: { kind: bolt, fit: between, thread: M20, class: 8.8, count: 4, pitch: 100 mm, gauge: 110 mm{{more}} }
        """);

    private static Rung? Of(PressCheck check, string id) => check.Ladder.Rungs.SingleOrDefault(r => r.Id == id);

    [Fact]
    public void TheFlangeBesideTheBoltsIsATStub()
    {
        PressCheck check = PressCheck.Of(Press(", end-plate: { thickness: 20 mm, steel: S355 }"));
        Rung flange = Of(check, "crown-joint-flange")!, plate = Of(check, "crown-joint-end-plate")!;

        // HEB 200: t_w 9, t_f 15, r 18, b 200. m = 45.5 − 14.4 = 31.1, e = 50; belongs min(110, 186.9); M20 8.8: F_t = 0.9·800·245 = 176.4
        const double m = 31.1, e = 50, l = 110, Ft = 176.4;
        double n = Math.Min(e, 1.25 * m), Mpl = 0.25 * l * 15 * 15 * 0.275, one = 4 * Mpl / m, two = (2 * Mpl + n * 2 * Ft) / (m + n);
        double row = Math.Min(Math.Min(one, two), 2 * Ft);
        // the pull of the bolts themselves gives at F_t each: the same force per newton
        double bolts = Of(check, "crown-joint-bolt-pull")!.GivesAt;
        new Reference("GU-05", "EN 1993-1-8 tables 6.2 and 6.4: row of two M20 8.8 on the flange of an HEB 200, by hand", Trust.OwnNumbers)
            .Near("ram force over that at which the bolts break", row / (2 * Ft), flange.GivesAt / bolts, 2e-3);
        foreach (Rung rung in new[] { flange, plate })
        {
            var w = new Working();
            rung.Work(w);
            WorkingCheck.Holds(w);
        }
    }

    [Fact]
    public void AThickerEndPlateHoldsMoreAndOneUnsaidIsTold()
    {
        double Plate(string t) => Of(PressCheck.Of(Press($", end-plate: {{ thickness: {t} }}")), "crown-joint-end-plate")!.SafeTo;

        Assert.True(Plate("10 mm") < Plate("16 mm"));
        PressCheck silent = PressCheck.Of(Press());
        Assert.Contains(silent.Assumed, a => a.What == "frame.crown-joint.end-plate.thickness");
        Near.Relative(Plate("20 mm"), Of(silent, "crown-joint-end-plate")!.SafeTo, 1e-9, "as thick as the bolts");
    }

    [Fact]
    public void TheWeldOfTheEndPlateIsARungThatGrowsWithItsThroatAndOneUnsaidIsTold()
    {
        Rung Weld(string weld) => Of(PressCheck.Of(Press($", end-plate: {{ thickness: 20 mm{weld} }}")), "crown-joint-end-plate-weld")!;
        Rung five = Weld(", weld: { throat: 5 mm }"), ten = Weld(", weld: { throat: 10 mm }");

        // the fillets' middle lines are the beam's edge whatever their size: twice the throat, twice the force
        Near.Relative(2, ten.GivesAt / five.GivesAt, 1e-9, "over the throat");
        var w = new Working();
        five.Work(w);
        WorkingCheck.Holds(w);

        PressCheck silent = PressCheck.Of(Press(", end-plate: { thickness: 20 mm }"));
        Assumed told = Assert.Single(silent.Assumed, a => a.What == "frame.crown-joint.end-plate.weld");
        // HEB 200: 0.7 of its web's 9 mm
        Assert.Contains("6.3 mm", told.Value(Ramwright.Quantities.UnitSystem.Metric), StringComparison.Ordinal);
        Near.Relative(Weld(", weld: { leg: 6.3 mm }").SafeTo, Of(silent, "crown-joint-end-plate-weld")!.SafeTo, 1e-9, "as assumed");
        // a weld right through is as strong as the thinner of what it joins, and two fillets of 5 mm are less than a web of 9 mm and flanges of 15
        Assert.True(Weld(", weld: { kind: butt }").GivesAt > five.GivesAt);
    }

    /// <summary>Fillets crack from their root before they tear, where squeezes are many; a weld right through has no root, and the beam beside it has its rung either way.</summary>
    [Fact]
    public void TheWeldOfTheEndPlateCracksInTime()
    {
        PressCheck Check(string weld) => PressCheck.Of(Press($", end-plate: {{ thickness: 20 mm, weld: {{ {weld} }} }}"));
        PressCheck fillet = Check("throat: 5 mm"), thick = Check("throat: 10 mm"), butt = Check("kind: butt");

        Near.Relative(2, Of(thick, "crown-end-plate-root-fatigue")!.GivesAt / Of(fillet, "crown-end-plate-root-fatigue")!.GivesAt, 1e-9, "over the throat");
        Assert.Null(Of(butt, "crown-end-plate-root-fatigue"));
        Assert.NotNull(Of(butt, "crown-end-plate-toe-fatigue"));
        foreach (string id in (string[])["crown-end-plate-root-fatigue", "crown-end-plate-toe-fatigue"])
        {
            var w = new Working();
            Of(fillet, id)!.Work(w);
            WorkingCheck.Holds(w);
        }
    }

    [Fact]
    public void WhereTheWebIsNotThatOfAnINothingIsSaid() =>
        Assert.Null(Of(PressCheck.Of(Press(", shear-planes: 1", "2 x UPN 180")), "crown-joint-flange"));
}
