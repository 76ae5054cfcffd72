using Ramwright.Geometry;
using Ramwright.Presses;
using Ramwright.Workings;

namespace Ramwright.Frame;

/// <summary>A part of the press and the beams that stand for it.</summary>
/// <param name="Member">The part.</param>
/// <param name="Beams">Numbers of its beams in the model.</param>
/// <param name="Clear">Length between its ends, m, for buckling.</param>
/// <param name="Stations">Where it is looked at.</param>
public sealed record PlanPart(
    RigMember Member, IReadOnlyList<int> Beams, double Clear, IReadOnlyList<PlanStation> Stations)
{
    /// <summary>How it is held against turning over sideways.</summary>
    public PlanHold Sideways { get; init; } = PlanHold.BothEnds;
}

/// <summary>How a part is held against turning over sideways.</summary>
public enum PlanHold
{
    /// <summary>At both ends.</summary>
    BothEnds,
    /// <summary>At its first end only; the ram pushes on its tip.</summary>
    LoadedTip,
    /// <summary>At its first end only; bent by a moment at the other.</summary>
    FreeEnd,
}

/// <summary>A cross-section that is looked at, of one strand of a part.</summary>
/// <param name="Beam">Number of the beam in the model.</param>
/// <param name="X">Metres from the beam's first end.</param>
/// <param name="Where">In words: <c>under the cylinder</c>.</param>
/// <param name="Cut">What is cut out of the part at this place.</param>
/// <param name="Warp">Moment about z that one unit of torque adds here, because an open section warps.</param>
/// <param name="Mirrored">Whether the strand stands left for right.</param>
public sealed record PlanStation(int Beam, double X, string Where, PlanCut Cut, double Warp, bool Mirrored)
{
    /// <summary>The actions here, warping counted, as the strand's own section sees them.</summary>
    public Actions Actions(FrameSolution solution)
    {
        ArgumentNullException.ThrowIfNull(solution);
        Actions a = solution.At(Beam, X);
        double warped = a.Mz + Math.CopySign(Warp * a.T, a.Mz);
        return Mirrored ? a with { Vy = -a.Vy, T = -a.T, Mz = -warped } : a with { Mz = warped };
    }
}

/// <summary>What is cut out of a part at a place.</summary>
public enum PlanCut
{
    /// <summary>Nothing.</summary>
    None,
    /// <summary>The holes and slots that the press file gives.</summary>
    Openings,
    /// <summary>The holes of the joint's bolts or pin.</summary>
    Joint,
    /// <summary>Either.</summary>
    Both,
}

/// <summary>A joint between two parts.</summary>
/// <param name="Name">In words: <c>crown joint, left</c>.</param>
/// <param name="Key">Path of the joint in the press: joints of one key are the same joint repeated.</param>
/// <param name="Joint">How it is made.</param>
/// <param name="Beam">The part whose end is fixed.</param>
/// <param name="Onto">The part it is fixed to.</param>
/// <param name="Numbers">Numbers of the beams in the model whose actions the joint carries: one a strand.</param>
/// <param name="X">Where along those beams the actions are taken, m.</param>
/// <param name="Centre">Centre of the joint, global, m.</param>
/// <param name="Normal">Normal of the joint's plane, global: along the fixed end, or through the lap.</param>
/// <param name="U">Direction in the plane that stands for y: across the fixed end's section, or along a lapped beam.</param>
/// <param name="V">Direction in the plane that stands for z.</param>
public sealed record PlanJoint(
    string Name, string Key, RigJoint Joint, RigMember Beam, RigMember Onto, IReadOnlyList<int> Numbers, double X,
    Vector Centre, Vector Normal, Vector U, Vector V)
{
    /// <summary>Direction in the joint's plane from its centre towards the inner corner of the frame; zero where there is none.</summary>
    public Vector Inner { get; init; }

    /// <summary>The face that the beam's end stands against; null where none is known.</summary>
    public PlanFace? Face { get; init; }

    /// <summary>Where the bolts of a bolted joint stand, column by column.</summary>
    public IEnumerable<Vector> Places(RigBoltedJoint bolts)
    {
        (int along, int up) = bolts.Columns;
        for (int i = 0; i < along; i++)
        {
            for (int j = 0; j < up; j++)
                yield return Centre + (i - (along - 1) / 2.0) * bolts.Pitch * U + (j - (up - 1) / 2.0) * bolts.Gauge * V;
        }
    }
}

