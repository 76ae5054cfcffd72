using System.Buffers.Binary;

namespace Ramwright.Files.Dossier;

/// <summary>How wide each letter of a face is, and which letters it has; read from the tables of the font file (ISO/IEC 14496-22).</summary>
internal sealed class FaceWidths(string face)
{
    private readonly Lazy<float[]> _widths = new(() => Read(FaceFile.Bytes(face)));

    /// <summary>Whether the face has a letter of its own for it.</summary>
    public bool Has(char c) => _widths.Value[c] > 0;

    /// <summary>Width of a text in a size of one.</summary>
    public double Of(string text)
    {
        float[] widths = _widths.Value;
        double all = 0;
        foreach (char c in text)
            all += widths[c] > 0 ? widths[c] : widths['n'];
        return all;
    }

    private static float[] Read(ReadOnlySpan<byte> font)
    {
        var widths = new float[0x10000];
        ReadOnlySpan<byte> head = Table(font, "head"), hhea = Table(font, "hhea"), hmtx = Table(font, "hmtx"), cmap = Table(font, "cmap");
        float unit = U16(head, 18);
        int advances = U16(hhea, 34);
        ReadOnlySpan<byte> map = Basic(cmap);
        int segments = U16(map, 6) / 2;
        for (int s = 0; s < segments; s++)
        {
            int end = U16(map, 14 + 2 * s), start = U16(map, 16 + 2 * segments + 2 * s), rangeAt = 16 + 6 * segments + 2 * s;
            int delta = U16(map, 16 + 4 * segments + 2 * s), range = U16(map, rangeAt);
            for (int c = start; c <= end && c < 0xFFFF; c++)
            {
                int glyph = range == 0 ? c + delta & 0xFFFF : U16(map, rangeAt + range + 2 * (c - start));
                if (range != 0 && glyph != 0)
                    glyph = glyph + delta & 0xFFFF;
                if (glyph != 0)
                    widths[c] = U16(hmtx, 4 * Math.Min(glyph, advances - 1)) / unit;
            }
        }

        return widths;
    }

    /// <summary>The map of the basic plane: format 4.</summary>
    private static ReadOnlySpan<byte> Basic(ReadOnlySpan<byte> cmap)
    {
        for (int i = 0; i < U16(cmap, 2); i++)
        {
            ReadOnlySpan<byte> map = cmap[(int)BinaryPrimitives.ReadUInt32BigEndian(cmap[(8 + 8 * i)..])..];
            if (U16(map, 0) == 4)
                return map;
        }

        throw new InvalidDataException("the face has no map of the basic plane");
    }

    private static ReadOnlySpan<byte> Table(ReadOnlySpan<byte> font, string tag)
    {
        for (int i = 0; i < U16(font, 4); i++)
        {
            ReadOnlySpan<byte> entry = font.Slice(12 + 16 * i, 16);
            if (entry[0] == tag[0] && entry[1] == tag[1] && entry[2] == tag[2] && entry[3] == tag[3])
                return font.Slice((int)BinaryPrimitives.ReadUInt32BigEndian(entry[8..]), (int)BinaryPrimitives.ReadUInt32BigEndian(entry[12..]));
        }

        throw new InvalidDataException($"the face has no table {tag}");
    }

    private static int U16(ReadOnlySpan<byte> bytes, int at) => BinaryPrimitives.ReadUInt16BigEndian(bytes[at..]);
}
