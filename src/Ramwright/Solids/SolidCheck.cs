using Ramwright.Frame;
using Ramwright.Geometry;
using Ramwright.Presses;
using Ramwright.Workings;

namespace Ramwright.Solids;

/// <summary>What one grid gives for one newton at the ram.</summary>
/// <param name="Unknowns">Movements that were found.</param>
/// <param name="Opening">Growth of the daylight at the dies, m/N.</param>
/// <param name="Turn">How far the dies turn out of parallel, by the whole sections behind them, rad/N.</param>
public sealed record GridAnswer(int Unknowns, double Opening, double Turn);

/// <summary>One load case of a solid check, for one newton at the ram.</summary>
/// <param name="Case">How it is pressed.</param>
/// <param name="Coarse">By the coarser grid; null where only one was asked for.</param>
/// <param name="Fine">By the finer grid.</param>
/// <param name="Solution">How the finer one moves.</param>
/// <param name="HotSpots">Stress at the toes of welds.</param>
/// <param name="Through">What the stress in a level cut between the dies adds up to, N: the ram's newton, but for what the solver left over.</param>
/// <param name="Weakest">Where a wall is nearest to its yield; null where no part's steel is known.</param>
public sealed record SolidCaseAnswer(
    SolidCase Case, GridAnswer? Coarse, GridAnswer Fine, SolidSolution Solution, IReadOnlyList<HotSpot> HotSpots, double Through, SolidPlace? Weakest)
{
    /// <summary>The weakest place by the coarser grid; null where only one was asked for.</summary>
    public SolidPlace? CoarseWeakest { get; init; }

    /// <summary>
    /// Opening that ever finer cells would come to, m/N: sharp inner corners make the error fall about in proportion to the cells' length, so that as much is missing as the halving brought.
    /// </summary>
    public double Opening => Coarse is null ? Fine.Opening : 2 * Fine.Opening - Coarse.Opening;

    /// <summary>The same of the dies' turning, rad/N.</summary>
    public double Turn => Coarse is null ? Fine.Turn : Math.Max(0, 2 * Fine.Turn - Coarse.Turn);

    /// <summary>
    /// How far that may be off, as a share: twice what halving the cells would still bring, which held all 58 frames of docs/solids-grids.csv; null where only one grid was asked for.
    /// </summary>
    public double? GridError => Coarse is null ? null : 2 * Math.Abs(Opening - Fine.Opening) / Opening;
}

/// <summary>A press's frame as it really is: solid steel, joined where its joints join it.</summary>
/// <param name="Solid">The parts.</param>
/// <param name="Cases">Load cases, the centred one first.</param>
/// <param name="Beams">What the beams give, by case.</param>
public sealed record SolidCheck(PressSolid Solid, IReadOnlyList<SolidCaseAnswer> Cases, FrameResponse Beams)
{
    /// <summary>How often, and by how much shorter, cells are tried where an answer is not found.</summary>
    private const int Again = 2;
    private const double Shorter = 1.4;

    // shares of the time, about as measured on the examples: the rest goes to the joints, where they are not known
    private const double CoarseTime = 0.15, FineTime = 0.4, MeshTime = 0.03, HierarchyTime = 0.37;

    /// <summary>Springs at the joints from local solids; null where they are not found this way.</summary>
    public RigSprings? Springs { get; init; }

    /// <summary>Why there are none, in words.</summary>
    public Remark? SpringsMissing { get; init; }

    /// <summary>What the beams give on those springs.</summary>
    public FrameResponse? BeamsOnSprings { get; init; }

    /// <summary>The centred case.</summary>
    public SolidCaseAnswer Centred => Cases[0];

