using System.Globalization;
using System.Text;
using Ramwright.Solid.Tests.Calculix;
using Ramwright.Tests;

namespace Ramwright.Solid.Tests.Frames;

/// <summary>Openings by the engine's own cells on four grids or five, each with cells half as long as the last, and by CalculiX on the first: docs/solids-cells.csv.</summary>
public static class OwnGrids
{
    private const string Head = "id,cells,unknowns,opening per N,calculix C3D8I per N,calculix";

    /// <summary>How many times shorter the cells of each grid are than the study's own; once more where one cell, or two, go through a wall or fill a gap on the first of them.</summary>
    public static IReadOnlyList<int> Shorter(Study study) => study.Id is "C-06" or "T-04" ? [1, 2, 4, 8, 16] : [1, 2, 4, 8];

    /// <summary>One grid.</summary>
    /// <param name="Cells">Cells.</param>
    /// <param name="Unknowns">Movements.</param>
    /// <param name="Opening">By the engine, m/N.</param>
    /// <param name="Calculix">By CalculiX, where it was asked.</param>
    /// <param name="Version">Its version.</param>
    public sealed record Grid(int Cells, int Unknowns, double Opening, double? Calculix, string Version);

    /// <summary>The file.</summary>
    public static string File => Path.Combine(Repository.Folder("docs"), "solids-cells.csv");

    /// <summary>A study on the grid whose cells are so many times shorter than its own.</summary>
    public static Study On(Study study, int shorter) => study with { Middles = false, Fine = study.Fine / shorter, Coarse = study.Coarse / shorter };

    /// <summary>What was committed, coarsest first.</summary>
    public static IReadOnlyList<Grid> Of(Study study) => [.. System.IO.File.ReadLines(File).Skip(1).Select(l => l.Split(',')).Where(w => w[0] == study.Id)
        .Select(w => new Grid(int.Parse(w[1], CultureInfo.InvariantCulture), int.Parse(w[2], CultureInfo.InvariantCulture), Number(w[3]), w[4].Length == 0 ? null : Number(w[4]), w[5]))];

    /// <summary>How the error falls over three grids: as the cells' length to this power.</summary>
    public static double Order(Grid coarse, Grid middle, Grid fine) => Math.Log2((middle.Opening - coarse.Opening) / (fine.Opening - middle.Opening));

    /// <summary>Between which powers the error must fall on the last three grids. Cells are a whole number to every space between faces, so that a grid of cells half as long has some shorter and some longer than half: most where walls are thin, or rods stand in narrow holes.</summary>
    public static (double Least, double Most) Band(Study study) => study.Class switch
    {
        Studies.Solid => (1.0, 1.2),
        Studies.Thin => (1.0, 1.4),
        Studies.Rods => (0.75, 1.2),
        Studies.Slotted or Studies.OnFace => (0.95, 1.25),
        _ => throw new ArgumentException($"{study.Class} is not solved on finer grids", nameof(study)),
    };

    /// <summary>Opening that ever shorter cells would come to, from two grids: as the engine takes it.</summary>
    public static double Limit(Grid coarse, Grid fine) => 2 * fine.Opening - coarse.Opening;

    /// <summary>Solves again those that are asked for, or not there yet, and writes the file.</summary>
    public static void Renew(Predicate<string> afresh)
    {
        var text = new StringBuilder(Head).Append('\n');
        foreach (Study study in Studies.Refined.Select(Studies.Named))
        {
            IReadOnlyList<Grid> kept = afresh(study.Id) ? [] : Of(study);
            foreach (Grid g in kept.Concat(Shorter(study).Skip(kept.Count).Select(s => Solve(study, s))))
                text.Append(CultureInfo.InvariantCulture, $"{study.Id},{g.Cells},{g.Unknowns},{g.Opening:G9},{g.Calculix?.ToString("G9", CultureInfo.InvariantCulture)},{g.Version}\n");
        }

        System.IO.File.WriteAllText(File, text.ToString());
    }

    private static Grid Solve(Study study, int shorter)
    {
        Study on = On(study, shorter);
        Answer own = Answer.OfSolid(on, SolidAnswer.Own);
        return new Grid(own.Mesh.Bricks, 3 * own.Mesh.Nodes, own.Opening, shorter > 1 ? null : Answer.OfSolid(on).Opening, shorter > 1 ? "" : Solver.Version!);
    }

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
