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
        double bb = MM, bV = MV - a * MM, v = VV - 2 * a * MV + a * a * MM;
        double cu = l > 1e-6 ? Math.Clamp(bV / l, 0, Math.Max(0, bb)) : 0, cb = Math.Max(0, bb - cu), cn = Math.Max(0, v - cu * l * l);
        if (Environment.GetEnvironmentVariable("LAB") is not null)
            Console.WriteLine($"    fit {place.Way} up {place.Up}: bb {bb:E3} bV/l {bV / l:E3} v {v:E3} | cb {bb - bV / l:E3} cn {v - bV * l:E3} | a {a:F4} l {l:F4} give {give} beams {beams}");
        return new RigSpring(1 / cb, 1 / cu, 1 / cn);
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
