using Ramwright.Frame;
using Ramwright.Presses;
using Ramwright.Solid.Tests.Frames;
using Ramwright.Solids;
using Ramwright.Stock;
using Ramwright.Tests;

namespace Ramwright.Solid.Tests;

/// <summary>Which joints have springs from solids, what these hang on, and what is said of the others.</summary>
public class JointPlacesTest
{
    private static RigClosedFrame Closed(string id) => (RigClosedFrame)Studies.Named(id).Frame;

    private static JointPlace Upper(RigFrame frame) => JointPlaces.Of(Rigs.With(frame)).Places!.Value.Upper;

    [Fact]
    public void ASpringHangsOnTheDieOnlyWhereTheSolidReachesIt()
    {
        Assert.Equal(Upper(Closed("C-01")).Text, Upper(Closed("C-01") with { DieWidth = 0.1 }).Text);
        Assert.NotEqual(Upper(Closed("C-11")).Text, Upper(Closed("C-11") with { DieWidth = 0.1 }).Text);
        // a span of less than two depths beside the die is short
        Assert.Null(Upper(Closed("C-01")).Die);
        Assert.NotNull(Upper(Closed("C-01") with { Width = 0.4 }).Die);
    }

    [Fact]
    public void EveryGussetAndRodIsAnotherJoint()
    {
        RigGusset gusset = new(0.1, 0.1, 0.012, 1, new RigWeld(WeldKind.Fillet, 5e-3), Closed("C-01").Crown.Steel);
        RigClosedFrame With(RigGusset g) => Closed("C-01") with { CrownJoint = Closed("C-01").CrownJoint with { Gusset = g } };
        RigTieRodFrame rods = (RigTieRodFrame)Studies.Named("T-02").Frame;
        string[] texts =
        [
            Upper(Closed("C-01")).Text, Upper(With(gusset)).Text, Upper(With(gusset with { LegUp = 0.12 })).Text, Upper(With(gusset with { Thickness = 0.02 })).Text, Upper(With(gusset with { Count = 2 })).Text,
            Upper(rods).Text, Upper(rods with { RodsDeep = 0.18 }).Text, Upper(rods with { Rod = rods.Rod with { Shank = 0.03, FreeThread = 0.05 } }).Text,
            Upper(rods with { Rod = rods.Rod with { PreloadLeast = 4e5, PreloadMost = 5e5 } }).Text, Upper(rods with { DieDepth = 0.1 }).Text,
        ];

        Assert.Equal(texts.Length, texts.Distinct().Count());
        Assert.Equal(Upper(rods).Text, Upper(rods with { Daylight = 0.7 }).Text);
    }

    [Fact]
    public void WhereThereAreNoneItSaysWhy()
    {
        RigPinnedJoint pin = new(BeamFit.Lapped) { Diameter = 0.03, Steel = Closed("C-01").Crown.Steel, Middle = 0.04, Outer = 0.02, Gap = 1e-3 };
        RigTieRodFrame rods = (RigTieRodFrame)Studies.Named("T-01").Frame;
        RigGusset wide = new(0.24, 0.1, 0.012, 1, new RigWeld(WeldKind.Fillet, 5e-3), Closed("C-01").Crown.Steel);
        (RigFrame Frame, string Why)[] cases =
        [
            (Closed("C-11") with { BedJoint = pin }, "a pin lets its corner turn freely"),
            ((RigOpenFrontFrame)Studies.Named("O-10").Frame with { ArmJoint = pin }, "a pin lets the arm turn freely"),
            (rods with { Rod = rods.Rod with { Seat = RodSeat.Sleeve, SleeveOutside = 0.06, SleeveInside = 0.04 } }, "rods in sleeves keep the rule"),
            (rods with { Rod = rods.Rod with { PreloadLeast = 1e3, PreloadMost = 2e3 } }, "preload does not last"),
            (Closed("C-01") with { CrownJoint = Closed("C-01").CrownJoint with { Gusset = wide } }, "gussets reach so far"),
            (Studies.Named("F-01").Frame, "points and bars"),
        ];
        foreach ((RigFrame frame, string why) in cases)
        {
            Assert.Contains(why, JointBook.Missing(Rigs.With(frame)), StringComparison.Ordinal);
            Assert.Null(new JointBook().Of(Rigs.With(frame)));
        }

        Assert.Null(JointBook.Missing(Rigs.With(rods)));
        Assert.Contains(FramePlan.Of(Rigs.With(cases[0].Frame)).Notes, n => n.Text().StartsWith("Corners on pins turn freely", StringComparison.Ordinal));
    }

    [Theory, InlineData(3e-8, 2e-8, 1e-10), InlineData(0, 4e-8, 3e-10), InlineData(5e-8, 0, 0)]
    public void SpringsAreFoundAgainFromWhatTheyGive(double beam, double upright, double along)
    {
        JointPlace place = Upper(Closed("C-01"));
        double kept = place.KeptBeam, lever = place.Axis - place.Face;
        JointWork beams = JointFit.Beams(place);
        var give = new JointWork(
            beams.MM + beam + upright,
            beams.MV + beam * kept + upright * (kept + lever),
            beams.VV + beam * kept * kept + upright * (kept + lever) * (kept + lever) + along);
        RigSpring found = JointFit.Springs(place, give);

        Assert.Equal(beam, 1 / found.Beam, 1e-13);
        Assert.Equal(upright, 1 / found.Upright, 1e-13);
        Assert.Equal(along, 1 / found.Along, 1e-15);
    }

    [Fact]
    public void WhereNoSpringsDoTheSameTheWorkIsStillThatOfTheForcesThatGoTogether()
    {
        RigOpenFrontFrame frame = (RigOpenFrontFrame)Studies.Named("O-10").Frame;
        JointPlace place = Upper(frame);
        double kept = place.KeptBeam, lever = place.Axis - place.Face, s = 0.3 * lever, c = 4e-8;
        // one turning spring inside the joint: no spring at the beam's end and at the upright's does the same for every moment and force
        JointWork beams = JointFit.Beams(place);
        RigSpring found = JointFit.Springs(place, new JointWork(beams.MM + c, beams.MV + c * (kept + s), beams.VV + c * (kept + s) * (kept + s)));

        Assert.True(found.Beam > 0 && found.Upright > 0 && found.Along > 0);
        // 0.5 to 2 times the length that it was fitted at
        foreach (double t in (double[])[0.5 * kept, kept, 2 * kept])
            Near.Relative(c * (t + s) * (t + s), t * t / found.Beam + (t + lever) * (t + lever) / found.Upright + 1 / found.Along, t == kept ? 1e-9 : 0.05, "work");
    }

    [Fact]
    public void BoltsBesideTheSteelAreSaid()
    {
        RigClosedFrame frame = (RigClosedFrame)JointTable.Named("bolted pairs 2");
        RigBoltedJoint wide = (RigBoltedJoint)frame.CrownJoint with { Pitch = 0.13 };

        Assert.DoesNotContain(PressSolid.Of(Rigs.With(frame)).Notes, n => n.Words.Contains("bolts stand beside", StringComparison.Ordinal));
        Assert.Contains(PressSolid.Of(Rigs.With(frame with { CrownJoint = wide })).Notes, n => n.Words.StartsWith("4 of 4 bolts stand beside the face where crown and upright touch", StringComparison.Ordinal));
    }
}
