using Ramwright.Power;
using static Ramwright.Tests.Power.Rigs;

namespace Ramwright.Tests.Power;

public class CylinderReferenceTest
{
    private const string ForceTable = "technical-data page with a force table for ISO bores";
    private static double Area(double mm) => CylinderAreas.Circle(mm / 1000);

    [Theory]
    [InlineData(40, 12.57, 20.11), InlineData(63, 31.17, 49.88), InlineData(100, 78.54, 125.7)]
    [InlineData(160, 201.1, 321.7), InlineData(200, 314.2, 502.7), InlineData(320, 804.2, 1286.8)]
    public void PushAtHundredAndHundredSixtyBar(double bore, double at100, double at160)
    {
        var row = new Reference("CY-02", ForceTable, Trust.FoundAndRecomputed);
        row.Near($"push, bore {bore} mm, 100 bar, kN", at100, RamForce.Thrust(100 * Bar, Area(bore)) / 1e3, 0.002);
        row.Near($"push, bore {bore} mm, 160 bar, kN", at160, RamForce.Thrust(160 * Bar, Area(bore)) / 1e3, 0.002);
    }

    [Fact]
    public void MisprintIsNotCopied() =>
        new Reference("CY-03", ForceTable + ", which prints 15.3 here", Trust.FoundAndRecomputed)
            .Near("push, bore 125 mm, 125 bar, kN", 153.4, RamForce.Thrust(125 * Bar, Area(125)) / 1e3, 0.002);

    [Theory]
    [InlineData(40, 1256.6), InlineData(50, 1963.5), InlineData(63, 3117.2), InlineData(80, 5026.5), InlineData(100, 7854.0)]
    [InlineData(125, 12271.8), InlineData(160, 20106.2), InlineData(200, 31415.9), InlineData(250, 49087.4), InlineData(320, 80424.8)]
    public void BoreArea(double bore, double mm2) =>
        new Reference("CY-04", "geometry; the page of CY-02 agrees within 1 mm² except at 200 mm, where it prints 31426", Trust.FoundAndRecomputed)
            .Within($"area, bore {bore} mm, mm²", mm2, Area(bore) * 1e6, 0.1);

    [Theory]
    [InlineData(63, 65.46, 218.2), InlineData(80, 105.56, 351.9), InlineData(100, 164.93, 549.8), InlineData(125, 257.71, 859.0)]
    public void ShopPressures(double bore, double at210, double at700)
    {
        var row = new Reference("CY-05", "F = p A", Trust.FromMemoryAndRecomputed);
        row.Near($"push, bore {bore} mm, 210 bar, kN", at210, RamForce.Thrust(210 * Bar, Area(bore)) / 1e3, 0.001);
        row.Near($"push, bore {bore} mm, 700 bar, kN", at700, RamForce.Thrust(700 * Bar, Area(bore)) / 1e3, 0.001);
    }

    [Theory]
    [InlineData("CY-06", 40, 28, 640.9, 1.961), InlineData("CY-06", 50, 36, 945.6, 2.076), InlineData("CY-06", 63, 45, 1526.8, 2.042)]
    [InlineData("CY-06", 80, 56, 2563.5, 1.961), InlineData("CY-06", 100, 70, 4005.5, 1.961), InlineData("CY-06", 125, 90, 5910.1, 2.076)]
    [InlineData("CY-06", 160, 110, 10602.9, 1.896), InlineData("CY-06", 200, 140, 16022.1, 1.961)]
    [InlineData("CY-07", 50, 28, 1347.7, 1.457), InlineData("CY-07", 63, 36, 2099.4, 1.485), InlineData("CY-07", 80, 45, 3436.1, 1.463)]
    [InlineData("CY-07", 100, 56, 5391.0, 1.457)]
    public void RingAndRatio(string id, double bore, double rod, double mm2, double phi)
    {
        CylinderAreas areas = CylinderAreas.Of(Double(bore / 1000, rod / 1000));
        var row = new Reference(id, "rod pairs after ISO 3320, ISO 6020-1, ISO 6022", Trust.FromMemoryAndRecomputed);
        row.Within($"ring, {bore}/{rod} mm, mm²", mm2, areas.Pull * 1e6, 0.1);
        row.Within($"ratio φ, {bore}/{rod} mm", phi, areas.Ratio, 0.002);
    }

