using CsCheck;
using Ramwright.Geometry;
using Ramwright.Stock;
using Ramwright.Strength;
using Ramwright.Workings;

namespace Ramwright.Tests.Strength;

public class FatigueStrengthTest
{
    private const double MPa = 1e6;
    private static readonly FatigueFactors Bare = new(1, 1);
    private static readonly FatigueFactors Severe = new();

    private static FatigueStrength Root(double squeezes) => new(squeezes, 275e6, DetailCategory.Root, DetailCategory.FilletShear);

    [Fact]
    public void RootAgainstToe()
    {
        // 150 kN square to a plate 15 thick, 200 wide, standing on a face with a fillet of throat 5 on either side
        var r = new Reference("G-23", "EN 1993-1-9, table 8.5: fillet T-joint, 150 kN over 200 mm, a 5, plate 15, γ_Mf 1.35", Trust.OwnNumbers);
        WeldGroup group = WeldOutline.TwoLines(WeldPlane.OfSection, 0.200, 0.015, 0.005, openEnds: false);
        FatigueStrength strength = Root(1e5);

        (double sigma, double tau) = WeldFatigue.Root(group, 150e3 * Vector.Across, Vector.Zero, Vector.Zero, strength);

        r.Near("Δσ_w, MPa", 75.0, sigma / MPa, 0.01);
        r.Within("Δτ_w, MPa", 0, tau / MPa, 1e-9);
        r.Near("squeezes of the root", 89_900, strength.Squeezes(sigma, tau, 1, Severe)!.Value, 0.01);
        var toe = new FatigueStrength(1e5, 275e6, DetailCategory.Toe(0.04, 0.015));
        double beside = 150e3 / (0.2 * 0.015);
        r.Near("squeezes of the toe", 3.33e6, toe.Squeezes(beside, 0, 1, Severe)!.Value, 0.01);
        new Reference("T-05", "trap: the root is the weaker though static use is small", Trust.Recomputed).Near("root against toe", 37,
            toe.Squeezes(beside, 0, 1, Severe)!.Value / strength.Squeezes(sigma, tau, 1, Severe)!.Value, 0.01);
    }

    [Fact]
    public void BothStressesUseUpEquation83()
    {
        FatigueStrength s = Root(2e6);
        foreach ((double sigma, double tau) in (ReadOnlySpan<(double, double)>)[(30, 40), (36, 1), (1, 80), (20, 79), (35.999, 0), (0, 5)])
        {
            double u = s.Use(sigma * MPa, tau * MPa);
            Near.Relative(1, Math.Pow(sigma / 36 / u, 3) + Math.Pow(tau / 80 / u, 5), 1e-12, $"{sigma} and {tau}");
        }
    }

    [Fact]
    public void BeyondTheKneeBothFollowTheFifthPower()
    {
        // at 20 million the cut-down 36 of the root and the 80 of its shear both lie on slopes of 5
        FatigueStrength s = Root(2e7);
        double sigmaR = 36 * Math.Cbrt(0.4) * Math.Pow(0.25, 0.2), tauR = 80 * Math.Pow(0.1, 0.2);
        foreach ((double sigma, double tau) in (ReadOnlySpan<(double, double)>)[(20, 30), (1, 50), (0, 50), (20, 0)])
        {
            double u = s.Use(sigma * MPa, tau * MPa);
            Near.Relative(1, Math.Pow(sigma / sigmaR / u, 5) + Math.Pow(tau / tauR / u, 5), 1e-12, $"{sigma} and {tau}");
        }
    }

