using Ramwright.Presses;

namespace Ramwright.Jobs;

/// <summary>One pass of a schedule: its squeeze, and the bar as it is after it.</summary>
/// <param name="Number">From 1.</param>
/// <param name="Bite">The squeeze, the same at every place.</param>
/// <param name="Squeezes">How many side by side.</param>
/// <param name="Width">Across after it, m; what a round bar's sides leave bare counts as filled up.</param>
/// <param name="Length">Of the drawn part after it, m.</param>
public sealed record SchedulePass(int Number, HotBite Bite, int Squeezes, double Width, double Length);

/// <summary>Which way the bar lies in each pass, and how far it is squeezed: geometry alone, whatever the heat and the press.</summary>
/// <param name="Passes">The passes, in order.</param>
/// <param name="Reached">Whether they end at the wanted size.</param>
public sealed record DrawingSchedule(IReadOnlyList<SchedulePass> Passes, bool Reached)
{
    /// <summary>The schedule of a job.</summary>
    /// <param name="job">A job that is drawn out.</param>
    /// <exception cref="ArgumentException">A job of a single squeeze.</exception>
    public static DrawingSchedule Of(RigHotSqueeze job)
    {
        ArgumentNullException.ThrowIfNull(job);
        if (job.DrawingOut is not { } plan)
            throw new ArgumentException("this job is a single squeeze", nameof(job));
        FlowStress law = HotBite.LawFor(job);
        // which way it lies now, and what each side is to become
        (double h, double w, double toH, double toW) = (job.Height, job.Width, plan.Height, plan.Width);
        double L = plan.Over;
        bool round = job.IsRound;
        int idle = 0;
        var passes = new List<SchedulePass>();
        while (passes.Count < DrawingOut.MostPasses)
        {
            if (h <= toH * (1 + DrawingOut.Close) && w <= toW * (1 + DrawingOut.Close))
                return new DrawingSchedule(passes, true);
            double to = Math.Max(toH, h * (1 - plan.Reduction));
            if (to >= h * (1 - 1e-9))
            {
                // this side is there; the other is not, or never will be
                if (!plan.QuarterTurns || ++idle > 1)
                    break;
                (h, w, toH, toW) = (w, h, toW, toH);
                continue;
            }

            idle = 0;
            var bite = new HotBite { Law = law, Height = h, Width = w, Bite = plan.Bite, Target = to, IsRound = round, Friction = job.Friction, DieLength = job.DieLength };
            int squeezes = (int)Math.Ceiling(L / plan.Bite - 1e-9);
            double section = round ? Math.PI / 4 * w * w : h * w;
            BiteShape end = bite.At(bite.Travel);
            double after = round ? end.Width - end.Height + Math.PI / 4 * end.Height : end.Width;
            L *= section / (to * after);
            passes.Add(new SchedulePass(passes.Count + 1, bite, squeezes, after, L));
            (h, w, round) = (to, after, false);
            if (plan.QuarterTurns)
                (h, w, toH, toW) = (w, h, toW, toH);
        }

        return new DrawingSchedule(passes, false);
    }
}
