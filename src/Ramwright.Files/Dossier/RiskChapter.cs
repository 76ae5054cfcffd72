using Ramwright.Ladders;
using Ramwright.Power;
using Ramwright.Presses;
using Ramwright.Quantities;

namespace Ramwright.Files.Dossier;

/// <summary>Notes on risk in the order of ISO 12100: limits of the machine, hazards, what the design does, what is left to the builder.</summary>
internal static class RiskChapter
{
    public static Chapter Of(Papers p) => new("Risk notes",
    [
        new Prose("In the order of ISO 12100. They are notes for the builder's own assessment, with this press's numbers; they are not that assessment, and nothing here says that the press complies with any standard or law. Who may use it, and what law asks for, depends on where and for whom it works.", Tone.Warn),
        new Heading("1  Limits of the machine (5.3)"),
        new Facts(Limits(p)),
        new Heading("2  Hazards, and what is done about them (5.4 to 6.4)"),
        new Prose("For each: what this press can do, what its design has against it, and what is left. Tick what is done; write beside it what you did.", Tone.Quiet),
        new Grid([new("hazard", 1.7), new("with this press", 3), new("what the design has", 2.6), new("what the builder still must do", 3.4), new("done", 0.6)], Hazards(p)) { Ruled = true },
        new Heading("3  What is left when all that is done"),
        new Prose("Write down what remains, for whom, and why it is borne. A second pair of eyes helps: have someone who did not build it read this page at the press."),
        new Grid([new("what remains", 6), new("for whom", 2), new("why it is borne", 4)], [.. Enumerable.Range(0, 5).Select(_ => (IReadOnlyList<string>)["", "", ""])]) { Ruled = true },
    ]);

    private static List<(string, string, string)> Limits(Papers p)
    {
        RigLoading loading = p.Rig.Loading;
        string jobs = p.Rig.Jobs.Count > 0 ? string.Join("; ", p.Rig.Jobs.Select(j => j.Name)) : Papers.Open;
        return
        [
            ("meant for", jobs, "the jobs of the press file"),
            ("not meant for", Papers.Open, "say what it must not be used for, such as lifting, or people other than its builder"),
            ("greatest force", p.F(Math.Min(p.Check.Ladder.SafeRating, p.Check.Power.MostPossibleForce)), "what it is safe to and can give"),
            ("work off centre", $"{p.T(loading.Across, Dimension.Length)} aside, {p.T(loading.Deep, Dimension.Length)} front or back", "at most"),
            ("opening and stroke", $"{p.T(p.Rig.Frame.Daylight, Dimension.Length)}; {p.T(p.Rig.Cylinder.Stroke, Dimension.Length)}", ""),
            ("squeezes", Readout.Number(loading.Squeezes), "at the wanted force, before it is looked over for cracks or taken out of use"),
            ("who uses it", Papers.Open, "by name; nobody else, and one at a time"),
            ("where it stands", Papers.Open, "indoors, dry, on a floor that carries it, bolted down"),
        ];
    }

