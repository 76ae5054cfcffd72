namespace Ramwright.Quantities;

/// <summary>A size that only shows how one is written, or follows a rule of thumb, as the reader's own tape would show it: rounded to what is bought.</summary>
public static class ExampleSize
{
    private const double Inch = 0.0254, Near = 0.02;

    /// <summary>A size in the reader's units; as it stands where it is none, or is in them already.</summary>
    /// <param name="text">As written.</param>
    /// <param name="dimension">What it measures.</param>
    /// <param name="units">The reader's units.</param>
    public static string In(string text, Dimension dimension, UnitSystem units) =>
        units == UnitSystem.Metric || Readout.UnitFor(dimension, UnitSystem.Metric) == Readout.UnitFor(dimension, units)
            || !QuantityText.TryRead(text, dimension, out Quantity size, out _)
            ? text
            : Text(size.Si, dimension, units);

    /// <summary>A size in the reader's units.</summary>
    /// <param name="si">The SI value; must be finite.</param>
    /// <param name="dimension">What it measures.</param>
    /// <param name="units">The reader's units.</param>
    public static string Text(double si, Dimension dimension, UnitSystem units) =>
        units == UnitSystem.Metric ? Readout.Text(si, dimension, units)
        : dimension == Dimension.Length && si / Inch >= 1.0 / 16 ? Fraction(si / Inch) + " in"
        : Readout.Text(si, dimension, units, 2);

    // sixteenths of small things, eighths of middling ones, whole inches of an opening; the coarsest that is near enough
    private static string Fraction(double inches)
    {
        int finest = inches < 1 ? 16 : inches < 4 ? 8 : inches < 12 ? 2 : 1, parts = 1;
        while (parts < finest && Math.Abs(Math.Round(inches * parts) - inches * parts) > Near * inches * parts)
            parts *= 2;
        return Readout.Fraction((int)Math.Round(inches * parts), parts);
    }
}
