using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Strength;

/// <summary>A section of a curved beam, by its radii from the centre of curvature.</summary>
public sealed record CurvedSection
{
    private CurvedSection(double A, double rc, double rn, double ri, double ro)
    {
        (this.A, Rc, Rn, Ri, Ro) = (Check.Positive(A), Check.Positive(rc), Check.Positive(rn), Check.Positive(ri), Check.Positive(ro));
        Check.Positive(E, "distance from centroid to neutral axis");
    }

    /// <summary>Area, m².</summary>
    public double A { get; }
    /// <summary>Radius of the centroid, m.</summary>
    public double Rc { get; }
    /// <summary>Radius of the neutral axis, m.</summary>
    public double Rn { get; }
    /// <summary>Inside radius, m.</summary>
    public double Ri { get; }
    /// <summary>Outside radius, m.</summary>
    public double Ro { get; }
    /// <summary>e = r_c − r_n, m.</summary>
    public double E => Rc - Rn;

    /// <summary>A rectangle.</summary>
    /// <param name="b">Width, m.</param>
    /// <param name="h">Depth, m.</param>
    /// <param name="ri">Inside radius, m; at least a twentieth of the depth.</param>
    public static CurvedSection Rectangle(double b, double h, double ri) => Trapezoid(b, b, h, ri);

    /// <summary>A round bar.</summary>
    /// <param name="d">Diameter, m.</param>
    /// <param name="rc">Radius of its centre line, m, above d/2.</param>
    public static CurvedSection Circle(double d, double rc)
    {
        double R = Check.Positive(d) / 2;
        CheckRadius(rc - R, d);
        // R²/(2 (rc − √(rc² − R²))), turned so that no digits cancel.
        double rn = (rc + Math.Sqrt(rc * rc - R * R)) / 2;
        return new CurvedSection(Math.PI * R * R, rc, rn, rc - R, rc + R);
    }

    /// <summary>A trapezoid.</summary>
    /// <param name="bi">Width inside, m.</param>
    /// <param name="bo">Width outside, m.</param>
    /// <param name="h">Depth, m.</param>
    /// <param name="ri">Inside radius, m; at least a twentieth of the depth.</param>
    public static CurvedSection Trapezoid(double bi, double bo, double h, double ri) => Strips([(bi, bo, h)], ri);

    /// <summary>Trapezoids one outside the other: flange, web, flange.</summary>
    /// <param name="strips">Width inside, width outside and depth of each, from the inside out, m.</param>
    /// <param name="ri">Inside radius, m.</param>
    /// <remarks>Wide thin flanges of a curved beam bend across and carry less than this says; up to about b/t = 8 it may be used.</remarks>
    public static CurvedSection Strips(IReadOnlyList<(double Inside, double Outside, double Depth)> strips, double ri)
    {
        double A = 0, first = 0, overR = 0, r = ri, depth = 0;
        foreach ((double bi, double bo, double h) in strips)
            depth += Check.Positive(h);
        CheckRadius(ri, depth);
        foreach ((double bi, double bo, double h) in strips)
        {
            Check.Positive(bi);
            Check.Positive(bo);
            double R = r + h, slope = (bo - bi) / h;
            double a = (bi + bo) / 2 * h;
            A += a;
            first += a * (r + h * (bi + 2 * bo) / (3 * (bi + bo)));
            overR += (bi - slope * r) * Math.Log(R / r) + slope * h;       // ∫ b(r)/r dr
            r = R;
        }

        return new CurvedSection(A, first / A, A / overR, ri, r);
    }

    private static void CheckRadius(double ri, double h)
    {
        if (!(ri >= h / 20 && double.IsFinite(ri)))
            throw new ArgumentOutOfRangeException(nameof(ri), ri, "must be at least a twentieth of the depth; a sharper corner is a notch");
    }
}

/// <summary>Stress where a beam turns a corner with a radius: higher inside than a straight beam's.</summary>
/// <remarks>Winkler and Bach: plane sections stay plane; stress through the thickness left out. A sharp inside corner is a notch and out of its reach.</remarks>
public static class CurvedBeam
{
    /// <summary>Curved beams.</summary>
    public static readonly Citation Source = new("Shigley's Mechanical Engineering Design, 9th ed.", "3-18, eq. 3-63 to 3-65, table 3-4");

    /// <summary>Stress inside and outside, Pa.</summary>
    /// <param name="s">The section.</param>
    /// <param name="N">Force along the beam at the centroid, tension positive, N.</param>
    /// <param name="M">Moment about the centroid, N·m; positive opens the curve: tension inside.</param>
    /// <param name="w">Where to write it down.</param>
    public static (double Inside, double Outside) Stress(CurvedSection s, double N, double M, Working? w = null)
    {
        Check.Finite(N);
        Check.Finite(M);
        double inside = N / s.A + M * (s.Rn - s.Ri) / (s.A * s.E * s.Ri), outside = N / s.A + M * (s.Rn - s.Ro) / (s.A * s.E * s.Ro);
        Given n = ("N", N, Dimension.Force), a = ("A", s.A, Dimension.Area), m = ("M", M, Dimension.Moment);
        Given rn = ("r_n", s.Rn, Dimension.Length), e = ("e", s.E, Dimension.Length);
        w?.Step("e", "neutral axis inside the centroid", "r_c - r_n", s.E, Dimension.Length, Source, ("r_c", s.Rc, Dimension.Length), rn);
        w?.Step("σ_i", "stress inside", "N / A + M (r_n - r_i) / (A e r_i)", inside, Dimension.Stress, Source,
            n, a, m, rn, e, ("r_i", s.Ri, Dimension.Length));
        w?.Step("σ_o", "stress outside", "N / A + M (r_n - r_o) / (A e r_o)", outside, Dimension.Stress, Source,
            n, a, m, rn, e, ("r_o", s.Ro, Dimension.Length));
        return (inside, outside);
    }

    /// <summary>How much more the inside and the outside are stressed than M c/I of a straight beam says, in pure bending.</summary>
    /// <param name="s">The section.</param>
    /// <param name="I">Its second moment of area, m⁴.</param>
    public static (double Ki, double Ko) Factors(CurvedSection s, double I)
    {
        (double inside, double outside) = Stress(s, 0, 1);
        return (inside / ((s.Rc - s.Ri) / Check.Positive(I)), -outside / ((s.Ro - s.Rc) / I));
    }

    /// <summary>Ram force at which the worse edge of the curve yields.</summary>
    /// <param name="s">The section.</param>
    /// <param name="N">Force along the beam per newton at the ram.</param>
    /// <param name="M">Moment about the centroid per newton at the ram; positive opens the curve.</param>
    /// <param name="fy">Yield strength, Pa.</param>
    /// <param name="factors">Factors; γ_M0 and γ_F are used.</param>
    /// <param name="w">Where to write it down.</param>
    public static Limit? Yield(CurvedSection s, double N, double M, double fy, PartialFactors factors, Working? w = null)
    {
        (double inside, double outside) = Stress(s, N, M, w);
        double u = Math.Max(Math.Abs(inside), Math.Abs(outside)) / Check.Positive(fy);
        w?.Step("u", "share of the yield strength used by one newton", "max(abs(σ_i), abs(σ_o)) / f_y", u, Dimension.Number, Source,
            ("σ_i", inside, Dimension.Stress), ("σ_o", outside, Dimension.Stress), ("f_y", fy, Dimension.Stress));
        return Limit.FromUse(u, factors.M0, factors.Load, w);
    }
}
