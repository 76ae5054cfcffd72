using Ramwright.Frame;
using Ramwright.Quantities;
using Ramwright.Stock;
using Ramwright.Workings;

namespace Ramwright.Strength;

/// <summary>A pushed member as a column: its lengths, curves and how its moments run.</summary>
/// <param name="LcrY">Buckling length for bending about y-y, m.</param>
/// <param name="LcrZ">Buckling length for bending about z-z, m.</param>
/// <param name="CurveY">Buckling curve about y-y.</param>
/// <param name="CurveZ">Buckling curve about z-z.</param>
/// <param name="CmY">Moment factor C_my: 1 on the safe side, 0.6 + 0.4ψ ≥ 0.4 for end moments, 0.9 where the ends sway.</param>
/// <param name="CmZ">Moment factor C_mz.</param>
/// <param name="ChiLT">Reduction for lateral-torsional buckling χ_LT; 1 where the section cannot twist or is held.</param>
public sealed record Column(
    double LcrY, double LcrZ, BucklingCurve CurveY, BucklingCurve CurveZ, double CmY = 1, double CmZ = 1, double ChiLT = 1)
{
    /// <summary>About y-y, m.</summary>
    public double LcrY { get; init; } = Check.Positive(LcrY);
    /// <summary>About z-z, m.</summary>
    public double LcrZ { get; init; } = Check.Positive(LcrZ);
    /// <summary>C_my.</summary>
    public double CmY { get; init; } = Check.Positive(CmY);
    /// <summary>C_mz.</summary>
    public double CmZ { get; init; } = Check.Positive(CmZ);
    /// <summary>χ_LT.</summary>
    public double ChiLT { get; init; } = ChiLT is > 0 and <= 1
        ? ChiLT
        : throw new ArgumentOutOfRangeException(nameof(ChiLT), ChiLT, "must be above 0 and at most 1");
}

/// <summary>Buckling of a member in compression, alone and together with bending. A member in tension does not buckle: null.</summary>
public static class ColumnBuckling
{
    /// <summary>Compression alone.</summary>
    public static readonly Citation AxialSource = new("EN 1993-1-1:2005", "6.3.1.1 to 6.3.1.3, eq. 6.46 to 6.50");

    /// <summary>Compression and bending, method 2, elastic section.</summary>
    public static readonly Citation BendingSource = new("EN 1993-1-1:2005", "6.3.3, eq. 6.61 and 6.62, and annex B, table B.1");

    /// <summary>α of each curve.</summary>
    public static readonly Citation CurveSource = new("EN 1993-1-1:2005", "table 6.1");

    /// <summary>Imperfection factor α of a buckling curve.</summary>
    public static double Alpha(BucklingCurve curve) => curve switch
    {
        BucklingCurve.A0 => 0.13,
        BucklingCurve.A => 0.21,
        BucklingCurve.B => 0.34,
        BucklingCurve.C => 0.49,
        BucklingCurve.D => 0.76,
        _ => throw new ArgumentOutOfRangeException(nameof(curve), curve, "unknown"),
    };

    /// <summary>λ₁ = π √(E/f_y), the slenderness at which Euler's stress is the yield strength.</summary>
    /// <param name="E">Young's modulus, Pa.</param>
    /// <param name="fy">Yield strength, Pa.</param>
    public static double Lambda1(double E, double fy) => Math.PI * Math.Sqrt(Check.Positive(E) / Check.Positive(fy));

    /// <summary>Elastic critical force N_cr, N.</summary>
    /// <param name="E">Young's modulus, Pa.</param>
    /// <param name="I">Second moment of area, m⁴.</param>
    /// <param name="Lcr">Buckling length, m.</param>
    public static double Ncr(double E, double I, double Lcr) => RodBuckling.Euler(E, I, Lcr);

    /// <summary>Reduction factor χ; 1 up to λ̄ = 0.2.</summary>
    /// <param name="lambda">λ̄, zero or more.</param>
    /// <param name="curve">Buckling curve.</param>
    public static double Chi(double lambda, BucklingCurve curve)
    {
        Check.NotNegative(lambda);
        if (lambda <= 0.2)
            return 1;
        double phi = 0.5 * (1 + Alpha(curve) * (lambda - 0.2) + lambda * lambda);
        return Math.Min(1, 1 / (phi + Math.Sqrt(phi * phi - lambda * lambda)));
    }

