using Ramwright.Fabrication.Welding;
using Ramwright.Presses;
using Ramwright.Quantities;

namespace Ramwright.Files.Dossier;

/// <summary>The weld plan: seams, heat, order, and what must be tested first.</summary>
public static class WeldChapter
{
    internal static Chapter Of(Papers p)
    {
        WeldPlan plan = p.Welds;
        if (plan.Lines.Count == 0 && plan.Open.Count == 0)
            return new Chapter("Weld plan", [new Prose("Nothing that carries the force is welded.")]);
        RigWelder w = plan.Welder;
        var blocks = new List<Block>
        {
            new Facts(
            [
                ("process", Process(w.Process), Said(p, "welding.process")),
                ("hydrogen of the filler", $"{Readout.Number(w.Hydrogen)} mL/100 g", $"scale {MethodA.Scale(w.Hydrogen)}{Said(p, "welding.hydrogen", "; ")}"),
                ("current, voltage", $"{Readout.Number(w.Amperes)} A, {Readout.Number(w.Volts)} V", Said(p, "welding.amperes")),
                ("steel before heating", p.T(w.SteelTemperature, Dimension.Temperature), Said(p, "welding.steel-temperature")),
                ("weld laid down", p.T(plan.Deposit, Dimension.Mass), $"{p.T(plan.Filler, Dimension.Mass)} of filler with stubs and spatter{(plan.Gas > 0 ? $"; {p.T(plan.Gas, Dimension.Volume)} of gas" : "")}"),
                ("time", Hours(plan.ArcTime), $"of burning arc; about {Hours(plan.WorkTime)} with cleaning and turning"),
                ("preheating", plan.HeatingTime > 0 ? Hours(plan.HeatingTime) : plan.AsksForTests ? "not known" : "none", plan.HeatingTime > 0 ? $"with a torch of {p.T(w.Torch, Dimension.Power)}, {Papers.Heat(plan.Fuel)} of gas; measure, do not guess" : plan.AsksForTests ? "the steel is tested first, as below" : ""),
            ]),
        };
        if (plan.Lines.Count > 0)
            Lines(p, plan, blocks);
        if (plan.Open.Count > 0)
        {
            blocks.Add(new Heading("Welds without a size in the file"));
            blocks.Add(new Items([.. plan.Open.Select(o => $"{o}: {Papers.Open}")]));
        }

        if (plan.AsksForTests)
        {
            blocks.Add(new Heading("Test first"));
            blocks.Add(new Items(SteelTests.Steps(p.Units), ItemMark.Number));
            blocks.Add(new Prose(SteelTests.Limit, Tone.Warn));
        }

        if (plan.Sequence.Count > 0)
        {
            blocks.Add(new Heading("In this order"));
            blocks.Add(new Items(plan.Sequence, ItemMark.Number));
        }

        blocks.Add(new Heading("Look out"));
        blocks.Add(new Items(Cautions));
        return new Chapter("Weld plan", blocks);
    }

    /// <summary>What every welder of a press must mind.</summary>
    private static readonly string[] Cautions =
    [
        "Never weld on a cylinder, a hose fitting, a tank that held oil, or anything under pressure. Take the cylinder out first: arc and return current spoil its seals and rod.",
        "Put the return clamp on the part that is welded, so that no current runs through bearings or hydraulics.",
        "Fumes of paint, zinc, chrome and oil are poisonous: clean to bright metal and keep air moving. Screen the arc from others' eyes.",
        "Hot steel looks like cold steel: mark it. Keep water or an extinguisher at hand and stay an hour after the last spark.",
        "Who welds what can hurt people should hold a certificate for it (ISO 9606-1); the sizes here count on sound welds.",
    ];

    private static void Lines(Papers p, WeldPlan plan, List<Block> blocks)
    {
        blocks.Add(new Heading("Seams"));
        blocks.Add(new Grid([new("seam", 2.7), new("where", 2.6), new("size", 2.2), new("length", 1.5, true), new("runs", 0.7, true), new("travel", 1.1, true), new("heat input", 1.3, true), new("filler", 1, true)],
            [.. plan.Lines.Select(l => (IReadOnlyList<string>)[l.Seam.Name, l.Seam.Where, Size(p, l.Seam), (l.Seam.Count > 1 ? $"{l.Seam.Count} × " : "") + p.T(l.Seam.Length, Dimension.Length),
                $"{l.Runs}", p.T(l.Travel, Dimension.Speed, 2), Heat(p, l.HeatInput), p.T(l.Filler, Dimension.Mass, 2)])]));
        blocks.Add(new Grid([new("seam", 2.2), new("steels", 2), new("CE", 0.7, true), new("CET", 0.7, true), new("Pcm", 0.7, true), new("thick; combined", 2.1, true), new("by B", 1, true), new("A: cold up to", 1.1, true), new("by table", 0.9, true), new("preheat", 1.1, true), new("t8/5", 0.8, true)],
            [.. plan.Lines.Select(l => (IReadOnlyList<string>)[l.Seam.Name, Steels(l.Seam), Percent(l.Preheating.Ce), Percent(l.Preheating.Cet), Percent(l.Preheating.Pcm),
                $"{p.T(l.Seam.Thicker, Dimension.Length, 2)}; {p.T(l.Seam.Combined, Dimension.Length, 3)}", l.Preheating.ByB is { } b ? (b < 20 ? "none" : p.T(b, Dimension.Temperature)) : "–",
                l.Preheating.ColdUpTo is { } cold ? p.T(cold / 1000, Dimension.Length) : "–", l.Preheating.ByThickness is { } table ? (table < 20 ? "none" : p.T(table, Dimension.Temperature)) : "–",
                l.Preheating.Temperature is { } t ? p.T(t, Dimension.Temperature) : l.Preheating.Advice == WeldAdvice.Weld ? "none" : "see below", l.CoolingTime is { } c ? $"{c:0.0} s" : "–"])])
        {
            Caption = "Heat",
        });
        blocks.Add(new Prose("CE, CET and Pcm in per cent, of the worse of the two steels. By B: EN 1011-2, method B. A: the table of method A, greatest combined thickness that needs no preheat. By table: AWS D1.1, least preheat by thickness. The most careful of the three is taken. t8/5: cooling from 800 to 500 °C at the preheat. Steel without an analysis counts with the worst composition that its standard allows.", Tone.Quiet));
        WeldingProcess process = plan.Welder.Process;
        string gas = WeldDeposit.Gas(process) > 0 ? $", {Readout.Number(WeldDeposit.Gas(process) * 60e3)} L/min of gas while the arc burns" : "";
        blocks.Add(new Prose($"Filler and time by common practice: a tenth of crown on every seam, {WeldDeposit.Efficiency(process) * 100:0} % of the filler ends in the seam, the arc burns {WeldDeposit.ArcShare(process) * 100:0} % of the time{gas}."
            + (plan.Counted.Count() < plan.Lines.Count ? " Seams that must not be welded are not in the sums." : ""), Tone.Quiet));
        foreach (WeldLine line in plan.Lines)
            One(p, line, blocks);
    }

