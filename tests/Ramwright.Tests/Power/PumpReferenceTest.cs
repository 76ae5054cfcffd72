using Ramwright.Power;
using Ramwright.Presses;
using Ramwright.Quantities;
using static Ramwright.Tests.Power.Rigs;

namespace Ramwright.Tests.Power;

public class PumpReferenceTest
{
    [Fact]
    public void PowerOfAFlow()
    {
        var row = new Reference("PU-01", "hydraulics calculation page", Trust.FoundAndRecomputed);
        row.Near("hydraulic, kW", 75.0, HydraulicPower.Of(250 * Bar, 180 * Lpm) / 1e3, 0.002);
        row.Near("shaft at 0.87, kW", 86.2, HydraulicPower.Of(250 * Bar, 180 * Lpm, 0.87) / 1e3, 0.002);
    }

    [Fact]
    public void GearPump()
    {
        var row = new Reference("PU-02", "teaching page, answers recomputed", Trust.FoundAndRecomputed);
        double V = 1.5 * Math.Pow(Inch, 3), n = 30, Q = HydraulicPower.Flow(V, n, 0.90);
        double shaft = HydraulicPower.Of(3000 * Psi, Q, 0.90 * 0.85);
        row.Near("flow, gpm", 10.52, Q / Gpm, 0.003);
        row.Near("hydraulic, hp", 18.41, HydraulicPower.Of(3000 * Psi, Q) / Hp, 0.003);
        row.Near("shaft, hp", 24.07, shaft / Hp, 0.003);
        row.Near("torque, lbf ft", 70.2, HydraulicPower.Torque(shaft, n) / (Lbf * 12 * Inch), 0.003);
        row.Near("pressure at that motor power, psi", 3000, HydraulicPower.PressureAt(shaft, V, n, 0.85) / Psi, 1e-9);
        new Reference("PU-03", "engineering tutorial page", Trust.FoundAndRecomputed)
            .Near("0.19 in³/rev at 1800 rpm, gpm", 1.48, HydraulicPower.Flow(0.19 * Math.Pow(Inch, 3), 30) / Gpm, 0.003);
    }

    [Theory]
    [InlineData(4, 301.6, 7.83), InlineData(5, 471.2, 12.24)]
    public void FlowForATime(double bore, double in3, double gpm)
    {
        var row = new Reference("PU-04", "pump-sizing page prints 7.8 and 12.2", Trust.FoundAndRecomputed);
        double A = CylinderAreas.Circle(bore * Inch);
        row.Near($"oil, bore {bore} in, in³", in3, OilDemand.Of(new CylinderAreas(A, 0), false, 24 * Inch, 1).Stroke / Math.Pow(Inch, 3), 0.003);
        row.Near($"flow, bore {bore} in, gpm", gpm, RamSpeed.FlowFor(24 * Inch, A, 10) / Gpm, 0.003);
    }

    [Fact]
    public void TwoStageMotor()
    {
        var row = new Reference("PU-05", "P = p Q/η, motor by the larger point", Trust.FromMemoryAndRecomputed);
        IReadOnlyList<MotorLoad> loads = MotorLoads.Of(Electric, 700 * Bar);
        row.Near("changeover, 8 L/min at 70 bar, kW", 1.167, loads[0].Power / 1e3, 0.002);
        row.Near("full pressure, 1 L/min at 700 bar, kW", 1.458, loads[1].Power / 1e3, 0.002);
        row.Near("one stage, 8 L/min at 700 bar, kW", 11.67, HydraulicPower.Of(700 * Bar, 8 * Lpm, 0.80) / 1e3, 0.002);
        new Reference("PU-06", "P = p Q", Trust.FromMemoryAndRecomputed)
            .Near("8 L/min dumped at 5 bar, kW", 0.0667, HydraulicPower.Of(5 * Bar, 8 * Lpm) / 1e3, 0.01);
    }

