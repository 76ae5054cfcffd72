using System.Globalization;
using System.Text;
using Ramwright.Frame;
using Ramwright.Geometry;
using Ramwright.Presses;
using Ramwright.Solid.Tests.Calculix;
using Ramwright.Solids;
using Ramwright.Tests;

namespace Ramwright.Solid.Tests.Frames;

/// <summary>Frames as the engine draws them, against CalculiX on the same grid and against beams: docs/solids-drawn.csv.</summary>
public static class DrawnTable
{
    private const string Head = "id,unknowns,turns,opening per N,calculix C3D8I per N,turn per N,calculix C3D8I per N,opening by a moment per N,turn by a moment per N,opening from two grids per N,turn from two grids per N,beams per N,beams turn per N,calculix";

    /// <summary>One frame. Per newton at the ram, m and rad; by a moment: pressed in the middle, with the moment of work that stands off.</summary>
    public sealed record Row(string Id, int Unknowns, int Turns, double Opening, double Calculix, double Turn, double CalculixTurn, double ByMoment, double TurnByMoment, double Limit, double TurnLimit, double Beams, double BeamsTurn, string Version);

    /// <summary>The file.</summary>
    public static string File => Path.Combine(Repository.Folder("docs"), "solids-drawn.csv");

    /// <summary>What was committed.</summary>
    public static IReadOnlyList<Row> Committed { get; } = [.. System.IO.File.Exists(File) ? System.IO.File.ReadLines(File).Skip(1).Select(l => l.Split(',')).Select(w => (w, n: w.Skip(3).Take(10).Select(Number).ToArray()))
        .Select(r => new Row(r.w[0], (int)Number(r.w[1]), (int)Number(r.w[2]), r.n[0], r.n[1], r.n[2], r.n[3], r.n[4], r.n[5], r.n[6], r.n[7], r.n[8], r.n[9], r.w[13])) : []];

    /// <summary>The grid on which CalculiX is asked.</summary>
    public static SolidMesh Grid(PressSolid solid) => solid.Mesh(solid.Usual.Over(0.35));

    /// <summary>By the engine.</summary>
    public static (int Unknowns, int Turns, double Opening, double Turn) Own(Drawn drawn, PressSolid solid, SolidMesh mesh, bool byMoment = false)
    {
        Dictionary<int, Vector> forces = DieLoads.Of(byMoment ? Unmoved(solid) : solid, mesh, drawn.Case);
        SolidSolution solution = new SolidSolver(mesh).Solve(forces);
        (double opening, double turn) = Drawn.Of(solid, mesh, solution.Displacement, solid.Turning);
        return (mesh.Unknowns, solution.Convergence.Iterations, opening, turn);
    }

    // dies that cannot be set aside are left in the middle
    private static PressSolid Unmoved(PressSolid solid) => solid with { Upper = [.. solid.Upper.Select(f => f with { Free = [] })], Lower = [.. solid.Lower.Select(f => f with { Free = [] })] };

    /// <summary>By CalculiX.</summary>
    public static (double Opening, double Turn) OfCalculix(Drawn drawn, PressSolid solid, SolidMesh mesh)
    {
        SolidAnswer answer = Solver.Solve(Drawn.Model(mesh, DieLoads.Of(solid, mesh, drawn.Case)));
        return Drawn.Of(solid, mesh, answer.Displacement, solid.Turning);
    }

    /// <summary>By beams.</summary>
    public static (double Opening, double Turn) OfBeams(Drawn drawn)
    {
        FrameResponse beams = FrameResponse.Of(FramePlan.Of(drawn.Rig));
        int at = drawn.Aside > 0 ? 1 : 0;
        return (beams.Growth(at), drawn.Aside > 0 ? beams.Opening(at) : 0);
    }

    /// <summary>Solves one.</summary>
    public static Row Of(Drawn drawn)
    {
        PressSolid solid = drawn.Solid;
        SolidMesh mesh = Grid(solid);
        (int unknowns, int turns, double opening, double turn) = Own(drawn, solid, mesh);
        (double calculix, double calculixTurn) = OfCalculix(drawn, solid, mesh);
        (_, _, double moment, double turnMoment) = Own(drawn, solid, mesh, byMoment: true);
        (_, _, double coarse, double coarseTurn) = Own(drawn, solid, solid.Mesh(solid.Usual.Over(0.5)));
        (_, _, double fine, double fineTurn) = Own(drawn, solid, solid.Mesh(solid.Usual));
        (double beams, double beamsTurn) = OfBeams(drawn);
        return new Row(drawn.Id, unknowns, turns, opening, calculix, turn, calculixTurn, moment, turnMoment, 2 * fine - coarse, 2 * fineTurn - coarseTurn, beams, beamsTurn, Solver.Version!);
    }

    /// <summary>Solves again those that are asked for, or not there yet, and writes the file.</summary>
    public static void Renew(Predicate<string> afresh)
    {
        var text = new StringBuilder(Head).Append('\n');
        foreach (Row r in Drawn.All.Select(d => !afresh(d.Id) && Committed.SingleOrDefault(c => c.Id == d.Id) is { } kept ? kept : Of(d)))
        {
            text.Append(CultureInfo.InvariantCulture, $"{r.Id},{r.Unknowns},{r.Turns}");
            foreach (double x in (double[])[r.Opening, r.Calculix, r.Turn, r.CalculixTurn, r.ByMoment, r.TurnByMoment, r.Limit, r.TurnLimit, r.Beams, r.BeamsTurn])
                text.Append(CultureInfo.InvariantCulture, $",{x:G8}");
            text.Append(CultureInfo.InvariantCulture, $",{r.Version}\n");
        }

        System.IO.File.WriteAllText(File, text.ToString());
    }

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
