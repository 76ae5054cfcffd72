using Ramwright.Fabrication;
using Ramwright.Files;
using Ramwright.Frame;
using Ramwright.Geometry;
using Ramwright.Presses;
using Ramwright.Stock;
using Ramwright.Workings;

namespace Ramwright.Tests.Fabrication.Parts;

public class PartListTest
{
    public static TheoryData<string> Examples() => [.. Directory.GetFiles(Repository.Folder("examples"), "*.press.yaml").Select(f => Path.GetFileName(f)!)];

    private static Rig Example(string name, Func<string, string>? edit = null)
    {
        string file = Path.Combine(Repository.Folder("examples"), name), text = File.ReadAllText(file);
        PressOnDisk press = PressOnDisk.Read(edit?.Invoke(text) ?? text, file, name);
        Assert.True(press.Faults.Count == 0, FaultText.All(press.Faults));
        return press.Rig!;
    }

    [Theory, MemberData(nameof(Examples))]
    public void MembersWeighWhatTheFrameWeighs(string example)
    {
        Rig rig = Example(example);
        FrameBody body = FrameBody.Of(rig);
        PartList list = PartList.Of(rig);

        string[] members = [.. body.Pieces.Select(p => p.Member.Part).Distinct()];
        double steel = list.Parts.Where(p => p.Origin == PartOrigin.Described && members.Contains(p.Of) && p is LengthPart).Sum(p => p.Count * p.Mass!.Value);
        // plates across tie rods are drawn with their holes, the frame without
        double plates = body.Pieces.Where(p => list.Plates.Any(q => q.Of == p.Member.Part && q.Name == p.Member.Part)).Sum(p => p.Mass);

        Assert.Equal(body.Mass, steel + plates, 1e-9 * body.Mass);
    }

    [Theory, MemberData(nameof(Examples))]
    public void EveryPartIsNamedMarkedAndReckoned(string example)
    {
        PartList list = PartList.Of(Example(example));

        Assert.Equal(list.Parts.Count, list.Parts.Select(p => p.Mark).Distinct().Count());
        Assert.All(list.Parts, p => Assert.True(p.Count > 0 && p.Name.Length > 0 && p.Of.Length > 0));
        Assert.All(list.Plates, p => Assert.True(p.Mass > 0 && double.IsFinite(p.Mass!.Value) && p.Thickness > 0 && p.Outline.Area() > 0));
        Assert.All(list.Lengths, l => Assert.True(l.Mass > 0 && l.Length > 0));
        // what no one described is said to be a proposal, with its rule
        Assert.All(list.Parts.Where(p => p.Origin == PartOrigin.Proposed && p is not BoughtPart), p => Assert.NotEmpty(p.Rule));
        Assert.True(list.Lifting.Mass >= list.Lifting.Placed && list.Lifting.Placed > 0);
        Assert.NotEmpty(list.Lifting.Cautions);
    }

    [Theory, MemberData(nameof(Examples))]
    public void WhatWasReckonedIsShownAndFollowsFromItsText(string example)
    {
        int shown = 0;
        foreach (Part part in PartList.Of(Example(example)).Parts.Where(p => p.Work is not null))
        {
            var working = new Working();
            part.Work!(working);
            WorkingCheck.Holds(working);
            Assert.NotEmpty(working.Steps);
            // what is proposed is no thinner than what it was reckoned to need
            if (part is PlatePart { Bends.Count: 0 } plate)
                Assert.True(plate.Thickness >= working.Steps[^1].Si, $"{part.Name}: {plate.Thickness} m, {working.Steps[^1].Si} m reckoned");
            shown++;
        }

        Assert.True(shown > 0 || example.StartsWith("drainage", StringComparison.Ordinal), "nothing was reckoned");
    }

    [Fact]
    public void TheBoatyardsPressHangsLevelOverTheRam()
    {
        PartList list = PartList.Of(Example("wherry-yard.press.yaml"));

        Assert.Equal(0, list.Lifting.Centre.X, 1e-9);
        Assert.Equal(0, list.Lifting.Centre.Y, 1e-9);
        Assert.Equal(list.Lifting.Centre.X, list.Lifting.Eye.X);
        Assert.True(list.Lifting.Eye.Z > list.Lifting.Centre.Z);
    }

