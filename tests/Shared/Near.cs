namespace Ramwright.Tests;

/// <summary>Compares numbers and, when they differ, says by how much.</summary>
public static class Near
{
    /// <summary>Fails unless <paramref name="computed"/> lies within a relative tolerance of <paramref name="expected"/>.</summary>
    public static void Relative(double expected, double computed, double tolerance, string what = "")
    {
        double off = Math.Abs(computed - expected) / Math.Max(Math.Abs(expected), double.Epsilon);
        if (!(off <= tolerance))
            Assert.Fail($"{what}: expected {expected:G7}, computed {computed:G7}, off by {off:G3} of it, allowed {tolerance:G3}");
    }

    /// <summary>Fails unless <paramref name="computed"/> lies within an absolute tolerance of <paramref name="expected"/>.</summary>
    public static void Absolute(double expected, double computed, double tolerance, string what = "")
    {
        double off = Math.Abs(computed - expected);
        if (!(off <= tolerance))
            Assert.Fail($"{what}: expected {expected:G7}, computed {computed:G7}, off by {off:G3}, allowed {tolerance:G3}");
    }
}
