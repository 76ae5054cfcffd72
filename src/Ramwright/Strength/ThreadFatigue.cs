using Ramwright.Quantities;
using Ramwright.Stock;
using Ramwright.Workings;

namespace Ramwright.Strength;

/// <summary>Bolts, studs and tie rods whose thread is pulled again and again.</summary>
/// <remarks>
/// On the stress area, thread rolled or cut, 5 % of the strength for each step above M30 through k_s. Only the range counts, the mean not, as long as the rod
/// stays below its proof load. A tight joint keeps most of the range off its rod: as long as it does not open the rod feels the share C of the pull, afterwards all
/// of it. Bending by a tilting crown, and prying, add to the range and are for the caller.
/// </remarks>
public static class ThreadFatigue
{
    /// <summary>Reduced range of a preloaded bolt.</summary>
    public static readonly Citation PreloadSource = new("EN 1993-1-9:2005", "table 8.1, detail 14, note", Standing.FromMemory);

    private static readonly Citation Statics = Citation.Mechanics("force over area");

    /// <summary>Pull range that a thread stands N times, N; characteristic.</summary>
    /// <param name="thread">The thread.</param>
    /// <param name="grade">Its class, for the greatest range of 1.5 f_yb.</param>
    /// <param name="N">Cycles, above zero.</param>
    /// <param name="w">Where to write it down.</param>
    public static double Range(ScrewThread thread, PropertyClass grade, double N, Working? w = null)
    {
        ArgumentNullException.ThrowIfNull(thread);
        ArgumentNullException.ThrowIfNull(grade);
        double range = FatigueCurve.Range(DetailCategory.Thread, N, DetailCategory.ThreadSize(thread.D), w);
        double F = Math.Min(range, FatigueCurve.Cap(DetailCategory.Thread, grade.Fyb)) * thread.As;
        w?.Step("ΔF_R", "pull range that it stands so often", "min(Δσ_N, 1.5 f_yb) A_s", F, Dimension.Force, FatigueCurve.CapSource,
            ("Δσ_N", range, Dimension.Stress), ("f_yb", grade.Fyb, Dimension.Stress), ("A_s", thread.As, Dimension.Area));
        return F;
    }

    /// <summary>How often a rod stands a pull that swings about a mean; null where there is no end to it.</summary>
    /// <param name="thread">The thread.</param>
    /// <param name="grade">Its class.</param>
    /// <param name="mean">Mean pull, N, 0 or more.</param>
    /// <param name="amplitude">Half of the swing, N, 0 or more. What of it would push a rod only leaves it slack.</param>
    /// <param name="factors">γ_Mf and γ_Ff, on the range.</param>
    /// <param name="w">Where to write it down.</param>
    /// <returns>Cycles; 0 where the range is beyond 1.5 f_yb.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A pull outside its range; a peak above the proof load: that is no matter of fatigue.</exception>
    public static double? Life(
        ScrewThread thread, PropertyClass grade, double mean, double amplitude, FatigueFactors factors, Working? w = null)
    {
        ArgumentNullException.ThrowIfNull(thread);
        ArgumentNullException.ThrowIfNull(grade);
        ArgumentNullException.ThrowIfNull(factors);
        double peak = Check.NotNegative(mean) + Check.NotNegative(amplitude);
        if (peak > thread.As * grade.Sp * (1 + 1e-9))
            Check.Refuse(nameof(amplitude), amplitude, $"at most {thread.As * grade.Sp - mean:G4}: the peak would pass the proof load");
        double swing = Math.Min(2 * amplitude, peak), range = factors.Both * swing / thread.As;
        w?.Step("ΔF", "range of the pull", "min(2 F_a, F_m + F_a)", swing, Dimension.Force, Statics,
            ("F_a", amplitude, Dimension.Force), ("F_m", mean, Dimension.Force));
        w?.Step("Δσ", "stress range, factors included", "γ_Ff γ_Mf ΔF / A_s", range, Dimension.Stress, Statics,
            ("γ_Ff", factors.Ff, Dimension.Number), ("γ_Mf", factors.Mf, Dimension.Number), ("ΔF", swing, Dimension.Force), ("A_s", thread.As, Dimension.Area));
        if (range > FatigueCurve.Cap(DetailCategory.Thread, grade.Fyb) * (1 + 1e-9))
            return 0;
        return FatigueCurve.Life(DetailCategory.Thread, range, DetailCategory.ThreadSize(thread.D), w);
    }

    /// <summary>Ram force at which the squeezes of a tie rod or bolt are used up, tightened or not.</summary>
    /// <param name="f">Pull on the joint of this rod per newton at the ram; zero or a push does not apply.</param>
    /// <param name="thread">Its thread.</param>
    /// <param name="grade">Its class.</param>
    /// <param name="squeezes">How many it is to stand.</param>
    /// <param name="factors">γ_Mf and γ_Ff.</param>
    /// <param name="Fi">Preload, N; 0 for a rod that is not tightened. Count on what is left after settling, not on what the wrench gave.</param>
    /// <param name="C">The rod's share of the pull while the joint is closed, 0 or more, below 1; without effect where nothing is tightened.</param>
    /// <param name="w">Where to write it down.</param>
    /// <returns>The limit, or null where nothing pulls.</returns>
    /// <remarks>While closed the range is C f F, once open f F − F_i. The factors divide the range allowed, so the two forces are not always in their proportion.</remarks>
    public static Limit? Pulled(
        double f, ScrewThread thread, PropertyClass grade, double squeezes, FatigueFactors factors, double Fi = 0, double C = 0, Working? w = null)
    {
        ArgumentNullException.ThrowIfNull(factors);
        Check.NotNegative(Fi);
        Check.Loss(C);
        if (!(Check.Finite(f) > 1 / Limit.Farthest))
            return null;
        double R = Range(thread, grade, squeezes, w);
        w?.Step("ΔF_d", "the same with γ_Mf and γ_Ff", "ΔF_R / (γ_Mf γ_Ff)", R / factors.Both, Dimension.Force, FatigueFactors.StrengthSource,
            ("ΔF_R", R, Dimension.Force), ("γ_Mf", factors.Mf, Dimension.Number), ("γ_Ff", factors.Ff, Dimension.Number));
        double gives = Force(R, "ΔF_R", "F_gives", "ram force at which the squeezes are used up");
        double safe = Force(R / factors.Both, "ΔF_d", "F_safe", "ram force it is safe to");
        return gives <= Limit.Farthest ? new Limit(gives, safe) : null;

        double Force(double range, string symbol, string result, string meaning)
        {
            // range at which a joint that is just opening has arrived
            double closed = C * Fi / (1 - C);
            bool opens = range >= closed;
            double F = opens ? (range + Fi) / f : range / (C * f);
            if (!(F <= Limit.Farthest))
                return F;
            if (opens)
            {
                w?.Step(result, meaning + "; the joint is open there", $"({symbol} + F_i) / f", F, Dimension.Force, PreloadSource,
                    (symbol, range, Dimension.Force), ("F_i", Fi, Dimension.Force), ("f", f, Dimension.Number));
            }
            else
            {
                w?.Step(result, meaning + "; the joint is closed there", $"{symbol} / (C f)", F, Dimension.Force, PreloadSource,
                    (symbol, range, Dimension.Force), ("C", C, Dimension.Number), ("f", f, Dimension.Number));
            }

            return F;
        }
    }
}
