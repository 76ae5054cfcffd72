using Ramwright.Quantities;
using Ramwright.Stock;
using Ramwright.Workings;

namespace Ramwright.Strength;

/// <summary>A tie rod that is tightened before the ram pulls on it: what it carries, and when it gives.</summary>
/// <remarks>
/// Until the joint opens the rod carries F_i + C P of an outside pull P, after that P: the greater of the two, whichever it is. A rod <b>gives</b> at its
/// proof load, beyond which it stays stretched and its preload is gone. The load factor stands on the ram's pull, not on the
/// preload; the code checks the pull alone. Bending from a crown that tilts is added at the edge of a round of the stress area.
/// </remarks>
/// <param name="As">Stress area, m².</param>
/// <param name="Proof">Stress at which it keeps a stretch, Pa.</param>
/// <param name="Fu">Tensile strength, Pa.</param>
/// <param name="Preload">F_i, N; 0 for none.</param>
/// <param name="Share">C, above 0, at most 1; 1 where nothing is clamped.</param>
public sealed record PreloadedRod(double As, double Proof, double Fu, double Preload, double Share)
{
    /// <summary>Proof load of a rod under preload and pull.</summary>
    public static readonly Citation Source = new("Shigley's Mechanical Engineering Design, 9th ed.", "8-9, eq. 8-24 and 8-28");
    /// <summary>Mean and alternating stress.</summary>
    public static readonly Citation CycleSource = new("Shigley's Mechanical Engineering Design, 9th ed.", "8-11, eq. 8-35 and 8-36", Standing.FromMemory);
    private static readonly Citation Statics = Citation.Mechanics("tension and bending of a round bar");

    /// <summary>Stress area, m².</summary>
    public double As { get; init; } = Check.Positive(As);
    /// <summary>Proof stress, Pa.</summary>
    public double Proof { get; init; } = Check.Positive(Proof);
    /// <summary>Tensile strength, Pa.</summary>
    public double Fu { get; init; } = Check.Positive(Fu);
    /// <summary>F_i, N.</summary>
    public double Preload { get; init; } = Check.NotNegative(Preload);
    /// <summary>C.</summary>
    public double Share { get; init; } = Check.Efficiency(Share);

    /// <summary>A_s times the proof stress, N.</summary>
    public double ProofLoad => As * Proof;

    /// <summary>Ram force at which the rod takes a permanent stretch in pure tension.</summary>
    /// <param name="share">Pull on the rod per newton at the ram; zero or a push does not apply.</param>
    /// <param name="factors">Factors; γ_M2 and γ_F are used.</param>
    /// <param name="w">Where to write it down.</param>
    /// <exception cref="ArgumentException">The preload alone is more than the proof load.</exception>
    public Limit? Stretches(double share, PartialFactors factors, Working? w = null)
    {
        if (!(Check.Finite(share) > 1 / Limit.Farthest))
            return null;
        double Fp = ProofLoad;
        w?.Step("F_p", "proof load", "A_s S_p", Fp, Dimension.Force, RodThread.ProofSource, ("A_s", As, Dimension.Area), ("S_p", Proof, Dimension.Stress));
        if (!(Preload < Fp))
            throw new ArgumentException("the preload alone is more than the rod's proof load");
        double gives = Math.Min((Fp - Preload) / (Share * share), Fp / share);
        double design = Math.Min(gives, 0.9 * Fu * As / (factors.M2 * share));
        w?.Step("F_gives", "ram force at the proof load, the joint still closed or already open", "min((F_p - F_i) / (C f), F_p / f)", gives, Dimension.Force, Source,
            ("F_p", Fp, Dimension.Force), ("F_i", Preload, Dimension.Force), ("C", Share, Dimension.Number), ("f", share, Dimension.Force));
        w?.Step("F_Rd", "the lower of it and the code's design resistance to the pull", "min(F_gives, 0.9 f_u A_s / (γ_M2 f))", design, Dimension.Force, Bolt.Source,
            ("F_gives", gives, Dimension.Force), ("f_u", Fu, Dimension.Stress), ("A_s", As, Dimension.Area), ("γ_M2", factors.M2, Dimension.Number), ("f", share, Dimension.Force));
        return Limit.FromForces(gives, design, factors.Load, w);
    }

