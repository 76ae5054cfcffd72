using Ramwright.Ladders;
using Ramwright.Power;
using Ramwright.Quantities;

namespace Ramwright.Files.Dossier;

/// <summary>What the press really does, and what gives first.</summary>
internal static class RatingChapter
{
    public static Chapter Of(Papers p)
    {
        PressCheck check = p.Check;
        PowerReport power = check.Power;
        var blocks = new List<Block>
        {
            new Facts(
            [
                ("wanted", p.F(p.Rig.Wanted), "what you ask of it"),
                ("safe to", p.F(check.Ladder.SafeRating), $"lowest rung: {check.Ladder.Governing.Part} {check.Ladder.Governing.Mode}"),
                ("true force", p.F(power.TrueForce), $"at {p.T(power.TruePressure, Dimension.Pressure)}; {power.TrueForceLimitedBy}"),
                ("most possible", p.F(power.MostPossibleForce), power.MostPossibleLimitedBy),
                ("approach", p.T(power.ApproachSpeed, Dimension.Speed), "no load"),
                ("return", power.ReturnSpeed is { } back ? p.T(back, Dimension.Speed) : "not known", ""),
                ("full stroke", p.T(power.Times.FullStroke, Dimension.Time), p.T(p.Rig.Cylinder.Stroke, Dimension.Length) + ", no load"),
                ("daylight grows", p.T(check.DaylightGrowth, Dimension.Length), "at the wanted force"),
                ("dies open", p.T(check.Opening, Dimension.Slope), $"at the wanted force, {check.Response.Solutions[check.WorstOpening.Case].Case.Name}"),
            ]),
            new Heading("The ladder"),
            new Prose("Every limit as ram force, the lowest first. The lowest rung is what the press is safe to; what it gives at is without any factor. Where nothing stands under load, the load is centred.", Tone.Quiet),
            Ladder(p),
            new Heading("When it fails with the ram up"),
            new Items([.. check.PowerFailing.Select(f => $"{f.Lost}: {f.What.Text(p.Units)}.{(f.Missing.Count == 0 ? "" : " Missing: " + string.Join("; ", f.Missing) + ".")}")]),
            new Heading("Cautions"),
            new Items(check.Cautions(p.Units)),
        };
        return new Chapter("Rating and ladder", blocks);
    }

    private static Grid Ladder(Papers p)
    {
        Unit unit = Readout.UnitFor(Dimension.Force, p.Units);
        string Force(double newtons) => Readout.Number(unit.FromSi(newtons));
        var rows = new List<IReadOnlyList<string>>();
        var heavy = new HashSet<int>();
        (double Force, string Name)[] lines = [.. ((double, string)[])[(p.Rig.Wanted, "wanted"), (p.Check.Power.MostPossibleForce, "most possible")]];
        int next = 0;
        lines = [.. lines.OrderBy(l => l.Force)];
        foreach (Rung rung in p.Check.Ladder.Rungs)
        {
            while (next < lines.Length && rung.SafeTo >= lines[next].Force * (1 - 1e-9))
                Line(lines[next++]);
            rows.Add([Force(rung.SafeTo), Force(rung.GivesAt), rung.Factor?.ToString("0.00", System.Globalization.CultureInfo.InvariantCulture) ?? "–", rung.Part, rung.Brief, rung.Load]);
        }

        while (next < lines.Length)
            Line(lines[next++]);
        return new Grid([new($"safe to, {unit.Symbol}", 1.2, true), new($"gives at, {unit.Symbol}", 1.2, true), new("by", 0.7, true), new("part", 3.4), new("how it gives", 3.5), new("load", 2.5)], rows) { Heavy = heavy };

        void Line((double Force, string Name) line)
        {
            heavy.Add(rows.Count);
            rows.Add([Force(line.Force), "", "", $"— {line.Name} —", "", ""]);
        }
    }
}
