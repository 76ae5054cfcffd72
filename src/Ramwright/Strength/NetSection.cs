using Ramwright.Frame;
using Ramwright.Quantities;
using Ramwright.Stock;
using Ramwright.Workings;

namespace Ramwright.Strength;

/// <summary>A hole or slot as it shows in one cross-section: a rectangle of missing steel.</summary>
/// <param name="Y">Its centre from the gross centroid, m.</param>
/// <param name="Z">Its centre from the gross centroid, m.</param>
/// <param name="Width">Along y, m.</param>
/// <param name="Height">Along z, m.</param>
public readonly record struct MissingSteel(double Y, double Z, double Width, double Height)
{
    /// <summary>Area, m².</summary>
    public double Area => Width * Height;
}

/// <summary>A section less its holes and slots.</summary>
/// <param name="Properties">Properties about the net centroid.</param>
/// <param name="ShiftY">Net centroid from the gross one, m.</param>
/// <param name="ShiftZ">Net centroid from the gross one, m.</param>
public sealed record NetProperties(SectionProperties Properties, double ShiftY, double ShiftZ);

/// <summary>Members weakened by holes and slots.</summary>
public static class NetSection
{
    /// <summary>Tension through holes.</summary>
    public static readonly Citation TensionSource = new("EN 1993-1-1:2005", "6.2.3(2), eq. 6.6 and 6.7", Standing.FromMemory);

    /// <summary>When holes in a tension flange may be ignored in bending.</summary>
    public static readonly Citation IgnoreSource = new("EN 1993-1-1:2005", "6.2.5(4), eq. 6.16", Standing.FromMemory);

    private static readonly Citation Statics = Citation.Mechanics("the axial force acts at the gross centroid");

    /// <summary>Takes holes and slots out of a section and finds the properties about the centroid of what is left.</summary>
    /// <param name="gross">The whole section.</param>
    /// <param name="missing">What is cut out; pieces must not overlap and must lie in the section.</param>
    /// <exception cref="ArgumentException">More is cut than is there, or a piece lies outside.</exception>
    /// <remarks>
    /// Area, second moments and shift are exact for rectangles. The edges stay where the whole section has them, which is on the safe side where
    /// a cut takes a whole edge away. The plastic moduli are taken about the gross axes, which is a
    /// little high where the holes are one-sided; the shear areas each lose the whole missing area and the torsion modulus its share,
    /// which is low. Product of inertia of unsymmetric cuts is left out.
    /// </remarks>
    public static NetProperties Without(SectionProperties gross, IReadOnlyList<MissingSteel> missing)
    {
        double A = gross.A, Sy = 0, Sz = 0, Iy = gross.Iy, Iz = gross.Iz, Wply = gross.Wply, Wplz = gross.Wplz;
        foreach (MissingSteel m in missing)
        {
            Check.Positive(m.Width);
            Check.Positive(m.Height);
            double slack = 1e-9 * (gross.Height + gross.Width);
            if (!(m.Y + m.Width / 2 <= gross.Right + slack && m.Y - m.Width / 2 >= -gross.Left - slack &&
                  m.Z + m.Height / 2 <= gross.Top + slack && m.Z - m.Height / 2 >= -gross.Bottom - slack))
            {
                throw new ArgumentException("a hole lies outside the section", nameof(missing));
            }

            A -= m.Area;
            Sy -= m.Area * m.Z;
            Sz -= m.Area * m.Y;
            Iy -= m.Area * (m.Height * m.Height / 12 + m.Z * m.Z);
            Iz -= m.Area * (m.Width * m.Width / 12 + m.Y * m.Y);
            Wply -= m.Width * StaticMoment(m.Z, m.Height);
            Wplz -= m.Height * StaticMoment(m.Y, m.Width);
        }

        if (!(A > 0))
            throw new ArgumentException("more is cut out than the section has", nameof(missing));
        double ey = Sz / A, ez = Sy / A, cut = gross.A - A;
        Iy -= A * ez * ez;
        Iz -= A * ey * ey;
        if (!(Iy > 0 && Iz > 0 && Wply > 0 && Wplz > 0 && cut < gross.Avz && cut < gross.Avy))
            throw new ArgumentException("too little of the section is left to be rated as a beam", nameof(missing));
        double top = gross.Top - ez, bottom = gross.Bottom + ez, right = gross.Right - ey, left = gross.Left + ey;
        SectionProperties net = gross with
        {
            A = A, Iy = Iy, Iz = Iz, Top = top, Bottom = bottom, Right = right, Left = left,
            Wely = Iy / Math.Max(top, bottom), Welz = Iz / Math.Max(right, left), Wply = Wply, Wplz = Wplz,
            Avz = gross.Avz - cut, Avy = gross.Avy - cut, Wt = gross.Wt * A / gross.A,
            ShearCentreY = gross.ShearCentreY - ey,
        };
        return new NetProperties(net, ey, ez);
    }

    /// <summary>Ram force at which the worst edge of the net section first yields.</summary>
    /// <param name="a">Actions per newton at the ram, about the gross centroid.</param>
    /// <param name="net">The net section.</param>
    /// <param name="fy">Yield strength, Pa.</param>
    /// <param name="factors">Factors.</param>
    /// <param name="sectionClass">Class of the section.</param>
    /// <param name="w">Where to write it down.</param>
    /// <returns>The limit, or null where nothing acts.</returns>
    /// <remarks>The peak stress beside a hole, some three times the mean, yields harmlessly once and matters for fatigue only.</remarks>
    public static Limit? Yield(
        Actions a, NetProperties net, double fy, PartialFactors factors,
        SectionClass sectionClass = SectionClass.Three, Working? w = null)
    {
        Actions moved = a with { My = a.My - a.N * net.ShiftZ, Mz = a.Mz + a.N * net.ShiftY };
        if (w is not null && (net.ShiftY != 0 || net.ShiftZ != 0))
        {
            w.Step("M_y", "moment about the net centroid, per newton", "M_gy - N e_z", moved.My, Dimension.Moment, Statics,
                ("M_gy", a.My, Dimension.Moment), ("N", a.N, Dimension.Force), ("e_z", net.ShiftZ, Dimension.Length));
            w.Step("M_z", "moment about the net centroid, per newton", "M_gz + N e_y", moved.Mz, Dimension.Moment, Statics,
                ("M_gz", a.Mz, Dimension.Moment), ("N", a.N, Dimension.Force), ("e_y", net.ShiftY, Dimension.Length));
        }

        return MemberSection.Yield(moved, net.Properties, fy, factors, sectionClass, w);
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

    // ∫ |x| dx over a piece of length h centred at x.
    private static double StaticMoment(double x, double h)
    {
        double near = Math.Abs(x);
        return near >= h / 2 ? near * h : near * near + h * h / 4;
    }
}
