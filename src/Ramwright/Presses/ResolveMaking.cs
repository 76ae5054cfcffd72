using Ramwright.Geometry;
using Ramwright.Quantities;
using Ramwright.Stock;

namespace Ramwright.Presses;

/// <summary>Settles the builder's own parts, what lies in the heap, and how it is cut.</summary>
internal static class ResolveMaking
{
    private const string Unmarked = "steel without papers is taken at the lowest structural grade";

    public static IReadOnlyList<RigOwnPart> Parts(IReadOnlyList<OwnPart>? said, Shelf shelf, Assumptions assume) =>
        [.. (said ?? []).Select((part, i) => Part(part, $"parts.{i}", shelf, assume)).OfType<RigOwnPart>()];

    public static IReadOnlyList<RigSheet> Sheets(IReadOnlyList<SheetInStock>? said, Shelf shelf, Assumptions assume) =>
    [
        .. (said ?? []).Select((sheet, i) => new RigSheet(sheet.Name ?? $"{(sheet.Buy == true ? "sheet" : "remnant")} {i + 1}", Resolver.Needed(sheet.Thickness, $"sheets.{i}.thickness"),
            Steel(sheet.Steel, $"sheets.{i}", shelf, assume), Edge(sheet.Width, sheet.Height, null, sheet.Corners), Count(sheet.Count, sheet.Buy), sheet.Buy == true)),
    ];

    public static IReadOnlyList<RigBarInStock> Bars(IReadOnlyList<BarInStock>? said, Shelf shelf, Assumptions assume) =>
        [.. (said ?? []).Select((bar, i) => Bar(bar, $"bars.{i}", shelf, assume)).OfType<RigBarInStock>()];

    public static RigCutting Cutting(Cutting? said)
    {
        RigCutting usual = RigCutting.Usual;
        return said is null ? usual : new RigCutting(said.PartGap ?? usual.PartGap, said.EdgeGap ?? usual.EdgeGap, said.TurnStep ?? usual.TurnStep,
            said.TorchKerf ?? 0, said.LeadIn ?? 0, said.SawKerf ?? usual.SawKerf, said.RoughEnd ?? usual.RoughEnd);
    }

    private static int Count(double? said, bool? buy) => (int)(said ?? (buy == true ? 0 : 1));

    private static Steel Steel(string? said, string path, Shelf shelf, Assumptions assume) =>
        Resolver.SteelNamed(assume.Or(said, path + ".steel", "unknown", Unmarked), shelf, path + ".steel", assume);

    private static RigOwnPart? Part(OwnPart part, string path, Shelf shelf, Assumptions assume)
    {
        string name = Resolver.Needed(part.Name, path + ".name"), instead = part.InPlaceOf ?? "";
        int count = (int)(part.Count ?? 1);
        Steel steel = Steel(part.Steel, path, shelf, assume);
        switch (part)
        {
            case OwnPlate plate:
                return new RigOwnPlate(name, count, steel, instead, Resolver.Needed(plate.Thickness, path + ".thickness"), Edge(plate.Width, plate.Height, plate.Diameter, plate.Corners), Holes(plate.Holes));
            case OwnBentPlate bent:
                double t = Resolver.Needed(bent.Thickness, path + ".thickness");
                IReadOnlyList<BentLeg> legs = bent.Legs ?? throw new ArgumentException($"'{path}.legs' is missing");
                return new RigOwnBentPlate(name, count, steel, instead, t, Resolver.Needed(bent.Width, path + ".width"),
                    assume.Or(bent.Radius, path + ".radius", t, Dimension.Length, "bent round its own thickness"),
                    [.. legs.Select(l => l.Length ?? 0)], [.. legs.SkipLast(1).Select(l => (l.Bend ?? Math.PI / 2) * (l.Down == true ? -1 : 1))], Holes(bent.Holes));
            case OwnLength length:
                return Section(length.Section, path, shelf, assume) is { } section
                    ? new RigOwnLength(name, count, steel, instead, section, Resolver.Needed(length.Length, path + ".length"))
                    : null;
            default:
                throw new ArgumentException($"no such part: {part.GetType().Name}");
        }
    }

    private static RigBarInStock? Bar(BarInStock bar, string path, Shelf shelf, Assumptions assume) =>
        Section(bar.Section, path, shelf, assume) is { } section
            ? new RigBarInStock(section, Steel(bar.Steel, path, shelf, assume), Resolver.Needed(bar.Length, path + ".length"), Count(bar.Count, bar.Buy), bar.Buy == true)
            : null;

    private static Shape? Section(string? said, string path, Shelf shelf, Assumptions assume)
    {
        string name = Resolver.Needed(said, path + ".section");
        if (!SectionText.TryRead(name, shelf, out Shape? section, out ReadingFault? fault))
        {
            assume.Fault(path + ".section", fault.Found, fault.Wanted);
            return null;
        }

        if (section is not Pair pair)
            return section;
        assume.Fault(path + ".section", $"{name} are two bars, and one is sawn at a time", pair.Half.Name);
        return null;
    }

    private static IReadOnlyList<RigOwnHole> Holes(IReadOnlyList<OwnHole>? said) =>
        [.. (said ?? []).Select(h => new RigOwnHole(h.Right ?? 0, h.Up ?? 0, h.Diameter ?? 0, h.For ?? "as the file says", h.Drill == true))];

    private static IReadOnlyList<Corner> Edge(double? width, double? height, double? diameter, IReadOnlyList<PlateCorner>? corners)
    {
        if (corners is not null)
            return MakingRules.Loop(corners);
        return diameter is { } d ? new Outline([Loops.Circle(d)]).Moved(d / 2, d / 2).Loops[0] : Loops.Rectangle(0, width ?? 0, 0, height ?? 0);
    }
}
