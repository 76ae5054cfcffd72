using Ramwright.Frame;
using Ramwright.Geometry;

namespace Ramwright.Solids;

/// <summary>A piece of steel as boxes where it stands in the press.</summary>
internal static class PieceBoxes
{
    /// <summary>Steps that stand for the slanted side of a gusset, each as large as the strip of plate it stands for.</summary>
    private const int GussetSteps = 6;

    /// <summary>Its boxes, and which of them are webs.</summary>
    /// <exception cref="SolidFaultException">It does not lie along an axis.</exception>
    public static IReadOnlyList<(Cuboid Box, bool IsWeb)> Of(Piece piece)
    {
        if (!Lies(piece.Along) || !Lies(piece.Up))
            throw new SolidFaultException($"{piece.Name} lies aslant: only parts along the press's three directions can be drawn as solids");
        if (piece is GussetPlate gusset)
            return [.. Steps(gusset).Select(b => (b, true))];
        return [.. Wall.Of(piece.Shape).Select(w => piece.Mirrored ? w with { Y0 = -w.Y1, Y1 = -w.Y0 } : w).Select(w => (Between(piece, w.Y0, w.Y1, w.Z0, w.Z1), w.IsWeb))];
    }

    /// <summary>Those of its boxes that stand for rounded roots.</summary>
    public static IReadOnlyList<Cuboid> Roots(Piece piece) => piece is GussetPlate ? []
        : [.. Wall.Of(piece.Shape).Where(w => w.IsRoot).Select(w => piece.Mirrored ? w with { Y0 = -w.Y1, Y1 = -w.Y0 } : w).Select(w => Between(piece, w.Y0, w.Y1, w.Z0, w.Z1))];

    private static IEnumerable<Cuboid> Steps(GussetPlate gusset)
    {
        (double along, double up) = (gusset.Gusset.LegAlong, gusset.Gusset.LegUp);
        for (int i = 0; i < GussetSteps; i++)
        {
            double y = -along / 3 + i * along / GussetSteps, height = up * (1 - (i + 0.5) / GussetSteps);
            yield return Between(gusset, y, y + along / GussetSteps, -up / 3, -up / 3 + height);
        }
    }

    private static Cuboid Between(Piece piece, double y0, double y1, double z0, double z1)
    {
        Vector a = piece.At(0, y0, z0), b = piece.At(piece.Length, y1, z1);
        return new Cuboid(Math.Min(a.X, b.X), Math.Max(a.X, b.X), Math.Min(a.Y, b.Y), Math.Max(a.Y, b.Y), Math.Min(a.Z, b.Z), Math.Max(a.Z, b.Z));
    }

    private static bool Lies(Vector v) => Math.Max(Math.Abs(v.X), Math.Max(Math.Abs(v.Y), Math.Abs(v.Z))) > 1 - 1e-9;
}
