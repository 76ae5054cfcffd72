using Ramwright.Jobs;
using Ramwright.Stock;
using Ramwright.Workings;

namespace Ramwright.Tests.Jobs;

public sealed class BendingTest
{
    private const double Deg = Math.PI / 180;

    private static readonly Citation Own = Citation.Mechanics("test");

    [Fact]
    public void ForcesOfAVDie()
    {
        new Reference("W5-01", "M. P. Groover, sheet chapter", Trust.FromMemoryAndRecomputed).Near("F, N", 10_909, VBending.GrooverForce(1.33, 450e6, 3.2e-3, 44.5e-3, 25e-3), 0.001);
        var oehler = new Reference("W5-02", "K. Lange, Umformtechnik 3, after Oehler", Trust.FromMemoryAndRecomputed);
        double F = VBending.OehlerForce(310e6, 1e-3, 0.1, 10e-3);
        oehler.Near("F, N", 4340, F, 0.001);
        oehler.Near("work, J", 48.8, VBending.Work(F, 15e-3), 0.001);
        new Reference("W5-05", "limit analysis", Trust.Recomputed).Near("F, kN", 88.1, VBending.LowerBound(235e6, 6e-3, 0.5, 48e-3) / 1e3, 0.001);
    }

    [Theory]
    [InlineData(6, 48, 500, 410, 204.5, 230.6, 218.3)]
    [InlineData(10, 80, 300, 510, 254.4, 286.9, 271.6)]
    [InlineData(12, 100, 250, 510, 244.2, 271.7, 260.7)]
    public void ThreeRulesBesideEachOther(double t, double V, double b, double R_m, double groover, double oehler, double third)
    {
        var reference = new Reference("W5-04", "1.33 rule, Oehler, 1.42 rule", Trust.Recomputed);
        reference.Near($"1.33 rule, kN, {t}/{V}/{b}", groover, VBending.GrooverForce(1.33, R_m * 1e6, t / 1e3, b / 1e3, V / 1e3) / 1e3, 0.001);
        reference.Near($"Oehler, kN, {t}/{V}/{b}", oehler, VBending.OehlerForce(R_m * 1e6, t / 1e3, b / 1e3, V / 1e3) / 1e3, 0.001);
        reference.Near($"1.42 rule, kN, {t}/{V}/{b}", third, VBending.GrooverForce(1.42, R_m * 1e6, t / 1e3, b / 1e3, V / 1e3) / 1e3, 0.001);
    }

    [Fact]
    public void RulesOfTheVee()
    {
        new Reference("W5-06", "press-brake practice", Trust.Practice).Near("radius in a V of 48, mm", 7.68, VBending.AirRadius(48e-3) * 1e3, 0.001);
        new Reference("W5-06", "press-brake practice", Trust.Practice).Exactly("V for 6 mm", 0.048, VBending.OpeningFor(6e-3));
        new Reference("W5-07", "geometry", Trust.Recomputed).Near("shortest leg, V 48, mm", 33.9, VBending.ShortestLeg(48e-3) * 1e3, 0.002);
        var depth = new Reference("W5-08", "geometry", Trust.Recomputed);
        depth.Near("depth, V 48, 90° through, mm", 24.0, VBending.Depth(48e-3, 90 * Deg) * 1e3, 0.001);
        depth.Near("depth, V 48, 60° through, mm", 13.86, VBending.Depth(48e-3, 60 * Deg) * 1e3, 0.001);
        new Reference("W5-10", "M. P. Groover, bend allowance", Trust.FromMemoryAndRecomputed).Within("A_b, mm", 6.08, VBending.GrooverAllowance(60 * Deg, 4.75e-3, 3.2e-3) * 1e3, 0.01);
    }

