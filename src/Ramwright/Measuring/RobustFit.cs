using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Measuring;

/// <summary>A curve of two parameters through points of which some may be wrong.</summary>
/// <remarks>
/// An MM-estimate: first the curve through two of the points about which all lie closest by an S-estimate of scale, which up to half of them being wrong
/// does not upset; then, with that scale kept, Tukey's biweight. What lies beyond <see cref="NamedBeyond"/> scales is named as an outlier and never
/// quietly dropped: it is handed back by its place. The uncertainties are those of least squares through the points that are not named.
/// </remarks>
public sealed record RobustFit
{
    /// <summary>The estimator.</summary>
    public static readonly Citation Source = new("V. J. Yohai, High breakdown-point and high efficiency robust estimates for regression, Ann. Statist. 15 (1987)", "MM-estimates", Standing.FromMemory);

    /// <summary>A point so many scales off the curve is named.</summary>
    public const double NamedBeyond = 4.0;

    private const double TuneS = 1.54764, TuneM = 4.685;

    /// <summary>First parameter.</summary>
    public required double P { get; init; }
    /// <summary>Second parameter.</summary>
    public required double Q { get; init; }
    /// <summary>Standard uncertainty of the first.</summary>
    public required double UP { get; init; }
    /// <summary>Standard uncertainty of the second.</summary>
    public required double UQ { get; init; }
    /// <summary>Correlation of the two.</summary>
    public required double R { get; init; }
    /// <summary>Scatter about the curve, of the points that are not named.</summary>
    public required double Scatter { get; init; }
    /// <summary>Places of the points named as outliers.</summary>
    public required IReadOnlyList<int> Outliers { get; init; }
    /// <summary>How far each point lies off the curve.</summary>
    public required IReadOnlyList<double> Residuals { get; init; }
    /// <summary>The family of curves.</summary>
    public required TwoPointCurve Curve { get; init; }

    /// <summary>Degrees of freedom: points not named, less two.</summary>
    public int Dof => Residuals.Count - Outliers.Count - 2;

    /// <summary>Height of the curve.</summary>
    /// <param name="x">Where.</param>
    public double At(double x) => Curve.Value(x, P, Q);

    /// <summary>Standard uncertainty of the curve itself at a place, to first order.</summary>
    /// <param name="x">Where.</param>
    public double UAt(double x)
    {
        (double dp, double dq) = Gradient(Curve, x, P, Q);
        return Math.Sqrt(Math.Max(0, Square(dp * UP) + Square(dq * UQ) + 2 * dp * dq * R * UP * UQ));
    }

    /// <summary>Fits.</summary>
    /// <param name="x">Where the points stand, four or more.</param>
    /// <param name="y">Their heights.</param>
    /// <param name="curve">The family of curves.</param>
    /// <param name="least">A scatter that is at least there, as that of reading the instruments: spares a point from being named because all others happen to agree.</param>
    /// <param name="relative">Whether each height is known to the same share of itself, not to the same amount; heights must then be above zero.</param>
    /// <returns>The fit, or null where no curve of the family can be laid through.</returns>
    public static RobustFit? Of(IReadOnlyList<double> x, IReadOnlyList<double> y, TwoPointCurve curve, double least = 0, bool relative = false)
    {
        ArgumentNullException.ThrowIfNull(x);
        ArgumentNullException.ThrowIfNull(y);
        ArgumentNullException.ThrowIfNull(curve);
        int n = x.Count;
        if (n < 4 || y.Count != n || relative && y.Any(v => !(v > 0)))
            return null;
        // points are weighed by what they are known to: a share of each height, about the mean of them
        double mean = y.Average();
        double[] known = [.. y.Select(v => relative ? v / mean : 1)];
        return Fit(new Points(x, y, known), curve, least);
    }

    /// <summary>Points, and how well each is known beside the others.</summary>
    private sealed record Points(IReadOnlyList<double> X, IReadOnlyList<double> Y, double[] Known)
    {
        public int Count => X.Count;

        /// <summary>How far a point lies off a curve, in the measure that all share.</summary>
        public double Off(int i, TwoPointCurve curve, double p, double q) => (Y[i] - curve.Value(X[i], p, q)) / Known[i];
    }

    private static RobustFit? Fit(Points at, TwoPointCurve curve, double least)
    {
        (IReadOnlyList<double> x, IReadOnlyList<double> y, _) = at;
        int n = at.Count;
        if (Start(at, curve) is not var (p, q, scale))
            return null;
        // with few points the S-scale reads low: it is raised for the two parameters that were fitted
        scale = Math.Max(scale * n / (n - 2.0), Math.Max(least, 1e-9 * y.Max(Math.Abs)));
        var weights = new double[n];
        for (int turn = 0; turn < 50; turn++)
        {
            for (int i = 0; i < n; i++)
                weights[i] = Biweight(at.Off(i, curve, p, q) / (TuneM * scale));
            if (Step(at, weights, curve, ref p, ref q) < 1e-10)
                break;
        }

        int[] named = [.. Enumerable.Range(0, n).Where(i => Math.Abs(at.Off(i, curve, p, q)) > NamedBeyond * scale)];
        return n - named.Length < 3 ? null : Finish(at, curve, p, q, named);
    }

