using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Measuring;

/// <summary>A result with its combined and expanded uncertainty, and the budget they come from.</summary>
public sealed record Uncertainty
{
    /// <summary>Law of propagation.</summary>
    public static readonly Citation Propagation = new("JCGM 100:2008 (GUM)", "5.1.2 eq. 10, 5.2.2 eq. 13");

    /// <summary>Effective degrees of freedom.</summary>
    public static readonly Citation Welch = new("JCGM 100:2008 (GUM)", "G.4.1 eq. G.2b (Welch-Satterthwaite)");

    /// <summary>The result, SI.</summary>
    public required double Value { get; init; }
    /// <summary>Combined standard uncertainty u_c, SI.</summary>
    public required double Combined { get; init; }
    /// <summary>Effective degrees of freedom; infinite where all uncertainties are taken as known.</summary>
    public required double EffectiveDof { get; init; }
    /// <summary>Level of confidence p.</summary>
    public required double Level { get; init; }
    /// <summary>Coverage factor k.</summary>
    public required double Coverage { get; init; }
    /// <summary>The budget, the greatest contribution first.</summary>
    public required IReadOnlyList<BudgetLine> Budget { get; init; }
    /// <summary>The inputs in the order of the model.</summary>
    public required IReadOnlyList<UncertainInput> Inputs { get; init; }
    /// <summary>Which inputs go together.</summary>
    public required IReadOnlyList<Correlation> Correlations { get; init; }

    /// <summary>Expanded uncertainty U = k u_c, SI.</summary>
    public double Expanded => Coverage * Combined;
    /// <summary>Lower end of the interval.</summary>
    public double Low => Value - Expanded;
    /// <summary>Upper end of the interval.</summary>
    public double High => Value + Expanded;

    /// <summary>The contributions put together by what they come from, the greatest first: which to improve first.</summary>
    public IReadOnlyList<(string From, double Share)> BySource =>
        [.. Budget.GroupBy(b => b.Input.From, StringComparer.Ordinal).Select(g => (g.Key, g.Sum(b => b.Share))).OrderByDescending(s => s.Item2).ThenBy(s => s.Key, StringComparer.Ordinal)];

    /// <summary>Combines the uncertainties of inputs by the law of propagation, to first order.</summary>
    /// <param name="model">How the result comes from the inputs.</param>
    /// <param name="inputs">The inputs.</param>
    /// <param name="correlations">Which of them go together; left out, none.</param>
    /// <param name="level">Level of confidence; that of k = 2 of a normal distribution unless said.</param>
    /// <param name="w">Where to show the working.</param>
    /// <param name="dimension">What the result measures, for the working.</param>
    /// <remarks>
    /// Sensitivities are central differences over ±u of each input. Where the result bends strongly over that reach, first order is not
    /// enough: <see cref="MonteCarlo"/> tells. Degrees of freedom of inputs that go together are not those of the Welch-Satterthwaite formula, which
    /// takes independent ones: each such group counts as one input with the fewest degrees of freedom among it.
    /// </remarks>
    /// <exception cref="ArgumentException">No inputs, or correlations that cannot be.</exception>
    public static Uncertainty Of(
        MeasurementModel model, IReadOnlyList<UncertainInput> inputs, IReadOnlyList<Correlation>? correlations = null,
        double level = StudentT.TwoSigma, Working? w = null, Dimension dimension = Dimension.Number)
    {
        ArgumentNullException.ThrowIfNull(model);
        ArgumentNullException.ThrowIfNull(inputs);
        if (inputs.Count == 0)
            throw new ArgumentException("nothing to work a result out from", nameof(inputs));
        correlations ??= [];
        int n = inputs.Count;
        double[] x = [.. inputs.Select(i => i.Estimate.Value)], c = new double[n];
        double y = Check.Finite(model(x), "result");
        for (int i = 0; i < n; i++)
            c[i] = Slope(model, x, i, inputs[i].Estimate.U);

        double[] part = new double[n];      // what each input brings into the variance, its half of each pair with it
        for (int i = 0; i < n; i++)
            part[i] = Square(c[i] * inputs[i].Estimate.U);
        foreach ((int a, int b, double r) in correlations)
        {
            if (!(Math.Abs(r) <= 1) || a == b || (uint)a >= (uint)n || (uint)b >= (uint)n)
                throw new ArgumentException($"inputs {a} and {b} cannot go together by {r}", nameof(correlations));
            double shared = c[a] * c[b] * inputs[a].Estimate.U * inputs[b].Estimate.U * r;
            part[a] += shared;
            part[b] += shared;
        }

        double variance = Math.Max(0, part.Sum()), u = Math.Sqrt(variance);
        double dof = Effective(part, inputs, correlations, variance);
        double k = StudentT.Coverage(level, Whole(dof));
        Show(w, y, u, k, dof, inputs, c, correlations, dimension);
        return new Uncertainty
        {
            Value = y,
            Combined = u,
            EffectiveDof = dof,
            Level = level,
            Coverage = k,
            Inputs = inputs,
            Correlations = correlations,
            Budget =
            [
                .. Enumerable.Range(0, n)
                    .Select(i => new BudgetLine(inputs[i], c[i], Math.Abs(c[i]) * inputs[i].Estimate.U, variance > 0 ? part[i] / variance : 0))
                    .OrderByDescending(b => b.Contribution),
            ],
        };
    }

