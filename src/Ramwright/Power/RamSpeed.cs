using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Power;

/// <summary>From flow to speed, time and strokes of a handle.</summary>
public static class RamSpeed
{
    /// <summary>Oil cannot be squeezed into less room.</summary>
    public static readonly Citation Continuity = Citation.Mechanics("conservation of volume");

    /// <summary>Speed of a piston.</summary>
    /// <param name="Q">Flow, m³/s, 0 or more.</param>
    /// <param name="A">Area, m², above zero. For a regenerative push the rod's area, <see cref="CylinderAreas.Regenerative"/>.</param>
    /// <param name="w">Where to show the working.</param>
    /// <returns>m/s.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A negative flow, or an area that is not above zero.</exception>
    public static double Of(double Q, double A, Working? w = null)
    {
        Check.NotNegative(Q);
        Check.Positive(A);
        double v = Q / A;
        w?.Step("v", "speed of the ram", "Q/A", v, Dimension.Speed, Continuity,
            ("Q", Q, Dimension.Flow), ("A", A, Dimension.Area));
        return v;
    }

    /// <summary>Time for a way at a speed.</summary>
    /// <param name="s">Way, m, 0 or more.</param>
    /// <param name="v">Speed, m/s, above zero.</param>
    /// <param name="w">Where to show the working.</param>
    /// <returns>s.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A negative way, or a speed that is not above zero.</exception>
    public static double Time(double s, double v, Working? w = null)
    {
        Check.NotNegative(s);
        Check.Positive(v, "speed of the ram");
        double t = s / v;
        w?.Step("t", "time for this part of the stroke", "s/v", t, Dimension.Time, Continuity,
            ("s", s, Dimension.Length), ("v", v, Dimension.Speed));
        return t;
    }

    /// <summary>Flow that a stroke in a given time calls for.</summary>
    /// <param name="s">Way, m, 0 or more.</param>
    /// <param name="A">Area, m², above zero.</param>
    /// <param name="t">Time, s, above zero.</param>
    /// <returns>m³/s.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static double FlowFor(double s, double A, double t)
    {
        Check.NotNegative(s);
        Check.Positive(A);
        Check.Positive(t);
        return s * A / t;
    }

    /// <summary>Whole strokes of a hand pump for a volume of oil.</summary>
    /// <param name="V">Oil wanted, m³, 0 or more.</param>
    /// <param name="perStroke">Oil per stroke, m³, above zero.</param>
    /// <returns>The next whole number of strokes.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range, or more than a billion strokes.</exception>
    public static int HandStrokes(double V, double perStroke)
    {
        Check.NotNegative(V);
        Check.Positive(perStroke, "oil per stroke");
        double strokes = Math.Ceiling(V / perStroke - 1e-9);    // a whole number that rounding pushed up stays whole
        if (!(strokes <= 1e9))
            Check.Refuse("oil per stroke", perStroke, "large enough for fewer than a billion strokes");
        return (int)Math.Max(0, strokes);
    }
}
