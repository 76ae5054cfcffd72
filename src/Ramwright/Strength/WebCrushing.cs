using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Strength;

/// <summary>An I or H beam where a concentrated force presses on its flange.</summary>
/// <param name="H">Depth, m.</param>
/// <param name="B">Flange width, m; no more than 15 ε t_f on each side of the web counts.</param>
/// <param name="Tw">Web, m.</param>
/// <param name="Tf">Flange, m.</param>
/// <param name="Fyw">Yield strength of the web, Pa.</param>
/// <param name="Fyf">Yield strength of the flange, Pa.</param>
public sealed record PressedBeam(double H, double B, double Tw, double Tf, double Fyw, double Fyf)
{
    /// <summary>Depth, m.</summary>
    public double H { get; init; } = Check.Positive(H);
    /// <summary>Flange width, m.</summary>
    public double B { get; init; } = Check.Positive(B);
    /// <summary>Web, m.</summary>
    public double Tw { get; init; } = Check.Positive(Tw);
    /// <summary>Flange, m.</summary>
    public double Tf { get; init; } = Check.Positive(Tf);
    /// <summary>Yield strength of the web, Pa.</summary>
    public double Fyw { get; init; } = Check.Positive(Fyw);
    /// <summary>Yield strength of the flange, Pa.</summary>
    public double Fyf { get; init; } = Check.Positive(Fyf);

    /// <summary>Clear depth of the web, m.</summary>
    public double Hw => Check.Positive(H - 2 * Tf, "clear depth of the web");
    /// <summary>Flange width that counts, m.</summary>
    public double CountedFlange => Math.Min(B, Tw + 30 * PlateClass.Epsilon(Fyf) * Tf);
}

/// <summary>Crushing, crippling or buckling of a web without a stiffener under a concentrated force: under a ram, at a pin, on a bed.</summary>
/// <remarks>
/// m₂ depends on λ̄_F and λ̄_F on m₂; where both of the standard's branches agree with themselves the lower resistance is taken; where a dimension grows
/// from one branch into the other the resistance can still jump down a little, as the standard's own does. A stiffener
/// welded in under the force makes this check needless.
/// </remarks>
public static class WebCrushing
{
    /// <summary>Resistance to transverse forces.</summary>
    public static readonly Citation Source = new("EN 1993-1-5:2006", "6.2 to 6.5, eq. 6.1 to 6.12");

    /// <summary>Transverse force and bending together.</summary>
    public static readonly Citation BendingSource = new("EN 1993-1-5:2006", "7.2, eq. 7.2", Standing.FromMemory);

    /// <summary>A force on one flange, away from the ends of the beam, held by shear in the web (type a).</summary>
    /// <param name="beam">The beam.</param>
    /// <param name="ss">Length of the stiff bearing along the beam, m; at most the web's depth counts.</param>
    /// <param name="stiffeners">Between stiffeners, m; null where there are none.</param>
    /// <param name="w">Where to write it down.</param>
    /// <returns>Resistance, N, γ_M1 = 1.</returns>
    public static double Inside(PressedBeam beam, double ss, double? stiffeners = null, Working? w = null)
    {
        double hw = beam.Hw, s = Math.Min(Check.NotNegative(ss), hw);
        double kF = 6 + (stiffeners is { } a ? 2 * Math.Pow(hw / Check.Positive(a, nameof(stiffeners)), 2) : 0);
        double longest = stiffeners ?? double.PositiveInfinity;
        return Lower(beam, kF, m2 => Math.Min(s + 2 * beam.Tf * (1 + Math.Sqrt(M1(beam) + m2)), longest), w, (m2, ly, v) =>
        {
            Given bearing = ("s_s", s, Dimension.Length), tf = ("t_f", beam.Tf, Dimension.Length), m1 = ("m_1", M1(beam), Dimension.Number), m = ("m_2", m2, Dimension.Number);
            if (stiffeners is { } most)
            {
                v.Step("k_F", "buckling coefficient", "6 + 2 (h_w / a)²", kF, Dimension.Number, Source, ("h_w", hw, Dimension.Length), ("a", most, Dimension.Length));
                v.Step("l_y", "effective loaded length", "min(s_s + 2 t_f (1 + √(m_1 + m_2)), a)", ly, Dimension.Length, Source, bearing, tf, m1, m, ("a", most, Dimension.Length));
            }
            else
            {
                v.Take("k_F", "buckling coefficient, no stiffeners", kF, Dimension.Number, Source);
                v.Step("l_y", "effective loaded length", "s_s + 2 t_f (1 + √(m_1 + m_2))", ly, Dimension.Length, Source, bearing, tf, m1, m);
            }
        });
    }

