using CsCheck;
using Ramwright.Jobs;
using Ramwright.Workings;

namespace Ramwright.Tests.Jobs;

public sealed class SqueezingTest
{
    [Theory]
    [InlineData(0.3, 2, 1.5447, 0.9089)]
    [InlineData(0.3, 4, 2.2639, 2.9089)]
    [InlineData(0.4, 3, 2.0771, 2.5413)]
    public void DiscThatSlidesOutsideAndSticksInside(double μ, double R, double p, double stuck)
    {
        var reference = new Reference("W2-23", "slab method, sliding to sticking", Trust.Recomputed);
        reference.Within($"p/Y, μ {μ}, R/h {R}", p, FlatDies.DiscMixed(μ, R), 0.001);
        reference.Within($"r_s/h, μ {μ}, R/h {R}", stuck, FlatDies.StickingRadius(μ, R), 0.001);
        Assert.True(FlatDies.DiscMixed(μ, R) <= FlatDies.DiscSlidingExact(μ, 2 * R) + 1e-9);
    }

    [Theory]
    [InlineData(50, 50, 25, 1.3849, false)]
    [InlineData(50, 100, 25, 1.4811, false)]
    [InlineData(50, 150, 10, 2.2830, false)]
    [InlineData(50, 150, 10, 2.4377, true)]
    public void RectangleThatSticks(double w, double l, double h, double p, bool plane)
    {
        var work = new Working();
        double found = FlatDies.Hill(plane ? FlatDies.PlaneStrain : 1, 1 / Math.Sqrt(3), w / 1000, l / 1000, h / 1000, work);
        new Reference("W2-24", "hill of friction over a rectangle", Trust.Recomputed).Within($"p/Y, {w} × {l}, h {h}{(plane ? ", base 2k" : "")}", p, found, 0.0005);
        WorkingCheck.Holds(work);
    }

    [Fact]
    public void TheHillReproducesDiscAndStrip()
    {
        Near.Relative(FlatDies.DiscSticking(1, 2), FlatDies.Hill(1, 1 / Math.Sqrt(3), 2, 2, 1), 1e-12);
        Near.Relative(FlatDies.StripSticking(1, 2), FlatDies.Hill(FlatDies.PlaneStrain, 1 / Math.Sqrt(3), 2, 2e9, 1) / FlatDies.PlaneStrain, 1e-6);
        Near.Relative(FlatDies.DiscSliding(0.3, 2), FlatDies.Hill(1, 0.3, 2, 2, 1), 1e-12);
    }

    [Fact]
    public void GrooversCylinder()
    {
        var reference = new Reference("W2-30", "M. P. Groover, open-die forging example", Trust.FromMemoryAndRecomputed);
        const double K = 350e6, n = 0.17, V = Math.PI / 4 * 0.05 * 0.05 * 0.075;
        double Force(double h, double ε)
        {
            double A = V / h, D = Math.Sqrt(4 * A / Math.PI);
            return FlatDies.GrooverFactor(0.1, D / h) * K * Math.Pow(ε, n) * A;
        }

        reference.Near("F at yield, N", 245_300, Force(0.075, 0.002), 0.002);
        reference.Near("F at 62 mm, N", 649_300, Force(0.062, Math.Log(75.0 / 62)), 0.002);
        reference.Near("F at 49 mm, N", 955_650, Force(0.049, Math.Log(75.0 / 49)), 0.002);
        reference.Near("F at 36 mm, N", 1_467_300, Force(0.036, Math.Log(75.0 / 36)), 0.002);
    }

    [Theory]
    [InlineData(2.3, 153_690)]
    [InlineData(2.1, 189_220)]
    [InlineData(1.9, 225_650)]
    [InlineData(1.7, 268_150)]
    [InlineData(1.5, 321_350)]
    public void GrooversExerciseInInches(double h, double lbf)
    {
        double A = Math.PI / 4 * 2.5 * 2.5 * 2.5 / h, D = Math.Sqrt(4 * A / Math.PI);
        double F = FlatDies.GrooverFactor(0.1, D / h) * 40_000 * Math.Pow(Math.Log(2.5 / h), 0.15) * A;
        new Reference("W2-32", "M. P. Groover, exercise in inches", Trust.FoundAndRecomputed).Near($"F at {h} in, lbf", lbf, F, 0.002);
    }

    [Fact]
    public void KalpakjiansStainlessDisc()
    {
        double A = Math.PI / 4 * 0.15 * 0.15 * 2, r = Math.Sqrt(A / Math.PI);
        var reference = new Reference("W2-33", "S. Kalpakjian, S. Schmid, forging example", Trust.FoundAndRecomputed);
        reference.Near("factor", 1.2828, FlatDies.DiscSliding(0.2, 2 * r / 0.05), 0.0005);
        reference.Near("F, MN", 45.3, FlatDies.DiscSliding(0.2, 2 * r / 0.05) * 1000e6 * A / 1e6, 0.005);
    }

