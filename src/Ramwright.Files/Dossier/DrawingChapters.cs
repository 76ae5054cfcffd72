using Ramwright.Fabrication;
using Ramwright.Files.Drawings;
using Ramwright.Presses;
using Ramwright.Quantities;

namespace Ramwright.Files.Dossier;

/// <summary>The chapters that are drawings: the whole press, its parts, plate and gauge chart.</summary>
internal static class DrawingChapters
{
    public static Chapter Arrangement(Papers p)
    {
        try
        {
            return new Chapter("General arrangement", [new Picture(PressDrawing.Of(p.Check, p.Units))]);
        }
        catch (NotSupportedException cannot)
        {
            return new Chapter("General arrangement", [new Prose($"This press cannot be drawn: {cannot.Message}", Tone.Warn)]);
        }
    }

    public static Chapter Parts(Papers p)
    {
        var blocks = new List<Block>
        {
            new Prose($"General tolerances of sizes without one of their own: {Tolerances(p.Rig.Papers)}. Fits, flatness and surface of seats and bearing faces: {Papers.Open}. Protection: {p.Rig.Papers.Finish ?? Papers.Open}. Holes are measured from the corner with the dot and 0; on lengths, from that end and from the middle line. Figures are in {(p.Units == UnitSystem.Metric ? "millimetres" : "inches")}. Welds on the general arrangement stand by the symbols of ISO 2553, with the throat as a."),
        };
        foreach (Part part in p.Parts.Parts.Where(part => part is not BoughtPart))
            One(p, part, blocks);
        return new Chapter("Part drawings", blocks);
    }

    public static Chapter Plates(Papers p) => new("Rating plate and gauge chart",
    [
        new Prose("Both at true size: print them at 100 %, and measure the 50 mm bar of the chart. What the file does not say stands as a line, to be stamped in by hand. The plate is there as DXF too, for a table that scribes. Fit neither to the press before it is proved."),
        new Picture(RatingPlate.Of(p.Check, p.Parts.Mass, p.Units), "Rating plate, true size."),
        new NewPage(),
        new Picture(GaugeChart.Of(p.Check, p.Units)),
    ]);

    /// <summary>The class of general tolerances as it stands on a drawing.</summary>
    public static string Tolerances(PaperWork papers) => papers.Tolerances switch
    {
        ToleranceClass.Fine => "ISO 2768-f",
        ToleranceClass.Medium => "ISO 2768-m",
        ToleranceClass.Coarse => "ISO 2768-c",
        ToleranceClass.VeryCoarse => "ISO 2768-v",
        _ => Papers.Open + " (papers.tolerances; ISO 2768 class c is usual for sawn and welded parts)",
    };

    private static void One(Papers p, Part part, List<Block> blocks)
    {
        PartFigure figure = PartDrawing.Of(part, p.Units);
        blocks.Add(new Heading($"{part.Mark}  {part.Name}", 3));
        string what = part switch
        {
            PlatePart plate => $"plate, {p.T(plate.Thickness, Dimension.Length)} thick",
            LengthPart length => $"{length.Section.Name}, {p.T(length.Length, Dimension.Length, 5)} long; ends {(length.First == length.Second ? length.First.Words : $"{length.First.Words} and {length.Second.Words}")}",
            _ => "",
        };
        string mass = part.Mass is { } kg ? $", {p.T(kg, Dimension.Mass)} each" : "";
        blocks.Add(new Prose($"{part.Count} off, {what}, {part.Steel?.Name ?? Papers.Open}{mass}, scale 1:{Readout.Number(figure.Scale)}."
            + (part.Origin == PartOrigin.Proposed ? $" Proposed, not in the file: {part.Rule}. Look at it before you cut." : part.Rule.Length > 0 ? $" {part.Rule}." : "")));
        blocks.Add(new Picture(figure.Sheet));
        if (figure.Holes.Count > 0)
        {
            blocks.Add(new Grid([new("no.", 0.6, true), new("right", 1.2, true), new("up", 1.2, true), new("size", 1.2, true), new("for", 6)],
                [.. figure.Holes.Select(h => (IReadOnlyList<string>)[$"{h.Number}", Mm(p, h.Right), Mm(p, h.Up), Mm(p, h.Size), h.For])]));
        }

        if (part.Notes.Count > 0)
            blocks.Add(new Items(part.Notes));
    }

    private static string Mm(Papers p, double metres) => p.Units == UnitSystem.Metric ? Readout.Number(Math.Round(metres * 1000, 2), 6) : Readout.Number(Math.Round(metres / 0.0254, 4), 6);
}
