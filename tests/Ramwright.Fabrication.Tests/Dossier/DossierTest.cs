using System.Text;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using Ramwright.Files;
using Ramwright.Files.Dossier;
using Ramwright.Files.Making;
using Ramwright.Ladders;
using Ramwright.Proving;
using Ramwright.Quantities;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;

namespace Ramwright.Tests.Dossier;

public class DossierTest
{
    private static readonly DateOnly Day = new(2026, 11, 28);

    public static TheoryData<string> Examples() => ["wherry-yard", "railing-shop", "drainage-mill-puller", "salvage"];

    private static Papers Papers(string example, params (string, string)[] changes)
    {
        PressOnDisk press = Tests.Presses.Open(example, changes);
        return new Papers(new MakeOf(press, PressCheck.Of(press.Rig!), press.Reading.Units) { Day = Day });
    }

    private static byte[] Pdf(Papers papers) => PdfBook.Write(DossierBook.Of(papers), Day);

    [Theory, MemberData(nameof(Examples))]
    public void ReadsBackWithEveryChapterOnThePageThatTheContentsName(string example)
    {
        Papers papers = Papers(example);
        Book book = DossierBook.Of(papers);
        using PdfDocument pdf = PdfDocument.Open(PdfBook.Write(book, Day));
        Page[] pages = [.. pdf.GetPages()];
        string front = pages[0].Text;
        Assert.Contains(papers.Rig.Name, front, StringComparison.Ordinal);
        Assert.Contains(papers.Of.Hash, Regex.Replace(front, @"\s", ""), StringComparison.Ordinal);
        Assert.Contains("2026-11-28", front, StringComparison.Ordinal);
        foreach (Chapter chapter in book.Chapters)
        {
            Match entry = Regex.Match(front, Regex.Escape(chapter.Name) + @"(\d+)");
            Assert.True(entry.Success, $"{chapter.Name} is not in the contents");
            // contents are written without spaces between, so that a number may run into the next heading's words, never into its figures
            int page = int.Parse(entry.Groups[1].Value, System.Globalization.CultureInfo.InvariantCulture);
            string text = pages[page - 1].Text;
            bool drawn = chapter.Blocks is [Picture { OwnPage: true }, ..];
            Assert.True(text.Contains(drawn ? papers.Rig.Name : chapter.Name, StringComparison.Ordinal), $"{chapter.Name} does not begin on page {page}");
        }

        for (int i = 0; i < pages.Length; i++)
            Assert.Contains($"page {i + 1} of {pages.Length}", pages[i].Text, StringComparison.Ordinal);
    }

    [Theory, MemberData(nameof(Examples))]
    public void NoPageIsLeftNearlyEmpty(string example)
    {
        using PdfDocument pdf = PdfDocument.Open(Pdf(Papers(example)));
        foreach (Page page in pdf.GetPages().Where(p => p.Height > p.Width))
        {
            // the foot stands at 24 points, the head at 32 from the top
            double lowest = page.Letters.Where(l => l.StartBaseLine.Y > 40).Min(l => l.StartBaseLine.Y);
            Assert.True(lowest < 0.78 * page.Height, $"page {page.Number} ends at {lowest / page.Height:0.00} of its height");
        }
    }

    [Theory, MemberData(nameof(Examples))]
    public void EveryFaceIsEmbeddedAndNoLetterIsMissing(string example)
    {
        byte[] bytes = Pdf(Papers(example));
        using PdfDocument pdf = PdfDocument.Open(bytes);
        var faces = new HashSet<string>();
        foreach (Page page in pdf.GetPages())
        {
            foreach (Letter letter in page.Letters)
            {
                faces.Add(letter.FontName ?? "");
                Assert.NotEqual("\ufffd", letter.Value);
            }
        }

        // a letter that the face lacks is written as a question mark; the circuit has some of its own
        Assert.All(pdf.GetPages().Where(p => !p.Text.Contains("Symbols after ISO 1219-1", StringComparison.Ordinal)), p => Assert.DoesNotContain("?", p.Text, StringComparison.Ordinal));
        Assert.NotEmpty(faces);
        // a subset's name begins with a tag of six capitals; a face that is only named has none
        Assert.All(faces, f => Assert.Matches("^[A-Z]{6}\\+", f));
        Assert.Equal(faces.Count, Regex.Count(Encoding.Latin1.GetString(bytes), @"/FontFile2 \d+ 0 R"));
    }

