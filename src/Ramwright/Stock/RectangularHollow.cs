using Ramwright.Geometry;
using Ramwright.Workings;

namespace Ramwright.Stock;

/// <summary>A square or rectangular hollow section of one wall thickness, m.</summary>
/// <param name="H">Depth.</param>
/// <param name="B">Width.</param>
/// <param name="T">Wall.</param>
/// <param name="Ro">Outer corner radius.</param>
/// <param name="Ri">Inner corner radius.</param>
/// <param name="ColdFormed">Cold formed; otherwise hot finished.</param>
/// <exception cref="ArgumentOutOfRangeException">Dimensions that do not make a hollow section.</exception>
public sealed record RectangularHollow(double H, double B, double T, double Ro, double Ri, bool ColdFormed = false) : Shape
{
    /// <summary>Corner radii for the properties of hot finished sections.</summary>
    public static readonly Citation HotSource = new("EN 10210-2:2006", "corner radii 1.5 t and 1.0 t");

    /// <summary>Corner radii for the properties of cold formed sections.</summary>
    public static readonly Citation ColdSource = new("EN 10219-2:2006", "corner radii 2.0 t to 6 mm, 2.5 t to 10 mm, 3.0 t above");

    /// <summary>Depth, m.</summary>
    public double H { get; } = DimensionCheck.Above(0, H);
    /// <summary>Width, m.</summary>
    public double B { get; } = DimensionCheck.Above(0, B);
    /// <summary>Wall, m.</summary>
    public double T { get; } = DimensionCheck.Between(0, T, Math.Min(H, B) / 2);
    /// <summary>Outer corner radius, m.</summary>
    public double Ro { get; } = DimensionCheck.From(0, Ro, Math.Min(H, B) / 2);
    /// <summary>Inner corner radius, m.</summary>
    public double Ri { get; } = Ro - Ri < (2 + Math.Sqrt(2)) * T
        ? DimensionCheck.From(0, Ri, Math.Min(H, B) / 2 - T)
        : throw new ArgumentOutOfRangeException(nameof(Ri), Ri, "The corner radii leave no wall at the corners.");

    /// <inheritdoc/>
    public override BucklingCurve CurveY => ColdFormed ? BucklingCurve.C : BucklingCurve.A;

    /// <inheritdoc/>
    public override BucklingCurve CurveZ => CurveY;

    /// <summary>A hot finished section with the corner radii of EN 10210-2.</summary>
    public static RectangularHollow Hot(string name, double h, double b, double t, Citation? source = null) =>
        new(h, b, t, 1.5 * t, t) { Name = name, Source = source ?? HotSource };

    /// <summary>A cold formed section with the corner radii of EN 10219-2.</summary>
    public static RectangularHollow Cold(string name, double h, double b, double t, Citation? source = null)
    {
        double ro = t * (t <= 0.006 ? 2.0 : t <= 0.010 ? 2.5 : 3.0);
        return new(h, b, t, ro, ro - t, ColdFormed: true) { Name = name, Source = source ?? ColdSource };
    }

    /// <inheritdoc/>
    protected override Outline Draw()
    {
        double y = B / 2, z = H / 2, u = B / 2 - T, v = H / 2 - T;
        return new Outline(
        [
            Loops.Rounded((-y, -z, Ro), (y, -z, Ro), (y, z, Ro), (-y, z, Ro)),
            Loops.Rounded((-u, -v, Ri), (u, -v, Ri), (u, v, Ri), (-u, v, Ri)).AsHole(),
        ]);
    }

    /// <inheritdoc/>
    protected override SectionProperties Compute()
    {
        double A = Outline.Area();
        double rc = (Ro + Ri) / 2;
        double hm = 2 * (B - T + (H - T)) - 2 * rc * (4 - Math.PI);         // length of the wall's middle line
        double Ah = (B - T) * (H - T) - rc * rc * (4 - Math.PI);            // area it encloses
        double K = 2 * Ah * T / hm;
        double It = T * T * T * hm / 3 + 2 * K * Ah;
        return new ShearAndTorsion
        {
            Avz = A * H / (B + H),
            Avy = A * B / (B + H),
            Asz = 2 * T * (H - T),
            Asy = 2 * T * (B - T),
            It = It,
            Wt = It / (T + K / T),
            Thickness = T,
        }.With(Outline);
    }

    internal override IReadOnlyList<WebStrip> Webs =>
    [
        new(-B / 2, -B / 2 + T, H / 2 - Math.Max(Ro, T + Ri)),
        new(B / 2 - T, B / 2, H / 2 - Math.Max(Ro, T + Ri)),
    ];

    internal override IReadOnlyList<FlangeStrip> BottomFlange
    {
        get
        {
            double y = B / 2 - Math.Max(Ro, T + Ri);
            return [new(-y, y, -H / 2, -H / 2 + T, -H / 2 + T)];
        }
    }
}
