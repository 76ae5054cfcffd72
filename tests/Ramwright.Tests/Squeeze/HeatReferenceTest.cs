using Ramwright.Jobs;
using Ramwright.Squeeze;

namespace Ramwright.Tests.Squeeze;

/// <summary>Heat of a bar against the standard's formulas, closed forms and numbers worked out by other means.</summary>
public class HeatReferenceTest
{
    private const string Fire = "EN 1993-1-2:2005, 3.4.1";
    private static readonly HotSurface Skin = new();

    [Theory]
    [InlineData(20, 439.8), InlineData(100, 487.6), InlineData(200, 529.8), InlineData(400, 605.9), InlineData(600, 760.2), InlineData(700, 1008.2)]
    [InlineData(735, 5000), InlineData(750, 1482.9), InlineData(800, 803.3), InlineData(900, 650), InlineData(1150, 650)]
    public void SpecificHeat(double T, double c) =>
        new Reference("W4-01", Fire + ".2, specific heat", Trust.FromMemoryAndRecomputed).Near($"c at {T} °C, J/(kg K)", c, HotSteel.SpecificHeat(T), 0.0002);

    [Theory]
    [InlineData(20, 53.33), InlineData(200, 47.34), InlineData(400, 40.68), InlineData(600, 34.02), InlineData(800, 27.3), InlineData(1200, 27.3)]
    public void Conductivity(double T, double k) =>
        new Reference("W4-02", Fire + ".3, conductivity", Trust.FromMemoryAndRecomputed).Near($"k at {T} °C, W/(m K)", k, HotSteel.Conductivity(T), 0.0002);

    [Theory]
    [InlineData(100, 0.000998), InlineData(500, 0.00676), InlineData(700, 0.01012), InlineData(1000, 0.0138), InlineData(1200, 0.0178)]
    public void Elongation(double T, double e) =>
        new Reference("W4-03", Fire + ".1, elongation", Trust.FromMemoryAndRecomputed).Near($"growth at {T} °C", e, HotSteel.Elongation(T), 0.001);

    [Fact]
    public void APieceIsForgedLongerThanItEndsCold()
    {
        var row = new Reference("W4-03", Fire + ".1, elongation", Trust.FromMemoryAndRecomputed);
        row.Within("hot length of 100.0 mm, from 1000 °C, mm", 101.4, 100 * (1 + HotSteel.Elongation(1000)), 0.05);
        var light = new Reference("W4-04", "density from elongation", Trust.FromMemoryAndRecomputed);
        light.Near("density at 1200 °C, kg/m³", 7445, HotSteel.Density / Math.Pow(1 + HotSteel.Elongation(1200), 3), 0.001);
    }

    [Theory]
    [InlineData("W4-06", 400, 201.3), InlineData("W4-06", 600, 335.7), InlineData("W4-06", 700, 419.1), InlineData("W4-06", 735, 475.4)]
    [InlineData("W4-07", 800, 561.6), InlineData("W4-07", 850, 598.6), InlineData("W4-07", 900, 632.1), InlineData("W4-07", 1000, 697.1)]
    [InlineData("W4-08", 1100, 762.1), InlineData("W4-08", 1150, 794.6), InlineData("W4-08", 1200, 827.1), InlineData("W4-08", 1250, 859.6)]
    public void Enthalpy(string row, double T, double kJ) =>
        new Reference(row, "integral of " + Fire + ".2", Trust.FoundAndRecomputed).Near($"heat to {T} °C, kJ/kg", kJ, HotSteel.Enthalpy(T) / 1e3, 0.002);

    [Fact]
    public void TemperatureTurnsEnthalpyRound()
    {
        for (double T = 20; T <= 1400; T += 0.37)
            Near.Absolute(T, HotSteel.Temperature(HotSteel.Enthalpy(T)), 0.01, $"at {T} °C");
    }

    [Theory]
    [InlineData(800, 59.8, 76.7), InlineData(900, 85.6, 97.3), InlineData(1000, 118.8, 121.3), InlineData(1100, 160.9, 149.0), InlineData(1200, 213.3, 180.8)]
    public void Radiation(double T, double q, double h)
    {
        var row = new Reference("W4-10", "Stefan-Boltzmann, emissivity 0.8, 20 °C around", Trust.Recomputed);
        double computed = (Skin with { Convection = 0 }).Loses(T);
        row.Near($"flux at {T} °C, kW/m²", q, computed / 1e3, 0.003);
        row.Near($"as a coefficient at {T} °C, W/(m² K)", h, computed / (T - 20), 0.003);
    }

