using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Jobs;

/// <summary>Misaka and Yoshimoto's formula for plain carbon steels in fast rolling: a second opinion, and a fast one; a press is slower than its range.</summary>
public sealed record MisakaFlow : FlowStress
{
    /// <summary>The formula.</summary>
    public static readonly Citation Misaka = new("Y. Misaka, T. Yoshimoto, J. Japan Soc. Technol. Plasticity 8 (1967) 414", "", Standing.FromMemory);

    private static readonly FlowRange Measured = new(750, 1200, 30, 200, 0.5);

    /// <summary>A steel by its carbon.</summary>
    /// <param name="carbon">Carbon by mass, share of one, up to 0.012.</param>
    /// <exception cref="ArgumentOutOfRangeException">Carbon outside the formula's range.</exception>
    public MisakaFlow(double carbon)
    {
        if (!(carbon >= 0 && carbon <= 0.012))
            Check.Refuse(nameof(carbon), carbon, "0 to 0.012, where the formula was measured");
        Carbon = carbon;
    }

    /// <summary>Carbon, share of one.</summary>
    public double Carbon { get; }
    /// <inheritdoc/>
    public override string Name => "Misaka and Yoshimoto";
    /// <inheritdoc/>
    public override Citation Source => Misaka;
    /// <inheritdoc/>
    public override FlowRange Range => Measured;

    /// <summary>The formula at any rate, Pa: below its range it is for comparing only.</summary>
    public double Formula(double strain, double rate, double temperature) =>
        At(Check.NotNegative(strain), Check.Positive(rate), Check.Above(temperature, -273), null);

    /// <inheritdoc/>
    protected override double At(double strain, double rate, double temperature, Working? w)
    {
        double C = Carbon * 100, T_K = temperature + 273;
        double Y = 9.80665e6 * Math.Exp(0.126 - 1.75 * C + 0.594 * C * C + (2851 + 2968 * C - 1120 * C * C) / T_K)
            * Math.Pow(strain, 0.21) * Math.Pow(rate, 0.13);
        w?.Step("Y", "flow stress", "9806650 exp(0.126 − 1.75 C + 0.594 C² + (2851 + 2968 C − 1120 C²) / (T + 273)) ε^0.21 v_ε^0.13", Y, Dimension.Stress, Misaka,
            ("C", C, Dimension.Number), ("T", temperature, Dimension.Temperature), ("ε", strain, Dimension.Number), ("v_ε", rate, Dimension.Number));
        return Y;
    }
}
