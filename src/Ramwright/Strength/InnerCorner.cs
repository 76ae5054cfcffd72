using Ramwright.Quantities;
using Ramwright.Stock;
using Ramwright.Workings;

namespace Ramwright.Strength;

/// <summary>The inner corner of a frame cut from one plate or bent from one bar.</summary>
public static class InnerCorner
{
    /// <summary>Filleted flat bar in bending.</summary>
    public static readonly Citation NotchSource = new("Peterson's Stress Concentration Factors", "opposite shoulder fillets in a flat bar, bending", Standing.FromMemory);

    /// <summary>A corner sharper than this share of the depth is a notch.</summary>
    public const double Sharpest = 1.0 / 20;

    /// <summary>The curved section, or null where the corner is too sharp for a curved beam or the shape is none of plate, round and I.</summary>
    /// <param name="shape">One strand.</param>
    /// <param name="r">Radius of the inner corner, m.</param>
    public static CurvedSection? Curved(Shape shape, double r)
    {
        ArgumentNullException.ThrowIfNull(shape);
        if (!(Check.NotNegative(r) >= Sharpest * shape.Properties.Height))
            return null;
        return shape switch
        {
            Flat f => CurvedSection.Rectangle(f.T, f.H, r),
            Round d => CurvedSection.Circle(d.D, r + d.D / 2),
            ISection i => CurvedSection.Strips([(i.B, i.B, i.Tf), (i.Tw, i.Tw, i.WebHeight), (i.B, i.B, i.Tf)], r),
            _ => null,
        };
    }

    /// <summary>K_t of a bar of depth d that runs with a fillet into one twice as deep, bent; for r between d/40 and 5 d.</summary>
    /// <param name="d">Depth, m.</param>
    /// <param name="r">Radius, m; below d/40 the value at d/40 is given, and the true one is higher.</param>
    /// <param name="w">Where to write it down.</param>
    public static double Notch(double d, double r, Working? w = null)
    {
        double t = Check.Positive(d) / 2, q = t / Math.Clamp(Check.NotNegative(r), t / 20, 10 * t), s = Math.Sqrt(q);
        (double c1, double c2, double c3, double c4) = q <= 2
            ? (1.006 + 0.967 * s + 0.013 * q, -0.270 - 2.372 * s + 0.708 * q, 0.662 + 1.157 * s - 0.908 * q, -0.405 + 0.249 * s - 0.200 * q)
            : (1.058 + 1.002 * s - 0.038 * q, -3.652 + 1.639 * s - 0.436 * q, 6.170 - 5.687 * s + 1.175 * q, -2.558 + 3.046 * s - 0.701 * q);
        double K = c1 + c2 / 2 + c3 / 4 + c4 / 8;
        w?.Step("K_t", "peak over nominal stress at the corner", "C_1 + C_2 / 2 + C_3 / 4 + C_4 / 8", K, Dimension.Number, NotchSource,
            ("C_1", c1, Dimension.Number), ("C_2", c2, Dimension.Number), ("C_3", c3, Dimension.Number), ("C_4", c4, Dimension.Number));
        return K;
    }
}
