namespace Ramwright.Solid.Tests.Bricks;

/// <summary>The planes of one axis that the bricks are cut by: every face is one, and the spaces between are divided, finer near the faces.</summary>
public static class Grid
{
    private const double Same = 1e-7, Growth = 1.6;

    /// <summary>Planes in rising order.</summary>
    /// <param name="faces">Where a plane must be, m, in any order.</param>
    /// <param name="fine">Longest brick beside a face, m.</param>
    /// <param name="coarse">Longest brick anywhere, m.</param>
    public static double[] Planes(IEnumerable<double> faces, double fine, double coarse)
    {
        var at = new List<double>();
        foreach (double face in faces.Where(double.IsFinite).Order())
        {
            if (at.Count > 0 && face - at[^1] < Same)
                continue;
            if (at.Count > 0)
                at.AddRange(Between(at[^1], face, fine, coarse));
            at.Add(face);
        }

        return [.. at];
    }

    // lengths grow from both ends towards the middle, then all are shrunk alike to fit
    private static IEnumerable<double> Between(double a, double b, double fine, double coarse)
    {
        double length = b - a;
        var lengths = new List<double>();
        double sum = 0, next = fine;
        while (sum + 2 * next < length)
        {
            lengths.Add(next);
            sum += 2 * next;
            next = Math.Min(coarse, next * Growth);
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
