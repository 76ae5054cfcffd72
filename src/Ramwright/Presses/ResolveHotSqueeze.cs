using Ramwright.Quantities;
using Ramwright.Stock;
using Ramwright.Workings;

namespace Ramwright.Presses;

/// <summary>Settles a hot squeeze.</summary>
internal static class ResolveHotSqueeze
{
    /// <summary>Height and width of a bar as it lies: flat, or on its narrow side.</summary>
    public static (double Height, double Width) Standing(Shape bar, bool onEdge) => bar switch
    {
        Flat flat => onEdge ? (Math.Max(flat.H, flat.T), Math.Min(flat.H, flat.T)) : (Math.Min(flat.H, flat.T), Math.Max(flat.H, flat.T)),
        Round round => (round.D, round.D),
        _ => throw new ArgumentException($"{bar.Name} is no bar"),
    };

    public static RigHotSqueeze Of(HotSqueeze said, Shape bar, string path, string name, RigFrame frame, Assumptions assume)
    {
        (double height, double width) = Standing(bar, said.OnEdge == true);
        bool onEnd = said.OnEnd == true;
        ForgingSteel steel = SmithRules.Settle(said.Steel, said.Carbon, path, assume);
        double along = assume.Or(said.Length, $"{path}.length", Math.Max(0.3, 4 * height), Dimension.Length, "a bar much longer than the dies are wide");
        double dieWidth = onEnd ? Math.Max(height, width) * 1.5
            : assume.Or(said.DieWidth, $"{path}.die-width", frame.DieWidth > 0 ? frame.DieWidth : 0.04, Dimension.Length,
                frame.DieWidth > 0 ? "the press's die-width" : new Remark("dies for drawing out are commonly {0} to {1} wide", Remark.Of(0.025, Dimension.Length), Remark.Of(0.05, Dimension.Length)));
        var job = new RigHotSqueeze
        {
            Name = name,
            Kind = ResolveJobs.KindOf(said),
            Path = path,
            Tools = said.Tools,
            Height = onEnd ? along : height,
            Width = width,
            Length = onEnd ? height : along,
            IsRound = bar is Round,
            OnEnd = onEnd,
            Steel = steel,
            Heat = assume.Or(said.Heat, $"{path}.heat", steel.Hottest - 50, Dimension.Temperature, $"50 °C (90 °F) below where {steel.Name} may begin: nobody heats it to the very edge"),
            Transfer = assume.Or(said.Transfer, $"{path}.transfer", 5, Dimension.Time, "out of the fire, across, and onto the die"),
            DieWidth = dieWidth,
            DieLength = said.DieLength ?? 2 * Math.Max(width, height),
            DieHeat = assume.Or(said.DieHeat, $"{path}.die-heat", 100, Dimension.Temperature, "dies that have been at work for a few heats"),
            Friction = assume.Or(said.Friction, $"{path}.friction", 0.4, Dimension.Number, "dry, scaled dies: 0.3 to 0.5 is common"),
            Lift = assume.Or(said.Lift, $"{path}.lift", 0.005, Dimension.Length, "just clear of the work"),
            InTheFire = assume.Or(said.InTheFire, $"{path}.in-the-fire", 180, Dimension.Time, "a small bar in a fire that is hot already"),
            TargetHeight = 0,
            Assumed = [],
        };
        RigDrawingOut? drawn = said.To is null ? null : DrawingOut(said, job, path, assume);
        double target = drawn is not null ? Math.Max(drawn.Height, job.Height * (1 - drawn.Reduction))
            : assume.Or(said.Height, $"{path}.height", job.Height / 2, Dimension.Length, "half the height it has");
        return job with { TargetHeight = target, DrawingOut = drawn, Assumed = assume.Made };
    }

    private static RigDrawingOut DrawingOut(HotSqueeze said, RigHotSqueeze job, string path, Assumptions assume)
    {
        // settled by ResolveJobs, which found it to be a bar
        (double h, double w) = said.To is { } text && SectionText.TryRead(text, Shelf.Empty, out Shape? to, out _) ? Standing(to, false) : (job.Height / 2, job.Width / 2);
        return new RigDrawingOut(
            h, w,
            assume.Or(said.Over, $"{path}.over", job.Length, Dimension.Length, "all of the bar"),
            assume.Or(said.Bite, $"{path}.bite", 0.85 * job.DieWidth, Dimension.Length, "0.8 to 0.9 of the dies' width, so that bites overlap"),
            assume.Or(said.Reduction, $"{path}.reduction", 0.2, Dimension.Ratio, "a fifth at a time keeps the bar from folding when it is turned"),
            said.QuarterTurns ?? true,
            assume.Or(said.Between, $"{path}.between", 3, Dimension.Time, "to open, move the bar on and close again"));
    }
}
