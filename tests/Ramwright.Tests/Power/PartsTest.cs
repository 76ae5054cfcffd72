using Ramwright.Power;
using Ramwright.Presses;
using Ramwright.Workings;
using static Ramwright.Tests.Power.Rigs;

namespace Ramwright.Tests.Power;

/// <summary>Single parts of the circuit, each against a figure worked out by hand, and what each refuses.</summary>
public class PartsTest
{
    private static void Refused(params ReadOnlySpan<Func<object?>> calls)
    {
        foreach (Func<object?> call in calls)
            Assert.ThrowsAny<ArgumentException>(call);
    }

    [Fact]
    public void EveryKindOfFittingCountsByItself()
    {
        // LN-20's table; entry and exit stand for an empty line
        var r = new Reference("LN-20", "Fluid mechanics e-book, table 2.1: loss coefficients of fittings", Trust.Found);
        foreach ((string what, Fittings one, double K) in (ReadOnlySpan<(string, Fittings, double)>)[
            ("elbow", new() { Elbows = 1 }, 0.9), ("half elbow", new() { HalfElbows = 1 }, 0.42), ("tee", new() { Tees = 1 }, 1.8), ("return bend", new() { ReturnBends = 1 }, 2.2),
            ("gate valve", new() { GateValves = 1 }, 0.19), ("angle valve", new() { AngleValves = 1 }, 5), ("globe valve", new() { GlobeValves = 1 }, 10),
            ("as stated", new() { LossCoefficient = 3 }, 3)])
            r.Near(what, K + 0.5 + 1.0, Fitting.Sum(one), 1e-12);
        r.Near("one of each", 0.9 + 0.42 + 1.8 + 2.2 + 0.19 + 5 + 10 + 1.5, Fitting.Sum(new Fittings { Elbows = 1, HalfElbows = 1, Tees = 1, ReturnBends = 1, GateValves = 1, AngleValves = 1, GlobeValves = 1 }), 1e-12);
        r.Near("none", 1.5, Fitting.Sum(null), 1e-12);
    }

    [Fact]
    public void ALineFarTooSmallIsStillJudged()
    {
        // 4 mm bore, 2 m, 200 L/min of 5 cSt: u 265.3 m/s, Re 212 207, f 0.3164/Re^¼ = 0.014742
        const double rho = 870, Q = 200 * Lpm;
        double u = Q / (Math.PI / 4 * 16e-6), dp = (0.3164 / Math.Pow(u * 0.004 / 5e-6, 0.25) * 2 / 0.004 + 1.5) * rho * u * u / 2;
        LineCheck check = LineCheck.Of(new RigLine(LineDuty.Pressure, 0.004, 2, 250 * Bar, "h"), Q, 260 * Bar, 5e-6, rho);
        Near.Relative(dp, check.Loss, 1e-9);
        Assert.Equal(VelocityVerdict.Above, check.Verdict);
        Assert.False(check.CarriesIt);
        Assert.True(LineCheck.Of(new RigLine(LineDuty.Suction, 0.019, 0.4, 10 * Bar, "s"), 1e-4, 260 * Bar, 46e-6, rho).CarriesIt);
        Assert.True(LineCheck.Of(new RigLine(LineDuty.Pressure, 0.019, 0.4, null, "s"), 1e-4, 260 * Bar, 46e-6, rho).CarriesIt);
        Assert.True(LineCheck.Of(new RigLine(LineDuty.Return, 0.019, 0.4, 260 * Bar, "s"), 1e-4, 260 * Bar, 46e-6, rho).CarriesIt);
    }

    [Fact]
    public void TheTightestReturnLineSetsTheTimeOfLettingOff()
    {
        // 30 mL through the 8 mm return at 4 m/s: 30e-6/(4·50.27e-6) = 0.149 s; with pressure lines alone through theirs at 10 m/s
        RigLine pressure = new(LineDuty.Pressure, 0.005, 2, null, "p"), wide = new(LineDuty.Return, 0.0127, 3, null, "r"), tight = new(LineDuty.Return, 0.008, 3, null, "t");
        Near.Relative(30e-6 / (4 * Math.PI / 4 * 64e-6), LettingOff.Of(30e-6, 0.005, 1, [pressure, wide, tight]).LeastTime!.Value, 1e-12);
        Near.Relative(30e-6 / (10 * Math.PI / 4 * 25e-6), LettingOff.Of(30e-6, 0.005, 1, [pressure]).LeastTime!.Value, 1e-12);
    }

