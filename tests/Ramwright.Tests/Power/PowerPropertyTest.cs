using CsCheck;
using Ramwright.Power;
using Ramwright.Presses;
using static Ramwright.Tests.Power.Rigs;

namespace Ramwright.Tests.Power;

/// <summary>What must hold for any press at all.</summary>
public class PowerPropertyTest
{
    private static readonly Gen<double> Share = Gen.Double[0.01, 0.99];

    private static readonly Gen<RigCylinder> AnyCylinder =
        Gen.Select(Gen.Double[0.03, 0.3], Gen.Double[0.3, 0.85], Gen.Double[0.05, 1], Gen.Bool, Gen.Double[0, 0.1])
            .Select((bore, rod, stroke, pulls, mu) => Double(bore, rod * bore, stroke) with
            {
                PullsByOil = pulls,
                SealFriction = mu,
                SpringPreload = pulls ? 0 : 300,
                SpringRate = pulls ? 0 : 1000,
            });

    private static readonly Gen<RigPump> AnyPump = Gen.OneOf<RigPump>(
        Gen.Select(Gen.Double[30, 200], Gen.Double[4, 10], Gen.Double[0.1, 3], Share, Share).Select((R, air, Q0, q, at) => (RigPump)(Air with
        {
            EffectiveRatio = R,
            AreaRatio = R,
            AirPressure = air * Bar,
            FreeFlow = Q0 * Lpm,
            FullFlow = q * Q0 * Lpm,
            FullFlowAt = at * R * 7 * Bar,
        })),
        Gen.Select(Gen.Double[0.3, 7.5], Gen.Double[0.5, 5], Gen.Double[2, 20], Gen.Bool).Select((kW, high, low, two) => (RigPump)(Electric with
        {
            Motor = kW * 1e3,
            HighStage = new RigStage(high * Lpm / 24, 0.9, 0.9),
            LowStage = two ? new RigStage(low * Lpm / 24, 0.9, 0.9) : null,
        })),
        Gen.Select(Gen.Double[0.5, 5], Gen.Double[1, 10]).Select((mL, times) => (RigPump)(Hand with
        {
            PerStroke = mL * 1e-6,
            LowPerStroke = mL * times * 1e-6,
        })));

    private static readonly Gen<RigLine> AnyHose =
        Gen.Select(Gen.Double[0.004, 0.025], Gen.Double[0.2, 8], Gen.Bool)
            .Select((bore, length, back) => new RigLine(back ? LineDuty.Return : LineDuty.Pressure, bore, length, 300 * Bar, "hose"));

    private static readonly Gen<(RigCylinder Cylinder, RigPump Pump, RigLine[] Lines, RigOil Oil)> AnyRig =
        Gen.Select(AnyCylinder, AnyPump, AnyHose.Array[0, 3], Gen.Double[-5, 80])
            .Select((c, p, lines, t) => (c, p, lines, Vg46 with { Temperature = t }));

    private static PowerReport Study((RigCylinder C, RigPump P, RigLine[] L, RigOil O) rig) => PowerStudy.Of(rig.C, rig.P, rig.L, rig.O);

    [Fact]
    public void ForceRisesWithPressure() => Gen.Select(AnyCylinder, Gen.Double[1e5, 1e8], Gen.Double[1.001, 3]).Sample((c, p, more) =>
    {
        double A = CylinderAreas.Of(c).Push;
        return RamForce.Net(p * more, A, c.SealFriction, 500) >= RamForce.Net(p, A, c.SealFriction, 500)
            && RamForce.Thrust(p * more, A) > RamForce.Thrust(p, A);
    });

    [Fact]
    public void PressureForAForceGivesThatForce() => Gen.Select(AnyCylinder, Gen.Double[1, 1e6]).Sample((c, F) =>
    {
        double A = CylinderAreas.Of(c).Push, p = RamForce.PressureFor(F, A, c.SealFriction, 500);
        return Math.Abs(RamForce.Net(p, A, c.SealFriction, 500) - F) <= 1e-9 * (F + 500);
    });

    [Fact]
    public void FlowNeverRisesWithPressure() => Gen.Select(AnyPump, Share, Share).Sample((pump, x, y) =>
    {
        PumpCurve curve = PumpCurve.Of(pump);
        double low = Math.Min(x, y) * curve.Ends, high = Math.Max(x, y) * curve.Ends;
        return curve.Flow(low) >= curve.Flow(high) && curve.Flow(high) > 0 && curve.Flow(0) >= curve.Flow(low) && curve.Flow(curve.Ends) == 0;
    });

    [Fact]
    public void TrappedOilTakesLongerToHigherPressure() => Gen.Select(AnyPump, Share, Share).Sample((pump, x, y) =>
    {
        PumpCurve curve = PumpCurve.Of(pump);
        double low = Math.Min(x, y) * curve.Ends, high = Math.Max(x, y) * curve.Ends;
        // Midpoint rule on the curve itself, as a second opinion.
        double sum = 0;
        const int n = 20_000;
        for (int i = 0; i < n; i++)
            sum += low / n / curve.Flow(low * (i + 0.5) / n);
        double t = curve.TimeToCompress(1e-3, 1.5e9, low);
        return t <= curve.TimeToCompress(1e-3, 1.5e9, high) && Math.Abs(t - sum * 1e-3 / 1.5e9) <= 2e-3 * t;
    }, iter: 30);

