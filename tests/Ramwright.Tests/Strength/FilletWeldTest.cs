using Ramwright.Geometry;
using Ramwright.Strength;
using Ramwright.Workings;

namespace Ramwright.Tests.Strength;

public class FilletWeldTest
{
    private static readonly WeldPlane Plane = WeldPlane.OfSection;
    private static readonly PartialFactors NoLoad = new(Load: 1);

    [Theory]
    [InlineData("W-01", "S235 (360)", 360, 0.80, 207.8, 254.6, 360.0, 259.2, Trust.FromMemoryAndRecomputed)]
    [InlineData("W-02", "S275 (430)", 430, 0.85, 233.7, 286.2, 404.7, 309.6, Trust.FromMemoryAndRecomputed)]
    [InlineData("W-03", "S275 (410)", 410, 0.85, 222.8, 272.9, 385.9, 295.2, Trust.OwnNumbers)]
    [InlineData("W-04", "S355 (510)", 510, 0.90, 261.7, 320.6, 453.3, 367.2, Trust.FromMemoryAndRecomputed)]
    [InlineData("W-05", "S355 (490)", 490, 0.90, 251.5, 308.0, 435.6, 352.8, Trust.OwnNumbers)]
    [InlineData("W-06", "S355 (470)", 470, 0.90, 241.2, 295.4, 417.8, 338.4, Trust.FromMemoryAndRecomputed)]
    public void Strengths(string id, string steel, double fu, double betaW, double fvw, double transverse, double mises, double normal, Trust trust)
    {
        var r = new Reference(id, $"EN 1993-1-8:2005 4.5.3, {steel}, γM2 1.25", trust);
        r.Near("f_vw.d, MPa", fvw, FilletWeld.ShearStrength(fu, betaW, 1.25), 0.003);

        // Two fillets of a plate pulled square to its base: force over throat area at the design resistance.
        WeldGroup g = WeldOutline.TwoLines(Plane, 0.1, 0.02, 0.005, openEnds: false);
        double F = FilletWeld.Directional(g, Vector.Across, Vector.Zero, Vector.Zero, fu * 1e6, betaW, NoLoad)!.Value.SafeTo;
        r.Near("square to the weld, MPa", transverse, F / g.Area / 1e6, 0.003);

        // The two criteria themselves: a pure τ∥ and a pure σ⊥.
        r.Near("fu/(βw γM2), MPa", mises, Math.Sqrt(3) * FilletWeld.ShearStrength(fu, betaW, 1.25), 0.003);
        double sigma = 1 / FilletWeld.Use(1, 0, 0, fu, betaW) / 1.25;
        r.Near("σ⊥ alone, MPa", Math.Min(mises, normal), sigma, 0.003);
    }

    [Theory]
    [InlineData("W-07", 360, 0.80, new double[] { 624, 764, 831, 1018, 1039, 1273, 1247, 1527, 1663, 2036, 2078, 2546 })]
    [InlineData("W-08", 430, 0.85, new double[] { 701, 859, 935, 1145, 1168, 1431, 1402, 1717, 1869, 2289, 2337, 2862 })]
    [InlineData("W-09", 510, 0.90, new double[] { 785, 962, 1047, 1282, 1309, 1603, 1570, 1923, 2094, 2564, 2617, 3206 })]
    [InlineData("W-10", 470, 0.90, new double[] { 724, 886, 965, 1182, 1206, 1477, 1447, 1772, 1930, 2363, 2412, 2954 })]
    public void PerMillimetre(string id, double fu, double betaW, double[] expected)
    {
        var r = new Reference(id, $"EN 1993-1-8:2005 4.5.3, fu {fu}, γM2 1.25: N/mm of one weld, along and square", Trust.OwnNumbers);
        int i = 0;
        foreach (double a in (ReadOnlySpan<double>)[3, 4, 5, 6, 8, 10])
        {
            WeldGroup g = WeldOutline.TwoLines(Plane, 0.2, 0.02, a / 1e3, openEnds: false);
            double along = FilletWeld.Simplified(g, Vector.Up, Vector.Zero, Vector.Zero, fu * 1e6, betaW, NoLoad)!.Value.SafeTo / g.Length / 1e3;
            double square = FilletWeld.Directional(g, Vector.Across, Vector.Zero, Vector.Zero, fu * 1e6, betaW, NoLoad)!.Value.SafeTo / g.Length / 1e3;
            r.Near($"a {a}, along", expected[i++], along, 0.003);
            r.Near($"a {a}, square", expected[i++], square, 0.003);
            double alongDirectional = FilletWeld.Directional(g, Vector.Up, Vector.Zero, Vector.Zero, fu * 1e6, betaW, NoLoad)!.Value.SafeTo / g.Length / 1e3;
            Near.Relative(along, alongDirectional, 1e-9);
        }
    }

