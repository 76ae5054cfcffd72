using CsCheck;
using Ramwright.Strength;
using Ramwright.Workings;

namespace Ramwright.Tests.Strength;

public class PreloadedRodTest
{
    private static readonly PartialFactors None = new(M0: 1, M1: 1, M2: 1, Load: 1);

    [Fact]
    public void LoadFactorOfAWorkedProblem()
    {
        // M12 8.8: A_t 84.3, S_p 600, C 0.253, F_i 37.9 kN, P 10.6 kN
        var rod = new PreloadedRod(84.3e-6, 600e6, 830e6, 37.9e3, 0.253);

        new Reference("V-08", "Shigley's Mechanical Engineering Design, 9th ed., solutions to chapter 8, problem 8-22", Trust.FoundAndRecomputed)
            .Near("n_L = (S_p A_t - F_i)/(C P)", 4.73, rod.Stretches(1, None)!.Value.GivesAt / 10.6e3, 2e-3);
    }

    [Fact]
    public void AClosedJointSharesThePull()
    {
        var rod = new PreloadedRod(400e-6, 600e6, 830e6, 100e3, 0.2);
        var F31 = new Reference("F-31", "Shigley 8-7", Trust.FromMemoryAndRecomputed);

        F31.Near("bolt load at 80 kN, kN", 116, rod.Force(80e3) / 1e3, 1e-12);
        F31.Near("once open at 150 kN, kN", 150, rod.Force(150e3) / 1e3, 1e-12);
        F31.Near("amplitude for 0 to 80 kN, kN", 8, rod.Cycle(80e3).Amplitude * 400e-6 / 1e3, 1e-12);
        F31.Near("mean for 0 to 80 kN, kN", 108, rod.Cycle(80e3).Mean * 400e-6 / 1e3, 1e-12);
    }

    [Fact]
    public void WithoutPreloadItIsAPlainRod()
    {
        var rod = new PreloadedRod(353e-6, 600e6, 830e6, 0, 1);

        new Reference("F-09", "ISO 898-1:2013, proof load of M24 8.8", Trust.FoundAndRecomputed).Near("kN", 212, rod.Stretches(1, None)!.Value.GivesAt / 1e3, 8e-3);
        Assert.Equal(rod.Stretches(0.25, None)!.Value.GivesAt, 4 * rod.ProofLoad, 1e-6 * rod.ProofLoad);
        Assert.Null(rod.Stretches(-0.1, None));
    }

    [Fact]
    public void TheCodesResistanceOfAnEightEightRodIsLessThanItsProofLoad()
    {
        // 0.9·830/1.4 = 533.6 of 600 MPa
        var rod = new PreloadedRod(353e-6, 600e6, 830e6, 0, 1);
        var r = new Reference("MB-49", "EN 1993-1-8 table 3.4: 0.9 f_u A_s/γ_M2, M24 8.8, γ_M2 1.4", Trust.OwnNumbers);
        r.Near("kN for half a newton", 0.9 * 830 * 0.353 / 1.4 / 0.5, rod.Stretches(0.5, new PartialFactors(M2: 1.4, Load: 1))!.Value.SafeTo / 1e3, 1e-9);
        Near.Relative(1.1 * 1.5, rod.Bends(1, 0.01, new PartialFactors(M0: 1.1))!.Value.Factor, 1e-12);
        Assert.Throws<ArgumentException>(() => (rod with { Preload = 250e3 }).Bends(1, 0.01, None));
    }

    [Fact]
    public void BendingAtTheEdge()
    {
        // own numbers: d_s 20, A 314.159, W 785.398; 1 N and 0.01 N·m give 3183.1 + 12732.4 Pa
        var rod = new PreloadedRod(Math.PI * 100e-6, 500e6, 600e6, 0, 1);

        new Reference("V-09", "σ = F/A + M/W of a round bar", Trust.Recomputed).Near("ram force at 500 MPa, N", 500e6 / 15915.5, rod.Bends(1, 0.01, None)!.Value.GivesAt, 1e-5);
    }

    [Fact]
    public void PreloadNeverHelpsTheProofLoadAndBendingNeverHelpsAtAll() =>
        Gen.Select(Gen.Double[0.05, 0.95], Gen.Double[0, 0.9], Gen.Double[0, 0.05]).Sample((share, tight, moment) =>
        {
            var bare = new PreloadedRod(400e-6, 600e6, 830e6, 0, 1);
            PreloadedRod held = bare with { Preload = tight * bare.ProofLoad, Share = share };

            Assert.True(held.Stretches(0.5, None)!.Value.GivesAt <= bare.Stretches(0.5, None)!.Value.GivesAt * (1 + 1e-12));
            Assert.True(held.Bends(0.5, moment, None)!.Value.GivesAt <= held.Stretches(0.5, None)!.Value.GivesAt * (1 + 1e-12));
            // at the force where it gives the rod does carry its proof load
            double pull = 0.5 * held.Stretches(0.5, None)!.Value.GivesAt;
            Assert.Equal(held.ProofLoad, held.Force(pull), 1e-9 * held.ProofLoad);
        });

