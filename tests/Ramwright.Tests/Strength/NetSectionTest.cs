using Ramwright.Frame;
using Ramwright.Stock;
using Ramwright.Strength;
using Ramwright.Workings;

namespace Ramwright.Tests.Strength;

public class NetSectionTest
{
    private static readonly PartialFactors NoLoad = new(Load: 1);

    [Fact]
    public void FlatWithOneHole()
    {
        var r = new Reference("L-15", "EN 1993-1-1 6.2.3, flat 100x12, one 22 mm hole", Trust.OwnNumbers);
        foreach ((string steel, double fy, double fu, double npl, double nu) in (ReadOnlySpan<(string, double, double, double, double)>)[
            ("S235", 235e6, 360e6, 282.0, 242.6), ("S275", 275e6, 430e6, 330.0, 289.8), ("S355", 355e6, 470e6, 426.0, 316.7)])
        {
            r.Near($"{steel} Nu,Rd, kN", nu, NetSection.Tension(1, 0.0012, 0.078 * 0.012, fy, fu, NoLoad)!.Value.SafeTo / 1e3, 0.003);
            r.Near($"{steel} without a hole: Npl, kN", npl, NetSection.Tension(1, 0.0012, 0.0012, fy, 2 * fu, NoLoad)!.Value.SafeTo / 1e3, 0.003);
        }

        Assert.Null(NetSection.Tension(-1, 0.0012, 0.001, 235e6, 360e6, NoLoad));
    }

    [Fact]
    public void BalancedRatio()
    {
        var r = new Reference("L-16", "EN 1993-1-1 6.2.3: Anet/A at which breaking and yielding balance", Trust.Recomputed);
        r.Near("S235", 0.907, NetSection.BalancedRatio(235, 360, NoLoad), 0.003);
        r.Near("S275", 0.888, NetSection.BalancedRatio(275, 430, NoLoad), 0.003);
        r.Near("S355 (510)", 0.967, NetSection.BalancedRatio(355, 510, NoLoad), 0.003);
    }

    /// <summary>HEB 160 with two 22 mm holes in its lower flange, from the printed values of L-17.</summary>
    private static readonly SectionProperties Holed = Sections.Heb160 with
    {
        A = Sections.Heb160.A - 2 * 0.022 * 0.013,
        Iy = 2145.8e-8,
        Wely = 242.0e-6,
        Top = 0.080 - 0.00866,
        Bottom = 0.080 + 0.00866,
    };

    [Fact]
    public void HolesInOneFlange()
    {
        var r = new Reference("L-17", "HEB 160, two 22 mm holes in one flange", Trust.Recomputed);
        double bending = NetSection.Yield(new Actions(0, 0, 0, 0, 1, 0), Sections.Heb160, Holed, 235e6, new PartialFactors(1, 1, 1, 1))!.Value.GivesAt;
        r.Near("W of the tension side, cm³", 242.0, bending / 235e6 * 1e6, 0.003);
        new Reference("T-04", "trap: holes forgotten in a flange", Trust.Recomputed)
            .Within("moment", -0.22, bending / (235e6 * Sections.Heb160.Wely) - 1, 0.005);
    }

    [Fact]
    public void HolesThatMayNotBeIgnored()
    {
        var r = new Reference("L-19", "EN 1993-1-1 6.2.5(4): L-17 in S275 (430)", Trust.OwnNumbers);
        double Af = 0.16 * 0.013, net = Af - 2 * 0.022 * 0.013;
        r.Exactly("may be ignored", false, NetSection.MayIgnoreHoles(Af, net, 275e6, 430e6, NoLoad));
        r.Exactly("a single small one may", true, NetSection.MayIgnoreHoles(Af, 0.95 * Af, 275e6, 430e6, NoLoad));
    }