    [Theory, MemberData(nameof(Examples))]
    public void NothingRunsOffThePage(string example)
    {
        using PdfDocument pdf = PdfDocument.Open(Pdf(Papers(example)));
        foreach (Page page in pdf.GetPages())
        {
            Assert.True(Math.Abs(page.Width - 595.28) < 0.5 ? Math.Abs(page.Height - 841.89) < 0.5 : Math.Abs(page.Width - 841.89) < 0.5 && Math.Abs(page.Height - 595.28) < 0.5, "A4, upright or lying");
            foreach (Letter letter in page.Letters)
            {
                Assert.True(letter.StartBaseLine.X >= 20 && letter.EndBaseLine.X <= page.Width - 15 && letter.StartBaseLine.Y >= 5 && letter.StartBaseLine.Y <= page.Height - 15,
                    $"{letter.Value} at {letter.StartBaseLine} on page {page.Number} of {example}");
            }
        }
    }

    [Fact]
    public void TheSameFileAndDayGiveTheSameBytes()
    {
        byte[] one = Pdf(Papers("railing-shop")), two = Pdf(Papers("railing-shop"));
        Assert.True(one.AsSpan().SequenceEqual(two));
        Assert.Equal(HtmlBook.Write(DossierBook.Of(Papers("wherry-yard"))), HtmlBook.Write(DossierBook.Of(Papers("wherry-yard"))));
    }

    [Fact]
    public void EveryRungIsInTheLadderAndItsWorkingInTheAppendix()
    {
        Papers papers = Papers("wherry-yard");
        Book book = DossierBook.Of(papers);
        Grid ladder = book.Chapters[0].Blocks.OfType<Grid>().First();
        Chapter workings = book.Chapters[^1];
        foreach (Rung rung in papers.Check.Ladder.Rungs)
        {
            Assert.Contains(ladder.Rows, r => r[0] == Readout.Number(rung.SafeTo / 1000) && r[3] == rung.Part);
            Assert.Contains(workings.Blocks.OfType<Heading>(), h => h.Text.StartsWith(rung.Id + ":", StringComparison.Ordinal));
        }

        Assert.All(workings.Blocks.OfType<StepLine>(), s => Assert.NotEmpty(s.Source));
        using PdfDocument pdf = PdfDocument.Open(PdfBook.Write(book, Day));
        string all = string.Concat(pdf.GetPages().Select(p => p.Text));
        Assert.All(papers.Check.Ladder.Rungs, r => Assert.Contains(r.Id, all, StringComparison.Ordinal));
    }

    [Fact]
    public void WhatTheFileDoesNotSayIsLeftToTheBuilder()
    {
        string bare = Text(Papers("railing-shop"));
        Assert.Contains("general tolerances: builder to decide", bare, StringComparison.Ordinal);
        Assert.Contains("There must be one. Builder to decide.", bare, StringComparison.Ordinal);
        Assert.DoesNotContain("ISO 2768-", bare, StringComparison.Ordinal);
        string said = Text(Papers("railing-shop", ("jobs:\n", "papers: { tolerances: coarse, builder: the railing shop, finish: red lead }\ngauge: { range: 1000 bar }\njobs:\n")));
        Assert.Contains("general tolerances: ISO 2768-c", said, StringComparison.Ordinal);
        Assert.Contains("the railing shop", said, StringComparison.Ordinal);
        Assert.Contains("red lead", said, StringComparison.Ordinal);
        Assert.DoesNotContain("There must be one", said, StringComparison.Ordinal);
    }

