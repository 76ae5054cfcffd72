using CsCheck;
using Ramwright.Files;
using Ramwright.Ladders;
using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Stock;

namespace Ramwright.Tests.Ladders;

/// <summary>What must hold for any press at all.</summary>
public class PressesTest
{
    private static readonly Shelf Shelf = StockTables.Built;

    private static PressCheck Check(string yaml)
    {
        PressReading reading = PressFile.Read(yaml, "test.press.yaml", Shelf);
        Assert.True(reading.Faults.Count == 0, FaultText.All(reading.Faults));
        return PressCheck.Of(Resolver.Resolve(reading.Press!, Shelf));
    }

    private static string Closed(double width, double daylight, string crown, string upright, double bore = 100, string more = "") => $$"""
        wanted: 10 t
        cylinder: { kind: double-acting, bore: {{bore:0.###}} mm }
        pump: { kind: electric, motor: 2.2 kW }
        frame:
          kind: closed
          daylight: {{daylight:0.###}} mm
          width: {{width:0.###}} mm
          steel: S275
          crown: { section: {{crown}} }
          bed: { section: {{crown}} }
          upright: { section: {{upright}} }
        {{more}}
        """;

    private static string OpenFront(double throat, double daylight, string column, string arm) => $$"""
        wanted: 10 t
        cylinder: { kind: double-acting, bore: 80 mm }
        pump: { kind: electric, motor: 2.2 kW }
        frame:
          kind: open-front
          daylight: {{daylight:0.###}} mm
          throat: {{throat:0.###}} mm
          steel: S275
          column: { section: {{column}} }
          upper-arm: { section: {{arm}} }
          lower-arm: { section: {{arm}} }
          arm-joint: { kind: slot, weld: { leg: 8 mm } }
        """;

    private static double Safe(PressCheck check, string id) => check.Ladder.Rungs.Single(r => r.Id == id).SafeTo;

    private static PressFaultsException Unbuildable(string yaml)
    {
        PressReading reading = PressFile.Read(yaml, "test.press.yaml", Shelf);
        Assert.True(reading.Faults.Count == 0, FaultText.All(reading.Faults));
        return Assert.Throws<PressFaultsException>(() => Resolver.Resolve(reading.Press!, Shelf));
    }

    [Fact]
    public void OneAngleIsRefusedAndTwoAreTakenWithTheirTies()
    {
        Fault fault = Unbuildable(Closed(500, 600, "2 x UPN 200", "L 100x100x10")).Faults[0];
        PressCheck two = Check(Closed(500, 600, "2 x UPN 200", "2 x L 100x100x10"));

        Assert.Equal("frame.upright.section", fault.Path);
        Assert.Contains("bends askew", fault.Found.Text(), StringComparison.Ordinal);
        Assert.Contains("2 x L 100x100x10", fault.Wanted.Text(), StringComparison.Ordinal);
        Assert.Contains(two.Assumed, a => a.What == "frame.upright.section" && a.Value(UnitSystem.Metric).Contains("every 29", StringComparison.Ordinal));
        Assert.True(Check(Closed(500, 600, "2 x UPN 200", "2 x half IPE 300")).Ladder.SafeRating > 0);
    }

    [Fact]
    public void CastIronIsRefusedWhereverItCarries()
    {
        string frame = Closed(500, 600, "HEB 160", "HEB 140").Replace("steel: S275", "steel: cast iron", StringComparison.Ordinal);
        string rod = Closed(500, 600, "HEB 160", "HEB 140").Replace("bore: 100 mm", "bore: 100 mm, rod-steel: grey iron", StringComparison.Ordinal);

        Assert.All(Unbuildable(frame).Faults, f => Assert.Contains("cast iron", f.Found.Text(), StringComparison.Ordinal));
        Assert.Equal("cylinder.rod-steel", Assert.Single(Unbuildable(rod).Faults).Path);
    }

    [Fact]
    public void FoundSteelBringsItsCaution()
    {
        string rail = Closed(500, 600, "HEB 160", "HEB 140").Replace("steel: S275", "steel: rail", StringComparison.Ordinal);

        Assert.Contains(Check(rail).Cautions(), c => c.Contains("rail has 0.6 to 0.8 % carbon", StringComparison.Ordinal));
        Assert.DoesNotContain(Check(Closed(500, 600, "HEB 160", "HEB 140")).Cautions(), c => c.Contains("carbon", StringComparison.Ordinal));
    }

    [Fact]
    public void InchBoltsHoldAsTheirStrengthTells()
    {
        const string joint = "  crown-joint: {{ kind: bolt, fit: lapped, thread: {0}, class: {1}, count: 4, pitch: 80 mm, gauge: 90 mm, edge: 45 mm }}";
        PressCheck Bolted(string thread, string grade) => Check(Closed(500, 600, "2 x UPN 200", "2 x UPN 160")
            + "\n" + string.Format(System.Globalization.CultureInfo.InvariantCulture, joint, thread, grade));
        PressCheck five = Bolted("3/4 UNC", "grade 5"), eight = Bolted("3/4 UNC", "grade 8");

        Near.Relative(1000e6 / (120 * 6894757.293), Safe(eight, "crown-joint-bolt-shear") / Safe(five, "crown-joint-bolt-shear"), 1e-6);
        Assert.Contains(five.Cautions(), c => c.Contains("outside EN 1993-1-8", StringComparison.Ordinal));
    }