    [Fact]
    public void APullOffTheNetCentroidBends()
    {
        // Flat 20 x 100 with a slot 20 deep, 20 above the middle: the pull acts 5 mm above what is left.
        double A = 0.0016, shift = -0.0004 * 0.02 / A;
        double I = 0.02 * (1e-3 - 0.02 * 0.02 * 0.02) / 12 - 0.0004 * 0.02 * 0.02 - A * shift * shift;
        SectionProperties gross = Sections.Flat(0.02, 0.1), net = gross with { A = A, Iy = I, Top = 0.055, Bottom = 0.045 };
        double byHand = 235e6 / (1 / A + 0.005 * 0.055 / I);
        var one = new PartialFactors(1, 1, 1, 1);
        Near.Relative(byHand, NetSection.Yield(new Actions(1, 0, 0, 0, 0, 0), gross, net, 235e6, one)!.Value.GivesAt, 1e-9);

        SectionProperties wide = Sections.Flat(0.1, 0.02), side = wide with { A = A, Iz = I, Right = 0.055, Left = 0.045 };
        Near.Relative(byHand, NetSection.Yield(new Actions(1, 0, 0, 0, 0, 0), wide, side, 235e6, one)!.Value.GivesAt, 1e-9);
        // A moment that straightens it again: the pull then lies on the net centroid.
        Near.Relative(235e6 * A, NetSection.Yield(new Actions(1, 0, 0, 0, -0.005, 0), gross, net, 235e6, one)!.Value.GivesAt, 1e-9);
        Near.Relative(235e6 * A, NetSection.Yield(new Actions(1, 0, 0, 0, 0, 0.005), wide, side, 235e6, one)!.Value.GivesAt, 1e-9);
    }

    [Fact]
    public void NonsenseIsRefused()
    {
        Assert.Throws<ArgumentException>(() => NetSection.Yield(new Actions(1, 0, 0, 0, 0, 0), Holed, Sections.Heb160, 235e6, NoLoad));
        Assert.Throws<ArgumentOutOfRangeException>(() => NetSection.Tension(1, 0.001, 0.0012, 235e6, 360e6, NoLoad));
    }

    [Fact]
    public void TearOutAndBlocks()
    {
        new Reference("L-20", "AISC 360 J3.10: lc 29, t 12, Fu 450, d 20", Trust.FromMemoryAndRecomputed).Near("kN", 187.9, TearOut.Edge(0.029, 0.012, 0.020, 450e6) / 1e3, 0.003);
        Near.Relative(259.2e3, TearOut.Edge(0.1, 0.012, 0.020, 450e6), 0.003);
        new Reference("L-21", "two planes of 29 x 12 in S275", Trust.Recomputed).Near("kN", 110.5, TearOut.Plug(0.029, 0.012, 275e6) / 1e3, 0.003);
        var r = new Reference("L-22", "EN 1993-1-8 3.10.2: two M20 in line, e1 40, p1 70, e2 40, t 10, S275", Trust.OwnNumbers);
        double Ant = (40 - 11) * 10e-6, Anv = (40 + 70 - 1.5 * 22) * 10e-6;
        r.Near("kN", 222.0, TearOut.Block(1, Ant, Anv, 275e6, 430e6, false, NoLoad)!.Value.SafeTo / 1e3, 0.003);
        r.Near("eccentric, kN", 172.1, TearOut.Block(1, Ant, Anv, 275e6, 430e6, true, NoLoad)!.Value.SafeTo / 1e3, 0.003);
    }

    [Fact]
    public void WorkingHolds()
    {
        var w = new Working();
        NetSection.Tension(0.5, 0.0012, 0.001, 235e6, 360e6, PartialFactors.Recommended, w);
        NetSection.Yield(new Actions(0.5, 0, 0.3, 0, 0.1, 0.02), Sections.Heb160, Holed, 235e6, PartialFactors.Recommended, SectionClass.One, w);
        TearOut.Block(0.5, 290e-6, 770e-6, 275e6, 430e6, true, PartialFactors.Recommended, w);
        WorkingCheck.Holds(w);
    }
}
