using System.Globalization;
using Ramwright.Presses;
using Ramwright.Solids;
using Ramwright.Tests;

namespace Ramwright.Solid.Tests.Frames;

/// <summary>What the tool shows from its two usual grids, against further ones, each with cells half as long as the last: docs/solids-grids.csv.</summary>
public static class GridTable
{
    private const string Head = "id,unknowns,opening per N,half as long: unknowns,opening per N,a quarter: unknowns,opening per N,an eighth: unknowns,opening per N";

    /// <summary>Where a halving brings hardly less than the one before, two grids say little of what is missing, and a fourth is solved.</summary>
    private const double Slow = 1.25;

    /// <summary>One frame: the two grids that the tool takes, and finer ones.</summary>
    public sealed record Row(string Id, IReadOnlyList<GridAnswer> Grids)
    {
        /// <summary>As the tool shows it.</summary>
        public SolidCaseAnswer Shown => new(SolidCase.Centred, Grids[0], Grids[1], null!, [], 1, null);

        /// <summary>What all grids together come to, m/N: what ever shorter cells bring beyond the last two.</summary>
        public double Limit => 2 * Grids[^1].Opening - Grids[^2].Opening;

        /// <summary>How far what is shown is from that, as a share of what the halving brought.</summary>
        public double Missed => Math.Abs(Limit - Shown.Opening) / Math.Abs(Grids[1].Opening - Grids[0].Opening);

        /// <summary>What the first halving brought over what the second did.</summary>
        public double Falls => (Grids[1].Opening - Grids[0].Opening) / (Grids[2].Opening - Grids[1].Opening);
    }

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
        .Select(w => new Row(w[0], [.. w.Skip(1).Where(n => n.Length > 0).Chunk(2).Select(g => new GridAnswer(int.Parse(g[0], CultureInfo.InvariantCulture), double.Parse(g[1], CultureInfo.InvariantCulture), 0))])) : []];

    /// <summary>Solves one grid, cells so many times shorter than those of the finer usual one.</summary>
    public static GridAnswer On(Rig rig, double shorter)
    {
        PressSolid solid = PressSolid.Of(rig);
        SolidMesh mesh = solid.Mesh(solid.Usual.Over(shorter));
        SolidSolution solution = new SolidSolver(mesh).Solve(DieLoads.Of(solid, mesh, SolidCase.Centred));
        return new GridAnswer(mesh.Unknowns, solution.Mean(PressSolid.Shares(mesh, solid.Upper)).Z - solution.Mean(PressSolid.Shares(mesh, solid.Lower)).Z, 0);
    }

    /// <summary>Solves again those that are asked for, or not there yet, and writes the file.</summary>
    public static void Renew(Predicate<string> afresh)
    {
        Row[] before = [.. Committed];
        using var text = new StreamWriter(File) { NewLine = "\n", AutoFlush = true };
        text.WriteLine(Head);
        foreach ((string id, Rig rig) in Frames)
        {
            Row r = !afresh(id) && before.SingleOrDefault(b => b.Id == id) is { } kept ? kept : new Row(id, [On(rig, 0.5), On(rig, 1), On(rig, 2)]);
            if (r.Falls < Slow && r.Grids.Count == 3)
                r = r with { Grids = [.. r.Grids, On(rig, 4)] };
            text.WriteLine(id + string.Concat(r.Grids.Select(g => string.Create(CultureInfo.InvariantCulture, $",{g.Unknowns},{g.Opening:G9}"))));
        }
    }
}