    [Theory]
    [InlineData(90, 3, 3, -5.756)]
    [InlineData(90, 6, 3, -6.689)]
    [InlineData(90, 4, 2, -4.459)]
    [InlineData(90, 2.5, 2.5, -4.797)]
    [InlineData(90, 10, 10, -19.187)]
    [InlineData(90, 30, 5, -18.949)]
    [InlineData(60, 6, 3, -2.919)]
    [InlineData(120, 6, 3, -2.852)]
    public void AllowanceOfDin6935(double β, double r, double t, double v)
    {
        var w = new Working();
        double found = VBending.Allowance(β * Deg, r / 1e3, t / 1e3, w);
        new Reference("W5-11", "DIN 6935; rounded values of its table agree as remembered", Trust.FromMemoryAndRecomputed).Within($"v, mm, β {β}°, r {r}, s {t}", v, found * 1e3, 0.01);
        WorkingCheck.Holds(w);
    }

    [Theory]
    [InlineData(1, 0.325)]
    [InlineData(2, 0.400)]
    [InlineData(6, 0.5)]
    public void NeutralFibre(double ratio, double K) =>
        new Reference("W5-12", "DIN 6935: K = k/2", Trust.FromMemoryAndRecomputed).Within($"K, r/s {ratio}", K, VBending.NeutralFibre(ratio, 1) / 2, 0.001);

    [Theory]
    [InlineData(60, 300, 205, 3, 0.91230, 65.77, 82.28)]
    [InlineData(12, 275, 207, 3.2, 0.98491, 12.18, 88.80)]
    [InlineData(100, 355, 210, 10, 0.94931, 105.34, 85.64)]
    [InlineData(200, 235, 210, 6, 0.88830, 225.15, 80.08)]
    public void SpringbackOfRadiusAndAngle(double R, double Y, double E, double t, double ratio, double R_f, double angle)
    {
        var w = new Working();
        double q = Springback.RadiusRatio(R / 1e3, Y * 1e6, E * 1e9, t / 1e3, w);
        var reference = new Reference("W5-13", "S. Kalpakjian, S. Schmid", Trust.FromMemoryAndRecomputed);
        reference.Near($"R_i/R_f, R {R}", ratio, q, 0.001);
        reference.Near($"R_f, mm, R {R}", R_f, R / q, 0.001);
        new Reference("W5-14", "arc length kept", Trust.Recomputed).Near($"angle left of 90°, R {R}", angle, Springback.AngleLeft(90, R, R / q, t), 0.001);
        WorkingCheck.Holds(w);
    }

    [Fact]
    public void StretchAndSmallestRadii()
    {
        var reference = new Reference("W5-16", "S. Kalpakjian, S. Schmid", Trust.FromMemoryAndRecomputed);
        reference.Within("R/T, r 20", 1.5, VBending.LeastRadius(20), 1e-9);
        reference.Within("R/T, r 30", 0.667, VBending.LeastRadius(30), 0.001);
        reference.Within("R/T, r 40", 0.25, VBending.LeastRadius(40), 1e-9);
        reference.Within("R/T, r 50", 0, VBending.LeastRadius(50), 1e-9);
        reference = new Reference("W5-17", "geometry", Trust.Recomputed);
        reference.Within("strain, R = T", 0.333, VBending.OuterStrain(1, 1), 0.001);
        reference.Within("strain, R = 2T", 0.2, VBending.OuterStrain(2, 1), 1e-9);
        reference = new Reference("W5-18", "EN 10025-2, recommended radii; doubtful, give or take a step", Trust.FromMemory);
        reference.Exactly("S235, 6 mm", (double?)0.008, VBending.RecommendedRadius(235e6, 6e-3));
        reference.Exactly("S355, 10 mm", (double?)0.020, VBending.RecommendedRadius(355e6, 10e-3));
        Assert.Null(VBending.RecommendedRadius(460e6, 6e-3));
    }

