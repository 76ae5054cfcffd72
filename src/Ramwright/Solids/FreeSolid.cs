using Ramwright.Geometry;
using Ramwright.Presses;

namespace Ramwright.Solids;

/// <summary>
/// A frame by points and bars as a solid. The file gives centre lines only, so where bars meet one has to run through: one that goes on past the point; at a corner the first in the
/// file, out to the far face of the others. The others end at its face, and are joined there.
/// </summary>
internal static class FreeSolid
{
    public static PressSolid Of(RigFreeFrame frame, Rig rig)
    {
        ArgumentNullException.ThrowIfNull(rig);
        if (frame.Points.Count(p => p.Held) > 1)
            throw new SolidFaultException("the frame is held at several points, which would carry part of the force: as a solid it is pressed held by nothing; say 'held' of one point at most");
        IReadOnlyList<FreeRun> runs = FreeRun.Of(frame);
        var drawing = new SolidDrawing();
        int[][] parts = [.. runs.Select(run => run.Pieces(frame, End(frame, runs, run, run.From, -1), End(frame, runs, run, run.To, 1)).Select(p => drawing.Add(p)).ToArray())];
        for (int a = 0; a < runs.Count; a++)
            for (int b = a + 1; b < runs.Count; b++)
                for (int point = 0; point < frame.Points.Count; point++)
                    if (runs[a].Touches(point) && runs[b].Touches(point))
                        Join(drawing, frame, runs[a], runs[b], parts[a], parts[b], point);
        drawing.Note("Points and bars give centre lines only: where bars meet, the one that goes on past the point runs through, at a corner the first in the file; the others end at its face.");

        (int upper, int lower) = (Pressed(frame, runs, frame.CylinderAt, "the cylinder pushes"), Pressed(frame, runs, frame.WorkAt, "the work pushes"));
        Vector at = frame.Points[frame.CylinderAt].At, work = frame.Points[frame.WorkAt].At;
        IReadOnlyList<DieFace> top = Die(upper, at, -1, null, "plate under the cylinder"), foot = Die(lower, work, 1, frame.Bolster, "bolster");
        return new PressSolid(drawing.Parts, drawing.Bonds, top, foot, drawing.Notes)
        {
            Yields = drawing.Yields,
            Members = drawing.Members,
            Sections = (Behind(upper, at), Behind(lower, work)),
            UpperAt = at with { Z = top[0].At },
            LowerAt = work with { Z = foot[0].At },
            Turning = runs[upper].Axis,
        };

        IReadOnlyList<DieFace> Die(int run, Vector middle, int inward, RigBolster? bolster, string name)
        {
            double half = drawing.HalfDie(frame.DieWidth);
            int axis = runs[run].Axis;
            double on = FreeRun.Component(middle, axis);
            return drawing.Die(parts[run], inward, Cuboid.Everywhere.With(axis, on - half, on + half), bolster, name, axis);
        }

        DieSection Behind(int run, Vector middle) => new(parts[run], runs[run].Axis, FreeRun.Component(middle, runs[run].Axis));
    }

    // the level bar that a force acts on
    private static int Pressed(RigFreeFrame frame, IReadOnlyList<FreeRun> runs, int point, string what)
    {
        for (int pass = 0; pass < 2; pass++)
            for (int r = 0; r < runs.Count; r++)
                if (runs[r].Axis != 2 && (pass == 0 ? runs[r].PassesBy(point) : runs[r].Touches(point)))
                    return r;
        throw new SolidFaultException($"{what} at {frame.Points[point].Name}, where no bar lies level: there is no face to press on");
    }

    // where a run ends that would end at a point: at the face of what runs through there, or at the far face of what meets it
    private static double End(RigFreeFrame frame, IReadOnlyList<FreeRun> runs, FreeRun run, int point, int outward)
    {
        double at = FreeRun.Component(frame.Points[point].At, run.Axis);
        FreeRun[] others = [.. runs.Where(o => o != run && o.Axis != run.Axis && o.Touches(point))];
        if (others.Length == 0)
            return at;
        FreeRun[] through = [.. others.Where(o => o.PassesBy(point))];
        if (through.Length == 0 && FirstOf(runs, [.. others, run]) != run)
            through = [FirstOf(runs, [.. others, run])];
        double[] faces = [.. (through.Length > 0 ? through : others).Select(o => outward > 0 == through.Length > 0 ? o.Reach(frame, run.Axis).Low : o.Reach(frame, run.Axis).High)];
        // what ends at a face must clear the nearest; what runs through must cover all
        return at + (outward > 0 == through.Length > 0 ? faces.Min() : faces.Max());
    }

    private static FreeRun FirstOf(IReadOnlyList<FreeRun> runs, FreeRun[] some) => runs.First(some.Contains);

    private static void Join(SolidDrawing drawing, RigFreeFrame frame, FreeRun one, FreeRun other, int[] a, int[] b, int point)
    {
        RigJoint? joint = one.Bars.Concat(other.Bars).Select(bar => bar.From == point ? bar.FromJoint : bar.To == point ? bar.ToJoint : null).FirstOrDefault(j => j is not null);
        if (joint is RigPinnedJoint)
            throw new SolidFaultException($"the pin of {one.Member.Part} and {other.Member.Part} at {frame.Points[point].Name}: where its holes are is not said by points and bars, so that it cannot be drawn; describe the frame as closed");
        foreach (int p in a)
            foreach (int q in b)
                if (joint is RigWeldedJoint weld)
                    drawing.Weld(p, q, weld.Weld);
                else
                    drawing.JoinWhole(p, q);
        if (joint is not RigWeldedJoint)
            drawing.Note("Bars whose joint is not said, or not a weld, are one over the whole face where they meet.");
    }
}
