using Ramwright.Presses;

namespace Ramwright.Jobs;

/// <summary>What a hot squeeze asks of the ram at a press's own speed.</summary>
public static class HotSqueezeDemand
{
    /// <summary>How far a temperature off by 25 °C and the formula itself shift the force, either way; a judgement.</summary>
    public const double Scatter = 0.2;

    /// <summary>Temperature at the first touch, °C: it has cooled in the air on its way.</summary>
    public static double AtTouch(RigHotSqueeze job)
    {
        ArgumentNullException.ThrowIfNull(job);
        return AirCooling.After(VolumeOverSurface(job), job.Heat, job.Transfer);
    }

    /// <summary>Volume over surface, m; ends count, and so does the long side of a flat bar.</summary>
    public static double VolumeOverSurface(RigHotSqueeze job)
    {
        ArgumentNullException.ThrowIfNull(job);
        double a = job.Width, b = job.OnEnd ? job.Length : job.Height, l = job.OnEnd ? job.Height : job.Length;
        return job.IsRound ? a * l / (4 * l + 2 * a) : a * b * l / (2 * (a * b + a * l + b * l));
    }

    /// <summary>The demand.</summary>
    /// <param name="job">The job.</param>
    /// <param name="speedAt">Speed of the ram at a force, m/s.</param>
    public static Demand Of(RigHotSqueeze job, Func<double, double> speedAt)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(speedAt);
        HotBite likely = HotBite.Of(job);
        double T = AtTouch(job);
        IReadOnlyList<ForceAt> curve = Demand.Sampled(likely, speedAt, T);
        double low = Peak(likely with { Friction = Math.Min(job.Friction, 0.3), Edge = 0 }, speedAt, T) * (1 - Scatter);
        double high = Peak(likely with { Friction = 1, Edge = 1 }, speedAt, T) * (1 + Scatter);
        double peak = curve.Max(p => p.Force);
        return new Demand
        {
            Curve = curve,
            Peak = new Band(Math.Min(low, peak), peak, Math.Max(high, peak)),
            Spread = "friction from sliding to sticking, how freely it spreads, and 20 % for the formula and a heat guessed within 25 °C",
            Flags = Flags(likely, curve, speedAt, T),
        };
    }

    private static double Peak(HotBite bite, Func<double, double> speedAt, double T) => Demand.Sampled(bite, speedAt, T, 20).Max(p => p.Force);

    private static List<Remark> Flags(HotBite bite, IReadOnlyList<ForceAt> curve, Func<double, double> speedAt, double T)
    {
        var flags = new List<Remark>();
        ForceAt last = curve[^1];
        BiteShape end = bite.At(last.Travel);
        foreach (Remark outside in bite.Law.Range.Outside(end.Strain, speedAt(last.Force) / end.Height, T))
            flags.Add(outside with { Words = $"{bite.Law.Name}'s formula for the flow stress: {outside.Words}; its value at that end is taken" });
        return flags;
    }
}