    /// <summary>Ram force at which pull and bending together reach the proof stress at the edge of the thread.</summary>
    /// <param name="share">Pull on the rod per newton at the ram; a push counts like a pull.</param>
    /// <param name="moment">Bending moment in it per newton at the ram, m, either sign.</param>
    /// <param name="factors">Factors; γ_M0 and γ_F are used.</param>
    /// <param name="w">Where to write it down.</param>
    /// <exception cref="ArgumentException">The preload alone is more than the proof load.</exception>
    public Limit? Bends(double share, double moment, PartialFactors factors, Working? w = null)
    {
        double f = Math.Abs(Check.Finite(share)), m = Math.Abs(Check.Finite(moment));
        if (!(Preload < ProofLoad))
            throw new ArgumentException("the preload alone is more than the rod's proof load");
        double d = Math.Sqrt(4 * As / Math.PI), W = Math.PI * d * d * d / 32;
        double pulled = f / As, bent = m / W;
        if (pulled + bent < Proof / Limit.Farthest)
            return null;
        double gives = Math.Min((Proof - Preload / As) / (Share * pulled + bent), Proof / (pulled + bent)), design = gives / factors.M0;
        w?.Step("d_s", "diameter of a round of the stress area", "√(4 A_s / π)", d, Dimension.Length, Statics, ("A_s", As, Dimension.Area));
        w?.Step("W", "its section modulus", "π d_s³ / 32", W, Dimension.SectionModulus, Statics, ("d_s", d, Dimension.Length));
        w?.Step("σ_t", "tension per newton", "f / A_s", pulled, Dimension.Stress, Statics, ("f", f, Dimension.Force), ("A_s", As, Dimension.Area));
        w?.Step("σ_b", "bending per newton", "M / W", bent, Dimension.Stress, Statics, ("M", m, Dimension.Moment), ("W", W, Dimension.SectionModulus));
        w?.Step("F_gives", "ram force at the proof stress, the joint still closed or already open",
            "min((S_p - F_i / A_s) / (C σ_t + σ_b), S_p / (σ_t + σ_b))", gives, Dimension.Force, Source,
            ("S_p", Proof, Dimension.Stress), ("F_i", Preload, Dimension.Force), ("A_s", As, Dimension.Area), ("C", Share, Dimension.Number),
            ("σ_t", pulled, Dimension.Stress), ("σ_b", bent, Dimension.Stress));
        w?.Step("F_Rd", "the same with its factor on the steel", "F_gives / γ_M0", design, Dimension.Force, Source,
            ("F_gives", gives, Dimension.Force), ("γ_M0", factors.M0, Dimension.Number));
        return Limit.FromForces(gives, design, factors.Load, w);
    }

