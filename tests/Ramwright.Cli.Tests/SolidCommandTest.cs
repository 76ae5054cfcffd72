using System.Text.Json;
using Ramwright.Files;
using Ramwright.Geometry;
using Ramwright.Presses;
using Ramwright.Solids;

namespace Ramwright.Tests.Cli;

public class SolidCommandTest
{
    [Fact]
    public void TheAnswerSaysOpeningWeakestPlaceAndHowFarToTrustIt()
    {
        (int code, string text) = Run.Command("solid", Run.Example("railing-shop.press.yaml"), "--cell", "25 mm");

        Assert.Equal(1, code);      // the column yields beside the arm's slot before the wanted force
        Assert.All(text.Split('\n'), line => Assert.True(line.TrimEnd().Length <= 80, line));
        Assert.Contains("daylight grows", text);
        Assert.Contains("by beams", text);
        Assert.Contains("weakest place", text);
        Assert.Contains("Two grids", text);
        Assert.Contains("not a certificate", text);
    }

    [Theory, InlineData("wherry-yard"), InlineData("salvage"), InlineData("drainage-mill-puller")]
    public void BeamsOnTheJointsOwnSpringsOpenAsFarAsTheSolid(string example)
    {
        JsonElement json = JsonDocument.Parse(Run.Command("solid", Run.Example(example + ".press.yaml"), "--json").Text).RootElement;
        JsonElement centred = json.GetProperty("cases")[0];

        Near.Relative(centred.GetProperty("openingMm").GetDouble(), centred.GetProperty("openingByBeamsOnSolidJointsMm").GetDouble(), 0.05, "opening");
    }

