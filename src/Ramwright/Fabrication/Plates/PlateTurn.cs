using Ramwright.Geometry;

namespace Ramwright.Fabrication.Plates;

/// <summary>How a plate is turned and moved onto a sheet: turned about its own origin first, then moved.</summary>
/// <param name="Angle">Anticlockwise, rad.</param>
/// <param name="Y">m.</param>
/// <param name="Z">m.</param>
public readonly record struct PlateTurn(double Angle, double Y, double Z)
{
    /// <summary>As it lies.</summary>
    public static readonly PlateTurn None;

    /// <summary>Where a point comes to lie.</summary>
    public (double Y, double Z) Of(double y, double z)
    {
        (double sin, double cos) = SinCos();
        return (cos * y - sin * z + Y, sin * y + cos * z + Z);
    }

    /// <summary>Where an outline comes to lie; arcs stay arcs.</summary>
    public Outline Of(Outline outline)
    {
        if (this == None)
            return outline;
        (double sin, double cos) = SinCos();
        return outline.Onto((cos, sin), (-sin, cos)).Moved(Y, Z);
    }

    // quarter turns to the last digit, so that square parts stay square
    private (double Sin, double Cos) SinCos()
    {
        double quarters = Angle / (Math.PI / 2);
        if (Math.Abs(quarters - Math.Round(quarters)) > 1e-12)
            return Math.SinCos(Angle);
        int quarter = ((int)Math.Round(quarters) % 4 + 4) % 4;
        return quarter switch { 0 => (0, 1), 1 => (1, 0), 2 => (0, -1), _ => (-1, 0) };
    }
}