    /// <summary>χ of a column about one axis, and its λ̄.</summary>
    /// <param name="A">Area, m².</param>
    /// <param name="I">Second moment about the axis, m⁴.</param>
    /// <param name="Lcr">Buckling length, m.</param>
    /// <param name="fy">Yield strength, Pa.</param>
    /// <param name="E">Young's modulus, Pa.</param>
    /// <param name="curve">Buckling curve.</param>
    /// <param name="axis"><c>y</c> or <c>z</c>, for the working.</param>
    /// <param name="w">Where to write it down.</param>
    public static (double Chi, double Lambda) Reduction(
        double A, double I, double Lcr, double fy, double E, BucklingCurve curve, string axis, Working? w = null)
    {
        double ncr = Ncr(E, I, Lcr);
        double lambda = Math.Sqrt(Check.Positive(A) * Check.Positive(fy) / ncr), chi = Chi(lambda, curve), alpha = Alpha(curve);
        if (w is not null)
        {
            w.Step($"N_cr{axis}", $"elastic critical force about {axis}-{axis}", $"π² E I_{axis} / L_cr²", ncr, Dimension.Force, AxialSource,
                ("E", E, Dimension.Stress), ($"I_{axis}", I, Dimension.SecondMoment), ("L_cr", Lcr, Dimension.Length));
            w.Step($"λ_{axis}", $"slenderness λ̄ about {axis}-{axis}", $"√(A f_y / N_cr{axis})", lambda, Dimension.Number, AxialSource,
                ("A", A, Dimension.Area), ("f_y", fy, Dimension.Stress), ($"N_cr{axis}", ncr, Dimension.Force));
            if (lambda <= 0.2)
            {
                w.Take($"χ_{axis}", "reduction: none, λ̄ is at most 0.2", 1, Dimension.Number, AxialSource);
            }
            else
            {
                double phi = 0.5 * (1 + alpha * (lambda - 0.2) + lambda * lambda);
                w.Step($"Φ_{axis}", "helper of the reduction", $"0.5 (1 + α (λ_{axis} - 0.2) + λ_{axis}²)", phi, Dimension.Number, AxialSource,
                    ("α", alpha, Dimension.Number), ($"λ_{axis}", lambda, Dimension.Number));
                w.Step($"χ_{axis}", $"reduction for buckling, curve {curve.ToString().ToLowerInvariant()}",
                    $"min(1, 1 / (Φ_{axis} + √(Φ_{axis}² - λ_{axis}²)))", chi, Dimension.Number, AxialSource,
                    ($"Φ_{axis}", phi, Dimension.Number), ($"λ_{axis}", lambda, Dimension.Number));
            }
        }

        return (chi, lambda);
    }

    /// <summary>Ram force at which the member buckles under its push alone.</summary>
    /// <param name="N">Axial force per newton at the ram, tension positive; zero or tension does not apply.</param>
    /// <param name="s">The section.</param>
    /// <param name="column">Lengths and curves.</param>
    /// <param name="fy">Yield strength, Pa.</param>
    /// <param name="factors">Factors; γ_M1 and γ_F are used.</param>
    /// <param name="E">Young's modulus, Pa.</param>
    /// <param name="w">Where to write it down.</param>
    public static Limit? Axial(
        double N, SectionProperties s, Column column, double fy, PartialFactors factors, double E = 210e9, Working? w = null)
    {
        if (!(Check.Finite(N) < -1 / Limit.Farthest))
            return null;
        (double chiY, _) = Reduction(s.A, s.Iy, column.LcrY, fy, E, column.CurveY, "y", w);
        (double chiZ, _) = Reduction(s.A, s.Iz, column.LcrZ, fy, E, column.CurveZ, "z", w);
        double R = Math.Min(chiY, chiZ) * s.A * fy, u = -N / R;
        w?.Step("N_bR", "buckling resistance", "min(χ_y, χ_z) A f_y", R, Dimension.Force, AxialSource,
            ("χ_y", chiY, Dimension.Number), ("χ_z", chiZ, Dimension.Number), ("A", s.A, Dimension.Area), ("f_y", fy, Dimension.Stress));
        w?.Step("u", "share of the buckling resistance used by one newton", "abs(N) / N_bR", u, Dimension.Number, AxialSource,
            ("N", N, Dimension.Force), ("N_bR", R, Dimension.Force));
        return Limit.FromUse(u, factors.M1, factors.Load, w);
    }

