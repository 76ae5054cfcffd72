using Ramwright.Quantities;
using Ramwright.Stock;

namespace Ramwright.Presses;

/// <summary>Settles how force comes onto the frame: the cylinder's foot and the bolster.</summary>
internal static class ResolveBearing
{
    public static RigFoot Foot(Foot? said, double bore, double? barrelOutside, Shelf shelf, Assumptions assume)
    {
        double barrel = barrelOutside ?? 1.2 * bore;
        (double along, double across) = (said?.Diameter, said?.Length, said?.Width) switch
        {
            ({ } d, _, _) => (d, d),
            (_, { } l, { } w) => (l, w),
            (_, { } l, null) => (l, assume.Or(null, "cylinder.foot.width", l, Dimension.Length, "a square foot")),
            (_, null, { } w) => (assume.Or(null, "cylinder.foot.length", w, Dimension.Length, "a square foot"), w),
            _ => Round(barrel, barrelOutside is null, assume),
        };
        string steel = said?.Steel ?? (said?.Thickness is null ? "unknown" : assume.Or(null, "cylinder.foot.steel", "unknown",
            "steel without papers is taken at the lowest structural grade"));
        return new RigFoot(along, across, Math.Min(barrel, across), said?.Thickness, Resolver.SteelNamed(steel, shelf, "cylinder.foot.steel", assume));
    }

    private static (double, double) Round(double barrel, bool guessed, Assumptions assume)
    {
        double d = assume.Or(null, "cylinder.foot.diameter", barrel, Dimension.Length,
            guessed ? "it presses on the frame with its barrel's end, taken as 1.2 bores wide" : "it presses on the frame with its barrel's end");
        return (d, d);
    }

    /// <summary>A bolster; the dies' size along the member it lies on is needed where its length is not said.</summary>
    public static RigBolster? Bolster(Bolster? said, double die, Shelf shelf, Assumptions assume)
    {
        if (said is null)
            return null;
        double t = Resolver.Needed(said.Thickness, "frame.bolster.thickness");
        double along = assume.Or(said.Length, "frame.bolster.length", die + 2 * t, Dimension.Length, "no more of it counts than the die spreads over, at 45°");
        string steel = assume.Or(said.Steel, "frame.bolster.steel", "unknown", "steel without papers is taken at the lowest structural grade");
        return new RigBolster(t, along, Resolver.SteelNamed(steel, shelf, "frame.bolster.steel", assume));
    }
}
