using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Jobs;

/// <summary>Shida's formula for the flow stress of plain carbon steels.</summary>
/// <remarks>
/// It has no alloy terms and no softening by recrystallisation: on slow squeezes above 1000 °C it is high once the strain is large. Its factor for the
/// strain falls again beyond about 0.5; the greatest value is held there. The steel weakens below its change to ferrite: mild
/// steel at 800 °C is softer than at 900 °C, which is real.
/// </remarks>
public sealed record ShidaFlow : FlowStress
{
    /// <summary>The formula.</summary>
    public static readonly Citation Shida = new("S. Shida, J. Japan Soc. Technol. Plasticity 10 (1969) 610", "empirical formula for carbon steels", Standing.FromMemory);

    /// <summary>What turns a plain steel's stress into that of an alloyed one.</summary>
    public static readonly Citation AlloySource = Citation.Practice("measured flow stress of a Cr-Mo steel (Tize Mha et al., Metals 13 (2023) 633) over Shida's formula");

    /// <summary>Least and greatest carbon, share of one.</summary>
    public const double LeastCarbon = 0.0007, MostCarbon = 0.012;

    private static readonly FlowRange Measured = new(700, 1200, 0.1, 100, 0.7);

    /// <summary>A steel by its carbon.</summary>
    /// <param name="carbon">Carbon by mass, share of one, 0.0007 to 0.012.</param>
    /// <param name="alloy">Flow stress over that of plain steel of the same carbon, 1 for plain steel.</param>
    /// <exception cref="ArgumentOutOfRangeException">Carbon outside the formula's range, or a factor that is not above zero.</exception>
    public ShidaFlow(double carbon, double alloy = 1)
    {
        if (!(carbon >= LeastCarbon && carbon <= MostCarbon))
            Check.Refuse(nameof(carbon), carbon, "0.0007 to 0.012 (0.07 to 1.2 %), where the formula was measured");
        Carbon = carbon;
        Alloy = Check.Positive(alloy);
    }

    /// <summary>Carbon, share of one.</summary>
    public double Carbon { get; }
    /// <summary>Flow stress over that of plain steel.</summary>
    public double Alloy { get; }

    /// <inheritdoc/>
    public override string Name => "Shida";
    /// <inheritdoc/>
    public override Citation Source => Shida;
    /// <inheritdoc/>
    public override FlowRange Range => Measured;

    private double C => Carbon * 100;
    private double N => 0.41 - 0.07 * C;

    /// <inheritdoc/>
    /// <remarks>Where 1.3 (ε/0.2)ⁿ − 0.3 (ε/0.2) is greatest, if that is inside the range.</remarks>
    public override double HeldFrom => Math.Min(Measured.MostStrain, 0.2 * Math.Pow(1.3 * N / 0.3, 1 / (1 - N)));

    /// <summary>Temperature at which the two branches meet, °C: below it ferrite softens the steel.</summary>
    public double BranchChange => 950 * (C + 0.41) / (C + 0.32) - 273;

    /// <summary>The strain's factor f.</summary>
    public double StrainFactor(double strain) => 1.3 * Math.Pow(Check.NotNegative(strain) / 0.2, N) - 0.3 * (strain / 0.2);

    /// <summary>Mean of the strain's factor over the strain from nothing, as printed: not held beyond its greatest value.</summary>
    public double MeanStrainFactor(double strain) => 1.3 / (N + 1) * Math.Pow(Check.Positive(strain) / 0.2, N) - 0.15 * (strain / 0.2);

    /// <summary>Exponent of the strain rate.</summary>
    /// <param name="temperature">°C.</param>
    public double RateExponent(double temperature)
    {
        double t = (temperature + 273) / 1000;
        return temperature >= BranchChange
            ? (-0.019 * C + 0.126) * t + (0.075 * C - 0.05)
            : (0.081 * C - 0.154) * t - 0.019 * C + 0.207 + 0.027 / (C + 0.32);
    }

