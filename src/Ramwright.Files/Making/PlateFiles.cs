using Ramwright.Fabrication;
using Ramwright.Fabrication.Plates;
using Ramwright.Files.Drawings;
using Ramwright.Presses;

namespace Ramwright.Files.Making;

/// <summary>A cut file and a drawing for each plate, a drawing for each length.</summary>
public static class PlateFiles
{
    /// <summary>Makes <c>plates/P1-name.dxf</c>, its drawing, and so on.</summary>
    public static IEnumerable<OutFile> Make(MakeOf of)
    {
        ArgumentNullException.ThrowIfNull(of);
        foreach (PlatePart plate in of.Parts.Plates)
        {
            yield return OutFile.OfText($"plates/{Name(plate)}.dxf", Dxf.Write(PlateCuts.Of(plate, Style(of.Rig))));
            yield return OutFile.OfText($"plates/{Name(plate)}.svg", SvgSheet.Write(PlateDrawing.Of(plate, of.Rig.Name, of.Units)));
        }

        foreach (LengthPart length in of.Parts.Lengths)
            yield return OutFile.OfText($"lengths/{Name(length)}.svg", SvgSheet.Write(LengthDrawing.Of(length, of.Rig.Name, of.Units)));
    }

    /// <summary>A part's name as files bear it.</summary>
    public static string Name(Part part)
    {
        ArgumentNullException.ThrowIfNull(part);
        return $"{OutFile.Slug(part.Mark).ToUpperInvariant()}-{OutFile.Slug(part.Name)}".TrimEnd('-');
    }

    /// <summary>How this press's cuts are drawn: true to size unless its file asks for kerf or leads.</summary>
    public static CutStyle Style(Rig rig)
    {
        ArgumentNullException.ThrowIfNull(rig);
        return new CutStyle(rig.Cutting.TorchKerf, rig.Cutting.LeadIn);
    }
}
