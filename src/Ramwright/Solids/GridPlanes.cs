using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Solids;

/// <summary>A face that must be a plane of the grid.</summary>
/// <param name="At">m.</param>
/// <param name="Part">Whose face it is, for the reader.</param>
public readonly record struct Face(double At, string Part);

/// <summary>How long cells may be.</summary>
/// <param name="Fine">Longest cell beside a face, m.</param>
/// <param name="Coarse">Longest cell anywhere, m.</param>
public readonly record struct CellSizes(double Fine, double Coarse)
{
    /// <summary>The same, shorter by a factor.</summary>
    public CellSizes Over(double factor) => new(Fine / factor, Coarse / factor);
}

/// <summary>The planes of one axis that the cells are cut by: every face is one, and the spaces between are divided, finer near the faces.</summary>
public static class GridPlanes
{
    /// <summary>Faces nearer than this are the same face, m: rounding, not intention.</summary>
    public const double Same = 1e-5;

    /// <summary>Two faces nearer than the extent over this leave a sliver that is refused.</summary>
    public const double SliverShare = 5000;

    private const double Growth = 1.6;

    /// <summary>Planes in rising order.</summary>
    /// <param name="faces">Where a plane must be, in any order; faces at infinity are left out.</param>
    /// <param name="cells">How long cells may be.</param>
    /// <exception cref="SolidFaultException">Two faces leave a sliver between them.</exception>
    public static double[] Of(IEnumerable<Face> faces, CellSizes cells)
    {
        Face[] sorted = [.. faces.Where(f => double.IsFinite(f.At)).OrderBy(f => f.At)];
        var kept = new List<Face>();
        foreach (Face face in sorted)
            if (kept.Count == 0 || face.At - kept[^1].At > Same)
                kept.Add(face);
        double least = (kept[^1].At - kept[0].At) / SliverShare;
        var at = new List<double> { kept[0].At };
        for (int i = 1; i < kept.Count; i++)
        {
            if (kept[i].At - kept[i - 1].At < least)
                throw Sliver(kept[i - 1], kept[i], least);
            at.AddRange(Between(kept[i - 1].At, kept[i].At, cells));
            at.Add(kept[i].At);
        }

        return [.. at];
    }

    private static SolidFaultException Sliver(Face a, Face b, double least)
    {
        string whose = a.Part == b.Part ? $"two faces of {a.Part}" : $"a face of {a.Part} and a face of {b.Part}";
        return new SolidFaultException(
            new Remark($"{whose} stand {{0}} from each other: too thin to cut into cells here. Bring them flush, or at least {{1}} apart.", Remark.Of(b.At - a.At, Dimension.Length), Remark.Of(least, Dimension.Length)));
    }

    // lengths grow from both ends towards the middle, then all are shrunk alike to fit
    private static IEnumerable<double> Between(double a, double b, CellSizes cells)
    {
        double length = b - a;
        var lengths = new List<double>();
        double sum = 0, next = cells.Fine;
        while (sum + 2 * next < length)
        {
            lengths.Add(next);
            sum += 2 * next;
            next = Math.Min(cells.Coarse, next * Growth);
        }

        double rest = length - sum;
        int middle = Math.Max(lengths.Count == 0 ? 1 : 0, (int)Math.Ceiling(rest / next - 1e-6));
        var all = new List<double>(lengths);
        for (int i = 0; i < middle; i++)
            all.Add(rest / middle);
        all.AddRange(Enumerable.Reverse(lengths));
        double scale = length / all.Sum(), x = a;
        for (int i = 0; i < all.Count - 1; i++)
            yield return x += all[i] * scale;
    }
}