    [Fact]
    public void DirectionalExample()
    {
        var r = new Reference("W-11", "EN 1993-1-8 eq. 4.1, S275 (430), σ⊥ 100, τ⊥ 100, τ∥ 80 MPa", Trust.OwnNumbers);
        r.Near("use", 0.601, 1.25 * FilletWeld.Use(100, 100, 80, 430, 0.85), 0.003);
        r.Near("stress, MPa", 243.3, 430 / 0.85 * FilletWeld.Use(100, 100, 80, 430, 0.85), 0.003);
    }

    [Fact]
    public void SquareOverSimplified()
    {
        WeldGroup g = WeldOutline.TwoLines(Plane, 0.1, 0.02, 0.005);
        double directional = FilletWeld.Directional(g, Vector.Across, Vector.Zero, Vector.Zero, 360e6, 0.8, NoLoad)!.Value.SafeTo;
        double simplified = FilletWeld.Simplified(g, Vector.Across, Vector.Zero, Vector.Zero, 360e6, 0.8, NoLoad)!.Value.SafeTo;
        new Reference("W-12", "√(3/2) between the directional and the simplified method", Trust.Recomputed).Near("ratio", Math.Sqrt(1.5), directional / simplified, 1e-9);
    }

    [Fact]
    public void ThroatOfADoubleFilletAsStrongAsItsPlate()
    {
        var r = new Reference("W-13", "EN 1993-1-8 4.5.3.2: a/t of a double fillet as strong as the plate", Trust.FromMemoryAndRecomputed);
        r.Near("S235 (360)", 0.462, FilletWeld.FullStrengthThroat(235, 360, 0.80, NoLoad), 0.003);
        r.Near("S275 (430)", 0.480, FilletWeld.FullStrengthThroat(275, 430, 0.85, NoLoad), 0.003);
        r.Near("S355 (510)", 0.554, FilletWeld.FullStrengthThroat(355, 510, 0.90, NoLoad), 0.003);
        r.Near("S355 (490)", 0.576, FilletWeld.FullStrengthThroat(355, 490, 0.90, NoLoad), 0.003);
        r.Near("S355 (470)", 0.601, FilletWeld.FullStrengthThroat(355, 470, 0.90, NoLoad), 0.003);

        // The same from the group: a plate 20 thick, 200 wide, at its yield load.
        double a = FilletWeld.FullStrengthThroat(235e6, 360e6, 0.80, NoLoad) * 0.02;
        WeldGroup g = WeldOutline.TwoLines(Plane, 0.2, 0.02, a, openEnds: false);
        Near.Relative(0.02 * 0.2 * 235e6, FilletWeld.Directional(g, Vector.Across, Vector.Zero, Vector.Zero, 360e6, 0.8, NoLoad)!.Value.SafeTo, 1e-9);
    }