    [Fact]
    public void DietersLeadStrip()
    {
        const double Y = 6.9;
        double k2 = Y * FlatDies.PlaneStrain, LOverH = 100 / 6.25;
        var reference = new Reference("W2-34", "G. Dieter, Mechanical Metallurgy, forging in plane strain", Trust.FromMemoryAndRecomputed);
        reference.Near("2k, MPa", 7.967, k2, 0.003);
        reference.Near("mean pressure, sticking, MPa", 39.84, k2 * FlatDies.StripSticking(1, LOverH), 0.003);
        reference.Near("F, sticking, kN", 597.6, k2 * FlatDies.StripSticking(1, LOverH) * 100 * 150 / 1000, 0.003);
        reference = new Reference("W2-35", "the same, sliding to sticking", Trust.Recomputed);
        reference.Near("sticks within, mm", 41.34, FlatDies.StickingHalfWidth(0.25, LOverH) * 6.25, 0.003);
        reference.Near("mean pressure, MPa", 36.95, k2 * FlatDies.StripMixed(0.25, LOverH), 0.003);
        reference.Near("F, kN", 554.2, k2 * FlatDies.StripMixed(0.25, LOverH) * 100 * 150 / 1000, 0.003);
    }

    [Fact]
    public void AHotUpset()
    {
        var law = new ShidaFlow(0.002);
        double ε = Math.Log(2), A = Math.PI / 4 * 0.03 * 0.03 * 2, d = Math.Sqrt(4 * A / Math.PI), Y = law.Stress(ε, 20 / 22.5, 1100);
        var reference = new Reference("W2-36", "Shida; Siebel; sticking disc", Trust.Recomputed);
        reference.Near("Y, MPa", 79.34, Y / 1e6, 0.005);
        reference.Near("factor, μ 0.3", 1.1886, FlatDies.DiscSliding(0.3, d / 0.0225), 0.0005);
        reference.Near("F, kN", 133.3, FlatDies.DiscSliding(0.3, d / 0.0225) * Y * A / 1e3, 0.005);
        reference.Near("F sticking, kN", 152.9, FlatDies.DiscSticking(1, d / 0.0225) * Y * A / 1e3, 0.005);

        var bite = new HotBite { Law = law, Height = 0.045, Width = 0.03, Bite = 0.03, Target = 0.0225, Whole = true, IsDisc = true, Friction = 0.3, Edge = 0 };
        // the bite holds the strain's factor at its greatest; the printed formula has begun to fall
        double held = law.Held(ε, 20 / 22.5, 1100) / Y;
        reference.Near("F by the bite, kN", 133.3 * held, bite.Force(bite.Travel, 0.02, 1100) / 1e3, 0.005);
    }

    [Fact]
    public void ThinWideWorkEatsTonnes()
    {
        var reference = new Reference("W2-37", "Shida; hill over a rectangle", Trust.Recomputed);
        double Y = new ShidaFlow(0.002).Stress(0.3, 1, 1000), A = 0.1 * 0.025;
        reference.Near("F, base Y, kN", 574, FlatDies.Hill(Y, Y / Math.Sqrt(3), 0.025, 0.1, 0.006) * A / 1e3, 0.005);
        reference.Near("F, base 2k, kN", 617, FlatDies.Hill(Y * FlatDies.PlaneStrain, Y / Math.Sqrt(3), 0.025, 0.1, 0.006) * A / 1e3, 0.005);
    }

    [Fact]
    public void PunchIntoAThickBody()
    {
        var reference = new Reference("W2-50", "R. Hill 1950; ASME J. Eng. Ind. 92 (1970) 469", Trust.FoundAndRecomputed);
        reference.Near("p/2k", 2.5708, NarrowBite.ThickBody, 1e-4);
        reference.Near("p/Y, von Mises", 2.9685, NarrowBite.ThickBody * FlatDies.PlaneStrain, 1e-4);
        reference.Near("p/2k, a tool far narrower than high", 2.5708, NarrowBite.Multiplier(20), 1e-4);
    }

    [Theory]
    [InlineData(1, 1.000)]
    [InlineData(1.25, 1.024)]
    [InlineData(1.5, 1.077)]
    [InlineData(2, 1.214)]
    [InlineData(2.5, 1.359)]
    [InlineData(3, 1.499)]
    [InlineData(4, 1.753)]
    [InlineData(5, 1.971)]
    [InlineData(6, 2.161)]
    [InlineData(7, 2.327)]
    [InlineData(8, 2.475)]
    [InlineData(8.72, 2.572)]
    public void NarrowToolBetweenTheRowsOfItsTable(double hOverB, double p) =>
        new Reference("W2-52", "R. Hill; Hosford and Caddell: opposed smooth tools", Trust.FromMemoryAndRecomputed).Within($"p/2k, h/b {hOverB}", p, NarrowBite.Multiplier(hOverB), 0.0015);