    /// <summary>Ram force at which the thread has used up a number of squeezes, pulled and bent each time from nothing.</summary>
    /// <param name="share">Pull on the rod per newton at the ram; zero or a push does not apply.</param>
    /// <param name="moment">Bending moment in it per newton at the ram, m, either sign.</param>
    /// <param name="thread">Its thread, for the size.</param>
    /// <param name="squeezes">How many it is to stand.</param>
    /// <param name="factors">γ_Mf and γ_Ff.</param>
    /// <param name="w">Where to write it down.</param>
    /// <remarks>While closed the range of the pull is C f F, once open f F − F_i; that of the bending is whole either way. Give the preload to count on.</remarks>
    public Limit? Cracks(double share, double moment, ScrewThread thread, double squeezes, FatigueFactors factors, Working? w = null)
    {
        ArgumentNullException.ThrowIfNull(thread);
        ArgumentNullException.ThrowIfNull(factors);
        double f = Check.Finite(share), m = Math.Abs(Check.Finite(moment));
        if (!(f > 1 / Limit.Farthest))
            return null;
        double d = Math.Sqrt(4 * As / Math.PI), W = Math.PI * d * d * d / 32, pulled = f / As, bent = m / W;
        double ks = DetailCategory.ThreadSize(thread.D), curve = FatigueCurve.Range(DetailCategory.Thread, squeezes, ks, w);
        double R = Math.Min(curve, FatigueCurve.Cap(DetailCategory.Thread, Proof));
        w?.Step("Δσ_R", "stress range that it stands so often", "min(Δσ_N, 1.5 S_p)", R, Dimension.Stress, FatigueCurve.CapSource,
            ("Δσ_N", curve, Dimension.Stress), ("S_p", Proof, Dimension.Stress));
        w?.Step("σ_t", "tension per newton", "f / A_s", pulled, Dimension.Stress, Statics, ("f", f, Dimension.Force), ("A_s", As, Dimension.Area));
        w?.Step("σ_b", "bending per newton", "32 M / (π d_s³)", bent, Dimension.Stress, Statics, ("M", m, Dimension.Moment), ("d_s", d, Dimension.Length));
        double gives = Force(1, "F_gives", "ram force at which the squeezes are used up");
        double safe = Force(factors.Both, "F_safe", "the same with γ_Mf and γ_Ff on the range");
        return gives <= Limit.Farthest ? new Limit(gives, safe) : null;

        // the force in the rod is the greater of two lines, so the ram force is the lesser of two
        double Force(double over, string symbol, string meaning)
        {
            double range = R / over, F = Math.Min(range / (Share * pulled + bent), (range + Preload / As) / (pulled + bent));
            w?.Step(symbol, meaning, "min(Δσ_R / (γ (C σ_t + σ_b)), (Δσ_R / γ + F_i / A_s) / (σ_t + σ_b))", F, Dimension.Force, FatigueFactors.StrengthSource,
                ("Δσ_R", R, Dimension.Stress), ("γ", over, Dimension.Number), ("C", Share, Dimension.Number), ("σ_t", pulled, Dimension.Stress),
                ("σ_b", bent, Dimension.Stress), ("F_i", Preload, Dimension.Force), ("A_s", As, Dimension.Area));
            return F;
        }
    }

    /// <summary>Force in the rod under a pull P, N: the greater of F_i + C P and P.</summary>
    public double Force(double P) => Math.Max(Preload + Share * Check.NotNegative(P), P);

    /// <summary>Mean and amplitude of the stress on A_s when the pull goes from nothing to P and back, Pa.</summary>
    /// <param name="P">Greatest pull, N.</param>
    /// <param name="w">Where to write it down.</param>
    public (double Mean, double Amplitude) Cycle(double P, Working? w = null)
    {
        double most = Force(P), mean = (most + Preload) / (2 * As), amplitude = (most - Preload) / (2 * As);
        w?.Step("F_b", "greatest force in the rod", "max(F_i + C P, P)", most, Dimension.Force, Source,
            ("F_i", Preload, Dimension.Force), ("C", Share, Dimension.Number), ("P", P, Dimension.Force));
        w?.Step("σ_m", "mean stress", "(F_b + F_i) / (2 A_s)", mean, Dimension.Stress, CycleSource,
            ("F_b", most, Dimension.Force), ("F_i", Preload, Dimension.Force), ("A_s", As, Dimension.Area));
        w?.Step("σ_a", "amplitude of the stress", "(F_b - F_i) / (2 A_s)", amplitude, Dimension.Stress, CycleSource,
            ("F_b", most, Dimension.Force), ("F_i", Preload, Dimension.Force), ("A_s", As, Dimension.Area));
        return (mean, amplitude);
    }
}
