namespace Ramwright.Measuring;

/// <summary>The lower triangle L of a correlation matrix, R = L Lᵀ: what turns independent draws into ones that go together.</summary>
internal static class CorrelationFactor
{
    /// <summary>Finds it.</summary>
    /// <exception cref="ArgumentException">The correlations contradict one another.</exception>
    public static double[,] Of(int n, IReadOnlyList<Correlation> correlations)
    {
        var L = new double[n, n];
        for (int i = 0; i < n; i++)
            L[i, i] = 1;
        foreach ((int a, int b, double r) in correlations)
            L[Math.Max(a, b), Math.Min(a, b)] = r;
        for (int i = 0; i < n; i++)
        {
            for (int j = 0; j <= i; j++)
            {
                double sum = L[i, j];
                for (int k = 0; k < j; k++)
                    sum -= L[i, k] * L[j, k];
                if (i == j)
                {
                    // full correlation leaves a rounding error below zero
                    if (sum < -1e-9)
                        throw new ArgumentException("these correlations contradict one another", nameof(correlations));
                    L[i, i] = Math.Sqrt(Math.Max(0, sum));
                }
                else
                {
                    L[i, j] = L[j, j] > 1e-12 ? sum / L[j, j] : 0;
                }
            }
        }

        return L;
    }
}