    private static List<IReadOnlyList<string>> Hazards(Papers p)
    {
        PressCheck check = p.Check;
        SnapThrough snap = check.SnapThrough;
        PowerReport power = check.Power;
        string gone = string.Join("; ", check.PowerFailing.Select(f => $"{f.Lost}: {f.What.Text(p.Units)}"));
        string relief = p.Rig.Pump.Relief is { } r ? $"relief valve at {p.T(r, Dimension.Pressure)}" : "no relief valve in the file";
        bool holds = check.AgainstMostPossible == Verdict.Holds;
        var rows = new List<IReadOnlyList<string>>
        {
            Row("crushing between dies", $"closes at up to {p.T(power.ApproachSpeed, Dimension.Speed)}, with up to {p.F(power.MostPossibleForce)}", Handle(p.Rig.Valves), "Hold-to-run control that cannot be tied back; tongs and rests so that no hand is needed under the ram; one operator; guard or slow closing (EN ISO 16092-3 as guidance)."),
            Row("work or tool thrown out", $"{p.T(snap.Energy, Dimension.Energy, 2)} stored at full force; {(p.Units == UnitSystem.Imperial ? $"a loose pound could leave at {Speed(p, snap.SpeedOf(0.45359237))}" : $"a loose kilogram could leave at {Speed(p, snap.SpeedOf(1))}")}", $"off-centre limit {p.T(p.Rig.Loading.Across, Dimension.Length)}; gauge chart", "Shields front and back that stop it; stand aside; never glass-hard or cracked parts; nothing stacked; centre the work."),
            Row("frame or joint breaks", holds ? $"safe to more than the pump's most, {p.F(power.MostPossibleForce)}" : $"the pump can give {p.F(power.MostPossibleForce)}, more than the press is safe to", $"ladder of {check.Ladder.Rungs.Count} limits with factors; {relief}", holds ? "Weld and bolt as planned; prove it; look for cracks as often as the ladder says." : "Limit the pressure as the cautions say, or strengthen it, before first use. Then weld, bolt and prove as planned."),
            Row("over-pressure", $"the pump's most is {p.T(power.MostPossiblePressure, Dimension.Pressure)}", relief, p.Rig.Pump.Relief is null ? "Fit and seal a relief valve; a gauge in sight of whoever works it." : "Set it on a gauge, seal it; a gauge in sight of whoever works it; both sides of a double-acting cylinder covered."),
            Row("oil through the skin", $"up to {p.T(power.MostPossiblePressure, Dimension.Pressure)}; skin is pierced from about {p.T(7e5, Dimension.Pressure)}", "hose ratings are rungs of the ladder", "Look for leaks with card, never a hand; sleeves or shields on hoses near people; anyone hit goes to hospital at once and says: high-pressure injection."),
            Row("hose bursts or whips", $"{p.Rig.Lines.Count} lines in the file", p.Rig.Valves.HoseBurst == true ? "hose-burst valve in the cylinder's port" : "no hose-burst valve in the file", "Tie hoses at both ends; replace by date and on any bulge; never repair."),
            Row("ram comes down by itself", gone, Holding(p.Rig.Valves), "A prop that carries the ram's weight before hands go under; drift watched in the proof test."),
            Row("press falls over", $"{p.T(p.Parts.Mass, Dimension.Mass)} of listed parts, top-heavy", "foot plates and lifting point in the cut list", "Bolt it down before first use; lift from above its centre of gravity; nobody beside it while it moves."),
        };
        if (p.Rig.Jobs.Any(j => j is RigHotSqueeze or RigClosedDie))
            rows.Add(Row("burns and fire", "hot steel and scale beside oil", "", "No hose in sight of the fire; steel shield over pump and hoses; extinguisher and the way out on the far side from the fire; leather, face shield; no oil mist."));
        if (p.Rig.Pump is RigElectricPack pack)
            rows.Add(Row("electric shock", $"motor of {p.T(pack.Motor, Dimension.Power)}", "", "Wiring, earth, overload and emergency stop by an electrician and to local code; a switch that does not start again by itself when power comes back."));
        if (p.Rig.Pump is RigAirPump)
            rows.Add(Row("noise and air", "the pump exhausts in bursts; a receiver under pressure", "", "Silencer on the exhaust; ear protection where it is above 85 dB(A); receiver with its own valve, tested as the law asks."));
        rows.Add(Row("strain", $"dies and work are lifted by hand{(p.Rig.Cylinder.MovingMass is { } m ? $"; {p.T(m, Dimension.Mass)} hangs on the ram" : "")}", "", $"Hoist or table for what is over {(p.Units == UnitSystem.Imperial ? "50 lb" : "25 kg")}; work height that spares the back; light on the dies."));
        rows.Add(Row("wrong use", "the force cannot be felt", "rating plate and gauge chart", "Hang both at the press with these notes; show each user; lock it against others."));
        return rows;
    }

    private static IReadOnlyList<string> Row(string hazard, string here, string has, string must) => [hazard, here, has.Length > 0 ? has : "nothing in the file", must, ""];

    private static string Speed(Papers p, double ms) => Units.TryFind(p.Units == UnitSystem.Imperial ? "ft/s" : "m/s", Dimension.Speed, out Unit? unit) ? Readout.Text(ms, unit, 2) : p.T(ms, Dimension.Speed, 2);

    private static string Handle(Valves valves) => valves.Handle switch
    {
        SpoolHandle.SpringCentred => "the lever springs back to its middle",
        SpoolHandle.Detent => "the lever stays where it is put: the ram goes on by itself",
        _ => "what the lever does when it is let go: " + Papers.Open,
    };

    private static string Holding(Valves valves) => valves.Holding switch
    {
        HoldingValve.PilotCheck => "pilot-operated check valve",
        HoldingValve.Counterbalance => "counterbalance valve",
        HoldingValve.None => "none",
        _ => "holding valve: " + Papers.Open,
    };
}