    /// <summary>Least squares through what is not named, with its covariance.</summary>
    private static RobustFit? Finish(Points at, TwoPointCurve curve, double p, double q, int[] named)
    {
        (IReadOnlyList<double> x, IReadOnlyList<double> y, double[] known) = at;
        int n = at.Count, kept = n - named.Length;
        double[] weights = [.. Enumerable.Range(0, n).Select(i => named.Contains(i) ? 0.0 : 1.0)];
        for (int turn = 0; turn < 50 && Step(at, weights, curve, ref p, ref q) > 1e-12; turn++)
        {
        }

        double a = 0, b = 0, c = 0, rest = 0;
        double[] residuals = new double[n];
        for (int i = 0; i < n; i++)
        {
            residuals[i] = y[i] - curve.Value(x[i], p, q);
            (double dp, double dq) = Gradient(curve, x[i], p, q);
            double weight = weights[i] / (known[i] * known[i]);
            a += weight * dp * dp;
            b += weight * dp * dq;
            c += weight * dq * dq;
            rest += weight * residuals[i] * residuals[i];
        }

        double det = a * c - b * b, s2 = rest / Math.Max(1, kept - 2);
        if (!(det > 1e-12 * a * c) || !double.IsFinite(p) || !double.IsFinite(q))
            return null;
        return new RobustFit
        {
            P = p,
            Q = q,
            UP = Math.Sqrt(s2 * c / det),
            UQ = Math.Sqrt(s2 * a / det),
            R = -b / Math.Sqrt(a * c),
            Scatter = Math.Sqrt(s2),
            Outliers = named,
            Residuals = residuals,
            Curve = curve,
        };
    }

    /// <summary>The curve through two points with the smallest S-scale; all pairs are tried, and of very many an even choice.</summary>
    private static (double P, double Q, double Scale)? Start(Points at, TwoPointCurve curve)
    {
        (IReadOnlyList<double> x, IReadOnlyList<double> y, _) = at;
        int n = x.Count, every = Math.Max(1, n * (n - 1) / 2 / 2000), pair = 0;
        (double P, double Q, double Scale)? best = null;
        double[] off = new double[n];
        for (int i = 0; i < n; i++)
        {
            for (int j = i + 1; j < n; j++)
            {
                if (pair++ % every != 0 || curve.Through(x[i], y[i], x[j], y[j]) is not var (p, q))
                    continue;
                for (int k = 0; k < n; k++)
                    off[k] = Math.Abs(at.Off(k, curve, p, q));
                double scale = Scale(off);
                if (best is null || scale < best.Value.Scale)
                    best = (p, q, scale);
            }
        }

        return best;
    }

    /// <summary>S-scale: the s for which the mean of Tukey's ρ(r/s) is one half, 50 % breakdown and normal consistency.</summary>
    private static double Scale(double[] off)
    {
        double[] sorted = [.. off.Order()];
        int n = sorted.Length;
        double s = sorted[n / 2] / 0.6745;
        if (!(s > 0))
            return 0;
        // the two points the curve goes through are on it by making: their share of one half is not asked of the others
        double wanted = 0.5 * (n - 2) / n;
        for (int turn = 0; turn < 100; turn++)
        {
            double mean = 0;
            foreach (double r in off)
                mean += Rho(r / (TuneS * s)) / n;
            double by = Math.Sqrt(mean / wanted);
            s *= by;
            if (Math.Abs(by - 1) < 1e-6 || !(s > 0))
                break;
        }

        return s;
    }

    /// <summary>One step of weighted Gauss-Newton, halved until it does not make things worse.</summary>
    /// <returns>How far it moved, as a share.</returns>
    private static double Step(Points at, double[] weights, TwoPointCurve curve, ref double p, ref double q)
    {
        double a = 0, b = 0, c = 0, u = 0, v = 0;
        for (int i = 0; i < at.Count; i++)
        {
            if (weights[i] == 0)
                continue;
            double r = at.Y[i] - curve.Value(at.X[i], p, q), weight = weights[i] / (at.Known[i] * at.Known[i]);
            (double dp, double dq) = Gradient(curve, at.X[i], p, q);
            a += weight * dp * dp;
            b += weight * dp * dq;
            c += weight * dq * dq;
            u += weight * dp * r;
            v += weight * dq * r;
        }

        double det = a * c - b * b;
        if (!(det > 1e-14 * a * c))
            return 0;
        double sp = (c * u - b * v) / det, sq = (a * v - b * u) / det, was = Sum(at, weights, curve, p, q), by = 1;
        for (int half = 0; half < 30; half++, by /= 2)
        {
            if (Sum(at, weights, curve, p + by * sp, q + by * sq) <= was * (1 + 1e-14))
                break;
        }

        (p, q) = (p + by * sp, q + by * sq);
        return Math.Max(Math.Abs(by * sp) / Math.Max(Math.Abs(p), 1e-300), Math.Abs(by * sq) / Math.Max(Math.Abs(q), 1e-300));
    }

    private static double Sum(Points at, double[] weights, TwoPointCurve curve, double p, double q)
    {
        double sum = 0;
        for (int i = 0; i < at.Count; i++)
            sum += weights[i] * Square(at.Off(i, curve, p, q));
        return double.IsFinite(sum) ? sum : double.PositiveInfinity;
    }

    private static (double P, double Q) Gradient(TwoPointCurve curve, double x, double p, double q)
    {
        double hp = Math.Max(Math.Abs(p), 1e-12) * 1e-6, hq = Math.Max(Math.Abs(q), 1e-12) * 1e-6;
        return ((curve.Value(x, p + hp, q) - curve.Value(x, p - hp, q)) / (2 * hp), (curve.Value(x, p, q + hq) - curve.Value(x, p, q - hq)) / (2 * hq));
    }

    private static double Rho(double u) => Math.Abs(u) >= 1 ? 1 : 1 - Math.Pow(1 - u * u, 3);

    private static double Biweight(double u) => Math.Abs(u) >= 1 ? 0 : Square(1 - u * u);

    private static double Square(double x) => x * x;
}
