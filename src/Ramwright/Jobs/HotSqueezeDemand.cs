using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Stock;
using Ramwright.Workings;

namespace Ramwright.Jobs;

/// <summary>What a hot squeeze asks of the ram at a press's own speed.</summary>
public static class HotSqueezeDemand
{
    /// <summary>How far a temperature off by 25 °C and the formula itself shift the force, either way; a judgement.</summary>
    public const double Scatter = 0.2;

    /// <summary>Longest upset of an unsupported piece before it leans over, height over thickness; the rule says 3, practice this.</summary>
    public const double SafeSlenderness = 2.3;

    /// <summary>Share of the energy that reaches the steel by induction, of 400 to 450 kWh a tonne; trade pages.</summary>
    public const double Induction = 0.55;

    /// <summary>Share of the fuel's heat that reaches the steel in a small gas fire; from memory.</summary>
    public static readonly (double Low, double High) GasFire = (0.05, 0.15);

    /// <summary>Temperature at the first touch, °C: it has cooled in the air on its way.</summary>
    public static double AtTouch(RigHotSqueeze job)
    {
        ArgumentNullException.ThrowIfNull(job);
        return BarCooling.After(VolumeOverSurface(job), job.Heat, job.Transfer, HotSurface.InTheWorkshop);
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
    /// <param name="w">Where to write the working of its end down.</param>
    public static Demand Of(RigHotSqueeze job, Func<double, double> speedAt, Working? w = null)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(speedAt);
        HotBite likely = HotBite.Of(job);
        double T = AtTouch(job);
        IReadOnlyList<ForceAt> curve = Demand.Sampled(likely, speedAt, T);
        double low = Peak(likely with { Friction = Math.Min(job.Friction, 0.3), Edge = 0 }, speedAt, T) * (1 - Scatter);
        double high = Peak(likely with { Friction = 1, Edge = 1 }, speedAt, T) * (1 + Scatter);
        double peak = curve.Max(p => p.Force);
        if (w is not null)
        {
            w.Note($"Reckoned at the end of the {(job.DrawingOut is null ? "squeeze" : "first squeeze")}, at the speed the press has under that force.");
            likely.Force(likely.Travel, speedAt(curve[^1].Force), T, w);
        }

        BiteShape end = likely.At(likely.Travel);
        return new Demand
        {
            Resistance = likely,
            Temperature = T,
            WorkHeight = job.Height,
            Curve = curve,
            Peak = new Band(Math.Min(low, peak), peak, Math.Max(high, peak)),
            Spread = "friction from sliding to sticking, how freely it spreads, and 20 % for the formula and a heat guessed within 25 °C (45 °F)",
            Flags = Flags(job, likely, curve, speedAt, T),
            Facts = Facts(job, likely, end, T),
            Cautions = Cautions(job),
            Doing = Doing(job),
        };
    }

    private static string Doing(RigHotSqueeze job) => job.DrawingOut is not null ? "draw this bar out" : job.OnEnd ? "upset this piece" : "make this squeeze";

    private static double Peak(HotBite bite, Func<double, double> speedAt, double T) => Demand.Sampled(bite, speedAt, T, 20).Max(p => p.Force);

    private static List<Fact> Facts(RigHotSqueeze job, HotBite bite, BiteShape end, double T)
    {
        var facts = new List<Fact>
        {
            new("at the touch", T, Dimension.Temperature, $"after its way through the air{Seen(T)}"),
            new("height after", end.Height, Dimension.Length, job.DrawingOut is null ? "" : "after the first squeeze"),
            new("width after", end.Width, Dimension.Length, "by Tomlinson and Stringer's spread, give or take a tenth of the growth"),
        };
        if (job.OnEnd || bite.Whole)
            facts[^1] = facts[^1] with { Note = "without counting the barrel" };
        else
            facts.Add(new("longer", end.Lengthening, Dimension.Number, "times the length under the dies"));
        facts.Add(new("mean pressure", bite.Force(bite.Travel, 0, T) / Math.Max(end.IsDisc(bite), 1e-12), Dimension.Stress, "on the contact, at the slowest"));
        if (T > job.Steel.Coldest)
            facts.Add(new("time to work it", BarCooling.Time(VolumeOverSurface(job), T, job.Steel.Coldest, HotSurface.InTheWorkshop), Dimension.Time, $"in air, until {job.Steel.Name} is too cold to forge; cold dies take more"));
        facts.Add(Heating(job));
        return facts;
    }

    private static string Seen(double T) => HeatColour.At(T) is { Length: > 0 } colour ? $"; {colour} in dim light, and by eye 50 °C (90 °F) off is good" : "";

