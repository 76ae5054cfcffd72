using Ramwright.Geometry;
using Ramwright.Quantities;

namespace Ramwright.Cli;

/// <summary>A line as it is typed: <c>0 mm, 0 mm, 100 mm to 0 mm, 0 mm, 700 mm</c>.</summary>
internal static class LineText
{
    private const string Wanted = "two places, each across, deep and up, such as \"0 mm, 0 mm, 100 mm to 0 mm, 0 mm, 700 mm\"";

    /// <summary>Reads it; null where it cannot be read, with the reason.</summary>
    public static (Vector From, Vector To)? Read(string said, out string why)
    {
        why = Wanted;
        string[] ends = said.Split(" to ");
        if (ends.Length != 2 || Place(ends[0], ref why) is not { } from || Place(ends[1], ref why) is not { } to)
            return null;
        if ((to - from).Length < 1e-6)
        {
            why = "its two ends are one place";
            return null;
        }

        return (from, to);
    }

    private static Vector? Place(string said, ref string why)
    {
        string[] parts = said.Split(',');
        if (parts.Length != 3)
            return null;
        var at = new double[3];
        for (int i = 0; i < 3; i++)
        {
            if (!QuantityText.TryRead(parts[i].Trim(), Dimension.Length, out Quantity length, out ReadingFault? fault))
            {
                why = $"{fault.Found}; {Wanted}";
                return null;
            }

            at[i] = length.Si;
        }

        return new Vector(at[0], at[1], at[2]);
    }
}
