using CsCheck;
using Ramwright.Frame;
using Ramwright.Stock;
using Ramwright.Strength;
using Ramwright.Workings;

namespace Ramwright.Tests.Strength;

public class ColumnBucklingTest
{
    private static readonly PartialFactors One = new(1, 1, 1, 1);

    [Theory]
    [InlineData("C-01", 0.2, 1.0000, 1.0000, 1.0000, 1.0000, 1.0000)]
    [InlineData("C-02", 0.3, 0.9859, 0.9775, 0.9641, 0.9491, 0.9235)]
    [InlineData("C-03", 0.5, 0.9513, 0.9243, 0.8842, 0.8430, 0.7793)]
    [InlineData("C-04", 0.8, 0.8533, 0.7957, 0.7245, 0.6622, 0.5797)]
    [InlineData("C-05", 1.0, 0.7253, 0.6656, 0.5970, 0.5399, 0.4671)]
    [InlineData("C-06", 1.2, 0.5732, 0.5300, 0.4781, 0.4338, 0.3762)]
    [InlineData("C-07", 1.5, 0.3953, 0.3724, 0.3422, 0.3145, 0.2766)]
    [InlineData("C-08", 2.0, 0.2323, 0.2229, 0.2095, 0.1962, 0.1766)]
    [InlineData("C-09", 3.0, 0.1063, 0.1036, 0.0994, 0.0951, 0.0882)]
    public void Curves(string id, double lambda, double a0, double a, double b, double c, double d)
    {
        var r = new Reference(id, $"EN 1993-1-1:2005 6.3.1.2, χ at λ̄ = {lambda}; α of table 6.1 found, χ recomputed", Trust.FoundAndRecomputed);
        r.Within("curve a0", a0, ColumnBuckling.Chi(lambda, BucklingCurve.A0), 0.0005);
        r.Within("curve a", a, ColumnBuckling.Chi(lambda, BucklingCurve.A), 0.0005);
        r.Within("curve b", b, ColumnBuckling.Chi(lambda, BucklingCurve.B), 0.0005);
        r.Within("curve c", c, ColumnBuckling.Chi(lambda, BucklingCurve.C), 0.0005);
        r.Within("curve d", d, ColumnBuckling.Chi(lambda, BucklingCurve.D), 0.0005);
    }

    [Fact]
    public void YieldSlenderness()
    {
        var r = new Reference("C-10", "EN 1993-1-1:2005 6.3.1.3, λ1 = π √(E/fy)", Trust.FromMemoryAndRecomputed);
        r.Near("S235", 93.91, ColumnBuckling.Lambda1(210e9, 235e6), 0.001);
        r.Near("S275", 86.81, ColumnBuckling.Lambda1(210e9, 275e6), 0.001);
        r.Near("S355", 76.41, ColumnBuckling.Lambda1(210e9, 355e6), 0.001);
    }

    [Theory]
    [InlineData("C-11", "IPE 200", 275e6, 3.0, BucklingCurve.B, 327.9, 1.545, 0.3260, 255.4)]
    [InlineData("C-12", "HEB 160", 235e6, 2.0, BucklingCurve.C, 4607, 0.526, 0.828, 1056)]
    [InlineData("C-13", "SHS 100x100x6", 355e6, 2.0, BucklingCurve.C, 1614, 0.690, 0.731, 561)]
    public void WorkedColumns(string id, string name, double fy, double Lcr, BucklingCurve curve, double ncr, double lambda, double chi, double nb)
    {
        SectionProperties s = name switch
        {
            "IPE 200" => Sections.Ipe200,
            "HEB 160" => Sections.Heb160,
            _ => Sections.Heb160 with { A = 2163e-6, Iy = 311.5e-8, Iz = 311.5e-8 },
        };
        var r = new Reference(id, $"EN 1993-1-1 6.3.1: {name}, {fy / 1e6} MPa, Lcr {Lcr} m, curve {curve}", Trust.OwnNumbers);
        r.Near("Ncr, kN", ncr, ColumnBuckling.Ncr(210e9, s.Iz, Lcr) / 1e3, 0.005);
        (double x, double l) = ColumnBuckling.Reduction(s.A, s.Iz, Lcr, fy, 210e9, curve, "z");
        r.Near("λ̄", lambda, l, 0.005);
        r.Near("χ", chi, x, 0.005);
        Limit limit = ColumnBuckling.Axial(-1, s, new Column(0.1, Lcr, curve, curve), fy, One)!.Value;
        r.Near("Nb, kN", nb, limit.GivesAt / 1e3, 0.005);
    }

