using System.Globalization;
using System.Text;
using Ramwright.Frame;
using Ramwright.Ladders;
using Ramwright.Presses;
using Ramwright.Solids;
using Ramwright.Strength;
using Ramwright.Tests;

namespace Ramwright.Solid.Tests.Frames;

/// <summary>Hot-spot stress at the toes of welds from the joints' own solids and the beams, against the full solid: docs/solids-toes.csv.</summary>
public static class ToeTable
{
    /// <summary>Cells of the full solid, m: on its usual grid a narrow place of great stress came out up to 14 % high.</summary>
    private const double Cell = 0.005;

    private const string Head = "id,toe,plain MPa/kN,full solid MPa/kN,by factors MPa/kN";

    /// <summary>One toe of a frame, the work in the middle, Pa per newton at the ram; the greatest size along it.</summary>
    /// <param name="Id">The frame.</param>
    /// <param name="Toe">Upper or lower joint, which part, which side.</param>
    /// <param name="Plain">Greatest plain stress of the part beside the joint, by the beams.</param>
    /// <param name="Full">By the full solid.</param>
    /// <param name="Factors">By the joint's own solid and the beams.</param>
    public sealed record Row(string Id, string Toe, double Plain, double Full, double Factors);

    /// <summary>The file.</summary>
    public static string File => Path.Combine(Repository.Folder("docs"), "solids-toes.csv");

    /// <summary>The frames: those that are welded whole, and some again with fillets.</summary>
    public static IReadOnlyList<(string Id, RigFrame Frame)> Frames { get; } =
    [
        .. JointTable.Studied.Where(s => Joint(s.Frame) is RigWeldedJoint { Fit: not BeamFit.Lapped, Gusset: null } or RigSlottedJoint).Select(s => (s.Id, s.Frame)),
        .. ((string[])["C-01", "C-06", "C-07", "C-09", "O-09", "O-10", "O-13"]).Select(id => (id + "f", Filleted(Studies.Named(id).Frame))),
    ];

    /// <summary>What was committed.</summary>
    public static IReadOnlyList<Row> Committed { get; } = [.. System.IO.File.Exists(File) ? System.IO.File.ReadLines(File).Skip(1).Select(l => l.Split(','))
        .Select(w => new Row(w[0], w[1], 1e3 * Number(w[2]), 1e3 * Number(w[3]), 1e3 * Number(w[4]))) : []];

    /// <summary>Solves one frame and its joints.</summary>
    public static IReadOnlyList<Row> Of(string id, RigFrame frame, double? cell = null)
    {
        SolidCheck solid = SolidCheck.Of(Rigs.With(frame), cell);
        RigSprings springs = solid.Springs ?? throw new InvalidOperationException($"{id}: {solid.SpringsMissing}");
        FrameResponse beams = solid.BeamsOnSprings!;
        FrameSolution centred = beams.Solutions[0];
        var rows = new List<Row>();
        foreach (bool upper in (bool[])[true, false])
            foreach (RigToe toe in (upper ? springs.Upper : springs.Lower).Toes)
            {
                PlanJoint joint = beams.Plan.Joints.First(j => j.Centre.Z > Middle(frame) == upper);
                JointFlow flow = JointFlow.Of(beams, centred, joint, upper);
                double full = solid.Centred.HotSpots.Where(h => LocalToes.Side(h.Toe, solid.Solid) == (upper, toe.OnBeam, toe.Inner)).Max(h => Math.Abs(h.Stress));
                double mine = toe.Lines.Max(l => Math.Abs(l.Stress(flow.M, flow.V, flow.N)));
                rows.Add(new Row(id, $"{(upper ? "upper" : "lower")} {(toe.OnBeam ? "beam" : "upright")} {(toe.Inner ? "inner" : "outer")}", Math.Abs(Plain(beams, joint, toe)), full, mine));
            }

        return rows;
    }

    /// <summary>Whether a toe of the full solid is at the upper joint.</summary>
    public static bool IsUpper(WeldToe at, RigFrame frame) => (at.Along == 2 ? at.At : at.Face) > Middle(frame);

    /// <summary>Whether the beams lie over the uprights.</summary>
    public static bool IsOver(RigFrame frame) => Joint(frame) is { Fit: BeamFit.Over };

    private static double Middle(RigFrame frame) => frame switch
    {
        RigClosedFrame c => c.Bed.Shape.Properties.Top + c.Daylight / 2,
        RigOpenFrontFrame o => o.LowerArm.Shape.Properties.Top + o.Daylight / 2,
        _ => throw new ArgumentException("no such frame", nameof(frame)),
    };

    private static double Plain(FrameResponse beams, PlanJoint joint, RigToe toe)
    {
        bool ends = toe.OnBeam != (joint.Joint.Fit == BeamFit.Over);
        RigMember member = ends ? joint.Beam : joint.Onto;
        PlanStation at = beams.Plan.Parts.First(p => p.Member.Part == member.Part).Stations.MinBy(s => (beams.Axes(s.Beam).At(s.X) - joint.Centre).Length)!;
        return MemberFatigue.Direct(at.Actions(beams.Solutions[0]), member.Shape.Strands[0].Shape.Properties);
    }

    private static RigJoint? Joint(RigFrame frame) => frame switch { RigClosedFrame c => c.CrownJoint, RigOpenFrontFrame o => o.ArmJoint, _ => null };

    private static RigFrame Filleted(RigFrame frame)
    {
        RigWeldedJoint Fillet(RigJoint joint) => new(joint.Fit, new RigWeld(WeldKind.Fillet, 6e-3));
        return frame switch
        {
            RigClosedFrame c => c with { CrownJoint = Fillet(c.CrownJoint), BedJoint = Fillet(c.BedJoint) },
            RigOpenFrontFrame o => o with { ArmJoint = Fillet(o.ArmJoint) },
            _ => frame,
        };
    }

    /// <summary>Solves all again and writes the file.</summary>
    public static void Renew()
    {
        var text = new StringBuilder(Head).Append('\n');
        foreach (Row r in Frames.SelectMany(f => Of(f.Id, f.Frame, Cell)))
            text.Append(CultureInfo.InvariantCulture, $"{r.Id},{r.Toe},{r.Plain / 1e3:G4},{r.Full / 1e3:G4},{r.Factors / 1e3:G4}\n");
        System.IO.File.WriteAllText(File, text.ToString());
    }

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
