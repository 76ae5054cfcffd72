namespace Ramwright.Solids;

/// <summary>
/// The last level, factored as a whole. What moves a free body without straining it is taken out before and after, and stiffened between, so that rounding cannot send it off;
/// other ways that meet no stiffness stand still.
/// </summary>
internal sealed class Coarsest
{
    /// <summary>Stiffness that every way is given at least, as a share of its piece's stiffest.</summary>
    private const double Least = 1e-7;
    private readonly int _n;
    private readonly double[] _factor, _pivot, _x;
    private readonly double[][] _free;

    /// <summary>Factors.</summary>
    /// <param name="rows">The matrix.</param>
    /// <param name="free">Movements that strain nothing, each of unit length and square to the others.</param>
    public Coarsest(BlockRows rows, double[][] free)
    {
        _free = free;
        _n = 6 * rows.Nodes;
        _factor = new double[_n * _n];
        _pivot = new double[_n];
        _x = new double[_n];
        for (int i = 0; i < rows.Nodes; i++)
            for (int e = rows.Start[i]; e < rows.Start[i + 1]; e++)
                for (int a = 0; a < 6; a++)
                    for (int b = 0; b < 6; b++)
                        _factor[(6 * i + a) * _n + 6 * rows.Columns[e] + b] = rows.Blocks[e * BlockRows.Block + a * Eight.Width + b];
        double stiff = 0;
        for (int i = 0; i < _n; i++)
            stiff = Math.Max(stiff, _factor[i * _n + i]);
        foreach (double[] mode in free)
            for (int i = 0; i < _n; i++)
                for (int j = 0; j < _n; j++)
                    _factor[i * _n + j] += stiff * mode[i] * mode[j];
        Factor();
    }

    // L D L', row by row; L below the diagonal
    private void Factor()
    {
        // pieces that nearly move alike leave ways with hardly any stiffness, on which single precision would build
        double[] scale = [.. Enumerable.Range(0, _n).Select(i => Enumerable.Range(i / 6 * 6, 6).Max(k => _factor[k * _n + k]))];
        for (int i = 0; i < _n; i++)
        {
            double first = _factor[i * _n + i] += Least * scale[i];
            Span<double> row = _factor.AsSpan(i * _n, _n);
            for (int j = 0; j < i; j++)
            {
                double sum = row[j];
                ReadOnlySpan<double> other = _factor.AsSpan(j * _n, j);
                for (int k = 0; k < j; k++)
                    sum -= row[k] * other[k];
                row[j] = sum;           // L times D
            }

            double pivot = first;
            for (int j = 0; j < i; j++)
            {
                double l = _pivot[j] > 0 ? row[j] / _pivot[j] : 0;
                pivot -= l * row[j];
                row[j] = l;
            }

            _pivot[i] = pivot > Least / 2 * scale[i] ? pivot : 0;
        }
    }

    /// <summary>Movements for forces, six in eight places for each node.</summary>
    public void Solve(float[] force, float[] movement)
    {
        double[] x = _x;
        for (int i = 0; i < _n; i++)
            x[i] = force[i / 6 * Eight.Width + i % 6];
        TakeOut(x);
        for (int i = 0; i < _n; i++)
        {
            double sum = x[i];
            for (int j = 0; j < i; j++)
                sum -= _factor[i * _n + j] * x[j];
            x[i] = sum;
        }

        for (int i = 0; i < _n; i++)
            x[i] = _pivot[i] > 0 ? x[i] / _pivot[i] : 0;
        for (int i = _n - 1; i >= 0; i--)
        {
            double known = x[i] = _pivot[i] > 0 ? x[i] : 0;
            for (int j = 0; j < i; j++)
                x[j] -= _factor[i * _n + j] * known;
        }

        TakeOut(x);
        for (int i = 0; i < _n; i++)
            movement[i / 6 * Eight.Width + i % 6] = (float)x[i];
    }

    private void TakeOut(double[] x)
    {
        foreach (double[] mode in _free)
        {
            double along = 0;
            for (int i = 0; i < _n; i++)
                along += mode[i] * x[i];
            for (int i = 0; i < _n; i++)
                x[i] -= along * mode[i];
        }
    }
}
