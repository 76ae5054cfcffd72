using System.Runtime.InteropServices;
using Ramwright.Solids;

namespace Ramwright.Web.Solid;

/// <summary>A skin as the viewer reads it: counts, then positions, displacements, stress, triangles and the part of each, little-endian.</summary>
internal static class SkinBytes
{
    private const int Head = 16;

    /// <summary>The bytes.</summary>
    public static byte[] Of(SolidSkin skin)
    {
        int vertices = skin.Stress.Length, triangles = skin.PartOf.Length;
        var bytes = new byte[Head + 28 * vertices + 14 * triangles];
        MemoryMarshal.Cast<byte, int>(bytes.AsSpan(0, Head))[0] = vertices;
        MemoryMarshal.Cast<byte, int>(bytes.AsSpan(0, Head))[1] = triangles;
        MemoryMarshal.Cast<byte, int>(bytes.AsSpan(0, Head))[2] = skin.Weakest;
        int at = Head;
        Put(skin.Positions);
        Put(skin.Displacements);
        Put(skin.Stress);
        Put(skin.Triangles);
        Put(skin.PartOf);
        return bytes;

        void Put<T>(T[] values)
            where T : unmanaged
        {
            ReadOnlySpan<byte> from = MemoryMarshal.AsBytes(values.AsSpan());
            from.CopyTo(bytes.AsSpan(at));
            at += from.Length;
        }
    }
}
