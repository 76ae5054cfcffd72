using System.Globalization;
using Ramwright.Geometry;
using Ramwright.Presses;
using Ramwright.Solids;
using Ramwright.Tests;

namespace Ramwright.Solid.Tests.Frames;

/// <summary>What the tool shows from its two usual grids, against a third with cells half as long as the finer: docs/solids-grids.csv.</summary>
public static class GridTable
{
    private const string Head = "id,unknowns,opening per N,half as long: unknowns,opening per N,a quarter: unknowns,opening per N";

    /// <summary>One frame on three grids: the two that the tool takes, and one finer.</summary>
    public sealed record Row(string Id, GridAnswer Coarse, GridAnswer Fine, GridAnswer Finer);

    /// <summary>The file.</summary>
    public static string File => Path.Combine(Repository.Folder("docs"), "solids-grids.csv");

    /// <summary>The frames: those that are solved by CalculiX too, as the engine draws them, and two of each kind made up at random.</summary>
    public static IReadOnlyList<(string Id, Rig Rig)> Frames { get; } =
    [
        .. JointTable.Studied.Where(s => !s.Id.Contains(' ', StringComparison.Ordinal) || s.Id[^2..] is " 1" or " 2").Select(s => (s.Id, Rigs.With(s.Frame))),
        .. Drawn.All.Where(d => d.Aside == 0).Select(d => (d.Id, d.Rig)),
    ];

    /// <summary>What was committed.</summary>
    public static IReadOnlyList<Row> Committed { get; } = [.. System.IO.File.Exists(File) ? System.IO.File.ReadLines(File).Skip(1).Select(l => l.Split(','))
        .Select(w => new Row(w[0], Grid(w[1], w[2]), Grid(w[3], w[4]), Grid(w[5], w[6]))) : []];

    /// <summary>Solves one grid, cells so many times shorter than usual.</summary>
    public static GridAnswer On(Rig rig, double shorter)
    {
        PressSolid solid = PressSolid.Of(rig);
        SolidMesh mesh = solid.Mesh(solid.Usual.Over(shorter));
        SolidSolution solution = new SolidSolver(mesh).Solve(DieLoads.Of(solid, mesh, SolidCase.Centred));
        return new GridAnswer(mesh.Unknowns, solution.Mean(PressSolid.Shares(mesh, solid.Upper)).Z - solution.Mean(PressSolid.Shares(mesh, solid.Lower)).Z, 0);
    }

    /// <summary>Solves all again and writes the file.</summary>
    public static void Renew()
    {
        using var text = new StreamWriter(File) { NewLine = "\n", AutoFlush = true };
        text.WriteLine(Head);
        foreach ((string id, Rig rig) in Frames)
        {
            GridAnswer[] on = [On(rig, 0.5), On(rig, 1), On(rig, 2)];
            text.WriteLine(id + string.Concat(on.Select(g => string.Create(CultureInfo.InvariantCulture, $",{g.Unknowns},{g.Opening:G9}"))));
        }
    }

    private static GridAnswer Grid(string unknowns, string opening) =>
        new(int.Parse(unknowns, CultureInfo.InvariantCulture), double.Parse(opening, CultureInfo.InvariantCulture), 0);
}
