using Ramwright.Fabrication;
using Ramwright.Files.Drawings;
using Ramwright.Presses;

namespace Ramwright.Files.Dossier;

/// <summary>The chapters that are drawings: the whole press, its parts, plate and gauge chart.</summary>
internal static class DrawingChapters
{
    public static Chapter Arrangement(Papers p)
    {
        try
        {
            return new Chapter("General arrangement", [new Picture(WithTolerances(PressDrawing.Of(p.Check, p.Units), p.Rig.Papers))]);
        }
        catch (NotSupportedException cannot)
        {
            return new Chapter("General arrangement", [new Prose($"This press cannot be drawn: {cannot.Message}", Tone.Warn)]);
        }
    }

    public static Chapter Parts(Papers p)
    {
        var blocks = new List<Block>();
        foreach (Part part in p.Parts.Parts)
        {
            Sheet? sheet = part switch
            {
                PlatePart plate => PlateDrawing.Of(plate, p.Rig.Name, p.Units),
                LengthPart length => LengthDrawing.Of(length, p.Rig.Name, p.Units),
                _ => null,
            };
            if (sheet is not null)
                blocks.Add(new Picture(WithTolerances(sheet, p.Rig.Papers)));
        }

        return new Chapter("Part drawings", blocks);
    }

    /// <summary>The sheet with its class of general tolerances, and what is left open, in its title.</summary>
    private static Sheet WithTolerances(Sheet sheet, PaperWork papers)
    {
        const double middle = 168, top = 30;
        return sheet with
        {
            Marks =
            [
                .. sheet.Marks,
                new Lettering("", $"general tolerances: {Class(papers) ?? Papers.Open}", middle, top - 8, 2.2, Anchor.Middle, Bold: true),
                new Lettering("", $"fits, flatness, surface: {Papers.Open}", middle, top - 13.5, 2.2, Anchor.Middle),
                new Lettering("", $"protection: {papers.Finish ?? Papers.Open}", middle, top - 18, 2.2, Anchor.Middle),
            ],
        };
    }

    public static Chapter Plates(Papers p) => new("Rating plate and gauge chart",
    [
        new Prose($"Both at true size: print them at 100 %, and measure the {GaugeChart.TrueSize(p.Units).Words} bar of the chart. What the file does not say stands as a line, to be stamped in by hand. The plate is there as DXF too, for a table that scribes. Fit neither to the press before it is proved."),
        new Picture(RatingPlate.Of(p.Check, p.Parts.Mass, p.Units), "Rating plate, true size."),
        new NewPage(),
        new Picture(GaugeChart.Of(p.Check, p.Units)),
    ]);

    /// <summary>The class of general tolerances as it stands on a drawing; null where the file names none.</summary>
    private static string? Class(PaperWork papers) => papers.Tolerances switch
    {
        ToleranceClass.Fine => "ISO 2768-f",
        ToleranceClass.Medium => "ISO 2768-m",
        ToleranceClass.Coarse => "ISO 2768-c",
        ToleranceClass.VeryCoarse => "ISO 2768-v",
        _ => null,
    };
}
