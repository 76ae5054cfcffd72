using Ramwright.Power;
using Ramwright.Presses;

namespace Ramwright.Tests.Power;

/// <summary>No number that is none, and none outside its range, comes into the room.</summary>
public class DoorsTest
{
    private static readonly CylinderAreas Areas = new(0.008, 0.004);

    /// <summary>Lets the good value in, and refuses the bad ones, infinity and what is no number.</summary>
    private static void Refuses(Func<double, object?> call, double good, params ReadOnlySpan<double> bad)
    {
        call(good);
        foreach (double x in (double[])[.. bad, double.NaN, double.PositiveInfinity, double.NegativeInfinity])
            Assert.ThrowsAny<ArgumentException>(() => call(x));
    }

    [Fact]
    public void Air()
    {
        Refuses(p => AirCompression.IsothermalMeanPressure(p), 0, -1);
        Refuses(p => AirCompression.IsothermalMeanPressure(7e5, p), 1e5, 0);
        Refuses(p => AirCompression.IsentropicMeanPressure(p), 0, -1);
        Refuses(p => AirCompression.IsentropicMeanPressure(7e5, 1, p), 1e5, 0);
        Assert.Throws<ArgumentOutOfRangeException>(() => AirCompression.IsentropicMeanPressure(7e5, 0));
        Refuses(P => AirCompression.DeliveryFor(P, 7e5), 1500, 0);
        Refuses(p => AirCompression.DeliveryFor(1500, p), 7e5, 0);
        Refuses(e => AirCompression.DeliveryFor(1500, 7e5, e), 1, 0, 1.01);
        Refuses(b => AirCompression.Swept(2, b, 0.046, 21), 0.065, 0);
        Refuses(s => AirCompression.Swept(2, 0.065, s, 21), 0.046, 0);
        Refuses(n => AirCompression.Swept(2, 0.065, 0.046, n), 21, 0);
        Refuses(e => AirCompression.Swept(2, 0.065, 0.046, 21, e), 1, 0, 1.01);
        Assert.Throws<ArgumentOutOfRangeException>(() => AirCompression.Swept(0, 0.065, 0.046, 21));
        Refuses(R => AirPumpCurve.StallPressure(R, 6e5), 100, 0);
        Refuses(a => AirPumpCurve.StallPressure(100, a), 6e5, 0);
        Refuses(p => AirPumpCurve.AirFor(p, 100), 0, -1);
        Refuses(R => AirPumpCurve.AirFor(7e7, R), 100, 0);
        Refuses(Q => AirUse.For(Q, 100, 6e5), 0, -1);
        Refuses(R => AirUse.For(1e-5, R, 6e5), 100, 0);
        Refuses(a => AirUse.For(1e-5, 100, a), 0, -1);
        Refuses(V => AirUse.PerStroke(V, 6e5), 0, -1);
        Refuses(a => AirUse.PerStroke(1e-4, a), 0, -1);
        Refuses(q => AirUse.Mean(q, 40, 180), 0, -1);
        Refuses(t => AirUse.Mean(0.005, t, 180), 0, -1, 181);
        Refuses(t => AirUse.Mean(0.005, 40, t), 40, 39, 0);
        Refuses(V => Atmosphere.Convert(V, 1e5, 293, 1e5, 273), 0, -1);
        Refuses(p => Atmosphere.Convert(1, p, 293, 1e5, 273), 1e5, 0);
        Refuses(T => Atmosphere.Convert(1, 1e5, T, 1e5, 273), 293, 0);
        Refuses(p => Atmosphere.Convert(1, 1e5, 293, p, 273), 1e5, 0);
        Refuses(T => Atmosphere.Convert(1, 1e5, 293, 1e5, T), 273, 0);
        Refuses(V => Receiver.FreeAir(V, 2e5), 0.1, 0);
        Refuses(p => Receiver.FreeAir(0.1, p), 0, -1);
        Refuses(a => Receiver.FreeAir(0.1, 2e5, a), 1e5, 0);
        Refuses(q => Receiver.Time(0.1, 2e5, q), 0.004, 0);
        Refuses(p => Receiver.TimeToFall(0.1, 8e5, p, 7e5, 0.006, 0.004), 6e5, -1, 9e5);
        Refuses(p => Receiver.TimeToFall(0.1, p, 6e5, 5e5, 0.006, 0.004), 8e5, 5e5);
        Refuses(p => Receiver.TimeToFall(0.1, 8e5, 6e5, p, 0.006, 0.004), 7e5, -1);
        Refuses(q => Receiver.TimeToFall(0.1, 8e5, 6e5, 7e5, q, 0.004), 0.006, 0);
        Refuses(q => Receiver.TimeToFall(0.1, 8e5, 6e5, 7e5, 0.006, q), 0, -1);
        Refuses(t => Receiver.Leak(0.1, 2e5, t), 3600, 0);
        Refuses(f => Receiver.Leak(0.1, 2e5, 3600, f), 1.25, 0);
    }

