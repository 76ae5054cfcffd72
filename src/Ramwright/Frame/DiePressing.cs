using Ramwright.Quantities;
using Ramwright.Stock;
using Ramwright.Workings;

namespace Ramwright.Frame;

/// <summary>How far the die sinks towards the middle of the beam that it stands on: what beams leave out, because they have no depth.</summary>
public static class DiePressing
{
    /// <summary>Where the three parts come from.</summary>
    public static readonly Citation Source = new("Timoshenko and Goodier, Theory of Elasticity, 3rd ed.",
        "strip load on a half-plane, taken to half depth (+0.10); beam under a concentrated load (−0.21)", Standing.FromMemory);

    /// <summary>Sinking per newton of a die on the edge of a web, m/N.</summary>
    /// <param name="h">Depth of the beam, m.</param>
    /// <param name="c">Length of the die along the beam, m; a die longer than the beam is deep presses it no more than one as long.</param>
    /// <param name="t">Thickness of all webs under the die, m.</param>
    /// <param name="E">Young's modulus, Pa.</param>
    /// <param name="w">Where to write it down.</param>
    /// <returns>m/N, never below zero.</returns>
    /// <remarks>
    /// Mean sinking of an even strip load on a half-plane against a point h/2 under it, (2 ln(h/c) + 1.614 − 1.3)/π; less what a concentrated load lifts the middle line
    /// above the plain sum of bending and shear, 0.21; less the rounding of the shear's peak over the die, 0.13 c/h. All over E t.
    /// </remarks>
    public static double Of(double h, double c, double t, double E = 210e9, Working? w = null)
    {
        Check.Positive(h);
        Check.Positive(t);
        c = Math.Clamp(Check.NotNegative(c), t, Math.Max(h, t));
        double g = Math.Max(0, 2 * Math.Log(h / c) / Math.PI - 0.11 - 0.13 * c / h);
        w?.Step("g", "sinking of the die, in F / (E t)", "max(0, 2 ln(h / c) / π - 0.11 - 0.13 c / h)", g, Dimension.Number, Source,
            ("h", h, Dimension.Length), ("c", c, Dimension.Length));
        return g / (Check.Positive(E) * t);
    }

    /// <summary>The same for a shape; where no web is known, the shear area over the depth stands for it.</summary>
    internal static double Of(Shape shape, double c)
    {
        SectionProperties s = shape.Properties;
        return Of(s.Height, c, Walls.Of(shape) is { } walls ? walls.Web : s.Asz / s.Height);
    }
}