    [Fact]
    public void OilThinsAsItWarms() => Gen.Select(Gen.Double[-20, 110], Gen.Double[0.5, 20]).Sample((t, dt) =>
        OilViscosity.Of(Vg46 with { Temperature = t + dt }) < OilViscosity.Of(Vg46 with { Temperature = t }));

    [Fact]
    public void LossRisesWithFlow() => Gen.Select(Gen.Double[0.1, 60], Gen.Double[1.001, 2], Gen.Double[0.008, 0.03], Gen.Double[1e-5, 5e-4]).Sample(
        (lpm, more, D, nu) => LineFlow.Loss(lpm * more * Lpm, D, 3, nu, 870, 1.5) > LineFlow.Loss(lpm * Lpm, D, 3, nu, 870, 1.5));

    [Fact]
    public void TimesAndSpeedsArePositiveAndSpeedNeverRisesWithLoad() => AnyRig.Sample(rig =>
    {
        PowerReport r = Study(rig);
        for (int i = 1; i < r.Speeds.Count; i++)
        {
            if (r.Speeds[i].Speed > r.Speeds[i - 1].Speed * (1 + 1e-9))
                return false;
        }

        return r.ApproachSpeed > 0 && r.Times.FullStroke > 0 && r.Times.Approach > 0 && r.Times.Pressing is null or > 0
            && r.Times.Return is null or > 0 && r.Times.PressureRise > 0 && r.Speeds.All(s => s.Speed >= 0 && s.LineLoss >= 0);
    });

    [Fact]
    public void SpeedsAgreeWithThePumpsCurve() => AnyRig.Sample(rig =>
    {
        PowerReport r = Study(rig);
        // At the pressure found the pump gives that flow; on a step of the curve it could give more, never less.
        return r.Speeds.All(s => r.Curve.Flow(s.PumpPressure * (1 - 1e-9)) >= s.Flow * (1 - 1e-6) - 1e-15);
    });

    [Fact]
    public void BiggerBoreIsSlowerAndStronger() => Gen.Select(AnyRig, Gen.Double[1.02, 2]).Sample((rig, more) =>
    {
        // Without hoses and with no friction or spring: a larger bore also lowers the pressure, and with it the lines' share.
        RigCylinder c = rig.Cylinder with { SpringPreload = 0, SpringRate = 0 };
        PowerReport small = PowerStudy.Of(c, rig.Pump, [], rig.Oil), large = PowerStudy.Of(c with { Bore = c.Bore * more }, rig.Pump, [], rig.Oil);
        return large.TrueForce > small.TrueForce && large.MostPossibleForce > small.MostPossibleForce && large.ApproachSpeed < small.ApproachSpeed;
    });

    [Fact]
    public void MoreHoseIsNeverFaster() => Gen.Select(AnyRig, AnyHose).Sample((rig, extra) =>
    {
        PowerReport without = Study(rig), with = PowerStudy.Of(rig.Cylinder, rig.Pump, [.. rig.Lines, extra], rig.Oil);
        for (int i = 0; i < with.Speeds.Count; i++)
        {
            if (with.Speeds[i].Speed > without.Speeds[i].Speed * (1 + 1e-9))
                return false;
        }

        return !(with.Times.ReturnBy == ReturnBy.Oil && with.ReturnSpeed > without.ReturnSpeed * (1 + 1e-9));
    });

    [Fact]
    public void HigherReliefIsNeverWeaker() => Gen.Select(AnyRig, Gen.Double[50, 400], Gen.Double[1.01, 2]).Sample((rig, bar, more) =>
    {
        PowerReport low = PowerStudy.Of(rig.Cylinder, rig.Pump with { Relief = bar * Bar }, rig.Lines, rig.Oil);
        PowerReport high = PowerStudy.Of(rig.Cylinder, rig.Pump with { Relief = bar * more * Bar }, rig.Lines, rig.Oil);
        return high.TrueForce >= low.TrueForce && high.MostPossibleForce >= low.MostPossibleForce;
    });

    [Fact]
    public void LargerReceiverLastsLonger() => Gen.Select(Gen.Double[0.02, 1], Gen.Double[1.01, 5], Gen.Double[20, 900], Gen.Double[0, 600]).Sample(
        (V, more, demand, delivered) =>
        {
            double? small = Receiver.TimeToFall(V, 8 * Bar, 6 * Bar, 5 * Bar, demand * Lpm, delivered * Lpm);
            double? large = Receiver.TimeToFall(V * more, 8 * Bar, 6 * Bar, 5 * Bar, demand * Lpm, delivered * Lpm);
            return small is null ? large is null && delivered >= demand * 0.999 : large > small;
        });
}
