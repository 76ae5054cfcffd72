namespace Ramwright.Frame;

/// <summary>Solves L D Lᵀ x = b, one right side at a time, in place.</summary>
internal static class Substitution
{
    /// <summary>b becomes x.</summary>
    public static void Solve(Unknowns u, ReadOnlySpan<double> L, ReadOnlySpan<double> D, Span<double> b)
    {
        ReadOnlySpan<int> first = u.First, row = u.Row;
        for (int i = 0; i < b.Length; i++)                         // forward: yᵢ = bᵢ − Σ lᵢⱼ yⱼ
        {
            int f = first[i];
            if (f < i)
                b[i] -= Products.Dot(L.Slice(row[i] + f, i - f), b[f..]);
        }
        for (int i = 0; i < b.Length; i++)
            b[i] /= D[i];
        Back(u, L, b);
    }

    /// <summary>Lᵀ x = b over the first rows, as many as <paramref name="b"/> is long; b becomes x.</summary>
    public static void Back(Unknowns u, ReadOnlySpan<double> L, Span<double> b)
    {
        ReadOnlySpan<int> first = u.First, row = u.Row;
        for (int i = b.Length - 1; i > 0; i--)
        {
            int f = first[i];
            if (f < i)
                Products.Subtract(b[i], L.Slice(row[i] + f, i - f), b[f..]);
        }
    }
}
