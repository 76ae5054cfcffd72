using System.Globalization;
using Ramwright.Fabrication.Nesting;
using Ramwright.Files.Drawings;

namespace Ramwright.Files.Making;

/// <summary>One cut file and one drawing for each sheet that parts are cut from.</summary>
public static class NestFiles
{
    /// <summary>Makes <c>nests/N1-name.dxf</c>, its picture, and so on.</summary>
    public static IEnumerable<OutFile> Make(MakeOf of)
    {
        ArgumentNullException.ThrowIfNull(of);
        foreach ((string name, Nest nest) in Named(of.Nests))
        {
            string file = FileOf(name, nest);
            yield return OutFile.OfText(file + ".dxf", Dxf.Write(nest.Cuts(name, PlateFiles.Style(of.Rig))));
            yield return OutFile.OfText(file + ".svg", SvgSheet.Write(NestDrawing.Of(nest, name, of.Units)));
        }
    }

    /// <summary>The name of a nest's files, without their ending.</summary>
    public static string FileOf(string name, Nest nest)
    {
        ArgumentNullException.ThrowIfNull(name);
        ArgumentNullException.ThrowIfNull(nest);
        return $"nests/{name.Split(' ')[0]}-{OutFile.Slug(nest.Sheet.Name)}".TrimEnd('-');
    }

    /// <summary>The nests with what they are called: <c>N1 remnant 1</c>.</summary>
    public static IEnumerable<(string Name, Nest Nest)> Named(NestPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return plan.Groups.SelectMany(g => g.Nests).Select((nest, i) => ($"N{(i + 1).ToString(CultureInfo.InvariantCulture)} {nest.Sheet.Name}{(nest.Copy > 1 ? $", number {nest.Copy}" : "")}", nest));
    }
}