    [Fact]
    public void BoltedFacesAreOpenOrTiedAsAsked()
    {
        double Opening(params string[] more) =>
            JsonDocument.Parse(Run.Command(["solid", Run.Example("wherry-yard.press.yaml"), "--cell", "40 mm", "--json", .. more]).Text).RootElement.GetProperty("cases")[0].GetProperty("openingMm").GetDouble();

        Assert.InRange(Opening("--tied") / Opening(), 0.5, 0.97);
        (int code, string text) = Run.Command("solid", Run.Example("railing-shop.press.yaml"), "--tied");
        Assert.Equal(2, code);
        Assert.Contains("no faces of this frame are bolted", string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)), StringComparison.Ordinal);
        Assert.Equal(2, Run.Command("solid", Run.Example("wherry-yard.press.yaml"), "--tied", "--keep-joints").Code);
    }

    /// <summary>Through the column of the open front at half height: what is read along the line is pulled in front and pushed behind, and nothing where there is no steel.</summary>
    [Fact]
    public void StressIsReadAlongALine()
    {
        string line = "0 mm, -100 mm, 250 mm to 0 mm, 400 mm, 250 mm";
        JsonElement[] points = [.. JsonDocument.Parse(Run.Command("solid", Run.Example("railing-shop.press.yaml"), "--cell", "30 mm", "--json", "--line", line).Text)
            .RootElement.GetProperty("cases")[0].GetProperty("line").EnumerateArray()];
        JsonElement[] steel = [.. points.Where(p => p.GetProperty("part").GetString() == "column")];

        Assert.Equal(21, points.Length);
        Assert.Equal(500, points[^1].GetProperty("alongMm").GetDouble(), 6);
        Assert.InRange(steel.Length, 3, 20);
        Assert.All(points.Except(steel), p => Assert.Equal(0, p.GetProperty("equivalentMPa").GetDouble()));
        // bent: least stressed somewhere inside
        double[] stress = [.. steel.Select(p => p.GetProperty("equivalentMPa").GetDouble())];
        Assert.True(stress.Min() < 0.4 * stress[0] && stress.Min() < 0.4 * stress[^1], string.Join(", ", stress));
        Assert.Contains("Stress along the line", Run.Command("solid", Run.Example("railing-shop.press.yaml"), "--cell", "30 mm", "--line", line).Text, StringComparison.Ordinal);
        foreach (string wrong in (string[])["", "0 mm", "0 mm, 0 mm to 1 mm, 0 mm, 0 mm", "0 mm, 0 mm, 0 mm to 0 mm, 0 mm, 0 mm", "0, 0, 0 to 1, 1, 1"])
            Assert.Equal(2, Run.Command("solid", Run.Example("railing-shop.press.yaml"), "--line", wrong).Code);
    }

    [Fact]
    public void TheJsonHoldsEveryCaseAskedFor()
    {
        JsonElement json = JsonDocument.Parse(Run.Command("solid", Run.Example("railing-shop.press.yaml"), "--cell", "25 mm", "--all", "--json").Text).RootElement;
        JsonElement[] cases = [.. json.GetProperty("cases").EnumerateArray()];

        Assert.Equal(["centred", "off to one side", "off to the front"], cases.Select(c => c.GetProperty("case").GetString()).Take(3));
        JsonElement centred = cases[0];
        double solid = centred.GetProperty("openingMm").GetDouble(), beams = centred.GetProperty("openingByBeamsMm").GetDouble();
        Near.Relative(solid, beams, 0.1, "the beams' opening");
        JsonElement[] grids = [.. centred.GetProperty("grids").EnumerateArray()];
        Assert.Equal(2, grids.Length);
        // on cells as long as these, most planes are those of edges and toes, which both grids have
        Assert.True(grids[1].GetProperty("unknowns").GetInt32() > 1.2 * grids[0].GetProperty("unknowns").GetInt32());
        // two grids point beyond the finer
        Near.Relative(2 * grids[1].GetProperty("openingMm").GetDouble() - grids[0].GetProperty("openingMm").GetDouble(), solid, 1e-4, "opening");
        Assert.InRange(centred.GetProperty("solver").GetProperty("energyError").GetDouble(), 1e-9, 1e-5);
        foreach (JsonElement one in cases)
            Assert.Equal(1, one.GetProperty("solver").GetProperty("throughLevelCutShare").GetDouble(), 1e-4);
        JsonElement[] spots = [.. centred.GetProperty("hotSpots").EnumerateArray()];
        // the bars stand on edge, the column's flange is a face
        Assert.Equal((4, 4), (spots.Count(s => s.GetProperty("onEdge").GetBoolean()), spots.Count(s => !s.GetProperty("onEdge").GetBoolean())));
        foreach (JsonElement spot in spots)
        {
            bool onEdge = spot.GetProperty("onEdge").GetBoolean();
            Assert.Equal(onEdge ? "at 4, 8 and 12 mm, on an edge" : "at 0.4 and 1.0 t, on a face", spot.GetProperty("read").GetString());
            (double Before, double Stress)[] places = [.. spot.GetProperty("places").EnumerateArray().Select(p => (p.GetProperty("beforeToeMm").GetDouble(), p.GetProperty("stressMPa").GetDouble()))];
            Near.Relative(onEdge ? 3 * places[0].Stress - 3 * places[1].Stress + places[2].Stress : 1.67 * places[0].Stress - 0.67 * places[1].Stress,
                spot.GetProperty("stressMPa").GetDouble(), 1e-3, spot.GetProperty("where").GetString()!);
            if (onEdge)
                Assert.Equal([4, 8, 12], places.Select(p => p.Before));
        }
        foreach (JsonElement one in cases.Take(3))
            Near.Relative(one.GetProperty("dieTurnByBeamsMmPerM").GetDouble(), one.GetProperty("dieTurnMmPerM").GetDouble(), 0.12, $"how far the dies open, {one.GetProperty("case")}");
        // work further out opens an open front more, nearer in less: off to the front is further out
        Assert.True(cases[2].GetProperty("openingMm").GetDouble() > solid);
    }

    /// <summary>What a viewer finds in the file, read by the published format, is the frame that was drawn and the answer that was shown.</summary>
    [Fact]
    public void TheGridIsWrittenForViewers()
    {
        string folder = Directory.CreateTempSubdirectory("ramwright-vtu-").FullName, path = Path.Combine(folder, "press.vtu");
        try
        {
            (int code, string text) = Run.Command("solid", Run.Example("railing-shop.press.yaml"), "--cell", "30 mm", "--vtu", path, "--json");
            Assert.Equal(1, code);
            Assert.Equal([path], Directory.EnumerateFiles(folder));
            JsonElement centred = JsonDocument.Parse(text).RootElement.GetProperty("cases")[0];
            var file = new VtuFile(File.ReadAllBytes(path));
            Rig rig = PressOnDisk.Open(Run.Example("railing-shop.press.yaml")).Rig!;
            PressSolid solid = PressSolid.Of(rig);

            Assert.All(Enumerable.Range(0, file.Cells.Length), c => Assert.True(file.LeastJacobian(c) > 0, $"cell {c} is turned inside out"));
            double[] part = file.Numbers("CellData/part");
            for (int p = 0; p < solid.Parts.Count; p++)
                Near.Relative(Volume(solid.Parts[p]), Enumerable.Range(0, file.Cells.Length).Where(c => part[c] == p).Sum(file.Volume), 0.005, $"steel of {solid.Parts[p].Name}, m³");

            // the dies' faces, in the file as in the answer
            Vector[] moved = file.Vectors("PointData/displacement");
            double opening = Rise(file, moved, part, solid.Upper, 1) - Rise(file, moved, part, solid.Lower, -1);
            Near.Relative(centred.GetProperty("grids")[1].GetProperty("openingMm").GetDouble(), opening * rig.Wanted * 1e3, 1e-4, "opening of the finer grid, mm");

            double[][] stress = file.Rows("CellData/stress");
            double[] equivalent = file.Numbers("CellData/equivalent stress");
            Assert.All(stress.Zip(equivalent), s => Near.Relative(Mises(s.First), s.Second, 1e-9, "equivalent stress"));
            // the column below the upper arm carries the ram's force as a pull and its moment: F, and F times its lever, by statics alone
            Near.Relative(1, Pull(file, stress, part, Array.FindIndex([.. solid.Parts], p => p.Name == "column"), (solid.UpperAt.Z + solid.LowerAt.Z) / 2), 0.02, "pull in the column for one newton");
        }
        finally
        {
            Directory.Delete(folder, true);
        }
    }

    // boxes of a part lie side by side, and so do the cuts
    private static double Volume(SolidPart part) =>
        part.Blocks.Sum(b => Size(b) - part.Cuts.Sum(c => Size(new Cuboid(
            Math.Max(b.X0, c.X0), Math.Min(b.X1, c.X1), Math.Max(b.Y0, c.Y0), Math.Min(b.Y1, c.Y1), Math.Max(b.Z0, c.Z0), Math.Min(b.Z1, c.Z1)))));

    private static double Size(Cuboid b) => Math.Max(0, b.X1 - b.X0) * Math.Max(0, b.Y1 - b.Y0) * Math.Max(0, b.Z1 - b.Z0);

    // mean rise of the cells' faces that lie under a die, each by its area; the steel is above (1) or below (−1) its face
    private static double Rise(VtuFile file, Vector[] moved, double[] part, IReadOnlyList<DieFace> dies, int above)
    {
        int[] low = above > 0 ? [0, 1, 2, 3] : [4, 5, 6, 7];
        double area = 0, sum = 0;
        foreach (DieFace die in dies)
            foreach ((int[] cell, int of) in file.Cells.Select((c, i) => (c, (int)part[i])))
            {
                Vector[] at = [.. low.Select(i => file.Points[cell[i]])];
                Vector middle = 0.25 * (at[0] + at[1] + at[2] + at[3]);
                if (of != die.Part || at.Any(p => Math.Abs(p.Z - die.At) > 1e-6) || !die.On.Any(b => b.X0 < middle.X && middle.X < b.X1 && b.Y0 < middle.Y && middle.Y < b.Y1))
                    continue;
                double here = Math.Abs((at[2].X - at[0].X) * (at[2].Y - at[0].Y));
                (area, sum) = (area + here, sum + here * low.Average(i => moved[cell[i]].Z));
            }

        return sum / area;
    }

    private static double Pull(VtuFile file, double[][] stress, double[] part, int of, double height) =>
        Enumerable.Range(0, file.Cells.Length).Where(c => part[c] == of && file.Points[file.Cells[c][0]].Z <= height && height < file.Points[file.Cells[c][4]].Z)
            .Sum(c => stress[c][2] * file.Volume(c) / (file.Points[file.Cells[c][4]].Z - file.Points[file.Cells[c][0]].Z));

    private static double Mises(double[] s) =>
        Math.Sqrt(((s[0] - s[1]) * (s[0] - s[1]) + (s[1] - s[2]) * (s[1] - s[2]) + (s[2] - s[0]) * (s[2] - s[0])) / 2 + 3 * (s[3] * s[3] + s[4] * s[4] + s[5] * s[5]));

    [Theory, InlineData("soon"), InlineData("3 t"), InlineData("0.1 mm"), InlineData("2 m")]
    public void ACellThatIsNoneIsTheInputsFault(string cell) =>
        Assert.Equal(2, Run.Command("solid", Run.Example("railing-shop.press.yaml"), "--cell", cell).Code);

    [Fact]
    public void AFileThatCannotBeWrittenIsSaid()
    {
        (int code, string text) = Run.Command("solid", Run.Example("railing-shop.press.yaml"), "--cell", "40 mm", "--vtu", "/no/such/folder/press.vtu");

        Assert.Equal(2, code);
        Assert.Contains("could not be written", text);
        Assert.False(Directory.Exists("/no/such"));
    }
}