    [Fact]
    public void SmoothPipesInARow()
    {
        // two hoses end to end: their volumes add, and at a trickle so do their resistances after Hagen and Poiseuille
        RigLine a = new(LineDuty.Pressure, 0.0064, 2, null, "a"), b = new(LineDuty.Pressure, 0.0095, 3, null, "b"), other = new(LineDuty.Return, 0.02, 5, null, "c");
        var set = new LineSet([a, other, b], LineDuty.Pressure, 46e-6, 870);
        Near.Relative(Math.PI / 4 * (0.0064 * 0.0064 * 2 + 0.0095 * 0.0095 * 3), set.Volume, 1e-12);
        double r = 128 * 46e-6 * 870 / Math.PI * (2 / Math.Pow(0.0064, 4) + 3 / Math.Pow(0.0095, 4));
        Near.Relative(r, set.LaminarResistance, 1e-12);
        Near.Relative(r, set.Loss(1e-12) / 1e-12, 1e-6);
        Assert.Equal(0, set.Loss(0));
        foreach (double trickle in new[] { double.Epsilon, 1e-300, 1e-200, 1e-30, 1e-20 })
            Assert.InRange(set.Loss(trickle), 0, 1e-3);
        Assert.False(set.IsEmpty);
        Assert.True(new LineSet([other], LineDuty.Pressure, 46e-6, 870).IsEmpty);
    }

    [Fact]
    public void OilThatRunsOutCutsTheStroke()
    {
        var areas = new CylinderAreas(0.008, 0.005);
        Assert.Equal(0.3, OilDemand.Of(areas, true, 0.3, 0.0009).Reach);              // the rod's 3e-3 m² takes just all
        Assert.Equal(0.3, OilDemand.Of(areas, true, 0.3, 0.010).Reach);
        Near.Relative(0.2, OilDemand.Of(areas, true, 0.3, 0.0006).Reach, 1e-12);
        Near.Relative(0.1, OilDemand.Of(areas, false, 0.3, 0.0008).Reach, 1e-12);
    }

    [Fact]
    public void APackIsOverloadedByTheStagesThatRun()
    {
        // Both stages: 1.5 kW·0.8 over 8 L/min: 90 bar, beyond the change-over at 70, so it is not overloaded there; the small one alone: 720 bar.
        ElectricPumpCurve curve = ElectricPumpCurve.Of(Electric with { Relief = null, RatedPressure = null });
        Near.Relative(90 * Bar, curve.RatedLoadPressureBoth, 1e-9);
        Near.Relative(720 * Bar, curve.RatedLoadPressure, 1e-9);
        Assert.False(curve.OverloadedAtChangeover);
        Assert.False(curve.StopsAtChangeover);
        foreach ((double bar, bool over) in (ReadOnlySpan<(double, bool)>)[(0, false), (60, false), (100, false), (719, false), (721, true)])
            Assert.Equal(over, curve.Overloads(bar * Bar));
        ElectricPumpCurve late = ElectricPumpCurve.Of(Electric with { UnloadAt = 150 * Bar, Relief = null, RatedPressure = null });
        Assert.True(late.OverloadedAtChangeover);
        foreach ((double bar, bool over) in (ReadOnlySpan<(double, bool)>)[(89, false), (91, true), (149, true), (151, false)])
            Assert.Equal(over, late.Overloads(bar * Bar));
        ElectricPumpCurve single = ElectricPumpCurve.Of(Electric with { LowStage = null });
        Assert.False(single.OverloadedAtChangeover || single.StopsAtChangeover);
        // two and a half times the torque of both, 225 bar, comes before a change-over at 300: there it stands
        var w = new Working();
        Assert.True(ElectricPumpCurve.Of(Electric with { UnloadAt = 300 * Bar, Relief = null, RatedPressure = null }, w).StopsAtChangeover);
        Assert.Single(w.Notes);
        var quiet = new Working();
        ElectricPumpCurve.Of(Electric, quiet);
        Assert.Empty(quiet.Notes);
        Refused(() => curve.Overloads(-1), () => curve.Overloads(double.NaN), () => curve.Flow(-1), () => curve.TimeToCompress(-1, 1.5e9, 1e7), () => curve.TimeToCompress(1e-3, 0, 1e7),
            () => curve.TimeToCompress(1e-3, 1.5e9, curve.Ends), () => curve.TimeToCompress(1e-3, 1.5e9, -1),
            () => ElectricPumpCurve.Of(Electric with { LowStage = Electric.LowStage! with { MechanicalEfficiency = 0 } }),
            () => ElectricPumpCurve.Of(Electric with { UnloadAt = 0 }), () => ElectricPumpCurve.Of(Electric with { Relief = 0 }));
    }

    [Fact]
    public void LoadsOfTheMotor()
    {
        // 8 L/min against 70 bar and 1 L/min against 210, 0.8 of it at the shaft (PU-05's way): 1.167 and 0.4375 kW of 1.5
        IReadOnlyList<MotorLoad> loads = MotorLoads.Of(Electric, 210 * Bar);
        var r = new Reference("PU-05", "P = pQ/η, two-stage pack: 8 L/min to 70 bar, 1 L/min to 210 bar, η 0.80, 1.5 kW", Trust.FromMemoryAndRecomputed);
        r.Near("change-over, kW", 1.167, loads[0].Power / 1e3, 0.001);
        r.Near("change-over, share", 1.1667 / 1.5, loads[0].Share, 0.001);
        r.Near("change-over, L/min", 8, loads[0].Flow / Lpm, 1e-9);
        r.Near("full pressure, kW", 0.4375, loads[1].Power / 1e3, 0.001);
        Assert.Single(MotorLoads.Of(Electric, 60 * Bar));
        Assert.Single(MotorLoads.Of(Electric with { LowStage = null }, 210 * Bar));
        Refused(() => MotorLoads.Of(Electric, 0), () => MotorLoads.Of(Electric with { Motor = 0 }, 1e7));
    }

