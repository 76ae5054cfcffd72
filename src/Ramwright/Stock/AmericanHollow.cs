using System.Globalization;
using Ramwright.Workings;

namespace Ramwright.Stock;

/// <summary>Hollow sections of the American tables, cold formed to ASTM A500, reckoned with their design wall.</summary>
public static class AmericanHollow
{
    /// <summary>Design wall over the wall that a section is sold by.</summary>
    public const double DesignWall = 0.93;

    /// <summary>Where design wall and corners come from.</summary>
    public static readonly Citation Source = new("AISC 360-16; AISC Manual part 1", "B4.2: design wall 0.93 of nominal for ASTM A500; outside corners 2 t", Standing.FromMemory);

    private const double Inch = 0.0254;

    /// <summary>Square or rectangular, by its sizes in metres and the wall it is sold by.</summary>
    public static RectangularHollow Rectangular(double h, double b, double nominal)
    {
        double t = DesignWall * nominal;
        return new RectangularHollow(h, b, t, 2 * t, t, ColdFormed: true) { Name = $"HSS {Inches(h)}x{Inches(b)}x{Inches(nominal)}", Source = Source };
    }

    /// <summary>Round.</summary>
    public static CircularHollow Circular(double d, double nominal) =>
        new(d, DesignWall * nominal, ColdFormed: true) { Name = $"HSS {Inches(d)}x{Inches(nominal)}", Source = Source };

    private static string Inches(double m) => (m / Inch).ToString("0.####", CultureInfo.InvariantCulture);
}