    /// <summary>Degrees of freedom as the table is entered with: the next lower whole number, at least one.</summary>
    internal static double Whole(double dof) => double.IsInfinity(dof) ? dof : Math.Max(1, Math.Floor(dof + 1e-9));

    private static double Slope(MeasurementModel model, double[] x, int i, double u)
    {
        double at = x[i], step = u > 0 ? u : Math.Max(Math.Abs(at), 1) * 1e-6;
        x[i] = at + step;
        double up = model(x);
        x[i] = at - step;
        double down = model(x);
        x[i] = at;
        return Check.Finite((up - down) / (2 * step), "sensitivity");
    }

    private static double Effective(double[] part, IReadOnlyList<UncertainInput> inputs, IReadOnlyList<Correlation> correlations, double variance)
    {
        int n = part.Length;
        int[] group = [.. Enumerable.Range(0, n)];
        foreach ((int a, int b, double r) in correlations)
        {
            if (r == 0)
                continue;
            int from = group[b], to = group[a];
            for (int i = 0; i < n; i++)
            {
                if (group[i] == from)
                    group[i] = to;
            }
        }

        double sum = 0;
        for (int g = 0; g < n; g++)
        {
            double together = 0, least = double.PositiveInfinity;
            for (int i = 0; i < n; i++)
            {
                if (group[i] != g)
                    continue;
                together += part[i];
                least = Math.Min(least, inputs[i].Estimate.Dof);
            }

            if (!double.IsInfinity(least))
                sum += together * together / least;
        }

        return sum > 0 ? variance * variance / sum : double.PositiveInfinity;
    }

    private static void Show(
        Working? w, double y, double u, double k, double dof, IReadOnlyList<UncertainInput> inputs, double[] c, IReadOnlyList<Correlation> correlations, Dimension dimension)
    {
        if (w is null)
            return;
        for (int i = 0; i < inputs.Count; i++)
        {
            w.Step($"u_{i + 1}", $"what {inputs[i].Symbol} brings: {inputs[i].Meaning}", "abs(c) u", Math.Abs(c[i]) * inputs[i].Estimate.U, dimension, Propagation,
                ("c", c[i], Dimension.Number), ("u", inputs[i].Estimate.U, inputs[i].Dimension));
        }

        if (correlations.Count == 0)
        {
            Given[] each = [.. inputs.Select((x, i) => new Given($"u_{i + 1}", Math.Abs(c[i]) * x.Estimate.U, dimension))];
            w.Step("u_c", "combined standard uncertainty", "√(" + string.Join(" + ", each.Select(g => g.Symbol + "²")) + ")", u, dimension, Propagation, each);
        }
        else
        {
            foreach ((int a, int b, double r) in correlations)
                w.Note($"{inputs[a].Symbol} and {inputs[b].Symbol} go together, r = {Readout.Number(r)}: their product counts twice in the variance.");
            w.Take("u_c", "combined standard uncertainty, what goes together counted", u, dimension, Propagation);
        }

        if (!double.IsInfinity(dof))
            w.Take("ν_eff", "effective degrees of freedom", dof, Dimension.Number, Welch);
        w.Take("y", "the result", y, dimension, Propagation);
        w.Step("U", "expanded uncertainty", "k u_c", k * u, dimension, StudentT.Source, ("k", k, Dimension.Number), ("u_c", u, dimension));
    }

    private static double Square(double x) => x * x;
}
