using Ramwright.Workings;

namespace Ramwright.Tests;

/// <summary>Holds shown working to its word.</summary>
public static class WorkingCheck
{
    /// <summary>
    /// Recomputes every step that has a formula from the formula's text and its givens. Fails, naming each step, where the
    /// result differs by more than 1e-9 of it, where the text cannot be read, where a given does not occur in the text,
    /// or where a value looked up is not finite; and fails when there was no formula to check.
    /// </summary>
    public static void Holds(Working w)
    {
        List<string> wrong = [];
        int formulas = 0;
        foreach (Step step in w.Steps)
        {
            if (step.Formula.Length > 0)
                formulas++;
            if (Complaint(step) is { } complaint)
                wrong.Add($"{step.Symbol} ({step.Meaning}) = {step.Formula}: {complaint}");
        }
        if (formulas == 0)
            wrong.Add("the working has no step with a formula, so there is nothing to hold it to");
        if (wrong.Count > 0)
            Assert.Fail(string.Join(Environment.NewLine, wrong));
    }

    /// <summary>Fails unless the working shows these symbols, in this order: so that no step that leads to the result is left out.</summary>
    /// <param name="w">The working.</param>
    /// <param name="symbols">Symbols of its steps, with spaces between.</param>
    public static void Shows(Working w, string symbols) => Assert.Equal(symbols, string.Join(' ', w.Steps.Select(s => s.Symbol)));

    private static string? Complaint(Step step)
    {
        if (!double.IsFinite(step.Si))
            return $"the result recorded is {step.Si}";
        if (step.Formula.Length == 0)
            return null;

        var used = new HashSet<string>();
        double value;
        try
        {
            value = FormulaText.Evaluate(step.Formula, step.Givens, used);
        }
        catch (Exception e) when (e is FormatException or ArithmeticException)
        {
            return e.Message;
        }

        double off = Math.Abs(value - step.Si);
        if (!(off <= 1e-9 * Math.Max(Math.Abs(value), Math.Abs(step.Si))))
            return $"the text comes to {value:R}, the code to {step.Si:R}";
        foreach (Given given in step.Givens)
        {
            if (!used.Contains(given.Symbol))
                return $"{given.Symbol} is given but does not occur";
        }
        return null;
    }
}
