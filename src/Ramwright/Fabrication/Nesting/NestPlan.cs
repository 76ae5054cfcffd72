using Ramwright.Fabrication.Plates;
using Ramwright.Geometry;
using Ramwright.Presses;
using Ramwright.Stock;

namespace Ramwright.Fabrication.Nesting;

/// <summary>How hard to look.</summary>
/// <param name="Rounds">Plans to try beyond the first; 0 takes the best of the first few.</param>
/// <param name="Seed">Seed of the draws: the same seed and rounds give the same plan.</param>
/// <param name="GoOn">Told how far it is; false stops with the best plan so far. May be null.</param>
public sealed record NestEffort(int Rounds = 0, ulong Seed = 1, Func<NestProgress, bool>? GoOn = null);

/// <summary>Which plates are cut from which sheets.</summary>
/// <param name="Groups">One for each thickness and steel.</param>
public sealed record NestPlan(IReadOnlyList<NestGroup> Groups)
{
    /// <summary>Thicknesses nearer than this are one, m: a plate sold as 12 mm is taken for 12 mm.</summary>
    private const double SameThickness = 0.05e-3;

    /// <summary>Plans the sheets of a press.</summary>
    /// <param name="parts">The parts.</param>
    /// <param name="rig">The press, with its sheets and gaps.</param>
    /// <param name="effort">How hard to look.</param>
    public static NestPlan Of(PartList parts, Rig rig, NestEffort? effort = null)
    {
        ArgumentNullException.ThrowIfNull(parts);
        ArgumentNullException.ThrowIfNull(rig);
        return new NestPlan(
        [
            .. parts.Plates.GroupBy(p => (Thickness: Math.Round(p.Thickness / SameThickness), Steel: p.Steel?.Name ?? ""))
                .Select(g => Of([.. g], Fit(g.First(), rig.Sheets), rig.Cutting, effort ?? new NestEffort())),
        ]);
    }

    private static RigSheet[] Fit(PlatePart part, IReadOnlyList<RigSheet> sheets) =>
        [.. sheets.Where(s => Math.Abs(s.Thickness - part.Thickness) < SameThickness && Bars.BarPlan.Suits(part.Steel, s.Steel))];

    /// <summary>Plans parts of one thickness and steel on some sheets.</summary>
    /// <param name="parts">The parts.</param>
    /// <param name="sheets">The sheets.</param>
    /// <param name="cutting">Gaps and turns.</param>
    /// <param name="effort">How hard to look.</param>
    public static NestGroup Of(IReadOnlyList<PlatePart> parts, IReadOnlyList<RigSheet> sheets, RigCutting cutting, NestEffort effort)
    {
        ArgumentNullException.ThrowIfNull(parts);
        ArgumentNullException.ThrowIfNull(sheets);
        ArgumentNullException.ThrowIfNull(cutting);
        ArgumentNullException.ThrowIfNull(effort);
        int number = 0, all = parts.Sum(p => p.Count);
        // a sheet of which there are as many as wanted is there once for each part, at most
        (RigSheet Sheet, NestSheet Table, int Copy)[] there =
        [
            .. sheets.Select(s => (Sheet: s, Table: new NestSheet(s.Edge, cutting.EdgeGap, s.Buy))).OrderBy(s => s.Sheet.Buy).ThenBy(s => s.Table.Area)
                .SelectMany(s => Enumerable.Range(1, s.Sheet.Count == 0 ? Math.Min(all, MostBought) : s.Sheet.Count).Select(c => (s.Sheet, s.Table, c))),
        ];
        List<NestShape>[] kinds = [.. parts.Select(p => NestShape.Turns(p.Outline.Loops[0], Windows.Of(p, parts, cutting), cutting.TurnStep, cutting.PartGap, () => number++).ToList())];
        int[] kindOf = [.. parts.SelectMany((p, k) => Enumerable.Repeat(k, p.Count))];
        IReadOnlyList<Placement?> laid = there.Length == 0 ? new Placement?[kindOf.Length]
            : new NestSearch(kinds, kindOf, [.. there.Select(t => t.Table)]).Run(effort.Rounds, effort.Seed, effort.GoOn);
        Nest[] nests =
        [
            .. laid.OfType<Placement>().GroupBy(p => p.Sheet).OrderBy(g => g.Key).Select(g => new Nest(there[g.Key].Sheet, there[g.Key].Copy,
                [.. g.Select(p => new NestedPart(parts[kindOf[p.Item]], new PlateTurn(p.Shape.Angle, p.At.X, p.At.Y)))])
            {
                Taken = Taken(g.Select(p => p.Shape), there[g.Key].Table, cutting),
            }),
        ];
        List<(PlatePart, int)> without = [.. parts.Select((p, k) => (p, laid.Select((l, i) => (l, i)).Count(t => t.l is null && kindOf[t.i] == k))).Where(w => w.Item2 > 0)];
        double room = there.Where(t => !t.Sheet.Buy).Sum(t => t.Table.Area);
        return new NestGroup(parts[0].Thickness, parts[0].Steel, nests, without, sheets.Count > 0, room);
    }

