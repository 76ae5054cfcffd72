using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Jobs;

/// <summary>
/// Smooth opposed tools narrower than the work is high: Hill's slip-line field. A narrow tool needs more pressure, because the metal beside it holds.
/// </summary>
public static class NarrowBite
{
    /// <summary>Hill's field, computed by the method of characteristics.</summary>
    public static readonly Citation Source = new("R. Hill, The Mathematical Theory of Plasticity (1950); Hosford and Caddell, Metal Forming", "indentation of a strip by opposed flat tools", Standing.FromMemory);

    /// <summary>Pressure of a flat punch on a thick body over 2k: 1 + π/2, Prandtl 1920.</summary>
    public static readonly double ThickBody = 1 + Math.PI / 2;

    // h/b and p/2k for fan angles of 0, 5, 10 ... 75 degrees; a table, because the field has no closed form
    private static readonly double[] Heights =
        [1, 1.183, 1.383, 1.605, 1.853, 2.129, 2.440, 2.792, 3.190, 3.644, 4.162, 4.754, 5.434, 6.216, 7.117, 8.158];
    private static readonly double[] Pressures =
        [1, 1.0137, 1.0499, 1.1036, 1.1715, 1.2515, 1.3420, 1.4420, 1.5505, 1.6669, 1.7904, 1.9205, 2.0568, 2.1985, 2.3454, 2.4968];

    private const double ThickFrom = 8.71;      // where the field's pressure reaches that of a thick body

    /// <summary>Pressure over 2k.</summary>
    /// <param name="hOverB">Height over the tool's width, 1 or more.</param>
    /// <param name="w">Where to write it down.</param>
    /// <exception cref="ArgumentOutOfRangeException">A height less than the tool's width.</exception>
    public static double Multiplier(double hOverB, Working? w = null)
    {
        Check.AtLeast(hOverB, 1);
        double c = Between(hOverB);
        w?.Take("c_h", "pressure of a bite narrower than the bar is high, over 2k", c, Dimension.Number, Source);
        return c;
    }

    private static double Between(double x)
    {
        int last = Heights.Length - 1;
        if (x >= ThickFrom)
            return ThickBody;
        if (x >= Heights[last])
            return Pressures[last] + (ThickBody - Pressures[last]) * (x - Heights[last]) / (ThickFrom - Heights[last]);
        int i = 1;
        while (Heights[i] < x)
            i++;
        // a cubic through the slopes of the neighbours: the curve starts level, so straight lines would be high
        double x0 = Heights[i - 1], x1 = Heights[i], h = x1 - x0, t = (x - x0) / h;
        double a = Slope(i - 1) * h, b = Slope(i) * h, y0 = Pressures[i - 1], y1 = Pressures[i];
        return y0 + t * (a + t * (3 * (y1 - y0) - 2 * a - b + t * (2 * (y0 - y1) + a + b)));
    }

    private static double Slope(int i)
    {
        if (i == 0)
            return 0;
        int next = Math.Min(i + 1, Heights.Length - 1);
        return (Pressures[next] - Pressures[i - 1]) / (Heights[next] - Heights[i - 1]);
    }
}
