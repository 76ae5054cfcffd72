using System.Globalization;
using System.Text.RegularExpressions;
using Ramwright.Files.Drawings;
using Ramwright.Geometry;
using Ramwright.Ladders;
using Ramwright.Quantities;

namespace Ramwright.Files.Tests.Drawings;

/// <summary>The bent frame stays on its sheet, is bent by what it says, and its figures are those of the check.</summary>
public class BentDrawingTest
{
    public static TheoryData<string> Examples => PressDrawingTest.Examples;

    private static PressCheck Check(string example) => PressCheck.Of(PressOnDisk.Open(TestFiles.InHouse("examples", example)).Rig!);

    [Theory, MemberData(nameof(Examples))]
    public void EverythingStaysOnTheSheetInEveryLoadCase(string example)
    {
        PressCheck check = Check(example);
        for (int i = 0; i < check.Response.Solutions.Count; i++)
        {
            Sheet sheet = BentDrawing.Of(check, 150e3, i);
            foreach (Corner corner in sheet.Marks.OfType<Area>().SelectMany(a => a.Outline.Loops).SelectMany(l => l))
            {
                Assert.InRange(corner.Y, 0, sheet.Width);
                Assert.InRange(corner.Z, 0, sheet.Height);
            }
        }
    }

    [Theory, MemberData(nameof(Examples))]
    public void TheTrueFiguresStandBesideIt(string example)
    {
        PressCheck check = Check(example);
        string[] texts = [.. BentDrawing.Of(check, 2 * check.Rig.Wanted, 0).Marks.OfType<Lettering>().Select(l => l.Text)];

        Assert.Contains($"the daylight grows by {Readout.Text(2 * check.DaylightGrowth, Dimension.Length)}", texts);
        Assert.Contains(texts, t => t.Contains(check.Response.Solutions[0].Case.Name, StringComparison.Ordinal));
    }

    [Theory, MemberData(nameof(Examples))]
    public void TheBentFrameLiesAsManyTimesFurtherOffAsItSays(string example)
    {
        PressCheck check = Check(example);
        Sheet sheet = BentDrawing.Of(check, 150e3, 0);
        Area[] areas = [.. sheet.Marks.OfType<Area>().Where(a => a.Part.Length > 0)];
        Match said = Regex.Match(sheet.Marks.OfType<Lettering>().Single(l => l.Text.StartsWith("bending drawn", StringComparison.Ordinal)).Text, @"drawn (\d+) times .* 1:([\d.]+)");
        double times = double.Parse(said.Groups[1].Value, CultureInfo.InvariantCulture), n = double.Parse(said.Groups[2].Value, CultureInfo.InvariantCulture);

        // bent and at rest stand in turn, corner for corner
        double most = 0;
        for (int i = 0; i < areas.Length; i += 2)
        {
            for (int c = 0; c < areas[i].Outline.Loops[0].Count; c++)
            {
                Corner bent = areas[i].Outline.Loops[0][c], rest = areas[i + 1].Outline.Loops[0][c];
                most = Math.Max(most, Math.Abs(bent.Z - rest.Z));
            }
        }

        var movement = new Frame.BodyMovement(check.Response, 0);
        double true1 = Frame.FrameBody.Of(check.Rig).Pieces.Where(movement.Moves).Max(p => Enumerable.Range(0, 25).Max(i => Math.Abs(movement.Of(p, p.Length * i / 24).Z)));
        // an edge lies further off than the middle, but by no more than the turn of the section adds
        Assert.InRange(most, 0.9 * 150e3 * true1 * times * 1000 / n, 2.5 * 150e3 * true1 * times * 1000 / n);
    }

    [Fact]
    public void NoForceIsRefused() => Assert.Throws<ArgumentOutOfRangeException>(() => BentDrawing.Of(Check("wherry-yard.press.yaml"), 0));
}