    [Fact]
    public void Oil()
    {
        Refuses(p => BlockedRodSide.Pressure(p, Areas), 0, -1);
        Refuses(a => BlockedRodSide.Pressure(1e7, new CylinderAreas(0.008, a)), 0.004, 0);
        Refuses(K => BulkModulus.WithAir(K, 0.01, 1e7), 1.5e9, 0);
        Refuses(x => BulkModulus.WithAir(1.5e9, x, 1e7), 0, -0.1, 1);
        Refuses(p => BulkModulus.WithAir(1.5e9, 0.01, p), 1e7, 0);
        Refuses(n => BulkModulus.WithAir(1.5e9, 0.01, 1e7, n), 1, 0);
        Refuses(V => BulkModulus.Compression(V, 1e7), 0, -1);
        Refuses(p => BulkModulus.Compression(1, p), 0, -1);
        Refuses(K => BulkModulus.Compression(1, 1e7, K), 1.5e9, 0);
        Refuses(V => BulkModulus.ThermalGrowth(V, 30), 0, -1);
        Refuses(T => BulkModulus.ThermalGrowth(0.04, T), -30);
        Refuses(b => BulkModulus.ThermalGrowth(0.04, 30, b), 7e-4, 0);
        Refuses(p => StoredEnergy.InOil(p, 0.001), 0, -1);
        Refuses(V => StoredEnergy.InOil(1e7, V), 0, -1);
        Refuses(K => StoredEnergy.InOil(1e7, 0.001, K), 1.5e9, 0);
        Refuses(F => StoredEnergy.InFrame(F, 1e8), 0, -1);
        Refuses(k => StoredEnergy.InFrame(1e5, k), 1e8, 0);
        Refuses(d => OilViscosity.Through(d, 313, 6.8e-6, 373).A, 46e-6, 1.9e-6);
        Refuses(d => OilViscosity.Through(46e-6, 313, d, 373).A, 6.8e-6, 1.9e-6);
        Refuses(T => OilViscosity.Through(46e-6, T, 6.8e-6, 373).A, 313, 0);
        Refuses(T => OilViscosity.Through(46e-6, 313, 6.8e-6, T).A, 373, 0, 300);
        Refuses(T => OilViscosity.Through(46e-6, 313.15, 6.8e-6, 373.15).At(T), 293, 0);
        Refuses(p => OilHeat.ThrottlingRise(p, 870), 0, -1);
        Refuses(r => OilHeat.ThrottlingRise(1e7, r), 870, 0);
        Refuses(c => OilHeat.ThrottlingRise(1e7, 870, c), 1900, 0);
        Refuses(Q => OilHeat.StreamHeat(Q, 870), 0, -1);
        Refuses(r => OilHeat.StreamHeat(1e-4, r), 870, 0);
        Refuses(c => OilHeat.StreamHeat(1e-4, 870, c), 1900, 0);
        Refuses(P => OilHeat.SteadyRise(P, 1, 12), 0, -1);
        Refuses(A => OilHeat.SteadyRise(500, A, 12), 1, 0);
        Refuses(U => OilHeat.SteadyRise(500, 1, U), 12, 0);
        Refuses(P => OilHeat.AreaFor(P, 30, 12), 0, -1);
        Refuses(r => OilHeat.AreaFor(500, r, 12), 30, 0);
        Refuses(U => OilHeat.AreaFor(500, 30, U), 12, 0);
        Refuses(V => OilHeat.Capacity(V, 870, 20), 0, -1);
        Refuses(r => OilHeat.Capacity(0.04, r, 20), 870, 0);
        Refuses(m => OilHeat.Capacity(0.04, 870, m), 0, -1);
        Refuses(r => OilHeat.TimeToRise(r, 40, 8e4, 12), 0, -1);
        Refuses(s => OilHeat.TimeToRise(30, s, 8e4, 12), 40, -1);
        Refuses(c => OilHeat.TimeToRise(30, 40, c, 12), 8e4, 0);
        Refuses(u => OilHeat.TimeToRise(30, 40, 8e4, u), 12, 0);
        Refuses(s => OilHeat.RiseAfter(s, 8e4, 12, 600), 40, -1);
        Refuses(c => OilHeat.RiseAfter(40, c, 12, 600), 8e4, 0);
        Refuses(u => OilHeat.RiseAfter(40, 8e4, u, 600), 12, 0);
        Refuses(t => OilHeat.RiseAfter(40, 8e4, 12, t), 0, -1);
    }