    /// <summary>A force on one flange near an end of the beam without a stiffener (type c).</summary>
    /// <param name="beam">The beam.</param>
    /// <param name="ss">Length of the stiff bearing, m; at most the web's depth counts.</param>
    /// <param name="c">From the bearing to the end of the beam, m.</param>
    /// <param name="w">Where to write it down.</param>
    /// <returns>Resistance, N, γ_M1 = 1.</returns>
    /// <remarks>Never more than inside the beam, though the jump between the standard's branches can say so.</remarks>
    public static double AtEnd(PressedBeam beam, double ss, double c, Working? w = null)
    {
        if (Inside(beam, ss) is var inside && inside < OfTypeC(beam, ss, c, null))
        {
            w?.Note("The end is stronger on paper than the inside of the beam; the inside governs.");
            return Inside(beam, ss, null, w);
        }

        return OfTypeC(beam, ss, c, w);
    }

    private static double OfTypeC(PressedBeam beam, double ss, double c, Working? w)
    {
        double hw = beam.Hw, s = Math.Min(Check.NotNegative(ss), hw), tf = beam.Tf;
        double kF = Math.Min(2 + 6 * (s + Check.NotNegative(c)) / hw, 6);
        double le = Math.Min(kF * 210e9 * beam.Tw * beam.Tw / (2 * beam.Fyw * hw), s + c);
        return Lower(beam, kF, Length, w, (m2, ly, v) =>
        {
            Given m1 = ("m_1", M1(beam), Dimension.Number), m = ("m_2", m2, Dimension.Number), f = ("t_f", tf, Dimension.Length), l = ("l_e", le, Dimension.Length);
            Given bearing = ("s_s", s, Dimension.Length), end = ("c", c, Dimension.Length), depth = ("h_w", hw, Dimension.Length);
            v.Step("k_F", "buckling coefficient", "min(2 + 6 (s_s + c) / h_w, 6)", kF, Dimension.Number, Source, bearing, end, depth);
            v.Step("l_e", "length at the end", "min(k_F E t_w² / (2 f_yw h_w), s_s + c)", le, Dimension.Length, Source,
                ("k_F", kF, Dimension.Number), ("E", 210e9, Dimension.Stress), ("t_w", beam.Tw, Dimension.Length),
                ("f_yw", beam.Fyw, Dimension.Stress), depth, bearing, end);
            v.Step("l_y", "effective loaded length",
                "min(s_s + 2 t_f (1 + √(m_1 + m_2)), l_e + t_f √(m_1 / 2 + (l_e / t_f)² + m_2), l_e + t_f √(m_1 + m_2))", ly, Dimension.Length, Source,
                bearing, f, m1, m, l);
        });

        double Length(double m2)
        {
            double m1 = M1(beam);
            return Math.Min(s + 2 * tf * (1 + Math.Sqrt(m1 + m2)),
                le + tf * Math.Min(Math.Sqrt(m1 / 2 + le * le / (tf * tf) + m2), Math.Sqrt(m1 + m2)));
        }
    }

    /// <summary>Ram force at which a web of given resistance gives way.</summary>
    /// <param name="share">Force on the flange per newton at the ram, either sign.</param>
    /// <param name="resistance">From <see cref="Inside"/> or <see cref="AtEnd"/>, N.</param>
    /// <param name="factors">Factors; γ_M1 and γ_F are used.</param>
    /// <param name="w">Where to write it down.</param>
    public static Limit? Crushes(double share, double resistance, PartialFactors factors, Working? w = null)
    {
        double f = Math.Abs(Check.Finite(share)), u = f / Check.Positive(resistance);
        w?.Step("u", "share of the resistance used by one newton", "f / F_R", u, Dimension.Number, Source,
            ("f", f, Dimension.Force), ("F_R", resistance, Dimension.Force));
        return Limit.FromUse(u, factors.M1, factors.Load, w);
    }

