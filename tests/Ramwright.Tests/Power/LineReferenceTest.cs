using Ramwright.Power;
using Ramwright.Presses;
using static Ramwright.Tests.Power.Rigs;

namespace Ramwright.Tests.Power;

public class LineReferenceTest
{
    [Fact]
    public void HoseFactors()
    {
        var row = new Reference("LN-01", "hose catalogue technical page; proof from ISO 1402 and EN 853", Trust.FoundAndRecomputed);
        row.Near("least burst of a 250 bar hose, bar", 1000, 250 * HoseProof.Burst, 1e-12);
        row.Near("proof, bar", 500, 250 * HoseProof.Proof, 1e-12);
        row.Exactly("carries its rating", true, HoseProof.Carries(250 * Bar, 250 * Bar));
        row.Exactly("carries no more", false, HoseProof.Carries(250 * Bar, 251 * Bar));
        var twoWire = new Reference("LN-02", "EN 853:2015 Table 4, type 2SN", Trust.FromMemoryAndRecomputed);
        foreach ((double rated, double burst) in new[] { (400.0, 1600.0), (350, 1400), (330, 1320), (275, 1100), (250, 1000), (215, 860) })
        {
            twoWire.Near($"burst of a {rated} bar hose, bar", burst, rated * HoseProof.Burst, 1e-12);
            new Reference("LN-03", "LN-02", Trust.FromMemory)
                .Exactly($"a {rated} bar hose carries a 700 bar jack", false, HoseProof.Carries(rated * Bar, 700 * Bar));
        }
    }

    [Theory]
    [InlineData(LineDuty.Suction, 0.5, 1.5), InlineData(LineDuty.Return, 2, 4), InlineData(LineDuty.Pressure, 3, 10)]
    public void VelocityBands(LineDuty duty, double least, double most)
    {
        var row = new Reference("LN-04", "hydraulics FAQ page", Trust.Found);
        VelocityBand band = VelocityBand.Of(duty);
        row.Near($"{duty}, least, m/s", least, band.Least, 1e-12);
        row.Near($"{duty}, most, m/s", most, band.Most, 1e-12);
        row.Exactly($"{duty}, just below", VelocityVerdict.Below, band.Judge(0.99 * least));
        row.Exactly($"{duty}, at the top", VelocityVerdict.Within, band.Judge(most));
        row.Exactly($"{duty}, just above", VelocityVerdict.Above, band.Judge(1.01 * most));
    }

    [Theory]
    [InlineData(0.5, 29.1), InlineData(1.5, 16.8), InlineData(2, 14.6), InlineData(4, 10.3), InlineData(3, 11.9), InlineData(10, 6.5)]
    public void BoreForAVelocity(double u, double mm) =>
        new Reference("LN-05", "hydraulics FAQ page, worked example", Trust.FoundAndRecomputed)
            .Near($"bore for 20 L/min at {u} m/s, mm", mm, LineFlow.BoreFor(20 * Lpm, u) * 1e3, 0.005);

    [Fact]
    public void BoreInInches()
    {
        var row = new Reference("LN-06", "hose flow-capacity page, A = 0.3208 gpm/v", Trust.FoundAndRecomputed);
        double D = LineFlow.BoreFor(13 * Gpm, 120 * Inch);
        row.Near("area, in²", 0.417, CylinderAreas.Circle(D) / (Inch * Inch), 0.003);
        row.Near("bore, in", 0.729, D / Inch, 0.003);
    }