    [Fact]
    public void TensionDoesNotBuckle()
    {
        var column = new Column(2, 2, BucklingCurve.B, BucklingCurve.C);
        Assert.Null(ColumnBuckling.Axial(1, Sections.Heb160, column, 235e6, One));
        Assert.Null(ColumnBuckling.Axial(0, Sections.Heb160, column, 235e6, One));
        Assert.Null(ColumnBuckling.WithBending(new Actions(0.5, 0, 0, 0, 0.1, 0), Sections.Heb160, column, 235e6, One));
    }

    private static readonly Gen<(Actions A, Column C)> AnyColumn = Gen.Select(
        Gen.Double[-2, -0.01], Gen.Double[-0.4, 0.4], Gen.Double[-0.2, 0.2], Gen.Double[0.2, 6], Gen.Double[0.2, 6], Gen.Double[0.4, 1])
        .Select((n, my, mz, ly, lz, cm) => (new Actions(n, 0, 0, 0, my, mz), new Column(ly, lz, BucklingCurve.B, BucklingCurve.C, cm, cm)));

    [Fact]
    public void TheMultiplierPutsTheInteractionAtOne() => AnyColumn.Sample((a, c) =>
    {
        // Table B.1, class 3, and eq. 6.61, 6.62 written out anew at the force found.
        SectionProperties s = Sections.Heb160;
        double fy = 235e6, F = ColumnBuckling.WithBending(a, s, c, fy, One)!.Value.GivesAt;
        double ly = Math.Sqrt(s.A * fy / (Math.PI * Math.PI * 210e9 * s.Iy / (c.LcrY * c.LcrY)));
        double lz = Math.Sqrt(s.A * fy / (Math.PI * Math.PI * 210e9 * s.Iz / (c.LcrZ * c.LcrZ)));
        double xy = ColumnBuckling.Chi(ly, c.CurveY), xz = ColumnBuckling.Chi(lz, c.CurveZ);
        double ny = -F * a.N / (xy * s.A * fy), nz = -F * a.N / (xz * s.A * fy);
        double my = F * Math.Abs(a.My) / (s.Wely * fy), mz = F * Math.Abs(a.Mz) / (s.Welz * fy);
        double kyy = Math.Min(c.CmY * (1 + 0.6 * ly * ny), c.CmY * (1 + 0.6 * ny));
        double kzz = Math.Min(c.CmZ * (1 + 0.6 * lz * nz), c.CmZ * (1 + 0.6 * nz));
        double first = ny + kyy * my + kzz * mz, second = nz + 0.8 * kyy * my + kzz * mz;
        Near.Relative(1, Math.Max(first, second), 1e-9);
    }, iter: 200);

    [Fact]
    public void WhereItCanTwistTheWeakAxisTakesTheWholeMoment() => AnyColumn.Sample((a, c) =>
    {
        // Eq. 6.61 and 6.62 with χ_LT, k_zy = 1: on the safe side of table B.2.
        SectionProperties s = Sections.Heb160;
        c = c with { ChiLT = 0.7 };
        double fy = 235e6, F = ColumnBuckling.WithBending(a, s, c, fy, One)!.Value.GivesAt;
        double ly = Math.Sqrt(s.A * fy / (Math.PI * Math.PI * 210e9 * s.Iy / (c.LcrY * c.LcrY)));
        double lz = Math.Sqrt(s.A * fy / (Math.PI * Math.PI * 210e9 * s.Iz / (c.LcrZ * c.LcrZ)));
        double ny = -F * a.N / (ColumnBuckling.Chi(ly, c.CurveY) * s.A * fy), nz = -F * a.N / (ColumnBuckling.Chi(lz, c.CurveZ) * s.A * fy);
        double my = F * Math.Abs(a.My) / (0.7 * s.Wely * fy), mz = F * Math.Abs(a.Mz) / (s.Welz * fy);
        double kyy = c.CmY * (1 + 0.6 * Math.Min(ly, 1) * ny), kzz = c.CmZ * (1 + 0.6 * Math.Min(lz, 1) * nz);
        Near.Relative(1, Math.Max(ny + kyy * my + kzz * mz, nz + my + kzz * mz), 1e-9);
    }, iter: 200);

