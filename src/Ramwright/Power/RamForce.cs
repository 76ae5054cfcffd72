using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Power;

/// <summary>From oil pressure to force at the ram, and back.</summary>
public static class RamForce
{
    /// <summary>Pressure on an area.</summary>
    public static readonly Citation PressureOnArea = Citation.Mechanics("force balance of the piston");

    /// <summary>Oil on both sides of the piston at one pressure.</summary>
    public static readonly Citation Regeneration = Citation.Mechanics("force balance of the piston with oil at one pressure on both sides");

    /// <summary>Force the oil puts on the piston, with nothing lost.</summary>
    /// <param name="p">Pressure, Pa, 0 or more.</param>
    /// <param name="A">Area, m², 0 or more.</param>
    /// <param name="w">Where to show the working.</param>
    /// <returns>N.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A negative pressure or area.</exception>
    public static double Thrust(double p, double A, Working? w = null)
    {
        Check.NotNegative(p);
        Check.NotNegative(A);
        double F = p * A;
        w?.Step("F", "force of the oil, nothing lost", "p A", F, Dimension.Force, PressureOnArea,
            ("p", p, Dimension.Pressure), ("A", A, Dimension.Area));
        return F;
    }

    /// <summary>Force at the ram after the seals and the return spring have taken theirs.</summary>
    /// <param name="p">Pressure, Pa, 0 or more.</param>
    /// <param name="A">Area, m², 0 or more.</param>
    /// <param name="mu">Share of the hydraulic force lost to the seals, 0 or more, below 1.</param>
    /// <param name="S">Force of the return spring at this stroke, N, 0 or more.</param>
    /// <param name="w">Where to show the working.</param>
    /// <returns>N; 0 where the spring is stronger.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static double Net(double p, double A, double mu, double S = 0, Working? w = null)
    {
        Check.NotNegative(p);
        Check.NotNegative(A);
        Check.Loss(mu);
        Check.NotNegative(S);
        double F = Math.Max(0, p * A * (1 - mu) - S);
        w?.Step("F", "force at the ram less seals and spring", "max(0, p A (1 − μ) − S)", F, Dimension.Force, PressureOnArea,
            ("p", p, Dimension.Pressure), ("A", A, Dimension.Area), ("μ", mu, Dimension.Ratio), ("S", S, Dimension.Force));
        return F;
    }

    /// <summary>Pressure that a force at the ram calls for: <see cref="Net"/> turned round.</summary>
    /// <param name="F">Force at the ram, N, 0 or more.</param>
    /// <param name="A">Area, m², above zero.</param>
    /// <param name="mu">Share lost to the seals, 0 or more, below 1.</param>
    /// <param name="S">Force of the return spring, N, 0 or more.</param>
    /// <param name="w">Where to show the working.</param>
    /// <returns>Pa.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static double PressureFor(double F, double A, double mu, double S = 0, Working? w = null)
    {
        Check.NotNegative(F);
        Check.Positive(A);
        Check.Loss(mu);
        Check.NotNegative(S);
        double p = (F + S) / (A * (1 - mu));
        w?.Step("p", "pressure in the cylinder for this force", "(F + S)/(A (1 − μ))", p, Dimension.Pressure, PressureOnArea,
            ("F", F, Dimension.Force), ("S", S, Dimension.Force), ("A", A, Dimension.Area), ("μ", mu, Dimension.Ratio));
        return p;
    }

    /// <summary>Force of the return spring.</summary>
    /// <param name="F0">Force with the ram in, N, 0 or more.</param>
    /// <param name="k">Rate, N/m, 0 or more.</param>
    /// <param name="x">How far the ram is out, m, 0 or more.</param>
    /// <param name="w">Where to show the working.</param>
    /// <returns>N.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A negative value.</exception>
    public static double Spring(double F0, double k, double x, Working? w = null)
    {
        Check.NotNegative(F0);
        Check.NotNegative(k);
        Check.NotNegative(x);
        double S = F0 + k * x;
        w?.Step("S", "return spring with the ram out", "F_0 + k x", S, Dimension.Force, PressureOnArea,
            ("F_0", F0, Dimension.Force), ("k", k, Dimension.Stiffness), ("x", x, Dimension.Length));
        return S;
    }

    /// <summary>Force of a cylinder's return spring with the ram fully out, N; 0 where it has none.</summary>
    /// <param name="cylinder">The cylinder.</param>
    /// <param name="w">Where to show the working.</param>
    public static double Spring(RigCylinder cylinder, Working? w = null)
    {
        ArgumentNullException.ThrowIfNull(cylinder);
        return cylinder.SpringPreload > 0 || cylinder.SpringRate > 0 ? Spring(cylinder.SpringPreload, cylinder.SpringRate, cylinder.Stroke, w) : 0;
    }

    /// <summary>Force of a regenerative push, where the ring's oil joins the pump's: the rod's area alone counts.</summary>
    /// <param name="p">Pressure, Pa, 0 or more.</param>
    /// <param name="areas">The cylinder's areas.</param>
    /// <param name="w">Where to show the working.</param>
    /// <returns>N, nothing lost.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A negative pressure.</exception>
    public static double Regenerative(double p, CylinderAreas areas, Working? w = null)
    {
        Check.NotNegative(p);
        double F = p * areas.Regenerative;
        w?.Step("F", "force of a regenerative push", "p (A − a)", F, Dimension.Force, Regeneration,
            ("p", p, Dimension.Pressure), ("A", areas.Push, Dimension.Area), ("a", areas.Pull, Dimension.Area));
        return F;
    }
}