    public static TheoryData<string, Shape, double, double, double[]> Sections() => new()
    {
        { "W5-20 round 25", new Round(0.025) { Name = "a", Source = Own }, 355, 400, [1534.0, 2604.2, 544.6, 924.5, 5.446, 9.245, 1.803] },
        { "W5-21 round 40", new Round(0.040) { Name = "a", Source = Own }, 355, 600, [6283.2, 10666.7, 2230.5, 3786.7, 14.870, 25.244, 2.536] },
        { "W5-22 square 20", new Flat(0.02, 0.02) { Name = "a", Source = Own }, 235, 300, [1333.3, 2000.0, 313.3, 470.0, 4.178, 6.267, 0.839] },
        { "W5-23 flat 50×10", new Flat(0.01, 0.05) { Name = "a", Source = Own }, 235, 200, [833.3, 1250.0, 195.8, 293.8, 3.917, 5.875, 0.746] },
        { "W5-24 pipe 48.3×3.2", new CircularHollow(0.0483, 0.0032) { Name = "a", Source = Own }, 235, 500, [4797.4, 6519.8, 1127.4, 1532.1, 9.019, 12.257, 0.965] },
        { "W5-25 pipe 33.7×2.6", new CircularHollow(0.0337, 0.0026) { Name = "a", Source = Own }, 235, 400, [1835.4, 2520.6, 431.3, 592.3, 4.313, 5.923, 0.885] },
        { "W5-26 pipe 60.3×3.6", new CircularHollow(0.0603, 0.0036) { Name = "a", Source = Own }, 235, 600, [8581.7, 11589.2, 2016.7, 2723.5, 13.445, 18.156, 1.113] },
        { "W5-27 square tube 50×3", new RectangularHollow(0.05, 0.05, 0.003, 0.0045, 0.003) { Name = "a", Source = Own }, 235, 500, [8339.7, 9954.0, 1959.8, 2339.2, 15.679, 18.714, 0.933] },
    };

    [Theory, MemberData(nameof(Sections))]
    public void BarsAndTubesOverTwoSupports(string row, Shape shape, double Y, double L, double[] expected)
    {
        PlasticBar bar = PlasticBar.Of(shape, Y * 1e6);
        double l = L / 1e3;
        var reference = new Reference(row[..5], "plastic bending over two supports, " + row[6..], Trust.Recomputed);
        reference.Near("W_e, mm³", expected[0], bar.W_e * 1e9, 0.001);
        reference.Near("W_p, mm³", expected[1], bar.W_p * 1e9, 0.001);
        reference.Near("M_y, N·m", expected[2], bar.M_y, 0.001);
        reference.Near("M_p, N·m", expected[3], bar.M_p, 0.001);
        reference.Near("F_y, kN", expected[4], bar.F_y(l) / 1e3, 0.001);
        reference.Near("F_p, kN", expected[5], bar.F_p(l) / 1e3, 0.001);
        reference.Near("δ_y, mm", expected[6], bar.δ_y(l) * 1e3, 0.001);
    }

    [Fact]
    public void TubesInABend()
    {
        var reference = new Reference("W5-30", "geometry", Trust.Recomputed);
        reference.Within("strain, 48.3 on R 150", 0.161, TubeBending.OuterStrain(48.3, 150), 0.0005);
        reference.Within("strain, 33.7 on R 100", 0.1685, TubeBending.OuterStrain(33.7, 100), 0.0005);
        reference.Within("strain, 2D", 0.25, TubeBending.OuterStrain(1, 2), 1e-9);
        reference = new Reference("W5-31", "geometry", Trust.Recomputed);
        reference.Within("wall, 48.3 on R 150", 0.861, TubeBending.OuterWall(48.3, 150), 0.001);
        reference.Within("wall, 2D", 0.8, TubeBending.OuterWall(1, 2), 1e-9);
    }

    [Fact]
    public void AHotBend()
    {
        double Y = new ShidaFlow(0.002).Stress(0.1, 0.5, 950);
        PlasticBar bar = PlasticBar.Of(new Flat(0.025, 0.025) { Name = "a", Source = Own }, Y);
        var reference = new Reference("W5-33", "Shida; plastic hinge", Trust.Recomputed);
        reference.Near("Y, MPa", 93.6, Y / 1e6, 0.005);
        reference.Near("M_p, N·m", 365.5, bar.M_p, 0.005);
        reference.Near("F, kN", 9.75, bar.F_p(0.15) / 1e3, 0.005);
    }
}
