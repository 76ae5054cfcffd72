using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Strength;

/// <summary>Fillet welds by American practice, for those who size them by leg and electrode.</summary>
public static class AmericanFillet
{
    /// <summary>Allowable shear on the throat.</summary>
    public static readonly Citation AllowableSource = new("AWS D1.1; AISC 360-16", "J2.4, table J2.5");
    /// <summary>Strength by direction.</summary>
    public static readonly Citation DirectionSource = new("AISC 360-16", "J2.4(b), eq. J2-5");
    /// <summary>Sizes.</summary>
    public static readonly Citation SizeSource = new("AISC 360-16", "J2.2b, table J2.4");

    /// <summary>Allowable shear stress on the throat, Pa: 0.30 of the electrode's tensile strength.</summary>
    /// <param name="Fexx">Tensile strength of the weld metal, Pa.</param>
    public static double Allowable(double Fexx) => 0.30 * Check.Positive(Fexx);

    /// <summary>How much stronger a weld is under a force at an angle to it: 1 + 0.5 sin^1.5 θ.</summary>
    /// <param name="theta">Angle between weld and force, rad, 0 to π/2.</param>
    public static double DirectionFactor(double theta)
    {
        if (!(theta >= 0 && theta <= Math.PI / 2 + 1e-12))
            throw new ArgumentOutOfRangeException(nameof(theta), theta, "must lie between 0 and π/2");
        return 1 + 0.5 * Math.Pow(Math.Sin(theta), 1.5);
    }

    /// <summary>Smallest leg, m, by the thinner part joined: enough heat to fuse.</summary>
    /// <param name="t">Thickness, m.</param>
    public static double SmallestLeg(double t) =>
        Check.Positive(t) <= 0.006 ? 0.003 : t <= 0.013 ? 0.005 : t <= 0.019 ? 0.006 : 0.008;

    /// <summary>Largest leg along the edge of a plate, m: an edge of 6 mm and more must stay visible by 2 mm.</summary>
    /// <param name="t">Thickness of the edge, m.</param>
    public static double LargestLeg(double t) => Check.Positive(t) < 0.006 ? t : t - 0.002;

    /// <summary>Effective length of an end-loaded weld, m: less than its length when over 100 legs long.</summary>
    /// <param name="l">Length, m.</param>
    /// <param name="leg">Leg, m.</param>
    public static double EffectiveLength(double l, double leg)
    {
        double ratio = Check.Positive(l) / Check.Positive(leg);
        return ratio <= 100 ? l : ratio <= 300 ? l * Math.Min(1, 1.2 - 0.002 * ratio) : 180 * leg;
    }
}