    [Fact]
    public void RoughPlatens()
    {
        var reference = new Reference("W2-53", "L. Prandtl 1923; R. Hill 1950", Trust.FromMemoryAndRecomputed);
        reference.Near("p/2k, b/h 4", 1.75, FlatDies.Prandtl(4), 1e-9);
        reference.Near("p/2k, b/h 8", 2.75, FlatDies.Prandtl(8), 1e-9);
        Assert.True(FlatDies.Prandtl(4) < FlatDies.StripSticking(1, 4));
    }

    [Fact]
    public void ClosedImpressions()
    {
        var reference = new Reference("W2-10", "S. Kalpakjian, S. Schmid; editions differ, doubtful", Trust.FromMemory);
        reference.Exactly("no flash", new Band(3, 4, 5), Impression.Multiplier(Presses.ImpressionShape.Open));
        reference.Exactly("with flash", new Band(5, 6.5, 8), Impression.Multiplier(Presses.ImpressionShape.Simple));
        reference.Exactly("complex", new Band(8, 10, 12), Impression.Multiplier(Presses.ImpressionShape.Complex));
        new Reference("W2-12", "S. Kalpakjian, S. Schmid: coining; doubtful", Trust.FromMemory).Exactly("least and most", (3.0, 6.0), (Impression.Multiplier(Presses.ImpressionShape.Coin).Low, Impression.Multiplier(Presses.ImpressionShape.Coin).High));
        new Reference("W2-11", "slab behind a flash land", Trust.Recomputed).Near("p/Y, b/t 3, m 0.7", 3.58, Impression.FlashResistance(3, 0.7), 0.002);
    }

    [Fact]
    public void HotterIsSofterAndBiggerIsHarder()
    {
        // above the change to ferrite, where the formula says so
        Gen.Select(Gen.Double[0.1, 0.8], Gen.Double[900, 1180], Gen.Double[5, 20], Gen.Double[10, 60], Gen.Double[0.3, 0.9], Gen.Double[1, 50], Gen.Double[1.02, 1.5])
            .Sample((C, T, hotter, size, share, speed, bigger) =>
            {
                var law = new ShidaFlow(C / 100);
                HotBite Of(double a) => new() { Law = law, Height = a / 1000, Width = a / 1000, Bite = 0.025, Target = share * a / 1000 };
                HotBite bite = Of(size), big = Of(size * bigger);
                double F = bite.Force(bite.Travel, speed / 1000, T);
                Assert.True(bite.Force(bite.Travel, speed / 1000, T + hotter) < F);
                // at the same strain rate, so that size alone differs
                Assert.True(big.Force(big.Travel, speed / 1000 * bigger, T) > F);
                Assert.True(bite.Force(bite.Travel, speed / 500, T) >= F);
            }, iter: 2000);
    }

    [Fact]
    public void VolumeIsKept()
    {
        Gen.Select(Gen.Double[10, 60], Gen.Double[0.3, 3], Gen.Double[10, 80], Gen.Double[0.4, 0.95], Gen.Bool)
            .Sample((size, flat, b, share, round) =>
            {
                double h = size / 1000, w = round ? h : flat * h;
                var bite = new HotBite { Law = new ShidaFlow(0.002), Height = h, Width = w, Bite = b / 1000, Target = share * h, IsRound = round };
                BiteShape at = bite.At(bite.Travel);
                double before = round ? Math.PI / 4 * h * h : h * w;
                double after = round ? (at.Width - at.Height) * at.Height + Math.PI / 4 * at.Height * at.Height : at.Height * at.Width;
                Near.Relative(before, after * at.Lengthening, 1e-9);
            }, iter: 1000);
    }

    [Fact]
    public void ABiteShowsItsWorking()
    {
        var bite = new HotBite { Law = new ShidaFlow(0.0045, 1.2), Height = 0.03, Width = 0.03, Bite = 0.02, Target = 0.024 };
        var w = new Working();
        double F = bite.Force(bite.Travel, 0.02, 1000, w);
        WorkingCheck.Holds(w);
        Near.Relative(F, w.Steps[^1].Si, 1e-12);
        var disc = new HotBite { Law = new ShidaFlow(0.001), Height = 0.045, Width = 0.03, Bite = 0.03, Target = 0.02, Whole = true, IsDisc = true, Friction = 0.8 };
        w = new Working();
        disc.Force(disc.Travel, 0.02, 850, w);
        WorkingCheck.Holds(w);
    }
}
