using Ramwright.Frame;
using Ramwright.Geometry;
using Ramwright.Stock;

namespace Ramwright.Fabrication;

/// <summary>The frame's members as lengths, its gussets as plates: the very pieces that are drawn, weighed and bent.</summary>
internal static class MemberParts
{
    /// <summary>Lengths nearer than this are alike, m.</summary>
    private const double Alike = 1e-6;

    public static void Draw(PartDraft draft)
    {
        foreach (List<GussetPlate> alike in Grouped(draft.Body.Pieces.OfType<GussetPlate>(), (a, b) => a.Gusset == b.Gusset && a.Beam == b.Beam))
        {
            GussetPlate one = alike[0];
            draft.Add(new PlatePart
            {
                Name = one.Name.Split(',')[0],
                Of = one.Member.Part,
                Count = alike.Count,
                Steel = one.Gusset.Steel,
                Thickness = one.Gusset.Thickness,
                Outline = one.Outline,
                Places = [.. alike.Select(Middle)],
            });
        }

        foreach (List<Piece> alike in Grouped(draft.Body.Pieces.Where(p => p is not GussetPlate), (a, b) =>
            a.Member.Part == b.Member.Part && a.Shape == b.Shape && Math.Abs(a.Length - b.Length) < Alike))
        {
            Piece one = alike[0];
            draft.Add(new LengthPart
            {
                Name = one.Member.Shape is Pair ? $"{one.Member.Part}, one half" : one.Member.Part,
                Of = one.Member.Part,
                Count = alike.Count,
                Steel = one.Member.Steel,
                Section = one.Shape,
                Length = one.Length,
                Places = [.. alike.Select(Middle)],
            });
        }
    }

    internal static Vector Middle(Piece piece) => (piece.From + piece.To) / 2;

    private static List<List<T>> Grouped<T>(IEnumerable<T> pieces, Func<T, T, bool> alike)
    {
        var groups = new List<List<T>>();
        foreach (T piece in pieces)
        {
            if (groups.Find(g => alike(g[0], piece)) is { } group)
                group.Add(piece);
            else
                groups.Add([piece]);
        }

        return groups;
    }
}