    /// <summary>Solves a press on two grids, the second with cells half as long.</summary>
    /// <param name="rig">The press.</param>
    /// <param name="cell">Longest cell beside a face in the finer grid, m; null for what suits the frame.</param>
    /// <param name="all">All load cases of the file; otherwise only the centred one.</param>
    /// <param name="progress">Told how far it is, and after each stage what is known by then.</param>
    /// <param name="book">Joints whose springs are known, and to which new ones are added.</param>
    /// <param name="tied">Whether bolted faces are one over all of their contact; otherwise only round the bolts. Springs of joints are those of open faces, and are then not looked for.</param>
    /// <param name="stop">Ends it early.</param>
    /// <exception cref="SolidFaultException">A frame that cannot be drawn or solved, with the part named.</exception>
    /// <exception cref="OperationCanceledException">It was ended early.</exception>
    public static SolidCheck Of(
        Rig rig, double? cell = null, bool all = false, Action<SolidProgress>? progress = null, JointBook? book = null, bool tied = false, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(rig);
        IReadOnlyList<SolidCase> cases = all ? SolidCase.Of(rig.Loading) : [SolidCase.Centred];
        book ??= new JointBook();
        PressSolid drawn = PressSolid.Of(rig);
        PressSolid solid = (tied ? drawn.Tied() : drawn) with { Cases = [.. cases.Skip(1)] };
        FrameResponse beams = FrameResponse.Of(FramePlan.Of(rig with { Springs = null }));
        CellSizes fine = cell is { } c ? new CellSizes(c, 2 * c) : solid.Usual;
        bool hasJoints = !tied && book.Known(rig) is null && JointBook.Missing(rig) is null;
        double whole = hasJoints ? 1 : CoarseTime + FineTime, coarseEnd = CoarseTime / whole, fineEnd = (CoarseTime + FineTime) / whole;
        List<SolidSolution> coarse = SolveOn(solid, ref fine, 0.5, cases, Part(progress, "a first look, coarsely cut", 0, coarseEnd), stop);
        SolidCaseAnswer[] rough = Answers(solid, cases, coarse, null);
        progress?.Invoke(new SolidProgress("cutting it finer", coarseEnd) { SoFar = new SolidCheck(solid, rough, beams) });
        List<SolidSolution> solutions = Solve(solid, fine, cases, Part(progress, "cutting it finer", coarseEnd, fineEnd), stop);
        solid = solid with { Notes = [.. solid.Notes, .. ShutFace.Notes(solid, solutions[0], rig.Wanted)] };
        var check = new SolidCheck(solid, Answers(solid, cases, solutions, rough), beams);
        progress?.Invoke(new SolidProgress("the joints by themselves", fineEnd) { SoFar = check });
        if (tied)
            return check with { SpringsMissing = new Remark("springs stand for open faces") };
        (RigSprings? springs, Remark? missing) = OfJoints(rig, book, Part(progress, "the joints by themselves", fineEnd, 1), stop);
        return check with
        {
            Springs = springs,
            SpringsMissing = missing,
            BeamsOnSprings = springs is null ? null : FrameResponse.Of(FramePlan.Of(rig with { Springs = springs })),
        };
    }

    private static SolidCaseAnswer[] Answers(PressSolid solid, IReadOnlyList<SolidCase> cases, List<SolidSolution> solutions, SolidCaseAnswer[]? rough) =>
    [
        .. solutions.Select((s, i) =>
            new SolidCaseAnswer(cases[i], rough?[i].Fine, Answer(solid, s), s, HotSpot.Of(solid, s), s.Through((solid.UpperAt.Z + solid.LowerAt.Z) / 2), SolidPlace.Weakest(s, solid.Yields, solid.Blind))
            {
                CoarseWeakest = rough?[i].Weakest,
            }),
    ];

    // a joint that cannot be cut out by itself does not spoil the rest
    private static (RigSprings? Springs, Remark? Missing) OfJoints(Rig rig, JointBook book, Action<double>? progress, CancellationToken stop)
    {
        try
        {
            return book.Of(rig, progress, stop) is { } springs ? (springs, null) : (null, new Remark(JointBook.Missing(rig) ?? ""));
        }
        catch (SolidFaultException fault)
        {
            return (null, fault.Says);
        }
    }

    // a grid that cannot be solved is tried again with shorter cells, before the reader is asked for them
    private static List<SolidSolution> SolveOn(PressSolid solid, ref CellSizes cells, double over, IReadOnlyList<SolidCase> cases, Action<double>? progress, CancellationToken stop)
    {
        for (int again = 0; ; again++)
            try
            {
                return Solve(solid, cells.Over(over), cases, progress, stop);
            }
            catch (SolidUnsolvedException) when (again < Again)
            {
                cells = cells.Over(Shorter);
            }
    }

    private static List<SolidSolution> Solve(PressSolid solid, CellSizes cells, IReadOnlyList<SolidCase> cases, Action<double>? progress, CancellationToken stop)
    {
        SolidMesh mesh = solid.Mesh(cells);
        stop.ThrowIfCancellationRequested();
        progress?.Invoke(MeshTime);
        var solver = new SolidSolver(mesh, null, null, stop);
        double solving = MeshTime + HierarchyTime;
        progress?.Invoke(solving);
        var solutions = new List<SolidSolution>();
        foreach (SolidCase one in cases)
        {
            Dictionary<int, Vector> forces = DieLoads.Of(solid, mesh, one);
            double done = solutions.Count;
            solutions.Add(solver.Solve(forces, progress: p => progress?.Invoke(solving + (1 - solving) * (done + p.Share) / cases.Count), stop: stop));
        }

        return solutions;
    }

    private static Action<double>? Part(Action<SolidProgress>? progress, string stage, double from, double to) =>
        progress is null ? null : share => progress(new SolidProgress(stage, from + (to - from) * share));

    private static GridAnswer Answer(PressSolid solid, SolidSolution solution)
    {
        Dictionary<int, double> upper = PressSolid.Shares(solution.Mesh, solid.Upper), lower = PressSolid.Shares(solution.Mesh, solid.Lower);
        double opening = solution.Mean(upper).Z - solution.Mean(lower).Z;
        Vector turn = solution.Turn(solid.Sections.Upper.Shares(solution.Mesh)) - solution.Turn(solid.Sections.Lower.Shares(solution.Mesh));
        return new GridAnswer(solution.Mesh.Unknowns, opening, Math.Sqrt(turn.X * turn.X + turn.Y * turn.Y));
    }
}
