using System.Text;
using Ramwright.Files.Binding;
using Ramwright.Presses;

namespace Ramwright.Files.Tests;

public sealed class StarterTest
{
    private const int CommentColumn = 40;

    public static TheoryData<string> Kinds() => [.. Starter.Kinds];

    [Fact]
    public void ThereIsOneForEveryKindOfFrame() =>
        Assert.Equal(RecordShape.Of(typeof(PressFrame)).Kinds.Select(k => k.Kind), Starter.Kinds);

    [Theory, MemberData(nameof(Kinds))]
    public void ReadsWithoutFaults(string kind)
    {
        PressReading reading = PressFile.Read(Starter.Text(kind), kind, TestShelf.Shelf);

        Assert.Equal("", FaultText.All(reading.Faults));
        Assert.Equal(kind, RecordShape.Of(reading.Press!.Frame!.GetType()).Kind);
    }

    [Theory, MemberData(nameof(Kinds))]
    public void SaysWhatEachKeyMeans(string kind)
    {
        string file = TestFiles.InHouse("src", "Ramwright.Files", "Starters", kind + PressFile.Ending);
        string[] lines = File.ReadAllText(file).ReplaceLineEndings("\n").Split('\n');
        foreach (StarterLine line in StarterLine.Of(string.Join('\n', lines)))
        {
            bool known = line.Shape is not null || (line.Key == "kind" && line.Record?.Kind is not null);
            Assert.True(known, $"line {line.Number + 1}: {line.Key} is no key here");
            string bare = line.IsUsed ? line.Text : lines[line.Number][..lines[line.Number].IndexOf('#')] + "#" + line.Text[lines[line.Number].IndexOf('#')..];
            lines[line.Number] = bare.PadRight(CommentColumn) + " # " + line.Meaning;
        }

        Approved.Matches(string.Join('\n', lines), file);
    }

    [Fact]
    public void EveryKeyOfEveryRecordIsInOneOfThem()
    {
        var shown = Starter.Kinds.SelectMany(k => StarterLine.Of(Starter.Text(k)))
            .Select(l => (l.Record, l.Key)).ToHashSet();

        var missing = Shapes(RecordShape.Of(typeof(Press)))
            .SelectMany(r => r.Keys.Select(k => (Record: r, k.Key)))
            .Where(k => !shown.Contains((k.Record, k.Key)))
            .Select(k => $"{k.Record.Type.Name}.{k.Key}").Distinct();

        Assert.Empty(missing);
    }

    [Theory, MemberData(nameof(Kinds))]
    public void EveryKeyBehindHashCanBeUsed(string kind)
    {
        string text = Starter.Text(kind);
        foreach (string variant in Variants(text))
        {
            PressReading reading = PressFile.Read(variant, kind, TestShelf.Shelf);

            Assert.True(reading.Press is not null, FaultText.All(reading.Faults) + "\n" + variant);
        }
    }

    // crown, bed and upright of the closed one go together, and with its barrel and its bolts
    [Fact]
    public void TheMembersOfTheClosedOneGoTogether()
    {
        string[] said = ["mount", "barrel-outside", "steel", "bolster", "crown", "bed", "upright", "crown-joint", "bed-joint"];
        string[] lines = Starter.Text("closed").Split('\n');
        var seen = new HashSet<string>();
        bool used = false;
        for (int i = 0; i < lines.Length; i++)
        {
            bool head = lines[i].StartsWith("  #", StringComparison.Ordinal) && lines[i].Length > 3 && char.IsLetter(lines[i][3]);
            if (head)
                used = said.Contains(lines[i][3..lines[i].IndexOf(':')]) && seen.Add(lines[i][3..lines[i].IndexOf(':')]);
            else if (!lines[i].StartsWith("  #  ", StringComparison.Ordinal))
                used = false;
            if (used && !lines[i].Contains("throat: ", StringComparison.Ordinal))
                lines[i] = "  " + lines[i][3..];
        }

        PressReading reading = PressFile.Read(string.Join('\n', lines), "closed", TestShelf.Shelf);
        Assert.Equal("", FaultText.All(reading.Faults));
        Assert.Equal(said.Order(), seen.Order());
        Rig rig = Resolver.Resolve(reading.Press!, TestShelf.Shelf);

        Assert.DoesNotContain(rig.Cautions, c => c.Text().Contains("does not go through a gap", StringComparison.Ordinal) || c.Text().Contains("run into the webs", StringComparison.Ordinal));
        Assert.Contains(Ladders.PressCheck.Of(rig).Ladder.Rungs, r => r.Id == "crown-joint-weld");
    }

    [Theory, MemberData(nameof(Kinds))]
    public void TheFirstFileSaysWhatTheFullOneSaysAndNoMore(string kind)
    {
        string[] first = Starter.First(kind).Split('\n'), full = Starter.Text(kind).Split('\n');

        Assert.Equal(full.Where(l => l.Length > 0 && l.TrimStart()[0] != '#'), first.Where(l => l.Length > 0 && l[0] != '#'));
        Assert.Empty(PressFile.Read(Starter.First(kind), kind, TestShelf.Shelf).Faults);
    }

    [Fact]
    public void PointsEditorsAtTheSchema()
    {
        Assert.StartsWith("# yaml-language-server: $schema=press.schema.json\n", Starter.Text("closed"));
        Assert.StartsWith("# yaml-language-server: $schema=../schema/press.schema.json\n", Starter.Text("closed", "../schema/press.schema.json"));
    }

    // Everything used at once; and for each block that stands in place of another, that one used instead.
    internal static List<string> Variants(string text)
    {
        List<StarterLine> lines = StarterLine.Of(text);
        var blocks = new List<(StarterLine Head, StarterLine? Within, List<StarterLine> Lines)>();
        for (int i = 0; i < lines.Count; i++)
        {
            StarterLine head = lines[i];
            if (head.Value.Length == 0 && head.Shape?.Form == KeyForm.Record)
                blocks.Add((head, lines.Take(i).LastOrDefault(l => l.Indent < head.Indent), [head, .. lines.Skip(i + 1).TakeWhile(l => l.Indent > head.Indent)]));
        }

        var pairs = new List<(List<StarterLine> First, List<StarterLine> Instead)>();
        foreach (var (head, within, block) in blocks)
        {
            // a block within another that is itself put in place of a third stands in nothing's place
            var first = blocks.First(b => b.Head.Key == head.Key && b.Head.Record == head.Record && b.Within == within);
            if (first.Head != head && first.Head.Indent == head.Indent)
                pairs.Add((first.Lines, block));
        }

        var variants = new List<string> { Used(lines, pairs.SelectMany(p => p.Instead)) };
        foreach (var (first, instead) in pairs)
            variants.Add(Used(lines, pairs.Where(p => p.Instead != instead).SelectMany(p => p.Instead).Concat(first)));
        return variants;
    }

    private static string Used(List<StarterLine> lines, IEnumerable<StarterLine> without)
    {
        var left = without.ToHashSet();
        var text = new StringBuilder();
        foreach (StarterLine line in lines.Where(l => !left.Contains(l)))
            text.Append(line.Text).Append('\n');
        return text.ToString();
    }

    private static IEnumerable<RecordShape> Shapes(RecordShape shape)
    {
        if (shape.Kinds.Count > 0)
            return shape.Kinds.SelectMany(Shapes);
        return shape.Keys.Where(k => k.Form is KeyForm.Record or KeyForm.Records)
            .SelectMany(k => Shapes(RecordShape.Of(k.Element))).Prepend(shape);
    }
}
