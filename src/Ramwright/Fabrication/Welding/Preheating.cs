using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Fabrication.Welding;

/// <summary>How warm the steel of a seam must be, or why that cannot be told.</summary>
/// <param name="Advice">What to do.</param>
/// <param name="Why">In a sentence.</param>
public sealed record Preheating(WeldAdvice Advice, string Why)
{
    /// <summary>Carbon equivalent CE of the worse steel, %; null where nothing is known.</summary>
    public double? Ce { get; init; }
    /// <summary>Carbon equivalent CET of the worse steel, %.</summary>
    public double? Cet { get; init; }
    /// <summary>Cracking parameter P_cm of the worse steel, %.</summary>
    public double? Pcm { get; init; }
    /// <summary>What method B gives, °C; null where it does not apply.</summary>
    public double? ByB { get; init; }
    /// <summary>Greatest combined thickness that method A's table lets through cold, mm; null outside the table.</summary>
    public double? ColdUpTo { get; init; }
    /// <summary>What the American table by thickness asks for, °C; null where it has no group for a steel.</summary>
    public double? ByThickness { get; init; }
    /// <summary>Temperature to heat to, °C, rounded up to tens; null where none is needed or none can be named.</summary>
    public double? Temperature { get; init; }
    /// <summary>What to begin a trial joint with, °C, for steel that must not be welded otherwise; null for all else.</summary>
    public double? Trial { get; init; }
    /// <summary>How values at the edge of a range were taken, and where two methods differ.</summary>
    public IReadOnlyList<string> Remarks { get; init; } = [];

    /// <summary>Least temperature of steel to weld on without preheat, °C.</summary>
    public const double Least = 5;
    /// <summary>Hand-hot: what is taken where the first method asks for preheat and the second for none, °C; common practice.</summary>
    public const double HandHot = 50;
    /// <summary>Most between runs for the steels that this plan welds, °C; common practice.</summary>
    public const double MostBetweenRuns = 250;

    /// <summary>Preheat of a seam between two steels.</summary>
    /// <param name="seam">The seam.</param>
    /// <param name="HD">Hydrogen, ml/100 g.</param>
    /// <param name="Q">Heat input, kJ/mm.</param>
    /// <param name="process">The process.</param>
    /// <param name="units">Units of what it says.</param>
    /// <param name="w">Where to write it down.</param>
    public static Preheating Of(Seam seam, double HD, double Q, WeldingProcess process, UnitSystem units = UnitSystem.Metric, Working? w = null)
    {
        ArgumentNullException.ThrowIfNull(seam);
        KnownSteel[] both = [seam.Standing, seam.Through];
        if (Array.Find(both, s => !s.Weldable) is { } bad)
            return Unweldable(bad, both.FirstOrDefault(s => !s.Weldable && !s.MayTurnOutWell) ?? bad, w);
        foreach (KnownSteel steel in both)
        {
            if (MethodB.Beyond(steel.Composition!) is { } beyond)
                return new Preheating(WeldAdvice.DoNotWeld, $"The steel of the {steel.Part} has {beyond}: no method used here reaches so far. A welding engineer may find a procedure; else bolt it.");
        }

        if (HD > MethodB.HydrogenRange.UpTo)
            return new Preheating(WeldAdvice.TestFirst, $"A filler with {HD:0.#} mL of hydrogen in 100 g is outside every method. Take a drier one.");
        var remarks = new List<string>();
        if (Q < MethodB.HeatRange.From)
            remarks.Add($"the runs bring {HeatInput.Text(Q, units)}, less than method B was made for: it is taken at {HeatInput.Text(MethodB.HeatRange.From, units)}; lay fuller runs");
        KnownSteel worse = CarbonEquivalent.Cet(both[1].Composition!) > CarbonEquivalent.Cet(both[0].Composition!) ? both[1] : both[0];
        return Reckoned(seam, worse, both, HD, Q, process, units, remarks, w);
    }