    [Fact]
    public void MotorCurrent() =>
        new Reference("PU-08", "P = √3 U I cos φ η", Trust.FromMemoryAndRecomputed)
            .Near("1.5 kW at 400 V, A", 3.43, HydraulicPower.LineCurrent(1500, 400, 0.80, 0.79), 0.005);

    [Fact]
    public void PumpCannotGiveMorePowerThanItGets() =>
        new Reference("PU-09", "a page claims 25 to 30 hp for this; p Q says otherwise", Trust.FoundAndRecomputed)
            .Near("22 gpm at 3000 psi, hp before losses", 38.5, HydraulicPower.Of(3000 * Psi, 22 * Gpm) / Hp, 0.002);

    [Fact]
    public void AirPumpStall()
    {
        var row = new Reference("PU-10", "trade wiki on pump ratio; gauge pressures, no friction", Trust.FoundAndRecomputed);
        row.Near("ratio 100 at 6 bar, bar", 600, AirPumpCurve.StallPressure(100, 6 * Bar) / Bar, 1e-12);
        row.Near("ratio 2 at 100 psi, psi", 200, AirPumpCurve.StallPressure(2, 100 * Psi) / Psi, 1e-12);
        row.Near("ratio 3 at 100 psi, psi", 300, AirPumpCurve.StallPressure(3, 100 * Psi) / Psi, 1e-12);
        new Reference("PU-11", "p_air = p/(R k)", Trust.FromMemoryAndRecomputed)
            .Near("air for 700 bar, ratio 100, friction 0.95, bar", 7.37, AirPumpCurve.AirFor(700 * Bar, 100 * 0.95) / Bar, 0.005);
    }

    [Fact]
    public void AirPumpCurveHasTheShapeOfMakersCurves()
    {
        var row = new Reference("PU-12", "typical published curve shape; a band, not data", Trust.FromMemory);
        AirPumpCurve usual = AirPumpCurve.Of(Air with { AirPressure = 7 * Bar, FullFlow = 0 });
        row.Near("flow at no pressure over free flow", 1, usual.Flow(0) / (0.9 * Lpm), 1e-12);
        row.Exactly("flow at stall", 0.0, usual.Flow(usual.Stall));
        row.Within("flow at half of stall over free flow, band 0.15 to 0.55", 0.35, usual.Flow(usual.Stall / 2) / usual.FreeFlow, 0.20);
        row.Exactly("no point fitted", false, usual.Fitted);

        AirPumpCurve stated = AirPumpCurve.Of(Air with { AirPressure = 7 * Bar });
        row.Near("flow at the stated point, L/min", 0.15, stated.Flow(500 * Bar) / Lpm, 1e-9);
        row.Exactly("point fitted", true, stated.Fitted);
    }

    [Fact]
    public void PumpUpOfTrappedOil()
    {
        var row = new Reference("PU-13", "first-order fill, Q = Q_0 (1 − p/p_s)", Trust.FromMemoryAndRecomputed);
        // A stated point on the straight line makes the exponent one.
        AirPumpCurve straight = AirPumpCurve.Of(Air with
        {
            EffectiveRatio = 100,
            AirPressure = 6 * Bar,
            RatedAir = 6 * Bar,
            FreeFlow = 0.5 * Lpm,
            FullFlow = 0.25 * Lpm,
            FullFlowAt = 300 * Bar,
        });
        row.Near("exponent", 1, straight.Exponent, 1e-12);
        row.Near("3 L to 90 % of stall, s", 33.2, straight.TimeToCompress(3e-3, 1.5e9, 540 * Bar), 0.005);
        row.Near("τ: 3 L to 1 − 1/e of stall, s", 14.4, straight.TimeToCompress(3e-3, 1.5e9, 600 * Bar * (1 - Math.Exp(-1))), 0.005);
    }

