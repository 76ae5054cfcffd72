using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Jobs;

/// <summary>One pass along the bar: squeezes side by side from one end of the drawn part to the other.</summary>
/// <param name="Number">From 1.</param>
/// <param name="Height">Between the dies after it, m.</param>
/// <param name="Width">Across after it, m.</param>
/// <param name="Length">Of the drawn part after it, m.</param>
/// <param name="Squeezes">How many squeezes this pass takes.</param>
/// <param name="Force">Greatest force of a squeeze, at the heat's beginning, N.</param>
/// <param name="ColdForce">The same at the heat's end, N.</param>
/// <param name="Heat">In which heat it is begun, from 1.</param>
public sealed record DrawingPass(int Number, double Height, double Width, double Length, int Squeezes, double Force, double ColdForce, int Heat);

/// <summary>
/// Drawing out as a schedule: squeeze, move on, turn a quarter after each pass, never below the size wanted. Volume is kept exactly; width grows by
/// Tomlinson and Stringer's coefficient.
/// </summary>
public sealed record DrawingOut
{
    /// <summary>Within this share of the wanted size it is finished.</summary>
    public const double Close = 0.02;

    /// <summary>More passes than this are not drawn out but given up.</summary>
    public const int MostPasses = 60;

    /// <summary>Cooling in air.</summary>
    public static readonly Citation HeatSource = Citation.Mechanics("cooling in air between the heat it comes out with and the end of forging");

    /// <summary>The passes, in order.</summary>
    public required IReadOnlyList<DrawingPass> Passes { get; init; }
    /// <summary>Length of the drawn part before, m.</summary>
    public required double LengthBefore { get; init; }
    /// <summary>Whether the wanted size was reached.</summary>
    public required bool Reached { get; init; }
    /// <summary>How long it may be worked in one heat at the end, by cooling in air alone, s.</summary>
    public required double Window { get; init; }
    /// <summary>Time under and between the dies, s.</summary>
    public required double Time { get; init; }

    /// <summary>All squeezes.</summary>
    public int Squeezes => Passes.Sum(p => p.Squeezes);
    /// <summary>Quarter turns between passes.</summary>
    public int Turns => Math.Max(0, Passes.Count - 1);
    /// <summary>Heats.</summary>
    public int Heats => Passes.Count == 0 ? 0 : Passes[^1].Heat;
    /// <summary>Length of the drawn part after, m.</summary>
    public double LengthAfter => Passes.Count == 0 ? LengthBefore : Passes[^1].Length;

    /// <summary>The schedule of a job.</summary>
    /// <param name="job">A job that is drawn out.</param>
    /// <param name="speedAt">Speed of the ram at a force, m/s.</param>
    /// <exception cref="ArgumentException">A job of a single squeeze.</exception>
    public static DrawingOut Of(RigHotSqueeze job, Func<double, double> speedAt)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(speedAt);
        if (job.DrawingOut is not { } plan)
            throw new ArgumentException("this job is a single squeeze", nameof(job));
        DrawingSchedule schedule = DrawingSchedule.Of(job);
        double T_0 = HotSqueezeDemand.AtTouch(job), T_1 = job.Steel.Coldest, time = 0, left = 0, window = 0;
        int heat = 0;
        var passes = new List<DrawingPass>();
        foreach (SchedulePass pass in schedule.Passes)
        {
            HotBite bite = pass.Bite;
            double h = bite.Height, w = bite.Width;
            double hot = Peak(bite, speedAt, T_0), cold = Peak(bite, speedAt, Math.Min(T_0, T_1));
            double speed = speedAt(hot), each = plan.Between + (speed > 0 ? bite.Travel / speed : 0);
            window = T_0 > T_1 ? BarCooling.Time(h * w / (2 * (h + w)), T_0, T_1, HotSurface.InTheWorkshop) : 0;
            for (int i = 0; i < pass.Squeezes; i++)
            {
                if (left < each)
                {
                    heat++;
                    left = window;
                }

                left -= each;
                time += each;
            }

            passes.Add(new DrawingPass(pass.Number, bite.Target, pass.Width, pass.Length, pass.Squeezes, hot, cold, heat));
        }

        return new DrawingOut { Passes = passes, LengthBefore = plan.Over, Reached = schedule.Reached, Window = window, Time = time };
    }

    private static double Peak(HotBite bite, Func<double, double> speedAt, double T) => Demand.Sampled(bite, speedAt, T, 10).Max(p => p.Force);
}
