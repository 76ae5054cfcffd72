using Ramwright.Quantities;
using Ramwright.Stock;
using Ramwright.Workings;

namespace Ramwright.Strength;

/// <summary>The fillets that tie the plates beside a web to flange and web, one on each face of a plate.</summary>
/// <remarks>
/// What a plate carries comes in through its weld on the flange and goes off through that on the web. That it also stands against the flange is not
/// counted: plates cut by hand do not touch everywhere. Of plates on one side the lean to that side is not counted. Sized for the difference
/// between the force and what the bare section stands, as the American specification has it; EN 1993 does not say how the two share.
/// </remarks>
public static class StiffenerWeld
{
    /// <summary>What the plates are for.</summary>
    public static readonly Citation Difference = new("ANSI/AISC 360-16", "J10 and J10.8: plates and their welds for what the bare section does not carry");

    /// <summary>Force that the welds of all plates of one place pass on, N, γ_M2 = 1; 0 where they are too short to count.</summary>
    /// <param name="plate">The plates.</param>
    /// <param name="a">Throat, m.</param>
    /// <param name="fu">Tensile strength of the weaker part, Pa.</param>
    /// <param name="betaW">Correlation factor β_w of its steel.</param>
    /// <param name="w">Where to write it down.</param>
    public static double Resistance(WebPlate plate, double a, double fu, double betaW, Working? w = null)
    {
        ArgumentNullException.ThrowIfNull(plate);
        double l = Math.Min(plate.OnFlange, plate.OnWeb), fvw = FilletWeld.ShearStrength(fu, betaW, 1), R = 2 * plate.Sides * Check.Positive(a) * l * fvw;
        if (l < FilletWeld.LeastLength(a))
        {
            w?.Note("The plates' shorter weld is under 30 mm or 6 throats, too short to carry load (EN 1993-1-8, 4.5.1(2)).");
            return 0;
        }

        w?.Step("f_vw", "shear strength of the weld, γ_M2 = 1", "f_u / (√(3) β_w)", fvw, Dimension.Stress, FilletWeld.SimplifiedSource,
            ("f_u", fu, Dimension.Stress), ("β_w", betaW, Dimension.Number));
        w?.Step("l", "the shorter edge of a plate that is welded", "min(l_f, l_w)", l, Dimension.Length, FilletWeld.SimplifiedSource,
            ("l_f", plate.OnFlange, Dimension.Length), ("l_w", plate.OnWeb, Dimension.Length));
        w?.Step("F_wR", "what the welds of the plates pass on, γ_M2 = 1", "2 n a l f_vw", R, Dimension.Force, FilletWeld.SimplifiedSource,
            ("n", plate.Sides, Dimension.Number), ("a", a, Dimension.Length), ("l", l, Dimension.Length), ("f_vw", fvw, Dimension.Stress));
        return R;
    }

    /// <summary>Ram force at which the welds tear.</summary>
    /// <param name="f">Force on the flange per newton at the ram, either sign.</param>
    /// <param name="bare">What the section stands without plates, N, every factor 1.</param>
    /// <param name="gammaBare">The factor on that: γ_M1 for a pushed web, γ_M0 for what yields.</param>
    /// <param name="R">What the welds pass on, N.</param>
    /// <param name="factors">Factors; γ_M2 and γ_F are used.</param>
    /// <param name="w">Where to write it down.</param>
    /// <returns>The limit, or null where nothing pushes.</returns>
    public static Limit? Tears(double f, double bare, double gammaBare, double R, PartialFactors factors, Working? w = null)
    {
        double push = Math.Abs(Check.Finite(f)), gives = (Check.NotNegative(bare) + Check.NotNegative(R)) / push;
        if (!(gives <= Limit.Farthest))
            return null;
        double design = (bare / Check.AtLeast(gammaBare, 1) + R / factors.M2) / push;
        Given p = ("f", push, Dimension.Force), alone = ("F_bare", bare, Dimension.Force), welds = ("F_wR", R, Dimension.Force);
        w?.Step("F_gives", "ram force at which it gives", "(F_bare + F_wR) / f", gives, Dimension.Force, Difference, alone, welds, p);
        w?.Step("F_Rd", "the same with the factors of steel and weld", "(F_bare / γ_M + F_wR / γ_M2) / f", design, Dimension.Force, Difference,
            alone, ("γ_M", gammaBare, Dimension.Number), welds, ("γ_M2", factors.M2, Dimension.Number), p);
        return Limit.FromForces(gives, design, factors.Load, w);
    }
}