    [Fact]
    public void AirForOil()
    {
        var row = new Reference("PU-14", "gas law at one temperature", Trust.FromMemoryAndRecomputed);
        double V = CylinderAreas.Circle(0.1) * 0.03;
        row.Near("swept, L", 0.2356, V * 1e3, 0.002);
        row.Near("free air a stroke, L", 1.631, AirUse.PerStroke(V, 6 * Bar) * 1e3, 0.002);
        row.Near("oil a stroke, mL", 2.356, CylinderAreas.Circle(0.01) * 0.03 * 1e6, 0.002);
        new Reference("PU-15", "gas law at one temperature, no dead volume", Trust.FromMemoryAndRecomputed)
            .Near("free air for a litre of oil, ratio 100, 6 bar, L", 692.2, AirUse.For(1, 100, 6 * Bar), 0.002);
    }

    [Fact]
    public void StandardCubicFeet()
    {
        var row = new Reference("PU-16", "gas law", Trust.FromMemoryAndRecomputed);
        double T60F = (60 - 32) / 1.8 + 273.15;
        Assert.True(QuantityText.TryRead("1 cfm", Dimension.FreeAir, out Quantity cfm, out _));
        row.Near("1 ft³/min, L/min", 28.317, cfm.Si / Lpm, 0.001);
        row.Near("1 scfm, L/min at 0 °C and 1.01325 bar", 26.79, Atmosphere.Convert(Cfm, 14.696 * Psi, T60F, 101325, 273.15) / Lpm, 0.001);
        row.Near("1 scfm, L/min at 20 °C and 1 bar", 29.13, Atmosphere.Convert(Cfm, 14.696 * Psi, T60F, 1e5, 293.15) / Lpm, 0.001);
    }

    [Fact]
    public void SweptIsNotDelivered()
    {
        var row = new Reference("PU-17", "swept volume", Trust.FromMemoryAndRecomputed);
        row.Near("swept, L/min", 396.9, AirCompression.Swept(2, 0.065, 0.046, 1300 / 60.0) / Lpm, 0.002);
        row.Near("delivered at 0.65, L/min", 258.0, AirCompression.Swept(2, 0.065, 0.046, 1300 / 60.0, 0.65) / Lpm, 0.002);
    }

    [Fact]
    public void FillingTheReceiver()
    {
        new Reference("PU-18", "blog worked example; 14.7 psia", Trust.FoundAndRecomputed)
            .Near("100 gal to 120 psi by 15 cfm, min", 7.28, Receiver.Time(100 * Gpm * 60, 120 * Psi, 15 * Cfm, 14.7 * Psi) / 60, 0.005);
        var row = new Reference("PU-19", "blog worked example, metric", Trust.FoundAndRecomputed);
        row.Near("100 L, 6 to 8 bar, s", 45.9, Receiver.Time(0.1, 2 * Bar, 258 * Lpm), 0.005);
        row.Near("100 L, 0 to 8 bar, s", 183.6, Receiver.Time(0.1, 8 * Bar, 258 * Lpm), 0.005);
        new Reference("PU-20", "national-laboratory tool documentation", Trust.FoundAndRecomputed)
            .Near("80 gal, 120 to 90 psi, scf", 21.83, Receiver.FreeAir(80 * Gpm * 60, 30 * Psi, 14.7 * Psi) / (60 * Cfm), 0.003);
    }

    [Fact]
    public void LeakIsAFlowNotAShare() =>
        new Reference("PU-21", "leak-cost page, which reads the flow as 35.4 per cent", Trust.FoundAndRecomputed)
            .Near("5 ft³, 100 to 50 psi in 60 min, cfm", 0.354, Receiver.Leak(5 * 60 * Cfm, 50 * Psi, 3600, 1.25, 14.7 * Psi) / Cfm, 0.01);

