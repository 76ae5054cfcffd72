using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Strength;

/// <summary>How a bolted flange in tension gives.</summary>
public enum TStubMode
{
    /// <summary>The flange yields at the web and at the bolts; the prying force is at its greatest.</summary>
    FlangeYields,
    /// <summary>The flange yields at the web and prises the bolts apart.</summary>
    Prying,
    /// <summary>The bolts break, the flange is stiff.</summary>
    BoltsBreak,
}

/// <summary>A flange pulled by a web and held by a row of bolts: an end plate, the flange of a cylinder, the leg of an angle.</summary>
/// <remarks>
/// A thin flange bends between web and bolts and levers on its own edge; the bolts then carry more than the pull. The two legs of a T hold together;
/// with one leg only (an angle, a ring around a barrel) half of everything counts. Prying is always taken as possible, which
/// is the safe side where the bolts are long. Immutable.
/// </remarks>
/// <param name="M">From the bolt's centre to the web, less 0.8 of the root's radius or of a weld's leg, m.</param>
/// <param name="E">From the bolt's centre to the free edge, m.</param>
/// <param name="Length1">Effective length for mode 1, all bolts of one leg together, m.</param>
/// <param name="Length2">Effective length for mode 2, m.</param>
/// <param name="T">Thickness of the flange, m.</param>
/// <param name="Fy">Its yield strength, Pa.</param>
/// <param name="Legs">2 for a T, 1 for an angle.</param>
public sealed record TStub(double M, double E, double Length1, double Length2, double T, double Fy, int Legs = 2)
{
    /// <summary>Resistance of the three modes.</summary>
    public static readonly Citation Source = new("EN 1993-1-8:2005", "6.2.4.1, table 6.2");
    /// <summary>Effective lengths.</summary>
    public static readonly Citation LengthSource = new("EN 1993-1-8:2005", "6.2.6.4.1, table 6.4");

    /// <summary>Bolt to web, m.</summary>
    public double M { get; init; } = Check.Positive(M);
    /// <summary>Bolt to edge, m.</summary>
    public double E { get; init; } = Check.Positive(E);
    /// <summary>Effective length for mode 1, m.</summary>
    public double Length1 { get; init; } = Check.Positive(Length1);
    /// <summary>Effective length for mode 2, m.</summary>
    public double Length2 { get; init; } = Check.Positive(Length2);
    /// <summary>Thickness, m.</summary>
    public double T { get; init; } = Check.Positive(T);
    /// <summary>Yield strength, Pa.</summary>
    public double Fy { get; init; } = Check.Positive(Fy);
    /// <summary>1 or 2.</summary>
    public int Legs { get; init; } = Legs is 1 or 2 ? Legs : throw new ArgumentOutOfRangeException(nameof(Legs), Legs, "must be 1 or 2");

    /// <summary>Width over which head or washer holds the flange down, d_w, m; 0 leaves it out, which is the safe side (method 1 of the table).</summary>
    public double Washer { get; init; }

    /// <summary>Lever of the prying force: n = e_min, at most 1.25 m.</summary>
    public double N => Math.Min(E, 1.25 * M);

    /// <summary>Effective lengths of one bolt a leg, alone on a wide flange or among its neighbours.</summary>
    /// <param name="m">Bolt to web, m.</param>
    /// <param name="e">Bolt to edge, m.</param>
    /// <param name="room">Width of flange that belongs to this bolt, m: the pitch of the bolts, or the width of the plate.</param>
    /// <param name="w">Where to write it down.</param>
    /// <returns>For mode 1 and mode 2, m.</returns>
    public static (double Length1, double Length2) Lengths(double m, double e, double room, Working? w = null)
    {
        double nc = Math.Min(4 * Check.Positive(m) + 1.25 * Check.Positive(e), Check.Positive(room)), one = Math.Min(2 * Math.PI * m, nc);
        w?.Step("l_2", "effective length, no more than what belongs to the bolt", "min(4 m + 1.25 e, b)", nc, Dimension.Length, LengthSource,
            ("m", m, Dimension.Length), ("e", e, Dimension.Length), ("b", room, Dimension.Length));
        w?.Step("l_1", "the same for a flange that yields all round the bolt", "min(2 π m, l_2)", one, Dimension.Length, LengthSource,
            ("m", m, Dimension.Length), ("l_2", nc, Dimension.Length));
        return (one, nc);
    }

