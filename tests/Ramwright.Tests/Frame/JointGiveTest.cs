using CsCheck;
using Ramwright.Frame;
using Ramwright.Workings;

namespace Ramwright.Tests.Frame;

/// <summary>The springs one by one; how whole frames with them agree with solid models is tested there.</summary>
public class JointGiveTest
{
    private const double E = 210e9, G = 210e9 / 2.6;
    private static readonly FlangeBed Heb200 = new(0.200, 0.009, 0.015, 0.200);

    [Fact]
    public void BarThroughASlot()
    {
        // Bar of 200 x 40 on two flanges 185 apart: end rotation under a moment M: M z/(3EI) + M/(G As z).
        double z = 0.185, I = 0.04 * 8e-3 / 12, As = 0.04 * 0.2 / 1.2;
        double soft = z / (3 * E * I) + 1 / (G * As * z);
        new Reference("J-02", "overhanging beam on two supports, with shear", Trust.Recomputed)
            .Near("S, N·m/rad", 1 / soft, JointGive.ThroughSlot(z, 0.2, 0.04), 1e-9);
    }

    [Fact]
    public void PanelSharedByItsTwoMembers()
    {
        // 200 x 180 x 10 under 1 kN·m on both: τ = M/(z_b z_c t), the right angle closes by τ/G
        double M = 1e3, gamma = M / (0.2 * 0.18 * 0.01) / G, S = JointGive.Panel(0.01, 0.2, 0.18);
        new Reference("J-03", "even shear of a rectangular panel between two moments", Trust.Recomputed)
            .Near("change of the right angle, µrad", gamma * 1e6, (M / S + M / S) * 1e6, 1e-9);
    }

    [Fact]
    public void EndOnAnEdge() =>
        new Reference("J-05", "O'Donnell, J. Appl. Mech. 27 (1960): θ = 16.67 M/(π E h²) for unit thickness", Trust.FromMemory)
            .Near("θ, µrad, for 1 kN·m on 100 x 20", 16.67 * 1e3 / (Math.PI * E * 0.02 * 0.01) * 1e6, 1e3 / JointGive.OnEdge(0.02, 0.1) * 1e6, 1e-9);

    [Fact]
    public void FlangeOnItsWeb()
    {
        // Hetényi by numbers: a beam of 200 x 15 on a bed of k; line force in the middle, and a rigid end of 200
        double k = 2 * E * 0.009 / 0.170, EI = E * 0.2 * Math.Pow(0.015, 3) / 12, lambda = Math.Pow(k / (4 * EI), 0.25);
        var r = new Reference("J-06", "beam on an elastic bed, by finite elements condensed from the far end", Trust.Recomputed);
        (double force, double turn, double cross) = HalfInfinite(k, EI, 12 / lambda);
        r.Near("length of bed under a line force, mm", force * 2 / k * 1e3, 2 / Heb200.Decay * 1e3, 1e-3);
        double h = 0.2, bed = k * h * h * h / 12 + 2 * (force * h * h / 4 + cross * h + turn);
        r.Near("rigid end, kN·m/rad", bed / 1e3, JointGive.OnFlange(Heb200, h) / 1e3, 1e-3);
    }

    /// <summary>Force per deflection, moment per turn and cross stiffness at the free end of a long beam on a bed, by finite elements of cubic beams.</summary>
    private static (double Force, double Turn, double Cross) HalfInfinite(double k, double EI, double length)
    {
        // condense from the far end, one short beam after another: the stiffness that its near end finds
        const int n = 4000;
        double l = length / n, S11 = 0, S12 = 0, S22 = 0;
        for (int i = 0; i < n; i++)
        {
            double a = EI / (l * l * l), b = k * l / 420;
            double k11 = 12 * a + 156 * b, k12 = 6 * a * l + 22 * b * l, k13 = -12 * a + 54 * b, k14 = 6 * a * l - 13 * b * l;
            double k22 = 4 * a * l * l + 4 * b * l * l, k23 = -6 * a * l + 13 * b * l, k24 = 2 * a * l * l - 3 * b * l * l;
            double k33 = k11 + S11, k34 = -k12 + S12, k44 = k22 + S22, det = k33 * k44 - k34 * k34;
            double Off(double p3, double p4, double q3, double q4) => (p3 * (k44 * q3 - k34 * q4) + p4 * (k33 * q4 - k34 * q3)) / det;
            (S11, S12, S22) = (k11 - Off(k13, k14, k13, k14), k12 - Off(k13, k14, k23, k24), k22 - Off(k23, k24, k23, k24));
        }

        return (S11, S22, Math.Abs(S12));
    }