    [Fact]
    public void WorkOfCompression()
    {
        const string book = "Machinery's Handbook, 31st ed., ";
        double atm = 14.7 * Psi;
        static double HpPerCfm(double mep) => mep * Cfm / Hp;

        var row = new Reference("PU-22", book + "Table 36", Trust.FoundAndRecomputed);
        double mep = AirCompression.IsothermalMeanPressure(100 * Psi, atm);
        row.Near("isothermal mean pressure to 100 psi, psi", 30.30, mep / Psi, 0.01);
        row.Near("isothermal, hp/cfm", 0.132, HpPerCfm(mep), 0.01);
        mep = AirCompression.IsentropicMeanPressure(100 * Psi, 1, atm);
        row.Near("adiabatic mean pressure to 100 psi, psi", 41.28, mep / Psi, 0.01);
        row.Near("adiabatic, hp/cfm", 0.1793, HpPerCfm(mep), 0.01);

        row = new Reference("PU-23", book + "Table 37", Trust.FoundAndRecomputed);
        mep = AirCompression.IsentropicMeanPressure(100 * Psi, 2, atm);
        row.Near("two stages to 100 psi, psi", 35.20, mep / Psi, 0.01);
        row.Near("two stages to 100 psi, hp/cfm", 0.153, HpPerCfm(mep), 0.01);
        mep = AirCompression.IsentropicMeanPressure(150 * Psi, 2, atm);
        row.Near("two stages to 150 psi, psi", 42.60, mep / Psi, 0.01);
        row.Near("two stages to 150 psi, hp/cfm", 0.186, HpPerCfm(mep), 0.01);

        row = new Reference("PU-24", book + "Table 36", Trust.FoundAndRecomputed);
        mep = AirCompression.IsentropicMeanPressure(150 * Psi, 1, atm);
        row.Near("one stage to 150 psi, psi", 51.47, mep / Psi, 0.01);
        row.Near("one stage to 150 psi, hp/cfm", 0.2233, HpPerCfm(mep), 0.01);
    }

    [Fact]
    public void PowerOfCompression()
    {
        var row = new Reference("PU-25", "P = 3.5 p_1 Q (r^0.2857 − 1)", Trust.FoundAndRecomputed);
        double Q = 258 * Lpm, ideal = AirCompression.IsentropicMeanPressure(8 * Bar) * Q;
        row.Near("ideal, kW", 1.322, ideal / 1e3, 0.003);
        row.Near("at 0.60, kW", 2.204, ideal / AirCompression.UsualEfficiency / 1e3, 0.003);
        row.Near("isothermal, kW", 0.952, AirCompression.IsothermalMeanPressure(8 * Bar) * Q / 1e3, 0.003);
        row.Near("free air for 2.204 kW, L/min", 258, AirCompression.DeliveryFor(2204, 8 * Bar) / Lpm, 0.003);

        row = new Reference("PU-26", "P = 3.5 p_1 Q (r^0.2857 − 1)", Trust.FromMemoryAndRecomputed);
        row.Near("isentropic at 7 bar, kW per m³/min", 4.76, AirCompression.IsentropicMeanPressure(7 * Bar) / 60e3, 0.003);
        row.Near("two stages at 7 bar, kW per m³/min", 4.06, AirCompression.IsentropicMeanPressure(7 * Bar, 2) / 60e3, 0.003);
        row.Near("isothermal at 7 bar, kW per m³/min", 3.49, AirCompression.IsothermalMeanPressure(7 * Bar) / 60e3, 0.003);
    }

    [Fact]
    public void Duty()
    {
        var row = new Reference("PU-27", "mass balance at one temperature", Trust.FromMemoryAndRecomputed);
        double mean = AirUse.Mean(350 * Lpm, 40, 180);
        row.Near("mean demand, L/min", 77.8, mean / Lpm, 0.01);
        row.Near("compressor's duty", 0.301, mean / (258 * Lpm), 0.01);
        // Drop in 40 s with the compressor running: the time for that drop must be 40 s.
        row.Near("time for 100 L to fall 0.62 bar, s", 40, Receiver.Time(0.1, 0.62 * Bar, (350 - 258) * Lpm), 0.01);
        new Reference("PU-29", "gas law at one temperature", Trust.FromMemoryAndRecomputed)
            .Near("100 L from 8 to 6 bar, compressor at rest, s", 152.2,
                Receiver.TimeToFall(0.1, 8 * Bar, 6 * Bar, 6 * Bar, 77.8 * Lpm, 258 * Lpm)!.Value, 0.005);
    }