    [Fact]
    public void ThatThroatCarriesThePlatesDesignLoadWhateverTheFactors()
    {
        // β_w 0.5, which no steel has, lets the stress square to the throat govern.
        foreach ((double beta, double m0, double m2) in (ReadOnlySpan<(double, double, double)>)[(0.8, 1.1, 1.25), (0.9, 1, 1.3), (0.5, 1.1, 1.25), (0.5, 1, 1.4)])
        {
            var factors = new PartialFactors(M0: m0, M2: m2, Load: 1);
            double a = FilletWeld.FullStrengthThroat(235e6, 360e6, beta, factors) * 0.02;
            WeldGroup g = WeldOutline.TwoLines(Plane, 0.2, 0.02, a, openEnds: false);
            Near.Relative(0.02 * 0.2 * 235e6 / m0, FilletWeld.Directional(g, Vector.Across, Vector.Zero, Vector.Zero, 360e6, beta, factors)!.Value.SafeTo, 1e-9);
        }
    }

    [Fact]
    public void WorkingShowsEveryStep()
    {
        WeldGroup g = WeldOutline.Rectangle(Plane, 0.04, 0.2, 0.006);
        Vector force = new(0.3, -0.2, 1), moment = new(0.1, -0.3, 0.2), at = new(0.25, 0.05, 0.02);
        const string stress = "A_w M_0 M_1 M_x M_y M_z s_x s_y s_z ";
        Shows(stress + "σ_n τ_n τ_l σ_v u F_gives F_safe", w => FilletWeld.Directional(g, force, moment, at, 360e6, 0.8, PartialFactors.Recommended, w));
        Shows(stress + "f_vw u F_gives F_safe", w => FilletWeld.Simplified(g, force, moment, at, 360e6, 0.8, PartialFactors.Recommended, w));
        Shows(stress + "σ_n u F_gives F_safe", w => ButtWeld.Yield(g, force, moment, at, 235e6, PartialFactors.Recommended, w));
        var root = new FatigueStrength(1e5, 275e6, DetailCategory.Root, DetailCategory.FilletShear);
        Shows(stress + "σ_n τ_n τ_l Δσ_1 Δτ_1", w => WeldFatigue.Root(g, force, moment, at, root, w));
        Shows("", w => FilletWeld.Directional(g, Vector.Zero, Vector.Zero, at, 360e6, 0.8, PartialFactors.Recommended, w));

        static void Shows(string symbols, Action<Working> show)
        {
            var w = new Working();
            show(w);
            WorkingCheck.Shows(w, symbols);
        }
    }

    [Fact]
    public void LengthsAndThroats()
    {
        new Reference("W-14", "EN 1993-1-8 4.5.1: effective length of l 100, a 5 mm, and the shortest allowed", Trust.FoundAndRecomputed).Exactly(
            "mm", (90.0, 30.0), (Math.Round(WeldSegment.EffectiveLength(0.1, 0.005) * 1e3, 9), Math.Round(WeldSegment.ShortestLength(0.005) * 1e3, 9)));
        new Reference("W-15", "EN 1993-1-8 4.5.2(2): smallest throat", Trust.Found).Exactly("m", 0.003, WeldSegment.SmallestThroat);
        new Reference("W-16", "throat of an 8 mm leg", Trust.FoundAndRecomputed).Near("mm", 5.66, WeldSegment.ThroatOfLeg(0.008) * 1e3, 0.001);
        new Reference("W-17", "EN 1993-1-8 4.11: long lap, a 5, Lj 1000 mm", Trust.FromMemoryAndRecomputed).Near("β_Lw", 0.933, FilletWeld.LongLap(1, 0.005), 0.001);
        new Reference("T-06", "trap: leg taken for throat", Trust.Recomputed).Within("over-rated by", 0.41, 0.008 / WeldSegment.ThroatOfLeg(0.008) - 1, 0.005);
        Assert.Equal(1, FilletWeld.LongLap(0.7, 0.005));
        var least = new Reference("W-14b", "EN 1993-1-8 4.5.1(2): shortest weld that carries, the larger of 30 mm and 6 a", Trust.FromMemory);
        least.Near("a 4 mm", 30, FilletWeld.LeastLength(0.004) * 1e3, 1e-9);
        least.Near("a 6 mm", 36, FilletWeld.LeastLength(0.006) * 1e3, 1e-9);

        WeldSegment run = WeldSegment.Fillet(Vector.Zero, 0.1 * Vector.Up, 0.005, Vector.Deep, Vector.Across);
        Near.Relative(0.09, run.WithoutEnds().Length, 1e-12);
        Assert.Throws<ArgumentException>(() => WeldSegment.Fillet(Vector.Zero, 0.039 * Vector.Up, 0.005, Vector.Deep, Vector.Across).WithoutEnds());
    }

