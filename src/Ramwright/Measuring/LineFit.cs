using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Measuring;

/// <summary>A straight line through points by least squares, with how well its slope and intercept are known.</summary>
/// <param name="Slope">Slope b.</param>
/// <param name="Intercept">Intercept a, at x = 0.</param>
/// <param name="SlopeU">Standard uncertainty of the slope.</param>
/// <param name="InterceptU">Standard uncertainty of the intercept.</param>
/// <param name="R">Correlation of the two.</param>
/// <param name="Residual">Standard deviation of the points about the line.</param>
/// <param name="Points">How many points.</param>
public sealed record LineFit(double Slope, double Intercept, double SlopeU, double InterceptU, double R, double Residual, int Points)
{
    /// <summary>The line.</summary>
    public static readonly Citation Source = new("JCGM 100:2008 (GUM)", "H.3.2, eq. H.13");

    /// <summary>Degrees of freedom: points less two.</summary>
    public int Dof => Points - 2;

    /// <summary>The slope as an estimate.</summary>
    public Estimate SlopeEstimate => new(Slope, SlopeU, Dof);

    /// <summary>The intercept as an estimate.</summary>
    public Estimate InterceptEstimate => new(Intercept, InterceptU, Dof);

    /// <summary>Value of the line.</summary>
    /// <param name="x">Where.</param>
    public double At(double x) => Intercept + Slope * x;

    /// <summary>Standard uncertainty of the line itself at a place; a further reading scatters about it by <see cref="Residual"/> as well.</summary>
    /// <param name="x">Where.</param>
    public double UAt(double x) =>
        Math.Sqrt(Math.Max(0, InterceptU * InterceptU + x * x * SlopeU * SlopeU + 2 * x * R * SlopeU * InterceptU));

    /// <summary>Fits.</summary>
    /// <param name="x">Three or more, not all the same; taken as exact.</param>
    /// <param name="y">As many.</param>
    /// <param name="w">Where to show the working.</param>
    /// <exception cref="ArgumentException">Too few points, or all at one place.</exception>
    public static LineFit Of(IReadOnlyList<double> x, IReadOnlyList<double> y, Working? w = null)
    {
        ArgumentNullException.ThrowIfNull(x);
        ArgumentNullException.ThrowIfNull(y);
        int n = x.Count;
        if (n < 3 || y.Count != n)
            throw new ArgumentException("a line with its uncertainty needs three points", nameof(x));
        double mx = x.Average(), my = y.Average(), sxx = 0, sxy = 0;
        for (int i = 0; i < n; i++)
        {
            sxx += (x[i] - mx) * (x[i] - mx);
            sxy += (x[i] - mx) * (y[i] - my);
        }

        if (!(sxx > 0))
            throw new ArgumentException("all points stand at one place: no line goes through them", nameof(x));
        double b = sxy / sxx, a = my - b * mx, rest = 0;
        for (int i = 0; i < n; i++)
        {
            double off = y[i] - a - b * x[i];
            rest += off * off;
        }

        double s = Math.Sqrt(rest / (n - 2)), ub = s / Math.Sqrt(sxx), spread = 1.0 / n + mx * mx / sxx, ua = s * Math.Sqrt(spread);
        double r = -mx / Math.Sqrt(sxx * spread);
        w?.Step("b", "slope", "S_xy / S_xx", b, Dimension.Number, Source, ("S_xy", sxy, Dimension.Number), ("S_xx", sxx, Dimension.Number));
        w?.Step("s", "scatter about the line", "√(S / (n − 2))", s, Dimension.Number, Source, ("S", rest, Dimension.Number), ("n", n, Dimension.Count));
        w?.Step("u_b", "standard uncertainty of the slope", "s / √(S_xx)", ub, Dimension.Number, Source, ("s", s, Dimension.Number), ("S_xx", sxx, Dimension.Number));
        return new LineFit(b, a, ub, ua, double.IsFinite(r) ? r : 0, s, n);
    }
}