    /// <summary>Pull at which the flange yields in mode 1, γ = 1, N.</summary>
    public double Mode1(Working? w = null)
    {
        double Mpl = Plastic(Length1), n = N, ew = Check.NotNegative(Washer) / 4, F = Legs * 2 * Mpl / M;
        w?.Step("M_pl1", "plastic moment of the flange, mode 1", "0.25 l_1 t² f_y", Mpl, Dimension.Moment, Source,
            ("l_1", Length1, Dimension.Length), ("t", T, Dimension.Length), ("f_y", Fy, Dimension.Stress));
        double below = 2 * M * n - ew * (M + n);
        // a washer so wide that it holds the flange up to the web leaves nothing for this formula to bend
        if (ew > 0 && 4 * n > ew && below > 0)
        {
            F = Legs * (4 * n - ew) * Mpl / below;
            w?.Step("F_1", "pull at which the flange yields (method 2)", "c (4 n - e_w) M_pl1 / (2 m n - e_w (m + n))", F, Dimension.Force, Source,
                ("c", Legs, Dimension.Count), ("n", n, Dimension.Length), ("e_w", ew, Dimension.Length), ("M_pl1", Mpl, Dimension.Moment), ("m", M, Dimension.Length));
            return F;
        }

        w?.Step("F_1", "pull at which the flange yields", "2 c M_pl1 / m", F, Dimension.Force, Source,
            ("c", Legs, Dimension.Count), ("M_pl1", Mpl, Dimension.Moment), ("m", M, Dimension.Length));
        return F;
    }

    /// <summary>Pull at which the flange prises the bolts apart in mode 2, N.</summary>
    /// <param name="bolts">Tension resistance of all bolts, both legs, N.</param>
    /// <param name="gammaM0">γ_M0 on the flange.</param>
    /// <param name="gammaM2">γ_M2 on the bolts.</param>
    /// <param name="w">Where to write it down, γ = 1.</param>
    public double Mode2(double bolts, double gammaM0 = 1, double gammaM2 = 1, Working? w = null)
    {
        double Mpl = Plastic(Length2), F = (Legs * Mpl / gammaM0 + N * Check.Positive(bolts) / gammaM2) / (M + N);
        if (w is not null)
        {
            w.Step("M_pl2", "plastic moment of the flange, mode 2", "0.25 l_2 t² f_y", Mpl, Dimension.Moment, Source,
                ("l_2", Length2, Dimension.Length), ("t", T, Dimension.Length), ("f_y", Fy, Dimension.Stress));
            w.Step("F_2", "pull at which the flange prises the bolts apart", "(c M_pl2 + n F_t) / (m + n)", F, Dimension.Force, Source,
                ("c", Legs, Dimension.Count), ("M_pl2", Mpl, Dimension.Moment), ("n", N, Dimension.Length), ("F_t", bolts, Dimension.Force), ("m", M, Dimension.Length));
        }

        return F;
    }

    /// <summary>The mode that gives first, with its design resistance.</summary>
    /// <param name="bolts">Tension resistance of all bolts, γ_M2 = 1, N.</param>
    /// <param name="factors">Factors; γ_M0 and γ_M2 are used.</param>
    public (TStubMode Mode, double Resistance) Design(double bolts, PartialFactors factors)
    {
        double one = Mode1() / factors.M0, two = Mode2(bolts, factors.M0, factors.M2), three = bolts / factors.M2;
        return one <= two && one <= three ? (TStubMode.FlangeYields, one) : two <= three ? (TStubMode.Prying, two) : (TStubMode.BoltsBreak, three);
    }

    /// <summary>Ram force at which flange or bolts give.</summary>
    /// <param name="share">Pull on the T per newton at the ram; zero or a push does not apply.</param>
    /// <param name="bolts">Tension resistance of all its bolts, γ_M2 = 1, N.</param>
    /// <param name="factors">Factors; γ_M0, γ_M2 and γ_F are used.</param>
    /// <param name="w">Where to write it down.</param>
    public Limit? Gives(double share, double bolts, PartialFactors factors, Working? w = null)
    {
        if (!(Check.Finite(share) > 1 / Limit.Farthest))
            return null;
        double one = Mode1(w), two = Mode2(bolts, 1, 1, w);
        double gives = Math.Min(Math.Min(one, two), bolts) / share, design = Design(bolts, factors).Resistance / share;
        if (w is not null)
        {
            Given f = ("f", share, Dimension.Force), ft = ("F_t", bolts, Dimension.Force), f1 = ("F_1", one, Dimension.Force);
            w.Step("F_gives", "ram force at which the weakest of the three modes gives", "min(F_1, F_2, F_t) / f", gives, Dimension.Force, Source,
                f1, ("F_2", two, Dimension.Force), ft, f);
            w.Step("F_Rd", "the same with design resistances",
                "min(F_1 / γ_M0, (c M_pl2 / γ_M0 + n F_t / γ_M2) / (m + n), F_t / γ_M2) / f", design, Dimension.Force, Source,
                f1, ("γ_M0", factors.M0, Dimension.Number), ("c", Legs, Dimension.Count), ("M_pl2", Plastic(Length2), Dimension.Moment),
                ("n", N, Dimension.Length), ft, ("γ_M2", factors.M2, Dimension.Number), ("m", M, Dimension.Length), f);
        }

        return Limit.FromForces(gives, design, factors.Load, w);
    }

    private double Plastic(double l) => 0.25 * l * T * T * Fy;
}
