using Ramwright.Presses;
using Ramwright.Stock;

namespace Ramwright.Solids;

/// <summary>The work of each of two loads on the movement of each, for one newton metre and one newton.</summary>
/// <param name="MM">Moment on its own turning, rad/(N·m).</param>
/// <param name="MV">Moment on the shear's turning, rad/N.</param>
/// <param name="VV">Shear on its own movement, m/N.</param>
internal readonly record struct JointWork(double MM, double MV, double VV);

/// <summary>Springs of what a joint's solid gives beyond the beams that stand for its lengths.</summary>
/// <remarks>
/// With the moment M_b where the beam enters the joint and the force V that goes over, what is left is c_b M_b² + c_u M_u² + c_N V², M_u = M_b + l V where the upright enters, l from there to
/// where the beam ends.
/// </remarks>
internal static class JointFit
{
    private const double E = 210e9, G = E / 2.6;

    /// <summary>Half the clear length of an upright, where it is only wanted roughly, m.</summary>
    private const double HalfUpright = 0.3;

    public static RigSpring Springs(JointPlace place, JointWork give)
    {
        JointWork beams = Beams(place);
        double a = Reach(place), l = Math.Abs(place.Axis - place.Face);
        double MM = give.MM - beams.MM, MV = give.MV - beams.MV, VV = give.VV - beams.VV;
        // what is left, as bb M_b² + 2 bv M_b V + vv V²
        double bb = Math.Max(0, MM), bv = MV - a * MM, vv = Math.Max(0, VV - 2 * a * MV + a * a * MM);
        if (l < 1e-6)
            return new RigSpring(1 / bb, double.PositiveInfinity, 1 / vv);
        (double b, double u, double n) = bv >= 0 && bv <= bb * l && vv >= bv * l ? (bb - bv / l, bv / l, vv - bv * l) : Near(bb, bv, vv, l, Typical(place, bb, bv));
        return new RigSpring(1 / b, 1 / u, 1 / n);
    }

    // no three springs there do the same work for every moment and force: two that do the same work, and turn as far, at the moment and force that go together
    private static (double B, double U, double N) Near(double bb, double bv, double vv, double l, double t)
    {
        double work = Math.Max(0, bb * t * t + 2 * bv * t + vv), turn = bb * t + bv, up = t + l;
        double u = (work - t * turn) / (l * up);
        (double B, double U, double N)[] pairs = [((turn - u * up) / t, u, 0), (turn / t, 0, work - turn * t), (0, turn / up, work - turn * up)];
        return pairs.Where(p => p.B >= 0 && p.U >= 0 && p.N >= 0 && double.IsFinite(p.B + p.U)).OrderBy(p => Math.Abs(p.B + p.U - bb))
            .Append(bv > 0 ? (0, bb, Math.Max(0, work - bb * up * up)) : (bb, 0, Math.Max(0, work - bb * t * t))).First();
    }

    // moment over force where the beam enters the joint: an arm's is its length; between uprights it is what lets beam, joint and upright turn together
    private static double Typical(JointPlace place, double bb, double bV)
    {
        if (place.Along == 1)
            return place.KeptBeam;
        double a = Reach(place), l = Math.Abs(place.Axis - place.Face), beam = 1 / (E * place.Beam.Shape.Properties.Iy), upright = Math.Max(HalfUpright, place.KeptUpright) / (E * place.Upright.Second);
        return (a * a / 2 * beam - l * upright - bV) / (place.KeptBeam * beam + upright + bb);
    }

    // from where the force stands to where the beam ends
    private static double Reach(JointPlace place) => place.KeptBeam - (place.Die?.Width ?? 0) / 4;

    /// <summary>What the two lengths give as beams, the shear spread over the die where there is one.</summary>
    public static JointWork Beams(JointPlace place)
    {
        SectionProperties b = place.Beam.Shape.Properties;
        double k = place.KeptBeam, up = place.KeptUpright, c = place.Die?.Width ?? 0, a = Reach(place), at = c / 4;
        double mu = a + Math.Abs(place.Axis - place.Face), turn = up / (E * place.Upright.Second);
        return new JointWork(
            k / (E * b.Iy) + turn,
            (c * c / 24 + (a * a - at * at) / 2) / (E * b.Iy) + mu * turn,
            (c * c * c / 160 + (a * a * a - at * at * at) / 3) / (E * b.Iy) + (c / 6 + k - c / 2) / (G * b.Asz) + mu * mu * turn + place.Upright.Stretch(up) / E
                + 2 * (place.Die?.Pressing ?? 0));
    }
}
