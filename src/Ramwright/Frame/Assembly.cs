namespace Ramwright.Frame;

/// <summary>Adds members into the matrix of the frame.</summary>
internal static class Assembly
{
    /// <summary>Adds one member.</summary>
    /// <param name="unknowns">Numbering and outline.</param>
    /// <param name="k">The member's stiffness, 12 × 12 row by row; only the lower triangle is read.</param>
    /// <param name="from">Its first node.</param>
    /// <param name="to">Its second node.</param>
    /// <param name="K">The matrix, kept within its outline.</param>
    public static void Add(Unknowns unknowns, ReadOnlySpan<double> k, int from, int to, Span<double> K)
    {
        Span<int> at = stackalloc int[Beam.Moves];
        unknowns.Of.AsSpan(from * Unknowns.PerNode, Unknowns.PerNode).CopyTo(at);
        unknowns.Of.AsSpan(to * Unknowns.PerNode, Unknowns.PerNode).CopyTo(at[Unknowns.PerNode..]);
        int[] row = unknowns.Row;
        for (int i = 0; i < Beam.Moves; i++)
        {
            int I = at[i];
            if (I < 0)
                continue;
            ReadOnlySpan<double> ki = k.Slice(i * Beam.Moves, i + 1);
            for (int j = 0; j < ki.Length; j++)
            {
                int J = at[j];
                if (J >= 0)
                    K[I >= J ? row[I] + J : row[J] + I] += ki[j];
            }
        }
    }
}
