using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Measuring;

/// <summary>A result by drawing its inputs many times: the check on <see cref="Uncertainty"/> that needs no first order.</summary>
/// <param name="Value">Mean of the results.</param>
/// <param name="U">Their standard deviation.</param>
/// <param name="Low">Lower end of the interval that leaves as much below it as above its upper end.</param>
/// <param name="High">Its upper end.</param>
/// <param name="Level">Level of confidence of the interval.</param>
/// <param name="Trials">How often it was drawn.</param>
/// <param name="Settled">Whether it was drawn until its figures stood still to the tolerance asked for.</param>
public sealed record MonteCarlo(double Value, double U, double Low, double High, double Level, int Trials, bool Settled)
{
    /// <summary>Propagation of distributions.</summary>
    public static readonly Citation Source = new("JCGM 101:2008", "clause 7, adaptive procedure 7.9");

    /// <summary>Whether it may be held against the law of propagation, and how.</summary>
    public static readonly Citation Validation = new("JCGM 101:2008", "clause 8");

    private const int Block = 10_000;

    /// <summary>The same with its interval widened about its middle.</summary>
    /// <param name="by">Factor, above zero.</param>
    public MonteCarlo Widened(double by)
    {
        double middle = (Low + High) / 2, half = Check.Positive(by) * (High - Low) / 2;
        return this with { Low = middle - half, High = middle + half };
    }

    /// <summary>Standard error of the mean, from the number of trials.</summary>
    public double ErrorOfValue => U / Math.Sqrt(Trials);

    /// <summary>Standard error of the standard deviation, as for a normal distribution.</summary>
    public double ErrorOfU => U / Math.Sqrt(2.0 * Trials);

    /// <summary>Draws a result's inputs until its mean, deviation and interval stand still.</summary>
    /// <param name="model">How the result comes from the inputs.</param>
    /// <param name="inputs">The inputs. Those with few degrees of freedom are drawn from Student's distribution (JCGM 101, 6.4.9); those that go together from a normal one of several.</param>
    /// <param name="correlations">Which go together.</param>
    /// <param name="level">Level of confidence.</param>
    /// <param name="digits">Significant figures of u that are to stand still: 1 or 2.</param>
    /// <param name="most">Trials to stop at whatever happens; at least 20,000.</param>
    /// <param name="seed">Which row of numbers.</param>
    /// <param name="student">Whether inputs of few degrees of freedom are drawn from Student's distribution; else from the normal one, and the caller widens the interval.</param>
    public static MonteCarlo Of(
        MeasurementModel model, IReadOnlyList<UncertainInput> inputs, IReadOnlyList<Correlation>? correlations = null,
        double level = StudentT.TwoSigma, int digits = 2, int most = 1_000_000, ulong seed = 1, bool student = true)
    {
        ArgumentNullException.ThrowIfNull(model);
        ArgumentNullException.ThrowIfNull(inputs);
        var draws = new SeededDraws(seed);
        double[,] factor = CorrelationFactor.Of(inputs.Count, correlations ?? []);
        bool[] together = Together(inputs.Count, correlations ?? []);
        double[] all = new double[Math.Max(2 * Block, most / Block * Block)], x = new double[inputs.Count], z = new double[inputs.Count];
        int blocks = all.Length / Block, done = 0;
        // mean, deviation, low and high of each block
        double[][] each = [new double[blocks], new double[blocks], new double[blocks], new double[blocks]];
        double[] sorted = new double[Block];
        bool settled = false;
        while (done < blocks && !settled)
        {
            Span<double> block = all.AsSpan(done * Block, Block);
            for (int t = 0; t < Block; t++)
                block[t] = model(Draw(inputs, draws, factor, together, student, x, z));
            block.CopyTo(sorted);
            Array.Sort(sorted);
            (each[0][done], each[1][done]) = MeanAndDeviation(block);
            (each[2][done], each[3][done]) = Middle(sorted, level);
            done++;
            settled = done > 1 && Still(each, done, MeanAndDeviation(all.AsSpan(0, done * Block)).U, digits);
        }

        Span<double> drawn = all.AsSpan(0, done * Block);
        (double value, double u) = MeanAndDeviation(drawn);
        drawn.Sort();
        (double low, double high) = Middle(drawn, level);
        return new MonteCarlo(Check.Finite(value, "result"), u, low, high, level, drawn.Length, settled);
    }

