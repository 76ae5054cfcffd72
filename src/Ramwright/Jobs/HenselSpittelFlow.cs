using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Jobs;

/// <summary>A law of Hensel and Spittel's form, fitted to one steel: σ = A exp(m₁T) ε^m₂ ε̇^m₃ exp(m₄/ε) (1+ε)^(m₅T) exp(m₆ε) ε̇^(m₇T).</summary>
public sealed record HenselSpittelFlow : FlowStress
{
    /// <summary>Fit to a medium-carbon chrome-molybdenum steel of the P20 type.</summary>
    public static readonly HenselSpittelFlow P20 = new()
    {
        A = 5954e6,
        M1 = -3.3576e-3,
        M2 = 0.2641,
        M3 = -0.0868,
        M4 = 2.2688e-4,
        M5 = -4.2163e-4,
        M6 = -0.0561,
        M7 = 2.264e-4,
        Measured = new(1050, 1250, 0.01, 5, 0.7),
        From = new("P. Tize Mha, P. Dhondapure, M. Jahazi, A. Tongne, O. Pantalé, Metals 13 (2023) 633", "coefficients of the Hensel-Spittel law"),
    };

    /// <summary>Strain below which the law, which runs off at nothing, is taken as rising in proportion.</summary>
    public const double LeastStrain = 0.005;

    /// <summary>Coefficient, Pa.</summary>
    public required double A { get; init; }
    /// <summary>Of temperature.</summary>
    public required double M1 { get; init; }
    /// <summary>Of strain.</summary>
    public required double M2 { get; init; }
    /// <summary>Of rate.</summary>
    public required double M3 { get; init; }
    /// <summary>Of one over strain.</summary>
    public required double M4 { get; init; }
    /// <summary>Of strain and temperature.</summary>
    public required double M5 { get; init; }
    /// <summary>Of strain, in the exponent.</summary>
    public required double M6 { get; init; }
    /// <summary>Of rate and temperature.</summary>
    public required double M7 { get; init; }
    /// <summary>Where it was measured.</summary>
    public required FlowRange Measured { get; init; }
    /// <summary>Where the fit comes from.</summary>
    public required Citation From { get; init; }

    /// <inheritdoc/>
    public override string Name => "Hensel-Spittel";
    /// <inheritdoc/>
    public override Citation Source => From;
    /// <inheritdoc/>
    public override FlowRange Range => Measured;

    /// <inheritdoc/>
    protected override double At(double strain, double rate, double temperature, Working? w)
    {
        double ε = Math.Max(strain, LeastStrain), T = temperature;
        double Y = A * Math.Exp(M1 * T) * Math.Pow(ε, M2) * Math.Pow(rate, M3) * Math.Exp(M4 / ε)
            * Math.Pow(1 + ε, M5 * T) * Math.Exp(M6 * ε) * Math.Pow(rate, M7 * T);
        w?.Step("Y", "flow stress",
            "A exp(m_1 T) ε^m_2 v_ε^m_3 exp(m_4 / ε) (1 + ε)^(m_5 T) exp(m_6 ε) v_ε^(m_7 T)", Y, Dimension.Stress, From,
            ("A", A, Dimension.Stress), ("m_1", M1, Dimension.Number), ("T", T, Dimension.Temperature), ("ε", ε, Dimension.Number), ("m_2", M2, Dimension.Number),
            ("v_ε", rate, Dimension.Number), ("m_3", M3, Dimension.Number), ("m_4", M4, Dimension.Number), ("m_5", M5, Dimension.Number),
            ("m_6", M6, Dimension.Number), ("m_7", M7, Dimension.Number));
        return strain < LeastStrain ? Y * strain / LeastStrain : Y;
    }
}
