using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Jobs;

/// <summary>How much a bend opens when it is let go.</summary>
public static class Springback
{
    /// <summary>Elastic, ideally plastic plate in pure bending.</summary>
    public static readonly Citation Source = new("S. Kalpakjian, S. Schmid, Manufacturing Engineering and Technology", "bending: springback", Standing.FromMemory);
    /// <summary>Arc length stays.</summary>
    public static readonly Citation Arc = Citation.Mechanics("the length of the middle fibre stays");

    /// <summary>R_i/R_f = 4x³ − 3x + 1, x = R_i Y/(E t): radius held over radius left.</summary>
    /// <param name="R_i">Inside radius held, m.</param>
    /// <param name="Y">Yield strength, Pa.</param>
    /// <param name="E">Modulus, Pa.</param>
    /// <param name="t">Thickness, m.</param>
    /// <param name="w">Where to write it down.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value that is not above zero, or a radius so wide that nothing yields (x of ½ and more).</exception>
    public static double RadiusRatio(double R_i, double Y, double E, double t, Working? w = null)
    {
        double x = Check.Positive(R_i) * Check.Positive(Y) / (Check.Positive(E) * Check.Positive(t));
        if (!(x < 0.5))
            Check.Refuse(nameof(R_i), R_i, "so small that the plate yields: R_i Y/(E t) below 0.5");
        double ratio = 4 * x * x * x - 3 * x + 1;
        w?.Step("x", "how elastic the bend is", "R_i Y / (E t)", x, Dimension.Number, Source, ("R_i", R_i, Dimension.Length), ("Y", Y, Dimension.Stress), ("E", E, Dimension.Stress), ("t", t, Dimension.Length));
        w?.Step("q", "radius held over radius left", "4 x³ − 3 x + 1", ratio, Dimension.Number, Source, ("x", x, Dimension.Number));
        return ratio;
    }

    /// <summary>Angle left of an angle bent through: α (R_i + t/2)/(R_f + t/2).</summary>
    public static double AngleLeft(double α, double R_i, double R_f, double t) =>
        Check.Positive(α) * (Check.Positive(R_i) + Check.Positive(t) / 2) / (Check.Positive(R_f) + t / 2);

    /// <summary>Groover's measure: included angle gained over the tool's.</summary>
    public static double Groover(double included, double tool) => (included - Check.Positive(tool)) / tool;
}
