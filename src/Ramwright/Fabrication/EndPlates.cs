using Ramwright.Frame;
using Ramwright.Geometry;
using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Stock;

namespace Ramwright.Fabrication;

/// <summary>Plates across tie rods, washers under their nuts, and plates on the ends of bolted beams.</summary>
internal static class EndPlates
{
    /// <summary>Whether a part of a frame is a plate and not a length.</summary>
    public static bool IsPlate(RigFrame frame, string part) => frame is RigTieRodFrame rods
        && ((rods.CrownPlate is not null && part == rods.Crown.Part) || (rods.BedPlate is not null && part == rods.Bed.Part));

    public static void Draw(PartDraft draft)
    {
        if (draft.Rig.Frame is RigTieRodFrame rods)
        {
            if (rods.CrownPlate is { } crown)
                Across(rods.Crown, crown, rods, draft);
            if (rods.BedPlate is { } bed)
                Across(rods.Bed, bed, rods, draft);
            if (rods.Rod.Washer is { } washer)
                Washer(washer, rods, draft);
        }

        foreach (IGrouping<string, PlanJoint> alike in draft.Plan.Joints.GroupBy(j => j.Key))
        {
            if (alike.First() is { Joint: RigBoltedJoint { Fit: not BeamFit.Lapped } bolted } joint)
                OnBeam(bolted, joint, alike.Count(), draft);
        }
    }

    private static void Across(RigMember member, RigEndPlate plate, RigTieRodFrame frame, PartDraft draft)
    {
        double hole = ScrewThread.UsualHole(frame.Rod.Thread.D);
        var holes = new List<PlateHole>(PlateShape.Grid((2, frame.RodsAcross), (frame.RodsDeep > 0 ? 2 : 1, frame.RodsDeep), hole, $"tie rod {frame.Rod.Thread.Name}"));
        if (plate.Hole > 0)
            holes.Add(new PlateHole(0, 0, plate.Hole, "the middle"));
        draft.Add(new PlatePart
        {
            Name = member.Part,
            Of = member.Part,
            Count = 1,
            Steel = member.Steel,
            Thickness = plate.Thickness,
            Blank = PlateShape.Rectangle(plate.Length, plate.Width),
            Holes = holes,
            Places = [.. draft.Body.Pieces.Where(p => p.Member.Part == member.Part).Select(MemberParts.Middle)],
        });
    }

    private static void Washer(RigRodWasher washer, RigTieRodFrame frame, PartDraft draft)
    {
        PlateHole[] holes = [new PlateHole(0, 0, ScrewThread.UsualHole(frame.Rod.Thread.D), $"tie rod {frame.Rod.Thread.Name}")];
        draft.Add(new PlatePart
        {
            Name = "washer of a tie rod",
            Of = "tie rod",
            Count = 2 * frame.Rods,
            Steel = washer.Steel,
            Thickness = washer.Thickness,
            Blank = PlateShape.Disc(washer.Outside),
            Holes = holes,
        });
    }

    private static void OnBeam(RigBoltedJoint bolted, PlanJoint joint, int count, PartDraft draft)
    {
        if (bolted.EndPlate is not { } end)
        {
            draft.Undecided($"What carries the bolts of the {joint.Name.Split(',')[0]} at the {joint.Beam.Part}'s end: the file gives no end-plate.");
            return;
        }

        SectionProperties beam = joint.Beam.Shape.Properties;
        (int along, int up) = bolted.Columns;
        IReadOnlyList<PlateHole> holes = PlateShape.Grid((along, bolted.Pitch), (up, bolted.Gauge), bolted.Hole, $"bolt {bolted.Thread.Name}");
        double high = Math.Max(beam.Height, (up - 1) * bolted.Gauge + 2 * bolted.Edge), wide = beam.Width, asks = (along - 1) * bolted.Pitch + bolted.Hole;
        if (asks >= wide)
            draft.Misfit($"The bolts of the {joint.Name.Split(',')[0]} stand wider apart than the {joint.Beam.Part} is wide, and the end plate is taken as wide as that: pitch of at most {Readout.Text(wide - 2.4 * bolted.Hole, Dimension.Length, draft.Units)}.");
        draft.Add(new PlatePart
        {
            Name = $"end plate of the {joint.Beam.Part}",
            Of = joint.Beam.Part,
            Count = count,
            Steel = end.Steel,
            Thickness = end.Thickness,
            Blank = PlateShape.Rectangle(wide, high),
            Holes = asks >= wide ? [] : holes,
            Rule = "as wide as the beam, as the strength of its bolts is reckoned; as high as the beam or its bolts with their edges",
            Places = [.. draft.Plan.Joints.Where(j => j.Key == joint.Key).Select(j => j.Centre)],
        });
    }
}
