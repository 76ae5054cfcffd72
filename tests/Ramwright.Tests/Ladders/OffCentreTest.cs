using Ramwright.Files;
using Ramwright.Ladders;
using Ramwright.Presses;

namespace Ramwright.Tests.Ladders;

public class OffCentreTest
{
    public static TheoryData<string> Names() => ExamplesTest.Names();

    private static Rig Example(string name) => PressOnDisk.Open(Path.Combine(Repository.Folder("examples"), name)).Rig!;

    [Theory, MemberData(nameof(Names))]
    public void EveryPointIsAFullCheckOfThePressLoadedThere(string name)
    {
        Rig rig = Example(name);
        foreach (OffCentrePoint point in PressCheck.Of(rig).OffCentre().Points)
        {
            RigLoading loading = rig.Loading with
            {
                Across = point.Way == OffCentreWay.Across ? point.Offset : 0,
                Deep = point.Way == OffCentreWay.Deep ? point.Offset : 0,
            };

            // nothing shared with the curve: power, beams and matrix are made anew
            Ladder there = PressCheck.Of(rig with { Loading = loading }).Ladder;

            Assert.True(point.SafeTo <= there.SafeRating * (1 + 1e-12), $"{point.Way} {point.Offset}");
            if (point.Governing.Id == there.Governing.Id)
                Near.Relative(there.SafeRating, point.SafeTo, 1e-12, $"{point.Way} {point.Offset}");
        }
    }

    [Theory, MemberData(nameof(Names))]
    public void TheForceNeverRisesWithTheOffset(string name)
    {
        OffCentre curve = PressCheck.Of(Example(name)).OffCentre();
        foreach (OffCentreWay way in Enum.GetValues<OffCentreWay>())
        {
            OffCentrePoint[] points = [.. curve.Points.Where(p => p.Way == way)];

            Assert.True(points.Length >= 5);
            Assert.Equal(0, points[0].Offset);
            for (int i = 1; i < points.Length; i++)
            {
                Assert.True(points[i].Offset > points[i - 1].Offset);
                Assert.True(points[i].SafeTo <= points[i - 1].SafeTo);
            }
        }
    }

    [Fact]
    public void WhereTheOpeningGovernsTheForceFallsAsOneOverTheOffset()
    {
        // statics: in a frame alike in front and behind, the dies are turned by the moment F e alone
        var reference = new Reference("OC-01", "statics: turn of the dies ∝ F e, so F e is constant where a turn is the limit", Trust.Recomputed);
        PressCheck check = PressCheck.Of(Example("wherry-yard.press.yaml"));
        double Opens(double e) =>
            check.Loaded(check.Rig.Loading with { Across = 0, Deep = e }).Ladder.Rungs.Single(r => r.Id == "die-opening").SafeTo;

        foreach (double e in (double[])[0.03, 0.04, 0.06])
            reference.Near($"F e at {e * 1e3:0} mm, kN·m", Opens(0.02) * 0.02 / 1e3, Opens(e) * e / 1e3, 1e-9);
    }

    [Theory, MemberData(nameof(Names))]
    public void UpToItsReachThePressIsSafeAndBeyondItIsNot(string name)
    {
        Rig rig = Example(name);
        PressCheck press = PressCheck.Of(rig);
        OffCentre curve = press.OffCentre();
        foreach (OffCentreWay way in Enum.GetValues<OffCentreWay>())
        {
            OffCentrePoint[] points = [.. curve.Points.Where(p => p.Way == way)];
            double force = 0.8 * points[0].SafeTo, reach = curve.Reach(way, force)!.Value;

            double At(double e) => PressCheck.Of(rig with
            {
                Loading = rig.Loading with { Across = way == OffCentreWay.Across ? e : 0, Deep = way == OffCentreWay.Deep ? e : 0 },
            }).Ladder.SafeRating;

            Assert.True(At(reach) >= force * (1 - 1e-9));
            Assert.True(reach == points[^1].Offset || At(reach + 2e-4) < force, $"{way}: {reach}");
            Assert.Null(curve.Reach(way, 1.01 * points[0].SafeTo));
        }
    }

    // the bands up to 10 mm and above 400 mm are quoted from memory, those between from a printed page
    [Theory]
    [InlineData(0.008, 60, Trust.FromMemory)]
    [InlineData(0.050, 30, Trust.Found)]
    [InlineData(0.080, 20, Trust.Found)]
    [InlineData(0.100, 20, Trust.Found)]
    [InlineData(0.200, 10, Trust.Found)]
    [InlineData(0.500, 5, Trust.FromMemory)]
    public void AnUnsaidOpeningIsWhatGeneralTolerancesAllow(double side, double minutes, Trust trust) =>
        new Reference("OC-02", "ISO 2768-1:1989, table 3, class m: angular dimension by its shorter side", trust)
            .Near($"angle at {side * 1e3:0} mm, minutes", minutes, ResolveLoading.AllowedAngle(side).Angle * 180 / Math.PI * 60, 1e-9);

    [Fact]
    public void UnsaidLoadingFollowsTheDie()
    {
        PressReading reading = PressFile.Read("""
            wanted: 20 t
            cylinder: { kind: double-acting, bore: 100 mm }
            pump: { kind: electric, motor: 3 hp }
            frame: { kind: closed, daylight: 600 mm, width: 500 mm, section: HEB 160, die-width: 60 mm }
            """, "test.press.yaml", StockTables.Built);

        Rig rig = Resolver.Resolve(reading.Press!, StockTables.Built);

        Near.Relative(0.010, rig.Loading.Across, 1e-12, "a sixth of the die");
        Near.Relative(Math.Tan(Math.PI / 180 / 3), rig.Loading.AllowedOpening, 1e-12, "twenty minutes");
        Assert.Contains(rig.Assumed, a => a.What == "loading.allowed-opening" && a.Why.Text().Contains("ISO 2768-1", StringComparison.Ordinal));
        Assert.Contains(rig.Assumed, a => a.What == "loading.off-centre-deep" && a.Why.Text().Contains("middle third", StringComparison.Ordinal));
    }
}
