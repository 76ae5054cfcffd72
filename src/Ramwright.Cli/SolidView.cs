using Ramwright.Geometry;
using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Solids;
using Ramwright.Strength;
using Ramwright.Workings;
using Spectre.Console;

namespace Ramwright.Cli;

/// <summary>A solid check on a terminal: opening beside the beams', the weakest place, stress at welds, how far to trust it.</summary>
internal static class SolidView
{
    public static void Show(SolidCheck solid, Rig rig, UnitSystem units, string? vtu, string? joints, (Vector From, Vector To)? line, IAnsiConsole screen)
    {
        double force = rig.Wanted;
        string Length(double m) => Readout.Text(m, Dimension.Length, units);
        string Stress(double pa) => Readout.Text(pa, Dimension.Stress, units);
        screen.Heading("As solid steel", $" {rig.Name}");
        screen.WriteLine();
        foreach (SolidCaseAnswer answer in solid.Cases)
        {
            screen.Heading($"Work {(answer.Case == SolidCase.Centred ? "in the middle" : answer.Case.Name)}, at the wanted {Force.Text(force, units)}");
            int beam = Beam(solid, answer.Case.Name);
            double byBeams = beam < 0 ? 0 : solid.Beams.Growth(beam);
            screen.Fact("daylight grows", Length(answer.Opening * force),
                $"±{Readout.Text(answer.GridError ?? 0, Dimension.Ratio, units)} from the grid" + (beam < 0 ? "" : $"; by beams {Length(byBeams * force)}, {Off(byBeams / answer.Opening - 1)}"));
            if (beam >= 0 && solid.BeamsOnSprings is { } onSprings)
                screen.Fact("by beams", Length(onSprings.Growth(beam) * force), $"on springs from solids of the joints themselves, {Off(onSprings.Growth(beam) / answer.Opening - 1)}");
            if (beam >= 0 && (answer.Case != SolidCase.Centred || solid.Solid.Turning == 1))
                screen.Fact("dies open", Readout.Text(answer.Turn * force, Dimension.Slope, units), $"by beams {Readout.Text(solid.Beams.Opening(beam) * force, Dimension.Slope, units)}");
            if (answer.Weakest is { } weakest)
            {
                screen.Fact("weakest place", weakest.Part,
                    $"{Length(weakest.At.X)} across, {Length(weakest.At.Y)} deep, {Length(weakest.At.Z)} up: {Stress(weakest.Carried * force)} of {Stress(weakest.Yield)}, carried to the surface over half the wall");
                string grids = answer.CoarseWeakest is { } coarser ? $"{Force.Text(coarser.GivesAt, units)} by the coarser grid" : "";
                screen.Fact("yields there at", Force.Text(weakest.GivesAt, units),
                    grids + (weakest.IsSharp ? $"; a sharp corner: its peak, {Stress(weakest.Peak * force)} here, grows without end as cells shrink" : ""));
            }

            screen.WriteLine();
            if (answer.HotSpots.Count > 0)
                HotSpots(answer.HotSpots, force, units, screen);
            if (line is { } chosen)
                Along(answer, chosen, force, units, screen);
        }

        if (HotSpotFatigue.Least(solid, force, new FatigueFactors(rig.Factors.Fatigue, rig.Factors.FatigueLoad)) is var (spot, squeezes))
        {
            string wanted = $"wanted are {rig.Loading.Squeezes.ToString("#,0", System.Globalization.CultureInfo.InvariantCulture)}";
            if (squeezes > 0)
                screen.Fact("squeezes", Rounded(squeezes).ToString("#,0", System.Globalization.CultureInfo.InvariantCulture), $"that the toe of {spot.Toe.Name} stands, factors counted; {wanted}");
            else
                screen.Fact("squeezes", "none to count on", $"the range at the toe of {spot.Toe.Name}, factors counted, is more than one and a half times yield; {wanted}");
            screen.WriteLine();
        }

        screen.Heading("How far to trust it");
        SolidCaseAnswer centred = solid.Centred;
        if (centred.Coarse is { } coarse)
            screen.Bullet("-", $"Two grids: {Length(coarse.Opening * force)} with {coarse.Unknowns:N0} unknowns, {Length(centred.Fine.Opening * force)} with {centred.Fine.Unknowns:N0}; "
                + "shown is what ever finer ones would come to.");
        if (solid.Cases.Any(c => c.HotSpots.Count > 0))
            screen.Bullet("-", HotSpot.Worth);
        foreach (SolidCaseAnswer answer in solid.Cases)
            screen.Bullet("-", $"{Capital(answer.Case.Name)}: {answer.Solution.Convergence.Iterations} turns, error in energy {answer.Solution.Convergence.Error:0.0E+0}; "
                + $"the stress in a level cut between the dies adds up to {answer.Through:0.0000} of the ram's force.");
        if (solid.Cases.Count > 1)
            screen.Bullet("-", "Work off centre presses where it stands as far as there is steel under the die, else on the die's middle with the moment that its offset makes; the daylight is that of the dies' middles, the opening that of the whole sections behind them.");
        if (solid.SpringsMissing is { } missing)
            screen.Bullet("-", $"The joints' springs could not be found from solids of the joints by themselves: {missing.Text(units)}.");
        foreach (string note in solid.Solid.Notes.Select(n => n.Text(units)).Concat(HotSpot.Unread(solid)))
            screen.Bullet("-", note);
        screen.Bullet("-", "Elastic, small movements, sound welds, no residual stress, no play, own weight left out.");
        screen.Bullet("!", "A picture of forces, not a certificate. Prove the press before you stand beside it; where people could be hurt, have a licensed engineer look.");
        if (joints is not null && solid.Springs is { } kept)
            screen.WriteLine($"{joints} is written: every command takes the joints' springs from it"
                + (kept.Upper.Toes.Count + kept.Lower.Toes.Count > 0 ? ", and the ladder has rungs for the hot spots at their welds." : "."));
        if (vtu is not null)
            screen.WriteLine($"{vtu} is written: the finer grid with its movement and stress for one newton at the ram.");
    }

