using Ramwright.Quantities;
using Ramwright.Stock;
using Ramwright.Workings;

namespace Ramwright.Strength;

/// <summary>A web bent out of its plane by a force that stands beside it on the flange.</summary>
/// <remarks>
/// Elastic, for one place of force on a plain web between stiffeners or ends a apart, which both hold it; the flange alone resists turning. A die or bolster that is long
/// along the beam spreads the moment, which is not counted. Solids pressed on 20 mm came to four fifths of it. The push in the web's plane is left out: it presses where the bending pulls.
/// </remarks>
public static class WebAside
{
    /// <summary>Where the formula stands.</summary>
    public static readonly Citation Source = new("EN 1993-6:2007", "5.7.3, eq. 5.7 and 5.8: bending of a web by the eccentricity of a force on its flange", Standing.FromMemory);

    private static readonly Citation Torsion = Citation.Mechanics("torsion constant of a thin rectangle");

    /// <summary>Bending stress at the faces of the web beside the flange, Pa per newton at the ram.</summary>
    /// <param name="shape">The section.</param>
    /// <param name="a">Between what holds the web upright, m.</param>
    /// <param name="T">Moment about the beam's axis that the flange brings, N·m per newton at the ram, either sign.</param>
    /// <param name="w">Where to write it down.</param>
    public static double Stress(ISection shape, double a, double T, Working? w = null)
    {
        ArgumentNullException.ThrowIfNull(shape);
        Check.Positive(a);
        double hw = shape.WebHeight, tw = shape.Tw, It = shape.B * Math.Pow(shape.Tf, 3) / 3, torque = Math.Abs(Check.Finite(T));
        // sinh overflows where the web is far taller than long: the ratio is 1/2 long before
        double x = Math.PI * hw / a, ratio = x > 20 ? 0.5 : Math.Pow(Math.Sinh(x), 2) / (Math.Sinh(2 * x) - 2 * x);
        double eta = Math.Sqrt(0.75 * a * tw * tw * tw / It * ratio), sigma = 6 * torque / (a * tw * tw) * eta * Math.Tanh(eta);
        if (w is not null)
        {
            w.Step("I_t", "torsion constant of the flange", "b t_f³ / 3", It, Dimension.SecondMoment, Torsion, ("b", shape.B, Dimension.Length), ("t_f", shape.Tf, Dimension.Length));
            w.Take("r", "sinh²(π h_w / a) / (sinh(2 π h_w / a) − 2 π h_w / a)", ratio, Dimension.Number, Source);
            w.Step("η", "web beside flange", "√(0.75 a t_w³ r / I_t)", eta, Dimension.Number, Source,
                ("a", a, Dimension.Length), ("t_w", tw, Dimension.Length), ("r", ratio, Dimension.Number), ("I_t", It, Dimension.SecondMoment));
            w.Take("th", "hyperbolic tangent of η", Math.Tanh(eta), Dimension.Number, Source);
            w.Step("σ_T", "bending of the web beside the flange, per newton", "6 T η th / (a t_w²)", sigma, Dimension.Stress, Source,
                ("T", torque, Dimension.Moment), ("η", eta, Dimension.Number), ("th", Math.Tanh(eta), Dimension.Number), ("a", a, Dimension.Length), ("t_w", tw, Dimension.Length));
        }

        return sigma;
    }
}
