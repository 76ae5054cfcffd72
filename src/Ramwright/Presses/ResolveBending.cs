using Ramwright.Quantities;
using Ramwright.Stock;

namespace Ramwright.Presses;

/// <summary>Settles bends and straightenings.</summary>
internal static class ResolveBending
{
    public static RigVBend Of(VBend said, string path, string name, Shelf shelf, Assumptions assume)
    {
        double t = Resolver.Needed(said.Thickness, $"{path}.thickness");
        return new RigVBend
        {
            Name = name,
            Kind = ResolveJobs.KindOf(said),
            Path = path,
            Tools = said.Tools,
            Thickness = t,
            Length = Resolver.Needed(said.Length, $"{path}.length"),
            Steel = ResolveJobs.Steel(said.Steel, t, $"{path}.steel", shelf, assume),
            Angle = assume.Or(said.Angle, $"{path}.angle", Math.PI / 2, Dimension.Angle, "a square corner"),
            Opening = said.Opening,
            Dies = [.. (said.Dies ?? []).Where(d => d?.Opening is not null).Select(d => new RigVeeDie(d.Opening!.Value, d.Length)).OrderBy(d => d.Opening)],
            PunchRadius = assume.Or(said.PunchRadius, $"{path}.punch-radius", t, Dimension.Length, "the plate's thickness"),
            Leg = said.Leg,
            OtherLeg = said.OtherLeg,
            Assumed = assume.Made,
        };
    }

    public static RigBarBend Of(BarBend said, string path, string name, Shelf shelf, Assumptions assume)
    {
        Shape bar = BendingRules.Standing(ResolveJobs.Section(said.Bar, $"{path}.bar", shelf), said.OnEdge == true);
        double depth = BendingRules.Depth(bar);
        bool hollow = bar is CircularHollow or RectangularHollow;
        return new RigBarBend
        {
            Name = name,
            Kind = ResolveJobs.KindOf(said),
            Path = path,
            Tools = said.Tools,
            Bar = bar,
            Steel = ResolveJobs.Steel(said.Steel, bar.Properties.Thickness, $"{path}.steel", shelf, assume),
            Span = Resolver.Needed(said.Span, $"{path}.span"),
            Radius = assume.Or(said.Radius, $"{path}.radius", (hollow ? 4 : 3) * depth, Dimension.Length,
                hollow ? "four times its depth, what tube takes on a former" : "three times its depth"),
            Angle = assume.Or(said.Angle, $"{path}.angle", Math.PI / 6, Dimension.Angle, "30°, a bend of one pressing"),
            Heat = said.Heat,
            Carbon = said.Heat is null ? 0.002 : assume.Or(said.Carbon, $"{path}.carbon", 0.002, Dimension.Ratio, "mild steel"),
            Assumed = assume.Made,
        };
    }

    public static RigStraighten Of(Straighten said, string path, string name, Shelf shelf, Assumptions assume)
    {
        Shape bar = BendingRules.Standing(ResolveJobs.Section(said.Bar, $"{path}.bar", shelf), said.OnEdge == true);
        return new RigStraighten
        {
            Name = name,
            Kind = ResolveJobs.KindOf(said),
            Path = path,
            Tools = said.Tools,
            Bar = bar,
            Steel = ResolveJobs.Steel(said.Steel, bar.Properties.Thickness, $"{path}.steel", shelf, assume),
            Span = Resolver.Needed(said.Span, $"{path}.span"),
            Bow = Resolver.Needed(said.Bow ?? said.Runout / 2, $"{path}.bow"),
            Assumed = assume.Made,
        };
    }
}