    [Theory]
    [InlineData(20, 57.5), InlineData(30, 86.2), InlineData(50, 143.7)]
    public void ByRadiationAlone(double d, double t) =>
        new Reference("W4-11", "lumped body, q = ε σ T⁴, integrated", Trust.Recomputed).Near($"1200 to 900 °C, Ø{d}, s", t, BarCooling.ByRadiation(d / 4e3, 1200, 900), 0.003);

    [Theory]
    [InlineData(10, 26.7, 15.1, 6.5, 34.3), InlineData(12, 32.0, 18.1, 7.8, 41.1), InlineData(16, 42.7, 24.2, 10.4, 54.8), InlineData(20, 53.4, 30.2, 13.0, 68.5)]
    [InlineData(25, 66.7, 37.7, 16.2, 85.7), InlineData(30, 80.1, 45.3, 19.5, 102.8), InlineData(40, 106.8, 60.4, 26.0, 137.1), InlineData(50, 133.5, 75.5, 32.5, 171.3)]
    [InlineData(60, 160.2, 90.6, 39.0, 205.6)]
    public void InStillAir(double d, double to900, double to1000, double to1100, double to850)
    {
        var row = new Reference("W4-12", "lumped bar, radiation and convection 10 W/(m² K)", Trust.Recomputed);
        row.Near($"{d} mm, 1200 to 900 °C, s", to900, BarCooling.Time(d / 4e3, 1200, 900, Skin), 0.005);
        row.Near($"{d} mm, to 1000 °C, s", to1000, BarCooling.Time(d / 4e3, 1200, 1000, Skin), 0.005);
        row.Near($"{d} mm, to 1100 °C, s", to1100, BarCooling.Time(d / 4e3, 1200, 1100, Skin), 0.006);
        row.Near($"{d} mm, to 850 °C, s", to850, BarCooling.Time(d / 4e3, 1200, 850, Skin), 0.005);
    }

    [Fact]
    public void TheSpecificHeatNearItsPeakMakesTheLastDegreesSlower() =>
        Assert.True(BarCooling.Time(0.005, 1200, 850, Skin) > BarCooling.Time(0.005, 1200, 850, Skin, 650) * 1.001);

    [Fact]
    public void RulesThatFollow()
    {
        var row = new Reference("W4-13", "from the table of cooling times", Trust.Recomputed);
        row.Near("s for each mm of bar, 1200 to 900 °C", 2.67, BarCooling.Time(0.25e-3, 1200, 900, Skin), 0.005);
        row.Near("flat 50×10, s", 44.5, BarCooling.Time(4.167e-3, 1200, 900, Skin), 0.005);
        row.Near("wide plate, s for each mm", 5.34, BarCooling.Time(0.5e-3, 1200, 900, Skin), 0.005);
        row.Near("cube 30 mm, s", 53.4, BarCooling.Time(5e-3, 1200, 900, Skin), 0.005);
        var short_ = new Reference("W4-20", "ends of a short piece, V/A = d l/(4 l + 2 d)", Trust.Recomputed);
        short_.Near("Ø30×45, s", 60.0, BarCooling.Time(0.03 * 0.045 / (4 * 0.045 + 2 * 0.03), 1200, 900, Skin), 0.005);
    }

    [Theory]
    [InlineData(20, 58.7, 55.5), InlineData(30, 88.1, 83.3), InlineData(50, 146.8, 138.8)]
    public void OtherWindows(double d, double from1250, double to850)
    {
        var row = new Reference("W4-14", "lumped bar, radiation and convection", Trust.Recomputed);
        row.Near($"{d} mm, 1250 to 900 °C, s", from1250, BarCooling.Time(d / 4e3, 1250, 900, Skin), 0.005);
        row.Near($"{d} mm, 1100 to 850 °C, s", to850, BarCooling.Time(d / 4e3, 1100, 850, Skin), 0.005);
    }

