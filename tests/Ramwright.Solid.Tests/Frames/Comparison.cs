using System.Diagnostics;
using Ramwright.Frame;
using Ramwright.Geometry;
using Ramwright.Presses;
using Ramwright.Solid.Tests.Calculix;
using Ramwright.Stock;

namespace Ramwright.Solid.Tests.Frames;

/// <summary>One stress, per newton at the ram, Pa/N: the greatest at the edges of the section, N/A ± M/W.</summary>
public sealed record Stress(string Where, double At, double Value);

/// <summary>What one way of solving gives, per newton at the ram.</summary>
/// <param name="Opening">Growth of the daylight at the dies, m.</param>
/// <param name="Sections">The same by the mean movement of the whole sections behind the dies, m.</param>
/// <param name="Turn">How far the dies turn out of parallel, rad.</param>
/// <param name="Stresses">Nominal stresses.</param>
public sealed record Answer(double Opening, double Sections, double Turn, IReadOnlyList<Stress> Stresses)
{
    /// <summary>The same by the turn of the whole sections behind the dies, rad.</summary>
    public double SectionTurn { get; init; }
    /// <summary>Turn of the dies from front to back for a moment of 1 N·m, rad; zero where it was not asked for.</summary>
    public double Roll { get; init; }
    /// <summary>Bricks and nodes; zero for beams.</summary>
    public (int Bricks, int Nodes) Mesh { get; init; }
    /// <summary>Time to solve, s.</summary>
    public double Seconds { get; init; }
    /// <summary>By how much the forces through the upright, rod or column fail to balance one newton.</summary>
    public double OutOfBalance { get; init; }

    /// <summary>By CalculiX, or by another solver.</summary>
    public static Answer OfSolid(Study study, Func<SolidModel, SolidAnswer>? solve = null)
    {
        SolidFrame frame = SolidFrame.Of(study);
        long start = Stopwatch.GetTimestamp();
        SolidAnswer solid = (solve ?? Solver.Solve)(frame.Model);
        // where only the upper half is drawn, the plane of symmetry stands still
        double Between(Dictionary<int, double> upper, Dictionary<int, double>? lower) =>
            lower is null ? 2 * solid.Mean(upper).Z : solid.Mean(upper).Z - solid.Mean(lower).Z;
        var stresses = new List<Stress>();
        double balance = 0;
        foreach (Place p in frame.Places)
        {
            double centroid = p.Across switch { 0 => p.Centroid.X, 1 => p.Centroid.Y, _ => p.Centroid.Z };
            (double N, double M, double at) = solid.Through(p.Cut, p.Across, centroid);
            stresses.Add(new Stress(p.Where, at, Edge(p.Member.Shape.Properties, p.Whole * N, p.Whole * p.Sign * M)));
            if (p.Cut.Axis == 2)
                balance = N * (frame.Turning == 0 ? 4 : 2) - 1;
        }

        // work in the middle does not turn the dies of a closed frame
        double turn = frame.Turning == 0 ? 0 : 2 * solid.Slope(frame.Upper, frame.Turning);
        return new Answer(Between(frame.Upper, frame.Lower), Between(frame.UpperSection, frame.LowerSection), Math.Abs(turn), stresses)
        {
            SectionTurn = frame.Turning == 1 ? 2 * Math.Abs(solid.Tilt(frame.UpperSection)) : 0,
            Mesh = (frame.Model.Mesh.Bricks.Count, frame.Model.Mesh.Used.Count),
            Seconds = Stopwatch.GetElapsedTime(start).TotalSeconds,
            OutOfBalance = balance,
        };
    }

    /// <summary>By beams, at the places where the solid was cut.</summary>
    public static Answer OfBeams(Study study, IReadOnlyList<Stress> places)
    {
        FrameResponse beams = FrameResponse.Of(FramePlan.Of(Rigs.With(study.Frame)));
        SolidFrame frame = SolidFrame.Of(study);
        var stresses = new List<Stress>();
        foreach (Place p in frame.Places)
        {
            double at = places.Single(s => s.Where == p.Where).At;
            Vector point = p.Cut.Axis switch { 0 => p.Centroid with { X = at }, 1 => p.Centroid with { Y = at }, _ => p.Centroid with { Z = at } };
            (double N, double M) = Through(beams, p.Member, point);
            stresses.Add(new Stress(p.Where, at, Edge(p.Member.Shape.Properties, N, M)));
        }

        return new Answer(beams.DaylightGrowth, beams.DaylightGrowth - beams.Plan.Pressing, beams.Opening(0), stresses) { SectionTurn = beams.Opening(0) };
    }

    /// <summary>How far the dies of a closed frame, crown and bed alike, turn out of parallel from front to back for a moment of 1 N·m on both, rad, by solid.</summary>
    public static double RollOfSolid(Study study)
    {
        SolidFrame frame = ClosedSolid.Of(study, (RigClosedFrame)study.Frame, offToFront: true);
        return 2 * Math.Abs(Solver.Solve(frame.Model).Roll(frame.Upper));
    }

    /// <summary>The same by beams: the case of work one metre off to the front.</summary>
    public static double RollOfBeams(Study study)
    {
        Rig rig = Rigs.With(study.Frame);
        rig = rig with { Loading = rig.Loading with { Deep = 1 } };
        return FrameResponse.Of(FramePlan.Of(rig)).Opening(1);
    }

    /// <summary>What the tool tells its reader of a frame.</summary>
    public static IReadOnlyList<string> Notes(Study study) => [.. FramePlan.Of(Rigs.With(study.Frame)).Notes.Select(n => n.Text())];

    /// <summary>All strands of a part where it passes a point.</summary>
    private static (double N, double M) Through(FrameResponse beams, RigMember member, Vector point)
    {
        (double N, double M) sum = default;
        int met = 0;
        for (int number = 0; number < beams.Plan.Model.Members.Count; number++)
        {
            FrameMember beam = beams.Plan.Model.Members[number];
            if (beam.Part != member.Part)
                continue;
            IReadOnlyList<Node> nodes = beams.Plan.Model.Nodes;
            Vector start = nodes[beam.From].At + beam.ArmFrom, end = nodes[beam.To].At + beam.ArmTo, along = (end - start).Unit;
            double x = (point - start).Dot(along), off = (point - start - x * along).Length;
            if (x < -1e-9 || x > (end - start).Length + 1e-9 || off > 0.2 * member.Shape.Properties.Height + member.Shape.Properties.Width)
                continue;
            Actions a = beams.Solutions[0].At(number, Math.Clamp(x, 0, (end - start).Length));
            sum = (sum.N + a.N, sum.M + a.My);
            met++;
        }

        return met == member.Shape.Strands.Count ? sum : throw new InvalidOperationException($"{met} strands of {member.Part} at {point}");
    }

    private static double Edge(SectionProperties s, double N, double M) => Math.Abs(N) / s.A + Math.Abs(M) / s.Wely;
}
