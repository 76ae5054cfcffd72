using Ramwright.Presses;
using Ramwright.Stock;

namespace Ramwright.Solids;

/// <summary>The work of each of two loads on the movement of each, for one newton metre and one newton.</summary>
/// <param name="MM">Moment on its own turning, rad/(N·m).</param>
/// <param name="MV">Moment on the shear's turning, rad/N.</param>
/// <param name="VV">Shear on its own movement, m/N.</param>
internal readonly record struct Give(double MM, double MV, double VV);

/// <summary>Springs of what a joint's solid gives beyond the beams that stand for its lengths.</summary>
/// <remarks>
/// With the moment M_b where the beam enters the joint and the force V that goes over, what is left is c_b M_b² + c_u M_u² + c_N V², M_u = M_b + l V where the upright enters, l from there to
/// where the beam ends.
/// </remarks>
internal static class JointFit
{
    private const double E = 210e9, G = E / 2.6;

    public static RigSpring Springs(JointPlace place, Give give)
    {
        Give beams = Beams(place);
        double a = Reach(place), l = Math.Abs(place.Axis - place.Face);
        double MM = give.MM - beams.MM, MV = give.MV - beams.MV, VV = give.VV - beams.VV;
        double bb = Math.Max(0, MM), bV = MV - a * MM, v = VV - 2 * a * MV + a * a * MM;
        bool parted = l > 1e-6 && bV >= 0 && bV <= bb * l;
        double cu = parted ? bV / l : l > 1e-6 && bV > 0 ? bb : 0;
        // springs that cannot be are left out, and the others take the work at the moment and force that go together
        double t = Typical(place, bb, bV), cn = parted ? v - cu * l * l : v + 2 * bV * t - cu * l * (2 * t + l);
        if (cn < 0 && l > 1e-6)
            cu = Math.Clamp((v + 2 * bV * t) / (l * (2 * t + l)), 0, bb);
        if (Environment.GetEnvironmentVariable("LAB") is not null)
            Console.WriteLine($"    fit {place.Way} up {place.Up}: bb {bb:E3} bV {bV:E3} cu {cu:E3} v {v:E3} | cb {bb - cu:E3} cn {cn:E3} t {t:F4} | a {a:F4} l {l:F4}");
        return new RigSpring(1 / (bb - cu), 1 / cu, 1 / Math.Max(0, cn));
    }

    // moment over force where the beam enters the joint: an arm's is its length; between uprights it is what lets beam, joint and upright turn together; rods hardly hold a beam's end
    private static double Typical(JointPlace place, double bb, double bV)
    {
        if (place.Along == 1)
            return place.KeptBeam;
        if (place.Upright.Member is null)
            return 0;
        double a = Reach(place), l = Math.Abs(place.Axis - place.Face), beam = 1 / (E * place.Beam.Shape.Properties.Iy), upright = place.KeptUpright / (E * place.Upright.Second);
        return (a * a / 2 * beam - l * upright - bV) / (place.KeptBeam * beam + upright + bb);
    }

    // from where the force stands to where the beam ends
    private static double Reach(JointPlace place) => place.KeptBeam - (place.Die?.Width ?? 0) / 4;

    /// <summary>What the two lengths give as beams, the shear spread over the die where there is one.</summary>
    private static Give Beams(JointPlace place)
    {
        SectionProperties b = place.Beam.Shape.Properties;
        double k = place.KeptBeam, up = place.KeptUpright, c = place.Die?.Width ?? 0, a = Reach(place), at = c / 4;
        double mu = a + Math.Abs(place.Axis - place.Face), turn = up / (E * place.Upright.Second);
        return new Give(
            k / (E * b.Iy) + turn,
            (c * c / 24 + (a * a - at * at) / 2) / (E * b.Iy) + mu * turn,
            (c * c * c / 160 + (a * a * a - at * at * at) / 3) / (E * b.Iy) + (c / 6 + k - c / 2) / (G * b.Asz) + mu * mu * turn + place.Upright.Stretch(up) / E
                + 2 * (place.Die?.Pressing ?? 0));
    }
}
