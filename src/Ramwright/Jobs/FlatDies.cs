using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Jobs;

/// <summary>
/// Mean pressure between flat dies over the flow stress: the multipliers of the slab method. 2k, the plane-strain flow stress, is 2Y/√3 (von Mises).
/// </summary>
/// <remarks>μ is Coulomb's coefficient of friction, m the friction factor of sticking (shear at the face m k), d or L the contact's size, h the height.</remarks>
public static class FlatDies
{
    /// <summary>First order in friction.</summary>
    public static readonly Citation Siebel = new("E. Siebel 1923, as in S. Kalpakjian, S. Schmid, Manufacturing Engineering and Technology", "forging", Standing.FromMemory);
    /// <summary>The slab method.</summary>
    public static readonly Citation Slab = new("W. Hosford, R. Caddell, Metal Forming; G. Dieter, Mechanical Metallurgy", "slab analysis", Standing.FromMemory);
    /// <summary>Sticking over a rectangle.</summary>
    public static readonly Citation HillSource = Citation.Mechanics("friction hill as a heap of sand: volume of a hip roof over the contact");
    /// <summary>Groover's form factor.</summary>
    public static readonly Citation Groover = new("M. P. Groover, Fundamentals of Modern Manufacturing", "open-die forging", Standing.FromMemory);

    /// <summary>Plane-strain flow stress over the uniaxial one, 2/√3.</summary>
    public static readonly double PlaneStrain = 2 / Math.Sqrt(3);

    /// <summary>Disc, Coulomb friction, first order: p/Y = 1 + μ d/(3h). Within 2 % while μd/h is below 0.5.</summary>
    public static double DiscSliding(double μ, double dOverH) => 1 + Check.NotNegative(μ) * Check.Positive(dOverH) / 3;

    /// <summary>Disc, Coulomb friction, slab method: p/Y = 2(eˣ − x − 1)/x², x = μ d/h.</summary>
    public static double DiscSlidingExact(double μ, double dOverH)
    {
        double x = Check.NotNegative(μ) * Check.Positive(dOverH);
        return x < 1e-4 ? 1 + x / 3 : 2 * (Math.Exp(x) - x - 1) / (x * x);
    }

    /// <summary>Strip, Coulomb friction, first order: p/2k = 1 + μ L/(2h).</summary>
    public static double StripSliding(double μ, double LOverH) => 1 + Check.NotNegative(μ) * Check.Positive(LOverH) / 2;

    /// <summary>Strip, Coulomb friction, slab method: p/2k = (eˣ − 1)/x, x = μ L/h.</summary>
    public static double StripSlidingExact(double μ, double LOverH)
    {
        double x = Check.NotNegative(μ) * Check.Positive(LOverH);
        return x < 1e-6 ? 1 + x / 2 : (Math.Exp(x) - 1) / x;
    }

    /// <summary>Strip, sticking: p/2k = 1 + m L/(4h).</summary>
    public static double StripSticking(double m, double LOverH) => 1 + Check.NotNegative(m) * Check.Positive(LOverH) / 4;

    /// <summary>Disc, sticking: p/Y = 1 + m d/(3√3 h).</summary>
    public static double DiscSticking(double m, double dOverH) => 1 + Check.NotNegative(m) * Check.Positive(dOverH) / (3 * Math.Sqrt(3));

    /// <summary>Disc, sticking, with Tresca's k = Y/2: p/Y = 1 + m d/(6h).</summary>
    public static double DiscStickingTresca(double m, double dOverH) => 1 + Check.NotNegative(m) * Check.Positive(dOverH) / 6;

    /// <summary>Groover's form factor K_f = 1 + 0.4 μ d/h; a little above the slab method.</summary>
    public static double GrooverFactor(double μ, double dOverH) => 1 + 0.4 * Check.NotNegative(μ) * Check.Positive(dOverH);

    /// <summary>Prandtl's rough platens, b/h of 3.6 and more: p/2k = 3/4 + b/(4h).</summary>
    /// <exception cref="ArgumentOutOfRangeException">b/h below 3.6.</exception>
    public static double Prandtl(double bOverH) => 0.75 + Check.AtLeast(bOverH, 3.6) / 4;