    [Fact]
    public void LappedBoltsGoThroughTheWebsOfBothTheirParts()
    {
        PartList list = PartList.Of(Example("wherry-yard.press.yaml"));

        LengthPart crown = list.Lengths.Single(l => l.Of == "crown"), upright = list.Lengths.Single(l => l.Of == "upright");
        Assert.Equal((2, 8), (crown.Count, crown.Holes.Count));
        Assert.Equal((4, 8), (upright.Count, upright.Holes.Count));
        // pitch 90 along the crown, gauge 110 along the upright; the upright is 160 deep and stands at the crown's end
        Assert.Equal([0.035, 0.125, 0.845, 0.935], crown.Holes.Select(h => h.Along).Distinct(), new Within(1e-9));
        Assert.Equal([-0.055, 0.055], crown.Holes.Select(h => h.Aside).Distinct(), new Within(1e-9));
        Assert.Equal([-0.045, 0.045], upright.Holes.Select(h => h.Aside).Distinct(), new Within(1e-9));
        Assert.All(crown.Holes, h => Assert.Equal(("web", 0.026, 0.009), (h.Face, Math.Round(h.Diameter, 6), Math.Round(h.Wall, 6))));
        Assert.Contains(list.Bought, b => b.Ask == "bolt M24 x 220, 8.8, nut and two washers" && b.Count == 8);
    }

    [Fact]
    public void BoltsThatPassAnAngleByAreSaid()
    {
        PartList list = PartList.Of(Example("salvage.press.yaml", t => t.Replace("2 x UPN 140 toes together, apart: 60 mm", "2 x L 80x80x10, apart: 20 mm", StringComparison.Ordinal)));

        Assert.Contains(list.Misfits, m => m.Contains("crown joint", StringComparison.Ordinal) && m.Contains("pass the upright by", StringComparison.Ordinal));
        Assert.DoesNotContain(list.Misfits, m => m.Contains("pass the crown by", StringComparison.Ordinal));
    }

    [Fact]
    public void BoltsThatCrossAGapAreSaid()
    {
        Assert.Empty(PartList.Of(Example("salvage.press.yaml")).Misfits);

        // back to back their webs stand 60 mm apart, 60 mm from the rails
        PartList list = PartList.Of(Example("salvage.press.yaml", t => t.Replace("UPN 140 toes together", "UPN 140", StringComparison.Ordinal)));

        Assert.Equal(2, list.Misfits.Count(m => m.Contains("cross 53 mm of air between", StringComparison.Ordinal)));
    }

    [Fact]
    public void TheColumnHasASlotForEachArmAndThePlatesTheirRods()
    {
        LengthPart column = PartList.Of(Example("railing-shop.press.yaml")).Lengths.Single(l => l.Of == "column");
        Assert.Equal(2, column.Holes.Count(h => h.Across > 0));
        Assert.All(column.Holes, h => Assert.True(h.Diameter > 0.2 && h.Across > 0.03));

        PlatePart plate = PartList.Of(Example("drainage-mill-puller.press.yaml")).Plates.First();
        Assert.Equal(5, plate.Holes.Count);
        Assert.Equal(0.039, plate.Holes[0].Diameter, 1e-12);
    }

    [Fact]
    public void AGussetOfTheDrawingIsThePlateThatIsCut()
    {
        Rig rig = Example("wherry-yard.press.yaml", t => t
            .Replace("2 x UPN 220, apart: 160 mm", "HEB 220", StringComparison.Ordinal).Replace("2 x UPN 160 toes together, apart: 30 mm", "HEB 200", StringComparison.Ordinal)
            .Replace("crown-joint: { kind: bolt, fit: lapped, thread: M24, class: 8.8, count: 4, pitch: 90 mm, gauge: 110 mm, edge: 50 mm, shear-planes: 2 }",
                "crown-joint: { kind: weld, weld: { leg: 10 mm }, gusset: { leg-along: 120 mm, leg-up: 150 mm, thickness: 12 mm, count: 2, steel: S275, weld: { leg: 6 mm } } }", StringComparison.Ordinal)
            .Replace("bed-joint: { kind: bolt, fit: lapped, thread: M24, class: 8.8, count: 4, pitch: 90 mm, gauge: 110 mm, edge: 50 mm, shear-planes: 2 }", "bed-joint: { kind: weld, weld: { leg: 10 mm } }", StringComparison.Ordinal));

        PartList list = PartList.Of(rig);

        PlatePart gusset = list.Plates.Single(p => p.Name.StartsWith("gusset", StringComparison.Ordinal));
        Assert.Equal((4, 0.012), (gusset.Count, gusset.Thickness));
        Assert.Equal(0.12 * 0.15 / 2, gusset.Outline.Area(), 1e-12);
        Assert.Equal(FrameBody.Of(rig).Pieces.OfType<GussetPlate>().Sum(g => g.Mass), gusset.Count * gusset.Mass!.Value, 1e-9);
    }