    [Fact]
    public void ALargerPreloadMakesASmallerStressRange() =>
        Gen.Select(Gen.Double[0, 150e3], Gen.Double[0, 50e3], Gen.Double[1, 300e3]).Sample((fi, more, P) =>
        {
            var low = new PreloadedRod(400e-6, 600e6, 830e6, fi, 0.3);

            Assert.True((low with { Preload = fi + more }).Cycle(P).Amplitude <= low.Cycle(P).Amplitude * (1 + 1e-12) + 1e-6);
        });

    [Fact]
    public void TooMuchPreloadIsSaid() =>
        Assert.Throws<ArgumentException>(() => new PreloadedRod(400e-6, 600e6, 830e6, 250e3, 0.3).Stretches(1, None));

    [Fact]
    public void SqueezesUsedUp()
    {
        var M24 = new Ramwright.Stock.ScrewThread(0.024, 0.003) { Name = "M24" };
        var severest = new FatigueFactors(1.35, 1);
        var loose = new PreloadedRod(353e-6, 600e6, 830e6, 0, 1);
        PreloadedRod held = loose with { Preload = 180e3, Share = 0.25 };
        var w = new Working();

        var G21 = new Reference("G-21", "EN 1993-1-9:2005, category 50, γ_Mf 1.35: 100.5 MPa for 100 000", Trust.OwnNumbers);
        G21.Near("loose M24, kN", 100.5e6 * 353e-6 / 1e3, loose.Cracks(1, 0, M24, 1e5, severest)!.Value.SafeTo / 1e3, 5e-3);
        G21.Near("the same held closed, C 0.25, kN", 100.5e6 * 353e-6 / 0.25 / 1e3, held.Cracks(1, 0, M24, 1e5, severest, w)!.Value.SafeTo / 1e3, 5e-3);
        new Reference("G-25", "EN 1993-1-9:2005, category 50, range 56.7 MPa: 558 700", Trust.OwnNumbers)
            .Near("pull of a loose M24, kN", 20, loose.Cracks(1, 0, M24, 558700, severest)!.Value.SafeTo / 1e3, 5e-3);
        WorkingCheck.Holds(w);
        // barely preloaded and stiffly clamped it opens: its range is the whole force less the preload
        PreloadedRod loosely = held with { Preload = 5e3, Share = 0.05 };
        double force = loosely.Cracks(0.5, 0, M24, 1e5, severest)!.Value.SafeTo;
        G21.Near("opening joint, range kN", 100.5e6 * 353e-6 / 1e3, (0.5 * force - 5e3) / 1e3, 5e-3);
        double Wb = Math.PI * Math.Pow(4 * 353e-6 / Math.PI, 1.5) / 32, bent = loosely.Cracks(0.5, 0.001, M24, 1e5, severest)!.Value.SafeTo;
        Near.Relative(100.5e6 + 5e3 / 353e-6, bent * (0.5 / 353e-6 + 0.001 / Wb), 5e-3, "opening and bent");
        Assert.Throws<ArgumentNullException>(() => held.Cracks(1, 0, null!, 1e5, severest));
        Assert.Throws<ArgumentNullException>(() => held.Cracks(1, 0, M24, 1e5, null!));
        // bending is felt whole, clamped or not
        double W = Math.PI * Math.Pow(4 * 353e-6 / Math.PI, 1.5) / 32;
        Near.Relative(100.5e6 / (0.25 / 353e-6 + 0.001 / W), held.Cracks(1, 0.001, M24, 1e5, severest)!.Value.SafeTo, 5e-3, "bent too");
    }

    [Fact]
    public void TheCutOfAPlateOnFourRods()
    {
        var w = new Working();
        // own numbers: span 200, load 100 wide, cut 400 less an 80 hole, t 50: M = 0.0375, W = 133.33e-6
        Limit limit = CornerPlate.Yields(1, 0.2, 0.1, 0.4, 0.08, 0.05, 335e6, None, w)!.Value;

        new Reference("V-10", "statics: two rods' pull times the half span less the load's own lever", Trust.Recomputed)
            .Near("ram force at yield, kN", 133.3333e-6 * 335e6 / 0.0375 / 1e3, limit.GivesAt / 1e3, 1e-6);
        WorkingCheck.Holds(w);
    }
}