    [Fact]
    public void SixFactsGiveAFirstAnswerWithItsAssumptions()
    {
        PressCheck check = Check("""
            wanted: 20 t
            cylinder: { kind: double-acting, bore: 100 mm }
            pump: { kind: electric, motor: 3 hp }
            frame: { kind: closed, daylight: 600 mm,
                     width: 500 mm,
                     section: HEB 160 }
            """);

        Assert.True(check.Ladder.Rungs.Count >= 12);
        Assert.Contains(check.Rig.Assumed, a => a.What == "frame.steel");
        Assert.Contains(check.Rig.Assumed, a => a.What == "pump.relief");
        Assert.All(check.Rig.Assumed, a => Assert.NotEmpty(a.Why.Text()));
    }

    // thicknesses stay inside one strength band of S275: a thicker plate of the next band really is weaker per area
    [Fact]
    public void AThickerCrownNeverLowersItsOwnRungs() =>
        Gen.Select(Gen.Double[300, 1200], Gen.Double[300, 1200], Gen.Int[17, 30], Gen.Int[100, 300], Gen.Int[1, 10]).Sample(
            (width, daylight, t, h, more) =>
            {
                PressCheck thin = Check(Closed(width, daylight, $"flat {h}x{t}", "flat 120x40"));
                PressCheck thick = Check(Closed(width, daylight, $"flat {h}x{t + more}", "flat 120x40"));

                Assert.True(Safe(thick, "crown-bending") >= Safe(thin, "crown-bending") * (1 - 1e-9));
                Assert.True(Safe(thick, "crown-shear") >= Safe(thin, "crown-shear") * (1 - 1e-9));
            }, iter: 200);

    [Fact]
    public void AThickerArmNeverLowersItsOwnRung() =>
        Gen.Select(Gen.Double[100, 400], Gen.Double[200, 600], Gen.Int[17, 30], Gen.Int[100, 250], Gen.Int[1, 10]).Sample(
            (throat, daylight, t, h, more) =>
            {
                PressCheck thin = Check(OpenFront(throat, daylight, "HEB 200", $"flat {h}x{t}"));
                PressCheck thick = Check(OpenFront(throat, daylight, "HEB 200", $"flat {h}x{t + more}"));

                Assert.True(Safe(thick, "upper-arm-bending") >= Safe(thin, "upper-arm-bending") * (1 - 1e-9));
            }, iter: 100);

    [Fact]
    public void AWiderOpeningNeverRaisesTheCrownsRung() =>
        Gen.Select(Gen.Double[300, 1200], Gen.Double[1, 300]).Sample((width, more) =>
        {
            PressCheck near = Check(Closed(width, 600, "HEB 160", "HEB 120"));
            PressCheck far = Check(Closed(width + more, 600, "HEB 160", "HEB 120"));

            Assert.True(Safe(far, "crown-bending") <= Safe(near, "crown-bending") * (1 + 1e-9));
        }, iter: 100);

    [Fact]
    public void ABoltMoreNeverLowersTheBolts() =>
        Gen.Int[1, 4].Sample(pairs =>
        {
            string Joint(int n) => $"  crown-joint: {{ kind: bolt, fit: lapped, thread: M20, class: 8.8, count: {n}, gauge: 70 mm }}";
            PressCheck few = Check(Closed(600, 600, "2 x UPN 220", "2 x UPN 160", more: Joint(2 * pairs)));
            PressCheck many = Check(Closed(600, 600, "2 x UPN 220", "2 x UPN 160", more: Joint(2 * pairs + 2)));

            Assert.True(Safe(many, "crown-joint-bolt-shear") >= Safe(few, "crown-joint-bolt-shear"));
        }, iter: 8);

    [Fact]
    public void AlikeOnBothSidesAnswersAlike()
    {
        // the frame is the same seen in a mirror: left and right corners carry the same when the work stands in the middle
        PressCheck check = Check(Closed(700, 700, "HEB 180", "HEB 140"));
        var centred = check.Response.Solutions[0];

        double left = centred.At(0, 0).My, right = centred.At(1, centred.Length(1)).My;

        Near.Relative(left, right, 1e-9, "corner moment, left against right");
    }

    [Fact]
    public void NoValidPressGivesANumberThatIsNone() =>
        Gen.Select(Gen.Double[200, 3000], Gen.Double[100, 3000], Gen.Int[20, 300], Gen.Int[5, 100], Gen.Double[20, 300]).Sample(
            (width, daylight, h, t, bore) =>
            {
                PressCheck check = Check(Closed(width, daylight, $"flat {h}x{t}", $"flat {h}x{t}", bore));

                Assert.All(check.Ladder.Rungs, r => Assert.True(double.IsFinite(r.GivesAt) && r.SafeTo > 0, r.Id));
                Assert.True(double.IsFinite(check.DaylightGrowth) && double.IsFinite(check.Opening));
            }, iter: 200);
}
