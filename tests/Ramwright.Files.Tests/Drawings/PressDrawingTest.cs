using System.Globalization;
using System.Xml.Linq;
using Ramwright.Files.Drawings;
using Ramwright.Frame;
using Ramwright.Ladders;
using Ramwright.Presses;
using Ramwright.Quantities;

namespace Ramwright.Files.Tests.Drawings;

/// <summary>The drawing shows what the file says, nothing runs into anything, and it is well-formed SVG.</summary>
public class PressDrawingTest
{
    public static TheoryData<string> Examples => [.. Directory.GetFiles(TestFiles.InHouse("examples"), "*.press.yaml").Select(f => Path.GetFileName(f)!)];

    private static PressCheck Check(string example) => PressCheck.Of(PressOnDisk.Open(TestFiles.InHouse("examples", example)).Rig!);

    private static PressCheck Made(string frame) =>
        PressCheck.Of(Resolver.Resolve(PressFile.Read($$"""
            wanted: 20 t
            cylinder: { kind: double-acting, bore: 100 mm }
            pump: { kind: electric, motor: 3 hp }
            frame: {{frame}}
            """, "made.press.yaml", StockTables.Built).Press!, StockTables.Built));

    [Theory, MemberData(nameof(Examples))]
    public void Figures_are_those_of_the_file(string example)
    {
        PressCheck check = Check(example);
        string[] texts = [.. PressDrawing.Of(check).Marks.OfType<Lettering>().Select(t => t.Text)];
        double opening = check.Rig.Frame switch
        {
            RigClosedFrame closed => closed.Width,
            RigTieRodFrame rods => rods.RodsAcross,
            _ => ((RigOpenFrontFrame)check.Rig.Frame).Throat,
        };
        Assert.Contains(Math.Round(check.Rig.Frame.Daylight * 1000, 3).ToString(CultureInfo.InvariantCulture), texts);
        Assert.Contains(Math.Round(opening * 1000, 3).ToString(CultureInfo.InvariantCulture), texts);
        foreach (Piece piece in FrameBody.Of(check.Rig).Pieces)
            Assert.Contains(piece is GussetPlate ? "gussets" : piece.Member.Part, texts);
    }

    [Theory, MemberData(nameof(Examples))]
    public void Nothing_written_runs_into_anything_written(string example)
    {
        foreach (UnitSystem units in Enum.GetValues<UnitSystem>())
        {
            AssertClear(PressDrawing.Of(Check(example), units));
            AssertClear(PressDrawing.Of(Check(example), units, at: 150e3));
            AssertClear(PressDrawing.Of(Check(example), units, at: 150e3, Paper.Figure));
            AssertClear(PressDrawing.Of(Check(example), units, at: 150e3, Paper.Column));
        }
    }

    [Theory]
    [InlineData("{ kind: closed, daylight: 600 mm, width: 500 mm, section: HEB 160 }")]
    [InlineData("{ kind: closed, daylight: 150 mm, width: 120 mm, section: HEB 100 }")]
    [InlineData("{ kind: closed, daylight: 3 m, width: 250 mm, section: UPN 200 }")]
    [InlineData("{ kind: closed, daylight: 200 mm, width: 2.5 m, section: HEB 200 }")]
    [InlineData("{ kind: open-front, daylight: 300 mm, throat: 150 mm, section: HEB 200 }")]
    [InlineData("{ kind: open-front, daylight: 80 mm, throat: 60 mm, section: flat 120x40 }")]
    public void Odd_proportions_stay_legible(string frame)
    {
        foreach (Paper paper in (Paper[])[Paper.A4, Paper.Figure, Paper.Column])
            AssertClear(PressDrawing.Of(Made(frame), paper: paper));
    }

    [Fact]
    public void Rods_are_shaded_by_the_rungs_that_speak_of_all_of_them()
    {
        PressCheck check = Check("drainage-mill-puller.press.yaml");
        double safe = check.Ladder.Rungs.Where(r => r.Part == "tie rods").Min(r => r.SafeTo);
        Assert.Contains(PressDrawing.Of(check, at: safe / 2).Marks.OfType<Lettering>(), t => t.Text == "tie rod (50 %)");
    }

    [Fact]
    public void A_figure_is_no_taller_than_what_is_on_it_and_its_facts_are_told_beside()
    {
        Sheet figure = PressDrawing.Of(Check("wherry-yard.press.yaml"), at: 150e3, paper: Paper.Figure);
        double low = figure.Marks.OfType<Lettering>().Min(t => t.Y), high = figure.Marks.OfType<Area>().SelectMany(a => a.Outline.Loops).SelectMany(l => l).Max(c => c.Z);
        Assert.InRange(figure.Height - (high - low), 0, 20);
        Assert.Contains(figure.Facts, f => f.Contains("dimensions in mm", StringComparison.Ordinal));
        Assert.DoesNotContain(figure.Marks.OfType<Lettering>(), t => figure.Facts.Contains(t.Text));
    }