    [Fact]
    public void WorkingShowsEveryStep()
    {
        var slender = new Column(3, 3, BucklingCurve.B, BucklingCurve.C);
        var w = new Working();
        ColumnBuckling.Axial(-1, Sections.Heb160, slender, 235e6, PartialFactors.Recommended, w: w);
        WorkingCheck.Shows(w, "N_cry λ_y Φ_y χ_y N_crz λ_z Φ_z χ_z N_bR u F_gives F_safe");
        var stocky = new Working();
        ColumnBuckling.Axial(-1, Sections.Heb160, new Column(0.2, 0.2, BucklingCurve.B, BucklingCurve.C), 235e6, PartialFactors.Recommended, w: stocky);
        WorkingCheck.Shows(stocky, "N_cry λ_y χ_y N_crz λ_z χ_z N_bR u F_gives F_safe");
        foreach ((double m1, string solved, int notes) in (ReadOnlySpan<(double, string, int)>)[
            (1, "n_y n_z m_y m_z c_y c_z b_1 a_1 b_2 a_2 F_gives", 1),
            (1.1, "n_y n_z m_y m_z c_y c_z b_1 a_1 b_2 a_2 F_gives n_y n_z m_y m_z c_y c_z b_1 a_1 b_2 a_2 F_Rd", 0)])
        {
            var both = new Working();
            ColumnBuckling.WithBending(new Actions(-1, 0, 0, 0, 0.1, 0.1), Sections.Heb160, slender, 235e6, new PartialFactors(M1: m1), w: both);
            WorkingCheck.Shows(both, "N_cry λ_y Φ_y χ_y N_crz λ_z Φ_z χ_z " + solved + " F_safe");
            Assert.Equal(notes, both.Notes.Count);
        }
    }

    [Fact]
    public void InteractionScalesAndBendingNeverHelps() => AnyColumn.Sample((a, c) =>
    {
        double F = ColumnBuckling.WithBending(a, Sections.Heb160, c, 235e6, One)!.Value.GivesAt;
        Near.Relative(F / 4, ColumnBuckling.WithBending(4 * a, Sections.Heb160, c, 235e6, One)!.Value.GivesAt, 1e-9);
        Near.Relative(F, ColumnBuckling.WithBending(a with { My = -a.My, Mz = -a.Mz }, Sections.Heb160, c, 235e6, One)!.Value.GivesAt, 1e-12);
        double alone = ColumnBuckling.Axial(a.N, Sections.Heb160, c, 235e6, One)!.Value.GivesAt;
        Assert.True(F <= alone * (1 + 1e-12));
        double longer = ColumnBuckling.Axial(a.N, Sections.Heb160, c with { LcrY = c.LcrY * 1.3, LcrZ = c.LcrZ * 1.3 }, 235e6, One)!.Value.GivesAt;
        Assert.True(longer <= alone * (1 + 1e-12));
        double twisting = ColumnBuckling.WithBending(a, Sections.Heb160, c with { ChiLT = 0.7 }, 235e6, One)!.Value.GivesAt;
        Assert.True(twisting <= F * (1 + 1e-12));
    }, iter: 200);

    [Fact]
    public void FactorOnBucklingStands()
    {
        var c = new Column(2, 2, BucklingCurve.B, BucklingCurve.C);
        Limit limit = ColumnBuckling.Axial(-1, Sections.Heb160, c, 235e6, new PartialFactors(M1: 1.1))!.Value;
        Near.Relative(1.65, limit.Factor, 1e-12);
        // With γ_M1 the pushes n and moments m all grow alike, so here too the factor is exactly γ_M1 γ_F.
        Limit both = ColumnBuckling.WithBending(new Actions(-1, 0, 0, 0, 0.1, 0), Sections.Heb160, c, 235e6, new PartialFactors(M1: 1.1))!.Value;
        Near.Relative(1.65, both.Factor, 1e-9);
    }

    [Fact]
    public void WorkingHolds() => AnyColumn.Sample((a, c) =>
    {
        var w = new Working();
        ColumnBuckling.Axial(a.N, Sections.Heb160, c, 235e6, PartialFactors.Recommended, w: w);
        ColumnBuckling.WithBending(a, Sections.Heb160, c, 235e6, new PartialFactors(M1: 1.1), w: w);
        ColumnBuckling.WithBending(a, Sections.Heb160, c with { ChiLT = 0.8 }, 235e6, PartialFactors.Recommended, w: w);
        WorkingCheck.Holds(w);
    }, iter: 100);
}
