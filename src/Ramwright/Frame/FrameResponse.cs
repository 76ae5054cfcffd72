using Ramwright.Geometry;

namespace Ramwright.Frame;

/// <summary>What one newton at the ram does everywhere in the frame.</summary>
public sealed class FrameResponse
{
    private readonly FactoredFrame _factored;

    private FrameResponse(FramePlan plan, FactoredFrame factored)
    {
        (Plan, _factored) = (plan, factored);
        Solutions = factored.Solve(plan.Cases);
    }

    /// <summary>The frame as beams.</summary>
    public FramePlan Plan { get; }

    /// <summary>One solution a load case, the centred one first.</summary>
    public IReadOnlyList<FrameSolution> Solutions { get; }

    /// <summary>Solves a plan for all its cases.</summary>
    public static FrameResponse Of(FramePlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return new FrameResponse(plan, new FactoredFrame(plan.Model));
    }

    /// <summary>Solves a plan that may have the beams of another, loaded otherwise: then its matrix is not factored again.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="like">The answer of a frame that may be the same.</param>
    public static FrameResponse Of(FramePlan plan, FrameResponse like)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(like);
        return new FrameResponse(plan, plan.Model.IsSameAs(like.Plan.Model) ? like._factored : new FactoredFrame(plan.Model));
    }

    /// <summary>How a beam lies.</summary>
    /// <param name="beam">Its number in the model.</param>
    public MemberAxes Axes(int beam) => _factored.Beams[beam].Axes;

    /// <summary>How much the daylight grows for one newton, load centred, m/N.</summary>
    public double DaylightGrowth => Growth(0);

    /// <summary>Stiffness of the frame at the dies, N/m.</summary>
    public double Stiffness => 1 / DaylightGrowth;

    /// <summary>How much the daylight grows for one newton in a case, the dies' sinking into crown and bed counted, m/N.</summary>
    public double Growth(int solution) =>
        Plan.Pressing + Solutions[solution].Displacement(Plan.Upper).Z - Solutions[solution].Displacement(Plan.Lower).Z;

    /// <summary>How far the dies turn out of parallel for one newton in a case, rad/N.</summary>
    public double Opening(int solution)
    {
        Vector turn = Solutions[solution].Rotation(Plan.Upper) - Solutions[solution].Rotation(Plan.Lower);
        return Math.Sqrt(turn.X * turn.X + turn.Y * turn.Y);
    }

    /// <summary>The case in which the dies open most out of parallel, and by how much for one newton, rad/N.</summary>
    public (int Case, double Opening) WorstOpening()
    {
        (int at, double most) = (0, 0);
        for (int i = 0; i < Solutions.Count; i++)
        {
            double opening = Opening(i);
            if (opening > most)
                (at, most) = (i, opening);
        }

        return (at, most);
    }
}
