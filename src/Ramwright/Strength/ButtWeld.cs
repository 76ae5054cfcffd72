using Ramwright.Geometry;
using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Strength;

/// <summary>Full-penetration butt welds: as strong as the weaker part joined.</summary>
/// <remarks>Only where the root is fused through: welded from both sides, or from one side on a backing strip. A butt weld from one side without
/// backing is a partial one and is to be rated as a fillet of its true throat.</remarks>
public static class ButtWeld
{
    /// <summary>Full penetration: the resistance of the weaker part.</summary>
    public static readonly Citation Source = new("EN 1993-1-8:2005", "4.7.1(1)");

    /// <summary>Ram force at which the weaker part yields along the weld.</summary>
    /// <param name="group">The welds, each with the thickness of the thinner part as its throat.</param>
    /// <param name="force">Force per newton at the ram, N.</param>
    /// <param name="moment">Moment per newton at the ram, N·m.</param>
    /// <param name="at">Where both act, m.</param>
    /// <param name="fy">Yield strength of the weaker part, Pa.</param>
    /// <param name="factors">Factors; γ_M0 and γ_F are used.</param>
    /// <param name="w">Where to write it down.</param>
    /// <returns>The limit, or null where nothing acts.</returns>
    public static Limit? Yield(
        WeldGroup group, Vector force, Vector moment, Vector at, double fy, PartialFactors factors, Working? w = null)
    {
        Check.Positive(fy);
        (WeldSegment segment, Vector point, Vector theta, double u) = FilletWeld.Worst(group, force, moment, at, (s, weld) =>
        {
            double normal = s.Dot(weld.Normal);
            return Mises(s, normal) / fy;
        });
        if (w is not null && u > 1 / Limit.Farthest)
        {
            Vector s = FilletWeld.ShowStress(group, force, moment, at, point, theta, w);
            double sigma = s.Dot(segment.Normal);
            FilletWeld.Component("σ_n", "square to the joint", s, segment.Normal, sigma, "n", w);
            w.Step("u", "share of the yield strength used by one newton", "√(3 (s_x² + s_y² + s_z²) - 2 σ_n²) / f_y", u, Dimension.Number, Source,
                ("s_x", s.X, Dimension.Stress), ("s_y", s.Y, Dimension.Stress), ("s_z", s.Z, Dimension.Stress),
                ("σ_n", sigma, Dimension.Stress), ("f_y", fy, Dimension.Stress));
        }

        return Limit.FromUse(u, factors.M0, factors.Load, w);
    }

    // σ² + 3 τ² with τ² = s² − σ².
    private static double Mises(Vector s, double normal) => Math.Sqrt(3 * s.Dot(s) - 2 * normal * normal);
}