    /// <summary>How far the ends of both intervals lie apart, and whether that is within the numerical tolerance of u.</summary>
    /// <param name="analytic">The result by the law of propagation.</param>
    /// <param name="digits">Significant figures of u that count: 1 or 2.</param>
    public (double Low, double High, double Tolerance, bool Agree) Against(Uncertainty analytic, int digits = 1)
    {
        ArgumentNullException.ThrowIfNull(analytic);
        double low = Math.Abs(analytic.Low - Low), high = Math.Abs(analytic.High - High), tolerance = Tolerance(analytic.Combined, digits);
        return (low, high, tolerance, low <= tolerance && high <= tolerance);
    }

    /// <summary>Numerical tolerance δ of an uncertainty written with so many figures: half a unit of the last.</summary>
    /// <param name="u">Standard uncertainty, 0 or more.</param>
    /// <param name="digits">1 or 2.</param>
    /// <remarks>JCGM 101:2008, 7.9.2.</remarks>
    public static double Tolerance(double u, int digits)
    {
        if (!(u > 0))
            return 0;
        int l = (int)Math.Floor(Math.Log10(u)) - (digits - 1);
        // 0.996 with two figures is 1.0, one decade up
        if (Math.Round(u / Math.Pow(10, l)) >= Math.Pow(10, digits))
            l++;
        return 0.5 * Math.Pow(10, l);
    }

    private static bool Still(double[][] each, int h, double u, int digits)
    {
        double tolerance = Tolerance(u, digits);
        foreach (double[] figure in each)
        {
            // twice the standard error of the mean of the blocks
            if (2 * MeanAndDeviation(figure.AsSpan(0, h)).U / Math.Sqrt(h) > tolerance)
                return false;
        }

        return true;
    }

    private static ReadOnlySpan<double> Draw(
        IReadOnlyList<UncertainInput> inputs, SeededDraws draws, double[,] factor, bool[] together, bool student, double[] x, double[] z)
    {
        for (int i = 0; i < x.Length; i++)
        {
            if (together[i])
                z[i] = draws.Normal();
        }

        for (int i = 0; i < x.Length; i++)
        {
            Estimate e = inputs[i].Estimate;
            double off = 0;
            if (together[i])
            {
                for (int j = 0; j <= i; j++)
                    off += factor[i, j] * z[j];
            }
            else
            {
                off = e.Spread switch
                {
                    Spread.Rectangular => Math.Sqrt(3) * (2 * draws.Even() - 1),
                    Spread.Triangular => Math.Sqrt(6) * (draws.Even() + draws.Even() - 1),
                    _ => double.IsInfinity(e.Dof) || !student ? draws.Normal() : draws.Student(e.Dof),
                };
            }

            x[i] = e.Value + e.U * off;
        }

        return x;
    }

    private static bool[] Together(int n, IReadOnlyList<Correlation> correlations)
    {
        var together = new bool[n];
        foreach ((int a, int b, double r) in correlations)
            together[a] = together[b] = together[a] || together[b] || r != 0;
        return together;
    }

    private static (double Mean, double U) MeanAndDeviation(ReadOnlySpan<double> values)
    {
        double mean = 0, sum = 0;
        foreach (double v in values)
            mean += v / values.Length;
        foreach (double v in values)
            sum += (v - mean) * (v - mean);
        return (mean, Math.Sqrt(sum / (values.Length - 1)));
    }

    private static (double Low, double High) Middle(ReadOnlySpan<double> sorted, double level)
    {
        int q = (int)Math.Round(level * sorted.Length), r = (sorted.Length - q) / 2;
        return (sorted[r], sorted[Math.Min(sorted.Length - 1, r + q)]);
    }
}
