using Ramwright.Quantities;
using Ramwright.Stock;
using Ramwright.Workings;

namespace Ramwright.Strength;

/// <summary>A web with plates welded beside it, from flange to flange, under a concentrated force.</summary>
/// <remarks>
/// The plates and a strip of web, 15 ε t_w to each side, stand as a column of 0.75 h_w against bowing out of the web, curve c. Of a plate no
/// more counts than cannot twist by itself (EN 1993-1-5, 9.2.1(8)). Plates on one side only: their leaning to one side is counted in
/// the second moment, the eccentricity of the force is not.
/// </remarks>
public static class StiffenedWeb
{
    /// <summary>Bearing stiffeners.</summary>
    public static readonly Citation Source = new("EN 1993-1-5:2006", "9.1(2), 9.2.1(8) and 9.4", Standing.FromMemory);

    /// <summary>Resistance, N, γ_M1 = 1; never below that of the web alone.</summary>
    /// <param name="beam">The beam.</param>
    /// <param name="ts">Thickness of each plate, m.</param>
    /// <param name="outstand">Width of each plate from the web, m.</param>
    /// <param name="bothSides">Whether there is a plate on each side of the web.</param>
    /// <param name="plain">Resistance of the web alone, N.</param>
    /// <param name="w">Where to write it down.</param>
    public static double Resistance(PressedBeam beam, double ts, double outstand, bool bothSides, double plain, Working? w = null)
    {
        const double E = 210e9;
        double fy = beam.Fyw, strip = 30 * PlateClass.Epsilon(fy) * beam.Tw, n = bothSides ? 2 : 1;
        double bs = Math.Min(Check.Positive(outstand), Check.Positive(ts) / Math.Sqrt(5.3 * fy / E));
        double As = n * bs * ts, Aw = (strip + ts) * beam.Tw, A = As + Aw, arm = (bs + beam.Tw) / 2;
        // about the middle of the web, then about the column's own axis
        double I = n * (ts * bs * bs * bs / 12 + ts * bs * arm * arm) + (strip + ts) * Math.Pow(beam.Tw, 3) / 12;
        double off = bothSides ? 0 : As * arm / A, own = I - A * off * off, L = 0.75 * beam.Hw;
        double chi = ColumnBuckling.Reduction(A, own, L, fy, E, BucklingCurve.C, "s").Chi, R = chi * A * fy;
        if (R <= plain)
        {
            w?.Note("The plates are too slight to add anything: the web alone counts.");
            return plain;
        }

        if (w is not null)
        {
            w.Step("b_s", "width of a plate that counts", "min(b, t_s / √(5.3 f_y / E))", bs, Dimension.Length, Source,
                ("b", outstand, Dimension.Length), ("t_s", ts, Dimension.Length), ("f_y", fy, Dimension.Stress), ("E", E, Dimension.Stress));
            w.Step("A", "plates and a strip of the web", "n b_s t_s + (30 √(235000000 / f_y) t_w + t_s) t_w", A, Dimension.Area, Source,
                ("n", n, Dimension.Number), ("b_s", bs, Dimension.Length), ("t_s", ts, Dimension.Length), ("f_y", fy, Dimension.Stress), ("t_w", beam.Tw, Dimension.Length));
            w.Take("I_s", "their second moment against bowing out of the web", own, Dimension.SecondMoment, Source);
            w.Step("L_cr", "their length as a column", "0.75 h_w", L, Dimension.Length, Source, ("h_w", beam.Hw, Dimension.Length));
            ColumnBuckling.Reduction(A, own, L, fy, E, BucklingCurve.C, "s", w);
            w.Step("F_R", "resistance of the stiffened web, γ_M1 = 1", "χ_s A f_y", R, Dimension.Force, Source,
                ("χ_s", chi, Dimension.Number), ("A", A, Dimension.Area), ("f_y", fy, Dimension.Stress));
        }

        return R;
    }
}