    /// <summary>Ram force at which the member buckles under push and bending together.</summary>
    /// <param name="a">Actions per newton at the ram: the push, and the greatest moments anywhere along the member.</param>
    /// <param name="s">The section, class 1 to 3.</param>
    /// <param name="column">Lengths, curves and moment factors.</param>
    /// <param name="fy">Yield strength, Pa.</param>
    /// <param name="factors">Factors; γ_M1 and γ_F are used.</param>
    /// <param name="E">Young's modulus, Pa.</param>
    /// <param name="w">Where to write it down.</param>
    /// <returns>The limit, or null where the member is not pushed.</returns>
    /// <remarks>
    /// Annex B (method 2), members not susceptible to twisting, elastic moduli throughout (the class 3 column of table B.1):
    /// k_yy = C_my (1 + c_y n_y), c_y = min(0.6 λ̄_y, 0.6), k_yz = k_zz, k_zy = 0.8 k_yy, n = N/(χ N_R). As the k grow with the ram force, each
    /// criterion is a quadratic a λ² + b λ = 1 with the root λ = 2/(b + √(b² + 4a)). Sections that can twist need χ_LT below 1, and k_zy = 1 is then used.
    /// </remarks>
    public static Limit? WithBending(
        Actions a, SectionProperties s, Column column, double fy, PartialFactors factors, double E = 210e9, Working? w = null)
    {
        Acting.Finite(a);
        if (!(a.N < -1 / Limit.Farthest))
            return null;
        (double chiY, double lambdaY) = Reduction(s.A, s.Iy, column.LcrY, fy, E, column.CurveY, "y", w);
        (double chiZ, double lambdaZ) = Reduction(s.A, s.Iz, column.LcrZ, fy, E, column.CurveZ, "z", w);
        double gives = Solve(1, w, "gives"), design = factors.M1 > 1 ? Solve(factors.M1, w, "Rd") : gives;
        if (factors.M1 <= 1)
            w?.Note("γ_M1 is 1: the design resistance F_Rd is F_gives.");
        return Limit.FromForces(gives, design, factors.Load, w);

        double Solve(double gammaM1, Working? v, string name)
        {
            double ny = -a.N * gammaM1 / (chiY * s.A * fy), nz = -a.N * gammaM1 / (chiZ * s.A * fy);
            double my = Math.Abs(a.My) * gammaM1 / (column.ChiLT * s.Wely * fy), mz = Math.Abs(a.Mz) * gammaM1 / (s.Welz * fy);
            double cy = Math.Min(0.6 * lambdaY, 0.6), cz = Math.Min(0.6 * lambdaZ, 0.6);
            double b1 = ny + column.CmY * my + column.CmZ * mz;
            double a1 = column.CmY * cy * ny * my + column.CmZ * cz * nz * mz;
            bool twists = column.ChiLT < 1;
            double b2 = twists ? nz + my + column.CmZ * mz : nz + 0.8 * column.CmY * my + column.CmZ * mz;
            double a2 = twists ? column.CmZ * cz * nz * mz : 0.8 * column.CmY * cy * ny * my + column.CmZ * cz * nz * mz;
            double f1 = 2 / (b1 + Math.Sqrt(b1 * b1 + 4 * a1)), f2 = 2 / (b2 + Math.Sqrt(b2 * b2 + 4 * a2));
            if (v is not null)
            {
                Given N = ("N", a.N, Dimension.Force), A = ("A", s.A, Dimension.Area), f = ("f_y", fy, Dimension.Stress), g = ("γ_M1", gammaM1, Dimension.Number);
                Given Ny = ("n_y", ny, Dimension.Number), Nz = ("n_z", nz, Dimension.Number), My = ("m_y", my, Dimension.Number), Mz = ("m_z", mz, Dimension.Number);
                Given Cy = ("C_my", column.CmY, Dimension.Number), Cz = ("C_mz", column.CmZ, Dimension.Number);
                Given cY = ("c_y", cy, Dimension.Number), cZ = ("c_z", cz, Dimension.Number);
                v.Step("n_y", "push over buckling resistance about y-y, per newton", "abs(N) γ_M1 / (χ_y A f_y)", ny, Dimension.Number, BendingSource,
                    N, g, ("χ_y", chiY, Dimension.Number), A, f);
                v.Step("n_z", "push over buckling resistance about z-z, per newton", "abs(N) γ_M1 / (χ_z A f_y)", nz, Dimension.Number, BendingSource,
                    N, g, ("χ_z", chiZ, Dimension.Number), A, f);
                v.Step("m_y", "moment over resistance about y-y, per newton", "abs(M_y) γ_M1 / (χ_LT W_ely f_y)", my, Dimension.Number, BendingSource,
                    ("M_y", a.My, Dimension.Moment), g, ("χ_LT", column.ChiLT, Dimension.Number), ("W_ely", s.Wely, Dimension.SectionModulus), f);
                v.Step("m_z", "moment over resistance about z-z, per newton", "abs(M_z) γ_M1 / (W_elz f_y)", mz, Dimension.Number, BendingSource,
                    ("M_z", a.Mz, Dimension.Moment), g, ("W_elz", s.Welz, Dimension.SectionModulus), f);
                v.Step("c_y", "growth of k_yy with the push", "min(0.6 λ_y, 0.6)", cy, Dimension.Number, BendingSource, ("λ_y", lambdaY, Dimension.Number));
                v.Step("c_z", "growth of k_zz with the push", "min(0.6 λ_z, 0.6)", cz, Dimension.Number, BendingSource, ("λ_z", lambdaZ, Dimension.Number));
                v.Step("b_1", "eq. 6.61, linear part", "n_y + C_my m_y + C_mz m_z", b1, Dimension.Number, BendingSource, Ny, Cy, My, Cz, Mz);
                v.Step("a_1", "eq. 6.61, quadratic part", "C_my c_y n_y m_y + C_mz c_z n_z m_z", a1, Dimension.Number, BendingSource,
                    Cy, cY, Ny, My, Cz, cZ, Nz, Mz);
                if (twists)
                {
                    v.Step("b_2", "eq. 6.62, linear part, k_zy = 1", "n_z + m_y + C_mz m_z", b2, Dimension.Number, BendingSource, Nz, My, Cz, Mz);
                    v.Step("a_2", "eq. 6.62, quadratic part", "C_mz c_z n_z m_z", a2, Dimension.Number, BendingSource, Cz, cZ, Nz, Mz);
                }
                else
                {
                    v.Step("b_2", "eq. 6.62, linear part", "n_z + 0.8 C_my m_y + C_mz m_z", b2, Dimension.Number, BendingSource, Nz, Cy, My, Cz, Mz);
                    v.Step("a_2", "eq. 6.62, quadratic part", "0.8 C_my c_y n_y m_y + C_mz c_z n_z m_z", a2, Dimension.Number, BendingSource,
                        Cy, cY, Ny, My, Cz, cZ, Nz, Mz);
                }

                v.Step($"F_{name}", gammaM1 > 1 ? "ram force at the design resistance" : "ram force at which it gives",
                    "min(2 / (b_1 + √(b_1² + 4 a_1)), 2 / (b_2 + √(b_2² + 4 a_2)))", Math.Min(f1, f2), Dimension.Force, BendingSource,
                    ("b_1", b1, Dimension.Number), ("a_1", a1, Dimension.Number), ("b_2", b2, Dimension.Number), ("a_2", a2, Dimension.Number));
            }

            return Math.Min(f1, f2);
        }
    }
}
