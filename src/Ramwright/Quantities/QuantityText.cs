using System.Diagnostics.CodeAnalysis;

namespace Ramwright.Quantities;

/// <summary>Reads quantities as the trade writes them: <c>10,000 psi</c>, <c>1-1/4 in</c>, <c>1.25"</c>, <c>25 t</c>.</summary>
public static class QuantityText
{
    /// <summary>Reads one quantity.</summary>
    /// <param name="text">What was written.</param>
    /// <param name="wanted">What it must measure.</param>
    /// <param name="quantity">The value, when it could be read.</param>
    /// <param name="fault">What is wrong, when it could not.</param>
    /// <returns>Whether it could be read. The value is always finite.</returns>
    public static bool TryRead(
        string text, Dimension wanted, out Quantity quantity, [NotNullWhen(false)] out ReadingFault? fault)
    {
        quantity = default;
        fault = new ReadingFault("not read yet", "nothing", 0, text.Length);
        return false;
    }
}