    [Fact]
    public void Lines()
    {
        Refuses(Q => LineFlow.Velocity(Q, 0.01), 0, -1);
        Refuses(D => LineFlow.Velocity(1e-4, D), 0.01, 0);
        Refuses(Q => LineFlow.BoreFor(Q, 4), 0, -1);
        Refuses(u => LineFlow.BoreFor(1e-4, u), 4, 0);
        Refuses(u => LineFlow.Reynolds(u, 0.01, 46e-6), 0, -1);
        Refuses(D => LineFlow.Reynolds(2, D, 46e-6), 0.01, 0);
        Refuses(n => LineFlow.Reynolds(2, 0.01, n), 46e-6, 0);
        Refuses(Re => LineFlow.Friction(Re), 1e5, 0, 1.001e5);
        Refuses(L => LineFlow.Loss(1e-4, 0.01, L, 46e-6, 870), 0, -1);
        Refuses(r => LineFlow.Loss(1e-4, 0.01, 3, 46e-6, r), 870, 0);
        Refuses(K => LineFlow.Loss(1e-4, 0.01, 3, 46e-6, 870, K), 0, -1);
        Refuses(K => Fitting.Loss(K, 870, 4), 0, -1);
        Refuses(r => Fitting.Loss(1, r, 4), 870, 0);
        Refuses(u => Fitting.Loss(1, 870, u), 0, -1);
        Refuses(r => HoseProof.Carries(r, 1e7), 2.5e7, 0);
        Refuses(p => HoseProof.Carries(2.5e7, p), 0, -1);
        Refuses(u => VelocityBand.Of(LineDuty.Return).Judge(u), 0, -1);
        Refuses(p => GaugeCheck.RangeFor(p), 1e7, 0);
        Refuses(V => LettingOff.Of(V, 0.008, 100, []), 0, -1);
        Refuses(A => LettingOff.Of(1e-5, A, 100, []), 0.008, 0);
        Refuses(E => LettingOff.Of(1e-5, 0.008, E, []), 0, -1);
        Assert.Throws<ArgumentNullException>(() => LettingOff.Of(1e-5, 0.008, 100, null!));
        Assert.Throws<ArgumentNullException>(() => LineCheck.Of(null!, 1e-4, 1e7, 46e-6, 870));
    }

    [Fact]
    public void Pumps()
    {
        Refuses(p => HydraulicPower.Of(p, 1e-4), 0, -1);
        Refuses(Q => HydraulicPower.Of(1e7, Q), 0, -1);
        Refuses(e => HydraulicPower.Of(1e7, 1e-4, e), 1, 0, 1.01);
        Refuses(V => HydraulicPower.Flow(V, 25), 1e-5, 0);
        Refuses(n => HydraulicPower.Flow(1e-5, n), 25, 0);
        Refuses(e => HydraulicPower.Flow(1e-5, 25, e), 1, 0, 1.01);
        Refuses(P => HydraulicPower.PressureAt(P, 1e-5, 25), 1500, 0);
        Refuses(V => HydraulicPower.PressureAt(1500, V, 25), 1e-5, 0);
        Refuses(n => HydraulicPower.PressureAt(1500, 1e-5, n), 25, 0);
        Refuses(e => HydraulicPower.PressureAt(1500, 1e-5, 25, e), 1, 0, 1.01);
        Refuses(P => HydraulicPower.Torque(P, 25), 0, -1);
        Refuses(n => HydraulicPower.Torque(1500, n), 25, 0);
        Refuses(P => HydraulicPower.LineCurrent(P, 400, 0.8, 0.79), 0, -1);
        Refuses(U => HydraulicPower.LineCurrent(1500, U, 0.8, 0.79), 400, 0);
        Refuses(c => HydraulicPower.LineCurrent(1500, 400, c, 0.79), 1, 0, 1.01);
        Refuses(e => HydraulicPower.LineCurrent(1500, 400, 0.8, e), 1, 0, 1.01);
        Refuses(F => HandPumpCurve.HandleForce(F, 1e7, 7e7), 400, 0);
        Refuses(p => HandPumpCurve.HandleForce(400, p, 7e7), 0, -1);
        Refuses(p => HandPumpCurve.HandleForce(400, 1e7, p), 7e7, 0);
        Assert.Throws<ArgumentNullException>(() => PumpCurve.Of(null!));
        Assert.Throws<ArgumentNullException>(() => AirPumpCurve.Of(null!));
        Assert.Throws<ArgumentNullException>(() => ElectricPumpCurve.Of(null!));
        Assert.Throws<ArgumentNullException>(() => HandPumpCurve.Of(null!));
        Assert.Throws<ArgumentNullException>(() => MotorLoads.Of(null!, 1e7));
    }

