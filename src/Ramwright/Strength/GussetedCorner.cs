using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Strength;

/// <summary>A beam and the triangular plates in its inner corner, cut where they meet the face of the upright. One section in bending.</summary>
/// <remarks>
/// Bernoulli on the joined section, all of the plates' legs counted. At the sloping edge, which carries nothing from outside, the stress runs along
/// the edge; of it the cut square to the beam shows only cos² of the slope, so the edge is stressed by that much more. Plates that keep to
/// <see cref="RigGusset.MostSlender"/> yield before they buckle. On the safe side for steep plates, whose tips carry less than the straight line says.
/// </remarks>
/// <param name="A">Area of the beam, m².</param>
/// <param name="I">Its second moment in the plane of the frame, m⁴.</param>
/// <param name="Inside">From its centroid to the face that the plates stand on, m.</param>
/// <param name="Outside">From its centroid to the other face, m.</param>
/// <param name="Leg">Leg of the plates in the plane of the cut, m.</param>
/// <param name="Square">Leg along the beam, m.</param>
/// <param name="T">Thickness of all plates together, m.</param>
public sealed record GussetedCorner(double A, double I, double Inside, double Outside, double Leg, double Square, double T)
{
    /// <summary>The joined section.</summary>
    public static readonly Citation Source = Citation.Mechanics("beam and plates as one section; at a free edge the stress runs along the edge, Mohr's circle");
    /// <summary>How slender a triangular plate may be.</summary>
    public static readonly Citation SlenderSource = new("Salmon and Johnson, Steel Structures, 4th ed.", "13.5, triangular bracket plates", Standing.FromMemory);

    /// <summary>Area of the beam, m².</summary>
    public double A { get; init; } = Check.Positive(A);
    /// <summary>Second moment, m⁴.</summary>
    public double I { get; init; } = Check.Positive(I);
    /// <summary>To the plates, m.</summary>
    public double Inside { get; init; } = Check.Positive(Inside);
    /// <summary>To the other face, m.</summary>
    public double Outside { get; init; } = Check.Positive(Outside);
    /// <summary>Leg in the cut, m.</summary>
    public double Leg { get; init; } = Check.Positive(Leg);
    /// <summary>Leg along the beam, m.</summary>
    public double Square { get; init; } = Check.Positive(Square);
    /// <summary>All plates together, m.</summary>
    public double T { get; init; } = Check.Positive(T);

    /// <summary>Ram force at which the plates' sloping edge or the beam's other face yields.</summary>
    /// <param name="N">Pull along the beam per newton at the ram, at its centroid.</param>
    /// <param name="M">Moment about its centroid per newton, N·m; positive pulls on the plates.</param>
    /// <param name="fyPlate">Yield strength of the plates, Pa.</param>
    /// <param name="fyBeam">Yield strength of the beam, Pa.</param>
    /// <param name="factors">Factors; γ_M0 and γ_F are used.</param>
    /// <param name="w">Where to write it down.</param>
    public Limit? Yields(double N, double M, double fyPlate, double fyBeam, PartialFactors factors, Working? w = null)
    {
        Check.Finite(N);
        Check.Finite(M);
        double At = A + T * Leg, z = T * Leg * (Inside + Leg / 2) / At, arm = Inside + Leg / 2 - z;
        double It = I + A * z * z + T * Leg * Leg * Leg / 12 + T * Leg * arm * arm, Mt = M - N * z;
        double tip = N / At + Mt * (Inside + Leg - z) / It, far = N / At - Mt * (Outside + z) / It;
        double slope = 1 + Leg * Leg / (Square * Square), edge = Math.Abs(tip) * slope;
        double u = Math.Max(edge / Check.Positive(fyPlate), Math.Abs(far) / Check.Positive(fyBeam));
        if (w is not null)
        {
            Given a = ("A", A, Dimension.Area), t = ("t", T, Dimension.Length), b = ("b", Leg, Dimension.Length), hi = ("h_i", Inside, Dimension.Length);
            Given at = ("A_t", At, Dimension.Area), zt = ("z_t", z, Dimension.Length), n = ("N", N, Dimension.Force), it = ("I_t", It, Dimension.SecondMoment), mt = ("M_t", Mt, Dimension.Moment);
            w.Step("A_t", "beam and plates", "A + t b", At, Dimension.Area, Source, a, t, b);
            w.Step("z_t", "their centroid from the beam's", "t b (h_i + b / 2) / A_t", z, Dimension.Length, Source, t, b, hi, at);
            w.Step("I_t", "second moment of beam and plates", "I + A z_t² + t b³ / 12 + t b (h_i + b / 2 - z_t)²", It, Dimension.SecondMoment, Source,
                ("I", I, Dimension.SecondMoment), a, zt, t, b, hi);
            w.Step("M_t", "moment about their centroid, per newton", "M - N z_t", Mt, Dimension.Moment, Source, ("M", M, Dimension.Moment), n, zt);
            w.Step("σ_b", "stress at the plates' end, along the beam", "N / A_t + M_t (h_i + b - z_t) / I_t", tip, Dimension.Stress, Source, n, at, mt, hi, b, zt, it);
            w.Step("σ_e", "stress along their sloping edge", "abs(σ_b) (1 + b² / a²)", edge, Dimension.Stress, Source,
                ("σ_b", tip, Dimension.Stress), b, ("a", Square, Dimension.Length));
            w.Step("σ_o", "stress at the beam's other face", "N / A_t - M_t (h_o + z_t) / I_t", far, Dimension.Stress, Source, n, at, mt, ("h_o", Outside, Dimension.Length), zt, it);
            w.Step("u", "share used by one newton, the worse of the two", "max(σ_e / f_yp, abs(σ_o) / f_y)", u, Dimension.Number, Source,
                ("σ_e", edge, Dimension.Stress), ("f_yp", fyPlate, Dimension.Stress), ("σ_o", far, Dimension.Stress), ("f_y", fyBeam, Dimension.Stress));
        }

        return Limit.FromUse(u, factors.M0, factors.Load, w);
    }
}