    [Fact]
    public void UsingMoreIsWhatUseSays() =>
        Gen.Select(Gen.Double[4, 8], Gen.Double[1, 300], Gen.Double[1, 300], Gen.Double[1, 300], Gen.Double[1, 300]).Sample((lg, s1, t1, s2, t2) =>
        {
            FatigueStrength strength = Root(Math.Pow(10, lg));
            double one = strength.Use(s1, t1), two = strength.Use(s2, t2);
            if (Math.Abs(one - two) > 1e-9 * one)
                Assert.Equal(one > two, strength.UsesMore(s1, t1, two));
            Assert.False(strength.UsesMore(0, 0, 0));
            Assert.True(strength.UsesMore(s1, t1, 0));
            Assert.True(strength.UsesMore(s1, 0, 0));
            Assert.True(strength.UsesMore(0, t1, 0));
        }, iter: 300);

    [Fact]
    public void OneKindOfStressAlone()
    {
        var direct = new FatigueStrength(2e6, 275e6, DetailCategory.Root);
        var shear = new FatigueStrength(2e6, 275e6, null, DetailCategory.FilletShear);
        Near.Relative(1 / 36e6, direct.Use(1, 1000), 1e-12, "shear is none of its business");
        Near.Relative(1 / 80e6, shear.Use(1000, 1), 1e-12, "direct stress is none of its business");
        Assert.Same(DetailCategory.Root, direct.Detail);
        Assert.Same(DetailCategory.FilletShear, shear.Detail);
        Assert.Null(direct.Force(0, 1, Severe));
        Assert.Null(shear.Force(1, 0, Severe));
        Assert.Null(direct.Squeezes(0, 1e9, 1, Severe));
    }

    [Fact]
    public void WorkingShowsEveryStep()
    {
        Shows("Δσ_C Δσ_N Δσ_R Δτ_C Δτ_N Δτ_R u_σ u_τ u D F_gives F_safe", Root(2e4));
        Shows("Δσ_C Δσ_D Δσ_N Δσ_R Δτ_C Δτ_N Δτ_R u_σ u_τ u D F_gives F_safe", Root(2e7));
        Shows("Δσ_C Δσ_N Δσ_R u F_gives F_safe", new FatigueStrength(2e4, 275e6, DetailCategory.Root));
        Shows("Δτ_C Δτ_N Δτ_R u F_gives F_safe", new FatigueStrength(2e4, 275e6, null, DetailCategory.FilletShear));

        static void Shows(string symbols, FatigueStrength strength)
        {
            var w = new Working();
            strength.Force(30, 40, Severe, w);
            WorkingCheck.Holds(w);
            WorkingCheck.Shows(w, symbols);
        }
    }

    [Fact]
    public void TheRangeEndsAtOneAndAHalfTimesYield()
    {
        var strength = new FatigueStrength(1e4, 235e6, DetailCategory.Rolled, DetailCategory.RolledShear);

        Near.Relative(1.5 * 235e6, 1 / strength.Use(1, 0), 1e-12, "direct");
        Near.Relative(1.5 * 235e6 / Math.Sqrt(3), 1 / strength.Use(0, 1), 1e-12, "shear");
        Assert.Equal(0, strength.Squeezes(1.51 * 235e6, 0, 1, Bare));
        Assert.True(strength.Squeezes(1.49 * 235e6, 0, 1, Bare) > 1e4);
        // at the cap itself it still stands, rounding or not
        Assert.True(strength.Squeezes(1.5 * 235e6 * (1 + 1e-12), 0, 1, Bare) > 1e4);
    }

    [Fact]
    public void MoreSqueezesNeverRaiseTheForce() =>
        Gen.Select(Gen.Double[0, 9], Gen.Double[0.01, 3], Gen.Double[0, 300], Gen.Double[0.1, 300]).Sample((lg, more, sigma, tau) =>
        {
            Limit few = Root(Math.Pow(10, lg)).Force(sigma, tau, Severe)!.Value;
            Limit many = Root(Math.Pow(10, Math.Min(9, lg + more))).Force(sigma, tau, Severe)!.Value;

            Assert.True(many.GivesAt <= few.GivesAt * (1 + 1e-12) && many.SafeTo <= few.SafeTo * (1 + 1e-12));
            Near.Relative(1.35, few.Factor, 1e-12, "factor");
        });

