using Ramwright.Files;
using Ramwright.Ladders;
using Ramwright.Power;
using Ramwright.Tests.Ladders;

namespace Ramwright.Tests.Power;

public class PushCurveTest
{
    public static TheoryData<string> Names() => ExamplesTest.Names();

    private static PressCheck Example(string name) => PressCheck.Of(PressOnDisk.Open(Path.Combine(Repository.Folder("examples"), name)).Rig!);

    private static IReadOnlyList<SpeedAtLoad> Curve(PressCheck check) => PushCurve.Of(check.Rig.Cylinder, check.Rig.Lines, check.Rig.Oil, check.Power);

    [Theory, MemberData(nameof(Names))]
    public void ItPassesThroughEveryPointOfTheReport(string name)
    {
        PressCheck check = Example(name);
        IReadOnlyList<SpeedAtLoad> curve = Curve(check);

        foreach (SpeedAtLoad said in check.Power.Speeds)
        {
            SpeedAtLoad point = curve.MinBy(p => Math.Abs(p.Load - said.Load))!;
            Near.Relative(said.Load, point.Load, 1e-9, name);
            Near.Relative(said.Speed, point.Speed, 1e-6, name);
        }
    }

    [Theory, MemberData(nameof(Names))]
    public void LoadAndPressureRiseAndSpeedFallsInSmallSteps(string name)
    {
        PressCheck check = Example(name);
        IReadOnlyList<SpeedAtLoad> curve = Curve(check);

        for (int i = 1; i < curve.Count; i++)
        {
            Assert.True(curve[i].Load > curve[i - 1].Load && curve[i].Speed <= curve[i - 1].Speed * (1 + 1e-9));
            bool small = curve[i - 1].Speed - curve[i].Speed <= 0.0601 * curve[0].Speed;
            Assert.True(small || curve[i].Load - curve[i - 1].Load <= 0.0021 * check.Power.TrueForce, $"a gap at {curve[i].Load}");
        }
    }

    [Fact]
    public void ASpringReturnedRamFollowsTheBalanceOfItsPiston()
    {
        PressCheck check = Example("railing-shop.press.yaml");
        double A = Math.PI / 4 * check.Rig.Cylinder.Bore * check.Rig.Cylinder.Bore, mu = check.Rig.Cylinder.SealFriction;
        double S = check.Rig.Cylinder.SpringPreload + check.Rig.Cylinder.SpringRate * check.Rig.Cylinder.Stroke;
        var reference = new Reference("PC-01", "statics: F = p A (1 − μ) − S, nothing on the rod's side", Trust.Recomputed);
        foreach (SpeedAtLoad point in Curve(check).Where((_, i) => i % 10 == 0 && i > 0))
            reference.Near($"force at {point.CylinderPressure / 1e5:0} bar, N", point.CylinderPressure * A * (1 - mu) - S, point.Load, 1e-9);
    }
}
