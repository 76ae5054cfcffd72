using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Stock;
using Ramwright.Workings;

namespace Ramwright.Fabrication.Welding;

/// <summary>How much weld is laid down: its area, mass, runs, filler, time and gas.</summary>
public static class WeldDeposit
{
    /// <summary>Geometry of the seam.</summary>
    public static readonly Citation Shape = Citation.Mechanics("area of the seam");
    /// <summary>How much more than the flat seam is laid down.</summary>
    public static readonly Citation Practice = Citation.Practice("a tenth more than a flat seam, for its crown");

    /// <summary>What is laid down over what a flat seam needs.</summary>
    public const double Crown = 1.1;

    /// <summary>Area of a fillet of equal legs, flat, m²: z²/2.</summary>
    /// <param name="z">Leg, m.</param>
    public static double Fillet(double z) => 0.5 * Check.Positive(z) * z;

    /// <summary>Area of a half-V butt, one plate bevelled, m²: root gap times thickness and the bevel's triangle.</summary>
    /// <param name="t">Thickness, m.</param>
    /// <param name="gap">Root gap, m.</param>
    /// <param name="face">Root face that is not bevelled, m.</param>
    /// <param name="angle">Angle of the bevel from the square edge, rad.</param>
    public static double Bevel(double t, double gap, double face, double angle)
    {
        double deep = Math.Max(0, Check.Positive(t) - Check.NotNegative(face));
        return Check.NotNegative(gap) * t + deep * deep * Math.Tan(angle) / 2;
    }

    /// <summary>Area of a V butt, both plates bevelled, m².</summary>
    /// <param name="t">Thickness, m.</param>
    /// <param name="gap">Root gap, m.</param>
    /// <param name="face">Root face, m.</param>
    /// <param name="angle">Whole angle of the V, rad.</param>
    public static double Vee(double t, double gap, double face, double angle)
    {
        double deep = Math.Max(0, Check.Positive(t) - Check.NotNegative(face));
        return Check.NotNegative(gap) * t + deep * deep * Math.Tan(angle / 2);
    }

    /// <summary>Mass laid down, kg.</summary>
    /// <param name="A">Area of the seam, crown counted, m².</param>
    /// <param name="length">Length, m.</param>
    /// <param name="w">Where to write it down.</param>
    public static double Mass(double A, double length, Working? w = null)
    {
        double m = Steel.Density * Check.Positive(A) * Check.Positive(length);
        w?.Step("m", "mass of the weld", "ρ A L", m, Dimension.Mass, Shape,
            ("ρ", Steel.Density, Dimension.Density), ("A", A, Dimension.Area), ("L", length, Dimension.Length));
        return m;
    }

    /// <summary>Share of the filler bought that ends in the seam: the middle of handbook ranges.</summary>
    public static double Efficiency(WeldingProcess process) => process switch
    {
        WeldingProcess.Wire => 0.95,
        WeldingProcess.CoredWire => 0.83,
        WeldingProcess.Tig => 0.95,
        _ => 0.60,
    };

    /// <summary>Share of the working time in which the arc burns.</summary>
    public static double ArcShare(WeldingProcess process) => process switch
    {
        WeldingProcess.Wire or WeldingProcess.CoredWire => 0.30,
        WeldingProcess.Tig => 0.20,
        _ => 0.25,
    };

    /// <summary>Shielding gas, m³/s at the pressure of the air; zero for stick.</summary>
    public static double Gas(WeldingProcess process) => process switch
    {
        WeldingProcess.Wire or WeldingProcess.CoredWire => 14e-3 / 60,
        WeldingProcess.Tig => 9e-3 / 60,
        _ => 0,
    };

    /// <summary>Area of one run, m²: what is melted in a second over how far the arc moves in it.</summary>
    /// <param name="rate">Mass laid down while the arc burns, kg/s.</param>
    /// <param name="travel">Travel, m/s.</param>
    public static double RunArea(double rate, double travel) => Check.Positive(rate) / (Steel.Density * Check.Positive(travel));

    /// <summary>Runs that fill a seam.</summary>
    /// <param name="A">Area of the seam, crown counted, m².</param>
    /// <param name="run">Greatest area of one run, m².</param>
    /// <param name="w">Where to write it down.</param>
    public static int Runs(double A, double run, Working? w = null)
    {
        double n = Check.Positive(A) / Check.Positive(run);
        w?.Step("n", "runs, rounded up", "A / A_1", n, Dimension.Number, Practice, ("A", A, Dimension.Area), ("A_1", run, Dimension.Area));
        return (int)Math.Ceiling(n - 1e-9);
    }
}