    /// <summary>The same where the beam is bent at that place too.</summary>
    /// <param name="share">Force on the flange per newton at the ram, either sign.</param>
    /// <param name="resistance">From <see cref="Inside"/> or <see cref="AtEnd"/>, N.</param>
    /// <param name="eta1">Share of the yield strength that bending and push use there per newton.</param>
    /// <param name="factors">Factors; γ_M1 and γ_F are used.</param>
    /// <param name="w">Where to write it down.</param>
    public static Limit? Crushes(double share, double resistance, double eta1, PartialFactors factors, Working? w = null)
    {
        double f = Math.Abs(Check.Finite(share)), eta2 = f / Check.Positive(resistance), u = Math.Max(eta2, (eta2 + 0.8 * Check.NotNegative(eta1)) / 1.4);
        w?.Step("η_2", "share of the web's resistance used by one newton", "f / F_R", eta2, Dimension.Number, Source,
            ("f", f, Dimension.Force), ("F_R", resistance, Dimension.Force));
        w?.Step("u", "the same with the bending there", "max(η_2, (η_2 + 0.8 η_1) / 1.4)", u, Dimension.Number, BendingSource,
            ("η_2", eta2, Dimension.Number), ("η_1", eta1, Dimension.Number));
        return Limit.FromUse(u, factors.M1, factors.Load, w);
    }

    private static double M1(PressedBeam b) => b.Fyf * b.CountedFlange / (b.Fyw * b.Tw);

    private static double Lower(PressedBeam b, double kF, Func<double, double> length, Working? w, Action<double, double, Working> show)
    {
        double hw = b.Hw, Fcr = 0.9 * kF * 210e9 * Math.Pow(b.Tw, 3) / hw, slender = 0.02 * Math.Pow(hw / b.Tf, 2);
        (double F0, double l0) = Resistance(length(0));
        (double F2, double l2) = Resistance(length(slender));
        bool stockyHolds = l0 <= 0.5, slenderHolds = l2 > 0.5;
        double m2 = stockyHolds && (!slenderHolds || F0 <= F2) || (!slenderHolds && F0 <= F2) ? 0 : slender;
        double ly = length(m2);
        (double F, double lambda) = m2 == 0 ? (F0, l0) : (F2, l2);
        if (w is not null)
        {
            w.Step("m_1", "flange over web", "f_yf b_f / (f_yw t_w)", M1(b), Dimension.Number, Source,
                ("f_yf", b.Fyf, Dimension.Stress), ("b_f", b.CountedFlange, Dimension.Length), ("f_yw", b.Fyw, Dimension.Stress), ("t_w", b.Tw, Dimension.Length));
            if (m2 == 0)
            {
                w.Take("m_2", "slenderness of the web: none, λ̄_F is at most 0.5", 0, Dimension.Number, Source);
            }
            else
            {
                w.Step("m_2", "slenderness of the web", "0.02 (h_w / t_f)²", m2, Dimension.Number, Source,
                    ("h_w", hw, Dimension.Length), ("t_f", b.Tf, Dimension.Length));
            }

            show(m2, ly, w);
            w.Step("F_cr", "critical force of the web", "0.9 k_F E t_w³ / h_w", Fcr, Dimension.Force, Source,
                ("k_F", kF, Dimension.Number), ("E", 210e9, Dimension.Stress), ("t_w", b.Tw, Dimension.Length), ("h_w", hw, Dimension.Length));
            w.Step("λ_F", "slenderness", "√(l_y t_w f_yw / F_cr)", lambda, Dimension.Number, Source,
                ("l_y", ly, Dimension.Length), ("t_w", b.Tw, Dimension.Length), ("f_yw", b.Fyw, Dimension.Stress), ("F_cr", Fcr, Dimension.Force));
            w.Step("F_R", "resistance of the web, γ_M1 = 1", "min(0.5 / λ_F, 1) l_y t_w f_yw", F, Dimension.Force, Source,
                ("λ_F", lambda, Dimension.Number), ("l_y", ly, Dimension.Length), ("t_w", b.Tw, Dimension.Length), ("f_yw", b.Fyw, Dimension.Stress));
        }

        return F;

        (double F, double Lambda) Resistance(double l)
        {
            double lam = Math.Sqrt(l * b.Tw * b.Fyw / Fcr);
            return (Math.Min(0.5 / lam, 1) * l * b.Tw * b.Fyw, lam);
        }
    }
}
