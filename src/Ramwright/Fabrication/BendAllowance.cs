using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Fabrication;

/// <summary>How long a plate is before it is bent.</summary>
/// <remarks>
/// DIN 6935 places the neutral fibre at k s/2 from the inside, k = 0.65 + 0.5 lg(r/s), and 1 beyond r/s = 5. Its table prints the same
/// values rounded; pages that print fixed steps for k differ from it, and are not followed.
/// </remarks>
public static class BendAllowance
{
    /// <summary>Where the neutral fibre lies, and the flat length.</summary>
    public static readonly Citation Source = new("DIN 6935", "compensating value v", Standing.FromMemory);

    private const double Rightangle = Math.PI / 2;

    /// <summary>The factor k of the neutral fibre.</summary>
    /// <param name="r">Inside radius, m.</param>
    /// <param name="s">Thickness, m.</param>
    /// <param name="w">Where to write it down.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value that is not above zero, or a radius so sharp that the formula leaves the plate: r/s below 0.06.</exception>
    public static double Fibre(double r, double s, Working? w = null)
    {
        double ratio = Check.Positive(r) / Check.Positive(s);
        double k = ratio > 5 ? 1 : 0.65 + 0.5 * Math.Log10(ratio);
        if (!(k > 0.03))
            Check.Refuse(nameof(r), r, "a radius of more than about a sixteenth of the thickness");
        if (ratio > 5)
            w?.Take("k", "place of the neutral fibre, beyond five thicknesses", 1, Dimension.Number, Source);
        else
            w?.Step("k", "place of the neutral fibre", "0.65 + 0.5 log10(r / s)", k, Dimension.Number, Source, ("r", r, Dimension.Length), ("s", s, Dimension.Length));
        return k;
    }

    /// <summary>Length of the neutral fibre round a bend, m: α (r + k s/2).</summary>
    /// <param name="α">How far it is bent, rad; a right angle is π/2.</param>
    /// <param name="r">Inside radius, m.</param>
    /// <param name="s">Thickness, m.</param>
    /// <param name="w">Where to write it down.</param>
    public static double Arc(double α, double r, double s, Working? w = null)
    {
        double k = Fibre(r, s, w), arc = Check.Positive(α) * (r + k * s / 2);
        w?.Step("l_b", "length of the neutral fibre round the bend", "α (r + k s / 2)", arc, Dimension.Length, Source,
            ("α", α, Dimension.Angle), ("r", r, Dimension.Length), ("k", k, Dimension.Number), ("s", s, Dimension.Length));
        return arc;
    }

    /// <summary>From where a leg's outside is measured to where its bend begins, m: r + s up to a right angle; up to there (r + s) tan(α/2).</summary>
    /// <param name="α">How far it is bent, rad.</param>
    /// <param name="r">Inside radius, m.</param>
    /// <param name="s">Thickness, m.</param>
    /// <remarks>A bend of more than a right angle has no corner outside: its legs are measured to the tangent at its outermost.</remarks>
    public static double SetBack(double α, double r, double s) => α < Rightangle ? (r + s) * Math.Tan(α / 2) : r + s;

    /// <summary>The compensating value v of one bend, m: add it to the outside lengths.</summary>
    /// <param name="α">How far it is bent, rad, above zero and less than half a turn; the opening angle β is π − α.</param>
    /// <param name="r">Inside radius, m.</param>
    /// <param name="s">Thickness, m.</param>
    /// <param name="w">Where to write it down.</param>
    public static double Value(double α, double r, double s, Working? w = null)
    {
        if (!(α > 0 && α < Math.PI))
            Check.Refuse(nameof(α), α, "above zero and less than half a turn");
        double arc = Arc(α, r, s, w), v = arc - 2 * SetBack(α, r, s);
        if (α < Rightangle)
            w?.Step("v", "compensating value", "l_b - 2 (r + s) tan(α / 2)", v, Dimension.Length, Source, ("l_b", arc, Dimension.Length), ("r", r, Dimension.Length), ("s", s, Dimension.Length), ("α", α, Dimension.Angle));
        else
            w?.Step("v", "compensating value", "l_b - 2 (r + s)", v, Dimension.Length, Source, ("l_b", arc, Dimension.Length), ("r", r, Dimension.Length), ("s", s, Dimension.Length));
        return v;
    }

    /// <summary>Length before bending, m: the outside lengths and a compensating value for each bend.</summary>
    /// <param name="legs">Outside lengths, m; one more than there are bends.</param>
    /// <param name="angles">How far each bend is bent, rad; its sign says which way and does not count.</param>
    /// <param name="r">Inside radius, m.</param>
    /// <param name="s">Thickness, m.</param>
    /// <param name="w">Where to write it down.</param>
    public static double Flat(IReadOnlyList<double> legs, IReadOnlyList<double> angles, double r, double s, Working? w = null)
    {
        ArgumentNullException.ThrowIfNull(legs);
        ArgumentNullException.ThrowIfNull(angles);
        if (legs.Count != angles.Count + 1)
            throw new ArgumentException("A plate has one leg more than bends.", nameof(legs));
        double outside = legs.Sum(), v = angles.Sum(a => Value(Math.Abs(a), r, s, w));
        w?.Step("L", "length before bending: outside legs and all compensating values", "l + Σv", outside + v, Dimension.Length, Source, ("l", outside, Dimension.Length), ("Σv", v, Dimension.Length));
        return outside + v;
    }
}
