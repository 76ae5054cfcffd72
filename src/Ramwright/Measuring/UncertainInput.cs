using Ramwright.Quantities;

namespace Ramwright.Measuring;

/// <summary>One quantity that a result is worked out from.</summary>
/// <param name="Symbol">Its letter.</param>
/// <param name="Meaning">What it is, in a few words.</param>
/// <param name="Dimension">What it measures.</param>
/// <param name="Estimate">Its value and how well it is known.</param>
/// <param name="From">Which instrument or assumption the uncertainty comes from: what to improve.</param>
public sealed record UncertainInput(string Symbol, string Meaning, Dimension Dimension, Estimate Estimate, string From);

/// <summary>How two inputs go together.</summary>
/// <param name="A">Place of the one among the inputs.</param>
/// <param name="B">Place of the other.</param>
/// <param name="R">Correlation coefficient, −1 to 1.</param>
public readonly record struct Correlation(int A, int B, double R);

/// <summary>What is worked out from the inputs, in their order.</summary>
public delegate double MeasurementModel(ReadOnlySpan<double> inputs);

/// <summary>One line of a budget.</summary>
/// <param name="Input">The input.</param>
/// <param name="Sensitivity">Partial derivative c of the result by it.</param>
/// <param name="Contribution">abs(c) u, in the unit of the result.</param>
/// <param name="Share">Share of the combined variance; with correlation the shares still add up to one, and one may be negative.</param>
public sealed record BudgetLine(UncertainInput Input, double Sensitivity, double Contribution, double Share);
