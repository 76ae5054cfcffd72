namespace Ramwright.Frame;

/// <summary>K = L D Lᵀ in place, within the outline; the diagonal's places are left as they were and D kept apart.</summary>
/// <remarks>Row by row ("active column") after Jennings, Computer Journal 9 (1966), and Bathe and Wilson. From memory.</remarks>
internal static class Factor
{
    /// <summary>Factors rows until a pivot has lost nearly everything to cancellation.</summary>
    /// <param name="u">Outline.</param>
    /// <param name="K">Lower triangle of the matrix; becomes L without its unit diagonal.</param>
    /// <param name="D">Pivots, one for each row.</param>
    /// <param name="from">Row to start with; those above are done, and have pivots above zero.</param>
    /// <param name="doubtful">Share of the diagonal below which a pivot is not trusted.</param>
    /// <param name="least">Pivot below which it is not trusted whatever the diagonal: along, about.</param>
    /// <returns>The row with the doubtful pivot, its L done; the number of rows if there is none.</returns>
    public static int Rows(
        Unknowns u, Span<double> K, Span<double> D, int from, double doubtful, (double Along, double About) least)
    {
        ReadOnlySpan<int> first = u.First, row = u.Row;
        for (int i = from; i < D.Length; i++)
        {
            int fi = first[i];
            Span<double> Li = K.Slice(row[i] + fi, i - fi);
            for (int j = fi + 1; j < i; j++)                       // gᵢⱼ = kᵢⱼ − Σ gᵢₖ lⱼₖ
            {
                int k = Math.Max(fi, first[j]);
                if (k < j)
                    Li[j - fi] -= Products.Dot(K.Slice(row[j] + k, j - k), Li[(k - fi)..]);
            }
            double k_ii = K[row[i] + i], d = k_ii;
            for (int j = 0; j < Li.Length; j++)                    // lᵢⱼ = gᵢⱼ/dⱼ, dᵢ = kᵢᵢ − Σ gᵢⱼ lᵢⱼ
            {
                double g = Li[j], l = g / D[fi + j];
                Li[j] = l;
                d -= g * l;
            }
            D[i] = d;
            double floor = u.Movement[i] % Unknowns.PerNode < 3 ? least.Along : least.About;
            if (!(d > doubtful * k_ii && d > floor))
                return i;
        }
        return D.Length;
    }
}
