using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Frame;

/// <summary>How stiff a rod is and how stiff what it clamps: together they say how much of a pull the rod feels.</summary>
/// <remarks>Elastic, clamped parts of one material, the pull applied under the nuts. Heads and threads in mesh are taken as rigid.</remarks>
public static class RodJoint
{
    /// <summary>Stiffness of the rod.</summary>
    public static readonly Citation RodSource = new("Shigley's Mechanical Engineering Design, 9th ed.", "8-4, eq. 8-17");
    /// <summary>Stiffness of clamped plates.</summary>
    public static readonly Citation PlateSource = new("Shigley's Mechanical Engineering Design, 9th ed.", "8-5, eq. 8-20 and 8-22");
    /// <summary>How rod and clamped parts share a pull.</summary>
    public static readonly Citation ShareSource = new("Shigley's Mechanical Engineering Design, 9th ed.", "8-7, eq. (e)");
    private static readonly Citation Hooke = Citation.Mechanics("stretch of a bar");

    /// <summary>Washer face over thread diameter of a plain nut.</summary>
    public const double WasherFace = 1.5;

    /// <summary>Stiffness of a rod with a plain part, N/m: A_d A_t E/(A_d l_t + A_t l_d).</summary>
    /// <param name="At">Stress area of the thread, m².</param>
    /// <param name="Ad">Area of the plain part, m².</param>
    /// <param name="lt">Threaded length that stretches, m.</param>
    /// <param name="ld">Plain length that stretches, m.</param>
    /// <param name="E">Young's modulus, Pa.</param>
    /// <param name="w">Where to write it down.</param>
    public static double Rod(double At, double Ad, double lt, double ld, double E = 210e9, Working? w = null)
    {
        Check.Positive(Check.NotNegative(lt) + Check.NotNegative(ld), "length of the rod");
        double k = Check.Positive(Ad) * Check.Positive(At) * Check.Positive(E) / (Ad * lt + At * ld);
        w?.Step("k_b", "stiffness of the rod", "A_d A_t E / (A_d l_t + A_t l_d)", k, Dimension.Stiffness, RodSource,
            ("A_d", Ad, Dimension.Area), ("A_t", At, Dimension.Area), ("E", E, Dimension.Stress), ("l_t", lt, Dimension.Length), ("l_d", ld, Dimension.Length));
        return k;
    }

    /// <summary>Stiffness of a sleeve, N/m: E A/L.</summary>
    /// <param name="outside">m.</param>
    /// <param name="inside">m.</param>
    /// <param name="L">Length, m.</param>
    /// <param name="E">Young's modulus, Pa.</param>
    /// <param name="w">Where to write it down.</param>
    public static double Sleeve(double outside, double inside, double L, double E = 210e9, Working? w = null)
    {
        Check.Above(outside, Check.NotNegative(inside));
        double A = Math.PI / 4 * (outside * outside - inside * inside), k = Check.Positive(E) * A / Check.Positive(L);
        w?.Step("k_s", "stiffness of the sleeve", "E π (D² - d²) / (4 L)", k, Dimension.Stiffness, Hooke,
            ("E", E, Dimension.Stress), ("D", outside, Dimension.Length), ("d", inside, Dimension.Length), ("L", L, Dimension.Length));
        return k;
    }

    /// <summary>Stiffness of one frustum of 30° of a clamped plate, N/m.</summary>
    /// <param name="d">Rod, m.</param>
    /// <param name="face">Diameter D of the face that presses, m, more than the rod.</param>
    /// <param name="t">Thickness of the frustum, m.</param>
    /// <param name="E">Young's modulus, Pa.</param>
    public static double Frustum(double d, double face, double t, double E = 210e9)
    {
        Check.Above(face, Check.Positive(d));
        double cone = 1.155 * Check.Positive(t);
        return 0.5774 * Math.PI * Check.Positive(E) * d / Math.Log((cone + face - d) * (face + d) / ((cone + face + d) * (face - d)));
    }

    /// <summary>Stiffness of a plate clamped between two washer faces of 1.5 d, N/m: two frusta back to back.</summary>
    /// <param name="d">Rod, m.</param>
    /// <param name="l">Thickness, m.</param>
    /// <param name="E">Young's modulus, Pa.</param>
    /// <param name="w">Where to write it down.</param>
    public static double Plate(double d, double l, double E = 210e9, Working? w = null)
    {
        double k = 0.5774 * Math.PI * Check.Positive(E) * Check.Positive(d)
            / (2 * Math.Log(5 * (0.5774 * Check.Positive(l) + 0.5 * d) / (0.5774 * l + 2.5 * d)));
        w?.Step("k_p", "stiffness of the clamped plate", "0.5774 π E d / (2 ln(5 (0.5774 l + 0.5 d) / (0.5774 l + 2.5 d)))", k, Dimension.Stiffness, PlateSource,
            ("E", E, Dimension.Stress), ("d", d, Dimension.Length), ("l", l, Dimension.Length));
        return k;
    }

    /// <summary>The rod's share of a pull while the joint is closed: C = k_b/(k_b + k_m).</summary>
    /// <param name="kb">Stiffness of the rod, N/m.</param>
    /// <param name="km">Stiffness of the clamped parts, N/m.</param>
    /// <param name="w">Where to write it down.</param>
    public static double Share(double kb, double km, Working? w = null)
    {
        double C = Check.Positive(kb) / (kb + Check.Positive(km));
        w?.Step("C", "share of a pull that the rod feels while the joint is closed", "k_b / (k_b + k_m)", C, Dimension.Number, ShareSource,
            ("k_b", kb, Dimension.Stiffness), ("k_m", km, Dimension.Stiffness));
        return C;
    }
}
