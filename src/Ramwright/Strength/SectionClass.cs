using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Strength;

/// <summary>Classes of cross-sections by how thin their plates are, EN 1993-1-1, 5.5.2.</summary>
public enum SectionClass
{
    /// <summary>Plastic, with room to turn.</summary>
    One = 1,
    /// <summary>Plastic.</summary>
    Two = 2,
    /// <summary>Yields at the edge before it buckles.</summary>
    Three = 3,
    /// <summary>Buckles locally before it yields: see <see cref="SectionWalls.Counted"/>.</summary>
    Four = 4,
}

/// <summary>The class of one plate of a section. A section takes the worst class of its plates in compression.</summary>
/// <remarks>EN 1993-1-1:2005, table 5.2. c is the flat width between root radii or weld toes, t its thickness.</remarks>
public static class PlateClass
{
    /// <summary>Limits of c/t.</summary>
    public static readonly Citation Source = new("EN 1993-1-1:2005", "table 5.2");

    /// <summary>ε = √(235 MPa / f_y).</summary>
    /// <param name="fy">Yield strength, Pa, above zero.</param>
    public static double Epsilon(double fy) => Math.Sqrt(235e6 / Check.Positive(fy));

    /// <summary>A plate held along both edges, such as a web or the wall of a box.</summary>
    /// <param name="c">Flat width, m.</param>
    /// <param name="t">Thickness, m.</param>
    /// <param name="fy">Yield strength, Pa.</param>
    /// <param name="alpha">Share of the plate in compression when fully plastic, 0 to 1: 0.5 in bending, 1 in compression.</param>
    /// <param name="psi">Least over greatest elastic stress, compression positive, −3 to 1: −1 in bending, 1 in compression.</param>
    /// <exception cref="ArgumentOutOfRangeException">A width, thickness or strength not above zero; α or ψ out of range.</exception>
    public static SectionClass Internal(double c, double t, double fy, double alpha, double psi)
    {
        if (!(alpha is >= 0 and <= 1))
            throw new ArgumentOutOfRangeException(nameof(alpha), alpha, "must lie between 0 and 1");
        if (!(psi is >= -3 and <= 1))
            throw new ArgumentOutOfRangeException(nameof(psi), psi, "must lie between −3 and 1");
        double slender = Check.Positive(c) / Check.Positive(t) / Epsilon(fy);
        double one = alpha > 0.5 ? 396 / (13 * alpha - 1) : alpha > 0 ? 36 / alpha : double.PositiveInfinity;
        double two = alpha > 0.5 ? 456 / (13 * alpha - 1) : alpha > 0 ? 41.5 / alpha : double.PositiveInfinity;
        return Of(slender, one, two, InternalLimit(psi));
    }

    /// <summary>Greatest c/(t ε) of class 3, held along both edges.</summary>
    /// <param name="psi">Least over greatest elastic stress, compression positive, −3 to 1.</param>
    public static double InternalLimit(double psi) =>
        psi > -1 ? 42 / (0.67 + 0.33 * psi) : 62 * (1 - psi) * Math.Sqrt(-psi);

    /// <summary>Greatest c/(t ε) of class 3, held along one edge: 21 √k_σ, and 14 in even compression.</summary>
    /// <param name="root">Stress at the held edge, compression positive, any unit.</param>
    /// <param name="tip">Stress at the free edge.</param>
    /// <remarks>k_σ after EN 1993-1-5:2006, table 4.2; never below what even compression is allowed.</remarks>
    public static double OutstandLimit(double root, double tip)
    {
        double most = Math.Max(root, tip);
        if (!(most > 0))
            return double.PositiveInfinity;
        double psi = Math.Max(-3, Math.Min(root, tip) / most);
        double k = tip >= root ? 0.57 - 0.21 * psi + 0.07 * psi * psi
            : psi >= 0 ? 0.578 / (psi + 0.34) : 1.7 - 5 * Math.Max(-1, psi) + 17.1 * Math.Max(-1, psi) * Math.Max(-1, psi);
        return Math.Max(14, 21 * Math.Sqrt(k));
    }

    /// <summary>A plate held along one edge, under uniform compression, such as half a flange.</summary>
    /// <param name="c">Flat width from the root to the free edge, m.</param>
    /// <param name="t">Thickness, m.</param>
    /// <param name="fy">Yield strength, Pa.</param>
    public static SectionClass Outstand(double c, double t, double fy) =>
        Of(Check.Positive(c) / Check.Positive(t) / Epsilon(fy), 9, 10, 14);

    /// <summary>A round tube.</summary>
    /// <param name="d">Outside diameter, m.</param>
    /// <param name="t">Wall, m.</param>
    /// <param name="fy">Yield strength, Pa.</param>
    public static SectionClass Tube(double d, double t, double fy)
    {
        double eps = Epsilon(fy);
        return Of(Check.Positive(d) / Check.Positive(t) / (eps * eps), 50, 70, 90);
    }

    private static SectionClass Of(double slender, double one, double two, double three) =>
        slender <= one ? SectionClass.One
        : slender <= two ? SectionClass.Two
        : slender <= three ? SectionClass.Three
        : SectionClass.Four;
}