    [Fact]
    public void EditionOfTheTensileStrength() =>
        new Reference("T-17", "trap: fu of S355 from another edition, 510 against 470", Trust.Recomputed)
            .Within("resistance", 0.085, FilletWeld.ShearStrength(510, 0.9, 1.25) / FilletWeld.ShearStrength(470, 0.9, 1.25) - 1, 0.0005);

    [Fact]
    public void FullPenetrationButtWeldIsAsStrongAsThePlate()
    {
        var r = new Reference("W-18", "EN 1993-1-8 4.7.1: resistance of the weaker part", Trust.Found);
        var g = new WeldGroup([WeldSegment.Butt(-0.1 * Vector.Up, 0.1 * Vector.Up, 0.012, Vector.Across)]);
        r.Near("pull, kN", 0.2 * 0.012 * 235e3, ButtWeld.Yield(g, Vector.Across, Vector.Zero, Vector.Zero, 235e6, NoLoad)!.Value.GivesAt / 1e3, 1e-9);
        r.Near("shear, kN", 0.2 * 0.012 * 235e3 / Math.Sqrt(3), ButtWeld.Yield(g, Vector.Up, Vector.Zero, Vector.Zero, 235e6, NoLoad)!.Value.GivesAt / 1e3, 1e-9);
        r.Near("bending, kN·m", 0.012 * 0.2 * 0.2 / 6 * 235e3, ButtWeld.Yield(g, Vector.Zero, Vector.Deep, Vector.Zero, 235e6, NoLoad)!.Value.GivesAt / 1e3, 1e-9);
    }

    [Fact]
    public void NothingActingDoesNotApply()
    {
        WeldGroup g = WeldOutline.Rectangle(Plane, 0.04, 0.2, 0.006);
        Assert.Null(FilletWeld.Directional(g, Vector.Zero, Vector.Zero, Vector.Zero, 360e6, 0.8, NoLoad));
        Assert.Null(ButtWeld.Yield(g, Vector.Zero, Vector.Zero, Vector.Zero, 235e6, NoLoad));
        Assert.Throws<ArgumentOutOfRangeException>(() => FilletWeld.Directional(g, new Vector(double.NaN, 0, 0), Vector.Zero, Vector.Zero, 360e6, 0.8, NoLoad));
        Assert.Throws<ArgumentOutOfRangeException>(() => FilletWeld.Directional(g, Vector.Up, Vector.Zero, Vector.Zero, 360e6, 0, NoLoad));
    }

    [Fact]
    public void FactorsStandBetweenGivesAndSafe() => Near.Relative(1.875,
        FilletWeld.Directional(WeldOutline.Rectangle(Plane, 0.04, 0.2, 0.006), Vector.Up, Vector.Zero, Vector.Across, 360e6, 0.8, PartialFactors.Recommended)!.Value.Factor, 1e-12);

    [Fact]
    public void WorkingHolds()
    {
        foreach (WeldGroup g in (ReadOnlySpan<WeldGroup>)[
            WeldOutline.Rectangle(new WeldPlane(new Vector(0.1, 0.2, 0.3), new Vector(1, 1, 0), new Vector(0, 0.2, 1)), 0.04, 0.2, 0.006),
            WeldOutline.Circle(Plane, 0.06, 0.005), WeldOutline.TwoLines(Plane, 0.1, 0.02, 0.005)])
        {
            var w = new Working();
            Vector force = new(0.3, -0.2, 1), moment = new(0.1, -0.3, 0.2), at = new(0.25, 0.05, 0.02);
            FilletWeld.Directional(g, force, moment, at, 360e6, 0.8, PartialFactors.Recommended, w);
            FilletWeld.Simplified(g, force, moment, at, 360e6, 0.8, PartialFactors.Recommended, w);
            ButtWeld.Yield(g, force, moment, at, 235e6, PartialFactors.Recommended, w);
            FilletWeld.Directional(g, Vector.Up, Vector.Zero, 0.2 * Vector.Across, 360e6, 0.8, PartialFactors.Recommended, w);
            WorkingCheck.Holds(w);
        }
    }