    [Theory]
    [InlineData(20, 1100, 13.6, 1085, 1115), InlineData(20, 1000, 31.5, 988, 1012), InlineData(20, 900, 55.4, 892, 909)]
    [InlineData(30, 1100, 20.8, 1077, 1123), InlineData(30, 1000, 48.1, 983, 1017), InlineData(30, 900, 84.5, 887, 913)]
    [InlineData(50, 1100, 35.8, 1064, 1137), InlineData(50, 1000, 83.0, 972, 1029), InlineData(50, 900, 145.6, 879, 921)]
    public void AcrossARoundBar(double d, double mean, double t, double skin, double heart)
    {
        var row = new Reference("W4-15", "radial finite differences, properties of EN 1993-1-2", Trust.Recomputed);
        RoundBar bar = new(d / 1e3, 1200, 60, Skin);
        double computed = bar.CoolTo(mean);
        row.Near($"Ø{d}, time to a mean of {mean} °C, s", t, computed, 0.01);
        row.Within($"Ø{d}, skin then, °C", skin, bar.Skin, 2);
        row.Within($"Ø{d}, heart then, °C", heart, bar.Heart, 2);
    }

    [Fact]
    public void SkinAndBiot()
    {
        var skin = new Reference("W4-16", "parabolic profile, q R/(2 k)", Trust.Recomputed);
        skin.Near("skin below heart, Ø50 at 1100 °C, K", 78.6, BarCooling.SkinBelowHeart(0.05, 1100, Skin), 0.01);
        skin.Near("Ø20, K", 31.4, BarCooling.SkinBelowHeart(0.02, 1100, Skin), 0.01);
        var biot = new Reference("W4-17", "Incropera and DeWitt, lumped where Bi < 0.1", Trust.FromMemoryAndRecomputed);
        biot.Near("Ø50 at 1200 °C", 0.087, BarCooling.Biot(0.05, 1200, Skin), 0.01);
        biot.Near("Ø20", 0.035, BarCooling.Biot(0.02, 1200, Skin), 0.01);
    }

    // Constant properties and coefficient, which the chain has above 900 °C: late in the cooling one term of the series is left, and it
    // falls by e in R²/(ζ² α) seconds. C follows from how far the heart has fallen by then.
    [Theory]
    [InlineData(0.05, 0.3143, 1.0124, 0.2218, 1.0082, 0.3854, 1.0150)]
    [InlineData(0.1, 0.4417, 1.0246, 0.3111, 1.0161, 0.5423, 1.0298)]
    [InlineData(0.2, 0.6170, 1.0483, 0.4328, 1.0311, 0.7593, 1.0592)]
    [InlineData(0.3, 0.7465, 1.0712, 0.5218, 1.0450, 0.9208, 1.0880)]
    [InlineData(0.5, 0.9408, 1.1143, 0.6533, 1.0701, 1.1656, 1.1441)]
    [InlineData(1, 1.2558, 1.2071, 0.8603, 1.1191, 1.5708, 1.2732)]
    public void OneTermOfTheSeries(double Bi, double cylinder, double C_cylinder, double wall, double C_wall, double sphere, double C_sphere)
    {
        var row = new Reference("W4-18", "Incropera and DeWitt, Table 5.1, first root and factor", Trust.FromMemoryAndRecomputed);
        foreach ((int shape, string name, double zeta, double C) in new[] { (1, "cylinder", cylinder, C_cylinder), (0, "wall", wall, C_wall), (2, "sphere", sphere, C_sphere) })
        {
            (double root, double factor) = SeriesByCells.FirstTerm(shape, Bi);
            row.Near($"{name}, Bi {Bi}, ζ", zeta, root, 0.001);
            row.Near($"{name}, Bi {Bi}, C", C, factor, 0.001);
        }
    }

    [Fact]
    public void SeriesWorked()
    {
        var row = new Reference("W4-19", "series for a cylinder, Ø50, h 150, k 27.3, c 650, 1200 to 20 °C, 60 s", Trust.Recomputed);
        (double heart, double skin, double mean) = SeriesByCells.Cylinder(0.05, 150, 1200, 20, 60);
        row.Within("heart, °C", 1084.1, heart, 0.3);
        row.Within("skin, °C", 1014.6, skin, 0.3);
        row.Within("mean, °C", 1049.2, mean, 0.3);
    }

    [Fact]
    public void WorkWarms() =>
        new Reference("W4-21", "energy: β Y ε/(ρ c)", Trust.Recomputed).Near("Y 100 MPa, ε 0.47, K", 8.8, BarCooling.WorkWarms(100e6, 0.47), 0.01);

