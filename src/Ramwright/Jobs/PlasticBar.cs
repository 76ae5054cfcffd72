using Ramwright.Quantities;
using Ramwright.Stock;
using Ramwright.Workings;

namespace Ramwright.Jobs;

/// <summary>
/// A bar or tube that bends, then yields: elastic and ideally plastic. Solid bars are exact; a hollow one is the outside less the inside, which
/// is exact too; the corners of a box are taken as sharp.
/// </summary>
public sealed class PlasticBar
{
    /// <summary>Modulus of steel, Pa.</summary>
    public const double Steel = 210e9;

    /// <summary>Theory.</summary>
    public static readonly Citation Source = new("W. Prager, P. G. Hodge, Theory of Perfectly Plastic Solids; S. Timoshenko, Strength of Materials II", "bending beyond yield", Standing.FromMemory);
    /// <summary>Three-point bending.</summary>
    public static readonly Citation ThreePoint = Citation.Mechanics("load at the middle of two supports: M = F L/4");

    private readonly double _outer, _inner, _outerWidth, _innerWidth;
    private readonly bool _round;

    private PlasticBar(double Y, double E, bool round, double outer, double inner, double outerWidth, double innerWidth)
    {
        (this.Y, this.E, _round, _outer, _inner, _outerWidth, _innerWidth) = (Check.Positive(Y), Check.Positive(E), round, Check.Positive(outer), Check.NotNegative(inner), outerWidth, innerWidth);
        I = Inertia(_outer, _outerWidth) - Inertia(_inner, _innerWidth);
        W_e = I / (_outer / 2);
        W_p = Plastic(_outer, _outerWidth) - Plastic(_inner, _innerWidth);
    }

    /// <summary>A section bent about its y axis.</summary>
    /// <param name="bar">Round, flat, round tube or box.</param>
    /// <param name="Y">Yield strength, Pa.</param>
    /// <param name="E">Modulus, Pa.</param>
    /// <exception cref="ArgumentException">Any other section.</exception>
    public static PlasticBar Of(Shape bar, double Y, double E = Steel) => bar switch
    {
        Round round => new(Y, E, true, round.D, 0, 0, 0),
        CircularHollow tube => new(Y, E, true, tube.D, tube.D - 2 * tube.T, 0, 0),
        Flat flat => new(Y, E, false, flat.H, 0, flat.T, 0),
        RectangularHollow box => new(Y, E, false, box.H, box.H - 2 * box.T, box.B, box.B - 2 * box.T),
        _ => throw new ArgumentException($"bending {bar} is not reckoned here", nameof(bar)),
    };

    /// <summary>Yield strength, Pa.</summary>
    public double Y { get; }
    /// <summary>Modulus, Pa.</summary>
    public double E { get; }
    /// <summary>Second moment, m⁴.</summary>
    public double I { get; }
    /// <summary>Elastic modulus, m³.</summary>
    public double W_e { get; }
    /// <summary>Plastic modulus, m³.</summary>
    public double W_p { get; }
    /// <summary>Depth, m.</summary>
    public double Depth => _outer;
    /// <summary>Moment at first yield, N·m.</summary>
    public double M_y => W_e * Y;
    /// <summary>Plastic moment, N·m.</summary>
    public double M_p => W_p * Y;
    /// <summary>Curvature at first yield, 1/m.</summary>
    public double YieldCurvature => 2 * Y / (E * _outer);

    /// <summary>Load at the middle of a span at first yield, N.</summary>
    public double F_y(double L) => 4 * M_y / Check.Positive(L);

    /// <summary>Load at the middle of a span that the plastic moment carries, N.</summary>
    public double F_p(double L, Working? w = null)
    {
        Check.Positive(L);
        w?.Take("W_p", "plastic modulus", W_p, Dimension.SectionModulus, Source);
        double M = w?.Step("M_p", "plastic moment", "W_p Y", M_p, Dimension.Moment, Source, ("W_p", W_p, Dimension.SectionModulus), ("Y", Y, Dimension.Stress)) ?? M_p;
        double F = 4 * M / L;
        w?.Step("F_p", "load at which the middle folds", "4 M_p / L", F, Dimension.Force, ThreePoint, ("M_p", M, Dimension.Moment), ("L", L, Dimension.Length));
        return F;
    }

    /// <summary>Sag at first yield, m: F_y L³/(48 E I).</summary>
    public double δ_y(double L) => F_y(L) * L * L * L / (48 * E * I);

