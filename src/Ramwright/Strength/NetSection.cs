using Ramwright.Frame;
using Ramwright.Quantities;
using Ramwright.Stock;
using Ramwright.Workings;

namespace Ramwright.Strength;

/// <summary>Members weakened by holes and slots.</summary>
public static class NetSection
{
    /// <summary>Tension through holes.</summary>
    public static readonly Citation TensionSource = new("EN 1993-1-1:2005", "6.2.3(2), eq. 6.6 and 6.7", Standing.FromMemory);

    /// <summary>When holes in a tension flange may be ignored in bending.</summary>
    public static readonly Citation IgnoreSource = new("EN 1993-1-1:2005", "6.2.5(4), eq. 6.16", Standing.FromMemory);

    private static readonly Citation Statics = Citation.Mechanics("the axial force acts at the gross centroid");

    /// <summary>How far the net centroid lies from the gross one along y and z, m.</summary>
    /// <param name="gross">The whole section.</param>
    /// <param name="net">What is left of it, about its own centroid; its outermost edges are those of the whole.</param>
    public static (double Y, double Z) Shift(SectionProperties gross, SectionProperties net) =>
        (gross.Right - net.Right, gross.Top - net.Top);

    /// <summary>Ram force at which the worst edge of the net section first yields.</summary>
    /// <param name="a">Actions per newton at the ram, about the gross centroid.</param>
    /// <param name="gross">The whole section.</param>
    /// <param name="net">What is left beside holes and slots.</param>
    /// <param name="fy">Yield strength, Pa.</param>
    /// <param name="factors">Factors.</param>
    /// <param name="sectionClass">Class of the section.</param>
    /// <param name="w">Where to write it down.</param>
    /// <returns>The limit, or null where nothing acts.</returns>
    /// <exception cref="ArgumentException">The net section is larger than the whole.</exception>
    /// <remarks>The peak stress beside a hole, some three times the mean, yields harmlessly once and matters for fatigue only.</remarks>
    public static Limit? Yield(
        Actions a, SectionProperties gross, SectionProperties net, double fy, PartialFactors factors,
        SectionClass sectionClass = SectionClass.Three, Working? w = null) =>
        MemberSection.Yield(AboutNet(a, gross, net, w), net, fy, factors, sectionClass, w);

    /// <summary>The actions about the net centroid.</summary>
    internal static Actions AboutNet(Actions a, SectionProperties gross, SectionProperties net, Working? w)
    {
        if (!(net.A <= gross.A * (1 + 1e-9)))
            throw new ArgumentException("the net section cannot be larger than the whole", nameof(net));
        (double ey, double ez) = Shift(gross, net);
        Actions moved = a with { My = a.My - a.N * ez, Mz = a.Mz + a.N * ey };
        if (w is not null && (ey != 0 || ez != 0))
        {
            w.Step("M_y", "moment about the net centroid, per newton", "M_gy - N e_z", moved.My, Dimension.Moment, Statics,
                ("M_gy", a.My, Dimension.Moment), ("N", a.N, Dimension.Force), ("e_z", ez, Dimension.Length));
            w.Step("M_z", "moment about the net centroid, per newton", "M_gz + N e_y", moved.Mz, Dimension.Moment, Statics,
                ("M_gz", a.Mz, Dimension.Moment), ("N", a.N, Dimension.Force), ("e_y", ey, Dimension.Length));
        }

        return moved;
    }

    /// <summary>Ram force at which a member in pure tension yields along its length or breaks through its holes.</summary>
    /// <param name="N">Axial force per newton at the ram; zero or a push does not apply.</param>
    /// <param name="A">Gross area, m².</param>
    /// <param name="Anet">Net area, m².</param>
    /// <param name="fy">Yield strength, Pa.</param>
    /// <param name="fu">Tensile strength, Pa.</param>
    /// <param name="factors">Factors; γ_M0, γ_M2 and γ_F are used.</param>
    /// <param name="w">Where to write it down.</param>
    public static Limit? Tension(
        double N, double A, double Anet, double fy, double fu, PartialFactors factors, Working? w = null)
    {
        if (!(Check.Finite(N) > 1 / Limit.Farthest))
            return null;
        Check.Positive(Anet);
        if (!(Check.Positive(A) >= Anet))
            throw new ArgumentOutOfRangeException(nameof(Anet), Anet, "must not be more than the gross area");
        double Npl = A * Check.Positive(fy), Nu = 0.9 * Anet * Check.Positive(fu);
        double gives = Math.Min(Npl, Nu) / N, design = Math.Min(Npl / factors.M0, Nu / factors.M2) / N;
        w?.Step("N_pl", "yield of the whole section", "A f_y", Npl, Dimension.Force, TensionSource, ("A", A, Dimension.Area), ("f_y", fy, Dimension.Stress));
        w?.Step("N_u", "breaking through the holes", "0.9 A_net f_u", Nu, Dimension.Force, TensionSource,
            ("A_net", Anet, Dimension.Area), ("f_u", fu, Dimension.Stress));
        w?.Step("F_gives", "ram force at which it gives", "min(N_pl, N_u) / N", gives, Dimension.Force, TensionSource,
            ("N_pl", Npl, Dimension.Force), ("N_u", Nu, Dimension.Force), ("N", N, Dimension.Force));
        w?.Step("F_Rd", "the same with design resistances", "min(N_pl / γ_M0, N_u / γ_M2) / N", design, Dimension.Force, TensionSource,
            ("N_pl", Npl, Dimension.Force), ("γ_M0", factors.M0, Dimension.Number),
            ("N_u", Nu, Dimension.Force), ("γ_M2", factors.M2, Dimension.Number), ("N", N, Dimension.Force));
        return Limit.FromForces(gives, design, factors.Load, w);
    }

    /// <summary>Net over gross area below which the net section governs pure tension.</summary>
    /// <param name="fy">Yield strength, Pa.</param>
    /// <param name="fu">Tensile strength, Pa.</param>
    /// <param name="factors">Factors; γ_M0 and γ_M2 are used.</param>
    public static double BalancedRatio(double fy, double fu, PartialFactors factors) =>
        Check.Positive(fy) * factors.M2 / (0.9 * Check.Positive(fu) * factors.M0);

    /// <summary>Whether holes in a tension flange may be left out of a bending check.</summary>
    /// <param name="Af">Area of the flange, m².</param>
    /// <param name="AfNet">Area less holes, m².</param>
    /// <param name="fy">Yield strength, Pa.</param>
    /// <param name="fu">Tensile strength, Pa.</param>
    /// <param name="factors">Factors; γ_M0 and γ_M2 are used.</param>
    public static bool MayIgnoreHoles(double Af, double AfNet, double fy, double fu, PartialFactors factors) =>
        0.9 * Check.Positive(AfNet) * Check.Positive(fu) / factors.M2 >= Check.Positive(Af) * Check.Positive(fy) / factors.M0;
}
