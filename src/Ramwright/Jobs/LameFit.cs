using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Jobs;

/// <summary>A press fit between two thick rings after Lamé.</summary>
public static class LameFit
{
    /// <summary>Pressure of a fit.</summary>
    public static readonly Citation Shigley = new("R. Budynas, K. Nisbett, Shigley's Mechanical Engineering Design", "press and shrink fits", Standing.FromMemory);
    /// <summary>Roughness that is rubbed flat.</summary>
    public static readonly Citation Din7190 = new("DIN 7190-1", "effective interference", Standing.FromMemory);
    /// <summary>Friction when pressing in.</summary>
    public static readonly Citation FrictionSource = Citation.Practice("pressing in steel: 0.12 to 0.15 dry or lightly oiled; size the press for 0.15");
    /// <summary>Bearing ring as a thin hub.</summary>
    public static readonly Citation BearingSource = Citation.Practice("inner ring as a hub whose outside lies a quarter of the way to the outer ring's");
    /// <summary>Force over the length engaged.</summary>
    public static readonly Citation Sliding = Citation.Mechanics("friction over the length that is in");
    /// <summary>Growth by heat.</summary>
    public static readonly Citation Expansion = Citation.Mechanics("growth by heat: α d ΔT, α 12e-6 /K for steel");

    /// <summary>Pressure in the joint, Pa.</summary>
    /// <param name="δ">Interference on the diameter, m, 0 or more.</param>
    /// <param name="d">Diameter of the joint, m.</param>
    /// <param name="D_o">Outside of the hub, m, above d.</param>
    /// <param name="d_i">Bore of the shaft, m, 0 or more, below d.</param>
    /// <param name="E_o">Modulus of the hub, Pa.</param>
    /// <param name="ν_o">Poisson's ratio of the hub.</param>
    /// <param name="E_i">Modulus of the shaft, Pa.</param>
    /// <param name="ν_i">Poisson's ratio of the shaft.</param>
    /// <param name="w">Where to write it down.</param>
    public static double Pressure(double δ, double d, double D_o, double d_i, double E_o, double ν_o, double E_i, double ν_i, Working? w = null)
    {
        Check.NotNegative(δ);
        Check.Positive(d);
        Check.Above(D_o, d);
        Check.NotNegative(d_i);
        Check.Above(d, d_i);
        Check.Positive(E_o);
        Check.Positive(E_i);
        double g_o = ((D_o * D_o + d * d) / (D_o * D_o - d * d) + Check.Finite(ν_o)) / E_o;
        double g_i = ((d * d + d_i * d_i) / (d * d - d_i * d_i) - Check.Finite(ν_i)) / E_i;
        double p = δ / (d * (g_o + g_i));
        if (w is not null)
        {
            w.Step("g_o", "give of the hub, 1/Pa", "((D² + d²) / (D² − d²) + ν_o) / E_o", g_o, Dimension.Number, Shigley,
                ("D", D_o, Dimension.Length), ("d", d, Dimension.Length), ("ν_o", ν_o, Dimension.Number), ("E_o", E_o, Dimension.Stress));
            w.Step("g_i", "give of the shaft, 1/Pa", "((d² + d_i²) / (d² − d_i²) − ν_i) / E_i", g_i, Dimension.Number, Shigley,
                ("d", d, Dimension.Length), ("d_i", d_i, Dimension.Length), ("ν_i", ν_i, Dimension.Number), ("E_i", E_i, Dimension.Stress));
            w.Step("p", "pressure in the joint", "δ / (d (g_o + g_i))", p, Dimension.Stress, Shigley,
                ("δ", δ, Dimension.Length), ("d", d, Dimension.Length), ("g_o", g_o, Dimension.Number), ("g_i", g_i, Dimension.Number));
        }

        return p;
    }

    /// <summary>Force to slide, N: μ p π d x.</summary>
    public static double Force(double μ, double p, double d, double x, Working? w = null)
    {
        double F = Check.NotNegative(μ) * Check.NotNegative(p) * Math.PI * Check.Positive(d) * Check.NotNegative(x);
        w?.Step("F", "force with the joint fully in", "μ p π d x", F, Dimension.Force, Sliding,
            ("μ", μ, Dimension.Number), ("p", p, Dimension.Stress), ("d", d, Dimension.Length), ("x", x, Dimension.Length));
        return F;
    }

    /// <summary>Hoop stress at the hub's bore, Pa: p (D² + d²)/(D² − d²).</summary>
    public static double HubHoop(double p, double d, double D_o, Working? w = null)
    {
        double σ = Check.NotNegative(p) * (D_o * D_o + d * d) / (D_o * D_o - d * d);
        w?.Step("σ_t", "hoop stress at the hub's bore", "p (D² + d²) / (D² − d²)", σ, Dimension.Stress, Shigley, ("p", p, Dimension.Stress), ("D", D_o, Dimension.Length), ("d", d, Dimension.Length));
        return σ;
    }

    /// <summary>Hoop stress at the bore of a hollow shaft or bush, Pa, compression negative: −2p d²/(d² − d_i²).</summary>
    public static double BushHoop(double p, double d, double d_i) => -2 * Check.NotNegative(p) * d * d / (d * d - d_i * d_i);

    /// <summary>How much the bore of a bush closes, m on the diameter: the hoop strain at its bore.</summary>
    public static double BoreCloses(double p, double d, double d_i, double E_i) => -BushHoop(p, d, d_i) / Check.Positive(E_i) * d_i;

    /// <summary>How much hotter the hub must be than the shaft, K: (δ + clearance)/(α d).</summary>
    /// <param name="δ">Interference, m.</param>
    /// <param name="clearance">Play to slide it on with, m.</param>
    /// <param name="d">Diameter, m.</param>
    /// <param name="α">Expansion, 1/K.</param>
    /// <param name="w">Where to write it down.</param>
    public static double ShrinkBy(double δ, double clearance, double d, double α = 12e-6, Working? w = null)
    {
        double ΔT = (Check.NotNegative(δ) + Check.NotNegative(clearance)) / (Check.Positive(α) * Check.Positive(d));
        w?.Step("T_d", "how much hotter the hub must be", "(δ + c) / (α d)", ΔT, Dimension.Number, Expansion,
            ("δ", δ, Dimension.Length), ("c", clearance, Dimension.Length), ("α", α, Dimension.Number), ("d", d, Dimension.Length));
        return ΔT;
    }

    /// <summary>Interference less what is rubbed flat, m: δ − 0.8 (Rz_i + Rz_o), 0 or more.</summary>
    public static double Effective(double δ, double Rz_i, double Rz_o) => Math.Max(0, δ - 0.8 * (Check.NotNegative(Rz_i) + Check.NotNegative(Rz_o)));

    /// <summary>A bearing's inner ring as a hub: its outside, m, and the interference left of δ, m: δ d/(d + 2 mm).</summary>
    public static (double Outside, double Interference) BearingRing(double d, double D_o, double δ) =>
        (d + (Check.Above(D_o, Check.Positive(d)) - d) / 4, Check.NotNegative(δ) * d / (d + 2e-3));

    /// <summary>Modulus, Pa, and Poisson's ratio of what a fit is made of.</summary>
    public static (double E, double ν) Of(Presses.FitMetal metal) => metal switch
    {
        Presses.FitMetal.Steel => (207e9, 0.30),
        Presses.FitMetal.Bronze => (110e9, 0.34),
        Presses.FitMetal.CastIron => (100e9, 0.26),
        _ => (70e9, 0.33),
    };
}