    /// <summary>Moment at a curvature, N·m.</summary>
    /// <param name="κ">1/m, 0 or more.</param>
    public double Moment(double κ) => Part(_outer, _outerWidth, Check.NotNegative(κ)) - Part(_inner, _innerWidth, κ);

    /// <summary>Curvature left when a bend to a radius is let go, 1/m: 1/R − M/(E I).</summary>
    /// <param name="R">Radius to the middle, m.</param>
    public double CurvatureLeft(double R)
    {
        double κ = 1 / Check.Positive(R);
        return κ - Moment(κ) / (E * I);
    }

    /// <summary>Load at the middle of a span where the curvature there is κ, N.</summary>
    public double LoadAt(double κ, double L) => 4 * Moment(κ) / Check.Positive(L);

    /// <summary>Sag at the middle of a span where the curvature there is κ, m.</summary>
    /// <remarks>∫ κ x dx over half the span, x turned into κ by x = 2M/F: L²/8 · ∫(1 − M²/M_c²) dκ up to the curvature at the middle.</remarks>
    public double SagAt(double κ, double L)
    {
        double M_c = Moment(Check.Positive(κ)), κ_y = Math.Min(κ, YieldCurvature), first = Moment(κ_y) / M_c;
        double sum = κ_y * (1 - first * first / 3);
        if (κ > κ_y)
        {
            // beyond yield in u = 1/κ, in which it is smooth
            const int n = 400;
            double from = 1 / κ, step = (1 / κ_y - from) / n, rest = 0;
            for (int i = 0; i <= n; i++)
            {
                double u = from + i * step, m = Moment(1 / u) / M_c;
                rest += (i == 0 || i == n ? 1 : i % 2 == 1 ? 4 : 2) * (1 - m * m) / (u * u);
            }

            sum += rest * step / 3;
        }

        return Check.Positive(L) * L / 8 * sum;
    }

    /// <summary>What stays of a sag when the load is taken off, m.</summary>
    public double SetAt(double κ, double L) => SagAt(κ, L) - LoadAt(κ, L) * L * L * L / (48 * E * I);

    /// <summary>Curvature at which the load is some share of the plastic one, 1/m.</summary>
    /// <param name="load">N, below the plastic load.</param>
    /// <param name="L">Span, m.</param>
    public double CurvatureFor(double load, double L)
    {
        double M = Check.NotNegative(load) * Check.Positive(L) / 4;
        if (!(M < M_p))
            Check.Refuse(nameof(load), load, "below the plastic load");
        if (M <= M_y)
            return M / (E * I);
        double low = YieldCurvature, high = low;
        while (Moment(high) < M)
            high *= 2;
        return Bisect(low, high, κ => Moment(κ) - M);
    }

    /// <summary>Curvature at which a set stays, 1/m; null where the model, which does not harden, cannot leave so much.</summary>
    /// <param name="set">m, above zero.</param>
    /// <param name="L">Span, m.</param>
    public double? CurvatureForSet(double set, double L)
    {
        Check.Positive(set);
        Check.Positive(L);
        double high = Sharpest;
        return SetAt(high, L) < set ? null : Bisect(YieldCurvature, high, κ => SetAt(κ, L) - set);
    }

    /// <summary>The largest set one pressing leaves, m; beyond it the load no longer rises.</summary>
    public double GreatestSet(double L) => SetAt(Sharpest, L);

    // close to the plastic load: what is left of it is less than a thousandth
    private double Sharpest => 1e3 * YieldCurvature;

    private static double Bisect(double low, double high, Func<double, double> f)
    {
        for (int i = 0; i < 80; i++)
        {
            double mid = Math.Sqrt(low * high);
            if (f(mid) < 0)
                low = mid;
            else
                high = mid;
        }

        return Math.Sqrt(low * high);
    }

    private double Inertia(double h, double b) => _round ? Math.PI / 64 * Math.Pow(h, 4) : b * h * h * h / 12;

    private double Plastic(double h, double b) => _round ? h * h * h / 6 : b * h * h / 4;

    private double Part(double h, double b, double κ)
    {
        if (h <= 0)
            return 0;
        double κ_y = 2 * Y / (E * h);
        if (κ <= κ_y)
            return E * Inertia(h, b) * κ;
        double c = κ / κ_y;
        if (!_round)
            return Y * b * h * h / 4 * (1 - 1 / (3 * c * c));
        double M_y = Y * Math.PI / 32 * h * h * h;
        return M_y * 2 / (3 * Math.PI) * ((5 - 2 / (c * c)) * Math.Sqrt(1 - 1 / (c * c)) + 3 * c * Math.Asin(1 / c));
    }
}
