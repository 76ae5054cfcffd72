namespace Ramwright.Squeeze;

/// <summary>Solves with a·I − J where J is small and full, by elimination without exchange of rows: the diagonal carries a.</summary>
internal sealed class Dense(int n)
{
    private readonly double[,] _j = new double[n, n];
    private readonly double[,] _lu = new double[n, n];

    /// <summary>J.</summary>
    public ref double this[int row, int column] => ref _j[row, column];

    public void Factor(double a)
    {
        for (int i = 0; i < n; i++)
        {
            for (int k = 0; k < n; k++)
                _lu[i, k] = (i == k ? a : 0) - _j[i, k];
        }

        for (int p = 0; p < n; p++)
        {
            for (int i = p + 1; i < n; i++)
            {
                double factor = _lu[i, p] /= _lu[p, p];
                for (int k = p + 1; k < n; k++)
                    _lu[i, k] -= factor * _lu[p, k];
            }
        }
    }

    public void Solve(Span<double> x)
    {
        for (int i = 1; i < n; i++)
        {
            for (int k = 0; k < i; k++)
                x[i] -= _lu[i, k] * x[k];
        }

        for (int i = n - 1; i >= 0; i--)
        {
            for (int k = i + 1; k < n; k++)
                x[i] -= _lu[i, k] * x[k];
            x[i] /= _lu[i, i];
        }
    }
}
