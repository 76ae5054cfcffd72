using Ramwright.Geometry;
using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Strength;

/// <summary>Stress on the throat of fillets, as a crack from the root feels it.</summary>
public static class WeldFatigue
{
    /// <summary>Stresses on the throat.</summary>
    public static readonly Citation Source = new("EN 1993-1-9:2005", "5(6), figure 5.1", Standing.FromMemory);

    /// <summary>The stresses at the end of a weld that uses up most of its fatigue strength, per newton at the ram, Pa.</summary>
    /// <param name="group">The welds.</param>
    /// <param name="force">Force per newton at the ram, N.</param>
    /// <param name="moment">Moment per newton at the ram, N·m.</param>
    /// <param name="at">Where both act, m.</param>
    /// <param name="strength">What the welds stand; decides which end is worst.</param>
    /// <param name="w">Where to write it down.</param>
    /// <returns>σ_w = √(σ⊥² + τ⊥²) and τ_w = |τ∥|.</returns>
    /// <remarks>What is handed over by contact of the parts is not taken off: few fits are tight enough to count on.</remarks>
    public static (double Sigma, double Tau) Root(
        WeldGroup group, Vector force, Vector moment, Vector at, FatigueStrength strength, Working? w = null)
    {
        ArgumentNullException.ThrowIfNull(group);
        ArgumentNullException.ThrowIfNull(strength);
        double most = 0;
        (WeldSegment segment, Vector point, Vector theta, _) = FilletWeld.Worst(group, force, moment, at, (s, weld) =>
        {
            (double sigma, double tau) = On(s, weld);
            return strength.UsesMore(sigma, tau, most) ? most = strength.Use(sigma, tau) : 0;
        });
        Vector stress = group.StressAt(force, moment, at, point);
        (double sigmaW, double tauW) = On(stress, segment);
        if (w is not null && most > 1 / Limit.Farthest)
        {
            FilletWeld.ShowStress(group, force, moment, at, point, theta, w);
            (double sigmaT, double tauT, double tauL) = FilletWeld.Resolve(stress, segment);
            FilletWeld.Component("σ_n", "square to the throat", stress, segment.Normal, sigmaT, "n", w);
            FilletWeld.Component("τ_n", "in the throat, square to the weld", stress, segment.Along.Cross(segment.Normal), tauT, "b", w);
            FilletWeld.Component("τ_l", "along the weld", stress, segment.Along, tauL, "t", w);
            w.Step("Δσ_1", "range across the weld for one newton", "√(σ_n² + τ_n²)", sigmaW, Dimension.Stress, Source,
                ("σ_n", sigmaT, Dimension.Stress), ("τ_n", tauT, Dimension.Stress));
            w.Step("Δτ_1", "range along the weld for one newton", "abs(τ_l)", tauW, Dimension.Stress, Source, ("τ_l", tauL, Dimension.Stress));
        }

        return (sigmaW, tauW);
    }

    private static (double Sigma, double Tau) On(Vector s, WeldSegment weld)
    {
        (double sigmaT, double tauT, double tauL) = FilletWeld.Resolve(s, weld);
        return (Math.Sqrt(sigmaT * sigmaT + tauT * tauT), Math.Abs(tauL));
    }
}