    [Fact]
    public void DieOnAnEdge()
    {
        // the three parts by themselves: strip on a half-plane by summing point loads, to half depth
        const double h = 0.2, c = 0.05;
        const int n = 2000;
        double sum = 0;
        for (int i = 0; i < n; i++)
            for (int j = 0; j < n; j++)
                sum += i == j ? 1 - Math.Log(c / n / 2) : -Math.Log(Math.Abs(i - j) * c / n);
        double strip = 2 / Math.PI * (Math.Log(h / 2) + sum / n / n) - 1.3 / Math.PI;
        new Reference("J-07", "Flamant's point loads summed over the die; −0.21 of Timoshenko and Goodier's beam under a concentrated load, from memory; shear rounded over the die", Trust.FromMemoryAndRecomputed)
            .Within("sinking of the die, F/(E t)", strip - 0.21 - 1.2 * 2.6 / 24 * c / h, DiePressing.Of(h, c, 0.01, 100), 0.01);
    }

    [Fact]
    public void StiffnessGrowsWithDepthAndThickness() =>
        Gen.Select(Gen.Double[0.1, 0.3], Gen.Double[0.01, 0.06], Gen.Double[1.01, 1.3]).Sample((h, b, k) =>
        {
            Assert.True(JointGive.ThroughSlot(0.185, h, b * k) > JointGive.ThroughSlot(0.185, h, b));
            Assert.True(JointGive.ThroughSlot(0.185, h * k, b) > JointGive.ThroughSlot(0.185, h, b));
            Assert.True(JointGive.OnFlange(Heb200, h * k) > JointGive.OnFlange(Heb200, h));
            Assert.True(JointGive.OnFlange(Heb200 with { Web = Heb200.Web * k }, h) > JointGive.OnFlange(Heb200, h));
            Assert.True(JointGive.OnEdge(b, h * k) > JointGive.OnEdge(b, h));
            Assert.True(JointGive.ProfileOnFace(Heb200, h * k, 0.01) > JointGive.ProfileOnFace(Heb200, h, 0.01));
            Assert.True(DiePressing.Of(h, 0.05, b * k) <= DiePressing.Of(h, 0.05, b));
        }, iter: 100);

    [Fact]
    public void OutOfRangeIsRefused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => JointGive.ThroughSlot(0.185, 0.2, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => JointGive.ProfileOnFace(Heb200, 0.01, 0.02));
        Assert.Throws<ArgumentOutOfRangeException>(() => JointGive.OnEdge(double.NaN, 0.1));
        Assert.Throws<ArgumentOutOfRangeException>(() => DiePressing.Of(0.2, double.NaN, 0.01));
        Assert.Throws<ArgumentOutOfRangeException>(() => new FlangeBed(0.2, 0.009, 0.015, 0));
    }

    [Fact]
    public void WorkingHolds()
    {
        var w = new Working();
        JointGive.Panel(0.009, 0.2, 0.185, w: w);
        JointGive.OnEdge(0.04, 0.2, w: w);
        JointGive.OnFlange(Heb200, 0.2, w: w);
        JointGive.ProfileOnFace(Heb200, 0.3, 0.0107, w: w);
        JointGive.ThroughSlot(0.185, 0.2, 0.04, w: w);
        JointGive.SlotBedding(0.015, 0.185, w: w);
        JointGive.Stretch(78e-4, 0.2, w: w);
        JointGive.Shear(18e-4, 0.2, JointGive.ShearingOver, w: w);
        DiePressing.Of(0.2, 0.06, 0.04, w: w);
        WorkingCheck.Holds(w);
    }
}