    [Fact]
    public void ViscosityLine()
    {
        var row = new Reference("LN-08", "ASTM D341, shared worksheet with T = t + 273", Trust.FoundAndRecomputed);
        OilViscosity line = OilViscosity.Through(32e-6, 313, 5.4e-6, 373);
        row.Within("A", 9.5259, line.A, 0.0002);
        row.Within("B", 3.7449, line.B, 0.0002);
        row.Near("at 80 °C, mm²/s", 8.53, line.At(353) * 1e6, 0.001);

        OilViscosity heavy = OilViscosity.Through(404e-6, 313.15, 28e-6, 373.15);
        new Reference("LN-09", "ASTM D341, calculator page example", Trust.FoundAndRecomputed)
            .Within("404/28 at 60 °C, mm²/s", 132.13, heavy.At(333.15) * 1e6, 0.05);
        OilViscosity other = OilViscosity.Through(68e-6, 313.15, 14.85e-6, 353.15);
        new Reference("LN-10", "ASTM D341, calculator page example", Trust.FoundAndRecomputed)
            .Within("68 at 40, 14.85 at 80: at 100 °C, mm²/s", 8.79, other.At(373.15) * 1e6, 0.02);
    }

    [Theory]
    [InlineData(0, 336.0, 577.3), InlineData(10, 161.0, 261.9), InlineData(20, 86.3, 133.8), InlineData(30, 50.6, 75.4)]
    [InlineData(50, 21.5, 30.0), InlineData(60, 15.2, 20.6), InlineData(80, 8.53, 11.1)]
    public void ViscosityTable(double t, double vg32, double vg46)
    {
        var row = new Reference("LN-11", "ASTM D341; the values at 100 °C are typical", Trust.FoundAndRecomputed);
        row.Near($"VG 32 at {t} °C, mm²/s", vg32, OilViscosity.Of(Vg32At(t)) * 1e6, 0.005);
        row.Near($"VG 46 at {t} °C, mm²/s", vg46, OilViscosity.Of(Vg46 with { Temperature = t }) * 1e6, 0.005);
    }

    [Fact]
    public void LaminarLoss()
    {
        var row = new Reference("LN-14", "Crane TP 410M (1999) p. 3-12 example 1, by a comparison page", Trust.FoundAndRecomputed);
        double nu = 0.450 / 897, u = LineFlow.Velocity(3000 * Lpm, 0.15405);
        row.Near("Re (825 printed)", 824, LineFlow.Reynolds(u, 0.15405, nu), 0.005);
        row.Near("loss over 100 m, bar", 1.63, LineFlow.Loss(3000 * Lpm, 0.15405, 100, nu, 897) / Bar, 0.005);
    }

    [Theory]
    [InlineData(10, 85.3, 5.70), InlineData(20, 166.9, 2.91), InlineData(40, 485.6, 1.00), InlineData(60, 1083, 0.449)]
    public void HoseLoss(double t, double Re, double bar)
    {
        var row = new Reference("LN-15", "f = 64/Re with the viscosities of LN-11", Trust.FoundAndRecomputed);
        double nu = OilViscosity.Of(Vg46 with { Temperature = t }), u = LineFlow.Velocity(10 * Lpm, 0.0095);
        row.Near("speed of 10 L/min in 9.5 mm, m/s", 2.351, u, 0.001);
        row.Near($"Re, VG 46 at {t} °C", Re, LineFlow.Reynolds(u, 0.0095, nu), 0.005);
        row.Near($"loss over 3 m, VG 46 at {t} °C, bar", bar, LineFlow.Loss(10 * Lpm, 0.0095, 3, nu, 870) / Bar, 0.005);
    }

    [Fact]
    public void OtherHoseLosses()
    {
        var thin = new Reference("LN-16", "f = 64/Re with the viscosities of LN-11", Trust.FoundAndRecomputed);
        thin.Near("VG 32 at 20 °C, bar", 1.877, LineFlow.Loss(10 * Lpm, 0.0095, 3, OilViscosity.Of(Vg32At(20)), 870) / Bar, 0.005);
        thin.Near("VG 32 at 40 °C, bar", 0.696, LineFlow.Loss(10 * Lpm, 0.0095, 3, OilViscosity.Of(Vg32At(40)), 870) / Bar, 0.005);

        var high = new Reference("LN-17", "f = 64/Re with the viscosities of LN-11", Trust.FoundAndRecomputed);
        double nu = OilViscosity.Of(Vg46 with { Temperature = 20 });
        high.Near("Re, 1 L/min in 6.4 mm", 24.8, LineFlow.Reynolds(LineFlow.Velocity(1 * Lpm, 0.0064), 0.0064, nu), 0.005);
        high.Near("1 L/min in 6.4 mm, 2 m, VG 46 at 20 °C, bar", 0.943, LineFlow.Loss(1 * Lpm, 0.0064, 2, nu, 870) / Bar, 0.005);
    }

