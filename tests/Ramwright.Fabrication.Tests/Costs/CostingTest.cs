using Ramwright.Fabrication;
using Ramwright.Fabrication.Bars;
using Ramwright.Fabrication.Costs;
using Ramwright.Fabrication.Nesting;
using Ramwright.Fabrication.Welding;
using Ramwright.Ladders;

namespace Ramwright.Tests.Costs;

public class CostingTest
{
    private const string Said = """
        costs:
          currency: crowns
          steel-per-kg: 2
          scrap-per-kg: 0.25
          filler-per-kg: 8
          oil-per-litre: 4
          an-hour: 30
          bought:
            - { name: cylinder, price: 400 }
            - { name: "bolt M24", price: 5 }
            - { name: power pack, in-hand: yes }
            - { name: paint, price: 25, count: 2 }
          work:
            - { name: sawing and drilling, time: 12 h }
          instead: { name: a bought one of 30 t, price: 4000 }
        jobs:

        """;

    private static (CostSheet Sheet, PartList Parts) Sheet(string said, FromRack? rack = null)
    {
        PressCheck check = Tests.Presses.Check("wherry-yard", ("jobs:\n", said));
        PartList parts = PartList.Of(check.Rig);
        return (Costing.Of(check, parts, WeldPlan.Of(check), rack ?? FromRack.Nothing), parts);
    }

    [Fact]
    public void TheSumIsThatOfItsLines()
    {
        (CostSheet sheet, PartList parts) = Sheet(Said);
        double kg = parts.Parts.Where(p => p is not BoughtPart).Sum(p => p.Count * p.Mass!.Value);
        Near.Relative(2 * kg, sheet.Of(CostGroup.Steel), 1e-9);
        int bolts = parts.Bought.Where(b => b.Ask.Contains("bolt M24", StringComparison.Ordinal)).Sum(b => b.Count);
        Assert.Equal(16, bolts);
        double oil = sheet.Lines.First(l => l.Unit == "L").Total!.Value;
        Near.Relative(2 * kg + 400 + 16 * 5 + 50 + oil, sheet.Outlay, 1e-9);
        Near.Relative(sheet.Outlay + 12 * 30, sheet.Total, 1e-9);
        Near.Relative(4000 - sheet.Outlay, sheet.Saved!.Value, 1e-12);
        Near.Relative(sheet.Saved.Value / 12, sheet.SavedAnHour!.Value, 1e-12);
        Assert.Equal("crowns", sheet.Currency);
    }

    [Fact]
    public void WhatHasNoPriceIsLeftOpenAndNamed()
    {
        (CostSheet sheet, _) = Sheet(Said);
        Assert.Contains(sheet.WithoutPrice, l => l.What.Contains("gauge", StringComparison.Ordinal));
        Assert.All(sheet.WithoutPrice, l => Assert.Null(l.Total));
        (CostSheet bare, _) = Sheet("jobs:\n");
        Assert.Equal(0, bare.Total);
        Assert.Equal(bare.Lines.Count, bare.WithoutPrice.Count);
        Assert.Null(bare.Saved);
    }

    [Fact]
    public void RemnantsCountAsScrap()
    {
        (CostSheet bought, PartList parts) = Sheet(Said);
        Part one = parts.Lengths.First();
        double all = one.Count * one.Mass!.Value;
        (CostSheet half, _) = Sheet(Said, FromRack.Nothing with { Own = new Dictionary<string, double> { [one.Mark] = all / 2 } });
        Near.Relative(bought.Outlay - all / 2 * (2 - 0.25), half.Outlay, 1e-9);
    }

    [Fact]
    public void WholeBarsAndSheetsThatAreBoughtArePaidForWhole()
    {
        PressCheck check = Tests.Presses.Check("wherry-yard", ("jobs:\n", Said));
        PartList parts = PartList.Of(check.Rig);
        // one bar of 6 m for each pair of crown and bed, bought; nothing else listed
        var rig = check.Rig with { Bars = [.. check.Rig.Bars.Where(b => b.Buy && b.Section.Name == "UPN 220")], Sheets = [] };
        Assert.Single(rig.Bars);
        var rack = FromRack.Of(BarPlan.Of(parts, rig), NestPlan.Of(parts, rig));
        double pieces = parts.Lengths.Where(l => l.Section.Name == "UPN 220").Sum(l => l.Count * l.Mass!.Value), bar = 6 * rig.Bars[0].Section.Mass;
        Assert.Empty(rack.Own);
        Near.Relative(bar - pieces, Assert.Single(rack.Over).Mass, 1e-9);
        CostSheet sheet = Costing.Of(check, parts, WeldPlan.Of(check), rack);
        double others = parts.Parts.Where(p => p is not BoughtPart && !(p is LengthPart { Section.Name: "UPN 220" })).Sum(p => p.Count * p.Mass!.Value);
        Near.Relative(2 * (bar + others), sheet.Of(CostGroup.Steel), 1e-9);
    }

    [Fact]
    public void BarsThatAreNotListedAreShownCutToSizeAndBoughtWhole()
    {
        PressCheck check = Tests.Presses.Check("wherry-yard", ("jobs:\n", Said));
        PartList parts = PartList.Of(check.Rig);
        var rig = check.Rig with { Bars = [], Sheets = [] };
        var bars = BarPlan.Of(parts, rig);
        CostSheet sheet = Costing.Of(check, parts, WeldPlan.Of(check), FromRack.Of(bars, NestPlan.Of(parts, rig)));
        double whole = bars.Groups.Sum(g => g.Bars.Sum(b => b.Bar.Length * g.Section.Mass)), pieces = parts.Lengths.Sum(l => l.Count * l.Mass!.Value);
        Near.Relative(whole - pieces, sheet.OverIfWhole, 1e-9);
        Near.Relative(sheet.Outlay + 2 * (whole - pieces), sheet.OutlayWhole!.Value, 1e-9);
        Assert.Contains("unlisted bars bought whole", Ramwright.Files.Dossier.PaperFiles.Costs(sheet), StringComparison.Ordinal);
    }

    [Fact]
    public void TheCentreOfGravityIsMeasuredFromTheFloor()
    {
        PartList parts = PartList.Of(Tests.Presses.Check("wherry-yard").Rig);
        PlatePart foot = parts.Plates.First(p => p.Of == "feet");
        Near.Relative(parts.Lifting.Centre.Z - (foot.Places[0].Z - foot.Thickness / 2), parts.Lifting.Height, 1e-9);
        Assert.InRange(parts.Lifting.Height, 0.3, 1.5);
    }

    [Fact]
    public void ThePriceOfAKilogramStandsInWherePricePerKgIsSaid()
    {
        PressCheck check = Tests.Presses.Check("wherry-yard", ("jobs:\n", "price-per-kg: 3\njobs:\n"));
        Assert.Equal(3, check.Rig.Costs.SteelPerKg);
    }
}
