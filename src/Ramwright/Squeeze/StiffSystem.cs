namespace Ramwright.Squeeze;

/// <summary>
/// A set of rates dy/dt = f(y) some of which are far faster than others. It knows how to solve with its own Jacobian, or with a near
/// likeness of it, so that a chain of cells costs no more than its length. Not to be shared between threads.
/// </summary>
internal abstract class StiffSystem
{
    /// <summary>How many unknowns.</summary>
    public abstract int Size { get; }

    /// <summary>How many sums are kept along the way; they stand behind the unknowns and nothing depends on them.</summary>
    public virtual int Sums => 0;

    /// <summary>The rates.</summary>
    /// <param name="y">The state, unknowns and sums.</param>
    /// <param name="f">Where they go; those of the sums as <see cref="SumRates"/> wants them.</param>
    public abstract void Rates(ReadOnlySpan<double> y, Span<double> f);

    /// <summary>Works out and keeps the Jacobian J at a state.</summary>
    /// <param name="y">The state.</param>
    /// <param name="f">Its rates.</param>
    public abstract void Linearise(ReadOnlySpan<double> y, ReadOnlySpan<double> f);

    /// <summary>Makes ready to solve with a·I − J.</summary>
    /// <param name="a">Above zero, 1/s.</param>
    public abstract void Factor(double a);

    /// <summary>Makes the rates of the sums out of what <see cref="Rates"/> left there and the rates that the method itself found.</summary>
    /// <param name="k">Rates of the unknowns in a stage of the method.</param>
    /// <param name="sums">In and out. Work, say, is force times the way that is really gone, however the speed may be read.</param>
    public virtual void SumRates(ReadOnlySpan<double> k, Span<double> sums)
    {
    }

    /// <summary>Solves (a·I − J) x = b for the unknowns.</summary>
    /// <param name="x">b in, x out.</param>
    public abstract void Solve(Span<double> x);

    /// <summary>The change of each unknown that counts as nothing.</summary>
    /// <param name="i">Which.</param>
    public abstract double Small(int i);
}
