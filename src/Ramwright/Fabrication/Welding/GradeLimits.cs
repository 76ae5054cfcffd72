using Ramwright.Stock;
using Ramwright.Workings;

namespace Ramwright.Fabrication.Welding;

/// <summary>What a standard allows a grade to be made of, and whether its carbon equivalent is capped. Per cent.</summary>
/// <param name="Grade">Name of the steel in stock.</param>
/// <param name="UpTo">Greatest thickness, m.</param>
/// <param name="Most">Most of each element.</param>
/// <param name="Cap">Most carbon equivalent CE that may be delivered; null where the standard caps none.</param>
/// <param name="Source">Where that stands.</param>
public sealed record GradeLimits(string Grade, double UpTo, Composition Most, double? Cap, Citation Source)
{
    private static readonly Citation Plain = new("EN 10025-2:2004", "table 2, quality JR; caps of CE by 7.2.3, table 6, from memory");
    private static readonly Citation Hollow = new("EN 10210-1:2006", "table A.1; caps of CE from memory");
    private static readonly Citation Carbon = new("EN 10083-2", "cast analysis of C45", Standing.FromMemory);
    private static readonly Citation Alloyed = new("EN 10083-3", "cast analysis of 42CrMo4", Standing.FromMemory);

    private static readonly GradeLimits[] Known =
    [
        new("S235", 0.040, new(0.17, 0.55, 1.40, Cu: 0.55), 0.35, Plain),
        new("S235", 0.150, new(0.20, 0.55, 1.40, Cu: 0.55), 0.38, Plain),
        new("S235", 0.250, new(0.20, 0.55, 1.40, Cu: 0.55), 0.40, Plain),
        new("S275", 0.040, new(0.21, 0.55, 1.50, Cu: 0.55), 0.40, Plain),
        new("S275", 0.150, new(0.22, 0.55, 1.50, Cu: 0.55), 0.42, Plain),
        new("S275", 0.250, new(0.22, 0.55, 1.50, Cu: 0.55), 0.44, Plain),
        new("S355", 0.030, new(0.24, 0.55, 1.60, Cu: 0.55), 0.45, Plain),
        new("S355", 0.150, new(0.24, 0.55, 1.60, Cu: 0.55), 0.47, Plain),
        new("S355", 0.250, new(0.24, 0.55, 1.60, Cu: 0.55), 0.49, Plain),
        new("S235JRH", 0.016, new(0.17, 0.55, 1.40, Cu: 0.55), 0.37, Hollow),
        new("S235JRH", 0.120, new(0.20, 0.55, 1.40, Cu: 0.55), 0.41, Hollow),
        new("S275J0H", 0.016, new(0.20, 0.55, 1.50, Cu: 0.55), 0.41, Hollow),
        new("S275J0H", 0.120, new(0.22, 0.55, 1.50, Cu: 0.55), 0.44, Hollow),
        new("S355J0H", 0.016, new(0.22, 0.55, 1.60, Cu: 0.55), 0.45, Hollow),
        new("S355J0H", 0.120, new(0.22, 0.55, 1.60, Cu: 0.55), 0.49, Hollow),
        new("A36", 0.203, new(0.29, 0.40, 1.20, Cu: 0.20), null, new Citation("ASTM A36", "plate of the thicker kind", Standing.FromMemory)),
        new("A572-50", 0.102, new(0.23, 0.40, 1.35, Cu: 0.20, V: 0.15), null, new Citation("ASTM A572", "grade 50", Standing.FromMemory)),
        new("A992", 0.102, new(0.23, 0.40, 1.50, 0.35, 0.15, 0.45, 0.60, 0.15), 0.47, new Citation("ASTM A992", "heat analysis and carbon equivalent", Standing.FromMemory)),
        new("A500-B", 0.026, new(0.26, 0.40, 1.35, Cu: 0.20), null, new Citation("ASTM A500", "grade B", Standing.FromMemory)),
        new("C45+N", 0.250, new(0.50, 0.40, 0.80, 0.40, 0.10, 0.40), null, Carbon),
        new("C45+QT", 0.250, new(0.50, 0.40, 0.80, 0.40, 0.10, 0.40), null, Carbon),
        new("42CrMo4+QT", 0.250, new(0.45, 0.40, 0.90, 1.20, 0.30), null, Alloyed),
    ];

    /// <summary>What the standard allows this steel at this thickness; null for a steel no standard speaks of: unknown, found, or an old name.</summary>
    public static GradeLimits? Of(string steel, double thickness)
    {
        foreach (GradeLimits limits in Known)
        {
            if (limits.Grade == steel && thickness <= limits.UpTo)
                return limits;
        }

        return null;
    }

    /// <summary>
    /// The composition that the standard still allows and that is worst to weld: carbon first, for it counts most in CET for each part of CE, then
    /// copper, manganese, molybdenum, nickel, chromium, until the cap of CE is reached.
    /// </summary>
    public Composition Worst()
    {
        if (Cap is not { } cap)
            return Most;
        double left = cap - Most.C;
        // share of CE that one per cent of an element takes
        double Take(double most, double weight)
        {
            double taken = Math.Clamp(left / weight, 0, most);
            left -= taken * weight;
            return taken;
        }

        double Cu = Take(Most.Cu, 1.0 / 15), Mn = Take(Most.Mn, 1.0 / 6), Mo = Take(Most.Mo, 0.2), Ni = Take(Most.Ni, 1.0 / 15), Cr = Take(Most.Cr, 0.2);
        return new Composition(Most.C, Most.Si, Mn, Cr, Mo, Ni, Cu);
    }
}
