using System.Text.Json;
using System.Xml.Linq;

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
        Assert.InRange(centred.GetProperty("solver").GetProperty("reactionN").GetDouble(), 0, 0.1);
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

    [Fact]
    public void TheGridIsWrittenForViewers()
    {
        string file = Path.Combine(Directory.CreateTempSubdirectory().FullName, "press.vtu");
        Assert.Equal(1, Run.Command("solid", Run.Example("railing-shop.press.yaml"), "--cell", "30 mm", "--vtu", file).Code);
        byte[] bytes = File.ReadAllBytes(file);
        int raw = bytes.AsSpan().IndexOf("_"u8);
        for (; !bytes.AsSpan(raw - 4, 4).SequenceEqual("w\">\n"u8) && raw < bytes.Length; raw++)
        {
        }

        // what stands before the raw data, closed, is XML; each array starts with its length in bytes where its offset says
        string head = System.Text.Encoding.ASCII.GetString(bytes, 0, raw) + "</AppendedData></VTKFile>";
        XElement piece = XDocument.Parse(head).Root!.Descendants("Piece").Single();
        int points = (int)piece.Attribute("NumberOfPoints")!, cells = (int)piece.Attribute("NumberOfCells")!;
        var expected = new Dictionary<string, long>
        {
            ["displacement"] = 24L * points,
            ["points"] = 24L * points,
            ["stress"] = 48L * cells,
            ["equivalent stress"] = 8L * cells,
            ["part"] = 4L * cells,
            ["connectivity"] = 32L * cells,
            ["offsets"] = 4L * cells,
            ["types"] = cells,
        };
        XElement[] arrays = [.. piece.Descendants("DataArray")];
        Assert.Equal(expected.Keys.Order(), arrays.Select(a => a.Attribute("Name")!.Value).Order());
        Assert.All(arrays, a => Assert.Equal(expected[a.Attribute("Name")!.Value], BitConverter.ToInt64(bytes, raw + 1 + (int)a.Attribute("offset")!)));
    }

    [Theory, InlineData("soon"), InlineData("3 t"), InlineData("0.1 mm"), InlineData("2 m")]
    public void ACellThatIsNoneIsTheInputsFault(string cell) =>
        Assert.Equal(2, Run.Command("solid", Run.Example("railing-shop.press.yaml"), "--cell", cell).Code);

    [Fact]
    public void AFileThatCannotBeWrittenIsSaid()
    {
        (int code, string text) = Run.Command("solid", Run.Example("railing-shop.press.yaml"), "--cell", "40 mm", "--vtu", "/no/such/folder/press.vtu");

        Assert.Equal(2, code);
        Assert.Contains("could not be written", text);
    }
}
