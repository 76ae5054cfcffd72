using Ramwright.Frame;
using Ramwright.Presses;
using Ramwright.Stock;
using static Ramwright.Solids.JointPlace;

namespace Ramwright.Solids;

/// <summary>The joints of a frame whose springs a local solid gives, or why there are none.</summary>
/// <param name="Places">The upper and the lower one.</param>
/// <param name="Missing">Why there are none, in words.</param>
internal readonly record struct JointPlaces((JointPlace Upper, JointPlace Lower)? Places, string? Missing)
{
    public static JointPlaces Of(Rig rig)
    {
        ArgumentNullException.ThrowIfNull(rig);
        return rig.Frame switch
        {
            RigClosedFrame closed => Of(closed),
            RigOpenFrontFrame open => Of(open),
            RigTieRodFrame rods => Of(rods, rig),
            _ => None("a frame of points and bars has no outlines at its joints, so there is no solid of them"),
        };
    }

    private const string NoRoom = "the gussets reach so far that too little of the members is left between them to be taken as beams";

    // nine tenths of half a span, or four of a daylight, is as much as gussets may take
    private static bool ShortOfRoom(RigJoint joint, double along, double clear) => joint.Gusset is { } g && (g.LegAlong > 0.9 * along || g.LegUp > 0.4 * clear);

    private static JointPlaces None(string why) => new(null, why);

    private static JointPlaces Of(RigClosedFrame frame)
    {
        if (frame.BedPins is not null)
            return None("a bed on pins turns on them freely and gives where they bear, which no solid here shows");
        if (frame.CrownJoint is RigPinnedJoint || frame.BedJoint is RigPinnedJoint)
            return None("a pin lets its corner turn freely, so there is no stiffness against turning to find; how far the pin itself gives is not drawn as a solid");
        if (ShortOfRoom(frame.CrownJoint, frame.Width / 2, frame.Daylight + frame.RamDrop) || ShortOfRoom(frame.BedJoint, frame.Width / 2, frame.Daylight + frame.RamDrop))
            return None(NoRoom);
        if (JointSprings.Beside(frame.CrownJoint, frame.Crown.Shape, frame.Upright.Shape) is not null || JointSprings.Beside(frame.BedJoint, frame.Bed.Shape, frame.Upright.Shape) is not null)
            return None("webs stand beside those of the uprights, whose halves then bend and twist from end to end: no solid of the joint by itself shows that");
        double half = ClosedFrameBody.HalfSpan(frame), height = ClosedFrameBody.Height(frame);
        double low = frame.Bed.Shape.Properties.Top, high = height - frame.Crown.Shape.Properties.Bottom;
        return new((Corner(frame.CrownJoint, frame.Crown, high, 1, null, height), Corner(frame.BedJoint, frame.Bed, low, -1, frame.Bolster, 0)), null);

        JointPlace Corner(RigJoint joint, RigMember beam, double edge, int up, RigBolster? bolster, double level)
        {
            (double along, double gusset) = (joint.Gusset?.LegAlong ?? 0, joint.Gusset?.LegUp ?? 0);
            double face = frame.Width / 2 - along;
            // halves of a pair twist all the way to the plate that ties them under the die; in a short beam the dents of joint and die run into one another
            double room = Math.Min(0.9 * face, face - frame.DieWidth / 2);
            bool whole = beam.Shape is Pair || room < beam.Shape.Properties.Height;
            return new JointPlace
            {
                Way = WayOf(joint),
                Beam = beam,
                Upright = new JointUpright(frame.Upright),
                Along = 0,
                Face = face,
                Axis = half,
                Height = level,
                Edge = edge - up * gusset,
                Up = up,
                BeamRoom = whole ? face : room,
                UprightRoom = 0.45 * (high - low) - gusset,
                Die = whole ? new JointDie(Math.Min(frame.DieWidth, 2 * face), DiePressing.Of(beam.Shape, frame.DieWidth), $"die {Number(frame.DieWidth)}{Bolster(bolster)}") : null,
            };
        }
    }

    private static JointPlaces Of(RigOpenFrontFrame frame)
    {
        if (frame.ArmJoint is RigPinnedJoint)
            return None("a pin lets the arm turn freely, so there is no stiffness against turning to find");
        if (ShortOfRoom(frame.ArmJoint, Math.Min(frame.Throat, frame.ArmReach - 0.1 * frame.Throat), frame.Daylight + frame.RamDrop))
            return None(NoRoom);
        double low = frame.LowerArm.Shape.Properties.Top, high = low + frame.Daylight + frame.RamDrop;
        (double along, double gusset) = (frame.ArmJoint.Gusset?.LegAlong ?? 0, frame.ArmJoint.Gusset?.LegUp ?? 0);
        JointPlace Arm(RigMember arm, double edge, int up) => new()
        {
            Way = WayOf(frame.ArmJoint),
            Beam = arm,
            Upright = new JointUpright(frame.Column),
            Along = 1,
            Face = -along,
            Axis = frame.Column.Shape.Properties.Top,
            Height = up > 0 ? edge + arm.Shape.Properties.Bottom : 0,
            Edge = edge - up * gusset,
            Up = up,
            BeamRoom = 0.9 * frame.ArmReach - along,
            UprightRoom = 0.45 * (high - low) - gusset,
        };
        return new((Arm(frame.UpperArm, high, 1), Arm(frame.LowerArm, low, -1)), null);
    }

    private static JointPlaces Of(RigTieRodFrame frame, Rig rig)
    {
        if (frame.Rod.Seat == RodSeat.Sleeve)
            return None("rods in sleeves keep the rule: how rod and sleeve share a pull hangs on the preload, not on the joint");
        if (frame.Rod.PreloadLeast > 0 && !TieRodPlan.HoldsClosed(frame, RodStiffness.Of(frame), rig.Wanted))
            return None("the rods' preload does not last to the wanted force, and a solid of the joint would take it to: the rule stays");
        double low = frame.Bed.Shape.Properties.Top, high = low + frame.Daylight + frame.RamDrop;
        RigTieRod rod = frame.Rod;
        string thread = $"rod {Number(rod.Thread.D)} {Number(rod.StressDiameter)} {Number(rod.Shank ?? 0)} {Number(rod.FreeThread)} {rod.Seat} {(rod.PreloadLeast > 0 ? "held" : "loose")} nut {Number(rod.NutHeight)}"
            + $" washer {Number(rod.Washer?.Thickness ?? 0)} {Number(rod.Washer?.Outside ?? 0)} at {Number(frame.RodsAcross)} {Number(frame.RodsDeep)}";
        return new((End(frame.Crown, frame.CrownPlate, high, 1, null), End(frame.Bed, frame.BedPlate, low, -1, frame.Bolster)), null);

        // plate, hole and die run into the rods' dents: the solid reaches to the middle of the press
        JointPlace End(RigMember beam, RigEndPlate? plate, double edge, int up, RigBolster? bolster) => new()
        {
            Way = "rods",
            Beam = beam,
            Upright = new JointUpright(null, rod, frame.RodsDeep > 0 ? 2 : 1) { Text = thread },
            Along = 0,
            Face = frame.RodsAcross / 2,
            Axis = frame.RodsAcross / 2,
            Height = up > 0 ? edge + beam.Shape.Properties.Bottom : 0,
            Edge = edge,
            Up = up,
            BeamRoom = frame.RodsAcross / 2,
            UprightRoom = 0.45 * (high - low),
            Die = new JointDie(Math.Min(frame.DieWidth, frame.RodsAcross), DiePressing.Of(beam.Shape, frame.DieWidth),
                $"die {Number(frame.DieWidth)} {Number(frame.DieDepth)}{Bolster(bolster)} plate {Number(plate?.Length ?? 0)} hole {Number(plate?.Hole ?? 0)}"),
        };
    }

    private static string Bolster(RigBolster? bolster) => bolster is null ? "" : $" bolster {Number(bolster.Thickness)} {Number(bolster.Along)}";
}
