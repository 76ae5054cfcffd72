using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Jobs;

/// <summary>How much of a squeeze goes into width and how much into length, between flat dies.</summary>
public static class Spread
{
    /// <summary>Spread of hot steel bars between flat tools.</summary>
    public static readonly Citation TomlinsonStringer = new("A. Tomlinson, J. D. Stringer, J. Iron Steel Inst. 193 (1959) 157", "coefficient of spread", Standing.FromMemory);

    /// <summary>Widest bite over the width that the coefficient is used for.</summary>
    public const double WidestBite = 2;

    /// <summary>How far the temperature and the dies' edges shift the coefficient, either way; a judgement.</summary>
    public const double Scatter = 0.05;

    /// <summary>Coefficient s = ln(w₁/w₀)/ln(h₀/h₁): 0.14 + 0.36 (b/w) − 0.054 (b/w)².</summary>
    /// <param name="bOverW">Bite over width, above zero; beyond <see cref="WidestBite"/> it is held there.</param>
    /// <param name="w">Where to write it down.</param>
    /// <exception cref="ArgumentOutOfRangeException">A bite that is not above zero.</exception>
    public static double Coefficient(double bOverW, Working? w = null)
    {
        double r = Math.Min(Check.Positive(bOverW), WidestBite);
        double s = 0.14 + 0.36 * r - 0.054 * r * r;
        w?.Step("s", "share of the squeeze that goes into width", "0.14 + 0.36 r − 0.054 r²", s, Dimension.Number, TomlinsonStringer, ("r", r, Dimension.Number));
        return s;
    }

    /// <summary>Width after a squeeze, m.</summary>
    /// <param name="w0">Width before, m.</param>
    /// <param name="h0">Height before, m.</param>
    /// <param name="h1">Height after, m.</param>
    /// <param name="s">Coefficient of spread.</param>
    public static double WidthAfter(double w0, double h0, double h1, double s) =>
        Check.Positive(w0) * Math.Pow(Check.Positive(h0) / Check.Positive(h1), s);

    /// <summary>How many squeezes draw a square bar down, roughly: N = 2 ln(a₀/a₁)/((1 − s) ln(1/(1 − r))); two or three for finishing come on top.</summary>
    /// <param name="a0">Side before, m.</param>
    /// <param name="a1">Side after, m, less than before.</param>
    /// <param name="s">Coefficient of spread, below 1.</param>
    /// <param name="reduction">Share of the height taken off by each squeeze, above 0, below 1.</param>
    public static double QuickCount(double a0, double a1, double s, double reduction)
    {
        Check.Above(a0, Check.Positive(a1));
        Check.Loss(s);
        if (!(reduction > 0 && reduction < 1))
            Check.Refuse(nameof(reduction), reduction, "between 0 and 1");
        return 2 * Math.Log(a0 / a1) / ((1 - s) * Math.Log(1 / (1 - reduction)));
    }
}