    [Fact]
    public void SpeedsAndForcesOfOneCylinder()
    {
        CylinderAreas areas = CylinderAreas.Of(Double(0.080, 0.056));
        double Q = 12 * Lpm, p = 210 * Bar;

        var speeds = new Reference("CY-08", "v = Q/A", Trust.FromMemoryAndRecomputed);
        speeds.Near("extend, mm/s", 39.79, RamSpeed.Of(Q, areas.Push) * 1e3, 0.001);
        speeds.Near("extend 300 mm, s", 7.540, RamSpeed.Time(0.3, RamSpeed.Of(Q, areas.Push)), 0.001);
        speeds.Near("retract, mm/s", 78.02, RamSpeed.Of(Q, areas.Pull) * 1e3, 0.001);
        speeds.Near("retract 300 mm, s", 3.845, RamSpeed.Time(0.3, RamSpeed.Of(Q, areas.Pull)), 0.001);

        var forces = new Reference("CY-09", "F = p A; regenerative force by the rod's area", Trust.FoundAndRecomputed);
        forces.Near("push, kN", 105.56, RamForce.Thrust(p, areas.Push) / 1e3, 0.001);
        forces.Near("pull, kN", 53.83, RamForce.Thrust(p, areas.Pull) / 1e3, 0.001);
        forces.Near("regenerative push, kN", 51.72, RamForce.Regenerative(p, areas) / 1e3, 0.001);

        var regen = new Reference("CY-10", "course notes deriving v = Q/a_rod", Trust.FoundAndRecomputed);
        regen.Near("regenerative extend, mm/s", 81.20, RamSpeed.Of(Q, areas.Regenerative) * 1e3, 0.001);
        regen.Near("regenerative extend 300 mm, s", 3.695, RamSpeed.Time(0.3, RamSpeed.Of(Q, areas.Regenerative)), 0.001);

        new Reference("CY-16", "pressure balance; ASME B30.1-2015 1-2.1.2(f)", Trust.FoundAndRecomputed)
            .Near("rod side blocked, bar", 411.8, BlockedRodSide.Pressure(p, areas) / Bar, 0.002);
    }

    [Fact]
    public void RegenerativeExercise()
    {
        var row = new Reference("CY-11", "teaching page, answers recomputed", Trust.FoundAndRecomputed);
        var areas = new CylinderAreas(4e-4, 2e-4);
        double Q = 20 * Lpm, p = 80 * Bar;
        row.Near("normal extend, m/s", 0.8333, RamSpeed.Of(Q, areas.Push), 0.001);
        row.Near("normal push, kN", 3.2, RamForce.Thrust(p, areas.Push) / 1e3, 0.001);
        row.Near("regenerative extend, m/s", 1.667, RamSpeed.Of(Q, areas.Regenerative), 0.001);
        row.Near("regenerative push, kN", 1.6, RamForce.Regenerative(p, areas) / 1e3, 0.001);
        row.Near("retract, m/s", 1.667, RamSpeed.Of(Q, areas.Pull), 0.001);
    }

    [Fact]
    public void ExercisesInInches()
    {
        const string book = "open college hydraulics textbook 3.5, answers recomputed";
        var row = new Reference("CY-12", book, Trust.FoundAndRecomputed);
        CylinderAreas areas = CylinderAreas.Of(Double(2.5 * Inch, 1 * Inch));
        row.Near("extend, s", 13.30, RamSpeed.Time(24 * Inch, RamSpeed.Of(2.3 * Gpm, areas.Push)), 0.002);
        row.Near("push, lbf", 1963.5, RamForce.Thrust(400 * Psi, areas.Push) / Lbf, 0.002);
        row.Near("retract, s", 11.18, RamSpeed.Time(24 * Inch, RamSpeed.Of(2.3 * Gpm, areas.Pull)), 0.002);
        row.Near("pull, lbf", 1649.3, RamForce.Thrust(400 * Psi, areas.Pull) / Lbf, 0.002);
        row.Near("regenerative, s", 2.129, RamSpeed.Time(24 * Inch, RamSpeed.Of(2.3 * Gpm, areas.Regenerative)), 0.002);
        row.Near("regenerative, lbf", 314.2, RamForce.Regenerative(400 * Psi, areas) / Lbf, 0.002);

        row = new Reference("CY-13", book, Trust.FoundAndRecomputed);
        areas = CylinderAreas.Of(Double(3 * Inch, 1.25 * Inch));
        row.Near("extend, s", 16.32, RamSpeed.Time(16 * Inch, RamSpeed.Of(1.8 * Gpm, areas.Push)), 0.002);
        row.Near("push, lbf", 3534.3, RamForce.Thrust(500 * Psi, areas.Push) / Lbf, 0.002);
        row.Near("regenerative, s", 2.833, RamSpeed.Time(16 * Inch, RamSpeed.Of(1.8 * Gpm, areas.Regenerative)), 0.002);
        row.Near("regenerative, lbf", 613.6, RamForce.Regenerative(500 * Psi, areas) / Lbf, 0.002);
    }

