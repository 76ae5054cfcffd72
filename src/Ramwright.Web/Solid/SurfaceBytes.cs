using Ramwright.Geometry;
using Ramwright.Solids;

namespace Ramwright.Web.Solid;

/// <summary>
/// A surface as the script draws it, little-endian: number of corners and of triangles (uint32); for each corner its place and movement for one newton (float32, m), its equivalent
/// stress for one newton and the yield strength of its part, 0 where that is not known (float32, Pa); then the triangles (uint32).
/// </summary>
public static class SurfaceBytes
{
    /// <summary>Floats of a corner.</summary>
    public const int Each = 8;

    /// <summary>Writes it.</summary>
    public static byte[] Of(SolidCheck solid)
    {
        ArgumentNullException.ThrowIfNull(solid);
        SolidSurface surface = SolidSurface.Of(solid.Centred.Solution);
        using var stream = new MemoryStream();
        using var writer = new BinaryWriter(stream);
        writer.Write((uint)surface.Places.Count);
        writer.Write((uint)(surface.Triangles.Count / 3));
        for (int i = 0; i < surface.Places.Count; i++)
        {
            foreach (Vector v in (Vector[])[surface.Places[i], surface.Moved[i]])
            {
                writer.Write((float)v.X);
                writer.Write((float)v.Y);
                writer.Write((float)v.Z);
            }

            writer.Write((float)surface.Stress[i]);
            writer.Write((float)(solid.Solid.Yields.ElementAtOrDefault(surface.Parts[i]) ?? 0));
        }

        foreach (int corner in surface.Triangles)
            writer.Write((uint)corner);
        return stream.ToArray();
    }
}
