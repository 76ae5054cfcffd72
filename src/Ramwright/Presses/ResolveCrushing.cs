using Ramwright.Quantities;
using Ramwright.Stock;
using Ramwright.Workings;

namespace Ramwright.Presses;

/// <summary>Settles crushings, splittings and closed impressions.</summary>
internal static class ResolveCrushing
{
    public static RigCrush Of(Crush said, string path, string name, Shelf shelf, Assumptions assume)
    {
        Shape bar = ResolveJobs.Section(said.Bar, $"{path}.bar", shelf);
        double length = Resolver.Needed(said.Length, $"{path}.length");
        double height = said.OnEnd == true ? length : BendingRules.Depth(bar);
        return new RigCrush
        {
            Name = name,
            Kind = ResolveJobs.KindOf(said),
            Path = path,
            Tools = said.Tools,
            Bar = bar,
            Length = length,
            OnEnd = said.OnEnd ?? false,
            Steel = ResolveJobs.Steel(said.Steel, bar.Properties.Thickness, $"{path}.steel", shelf, assume),
            Travel = assume.Or(said.Travel, $"{path}.travel", (said.OnEnd == true ? 0.5 : 0.7) * height, Dimension.Length, "most of what it can be crushed"),
            Assumed = assume.Made,
        };
    }

    public static RigCrushTimber Of(CrushTimber said, string path, string name, Assumptions assume) => new(
        said.Wood ?? throw new ArgumentException($"'{path}.wood' is missing; read the press with its faults first"),
        Resolver.Needed(said.Width, $"{path}.width") * Resolver.Needed(said.Length, $"{path}.length"), Resolver.Needed(said.Height, $"{path}.height"),
        said.AcrossGrain ?? false, said.Green ?? false)
    {
        Name = name,
        Kind = ResolveJobs.KindOf(said),
        Path = path,
        Tools = said.Tools,
        Assumed = assume.Made,
    };

    public static RigSplitTimber Of(SplitTimber said, string path, string name, Assumptions assume) => new(
        Resolver.Needed(said.Diameter, $"{path}.diameter"), Resolver.Needed(said.Length, $"{path}.length"), said.Knotty ?? false, said.Green ?? false,
        assume.Or(said.Wedge, $"{path}.wedge", 35 * Math.PI / 180, Dimension.Angle, "30 to 45° work well"))
    {
        Name = name,
        Kind = ResolveJobs.KindOf(said),
        Path = path,
        Tools = said.Tools,
        Assumed = assume.Made,
    };

    public static RigCrushConcrete Of(CrushConcrete said, string path, string name, Assumptions assume)
    {
        ConcreteClass? of = said.Class is { } called ? ConcreteClass.Find(called) : null;
        bool split = said.Split ?? false;
        double strength = said.Strength ?? (of is { } c ? split ? c.Tension : said.Cube is not null ? c.Cube : c.Cylinder
            : throw new ArgumentException($"'{path}.class' is missing; read the press with its faults first"));
        double d = said.Cube ?? Resolver.Needed(said.Cylinder, $"{path}.cylinder"), length = said.Length ?? d;
        double area = split ? Math.PI / 2 * d * length : said.Cube is not null ? d * d : Math.PI / 4 * d * d;
        return new RigCrushConcrete(strength, area, split || said.Cube is not null ? d : length, split, said.Strength is null)
        {
            Name = name,
            Kind = ResolveJobs.KindOf(said),
            Path = path,
            Tools = said.Tools,
            Assumed = assume.Made,
        };
    }

    public static RigClosedDie Of(ClosedDie said, string path, string name, Assumptions assume)
    {
        double area = Resolver.Needed(said.Area, $"{path}.area");
        ForgingSteel steel = SmithRules.Settle(said.Steel, said.Carbon, path, assume);
        ImpressionShape shape = assume.Or(said.Shape, $"{path}.shape", ImpressionShape.Simple, "most parts have flash");
        bool flash = shape is ImpressionShape.Simple or ImpressionShape.Complex;
        double outline = flash ? assume.Or(said.Outline, $"{path}.outline", 4 * Math.Sqrt(area), Dimension.Length, "as a square of that area") : 0;
        double land = flash ? assume.Or(said.FlashLand, $"{path}.flash-land", 0.006, Dimension.Length, new Remark("a land of {0} is common on small parts", Remark.Of(0.006, Dimension.Length))) : 0;
        double squeezed = shape == ImpressionShape.Coin ? 1.05 : 2, usual = 0.3 * Math.Sqrt(area);
        // a blank that is said and lower than such a part sets the part's height
        (double height, string why) = said.Blank is { } blank && blank <= usual ? (blank / squeezed, "from the blank's height") : (usual, "a third of its width");
        height = assume.Or(said.Height, $"{path}.height", height, Dimension.Length, why);
        return new RigClosedDie(
            area, shape, outline, land, height,
            assume.Or(said.Blank, $"{path}.blank", squeezed * height, Dimension.Length, shape == ImpressionShape.Coin ? "a mark goes in but little" : "twice the part's height"),
            steel,
            assume.Or(said.Heat, $"{path}.heat", steel.Hottest - 100, Dimension.Temperature, "it has lost some heat on the way"))
        {
            Name = name,
            Kind = ResolveJobs.KindOf(said),
            Path = path,
            Tools = said.Tools,
            Assumed = assume.Made,
        };
    }
}
