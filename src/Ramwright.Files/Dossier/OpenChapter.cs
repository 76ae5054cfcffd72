using Ramwright.Presses;

namespace Ramwright.Files.Dossier;

/// <summary>What was assumed, and what is left to the builder.</summary>
internal static class OpenChapter
{
    public static Chapter Of(Papers p)
    {
        var blocks = new List<Block>();
        string[] undecided = [.. p.Parts.Undecided, .. p.Welds.Open.Select(o => "Size of the welds: " + o + "."), .. Own(p)];
        blocks.Add(new Heading("Builder to decide"));
        blocks.Add(undecided.Length == 0 ? new Prose("Nothing is left open.") : new Items(undecided, ItemMark.Box));
        Assumed[] assumed = [.. p.Check.Assumed, .. p.Welds.Lines.Count > 0 ? p.Rig.Welding.Assumed : [], .. p.Parts.Assumed];
        if (assumed.Length > 0)
        {
            blocks.Add(new Heading("Assumed, because the file does not say"));
            blocks.Add(new Grid([new("what", 3), new("taken", 2), new("why", 6)], [.. assumed.Select(a => (IReadOnlyList<string>)[a.What, a.Value(p.Units), a.Why.Text(p.Units)])]));
        }

        return new Chapter("Open and assumed", blocks);
    }

    private static IEnumerable<string> Own(Papers p)
    {
        PaperWork papers = p.Rig.Papers;
        if (papers.Tolerances is null)
            yield return "General tolerances of the drawings (papers.tolerances).";
        yield return "Fits, flatness and surface of the faces that bear on each other.";
        if (papers.Finish is null)
            yield return "Protection of the steel against rust (papers.finish).";
        if (papers.Builder is null || papers.Number is null || papers.Year is null)
            yield return "Builder, number and year for the rating plate (papers).";
        yield return "Guards and shields: their shape, and that they stop what can fly.";
        yield return "Filter, and how the oil is filled, checked and changed.";
    }
}