    [Fact]
    public void TurbulentLoss()
    {
        var row = new Reference("LN-18", "Blasius; Haaland gives 3.93 bar", Trust.FoundAndRecomputed);
        double u = LineFlow.Velocity(60 * Lpm, 0.0125), Re = LineFlow.Reynolds(u, 0.0125, 15e-6);
        row.Near("speed, m/s", 8.149, u, 0.01);
        row.Near("Re", 6791, Re, 0.01);
        row.Near("friction factor", 0.03485, LineFlow.Friction(Re), 0.01);
        row.Near("loss over 5 m, bar", 3.98, LineFlow.Loss(60 * Lpm, 0.0125, 5, 15e-6, 860) / Bar, 0.01);

        var regime = new Reference("LN-19", "Fluid Power Engineering (Rabie), App. 2B; no value to trust from 2000 to 4000", Trust.Found);
        regime.Near("laminar at Re 1999", 64 / 1999.0, LineFlow.Friction(1999), 1e-12);
        regime.Near("the higher, turbulent value at Re 2000", 0.3164 / Math.Pow(2000, 0.25), LineFlow.Friction(2000), 1e-12);
        Assert.Throws<ArgumentOutOfRangeException>(() => LineFlow.Friction(1.01e5));
    }

    [Fact]
    public void MinorLosses()
    {
        var table = new Reference("LN-20", "fluid mechanics e-book, table 2.1", Trust.Found);
        table.Near("elbow of 90°", 0.9, Fitting.Elbow90, 1e-12);
        table.Near("elbow of 45°", 0.42, Fitting.Elbow45, 1e-12);
        table.Near("tee", 1.8, Fitting.Tee, 1e-12);
        table.Near("return bend", 2.2, Fitting.ReturnBend, 1e-12);
        table.Near("globe valve", 10, Fitting.GlobeValve, 1e-12);
        table.Near("angle valve", 5, Fitting.AngleValve, 1e-12);
        table.Near("gate valve", 0.19, Fitting.GateValve, 1e-12);
        table.Near("exit into a tank", 1.0, Fitting.Exit, 1e-12);
        table.Near("entry", 0.5, Fitting.Entry, 1e-12);

        var row = new Reference("LN-21", "K ρ v²/2", Trust.FoundAndRecomputed);
        double K = Fitting.Sum(new Fittings { Elbows = 4, Tees = 1 });
        row.Near("sum of K", 6.9, K, 1e-12);
        row.Near("at 4 m/s, bar", 0.480, Fitting.Loss(K, 870, 4) / Bar, 0.005);
        row.Near("one elbow, bar", 0.0626, Fitting.Loss(Fitting.Elbow90, 870, 4) / Bar, 0.005);
    }

