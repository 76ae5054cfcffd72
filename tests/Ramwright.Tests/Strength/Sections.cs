using Ramwright.Stock;

namespace Ramwright.Tests.Strength;

/// <summary>Sections with printed properties, so that these tests do not lean on the section calculator.</summary>
internal static class Sections
{
    /// <summary>Printed in mm and cm; values of EN 10365 tables, S-02, S-03, S-06 to S-08.</summary>
    private static SectionProperties Rolled(
        double h, double b, double tf, double A, double Iy, double Wely, double Wply, double Iz, double Welz, double Wplz,
        double It, double Iw, double Avz) => new()
        {
            A = A * 1e-4,
            Iy = Iy * 1e-8,
            Iz = Iz * 1e-8,
            Wely = Wely * 1e-6,
            Welz = Welz * 1e-6,
            Wply = Wply * 1e-6,
            Wplz = Wplz * 1e-6,
            Avz = Avz * 1e-4,
            Avy = 2 * b * tf * 1e-6,
            Asz = Avz * 1e-4,
            Asy = 2 * b * tf * 1e-6 / 1.2,
            It = It * 1e-8,
            Wt = It * 1e-8 / (tf * 1e-3),
            Iw = Iw * 1e-9,
            Top = h / 2e3,
            Bottom = h / 2e3,
            Right = b / 2e3,
            Left = b / 2e3,
            Thickness = tf * 1e-3,
        };

    public static readonly SectionProperties Ipe200 = Rolled(200, 100, 8.5, 28.48, 1943, 194.3, 220.6, 142.4, 28.47, 44.61, 6.98, 12.99, 14.00);
    public static readonly SectionProperties Ipe240 = Rolled(240, 120, 9.8, 39.12, 3892, 324.3, 366.6, 283.6, 47.27, 73.92, 12.88, 37.39, 19.14);
    public static readonly SectionProperties Heb160 = Rolled(160, 160, 13, 54.25, 2492, 311.5, 354.0, 889.2, 111.2, 170.0, 31.24, 47.94, 17.59);
    public static readonly SectionProperties Heb200 = Rolled(200, 200, 15, 78.08, 5696, 569.6, 642.5, 2003, 200.3, 305.8, 59.28, 171.1, 24.83);
    public static readonly SectionProperties Heb220 = Rolled(220, 220, 16, 91.04, 8091, 735.5, 827.0, 2843, 258.5, 393.9, 76.57, 295.4, 27.92);

    /// <summary>A flat b wide along y and h deep along z, m.</summary>
    public static SectionProperties Flat(double b, double h)
    {
        double thin = Math.Min(b, h), deep = Math.Max(b, h), c1 = 1.0 / (3 + 1.8 * thin / deep);
        return new SectionProperties
        {
            A = b * h,
            Iy = b * h * h * h / 12,
            Iz = h * b * b * b / 12,
            Wely = b * h * h / 6,
            Welz = h * b * b / 6,
            Wply = b * h * h / 4,
            Wplz = h * b * b / 4,
            Avz = b * h,
            Avy = b * h,
            Asz = b * h / 1.2,
            Asy = b * h / 1.2,
            It = deep * thin * thin * thin / 3 * (1 - 0.63 * thin / deep),
            Wt = c1 * deep * thin * thin,
            Iw = 0,
            Top = h / 2,
            Bottom = h / 2,
            Right = b / 2,
            Left = b / 2,
            Thickness = thin,
        };
    }
}