    [Fact]
    public void AForceThatIsSafeAllowsTheSqueezes() =>
        Gen.Select(Gen.Double[0, 9], Gen.Double[0, 300], Gen.Double[0.1, 300], Gen.Double[0.01, 1]).Sample((lg, sigma, tau, share) =>
        {
            double N = Math.Pow(10, lg);
            FatigueStrength strength = Root(N);
            double force = share * strength.Force(sigma, tau, Severe)!.Value.SafeTo;

            Assert.True((strength.Squeezes(sigma, tau, force * (1 - 1e-12), Severe) ?? double.PositiveInfinity) >= N * (1 - 1e-9));
        });

    [Fact]
    public void AForceThatIsNotSafeDoesNot() =>
        Gen.Select(Gen.Double[4, 7.9], Gen.Double[1, 300], Gen.Double[1.001, 4]).Sample((lg, sigma, times) =>
        {
            double N = Math.Pow(10, lg);
            FatigueStrength strength = Root(N);
            double force = times * strength.Force(sigma, 0, Severe)!.Value.SafeTo;

            Assert.True(strength.Squeezes(sigma, 0, force, Severe) < N);
        });

    [Fact]
    public void TheWorstEndOfTheWeldsIsFound() =>
        Gen.Double[-1, 1].Array[6].Sample(f =>
        {
            WeldGroup group = WeldOutline.Rectangle(WeldPlane.OfSection, 0.1, 0.2, 0.005);
            FatigueStrength strength = Root(5e4);
            Vector force = new(f[0], f[1], f[2]), moment = new(f[3] / 10, f[4] / 10, f[5] / 10);

            (double sigma, double tau) = WeldFatigue.Root(group, force, moment, Vector.Zero, strength);

            double most = strength.Use(sigma, tau);
            foreach (WeldSegment weld in group.Segments)
            {
                for (int i = 0; i <= 10; i++)
                {
                    Vector s = group.StressAt(force, moment, Vector.Zero, weld.From + i / 10.0 * (weld.To - weld.From));
                    double n = s.Dot(weld.Normal), l = s.Dot(weld.Along), t = Math.Sqrt(Math.Max(0, s.Dot(s) - l * l - n * n));
                    Assert.True(strength.Use(Math.Sqrt(n * n + t * t), l) <= most * (1 + 1e-9));
                }
            }
        }, iter: 200);

    [Fact]
    public void NothingActingIsNoLimit()
    {
        Assert.Null(Root(1e4).Force(0, 0, Severe));
        Assert.Null(Root(1e4).Squeezes(0, 0, 1, Severe));
        Assert.Throws<ArgumentException>(() => new FatigueStrength(1e4, 275e6, DetailCategory.BoltShear));
        Assert.Throws<ArgumentException>(() => new FatigueStrength(1e4, 275e6, null));
        Assert.Throws<ArgumentOutOfRangeException>(() => new FatigueStrength(double.NaN, 275e6, DetailCategory.Root));
        Assert.Throws<ArgumentOutOfRangeException>(() => Root(1e4).Use(double.NaN, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => new FatigueFactors(0.9));
    }

    [Theory]
    [InlineData(2e4), InlineData(2e7), InlineData(100)]
    public void WorkingFollowsFromItsText(double squeezes)
    {
        WeldGroup group = WeldOutline.Rectangle(WeldPlane.OfSection, 0.1, 0.2, 0.005);
        FatigueStrength strength = Root(squeezes);
        Vector force = new(0.4, 0.3, -1), moment = new(0.02, 0.05, 0.01);
        var w = new Working();
        (double sigma, double tau) = WeldFatigue.Root(group, force, moment, Vector.Zero, strength, w);
        Limit limit = strength.Force(sigma, tau, Severe, w)!.Value;
        WorkingCheck.Holds(w);
        Assert.Contains(w.Steps, s => s.Si == limit.SafeTo);
    }
}