    /// <summary>Radius inside which a disc sticks while it slides outside, over its height: R/h − ln(1/(√3 μ))/(2μ); 0 where it slides all over.</summary>
    public static double StickingRadius(double μ, double ROverH) =>
        Math.Max(0, Check.Positive(ROverH) - Math.Log(1 / (Math.Sqrt(3) * Check.Positive(μ))) / (2 * μ));

    /// <summary>Disc that slides outside and sticks inside: p/Y.</summary>
    /// <remarks>Outside the sticking radius p = Y exp(2μ(R − r)/h); inside, p rises inwards by 2k/h for each metre.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">A size that is not above zero, or μ that is not above zero or is above 1/√3, where it sticks all over.</exception>
    public static double DiscMixed(double μ, double ROverH)
    {
        if (!(μ > 0 && μ <= 1 / Math.Sqrt(3)))
            Check.Refuse(nameof(μ), μ, "above zero, at most 1/√3");
        double R = Check.Positive(ROverH), r = StickingRadius(μ, R);
        // ∫ p 2πr dr / πR², by parts, lengths in heights
        double a = 2 * μ;
        double Outer(double x) => -Math.Exp(a * (R - x)) * (x / a + 1 / (a * a));
        double sliding = 2 * (Outer(R) - Outer(r));
        double edge = Math.Exp(a * (R - r));
        double sticking = r * r * edge + PlaneStrain * r * r * r / 3;
        return (sliding + sticking) / (R * R);
    }

    /// <summary>Distance from the middle inside which a strip sticks while it slides outside, over its height; 0 where it slides all over.</summary>
    public static double StickingHalfWidth(double μ, double LOverH) =>
        Math.Max(0, Check.Positive(LOverH) / 2 - Math.Log(1 / (2 * Check.Positive(μ))) / (2 * μ));

    /// <summary>Strip that slides outside and sticks inside: p/2k.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A size that is not above zero, or μ that is not above zero or is above ½, where it sticks all over.</exception>
    public static double StripMixed(double μ, double LOverH)
    {
        if (!(μ > 0 && μ <= 0.5))
            Check.Refuse(nameof(μ), μ, "above zero, at most 0.5");
        double a = Check.Positive(LOverH) / 2, x = StickingHalfWidth(μ, LOverH);
        double edge = Math.Exp(2 * μ * (a - x));
        double sliding = (edge - 1) / (2 * μ);
        double sticking = x * edge + x * x / 2;          // rises inwards by k·2/h = (2k)/h a metre, half of it on average
        return (sliding + sticking) / a;
    }

    /// <summary>
    /// Mean pressure on a rectangle of contact, Pa: the hill of friction over it, σ₀ + τ w/(2h) · (1 − w/(3l)).
    /// </summary>
    /// <param name="σ_0">Pressure at the edge, Pa: Y where the work is free to spread all round (about square), up to 2k where it is much longer than wide.</param>
    /// <param name="τ">Shear at the face, Pa: m k where it sticks, μ σ₀ where it slides.</param>
    /// <param name="w">Shorter side, m.</param>
    /// <param name="l">Longer side, m, no less than the shorter.</param>
    /// <param name="h">Height, m.</param>
    /// <param name="working">Where to write it down.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static double Hill(double σ_0, double τ, double w, double l, double h, Working? working = null)
    {
        Check.Positive(σ_0);
        Check.NotNegative(τ);
        Check.Positive(w);
        Check.AtLeast(l, w);
        Check.Positive(h);
        double p = σ_0 + τ * w / (2 * h) * (1 - w / (3 * l));
        working?.Step("p", "mean pressure on the face", "σ_0 + τ w / (2 h) · (1 − w / (3 l))", p, Dimension.Stress, HillSource,
            ("σ_0", σ_0, Dimension.Stress), ("τ", τ, Dimension.Stress), ("w", w, Dimension.Length), ("h", h, Dimension.Length), ("l", l, Dimension.Length));
        return p;
    }
}
