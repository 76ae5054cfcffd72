using Ramwright.Ladders;

namespace Ramwright.Files.Dossier;

/// <summary>The dossier of a press: all that its builder keeps in the drawer and shows to whoever asks.</summary>
public static class DossierBook
{
    /// <summary>Writes it.</summary>
    public static Book Of(Papers papers)
    {
        ArgumentNullException.ThrowIfNull(papers);
        PressCheck check = papers.Check;
        List<Block> front =
        [
            new Prose($"{Headline.Wanted(check, papers.Units)} {Headline.MostPossible(check, papers.Units)}", Tone.Loud),
            new Prose(Headline.Weakest(check, papers.Units)),
            new Facts(
            [
                ("wanted", papers.F(papers.Rig.Wanted), "what you ask of it"),
                ("safe to", papers.F(check.Ladder.SafeRating), $"lowest rung: {check.Ladder.Governing.Id}"),
                ("most possible", papers.F(check.Power.MostPossibleForce), check.Power.MostPossibleLimitedBy),
                ("press file", papers.FileName, $"SHA-256 {papers.Of.Hash}"),
                ("date", papers.DayText, "of these papers"),
                ("built by", papers.Rig.Papers.Builder ?? Papers.Open, $"number {papers.Rig.Papers.Number ?? Papers.Open}; year {papers.Rig.Papers.Year ?? Papers.Open}"),
            ]),
            new Prose("This is a calculation from what the press file says and from what it had to assume. It certifies nothing. Where people can be hurt follow your local code, ask a licensed engineer, and prove the press before use.", Tone.Warn),
        ];
        Chapter[] chapters =
        [
            RatingChapter.Of(papers),
            DrawingChapters.Arrangement(papers),
            CutListChapter.Of(papers),
            DrawingChapters.Parts(papers),
            WeldChapter.Of(papers),
            DrillingChapter.Of(papers),
            CircuitChapter.Of(papers),
            CostChapter.Of(papers),
            RiskChapter.Of(papers),
            ProofChapter.Of(papers),
            DrawingChapters.Plates(papers),
            OpenChapter.Of(papers),
            WorkingChapter.Of(papers),
        ];
        return new Book(papers.Rig.Name, "Dossier of a hydraulic press", papers.Stamp, front, [.. chapters.Where(c => c.Blocks.Count > 0)]);
    }
}
