using System.Text.Json;
using Ramwright.Fabrication;
using Ramwright.Fabrication.Nesting;
using Ramwright.Fabrication.Plates;
using Ramwright.Files;
using Ramwright.Files.Making;
using Ramwright.Geometry;
using Ramwright.Presses;
using Ramwright.Tests.Fabrication.Nesting;
using Ramwright.Tests.Fabrication.Outside;

namespace Ramwright.Tests.Fabrication.Plates;

/// <summary>Cut files read back by ezdxf: what it finds in them must be what we drew.</summary>
public class CutFilesTest
{
    public static TheoryData<string> Examples() => [.. Directory.GetFiles(Repository.Folder("examples"), "*.press.yaml").Select(f => Path.GetFileName(f)!)];

    private static readonly PlatePart Fancy = new()
    {
        Mark = "P9",
        Name = "fancy",
        Of = "test",
        Count = 1,
        Steel = Puzzle.S275,
        Thickness = 0.01,
        Blank = new Outline([Loops.Rounded((0, 0, 0.01), (0.3, 0, 0.02), (0.3, 0.1, 0), (0.15, 0.08, 0.015), (0.1, 0.2, 0.03), (0, 0.2, 0))]),
        Holes = [new PlateHole(0.05, 0.05, 0.03, "x"), new PlateHole(0.25, 0.05, 0.012, "y")],
    };

    [OutsideTheory, MemberData(nameof(Examples))]
    public void EveryPlateOfAnExampleReadsBackAsItIs(string example)
    {
        PlatePart[] plates = [.. PartList.Of(PressOnDisk.Open(Path.Combine(Repository.Folder("examples"), example)).Rig!).Plates];

        JsonElement[] read = Read(plates.Select(p => PlateCuts.Of(p, CutStyle.Plain)));

        Assert.All(plates.Zip(read), p => IsTheSame(p.First, p.Second));
    }

    [OutsideFact]
    public void ArcsStayArcsAndHolesStayHoles()
    {
        JsonElement read = Read([PlateCuts.Of(Fancy, CutStyle.Plain)])[0];

        IsTheSame(Fancy, read);
        Assert.Equal(4, read.GetProperty("arcs").GetInt32());
    }

    [OutsideFact]
    public void ABentPlateHasItsBendLinesAndTheLengthThatIsReckoned()
    {
        PlatePart bent = new BentPlate(0.1, 0.006, [0.08, 0.12, 0.05], [Math.PI / 2, -Math.PI / 3], 0.006).AsPart([]) with { Mark = "P1", Steel = Puzzle.S275 };

        JsonElement read = Read([PlateCuts.Of(bent, CutStyle.Plain)])[0];

        IsTheSame(bent, read);
        Assert.Equal(2, Layers(read).Count(l => l == "BEND"));
        Assert.Equal(1000 * BendAllowance.Flat([0.08, 0.12, 0.05], [Math.PI / 2, Math.PI / 3], 0.006, 0.006), read.GetProperty("extmax")[0].GetDouble(), 1e-4);
    }

    [OutsideFact]
    public void KerfMakesRoomOutsideAndInside()
    {
        const double kerf = 0.0016;
        JsonElement read = Read([PlateCuts.Of(Fancy, new CutStyle(kerf, 0, Marks: false))])[0];

        Assert.Equal(0, read.GetProperty("open").GetInt32());
        Assert.True(read.GetProperty("valid").GetBoolean());
        // what the path goes round is wider by half a kerf everywhere: area + perimeter d, and corners less than (2π + corners) d²
        double d = kerf / 2, grown = Fancy.Outline.Area() + Fancy.Outline.Perimeter() * d;
        Assert.InRange(read.GetProperty("area").GetDouble() * 1e-6, grown - 20 * d * d, grown + 20 * d * d);
    }

    [OutsideFact]
    public void LeadsComeBeforeTheirCutsAndInsideBeforeOutside()
    {
        string[] layers = Layers(Read([PlateCuts.Of(Fancy, new CutStyle(0, 0.004))])[0]);

        Assert.Equal(["MARK", "LEAD", "CUT-INSIDE", "LEAD", "CUT-INSIDE", "LEAD", "CUT-OUTSIDE"], layers.SkipWhile(l => l == "MARK").Prepend("MARK"));
    }