    [Theory, MemberData(nameof(Examples))]
    public void It_is_well_formed_and_names_every_part(string example)
    {
        PressCheck check = Check(example);
        var svg = XDocument.Parse(SvgSheet.Write(PressDrawing.Of(check)));
        string[] parts = [.. svg.Descendants().Select(e => (string?)e.Attribute("data-part")).OfType<string>().Distinct()];
        Assert.All(check.Response.Plan.Parts, p => Assert.Contains(p.Member.Part, parts));
        Assert.Contains("cylinder", parts);
        Assert.DoesNotContain(svg.Descendants().Attributes(), a => a.Value.Contains("NaN", StringComparison.Ordinal) || a.Value.Contains('∞'));
    }

    [Theory]
    [InlineData("{ kind: closed, daylight: 600 mm, width: 500 mm, section: HEB 160, crown-joint: ", "gusset of the crown joint", "4 x 120 x 100 x 12, S275")]
    [InlineData("{ kind: open-front, daylight: 300 mm, throat: 250 mm, section: HEB 200, arm-joint: ", "gusset of the upper arm joint", "2 x 120 x 100 x 12, S275")]
    public void Gussets_are_drawn_as_triangles_and_named(string frame, string part, string size)
    {
        PressCheck check = Made(frame
            + "{ kind: weld, weld: { leg: 8 mm }, gusset: { leg-along: 120 mm, leg-up: 100 mm, thickness: 12 mm, count: 2, steel: S275, weld: { leg: 6 mm } } } }");
        Sheet sheet = PressDrawing.Of(check);
        AssertClear(sheet);
        AssertClear(PressDrawing.Of(check, UnitSystem.Imperial, at: 150e3));

        string[] texts = [.. sheet.Marks.OfType<Lettering>().Select(t => t.Text)];
        Assert.Contains("gussets", texts);
        Assert.Contains(size, texts);
        Assert.Contains(texts, t => t.EndsWith("steel " + Readout.Text(FrameBody.Of(check.Rig).Mass, Dimension.Mass), StringComparison.Ordinal));
        Area[] triangles = [.. sheet.Marks.OfType<Area>().Where(a => a.Part == part && a.Pen == Pen.Edge && a.Outline.Loops[0].Count == 3)];
        Assert.Equal(frame.Contains("closed", StringComparison.Ordinal) ? 4 : 2, triangles.Length);
        Assert.Contains(part, XDocument.Parse(SvgSheet.Write(sheet)).Descendants().Select(e => (string?)e.Attribute("data-part")));
        Assert.Contains(BentDrawing.Of(check, 150e3).Marks.OfType<Area>(), a => a.Part == part && a.Outline.Loops[0].Count == 3);
    }

    [Fact]
    public void A_part_asked_more_than_it_is_safe_to_is_marked_by_its_number_too()
    {
        PressCheck check = Check("railing-shop.press.yaml");
        double safe = check.Ladder.Rungs.Where(r => r.Part == "upper arm").Min(r => r.SafeTo);
        Assert.Contains(PressDrawing.Of(check, at: 2 * safe).Marks.OfType<Lettering>(), t => t.Text == "upper arm (200 %)");
    }

    private static void AssertClear(Sheet sheet)
    {
        var boxes = sheet.Marks.OfType<Lettering>().Select(t => (t.Text, Box: Box(t))).ToList();
        foreach ((string text, (double l, double b, double r, double t)) in boxes)
            Assert.True(l > 0 && b > 0 && r < sheet.Width && t < sheet.Height, $"{text} runs off the sheet");
        for (int i = 0; i < boxes.Count; i++)
        {
            for (int j = i + 1; j < boxes.Count; j++)
            {
                var (p, q) = (boxes[i].Box, boxes[j].Box);
                Assert.False(p.L < q.R && q.L < p.R && p.B < q.T && q.B < p.T, $"\"{boxes[i].Text}\" runs into \"{boxes[j].Text}\"");
            }
        }
    }

    private static (double L, double B, double R, double T) Box(Lettering t)
    {
        double w = t.Width;
        double start = t.At switch { Anchor.Left => 0, Anchor.Middle => -w / 2, _ => -w };
        return t.Upward
            ? (t.X - t.Height, t.Y + start, t.X, t.Y + start + w)
            : (t.X + start, t.Y, t.X + start + w, t.Y + t.Height);
    }
}
