using Ramwright.Quantities;
using Ramwright.Stock;
using Ramwright.Workings;

namespace Ramwright.Strength;

/// <summary>A tie rod, stud or bolt in pure tension, on the stress area of its thread.</summary>
/// <remarks>
/// A rod <b>gives</b> at its proof load, A_s S_p: beyond it stays stretched. It is <b>safe to</b> the lower of that and the code's
/// design tension resistance 0.9 f_ub A_s/γ_M2 (which for soft classes lies above yield), over the load factor. Class 12.9 and inch grades have no code resistance and
/// go by their proof load alone. Unmarked rod is to be taken as 4.6. Bending of the rod where a crown tilts is not in it.
/// </remarks>
public static class RodThread
{
    /// <summary>Proof load.</summary>
    public static readonly Citation ProofSource = new("ISO 898-1:2013", "9.6, tables 5 and 7");

    /// <summary>Proof load, N.</summary>
    public static double ProofLoad(ScrewThread thread, PropertyClass grade, Working? w = null)
    {
        double F = thread.As * Check.Positive(grade.Sp);
        w?.Step("F_p", "proof load", "A_s S_p", F, Dimension.Force, ProofSource,
            ("A_s", thread.As, Dimension.Area), ("S_p", grade.Sp, Dimension.Stress));
        return F;
    }

    /// <summary>Breaking load A_s R_m, N.</summary>
    public static double BreakingLoad(ScrewThread thread, PropertyClass grade) => thread.As * Check.Positive(grade.Rm);

    /// <summary>Ram force at which the rod takes a permanent stretch.</summary>
    /// <param name="share">Pull on the rod per newton at the ram; zero or a push does not apply.</param>
    /// <param name="thread">Its thread.</param>
    /// <param name="grade">Its class.</param>
    /// <param name="factors">Factors; γ_M2 and γ_F are used.</param>
    /// <param name="w">Where to write it down.</param>
    public static Limit? Stretches(
        double share, ScrewThread thread, PropertyClass grade, PartialFactors factors, Working? w = null)
    {
        if (!(Check.Finite(share) > 1 / Limit.Farthest))
            return null;
        double Fp = ProofLoad(thread, grade, w), gives = Fp / share, design = gives;
        w?.Step("F_gives", "ram force at the proof load", "F_p / f", gives, Dimension.Force, ProofSource,
            ("F_p", Fp, Dimension.Force), ("f", share, Dimension.Force));
        if (grade.AlphaV is not null)
        {
            double fub = grade.Fub;
            design = Math.Min(Fp, 0.9 * fub * thread.As / factors.M2) / share;
            w?.Step("F_Rd", "the lower of it and the code's design resistance", "min(F_p, 0.9 f_ub A_s / γ_M2) / f", design, Dimension.Force, Bolt.Source,
                ("F_p", Fp, Dimension.Force), ("f_ub", fub, Dimension.Stress), ("A_s", thread.As, Dimension.Area),
                ("γ_M2", factors.M2, Dimension.Number), ("f", share, Dimension.Force));
        }
        else
        {
            w?.Note($"Class {grade.Name} is outside EN 1993-1-8: rated by its proof load alone.");
            w?.Step("F_Rd", "the proof load again", "F_p / f", design, Dimension.Force, ProofSource,
                ("F_p", Fp, Dimension.Force), ("f", share, Dimension.Force));
        }

        return Limit.FromForces(gives, design, factors.Load, w);
    }
}
