using Ramwright.Files.Drawings;
using Ramwright.Ladders;
using Ramwright.Quantities;

namespace Ramwright.Files.Dossier;

/// <summary>The proof test as a sheet to be filled in by hand.</summary>
internal static class ProofChapter
{
    /// <summary>Share of the rating that a proof goes to; common practice for lifting gear and shop presses.</summary>
    private const double Proof = 1.25;

    public static Chapter Of(Papers p)
    {
        PressCheck check = p.Check;
        double rating = Math.Min(check.Ladder.SafeRating, check.Power.MostPossibleForce);
        // what must not break governs how far a proof may go: nine tenths of where the first of it gives
        double gives = check.Ladder.Rungs.Where(r => r.MustSurvive).Select(r => r.GivesAt).DefaultIfEmpty(double.PositiveInfinity).Min();
        double proof = Math.Min(Math.Min(Proof * rating, 0.9 * gives), check.Power.TrueForce);
        return new Chapter("Proof test",
        [
            new Prose("To be filled in with a pen at the press. A frame that is proved can still wear out or crack: prove again after every change, every overload, and at least once a year.", Tone.Warn),
            new Heading("Before"),
            new Items(
            [
                "Everybody out of the room but the one at the lever; a long hose or a shield between that one and the press; eyes and ears protected.",
                "One solid, flat, centred block between the dies, wider than half its height. Nothing loose anywhere on the press.",
                $"Gauge checked against another within a year; relief valve set to what the step needs and no more, gauge in sight.",
                "All bolts at their torque, all welds looked at cold, dye on those that carry the force; oil up, air bled, no leak at low pressure.",
                "Daylight measured at four corners to a tenth of a millimetre; diagonals of the frame; marks across every bolted joint with a scriber.",
            ], ItemMark.Box),
            new Heading("Steps"),
            new Prose($"Go up to each step slowly, hold one minute, look from where you stand, come down to nothing, read the dial at nothing. Stop at any crack, bang, leak, or dial that does not come back. The last step is {p.F(proof)}, "
                + (proof < Proof * rating - 1 ? proof >= check.Power.TrueForce - 1 ? $"all that the pump gives: {Proof:0.00} times the rating is out of its reach" : $"kept under nine tenths of what the first part gives at; {Proof:0.00} times the rating would be too much for it" : $"{Proof:0.00} times the rating") + ", held ten minutes, centred only."),
            new Grid([new("step", 1.4), new("ram force", 1.9, true), new("gauge", 1.3, true), new("gauge read", 1.3), new("daylight grows, reckoned", 1.6, true), new("dial under load", 1.4), new("dial at nothing", 1.4), new("seen, heard", 2.6)],
                [.. Steps(p, rating, proof)]) { Ruled = true },
            new Prose($"Reckoned is the frame's own give, without the seating of new joints: seat it once at half the rating, then set the dial to zero. It should come back to zero within the dial's own error each time.", Tone.Quiet),
            new Heading("Off centre"),
            new Prose($"Half the rating, one minute each: work {p.T(p.Rig.Loading.Across, Dimension.Length)} to the left and right, {p.T(p.Rig.Loading.Deep, Dimension.Length)} to the front and back."),
            new Grid([new("place", 2), new("gauge read", 1.6), new("dies out of parallel, under load", 2.6), new("at nothing", 1.6), new("seen, heard", 3)],
                [.. ((string[])["left", "right", "front", "back"]).Select(place => (IReadOnlyList<string>)[place, "", "", "", ""])]) { Ruled = true },
            new Heading("Ram held up"),
            new Grid([new("held", 2.4), new("ram after 10 min", 2), new("oil warm by", 1.6), new("allowed", 2), new("pass", 1)],
                [["at mid stroke, pump off", "", "", Papers.Open, ""], ["under load, lever let go", "", "", Papers.Open, ""]]) { Ruled = true },
            new Heading("Result"),
            new Grid([new("measured", 3), new("before", 2), new("after", 2), new("difference", 2)],
                [.. ((string[])["daylight, front left", "daylight, front right", "daylight, back left", "daylight, back right", "diagonal 1", "diagonal 2"]).Select(m => (IReadOnlyList<string>)[m, "", "", ""])]) { Ruled = true },
            new Items(["No permanent set beyond the error of measuring, no crack, no leak, no slipped joint.", "Relief valve set back for work and sealed.", "Rating plate and gauge chart hung."], ItemMark.Box),
            new Grid([new("date", 2), new("oil temperature", 2), new("gauge, number", 2.4), new("by whom", 3), new("signature", 3)], [["", "", "", "", ""]]) { Ruled = true },
        ]);
    }

    private static IEnumerable<IReadOnlyList<string>> Steps(Papers p, double rating, double proof)
    {
        foreach ((string name, double share) in ((string, double)[])[("seating", 0.5), ("1", 0.25), ("2", 0.5), ("3", 0.75), ("4", 1)])
            yield return Step(p, name, share * rating);
        yield return Step(p, "proof, 10 min", proof);
    }

    private static IReadOnlyList<string> Step(Papers p, string name, double force) =>
    [
        name, p.F(force), p.T(GaugeChart.Reading(p.Check, force), Dimension.Pressure), "", p.T(force * p.Check.Response.DaylightGrowth, Dimension.Length), "", "", "",
    ];
}