    [Fact]
    public void RiskNotesFollowTheOrderOfTheStandardAndCarryThePresssNumbers()
    {
        Papers papers = Papers("wherry-yard");
        Chapter risk = DossierBook.Of(papers).Chapters.First(c => c.Name == "Risk notes");
        string[] heads = [.. risk.Blocks.OfType<Heading>().Select(h => h.Text)];
        Assert.Equal(["1  Limits of the machine (5.3)", "2  Hazards, and what is done about them (5.4 to 6.4)", "3  What is left when all that is done"], heads);
        Grid hazards = risk.Blocks.OfType<Grid>().First();
        Assert.Contains(hazards.Rows, r => r[0] == "oil through the skin" && r[1].Contains(papers.T(papers.Check.Power.MostPossiblePressure, Dimension.Pressure), StringComparison.Ordinal));
        Assert.All(hazards.Rows, r => Assert.Equal("", r[4]));
    }

    [Theory, MemberData(nameof(Examples))]
    public void TheProofSheetIsThePlanOfTheProvingRoom(string example)
    {
        Papers papers = Papers(example);
        TestPlan plan = TestPlan.Of(papers.Check, papers.Units);
        Chapter proof = DossierBook.Of(papers).Chapters.First(c => c.Name == "Proof test");
        Grid steps = proof.Blocks.OfType<Grid>().First();
        Assert.Equal(plan.Steps.Count, steps.Rows.Count);
        for (int i = 0; i < plan.Steps.Count; i++)
        {
            Assert.Equal(papers.T(plan.Steps[i].Pressure, Dimension.Pressure), steps.Rows[i][2]);
            Assert.Equal("", steps.Rows[i][3]);
        }

        Assert.Equal(plan.Looks.Count + plan.Unloaded.Count + plan.After.Count + 2, proof.Blocks.OfType<Items>().Where(t => t.Mark == ItemMark.Box).Sum(t => t.Texts.Count));
    }

    [Theory, MemberData(nameof(Examples))]
    public void TheScreenSaysWhatThePaperSays(string example)
    {
        Papers papers = Papers(example);
        Book book = DossierBook.Of(papers);
        string html = HtmlBook.Write(book);
        // one file, nothing fetched
        Assert.DoesNotMatch("(src|href)=\"(?!#)", html);
        Assert.DoesNotContain("<script", html, StringComparison.Ordinal);
        // well formed but for what HTML leaves open
        string xml = html.Replace("<!DOCTYPE html>", "", StringComparison.Ordinal).Replace("<meta charset=\"utf-8\">", "", StringComparison.Ordinal).Replace("<br>", "<br/>", StringComparison.Ordinal);
        xml = Regex.Replace(xml, "<meta name=[^>]*>", "");
        XDocument page = XDocument.Parse(xml);
        foreach (Chapter chapter in book.Chapters)
            Assert.Contains(page.Descendants("h2"), h => h.Value == chapter.Name);
        Assert.Equal(book.Chapters.Sum(c => c.Blocks.OfType<Picture>().Count()), page.Descendants("figure").Count());
        foreach (Grid grid in book.Chapters.SelectMany(c => c.Blocks.OfType<Grid>()))
            Assert.All(grid.Rows, r => Assert.Equal(grid.Columns.Count, r.Count));
    }

    [Fact]
    public void ANameThatTheFaceCannotWriteIsWrittenAsFarAsItCan()
    {
        string text = Text(Papers("wherry-yard", ("name: Wherry Yard 25 t", "name: \"Prasa Łódź 25 t \u6c34\"")));
        Assert.Contains("Prasa Łódź 25 t ?", text, StringComparison.Ordinal);
    }

    private static string Text(Papers papers)
    {
        using PdfDocument pdf = PdfDocument.Open(Pdf(papers));
        return string.Join('\n', pdf.GetPages().Select(p => p.Text));
    }
}