    [Fact]
    public void Ram()
    {
        Refuses(d => CylinderAreas.Circle(d), 0, -1);
        Refuses(d => CylinderAreas.Ring(d, 0.05), 0.1, 0.04, -1);
        Refuses(d => CylinderAreas.Ring(0.1, d), 0.1, 0.11, -1);
        Refuses(p => RamForce.Thrust(p, 0.008), 0, -1);
        Refuses(A => RamForce.Thrust(1e7, A), 0, -1);
        Refuses(p => RamForce.Net(p, 0.008, 0.05), 0, -1);
        Refuses(A => RamForce.Net(1e7, A, 0.05), 0, -1);
        Refuses(m => RamForce.Net(1e7, 0.008, m), 0, -0.1, 1);
        Refuses(S => RamForce.Net(1e7, 0.008, 0.05, S), 0, -1);
        Refuses(F => RamForce.PressureFor(F, 0.008, 0.05), 0, -1);
        Refuses(A => RamForce.PressureFor(1e5, A, 0.05), 0.008, 0);
        Refuses(m => RamForce.PressureFor(1e5, 0.008, m), 0, -0.1, 1);
        Refuses(S => RamForce.PressureFor(1e5, 0.008, 0.05, S), 0, -1);
        Refuses(F => RamForce.Spring(F, 4e3, 0.15), 0, -1);
        Refuses(k => RamForce.Spring(900, k, 0.15), 0, -1);
        Refuses(x => RamForce.Spring(900, 4e3, x), 0, -1);
        Refuses(p => RamForce.Regenerative(p, Areas), 0, -1);
        Refuses(Q => RamSpeed.Of(Q, 0.008), 0, -1);
        Refuses(A => RamSpeed.Of(1e-4, A), 0.008, 0);
        Refuses(s => RamSpeed.Time(s, 0.01), 0, -1);
        Refuses(v => RamSpeed.Time(0.3, v), 0.01, 0);
        Refuses(s => RamSpeed.FlowFor(s, 0.008, 5), 0, -1);
        Refuses(A => RamSpeed.FlowFor(0.3, A, 5), 0.008, 0);
        Refuses(t => RamSpeed.FlowFor(0.3, 0.008, t), 5, 0);
        Refuses(V => RamSpeed.HandStrokes(V, 2.5e-6), 0, -1);
        Refuses(V => RamSpeed.HandStrokes(1e-3, V), 2.5e-6, 0, 1e-13);
        Refuses(m => RamFall.LoadPressure(m, 0.008), 0, -1);
        Refuses(A => RamFall.LoadPressure(100, A), 0.008, 0);
        Refuses(d => RamFall.FromOpenPort(100, 0.008, d, 0.3, 870), 0.01, 0);
        Refuses(s => RamFall.FromOpenPort(100, 0.008, 0.01, s, 870), 0.3, 0);
        Refuses(r => RamFall.FromOpenPort(100, 0.008, 0.01, 0.3, r), 870, 0);
        Refuses(s => RamFall.ThroughLines(100, 0.008, s, [], LineDuty.Return, 46e-6, 870), 0.3, 0);
        Refuses(n => RamFall.ThroughLines(100, 0.008, 0.3, [], LineDuty.Return, n, 870), 46e-6, 0);
        Refuses(r => RamFall.ThroughLines(100, 0.008, 0.3, [], LineDuty.Return, 46e-6, r), 870, 0);
        Assert.Throws<ArgumentNullException>(() => RamFall.ThroughLines(100, 0.008, 0.3, null!, LineDuty.Return, 46e-6, 870));
        Refuses(s => OilDemand.Of(Areas, true, s, 0.01), 0.3, 0);
        Refuses(V => OilDemand.Of(Areas, true, 0.3, V), 0, -1);
        Refuses(A => OilDemand.Of(new CylinderAreas(A, 0), false, 0.3, 0.01), 0.008, 0);
        Assert.Throws<ArgumentNullException>(() => CylinderAreas.Of(null!));
        Assert.Throws<ArgumentNullException>(() => SellersRating.Of(null!, Areas));
        Assert.Throws<ArgumentOutOfRangeException>(() => SellersRating.Newtons((Ton)9));
    }
}
