using Ramwright.Stock;
using Ramwright.Workings;

namespace Ramwright.Frame;

/// <summary>
/// Twist of an open section, whose flanges bend sideways against each other. Saint-Venant's torsion alone would let an I of
/// press length twist ten times too far.
/// </summary>
/// <remarks>Uniform beam, both ends held against twisting. GI_t θ' − EI_w θ''' = T with k = √(G I_t / E I_w).</remarks>
public static class WarpingTorsion
{
    /// <summary>Twist of beams that warp.</summary>
    public static readonly Citation Source = new("AISC Design Guide 9 (Seaburg and Carter)", "appendix B, concentrated torque", Standing.FromMemory);

    /// <summary>
    /// The torsion constant that gives the right twist at mid-length under a torque there, ends free to warp, m⁴:
    /// I_t / (1 − tanh u / u), u = kL/2.
    /// </summary>
    /// <param name="s">The section.</param>
    /// <param name="L">Length between the ends, m, above zero.</param>
    public static double Between(SectionProperties s, double L) => s.Iw > 0 ? s.It / Softening(Ratio(s, L) / 2) : s.It;

    /// <summary>
    /// The same for a cantilever with the torque at its tip, the root held against warping: I_t / (1 − tanh u / u), u = kL.
    /// </summary>
    /// <param name="s">The section.</param>
    /// <param name="L">Length from root to tip, m, above zero.</param>
    public static double Cantilever(SectionProperties s, double L) => s.Iw > 0 ? s.It / Softening(Ratio(s, L)) : s.It;

    /// <summary>
    /// Sideways moment that one unit of torque in the member adds at mid-length, both flanges taken together: to be added to Mz.
    /// (L/h_s) tanh u / u with h_s = 2√(I_w/I_z).
    /// </summary>
    public static double MomentBetween(SectionProperties s, double L)
    {
        if (!(s.Iw > 0))
            return 0;
        double u = Ratio(s, L) / 2;
        return L / FlangesApart(s) * Math.Tanh(u) / u;
    }

    /// <summary>The same at the root of a cantilever: (2L/h_s) tanh u / u.</summary>
    public static double MomentCantilever(SectionProperties s, double L)
    {
        if (!(s.Iw > 0))
            return 0;
        double u = Ratio(s, L);
        return 2 * L / FlangesApart(s) * Math.Tanh(u) / u;
    }

    /// <summary>The same at an end that is held against warping, as a weld all round does, with the torque at mid-length: (L/2h_s) tanh u / u, u = kL/4.</summary>
    public static double MomentHeld(SectionProperties s, double L)
    {
        if (!(s.Iw > 0))
            return 0;
        double u = Ratio(s, L) / 4;
        return L / 2 / FlangesApart(s) * Math.Tanh(u) / u;
    }

    private static double FlangesApart(SectionProperties s) => 2 * Math.Sqrt(s.Iw / s.Iz);

    private static double Ratio(SectionProperties s, double L) => L * Math.Sqrt(s.It / (2.6 * s.Iw));

    // 1 − tanh u / u; the difference loses its digits where u is small
    private static double Softening(double u) => u < 0.05 ? u * u / 3 - 2 * u * u * u * u / 15 : 1 - Math.Tanh(u) / u;
}
