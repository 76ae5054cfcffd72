using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Jobs;

/// <summary>The hyperbolic sine law of hot working at one strain: ε̇ = A sinhⁿ(ασ) exp(−Q/RT).</summary>
/// <param name="Alpha">α, 1/Pa.</param>
/// <param name="N">Exponent n.</param>
/// <param name="Q">Activation energy, J/mol.</param>
/// <param name="LnA">Natural logarithm of A, A in 1/s.</param>
/// <param name="Measured">Where it was measured.</param>
/// <param name="From">Where the constants come from.</param>
public sealed record SinhFlow(double Alpha, double N, double Q, double LnA, FlowRange Measured, Citation From) : FlowStress
{
    private const double R = 8.314;

    /// <summary>Fit to the measured curves of a P20 type steel at a strain of 0.3.</summary>
    public static readonly SinhFlow P20 = new(0.017e-6, 4.2753, 393_357, 30.466, new(1050, 1250, 0.01, 5, 0.6),
        new Citation("own fit to the measured curves of P. Tize Mha et al., Metals 13 (2023) 633", "strain 0.3"));

    /// <summary>Peak stress by composition; its constants are quoted from memory and doubtful.</summary>
    public static readonly Citation Medina = new("S. F. Medina, C. A. Hernández, Acta Mater. 44 (1996) 137", "peak stress by composition", Standing.FromMemory);

    /// <summary>The law for the peak stress of a carbon-manganese-silicon steel.</summary>
    /// <param name="carbon">Carbon, share of one.</param>
    /// <param name="manganese">Manganese, share of one.</param>
    /// <param name="silicon">Silicon, share of one.</param>
    /// <remarks>Doubtful: the constants are quoted from memory. Its level lies 0.94 to 1.27 times Shida's greatest value.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">A share below zero, or carbon above 0.006.</exception>
    public static SinhFlow ByComposition(double carbon, double manganese, double silicon)
    {
        if (!(carbon >= 0 && carbon <= 0.006))
            Check.Refuse(nameof(carbon), carbon, "0 to 0.006");
        double C = 100 * carbon, Mn = 100 * Check.NotNegative(manganese), Si = 100 * Check.NotNegative(silicon);
        double Q = 267_000 - 2535.52 * C + 1010 * Mn + 33_620.76 * Si;
        double A = (12.19 + 65.54 * C) * Math.Exp(7.076e-5 * Q);
        return new SinhFlow(0.01187e-6, 4.458, Q, Math.Log(A), new(900, 1200, 0.01, 10, 0.7), Medina);
    }

    /// <inheritdoc/>
    public override string Name => "hyperbolic sine";
    /// <inheritdoc/>
    public override Citation Source => From;
    /// <inheritdoc/>
    public override FlowRange Range => Measured;

    /// <inheritdoc/>
    protected override double At(double strain, double rate, double temperature, Working? w)
    {
        double T_K = temperature + 273.15;
        double Z = Math.Exp((Math.Log(rate) + Q / (R * T_K) - LnA) / N);
        double Y = Math.Asinh(Z) / Alpha;
        w?.Step("z", "(Z / A) to the power 1/n", "exp((ln(v_ε) + Q / (8.314 (T + 273.15)) − a) / n)", Z, Dimension.Number, From,
            ("v_ε", rate, Dimension.Number), ("Q", Q, Dimension.Number), ("T", temperature, Dimension.Temperature), ("a", LnA, Dimension.Number), ("n", N, Dimension.Number));
        w?.Step("Y", "flow stress at this law's strain", "ln(z + √(z² + 1)) / α", Y, Dimension.Stress, From, ("z", Z, Dimension.Number), ("α", Alpha, Dimension.Number));
        return Y;
    }
}
