using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Power;

/// <summary>The areas the oil works on.</summary>
/// <param name="Push">Area of the pushing side, of all cylinders, m²: the bore, less the centre tube of a hollow plunger.</param>
/// <param name="Pull">Ring around the rod, of all cylinders, m²; works only where oil brings the ram back.</param>
public readonly record struct CylinderAreas(double Push, double Pull)
{
    /// <summary>Area of a full bore and of a ring.</summary>
    public static readonly Citation Geometry = Citation.Mechanics("area of a circle and of a ring");

    /// <summary>Whether oil stands on both sides at one pressure all the way out.</summary>
    public bool Regenerates { get; init; }

    /// <summary>Area that makes the force, m²: the pushing side's, or in a circuit that is always regenerative the rod's.</summary>
    public double Force => Regenerates ? Regenerative : Push;

    /// <summary>Area left to push in a regenerative circuit, m²: for a plain cylinder the area of the rod.</summary>
    public double Regenerative => Push - Pull;

    /// <summary>Area ratio φ = A/(A − a), pushing area over ring; 0 where there is no ring.</summary>
    public double Ratio => Pull > 0 ? Push / Pull : 0;

    /// <summary>Area of a circle, m².</summary>
    /// <param name="d">Diameter, m, 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">A diameter that is negative or no number.</exception>
    public static double Circle(double d)
    {
        Check.NotNegative(d);
        return Math.PI * d * d / 4;
    }

    /// <summary>Area between two circles, m².</summary>
    /// <param name="outer">Outer diameter, m.</param>
    /// <param name="inner">Inner diameter, m, not above <paramref name="outer"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">A negative diameter, or an inner one above the outer.</exception>
    public static double Ring(double outer, double inner)
    {
        Check.NotNegative(outer);
        Check.NotNegative(inner);
        if (inner > outer)
            Check.Refuse(nameof(inner), inner, "no larger than the outer diameter");
        return Math.PI * (outer - inner) * (outer + inner) / 4;
    }

    /// <summary>The areas of a cylinder.</summary>
    /// <param name="cylinder">The cylinder. The seal of a hollow plunger rides on the outside of the centre tube, not on the hole.</param>
    /// <param name="w">Where to show the working.</param>
    /// <exception cref="ArgumentOutOfRangeException">A bore that is not above zero, a tube that fills it, or a rod that leaves no ring in a cylinder that pulls by oil.</exception>
    public static CylinderAreas Of(RigCylinder cylinder, Working? w = null)
    {
        ArgumentNullException.ThrowIfNull(cylinder);
        double D = cylinder.Bore, d = cylinder.Rod, d_t = cylinder.CentreTube;
        Check.Positive(D, "Bore");
        Check.NotNegative(d_t, "CentreTube");
        if (d_t >= D)
            Check.Refuse("CentreTube", d_t, "smaller than the bore");
        Check.Positive(d, "Rod");
        if (d > D || (cylinder.PullsByOil && d >= D))
            Check.Refuse("Rod", d, "smaller than the bore");

        int n = cylinder.Count;
        if (n < 1)
            Check.Refuse("Count", n, "1 or more");
        double A = Ring(D, d_t);
        if (d_t > 0)
            w?.Step("A", "area that pushes, bore less centre tube", "π (D² − d_t²)/4", A, Dimension.Area, Geometry,
                ("D", D, Dimension.Length), ("d_t", d_t, Dimension.Length));
        else
            w?.Step("A", "area that pushes", "π D²/4", A, Dimension.Area, Geometry, ("D", D, Dimension.Length));

        double a = Ring(D, d);
        if (cylinder.PullsByOil)
            w?.Step("a", "ring around the rod", "π (D² − d²)/4", a, Dimension.Area, Geometry,
                ("D", D, Dimension.Length), ("d", d, Dimension.Length));
        if (n > 1)
        {
            (A, double A_1, a, double a_1) = (n * A, A, n * a, a);
            w?.Step("A", "area that pushes, of all cylinders", "n A_1", A, Dimension.Area, Geometry, ("n", n, Dimension.Number), ("A_1", A_1, Dimension.Area));
            if (cylinder.PullsByOil)
                w?.Step("a", "ring around the rods, of all cylinders", "n a_1", a, Dimension.Area, Geometry, ("n", n, Dimension.Number), ("a_1", a_1, Dimension.Area));
        }

        bool regenerates = cylinder.PullsByOil && cylinder.Regeneration == Regeneration.Always;
        if (regenerates)
            w?.Step("A_r", "area that makes the force with oil on both sides", "A − a", A - a, Dimension.Area, RamForce.Regeneration,
                ("A", A, Dimension.Area), ("a", a, Dimension.Area));
        return new CylinderAreas(A, a) { Regenerates = regenerates };
    }
}