    private static Preheating Reckoned(Seam seam, KnownSteel worse, KnownSteel[] both, double HD, double Q, WeldingProcess process, UnitSystem units, List<string> remarks, Working? w)
    {
        string C(double celsius) => Readout.Text(celsius, Dimension.Temperature, units);
        string Mm(double mm) => Readout.Text(mm / 1000, Dimension.Length, units);
        w?.Note(Known(worse));
        double cet = CarbonEquivalent.Cet(worse.Composition!, w), ce = both.Max(s => CarbonEquivalent.Iiw(s.Composition!)), pcm = CarbonEquivalent.Pcm(worse.Composition!, w);
        if (w is not null)
            CarbonEquivalent.Iiw(worse.Composition!, w);
        if (cet > MethodB.CetRange.UpTo)
            return new Preheating(WeldAdvice.DoNotWeld, $"CET {cet:0.00} % is beyond what method B holds for (0.50 %).") { Ce = ce, Cet = cet, Pcm = pcm };
        double d = 1000 * seam.Thicker;
        if (d > MethodB.ThicknessRange.UpTo)
            return new Preheating(WeldAdvice.TestFirst, $"{Mm(d)} is thicker than method B holds for ({Mm(MethodB.ThicknessRange.UpTo)}): this wants a welding engineer and a procedure.") { Ce = ce, Cet = cet, Pcm = pcm };

        // at the lower ends the held value asks for more preheat than the true one would
        double Held(double value, double least, string what)
        {
            if (value >= least)
                return value;
            remarks.Add($"{what} lies under the range of method B; taken at its end, which is on the safe side");
            return least;
        }

        double atCet = Held(cet, MethodB.CetRange.From, "CET"), atD = Held(d, MethodB.ThicknessRange.From, "the thickness"), atHd = Held(HD, MethodB.HydrogenRange.From, "hydrogen");
        double atQ = Math.Clamp(Q, MethodB.HeatRange.From, MethodB.HeatRange.UpTo);
        double B = MethodB.Preheat(atCet, atD, atHd, atQ, w);
        double combined = 1000 * seam.Combined;
        double? cold = MethodA.WithoutPreheat(ce, HD, Q);
        bool wantsA = cold is { } most && combined > most;
        double T = B >= 20 ? B : wantsA ? HandHot : 0;
        if (wantsA && B < HandHot)
        {
            remarks.Add($"method A's table lets {Mm(cold!.Value)} of combined thickness through cold and this is {Mm(combined)}, method B asks for {(B < 20 ? "no preheat" : C(B))}: the more careful is taken, at least {C(HandHot)}");
            T = Math.Max(T, HandHot);
        }
        else if (cold is null)
            remarks.Add(Q < 1 ? $"method A's table begins at {HeatInput.Text(1, units)}: no cross-check by it" : "method A's table ends at CE 0.49 %: no cross-check by it");
        else if (!wantsA && B >= 20)
            remarks.Add($"method A's table would let {Mm(cold.Value)} of combined thickness through cold and this is {Mm(combined)}; method B is followed, for it knows the composition closer");

        double? table = ThicknessTable.Of(seam, process);
        if (table >= 20)
        {
            w?.Take("T_D1.1", "least preheat by thickness alone", table.Value, Dimension.Temperature, ThicknessTable.Source);
            if (table > T)
            {
                remarks.Add($"the American table by thickness asks for {C(table.Value)}, method B for {(B < 20 ? "no preheat" : C(B))}: the more careful is taken");
                T = table.Value;
            }
        }

        if (process == WeldingProcess.Stick && !ThicknessTable.AllowsAnyRod(seam))
            remarks.Add("the American table lets steel of this strength be welded only with low-hydrogen rods or wire: take those");
        double? set = T > 0 ? Math.Ceiling(T / 10 - 1e-9) * 10 : null;
        return new Preheating(set is null ? WeldAdvice.Weld : WeldAdvice.Preheat,
            set is { } warm ? $"Heat to {C(warm)} and keep it there until the last run." : $"No preheat. Dry, clean, and not colder than {C(Least)}.")
        {
            Ce = ce,
            Cet = cet,
            Pcm = pcm,
            ByB = B,
            ColdUpTo = cold,
            ByThickness = table,
            Temperature = set,
            Remarks = remarks,
        };
    }

    private static string Known(KnownSteel steel) => steel.Analysed
        ? $"The worse of the two steels is {steel.Steel.Name} of the {steel.Part}, by its analysis."
        : $"The worse of the two steels is {steel.Steel.Name} of the {steel.Part}. It was not analysed: taken is the worst composition that {steel.From} allows. A mill certificate usually says better.";

    private static Preheating Unweldable(KnownSteel any, KnownSteel worst, Working? w)
    {
        if (worst.Composition is { } s)
        {
            double T = Seferian.Preheat(s, 1000 * worst.Thickness, w);
            CarbonEquivalent.MartensiteStart(s, w);
            return new Preheating(WeldAdvice.DoNotWeld,
                $"{worst.Steel.Name} of the {worst.Part} has up to {s.C:0.00} % of carbon: the zone beside the weld turns hard and cracks, and heat takes its strength away. Bolt it or pin it. A procedure by a welding engineer may allow more.")
            {
                Ce = CarbonEquivalent.Iiw(s, w),
                Cet = CarbonEquivalent.Cet(s, w),
                Pcm = CarbonEquivalent.Pcm(s, w),
                Trial = Math.Ceiling(T / 10) * 10,
            };
        }

        return worst.MayTurnOutWell
            ? new Preheating(WeldAdvice.TestFirst,
                $"What the steel of the {worst.Part} ({worst.Steel.Name}) is made of is not known, so no preheat can be named. Test it first, by the weld plan's own list, before it carries load; or have it analysed and say so under welding.analyses.")
            : new Preheating(WeldAdvice.DoNotWeld,
                $"The {worst.Part} is {worst.Steel.Name}, steel that hardens or cracks beside a weld. Do not weld it into the path of the force: bolt it, pin it, or use it for a trial only.");
    }
}
