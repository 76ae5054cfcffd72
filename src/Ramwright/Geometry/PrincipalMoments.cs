namespace Ramwright.Geometry;

/// <summary>Second moments about the axes u-u and v-v through the centroid, for which ∫ u v dA is zero.</summary>
/// <param name="Iu">The greater, m⁴: about u-u.</param>
/// <param name="Iv">The smaller, m⁴: about v-v.</param>
/// <param name="Angle">From y to u, rad, anticlockwise positive, above −π/2 and at most π/2; zero where both are alike.</param>
public readonly record struct PrincipalMoments(double Iu, double Iv, double Angle)
{
    /// <summary>The principal moments of an area.</summary>
    /// <param name="Iy">∫ z² dA, m⁴.</param>
    /// <param name="Iz">∫ y² dA, m⁴.</param>
    /// <param name="Iyz">∫ y z dA, m⁴.</param>
    /// <remarks>Mohr's circle: tan 2α = −2 Iyz/(Iy − Iz).</remarks>
    public static PrincipalMoments Of(double Iy, double Iz, double Iyz)
    {
        double mean = (Iy + Iz) / 2, radius = Math.Sqrt((Iy - Iz) * (Iy - Iz) / 4 + Iyz * Iyz);
        return new(mean + radius, mean - radius, radius > 1e-12 * mean ? Math.Atan2(-2 * Iyz, Iy - Iz) / 2 : 0);
    }
}