    [Fact]
    public void AtATouch()
    {
        double hot = DieContact.Effusivity(27.3, 7850, 650), die = DieContact.Effusivity(30, 7800, 480);
        var b = new Reference("W4-30", "effusivity, definition", Trust.Recomputed);
        b.Near("hot steel, W√s/(m² K)", 11_802, hot, 0.0005);
        b.Near("die", 10_598, die, 0.0005);
        new Reference("W4-31", "Carslaw and Jaeger, two half-spaces", Trust.FromMemoryAndRecomputed)
            .Within("1100 and 200 °C touch at, °C", 674.2, DieContact.Between(hot, 1100, die, 200), 0.1);
    }

    [Theory]
    [InlineData(1000, 0.744, 0.792, 1026, 282), InlineData(2000, 1.253, 1.410, 971, 344), InlineData(5000, 2.061, 2.628, 869, 457)]
    [InlineData(10000, 2.517, 3.649, 793, 542), InlineData(20000, 2.736, 4.481, 739, 602)]
    public void ThroughAContact(double h, double q, double Q, double work, double die)
    {
        var row = new Reference("W4-32", "Carslaw and Jaeger, half-spaces with a contact, 1100 and 200 °C, 1 s", Trust.FromMemoryAndRecomputed);
        (double flux, double heat, double hot, double cold) = DieContact.After(h, DieContact.Effusivity(27.3, 7850, 650), 1100, DieContact.Effusivity(30, 7800, 480), 200, 1);
        row.Near($"flux at {h} W/(m² K), MW/m²", q, flux / 1e6, 0.001);
        row.Near($"heat so far at {h}, MJ/m²", Q, heat / 1e6, 0.001);
        row.Within($"face of the work at {h}, °C", work, hot, 1);
        row.Within($"face of the die at {h}, °C", die, cold, 1);
    }

    [Theory]
    [InlineData(1000, 8.0, 15.5, 29.5, 67), InlineData(2000, 14.8, 27.6, 50.6, 108), InlineData(5000, 29.5, 51.5, 87.3, 167), InlineData(10000, 43.6, 71.5, 114, 201)]
    public void ASlabBetweenDiesFalls(double h, double half, double one, double two, double five)
    {
        double hot = DieContact.Effusivity(27.3, 7850, 650), die = DieContact.Effusivity(30, 7800, 480);
        var row = new Reference("W4-33", "Carslaw and Jaeger; 20 mm slab between dies, 2Q/(ρ c h)", Trust.Recomputed);
        foreach ((double t, double fall) in new[] { (0.5, half), (1, one), (2, two), (5, five) })
        {
            double closed = 2 * DieContact.After(h, hot, 1100, die, 200, t).Heat / (7850 * 650 * 0.02);
            row.Near($"mean fall at {h} W/(m² K) in {t} s, K", fall, closed, 0.01);
        }
    }

    // The same slab in cells: thick bodies no longer after some seconds, and where the skin falls below 900 °C its specific heat rises, so
    // that only short times are the closed form's, to 3 %.
    [Theory]
    [InlineData(1000, 0.5, 8.0), InlineData(1000, 1, 15.5), InlineData(1000, 2, 29.5), InlineData(5000, 0.5, 29.5), InlineData(5000, 1, 51.5), InlineData(5000, 2, 87.3)]
    [InlineData(10000, 1, 71.5), InlineData(10000, 2, 114)]
    public void TheCellsAgree(double h, double t, double fall)
    {
        var row = new Reference("W4-33", "Carslaw and Jaeger; 20 mm slab between dies, by the cells of the squeeze", Trust.Recomputed);
        row.Near($"mean fall at {h} W/(m² K) in {t} s, K", fall, SeriesByCells.SlabBetweenDies(0.02, 1100, 200, h, t), 0.03);
    }

    [Fact]
    public void TheErrorFunctionScaled()
    {
        var row = new Reference("erfc", "Abramowitz and Stegun, Table 7.1 and 7.4", Trust.FromMemoryAndRecomputed);
        foreach ((double x, double e) in new[] { (0.5, 0.6156903), (1, 0.4275836), (1.5, 0.3215854), (2, 0.2553957), (3, 0.1790012), (10, 0.0561410) })
            row.Near($"exp(x²) erfc x at {x}", e, DieContact.ScaledErfc(x), 1e-6);
    }
}