    [Fact]
    public void OwnPartsAreAddedOrPutInAnothersPlace()
    {
        PartList list = PartList.Of(Example("wherry-yard.press.yaml", t => t + """

            parts:
              - { kind: plate, name: my bolster, in-place-of: bolster, thickness: 50 mm, steel: S355, width: 300 mm, height: 320 mm, holes: [{ right: 30 mm, up: 30 mm, diameter: 18 mm, for: pin }] }
              - { kind: bent, name: rack, count: 2, thickness: 5 mm, steel: S235, width: 100 mm, legs: [{ length: 80 mm }, { length: 60 mm }] }
              - { kind: length, name: rail, section: flat 60x10, length: 700 mm, steel: S235 }
              - { kind: plate, name: hook, thickness: 10 mm, steel: S235, corners: [{ right: 0 mm, up: 0 mm }, { right: 120 mm, up: 0 mm, radius: 10 mm }, { right: 0 mm, up: 80 mm }] }
              - { kind: plate, name: nothing like it, in-place-of: rudder, thickness: 10 mm, diameter: 80 mm }
            """));

        PlatePart bolster = list.Plates.Single(p => p.Of == "bolster");
        Assert.Equal(("my bolster", 0.05, PartOrigin.Listed, 1), (bolster.Name, bolster.Thickness, bolster.Origin, bolster.Holes.Count));
        Assert.Single(bolster.Places);
        Assert.Equal(2, list.Plates.Single(p => p.Name == "rack").Count);
        Assert.Single(list.Plates.Single(p => p.Name == "rack").Bends);
        Assert.Equal(0.7, list.Lengths.Single(l => l.Name == "rail").Length, 1e-12);
        Assert.Contains(list.Misfits, m => m.Contains("rudder", StringComparison.Ordinal));
    }

    [Fact]
    public void AHoleThatRunsOutOfItsPlateIsSaidAndNotCut()
    {
        PartList list = PartList.Of(Example("wherry-yard.press.yaml", t => t + """

            parts:
              - { kind: plate, name: strip, thickness: 10 mm, steel: S235, width: 100 mm, height: 20 mm, holes: [{ right: 5 mm, up: 10 mm, diameter: 12 mm }] }
            """));

        Assert.Contains(list.Misfits, m => m.Contains("runs out of the plate", StringComparison.Ordinal));
        Assert.Empty(list.Plates.Single(p => p.Name == "strip").Holes);
    }

    /// <summary>Whatever presses can be made up of the keys there are, their parts can be drawn up and are finite.</summary>
    [Fact]
    public void EveryPressThatCanBeHasAListOfParts()
    {
        Shelf shelf = StockTables.Built;
        int drawn = 0;
        for (uint seed = 1; seed <= 250; seed++)
        {
            Press press = new MadeUpPress(seed, shelf).ThatCouldBe();
            Rig rig;
            try
            {
                if (PressRules.Of(press, shelf).Any())
                    continue;
                rig = Resolver.Resolve(press, shelf);
                FramePlan.Of(rig);
            }
            catch (Exception e) when (e is PressFaultsException or ArgumentException)
            {
                continue;
            }

            PartList list = PartList.Of(rig);
            drawn++;
            Assert.All(list.Parts, p => Assert.True(p.Mass is null || (p.Mass > 0 && double.IsFinite(p.Mass.Value)), $"seed {seed}: {p.Name} weighs {p.Mass}"));
            Assert.True(double.IsFinite(list.Lifting.Centre.Z), $"seed {seed}");
            foreach (PlatePart plate in list.Plates)
                Ramwright.Fabrication.Plates.PlateCuts.Of(plate, Ramwright.Fabrication.Plates.CutStyle.Plain);
        }

        Assert.True(drawn > 60, $"only {drawn} presses could be drawn up");
    }

    private sealed class Within(double hair) : IEqualityComparer<double>
    {
        public bool Equals(double x, double y) => Math.Abs(x - y) <= hair;

        public int GetHashCode(double x) => 0;
    }
}