    [Fact]
    public void GaugesBeyondTheListAndNonsense()
    {
        Near.Relative(3000 * Bar / 0.75, GaugeCheck.RangeFor(3000 * Bar), 1e-12);
        Refused(() => GaugeCheck.Of(null!, 1e7), () => GaugeCheck.Of(new RigGauge(4e7, 1.6), 0), () => GaugeCheck.Of(new RigGauge(0, 1.6), 1e7), () => GaugeCheck.Of(new RigGauge(4e7, 0), 1e7));
    }

    [Fact]
    public void CylindersThatCannotBe()
    {
        RigCylinder c = Double(0.1, 0.07);
        Refused(() => CylinderAreas.Of(c with { Bore = 0 }), () => CylinderAreas.Of(c with { Bore = double.NaN }), () => CylinderAreas.Of(c with { CentreTube = -0.01 }),
            () => CylinderAreas.Of(c with { CentreTube = 0.1 }), () => CylinderAreas.Of(c with { Rod = 0 }), () => CylinderAreas.Of(c with { Rod = 0.1 }),
            () => CylinderAreas.Of(c with { Rod = 0.11, PullsByOil = false }), () => CylinderAreas.Of(c with { Count = 0 }));
        // a plunger may be as thick as its bore
        Near.Relative(Math.PI / 4 * 0.01, CylinderAreas.Of(c with { Rod = 0.1, PullsByOil = false }).Push, 1e-12);
        Assert.Equal(0, new CylinderAreas(0.008, 0).Ratio);
        Assert.Equal(2, new CylinderAreas(0.008, 0.004).Ratio);

        var w = new Working();
        CylinderAreas.Of(c, w);
        WorkingCheck.Shows(w, "A a");
        WorkingCheck.Holds(w);
        var plunger = new Working();
        CylinderAreas.Of(c with { PullsByOil = false }, plunger);
        WorkingCheck.Shows(plunger, "A");
    }

    [Fact]
    public void PumpsThatCannotBe() => Refused(
        () => AirPumpCurve.Of(Air with { RatedAir = 0 }), () => AirPumpCurve.Of(Air with { FreeFlow = 0 }), () => AirPumpCurve.Of(Air with { FullFlow = -1 }),
        () => AirPumpCurve.Of(Air with { FullFlowAt = -1 }), () => HandPumpCurve.Of(Hand with { PerStroke = 0 }), () => HandPumpCurve.Of(Hand with { LowPerStroke = 1e-6 }),
        () => HandPumpCurve.Of(Hand with { UnloadAt = -1 }), () => HandPumpCurve.Of(Hand with { Cadence = 0 }), () => HandPumpCurve.Of(Hand with { RatedPressure = 0 }),
        () => PowerStudy.Of(null!, Electric, PackHoses, Vg46), () => PowerStudy.Of(Double(0.1, 0.07), null!, PackHoses, Vg46), () => PowerStudy.Of(Double(0.1, 0.07), Electric, null!, Vg46),
        () => PowerStudy.Of(Double(0.1, 0.07), Electric, PackHoses, null!), () => PowerStudy.Of(Double(0.1, 0.07, 0), Electric, PackHoses, Vg46),
        () => PowerStudy.Of(Double(0.1, 0.07) with { SealFriction = 1 }, Electric, PackHoses, Vg46));

    [Fact]
    public void ReadingALabelInTheTonItFits()
    {
        // 50 US tons sold as 50 tonnes: 490.3 kN stated, 444.8 at the rated pressure
        RigCylinder c = Double(0.1, 0.07) with { RatedForce = 50 * SellersRating.Tonne, RatedPressure = 50 * SellersRating.UsTon / (Math.PI / 4 * 0.01) };
        SellersRating label = SellersRating.Of(c, CylinderAreas.Of(c))!;
        Assert.Equal((Ton.Tonne, Ton.UsTon, true), (label.ReadAs, label.FitsBest, label.LooksLikeAnotherTon));
        SellersRating honest = SellersRating.Of(c with { RatedForce = 50 * SellersRating.UsTon }, CylinderAreas.Of(c))!;
        Assert.False(honest.LooksLikeAnotherTon);
        SellersRating uk = SellersRating.Of(c with { RatedForce = 55 * SellersRating.UkTon }, CylinderAreas.Of(c))!;
        Assert.Equal((Ton.UkTon, 55.0), (uk.ReadAs, uk.Figure));
        Refused(() => SellersRating.Of(c with { RatedForce = 0 }, CylinderAreas.Of(c)), () => SellersRating.Of(c with { RatedPressure = 0 }, CylinderAreas.Of(c)));
    }
}