    private static void HotSpots(IReadOnlyList<HotSpot> spots, double force, UnitSystem units, IAnsiConsole screen)
    {
        string Stress(double pa) => Readout.Text(pa, Dimension.Stress, units);
        screen.Heading("Stress at the toes of welds, carried on from places before them");
        foreach (HotSpot spot in spots.Take(6))
            screen.Fact(Stress(spot.Stress * force), spot.Toe.Name,
                $"{string.Join(", ", spot.Read.Select((s, i) => $"{Stress(s * force)} at {spot.Toe.Reading.Name(i, units)}"))}, {spot.Toe.Reading.On}");
        screen.WriteLine();
    }

    private static void Along(SolidCaseAnswer answer, (Vector From, Vector To) line, double force, UnitSystem units, IAnsiConsole screen)
    {
        screen.Heading("Stress along the line: equivalent, and along it, pull positive");
        foreach (StressPoint p in StressLine.Of(answer.Solution, line.From, line.To, 11))
            screen.Fact(Readout.Text(p.Along, Dimension.Length, units), p.Part ?? "no steel",
                p.Part is null ? "" : $"{Readout.Text(p.Equivalent * force, Dimension.Stress, units)}, {Readout.Text(p.Pull * force, Dimension.Stress, units)}");
        screen.WriteLine();
    }

    private static int Beam(SolidCheck solid, string name)
    {
        for (int i = 0; i < solid.Beams.Solutions.Count; i++)
            if (solid.Beams.Solutions[i].Case.Name == name)
                return i;
        return -1;
    }

    private static string Off(double share) => $"{Math.Abs(share) * 100:0.0} % {(share < 0 ? "less" : "more")}";

    // two figures are more than a curve of fatigue knows
    private static double Rounded(double n)
    {
        double step = Math.Pow(10, Math.Floor(Math.Log10(n)) - 1);
        return Math.Round(n / step) * step;
    }

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
