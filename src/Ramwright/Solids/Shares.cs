namespace Ramwright.Solids;

/// <summary>How work is shared out over the cores: always cut the same way, whatever the machine, so that sums come out the same everywhere.</summary>
internal static class Shares
{
    /// <summary>Into how many parts a vector is cut.</summary>
    public const int Count = 16;

    /// <summary>Less work than this is not worth a second core.</summary>
    private const int Worth = 150_000;

    private static readonly ParallelOptions Cores = new() { MaxDegreeOfParallelism = Math.Min(Environment.ProcessorCount, Count / 2) };

    /// <summary>Runs a number of pieces, each by its number.</summary>
    /// <param name="count">How many.</param>
    /// <param name="work">How many numbers are touched in all.</param>
    /// <param name="each">What to do.</param>
    public static void Each(int count, int work, Action<int> each)
    {
        if (work < Worth || count < 2)
            for (int i = 0; i < count; i++)
                each(i);
        else
            Parallel.For(0, count, Cores, each);
    }

    /// <summary>Runs over a length in parts.</summary>
    public static void Run(int length, int work, Action<int, int> part) =>
        Each(Count, work, i => part(Cut(length, i), Cut(length, i + 1)));

    /// <summary>Sums over a length in parts, added in order.</summary>
    public static double Sum(int length, int work, Func<int, int, double> part)
    {
        var sums = new double[Count];
        Each(Count, work, i => sums[i] = part(Cut(length, i), Cut(length, i + 1)));
        double sum = 0;
        foreach (double s in sums)
            sum += s;
        return sum;
    }

    /// <summary>Where a part starts; a whole number of eights, so that no node is cut through.</summary>
    public static int Cut(int length, int part) => part == Count ? length : (int)((long)length * part / Count) & ~7;

    /// <summary>Cuts layers of cells into parts of like size, each of whole layers: parts that are not neighbours share no node.</summary>
    public static int[] OfLayers(int[] layers)
    {
        var cuts = new List<int> { 0 };
        int all = layers[^1];
        for (int i = 1; i < layers.Length; i++)
            if (layers[i] > cuts[^1] && (layers[i] >= (long)all * cuts.Count / Count || i == layers.Length - 1))
                cuts.Add(layers[i]);
        return [.. cuts];
    }
}
