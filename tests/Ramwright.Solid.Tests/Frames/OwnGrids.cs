using System.Globalization;
using System.Text;
using Ramwright.Solid.Tests.Calculix;
using Ramwright.Tests;

namespace Ramwright.Solid.Tests.Frames;

/// <summary>Openings by the engine's own cells on four grids, each with cells half as long as the last, and by CalculiX on the first: docs/solids-cells.csv.</summary>
public static class OwnGrids
{
    private const string Head = "id,cells,unknowns,opening per N,calculix C3D8I per N,calculix";

    /// <summary>How many times shorter the cells of each grid are than the study's own.</summary>
    public static IReadOnlyList<int> Shorter { get; } = [1, 2, 4, 8];

    /// <summary>One grid.</summary>
    public sealed record Grid(int Cells, int Unknowns, double Opening, double? Calculix);

    /// <summary>The file.</summary>
    public static string File => Path.Combine(Repository.Folder("docs"), "solids-cells.csv");

    /// <summary>A study on the grid whose cells are so many times shorter than its own.</summary>
    public static Study On(Study study, int shorter) => study with { Middles = false, Fine = study.Fine / shorter, Coarse = study.Coarse / shorter };

    /// <summary>What was committed, coarsest first.</summary>
    public static IReadOnlyList<Grid> Of(Study study) => [.. System.IO.File.ReadLines(File).Skip(1).Select(l => l.Split(',')).Where(w => w[0] == study.Id)
        .Select(w => new Grid(int.Parse(w[1], CultureInfo.InvariantCulture), int.Parse(w[2], CultureInfo.InvariantCulture), Number(w[3]), w[4].Length == 0 ? null : Number(w[4])))];

    /// <summary>Opening that ever shorter cells would come to, from two grids: as the engine takes it.</summary>
    public static double Limit(Grid coarse, Grid fine) => 2 * fine.Opening - coarse.Opening;

    /// <summary>Solves all again and writes the file.</summary>
    public static void Renew()
    {
        var text = new StringBuilder(Head).Append('\n');
        foreach (Study study in Studies.Refined.Select(Studies.Named))
            foreach (int shorter in Shorter)
            {
                Study on = On(study, shorter);
                Answer own = Answer.OfSolid(on, SolidAnswer.Own);
                (string calculix, string version) = shorter > 1 ? ("", "") : (Answer.OfSolid(on).Opening.ToString("G9", CultureInfo.InvariantCulture), Solver.Version!);
                text.Append(CultureInfo.InvariantCulture, $"{study.Id},{own.Mesh.Bricks},{3 * own.Mesh.Nodes},{own.Opening:G9},{calculix},{version}\n");
                Console.WriteLine(text.ToString().Split('\n')[^2]);
            }

        System.IO.File.WriteAllText(File, text.ToString());
    }

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
