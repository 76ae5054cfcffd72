using Ramwright.Squeeze;

namespace Ramwright.Tests.Squeeze;

/// <summary>A chain of cells that only cools.</summary>
internal sealed class CoolingChain : StiffSystem
{
    private readonly HeatChain _chain;
    private readonly Tridiagonal _matrix;

    public CoolingChain(HeatChain chain)
    {
        _chain = chain;
        _matrix = new Tridiagonal(chain.Count);
    }

    public override int Size => _chain.Count;

    /// <summary>The heat radiated and convected so far, J.</summary>
    public override int Sums => 2;

    public override void Rates(ReadOnlySpan<double> y, Span<double> f)
    {
        _chain.Rates(y[.._chain.Count], f[.._chain.Count]);
        f[_chain.Count] = _chain.Radiated;
        f[_chain.Count + 1] = _chain.Convected;
    }

    public override void Linearise(ReadOnlySpan<double> y, ReadOnlySpan<double> f)
    {
        Span<double> spare = stackalloc double[_chain.Count];
        _chain.Rates(y[.._chain.Count], spare);
        _chain.Linearise(_matrix.Below, _matrix.On, _matrix.Above);
    }

    public override void Factor(double a) => _matrix.Factor(a);

    public override void Solve(Span<double> x) => _matrix.Solve(x);

    public override double Small(int i) => i < _chain.Count ? 650 * 0.01 : 1;
}
