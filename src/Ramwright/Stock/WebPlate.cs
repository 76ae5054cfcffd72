using Ramwright.Geometry;

namespace Ramwright.Stock;

/// <summary>A plate that stands beside the web of a section, from flange to flange and as wide as they reach, clipped at the root by its radius.</summary>
/// <param name="Width">From the web to the flanges' tips, m.</param>
/// <param name="Height">Between the flanges, m.</param>
/// <param name="Clip">Cut off at the root, along the web and along the flange, m.</param>
/// <param name="Sides">On how many sides of the web one stands.</param>
public sealed record WebPlate(double Width, double Height, double Clip, int Sides)
{
    /// <summary>Length of the edge on one flange, m.</summary>
    public double OnFlange => Width - Clip;

    /// <summary>Length of the edge on the web, m.</summary>
    public double OnWeb => Height - 2 * Clip;

    /// <summary>As it is cut.</summary>
    public Outline Outline => new(
    [
        Clip > 0
            ? [new Corner(Clip, 0), new Corner(Width, 0), new Corner(Width, Height), new Corner(Clip, Height), new Corner(0, Height - Clip), new Corner(0, Clip)]
            : Loops.Rectangle(0, Width, 0, Height),
    ]);

    /// <summary>The plate of a section; null where nothing can stand between flanges.</summary>
    public static WebPlate? In(Shape shape) => shape switch
    {
        ISection i => new((i.B - i.Tw) / 2, i.WebHeight, i.R, 2),
        // the flanges' taper is ground off the plate
        Channel c => new(c.B - c.Tw, c.H - 2 * c.FlangeAt(c.Tw + (c.B - c.Tw) / 2), c.R1, 1),
        _ => null,
    };
}