    private static void One(Papers p, WeldLine line, List<Block> blocks)
    {
        blocks.Add(new Heading(line.Seam.Name, 3));
        blocks.Add(new Prose(Advice(p, line), line.Preheating.Advice is WeldAdvice.TestFirst or WeldAdvice.DoNotWeld ? Tone.Warn : Tone.Plain));
        if (line.Notes.Count > 0)
            blocks.Add(new Items([.. line.Notes.Select(n => char.ToUpperInvariant(n[0]) + n[1..] + ".")]));
    }

    /// <summary>What to do about a seam, with its heat, in the reader's units.</summary>
    public static string Advice(Papers p, WeldLine line)
    {
        string advice = line.Preheating.Why;
        if (line.Preheating.Temperature is { } t)
        {
            advice = $"Heat to {p.T(t, Dimension.Temperature)} and keep it there until the last run; between runs never above {p.T(Preheating.MostBetweenRuns, Dimension.Temperature)}. "
                + $"Take the temperature {p.T(HeatUp.MeasureAt(line.Seam.Thicker), Dimension.Length)} beside the seam, {p.T(HeatUp.WaitFor(line.Seam.Thicker), Dimension.Time, 2)} after the flame is off (EN ISO 13916).";
            if (line.HeatUp is { } heat)
                advice += $" At each place about {p.T(heat.Mass, Dimension.Mass, 2)} of steel take {Papers.Heat(heat.Heat)} and lose {Papers.Heat(heat.Lost)} to the air meanwhile: {Hours(heat.Time)} with this torch, {Papers.Heat(heat.Fuel)} of gas.";
        }

        if (line.Preheating.Trial is { } trial)
            advice += $" For a trial piece only: begin at {p.T(trial, Dimension.Temperature)}, low-hydrogen filler, cool in dry sand or ash.";
        return advice;
    }

    /// <summary>Size of a seam as it is said.</summary>
    public static string Size(Papers p, Seam seam) => seam.Kind == WeldKind.Fillet
        ? $"fillet, leg {p.T(seam.Leg, Dimension.Length, 2)}, throat {p.T(seam.Throat, Dimension.Length, 2)}"
        : $"butt through {p.T(seam.Throat, Dimension.Length, 2)}: {seam.Preparation.Text(p.Units)}";

    /// <summary>Heat input in the reader's units.</summary>
    public static string Heat(Papers p, double kJmm) => HeatInput.Text(kJmm, p.Units);

    /// <summary>The process in words.</summary>
    public static string Process(WeldingProcess process) => process switch
    {
        WeldingProcess.Stick => "stick, rutile or cellulosic",
        WeldingProcess.LowHydrogenStick => "stick, basic low-hydrogen",
        WeldingProcess.Wire => "solid wire under gas",
        WeldingProcess.CoredWire => "flux-cored wire",
        _ => "tungsten arc under inert gas",
    };

    /// <summary>A time as people say it.</summary>
    public static string Hours(double s) => s < 90 ? $"{s:0} s" : s < 5400 ? $"{s / 60:0} min" : $"{s / 3600:0.0} h";

    private static string Steels(Seam seam) => seam.Standing.Steel.Name == seam.Through.Steel.Name ? seam.Standing.Steel.Name : $"{seam.Standing.Steel.Name} on {seam.Through.Steel.Name}";

    private static string Percent(double? value) => value is { } v ? v.ToString("0.00", System.Globalization.CultureInfo.InvariantCulture) : "–";

    private static string Said(Papers p, string key, string before = "") =>
        p.Rig.Welding.Assumed.FirstOrDefault(a => a.What == key) is { } assumed ? $"{before}assumed: {assumed.Why.Text(p.Units)}" : "";
}