    [OutsideFact]
    public void NoPartOfANestOverlapsAnotherOrLeavesItsRemnantAsShapelySeesIt()
    {
        RigSheet[] sheets =
        [
            new("odd", 0.01, Puzzle.S275, [new Corner(0, 0), new Corner(0.7, 0), new Corner(0.7, 0.3), new Corner(0.4, 0.5), new Corner(0, 0.5)], 1, false),
            new("round", 0.01, Puzzle.S275, Loops.Circle(0.6), 1, false),
            Puzzle.Sheet(1.0, 0.5, 0, buy: true),
        ];
        PlatePart[] parts =
        [
            Fancy with { Count = 4 }, Puzzle.Plate("A", Loops.Circle(0.12), 5), Puzzle.Plate("B", Loops.Rectangle(0, 0.2, 0, 0.06), 6),
            Puzzle.Plate("C", [new Corner(0, 0), new Corner(0.15, 0), new Corner(0, 0.15)], 6),
        ];
        NestGroup nest = NestPlan.Of(parts, sheets, RigCutting.Usual with { TurnStep = Math.PI / 4 }, new NestEffort(15));
        Assert.Empty(nest.Without);

        JsonElement[] read = Read(nest.Nests.Select(n => n.Cuts("N", CutStyle.Plain)));

        Assert.Equal(parts.Sum(p => p.Count), read.Sum(r => r.GetProperty("outside").GetInt32()));
        Assert.All(read, r =>
        {
            Assert.Equal(0, r.GetProperty("errors").GetInt32());
            Assert.Equal(0, r.GetProperty("overlap").GetDouble());
            Assert.Equal(0, r.GetProperty("beyond").GetDouble(), 1e-6);
            Assert.True(r.GetProperty("apart").GetDouble() >= 8, $"{r.GetProperty("apart")} mm from part to part");
            Assert.True(r.GetProperty("edge").GetDouble() >= 10 - 1e-6, $"{r.GetProperty("edge")} mm to the edge");
            string[] layers = Layers(r);
            Assert.True(Array.LastIndexOf(layers, "CUT-INSIDE") < Array.IndexOf(layers, "CUT-OUTSIDE"));
        });
        Assert.Equal(nest.Nests.Sum(n => n.Parts.Sum(p => p.Part.Outline.Area())), read.Sum(r => r.GetProperty("area").GetDouble()) * 1e-6, 1e-9);
    }

    private static void IsTheSame(PlatePart plate, JsonElement read)
    {
        Assert.Equal("AC1009", read.GetProperty("version").GetString());
        Assert.Equal(0, read.GetProperty("errors").GetInt32());
        Assert.Equal(0, read.GetProperty("fixes").GetInt32());
        Assert.Equal(0, read.GetProperty("open").GetInt32());
        Assert.True(read.GetProperty("valid").GetBoolean());
        Assert.Equal(plate.Outline.Area(), read.GetProperty("area").GetDouble() * 1e-6, 1e-7 * plate.Outline.Area());
        // and the mass from what was read
        Assert.Equal(plate.Mass!.Value, read.GetProperty("area").GetDouble() * 1e-6 * plate.Thickness * 7850, 1e-6);
        Assert.Equal(plate.Outline.Loops.Count - 1, read.GetProperty("inside").GetInt32());
        Assert.Equal(plate.Holes.Count(h => !h.MarkOnly), read.GetProperty("inside").GetInt32());
        Assert.Equal(1, read.GetProperty("outside").GetInt32());
        // millimetres: the file is as large as the part, from zero
        Extents e = plate.Outline.Extents();
        Assert.Equal(0, read.GetProperty("extmin")[0].GetDouble(), 1e-6);
        Assert.Equal(0, read.GetProperty("extmin")[1].GetDouble(), 1e-6);
        Assert.Equal(1000 * e.Width, read.GetProperty("extmax")[0].GetDouble(), 1e-5);
        Assert.Equal(1000 * e.Height, read.GetProperty("extmax")[1].GetDouble(), 1e-5);
        string[] layers = Layers(read);
        Assert.Contains("MARK", layers);
        Assert.True(Array.LastIndexOf(layers, "MARK") < layers.Index().First(l => l.Item.StartsWith("CUT", StringComparison.Ordinal)).Index);
        Assert.Equal("CUT-OUTSIDE", layers[^1]);
    }

    private static string[] Layers(JsonElement read) => [.. read.GetProperty("order").EnumerateArray().Select(l => l.GetString()!)];

    private static JsonElement[] Read(IEnumerable<CutSheet> sheets)
    {
        string folder = Directory.CreateTempSubdirectory("ramwright-cuts-").FullName;
        try
        {
            var files = new List<string>();
            foreach (CutSheet sheet in sheets)
            {
                files.Add(Path.Combine(folder, $"{files.Count}.dxf"));
                File.WriteAllText(files[^1], Dxf.Write(sheet));
            }

            return [.. Python.Script("read_cuts.py", [.. files]).EnumerateArray()];
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }
}
