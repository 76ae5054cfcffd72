using Ramwright.Quantities;

namespace Ramwright.Workings;

/// <summary>
/// Records how a number came about. Functions take a <c>Working?</c> that is null in a search, and write
/// <c>w?.Step(...)</c>, which then costs one test and evaluates nothing.
/// </summary>
/// <remarks>
/// A formula's text is read by machine too: a test recomputes every step from its own text. Write it with the symbols
/// of the givens, <c>+ − · / ( )</c>, a space for a product, <c>² ³ ⁴ ⁻¹</c> or <c>^</c> for powers, <c>√( ) ∛( )</c>,
/// <c>π</c>, and <c>min max abs sin cos tan atan ln log10 exp sqrt</c> with their arguments in brackets. SI throughout.
/// A product by space straight after a division reads in two ways: <c>a / (b c)</c> or <c>a / b · c</c>, not <c>a / b c</c>.
/// </remarks>
public sealed class Working
{
    private readonly List<Step> _steps = [];
    private readonly List<Remark> _notes = [];

    /// <summary>The steps, in the order they were taken.</summary>
    public IReadOnlyList<Step> Steps => _steps;

    /// <summary>Plain remarks: what was assumed, which branch was taken and why.</summary>
    public IReadOnlyList<Remark> Notes => _notes;

    /// <summary>Writes a step down and hands its result back.</summary>
    public double Step(
        string symbol, string meaning, string formula, double si, Dimension dimension, Citation source,
        params ReadOnlySpan<Given> givens)
    {
        _steps.Add(new Step(symbol, meaning, formula, givens.ToArray(), si, dimension, source));
        return si;
    }

    /// <summary>Writes a value down that was looked up or given, not computed.</summary>
    public void Take(string symbol, string meaning, double si, Dimension dimension, Citation source) =>
        _steps.Add(new Step(symbol, meaning, "", [], si, dimension, source));

    /// <summary>Writes a remark down.</summary>
    public void Note(Remark remark) => _notes.Add(remark);
}
