using System.Globalization;
using System.Reflection;

namespace Ramwright.Tests;

/// <summary>How far an expected value can be leaned on.</summary>
public enum Trust
{
    /// <summary>Seen on a published page.</summary>
    Found,
    /// <summary>Seen on a published page and recomputed by other means.</summary>
    FoundAndRecomputed,
    /// <summary>Quoted from memory.</summary>
    FromMemory,
    /// <summary>Quoted from memory and recomputed by other means.</summary>
    FromMemoryAndRecomputed,
    /// <summary>A closed form of mechanics, computed by other means than the code under test.</summary>
    Recomputed,
    /// <summary>Own numbers put by hand through a published formula.</summary>
    OwnNumbers,
    /// <summary>Common practice; no published source.</summary>
    Practice,
}

/// <summary>
/// One row of outside knowledge: asserts each value and writes it to the list that <c>docs/checks.md</c> is made from.
/// </summary>
/// <param name="Id">The row's name; rows of one table share a letter.</param>
/// <param name="Source">Where the expected values come from.</param>
/// <param name="Trust">How far they can be leaned on.</param>
public sealed record Reference(string Id, string Source, Trust Trust)
{
    private static readonly Lock Gate = new();
    private static readonly string? ListFile = OpenList();

    /// <summary>The computed value must lie within a relative tolerance of the published one.</summary>
    public void Near(string what, double expected, double computed, double relative)
    {
        Write(what, expected, computed, relative.ToString("0.####%", CultureInfo.InvariantCulture));
        Tests.Near.Relative(expected, computed, relative, $"{Id} {what} ({Source})");
    }

    /// <summary>The computed value must lie within an absolute tolerance of the published one.</summary>
    public void Within(string what, double expected, double computed, double absolute)
    {
        Write(what, expected, computed, "±" + absolute.ToString("G3", CultureInfo.InvariantCulture));
        Tests.Near.Absolute(expected, computed, absolute, $"{Id} {what} ({Source})");
    }

    /// <summary>The computed value must be the published one exactly.</summary>
    public void Exactly<T>(string what, T expected, T computed)
    {
        Write(what, expected, computed, "exact");
        Assert.True(Equals(expected, computed), $"{Id} {what} ({Source}): expected {expected}, computed {computed}");
    }

    private void Write(string what, object? expected, object? computed, string tolerance)
    {
        if (ListFile is null)
            return;
        string row = string.Join('\t', Id, what, Text(expected), Text(computed), tolerance, Source, Trust);
        lock (Gate)
            File.AppendAllText(ListFile, row + "\n");
    }

    private static string Text(object? value) => value switch
    {
        double d => d.ToString("G5", CultureInfo.InvariantCulture),
        IFormattable f => f.ToString(null, CultureInfo.InvariantCulture),
        _ => value?.ToString() ?? "",
    };

    private static string? OpenList()
    {
        string? folder = Environment.GetEnvironmentVariable("RAMWRIGHT_CHECKS");
        if (string.IsNullOrEmpty(folder))
            return null;
        Directory.CreateDirectory(folder);
        return Path.Combine(folder, Assembly.GetExecutingAssembly().GetName().Name + ".tsv");
    }
}