/// <summary>Which face of a part a beam's end stands against.</summary>
/// <param name="Y">Where the y of the part's section points, global.</param>
/// <param name="Z">Where its z points.</param>
/// <param name="Out">Out of the part, towards the beam.</param>
public sealed record PlanFace(Vector Y, Vector Z, Vector Out);

/// <summary>A tie rod and the beam that stands for it.</summary>
/// <param name="Name">In words: <c>tie rod, left</c>.</param>
/// <param name="Rod">What it is.</param>
/// <param name="Beam">Number of its beam in the model, from bed to crown.</param>
/// <param name="Length">Between its nuts' faces on the inner sides, m.</param>
/// <param name="Stiffness">How it stretches, closed and open.</param>
/// <param name="Closed">Whether its preload holds it closed up to the wanted force, as it is taken in the model.</param>
public sealed record PlanRod(string Name, RigTieRod Rod, int Beam, double Length, RodStiffness Stiffness, bool Closed)
{
    /// <summary>What it carries at one of its ends, the worse of the two in bending.</summary>
    public Actions Actions(FrameSolution solution)
    {
        ArgumentNullException.ThrowIfNull(solution);
        Actions a = solution.At(Beam, 0), b = solution.At(Beam, Length);
        return Math.Max(Math.Abs(a.My), Math.Abs(a.Mz)) >= Math.Max(Math.Abs(b.My), Math.Abs(b.Mz)) ? a : b;
    }
}

/// <summary>The frame of a press as beams, with the load cases of one newton at the ram.</summary>
/// <param name="Model">The beams.</param>
/// <param name="Cases">Load cases, the centred one first.</param>
/// <param name="Parts">Which beams are which part.</param>
/// <param name="Joints">Joints between parts.</param>
/// <param name="Upper">Node above the ram.</param>
/// <param name="Lower">Node under the lower die.</param>
/// <param name="Notes">What the beam picture takes for granted, for the reader.</param>
public sealed record FramePlan(
    FrameModel Model,
    IReadOnlyList<LoadCase> Cases,
    IReadOnlyList<PlanPart> Parts,
    IReadOnlyList<PlanJoint> Joints,
    int Upper,
    int Lower,
    IReadOnlyList<Remark> Notes)
{
    /// <summary>How far the dies sink into the parts they stand on for one newton, both together, m/N.</summary>
    public double Pressing { get; init; }

    /// <summary>How near the opening of such frames came to solid models, as a share of what is shown; null where that is not known.</summary>
    public double? Within { get; init; }

    /// <summary>Nodes with a foot under them where the press lies; null for those at the ram.</summary>
    public (int Lower, int Upper)? Feet { get; init; }

    /// <summary>Its tie rods; empty for any other frame.</summary>
    public IReadOnlyList<PlanRod> Rods { get; init; } = [];

    /// <summary>Draws up the beams of a press.</summary>
    public static FramePlan Of(Rig rig)
    {
        ArgumentNullException.ThrowIfNull(rig);
        FramePlan plan = rig.Frame switch
        {
            RigClosedFrame closed => ClosedFramePlan.Of(closed, rig),
            RigOpenFrontFrame open => OpenFrontPlan.Of(open, rig),
            RigTieRodFrame rods => TieRodPlan.Of(rods, rig),
            RigFreeFrame free => FreePlan.Of(free, rig),
            _ => throw new ArgumentException($"no beams are drawn up yet for {rig.Frame.GetType().Name}"),
        };
        return OwnWeight.On(plan, rig);
    }
}
