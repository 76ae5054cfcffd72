namespace Ramwright.Squeeze;

/// <summary>Solves with a·I − J where J has three diagonals, by elimination from the top.</summary>
internal sealed class Tridiagonal(int n)
{
    private readonly double[] _pivot = new double[n];
    private readonly double[] _factor = new double[n];

    /// <summary>J below its diagonal; the first is not used.</summary>
    public double[] Below { get; } = new double[n];
    /// <summary>J on its diagonal.</summary>
    public double[] On { get; } = new double[n];
    /// <summary>J above its diagonal; the last is not used.</summary>
    public double[] Above { get; } = new double[n];

    public void Factor(double a)
    {
        _pivot[0] = a - On[0];
        for (int i = 1; i < n; i++)
        {
            _factor[i] = -Below[i] / _pivot[i - 1];
            _pivot[i] = a - On[i] + _factor[i] * Above[i - 1];
        }
    }

    public void Solve(Span<double> x)
    {
        for (int i = 1; i < n; i++)
            x[i] -= _factor[i] * x[i - 1];
        x[n - 1] /= _pivot[n - 1];
        for (int i = n - 2; i >= 0; i--)
            x[i] = (x[i] + Above[i] * x[i + 1]) / _pivot[i];
    }
}