    // every part claims half the gap round it, and half a gap less of the sheet's edge is out of bounds
    private static double Taken(IEnumerable<NestShape> shapes, NestSheet sheet, RigCutting cutting)
    {
        double half = cutting.PartGap / 2, room = NestShape.Wider(sheet.Polygon, (half - cutting.EdgeGap) / 1.003).Area;
        return room > 0 ? Math.Min(1, shapes.Sum(s => half > 0 ? NestShape.Wider(s.Polygon, half / 1.003).Area : s.Area) / room) : 1;
    }

    /// <summary>Sheets of one kind that are opened at most where as many as wanted can be bought.</summary>
    private const int MostBought = 50;
}

/// <summary>Plates of one thickness and steel.</summary>
/// <param name="Thickness">m.</param>
/// <param name="Steel">The parts' steel; null where that is not known.</param>
/// <param name="Nests">The sheets that are opened.</param>
/// <param name="Without">Parts that find no room, and how many of each.</param>
/// <param name="HasSheets">Whether the file lists any sheet of this thickness and steel.</param>
/// <param name="OwnArea">Area of the sheets that need not be bought, m².</param>
public sealed record NestGroup(
    double Thickness, Steel? Steel, IReadOnlyList<Nest> Nests, IReadOnlyList<(PlatePart Part, int Count)> Without, bool HasSheets, double OwnArea)
{
    /// <summary>Area of what is placed, m².</summary>
    public double Placed => Nests.Sum(n => n.PartArea);

    /// <summary>Area of the sheets that are opened, m².</summary>
    public double Opened => Nests.Sum(n => n.SheetArea);

    /// <summary>Share of the opened sheets that becomes parts.</summary>
    public double Filled => Opened > 0 ? Placed / Opened : 0;

    /// <summary>Share of the opened sheets that could become parts by area alone, if everything that has no place found one: never more than 1.</summary>
    public double Bound => Opened > 0 ? Math.Min(1, (Placed + Without.Sum(w => w.Count * w.Part.Outline.Area())) / Opened) : 0;
}

/// <summary>One sheet and what is cut from it.</summary>
/// <param name="Sheet">The sheet.</param>
/// <param name="Copy">Which of several alike, from 1.</param>
/// <param name="Parts">What is cut.</param>
public sealed record Nest(RigSheet Sheet, int Copy, IReadOnlyList<NestedPart> Parts)
{
    /// <summary>Share of the room that the gaps leave which is taken: every part with half a gap round it, of the sheet less its edge. No nest can have more than 1.</summary>
    public double Taken { get; init; }

    /// <summary>Area of its parts, m².</summary>
    public double PartArea => Parts.Sum(p => p.Part.Outline.Area());

    /// <summary>Area of the sheet, m².</summary>
    public double SheetArea => new Outline([Sheet.Edge]).Area();

    /// <summary>Share of it that becomes parts.</summary>
    public double Filled => PartArea / SheetArea;

    /// <summary>The moves that cut it: what is cut from the drop-out of another part comes before that one; else all inside cuts before any part is cut free.</summary>
    /// <param name="name">What the sheet is called.</param>
    /// <param name="style">How cuts are drawn.</param>
    public CutSheet Cuts(string name, CutStyle style)
    {
        IEnumerable<CutMove> stock = [new CutMove(CutLayer.Stock, Sheet.Edge, Closed: true)];
        int[] depths = Windows.Depths(Parts);
        return new CutSheet(name, [.. stock, .. PlateCuts.InOrder(Parts.SelectMany((p, i) => PlateCuts.Moves(p.Part, style, p.Turn).Select(m => (m, depths[i]))))]);
    }
}

/// <summary>A plate on a sheet.</summary>
/// <param name="Part">The plate.</param>
/// <param name="Turn">How it lies.</param>
public readonly record struct NestedPart(PlatePart Part, PlateTurn Turn)
{
    /// <summary>Its outline where it lies, m.</summary>
    public Outline Outline => Turn.Of(Part.Outline);
}
