using Ramwright.Frame;
using Ramwright.Presses;
using Ramwright.Strength;

namespace Ramwright.Ladders;

/// <summary>A bed on pins is checked at every height it can be set at; each rung keeps the worst and says at which.</summary>
/// <remarks>The lowest height, with the greatest daylight, is checked first, as the press itself; this adds the others.</remarks>
internal static class BedHeightRungs
{
    public static void Add(List<Rung> rungs, Rig rig, FrameResponse response)
    {
        if (rig.Frame is not RigClosedFrame { BedPins: { } pins, BedJoint: RigPinnedJoint pin } frame)
            return;
        TearOutRung(rungs, rig, response, frame, pins, pin);
        for (int height = 1; height < pins.Count; height++)
        {
            Rig raised = rig with { Frame = frame.WithBedAt(height) };
            FrameResponse there = FrameResponse.Of(FramePlan.Of(raised));
            var found = new List<Rung>();
            MemberRungs.Add(found, raised, there);
            PressedRungs.Add(found, raised, there);
            CornerRungs.Add(found, raised, there);
            PanelRungs.Add(found, raised, there);
            JointRungs.Add(found, raised, there);
            StiffnessRungs.Add(found, raised, there);
            FatigueRungs.Add(found, raised, there);
            string where = height == 1 ? ", bed one hole up" : $", bed {height} holes up";
            foreach (Rung rung in found)
                Keep(rungs, rung with { Mode = rung.Mode + where, Saying = rung.Saying + where });
        }
    }

    private static void Keep(List<Rung> rungs, Rung rung)
    {
        int at = rungs.FindIndex(r => r.Id == rung.Id);
        if (at < 0)
            rungs.Add(rung);
        // equal but for rounding: the lower bed keeps the place
        else if (rung.SafeTo < rungs[at].SafeTo * (1 - 1e-9))
            rungs[at] = rung;
    }

    private static void TearOutRung(List<Rung> rungs, Rig rig, FrameResponse response, RigClosedFrame frame, RigBedPins pins, RigPinnedJoint pin)
    {
        double hole = pin.Diameter + 1e-3, below = pins.Edge - hole / 2, between = pins.Pitch - hole;
        bool lowest = pins.Count == 1 || below <= between;
        double clear = lowest ? below : between;
        if (!(clear > 0))
            throw new PressFaultsException([new Fault("frame.bed-pins", "no steel is left below the pin's hole", "a longer edge, a wider pitch or a thinner pin")]);
        PlanJoint[] joints = [.. response.Plan.Joints.Where(j => j.Key == "frame.bed-joint")];
        string what = "tears out below the pin, " + (lowest ? "bed at its lowest" : "bed raised");
        Worst.Joint(response, joints, (_, end, w) =>
                TearOut.PlugOut(end.Force.Length, clear, pin.Middle, frame.Upright.Fy, Factoring.Of(rig), w))
            ?.Into(rungs, new Words("upright-tear-out", frame.Upright.Part, what, what), RungGroup.Joints, Factoring.Load(rig), TearOut.PlugSource);
    }
}