    [Fact]
    public void AirDriveWastesMost()
    {
        var row = new Reference("PU-28", "PU-15 and PU-25 put together", Trust.FromMemoryAndRecomputed);
        double air = AirUse.For(1e-3, 100, 6 * Bar), outJ = 480 * Bar * 1e-3, ideal = AirCompression.IsentropicMeanPressure(6 * Bar) * air;
        row.Near("out of a litre of oil, kJ", 48, outJ / 1e3, 0.01);
        row.Near("isentropic, kJ", 181.2, ideal / 1e3, 0.01);
        row.Near("electric, kJ", 301.9, ideal / 0.60 / 1e3, 0.01);
        row.Near("efficiency", 0.159, outJ / (ideal / 0.60), 0.01);
    }

    [Fact]
    public void CompressorHelpsOnlyFromCutIn()
    {
        // By hand: 2 bar at 400 L/min with the compressor at rest, then 1 bar at 400 − 258 L/min.
        double rest = 0.1 * 2 * Bar / 101325 / (400 * Lpm), on = 0.1 * 1 * Bar / 101325 / (142 * Lpm);
        Near.Relative(rest + on, Receiver.TimeToFall(0.1, 8 * Bar, 6 * Bar, 5 * Bar, 400 * Lpm, 258 * Lpm)!.Value, 1e-12);
        Assert.Null(Receiver.TimeToFall(0.1, 8 * Bar, 6 * Bar, 5 * Bar, 200 * Lpm, 258 * Lpm));
        Assert.Equal(0, Receiver.TimeToFall(0.1, 8 * Bar, 6 * Bar, 9 * Bar, 200 * Lpm, 258 * Lpm));
        Near.Relative(rest / 2, Receiver.TimeToFall(0.1, 8 * Bar, 6 * Bar, 7 * Bar, 400 * Lpm, 0)!.Value, 1e-12);
    }

    [Fact]
    public void AirPumpFollowsItsAir()
    {
        AirPumpCurve full = AirPumpCurve.Of(Air with { AirPressure = 7 * Bar }), less = AirPumpCurve.Of(Air with { AirPressure = 5.5 * Bar });

        Near.Relative(5.5 / 7, less.Stall / full.Stall, 1e-12, "stall follows the regulator");
        Near.Relative(full.Flow(0.4 * full.Stall) * 5.5 / 7, less.Flow(0.4 * less.Stall), 1e-12, "flow at the same share of stall");
        Near.Relative(full.FreeFlow, AirPumpCurve.Of(Air with { AirPressure = 9 * Bar }).FreeFlow, 1e-12, "free flow above the rated air");
    }

    [Fact]
    public void ReliefEndsTheCurve()
    {
        PumpCurve curve = PumpCurve.Of(Electric);

        Near.Relative(8 * Lpm, curve.Flow(0), 1e-12);
        Near.Relative(8 * Lpm, curve.Flow(69.9 * Bar), 1e-12);
        Near.Relative(1 * Lpm, curve.Flow(70 * Bar), 1e-12);
        Near.Relative(1 * Lpm, curve.Flow(209.9 * Bar), 1e-12);
        Assert.Equal(0, curve.Flow(210 * Bar));
    }

    [Fact]
    public void NoCurveForAnUnknownPump() => Assert.Throws<ArgumentException>(() => PumpCurve.Of(new Odd { UsableOil = 1 }));

    private sealed record Odd : RigPump;
}
