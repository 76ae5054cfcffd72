using Ramwright.Quantities;
using Ramwright.Stock;

namespace Ramwright.Presses;

/// <summary>Settles punchings and shearings.</summary>
internal static class ResolveCutting
{
    public static RigCut Of(Punch said, string path, string name, Shelf shelf, Assumptions assume)
    {
        double t = Resolver.Needed(said.Thickness, $"{path}.thickness");
        return new RigCut
        {
            Name = name,
            Kind = ResolveJobs.KindOf(said),
            Path = path,
            Tools = said.Tools,
            Thickness = t,
            Edge = said.Hole is { } d ? Math.PI * d : Resolver.Needed(said.Outline, $"{path}.outline"),
            Hole = said.Hole,
            IsPunch = true,
            Steel = ResolveJobs.Steel(said.Steel, t, $"{path}.steel", shelf, assume),
            Slope = assume.Or(said.Slope, $"{path}.slope", 0, Dimension.Length, "a flat punch"),
            Heat = said.Heat,
            Carbon = said.Heat is null ? 0.002 : assume.Or(said.Carbon, $"{path}.carbon", 0.002, Dimension.Ratio, "mild steel"),
            Assumed = assume.Made,
        };
    }

    public static RigCut Of(Shear said, string path, string name, Shelf shelf, Assumptions assume)
    {
        double t = Resolver.Needed(said.Thickness, $"{path}.thickness");
        return new RigCut
        {
            Name = name,
            Kind = ResolveJobs.KindOf(said),
            Path = path,
            Tools = said.Tools,
            Thickness = t,
            Edge = Resolver.Needed(said.Length, $"{path}.length"),
            IsPunch = false,
            Steel = ResolveJobs.Steel(said.Steel, t, $"{path}.steel", shelf, assume),
            Slope = assume.Or(said.Slope, $"{path}.slope", 0, Dimension.Length, "blades parallel"),
            Assumed = assume.Made,
        };
    }
}
