using Ramwright.Geometry;
using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Stock;
using Ramwright.Workings;

namespace Ramwright.Frame;

/// <summary>
/// Crown and bed on two or four tie rods. The rods stand clamped at crown and bed, bend with them, and stretch as
/// <see cref="RodStiffness"/> says: their area in the model is the one that gives that stretch.
/// </summary>
internal static class TieRodPlan
{
    private const double E = 210e9;

    /// <summary>How near the opening of plates on rods came to solids, by rule: docs/solids.md.</summary>
    private const double Plates = 0.15;

    public static FramePlan Of(RigTieRodFrame frame, Rig rig)
    {
        double half = frame.RodsAcross / 2;
        var plan = new PlanBuilder();
        JointSprings? top = JointSprings.Of(rig.Springs?.Upper), foot = JointSprings.Of(rig.Springs?.Lower);
        var ends = new CrownAndBed(plan, frame.Crown, frame.Bed, half, top?.Beam ?? EndFixity.Rigid, foot?.Beam ?? EndFixity.Rigid, rig);
        double clear = ends.BelowCrown - ends.AboveBed;

        RodStiffness stiffness = RodStiffness.Of(frame);
        bool closed = HoldsClosed(frame, stiffness, rig.Wanted);
        // springs from solids hold all that is not between crown and bed
        double k = top is not null ? stiffness.Between : closed ? stiffness.Closed : stiffness.Open;
        double d = frame.Rod.Shank is { } shank ? Math.Min(shank, frame.Rod.Thread.D) : frame.Rod.StressDiameter;
        SectionProperties section = new Round(d) { Name = "tie rod", Source = frame.Rod.Thread.Form.StressArea }.Properties with { A = k * clear / E };

        var rods = new List<PlanRod>();
        double[] depths = frame.RodsDeep > 0 ? [-frame.RodsDeep / 2, frame.RodsDeep / 2] : [0];
        foreach (int side in (int[])[-1, 1])
        {
            foreach (double y in depths)
            {
                (int from, int to) = side < 0 ? (ends.BedLeftEnd, ends.CrownLeftEnd) : (ends.BedRightEnd, ends.CrownRightEnd);
                int beam = plan.Bar("tie rod", section, from, to, side * Vector.Across,
                    new Vector(0, y, ends.AboveBed), new Vector(0, y, ends.BelowCrown - ends.Height), OneOf(foot, depths.Length), OneOf(top, depths.Length));
                string where = (side < 0 ? "left" : "right") + (y < 0 ? ", front" : y > 0 ? ", back" : "");
                rods.Add(new PlanRod($"tie rod, {where}", frame.Rod, beam, clear, stiffness, closed));
            }
        }

        double? within = top?.Within ?? (IsSolid(frame.Crown.Shape) && IsSolid(frame.Bed.Shape) ? Plates : null);
        return new FramePlan(
            plan.Model(ends.Foot),
            ends.Cases(rig), [ends.Crown(0, "at the rods"), ends.Bed(0, "at the rods")], [], Upper: ends.CrownMid, Lower: ends.BedMid,
            [
                "Crown and bed are taken as beams between the rods; the rods stand clamped in them and bend where they tilt.",
                top is { } found
                    ? $"{JointSprings.FromSolids} Against solid models such frames opened within {Readout.Text(found.Within, Dimension.Ratio)} of what is shown."
                    : within is { } share
                    ? "Springs stand for the dies sinking in, none for the nuts sinking into crown and bed, nor for plates that bend from front to back. "
                        + $"Against solid models such frames opened within {Readout.Text(share, Dimension.Ratio)} of what is shown."
                    : "No rule is known for how much a hollow or rolled section gives under the nuts: solid models of boxes opened up to two and a quarter times as far as shown where the nuts stood on "
                        + "the bare wall, and 8 % further with thick plates under them.",
                Stretch(frame, stiffness, closed, rig.Wanted),
                UnitLoads.InWords(rig.Loading),
                .. frame.Horizontal ? (string[])[] : ["Weight is left out: it is small beside the ram force."],
            ])
        { Within = within, Rods = rods, Pressing = DiePressing.Of(frame.Crown.Shape, frame.DieWidth) + DiePressing.Of(frame.Bed.Shape, frame.DieWidth) };
    }

    private static bool IsSolid(Shape shape) => shape is Flat or Round or Turned { Of: Flat };

    // rods at one end of a beam share its spring
    private static EndFixity OneOf(JointSprings? springs, double rods)
    {
        EndFixity whole = springs?.Upright ?? EndFixity.Rigid;
        return whole with { N = whole.N / rods, My = whole.My / rods };
    }

    /// <summary>Whether the preload to count on lasts up to a ram force, work centred.</summary>
    internal static bool HoldsClosed(RigTieRodFrame frame, RodStiffness k, double force) =>
        frame.Rod.PreloadLeast > 0 && force / frame.Rods <= frame.Rod.PreloadLeast / (1 - k.ShareLeast);

    private static Remark Stretch(RigTieRodFrame frame, RodStiffness k, bool closed, double wanted)
    {
        double pull = wanted / frame.Rods;
        const string bare = "At the wanted force, work centred, each rod lets crown and bed apart by {0} without preload";
        string words = frame.Rod.PreloadLeast <= 0
            ? bare + "; it has none."
            : bare + " and by {1} while its preload holds" + (closed ? ", as it does: that is how it is taken here." : "; its preload does not last that far, and it is taken without.");
        return new Remark(words, Remark.Of(pull / k.Open, Dimension.Length), Remark.Of(pull / k.Closed, Dimension.Length));
    }
}