    [Fact]
    public void AmericanRules()
    {
        const double kpsi = 6.894757e6, inch = 0.0254, kip = 4448.2216;
        var allow = new Reference("W-19", "AWS D1.1, AISC: allowable throat shear 0.30 FEXX", Trust.FromMemoryAndRecomputed);
        allow.Near("E70, kpsi", 21, AmericanFillet.Allowable(70 * kpsi) / kpsi, 1e-9);
        allow.Near("E60, kpsi", 18, AmericanFillet.Allowable(60 * kpsi) / kpsi, 1e-9);
        allow.Near("E70, MPa", 145, AmericanFillet.Allowable(70 * kpsi) / 1e6, 0.002);
        var perLeg = new Reference("W-20", "Shigley 9th ed. table 9-6: kip per inch, per inch of leg", Trust.FoundAndRecomputed);
        perLeg.Near("E70", 14.85, AmericanFillet.Allowable(70 * kpsi) * 0.707 * inch * inch / kip, 0.002);
        perLeg.Near("E60", 12.73, AmericanFillet.Allowable(60 * kpsi) * 0.707 * inch * inch / kip, 0.002);
        new Reference("W-21", "AISC: per 1/16 in of leg, E70, ASD", Trust.FromMemoryAndRecomputed)
            .Near("kip/in", 0.928, AmericanFillet.Allowable(70 * kpsi) * WeldSegment.ThroatOfLeg(inch / 16) * inch / kip, 0.001);
        var direction = new Reference("W-22", "AISC 360 J2.4: 1 + 0.5 sin^1.5 θ", Trust.FoundAndRecomputed);
        direction.Near("0°", 1.0, AmericanFillet.DirectionFactor(0), 0.001);
        direction.Near("45°", 1.297, AmericanFillet.DirectionFactor(Math.PI / 4), 0.001);
        direction.Near("90°", 1.5, AmericanFillet.DirectionFactor(Math.PI / 2), 0.001);
        new Reference("W-23", "AISC 360 table J2.4: smallest leg by the thinner part, mm", Trust.Found).Exactly("6, 13, 19, 20 mm", (3.0, 5.0, 6.0, 8.0),
            (AmericanFillet.SmallestLeg(0.006) * 1e3, AmericanFillet.SmallestLeg(0.013) * 1e3, AmericanFillet.SmallestLeg(0.019) * 1e3, AmericanFillet.SmallestLeg(0.020) * 1e3));
        var largest = new Reference("W-24", "AISC 360 J2.2b: largest leg along an edge", Trust.Found);
        largest.Near("t 5 mm", 5, AmericanFillet.LargestLeg(0.005) * 1e3, 1e-9);
        largest.Near("t 6 mm: from there on", 4, AmericanFillet.LargestLeg(0.006) * 1e3, 1e-9);
        largest.Near("t 10 mm", 8, AmericanFillet.LargestLeg(0.010) * 1e3, 1e-9);
        var longWeld = new Reference("W-25", "AISC 360 J2.2b: long end-loaded weld", Trust.FoundAndRecomputed);
        longWeld.Near("l/w 150", 0.90 * 1.2, AmericanFillet.EffectiveLength(1.2, 0.008), 1e-9);
        longWeld.Near("l/w 400", 180 * 0.005, AmericanFillet.EffectiveLength(2, 0.005), 1e-9);
        longWeld.Near("l/w 50", 0.4, AmericanFillet.EffectiveLength(0.4, 0.008), 1e-9);
    }
}
