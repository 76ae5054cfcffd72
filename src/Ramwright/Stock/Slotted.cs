using Ramwright.Geometry;

namespace Ramwright.Stock;

/// <summary>
/// The net section of an I where a through-bar passes: a slot cut through both flanges, and with them the web, over the
/// bar's whole height.
/// </summary>
/// <param name="Of">The I before cutting.</param>
/// <param name="Slot">Width of the slot across the flanges, m: the bar's thickness and its play.</param>
/// <remarks>
/// The two halves left beside the slot act as one piece only with the bar welded in all round; the bar then carries the
/// web's shear. Shear and torsion here are what the halves have by themselves.
/// </remarks>
/// <exception cref="ArgumentOutOfRangeException">A slot that leaves nothing of the flanges.</exception>
public sealed record Slotted(ISection Of, double Slot) : Shape
{
    /// <summary>The I before cutting.</summary>
    public ISection Of { get; } = Of ?? throw new ArgumentNullException(nameof(Of));

    /// <summary>Width of the slot across the flanges, m.</summary>
    public double Slot { get; } = DimensionCheck.Between(0, Slot, Of.B);

    /// <inheritdoc/>
    public override double Thinnest => Of.Thinnest;

    /// <inheritdoc/>
    public override BucklingCurve CurveY => Of.CurveY;

    /// <inheritdoc/>
    public override BucklingCurve CurveZ => Of.CurveZ;

    /// <inheritdoc/>
    protected override Outline Draw()
    {
        double b = Of.B / 2, h = Of.H / 2, i = h - Of.Tf, w = Of.Tw / 2, r = Of.R, s = Slot / 2;
        if (s < w)                                                  // a channel is left on each side
            return Both(new Outline([Loops.Rounded(
                (s, -h, 0), (b, -h, 0), (b, -i, 0), (w, -i, r), (w, i, r), (b, i, 0), (b, h, 0), (s, h, 0))]));

        if (s >= w + r)                                             // flange tips only
            return Both(new Outline([Loops.Rectangle(s, b, i, h), Loops.Rectangle(s, b, -h, -i)]));

        // Flange tips with what is left of the root fillet, an arc about (w + r, i − r).
        double reach = w + r - s, drop = Math.Sqrt(r * r - reach * reach);
        double turn = Math.PI / 2 - Math.Atan2(drop, reach);        // from the slot's edge to the flange's face
        IReadOnlyList<Corner> upper =
            [new(w + r, i), new(b, i), new(b, h), new(s, h), new(s, i - r + drop, -Math.Tan(turn / 4))];
        var top = new Outline([upper]);
        return Both(top.With(top.Upended()));
    }

    private static Outline Both(Outline right) => right.With(right.Mirrored());

    /// <inheritdoc/>
    protected override SectionProperties Compute()
    {
        double A = Outline.Area(), tip = (Of.B - Slot) / 2, web = Math.Max(0, Of.Tw - Slot), tf = Of.Tf;
        double It = (4 * tip * tf * tf * tf + 2 * Of.WebHeight * Math.Pow(web / 2, 3)) / 3;
        double tips = 4 * tip * tf;
        return new ShearAndTorsion
        {
            Avz = Math.Max(2.0 / 3 * tips, web * Of.WebHeight),
            Avy = 2.0 / 3 * tips,
            Asz = Math.Max(5.0 / 6 * tips, web * (Of.H - tf)),
            Asy = 5.0 / 6 * tips,
            It = It,
            Wt = It / tf,
            Thickness = Of.Properties.Thickness,
        }.With(Outline);
    }
}
