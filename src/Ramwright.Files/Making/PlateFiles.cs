using Ramwright.Fabrication;
using Ramwright.Fabrication.Plates;

namespace Ramwright.Files.Making;

/// <summary>One cut file for each plate.</summary>
public static class PlateFiles
{
    /// <summary>Makes <c>plates/P1-name.dxf</c> and so on.</summary>
    public static IEnumerable<OutFile> Make(MakeOf of)
    {
        ArgumentNullException.ThrowIfNull(of);
        foreach (PlatePart plate in of.Parts.Plates)
            yield return OutFile.OfText($"plates/{Name(plate)}.dxf", Dxf.Write(PlateCuts.Of(plate, CutStyle.Plain)));
    }

    /// <summary>A plate's name as files bear it.</summary>
    public static string Name(PlatePart plate)
    {
        ArgumentNullException.ThrowIfNull(plate);
        return $"{OutFile.Slug(plate.Mark).ToUpperInvariant()}-{OutFile.Slug(plate.Name)}";
    }
}