    [Fact]
    public void CompressionAndEnergy()
    {
        new Reference("LN-22", "0.5 % for 1000 psi; typical 1.4 to 1.8 GPa", Trust.FoundAndRecomputed)
            .Near("litres given by 200 L at 1000 psi and 1.379 GPa", 1, BulkModulus.Compression(200, 1000 * Psi, 1.379e9), 0.001);
        var book = new Reference("LN-23", "textbook exercise page", Trust.FoundAndRecomputed);
        book.Near("0.25 m³ at 16 MPa, K 5 GPa, L", 0.80, BulkModulus.Compression(0.25, 16e6, 5e9) * 1e3, 0.001);
        book.Near("as a share, %", 0.32, BulkModulus.Compression(100, 16e6, 5e9), 0.001);

        var row = new Reference("LN-24", "elastic energy p² V/(2 K)", Trust.FromMemoryAndRecomputed);
        row.Near("3 L at 700 bar let go, L", 0.140, BulkModulus.Compression(3, 700 * Bar), 0.002);
        row.Near("energy, J", 4900, StoredEnergy.InOil(700 * Bar, 3e-3), 0.002);
        new Reference("LN-25", "elastic energy p² V/(2 K)", Trust.FromMemoryAndRecomputed)
            .Near("10 L at 210 bar, J", 1470, StoredEnergy.InOil(210 * Bar, 10e-3), 0.002);
        new Reference("LN-26", "elastic energy F²/(2 k)", Trust.FromMemoryAndRecomputed)
            .Near("frame of 250 kN/mm at 500 kN, J", 500, StoredEnergy.InFrame(500e3, 250e6), 0.002);
    }

    [Theory]
    [InlineData(10, 0.539), InlineData(50, 1.329), InlineData(100, 1.443), InlineData(200, 1.482)]
    public void AirSoftensOil(double bar, double gpa) =>
        new Reference("LN-27", "oil and air side by side, n 1.4", Trust.FromMemoryAndRecomputed)
            .Near($"1 % of air at {bar} bar, GPa", gpa, BulkModulus.WithAir(1.5e9, 0.01, bar * Bar + Atmosphere.Pressure) / 1e9, 0.01);

    [Fact]
    public void HeatOfTheOil()
    {
        // 1 BTU/(h ft² °F) in W/(m² K), from the definitions of the units.
        double btu = 1055.05585 / 3600 / (0.3048 * 0.3048) * 1.8, ft2 = 0.3048 * 0.3048;
        new Reference("LN-28", "thermal-formula page; handbook rule of 2 BTU/(h ft² °F), 11.36 W/(m² K)", Trust.FoundAndRecomputed)
            .Near("rise of 1 m² at 11.36 W, K", 1, OilHeat.SteadyRise(11.36, 1, 2 * btu), 0.002);
        var area = new Reference("LN-29", "exercise, recomputed", Trust.FoundAndRecomputed);
        area.Near("2 hp, 60 °F, 2 BTU rule, ft²", 42.4, OilHeat.AreaFor(2 * Hp, 60 / 1.8, 2 * btu) / ft2, 0.005);
        area.Near("2 hp, 60 °F, 0.001 hp rule, ft²", 33.3, OilHeat.AreaFor(2 * Hp, 60 / 1.8, 0.001 * Hp * 1.8 / ft2) / ft2, 0.005);
        new Reference("LN-30", "ΔT = P/(U A)", Trust.FoundAndRecomputed)
            .Near("0.6 kW, 1 m², 12 W/(m² K), K", 50, OilHeat.SteadyRise(600, 1, 12), 0.005);

        var warm = new Reference("LN-31", "first order", Trust.FromMemoryAndRecomputed);
        double C = OilHeat.Capacity(0.040, 870, 25);
        warm.Near("capacity, kJ/K", 78.4, C / 1e3, 0.01);
        warm.Near("after 1 h, K", 21.2, OilHeat.RiseAfter(50, C, 12, 3600), 0.01);
        warm.Near("time constant: rise at 6531 s, K", 50 * (1 - Math.Exp(-1)), OilHeat.RiseAfter(50, C, 12, 6531), 0.01);
        warm.Near("with no loss, K/h", 27.6, 600 * 3600 / C, 0.01);

        new Reference("LN-32", "thermal-formula page", Trust.FoundAndRecomputed)
            .Near("heat of 1 L/min, kW/K", 0.02755, OilHeat.StreamHeat(1 * Lpm, 870) / 1e3, 0.01);
        new Reference("LN-33", "Δp/(ρ c)", Trust.FromMemoryAndRecomputed)
            .Near("100 bar throttled, K", 6.05, OilHeat.ThrottlingRise(100 * Bar, 870), 0.02);
    }
}
