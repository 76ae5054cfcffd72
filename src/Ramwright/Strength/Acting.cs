using System.Runtime.CompilerServices;
using Ramwright.Frame;
using Ramwright.Geometry;
using Ramwright.Quantities;

namespace Ramwright.Strength;

/// <summary>Turns away actions, forces and moments that are not finite.</summary>
internal static class Acting
{
    public static Actions Finite(Actions a, [CallerArgumentExpression(nameof(a))] string name = "")
    {
        Check.Finite(a.N + a.Vy + a.Vz + a.T + a.My + a.Mz, name);
        return a;
    }

    public static Vector Finite(Vector v, [CallerArgumentExpression(nameof(v))] string name = "")
    {
        Check.Finite(v.X + v.Y + v.Z, name);
        return v;
    }
}