    /// <summary>What one heat of the whole piece takes, and what the fire burns for it.</summary>
    private static Fact Heating(RigHotSqueeze job)
    {
        double volume = job.Height * job.Width * job.Length * (job.IsRound ? Math.PI / 4 : 1);
        double heat = HotSteel.Density * volume * HotSteel.Enthalpy(Math.Clamp(job.Heat, HotSteel.Coldest, HotSteel.Hottest));
        return new Fact("heat it takes", heat, Dimension.Energy,
            new Remark("to bring all of it up from cold; about {0} by induction, {1} to {2} of fuel in a small gas fire",
                Remark.Of(heat / Induction, Dimension.Energy), Remark.Of(heat / GasFire.High, Dimension.Energy), Remark.Of(heat / GasFire.Low, Dimension.Energy)));
    }

    private static double IsDisc(this BiteShape at, HotBite bite) => bite.IsDisc ? Math.PI / 4 * at.Width * at.Width : at.Area;

    private static List<Remark> Flags(RigHotSqueeze job, HotBite bite, IReadOnlyList<ForceAt> curve, Func<double, double> speedAt, double T)
    {
        var flags = new List<Remark> { Standing(job, bite.Law, T) };
        ForceAt last = curve[^1];
        BiteShape end = bite.At(last.Travel);
        // where the press stalls there is no speed to speak of
        double v = speedAt(last.Force), rate = v > 0 ? v / end.Height : bite.Law.Range.Slowest;
        foreach (Remark outside in bite.Law.Range.Outside(end.Strain, rate, T))
            flags.Add(outside with { Words = $"{bite.Law.Name}'s formula for the flow stress: {outside.Words}; its value at that end is taken" });
        if (job.Steel.Alloy > 1)
            flags.Add(new Remark($"alloyed steel is taken as {job.Steel.Alloy:0.0#} times as hard as plain steel, which was measured on one chrome-molybdenum steel"));
        if (job.Heat > job.Steel.Hottest)
            flags.Add(new Remark("{0} is hotter than the {1} this steel may begin at: it may burn or crumble", Remark.Of(job.Heat, Dimension.Temperature), Remark.Of(job.Steel.Hottest, Dimension.Temperature)));
        if (T < job.Steel.Coldest)
            flags.Add(new Remark("it has cooled to {0} before the dies touch it, and forging ends at {1}: be quicker, or make it hotter", Remark.Of(T, Dimension.Temperature), Remark.Of(job.Steel.Coldest, Dimension.Temperature)));
        if (!bite.Whole && bite.Bite < 0.33 * job.Height)
            flags.Add(new Remark("a bite less than a third of the height works the skin only; the middle is pulled and may open"));
        if (job.OnEnd && job.Height > SafeSlenderness * job.Width)
            flags.Add(new Remark("so tall a piece is apt to lean over; 2.3 times its thickness is safe"));
        if (job.DrawingOut is not null)
            flags.Add("spread by Tomlinson and Stringer's coefficient, quoted from memory: reckon with a pair of passes more or less");
        if (!job.OnEnd && !bite.Whole && end.Width > 2.5 * end.Height && job.DrawingOut is not null)
            flags.Add(new Remark("squeezed so flat the bar folds when it is turned on edge: turn it before it is 2 to 2.5 times as wide as high"));
        return flags;
    }

    /// <summary>How well the flow stress is founded there: it was held against measured curves of a steel with 0.3 % carbon.</summary>
    internal static Remark Standing(ForgingSteel steel, FlowStress law, double T)
    {
        bool near = T is >= 1025 and <= 1275 && steel.Carbon is >= 0.0015 and <= 0.0045;
        string words = near
            ? $"flow stress by {law.Name}'s formula, quoted from memory; measured curves of a steel with 0.3 % carbon at {{0}} to {{1}} bear it out"
            : $"flow stress by {law.Name}'s formula, quoted from memory; it was held against measured curves at 0.3 % carbon and {{0}} to {{1}} only, and this is outside";
        return new Remark(words, Remark.Of(1050, Dimension.Temperature), Remark.Of(1250, Dimension.Temperature));
    }

    private static Remark Standing(RigHotSqueeze job, FlowStress law, double T) => Standing(job.Steel, law, T);

    private static List<string> Cautions(RigHotSqueeze job)
    {
        var cautions = new List<string>
        {
            "Hot work: nothing that burns near the press, hoses shielded from the bar and its scale, eyes and hands covered.",
            "A bar squeezed off the middle of the dies, or between dies out of parallel, is spat out. Hold it with tongs that fit, stand to the side.",
        };
        if (job.OnEnd)
            cautions.Add("A piece on its end that leans flies out. Both ends square; stop and straighten it the moment it leans.");
        return cautions;
    }
}
