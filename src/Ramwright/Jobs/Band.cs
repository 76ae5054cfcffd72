using Ramwright.Quantities;

namespace Ramwright.Jobs;

/// <summary>A number as it is known: from low over likely to high.</summary>
/// <param name="Low">The least it may well be.</param>
/// <param name="Likely">The best guess.</param>
/// <param name="High">The most it may well be.</param>
public readonly record struct Band(double Low, double Likely, double High)
{
    /// <summary>The least it may well be.</summary>
    public double Low { get; init; } = Check.NotNegative(Low);
    /// <summary>The best guess.</summary>
    public double Likely { get; init; } = Check.AtLeast(Likely, Low);
    /// <summary>The most it may well be.</summary>
    public double High { get; init; } = Check.AtLeast(High, Likely);

    /// <summary>One number, known exactly.</summary>
    public static Band Exact(double x) => new(x, x, x);

    /// <summary>A best guess with shares of it either way.</summary>
    public static Band Around(double likely, double less, double more) => new(likely * (1 - less), likely, likely * (1 + more));

    /// <summary>Each bound times a number.</summary>
    public Band Times(double k) => new(Low * Check.NotNegative(k), Likely * k, High * k);
}