    [Fact]
    public void PressSizingExercise()
    {
        var row = new Reference("CY-14", "teaching page, answers recomputed; 1 hp = gpm psi/1714", Trust.FoundAndRecomputed);
        double A = CylinderAreas.Circle(6 * Inch), p = RamForce.PressureFor(50_000 * Lbf, A, 0), Q = RamSpeed.FlowFor(24 * Inch, A, 5);
        row.Near("pressure, psi", 1768.4, p / Psi, 0.002);
        row.Near("flow, US gpm", 35.25, Q / Gpm, 0.002);
        row.Near("power, hp", 36.37, HydraulicPower.Of(p, Q) / Hp, 0.002);
    }

    [Fact]
    public void HollowPlungerCountsItsTubeNotItsHole()
    {
        var row = new Reference("CY-15", "geometry: the seal rides on the tube's outside", Trust.FromMemoryAndRecomputed);
        CylinderAreas areas = CylinderAreas.Of(Hollow);
        row.Near("area, mm²", 6675.9, areas.Push * 1e6, 0.001);
        row.Near("push at 700 bar, kN", 467.3, RamForce.Thrust(700 * Bar, areas.Push) / 1e3, 0.001);
    }

    [Fact]
    public void SpringTakesItsShare()
    {
        var row = new Reference("CY-17", "statics", Trust.FromMemoryAndRecomputed);
        double S = RamForce.Spring(900, 4000, 0.150);
        row.Near("spring at full stroke, kN", 1.5, S / 1e3, 0.005);
        row.Near("pressure that balances it, bar", 5.31, RamForce.PressureFor(0, Area(60), 0, S) / Bar, 0.005);
        row.Near("net push at 100 bar, kN", 100 * Bar * Area(60) / 1e3 - 1.5, RamForce.Net(100 * Bar, Area(60), 0, S) / 1e3, 1e-9);
    }

    [Fact]
    public void TwoStageStrokeTimesOilAndHandStrokes()
    {
        double A = Area(100);
        var times = new Reference("CY-18", "t = V/Q", Trust.FromMemoryAndRecomputed);
        double approach = RamSpeed.Time(0.250, RamSpeed.Of(8 * Lpm, A)), press = RamSpeed.Time(0.040, RamSpeed.Of(1 * Lpm, A));
        times.Near("approach, s", 14.73, approach, 0.002);
        times.Near("pressing, s", 18.85, press, 0.002);
        times.Near("both, s", 33.58, approach + press, 0.002);
        OilDemand oil = OilDemand.Of(new CylinderAreas(A, 0), false, 0.290, 3e-3);
        times.Near("oil, L", 2.278, oil.Stroke * 1e3, 0.002);

        var strokes = new Reference("CY-19", "volume over volume a stroke, rounded up", Trust.FromMemoryAndRecomputed);
        strokes.Exactly("strokes at 13 mL over 250 mm", 152, RamSpeed.HandStrokes(A * 0.250, 13e-6));
        strokes.Exactly("strokes at 2.5 mL over 40 mm", 126, RamSpeed.HandStrokes(A * 0.040, 2.5e-6));
    }

    [Fact]
    public void TankNeedsTheRodOnlyWhereTheRingGivesItsOilBack()
    {
        var row = new Reference("CY-20", "conservation of volume", Trust.FromMemory);
        CylinderAreas areas = CylinderAreas.Of(Double(0.1, 0.056));
        row.Near("single-acting, L", 2.278, OilDemand.Of(areas, false, 0.290, 1).FromTank * 1e3, 0.002);
        row.Near("double-acting: rod 56 mm over 290 mm, L", Math.PI / 4 * 0.56 * 0.56 * 2.9, OilDemand.Of(areas, true, 0.290, 1).FromTank * 1e3, 1e-9);
        OilDemand shortOfOil = OilDemand.Of(areas, false, 0.290, 1.139e-3);
        row.Exactly("half of the oil is not enough", false, shortOfOil.Enough);
        row.Near("stroke that half of the oil allows, mm", 145, shortOfOil.Reach * 1e3, 0.002);
    }

    [Fact]
    public void OilGrowsAsItWarms() =>
        new Reference("CY-21", "typical expansion of mineral oil", Trust.FromMemoryAndRecomputed)
            .Near("growth of 40 L by 30 K, L", 0.84, BulkModulus.ThermalGrowth(40, 30), 0.02);

    [Fact]
    public void Tons()
    {
        var row = new Reference("CY-22", "SI definitions", Trust.FromMemoryAndRecomputed);
        row.Near("US ton, kN", 8.896, SellersRating.Newtons(Ton.UsTon) / 1e3, 1e-4);
        row.Near("UK ton, kN", 9.964, SellersRating.Newtons(Ton.UkTon) / 1e3, 1e-4);
        row.Near("tonne-force, kN", 9.80665, SellersRating.Newtons(Ton.Tonne) / 1e3, 1e-9);
    }
}