    /// <summary>The base stress σ_f, as printed, kgf/mm².</summary>
    /// <param name="temperature">°C.</param>
    /// <param name="hot">Which branch.</param>
    internal double BaseStress(double temperature, bool hot)
    {
        double t = (temperature + 273) / 1000;
        if (hot)
            return 0.28 * Math.Exp(5 / t - 0.01 / (C + 0.05));
        double off = t - 0.95 * (C + 0.49) / (C + 0.42);
        double g = 30 * (C + 0.9) * off * off + (C + 0.06) / (C + 0.09);
        return 0.28 * g * Math.Exp((C + 0.32) / (0.19 * (C + 0.41)) - 0.01 / (C + 0.05));
    }

    /// <inheritdoc/>
    public override double Mean(double strain, double rate, double temperature)
    {
        Check.Positive(strain);
        double at = Held(HeldFrom, rate, temperature) / StrainFactor(HeldFrom);
        if (strain <= HeldFrom)
            return at * MeanStrainFactor(strain);
        return at * (MeanStrainFactor(HeldFrom) * HeldFrom + StrainFactor(HeldFrom) * (strain - HeldFrom)) / strain;
    }

    /// <inheritdoc/>
    protected override double At(double strain, double rate, double temperature, Working? w)
    {
        bool hot = temperature >= BranchChange;
        double f = StrainFactor(strain), m = RateExponent(temperature), σ_f = BaseStress(temperature, hot);
        double Y = Alloy * 9.80665e6 * σ_f * f * Math.Pow(rate / 10, m);
        if (w is not null)
            Write(w, strain, rate, temperature, hot, f, m, σ_f, Y);
        return Y;
    }

    private void Write(Working w, double strain, double rate, double temperature, bool hot, double f, double m, double σ_f, double Y)
    {
        const Dimension number = Dimension.Number;
        double t = w.Step("t", "temperature in thousands of kelvin", "(T + 273) / 1000", (temperature + 273) / 1000, number, Shida, ("T", temperature, Dimension.Temperature));
        double n = w.Step("n", "exponent of the strain, C in per cent", "0.41 − 0.07 C", N, number, Shida, ("C", C, number));
        w.Step("f", "factor of the strain", "1.3 (ε / 0.2)^n − 0.3 (ε / 0.2)", f, number, Shida, ("ε", strain, number), ("n", n, number));
        if (hot)
        {
            w.Step("m", "exponent of the strain rate, austenite", "(−0.019 C + 0.126) t + (0.075 C − 0.05)", m, number, Shida, ("C", C, number), ("t", t, number));
            w.Step("σ_f", "base stress, austenite, kgf/mm²", "0.28 exp(5 / t − 0.01 / (C + 0.05))", σ_f, number, Shida, ("t", t, number), ("C", C, number));
        }
        else
        {
            double off = t - 0.95 * (C + 0.49) / (C + 0.42);
            double g = w.Step("g", "factor below the change to ferrite", "30 (C + 0.9) (t − 0.95 (C + 0.49) / (C + 0.42))² + (C + 0.06) / (C + 0.09)",
                30 * (C + 0.9) * off * off + (C + 0.06) / (C + 0.09), number, Shida, ("C", C, number), ("t", t, number));
            w.Step("m", "exponent of the strain rate, with ferrite", "(0.081 C − 0.154) t − 0.019 C + 0.207 + 0.027 / (C + 0.32)", m, number, Shida, ("C", C, number), ("t", t, number));
            w.Step("σ_f", "base stress, with ferrite, kgf/mm²", "0.28 g exp((C + 0.32) / (0.19 (C + 0.41)) − 0.01 / (C + 0.05))", σ_f, number, Shida, ("g", g, number), ("C", C, number));
        }

        if (Alloy == 1)
        {
            w.Step("Y", "flow stress", "9806650 σ_f f (v_ε / 10)^m", Y, Dimension.Stress, Shida,
                ("σ_f", σ_f, number), ("f", f, number), ("v_ε", rate, number), ("m", m, number));
        }
        else
        {
            w.Take("k_a", "flow stress of the alloyed steel over the plain one", Alloy, number, AlloySource);
            w.Step("Y", "flow stress", "k_a 9806650 σ_f f (v_ε / 10)^m", Y, Dimension.Stress, Shida,
                ("k_a", Alloy, number), ("σ_f", σ_f, number), ("f", f, number), ("v_ε", rate, number), ("m", m, number));
        }
    }
}
