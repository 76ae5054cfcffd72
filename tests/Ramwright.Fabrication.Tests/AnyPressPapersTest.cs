using System.Globalization;
using Ramwright.Fabrication.Drilling;
using Ramwright.Fabrication.Welding;
using Ramwright.Files;
using Ramwright.Files.Drawings;
using Ramwright.Frame;
using Ramwright.Ladders;
using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Stock;
using Ramwright.Workings;

namespace Ramwright.Tests;

/// <summary>Whole presses made up from the records' own bounds: whatever can be checked can be planned, drawn and labelled, in finite numbers.</summary>
public class AnyPressPapersTest
{
    private static readonly Shelf Shelf = StockTables.Built;

    [Fact]
    public void WhateverCanBeCheckedCanBePlanned()
    {
        int planned = 0, welded = 0;
        for (uint seed = 1; seed <= 1200; seed++)
        {
            Press press = new MadeUpPress(seed, Shelf).ThatCouldBe();
            PressCheck check;
            try
            {
                if (PressRules.Of(press, Shelf).Any())
                    continue;
                check = PressCheck.Of(Resolver.Resolve(press, Shelf));
            }
            catch (Exception refused) when (refused is PressFaultsException or FrameMovesException or ArgumentException)
            {
                continue;
            }

            planned++;
            Plans(check, seed, ref welded);
            Pictures(check, seed);
        }

        Assert.True(planned > 150 && welded > 30, $"{planned} planned, {welded} of them welded");
    }

    private static void Plans(PressCheck check, uint seed, ref int welded)
    {
        WeldPlan plan = WeldPlan.Of(check);
        if (plan.Lines.Count > 0)
            welded++;
        foreach (WeldLine line in plan.Lines)
        {
            foreach (double? value in (double?[])[line.Travel, line.HeatInput, line.Deposit, line.Filler, line.ArcTime, line.WorkTime, line.Seam.Length, line.Seam.Area])
                Assert.True(double.IsFinite(value!.Value) && value > 0, $"seed {seed}: {line}");
            foreach (double? value in (double?[])[line.Preheating.Temperature, line.CoolingTime, line.HeatUp?.Time, line.HeatUp?.Fuel, line.Gas])
                Assert.True(value is null || (double.IsFinite(value.Value) && value >= 0), $"seed {seed}: {line}");
            Assert.True(line.Runs >= 1);
            Assert.True(line.Preheating.Temperature is null or (>= 20 and < 450), $"seed {seed}: {line.Preheating}");
            // no arc is advised on steel that nobody knows
            if (line.Seam.Standing.Composition is null || line.Seam.Through.Composition is null)
                Assert.True(line.Preheating.Advice is WeldAdvice.TestFirst or WeldAdvice.DoNotWeld, $"seed {seed}: {line.Seam.Name}");
            var w = new Working();
            WeldLine.Of(line.Seam, check.Rig.Welding, w: w);
            WorkingCheck.Holds(w);
        }

        foreach (BoltRow bolt in DrillingTable.Of(check).Bolts)
        {
            Assert.True(bolt.Count >= 1);
            if (bolt.Setting is { } s)
                Assert.True(s.Torque > 0 && s.Least > 0 && s.Least < s.Usual && s.Usual < s.Most && double.IsFinite(s.Most), $"seed {seed}: {bolt}");
            if (bolt.TapDrill is { } tap)
                Assert.True(tap > 0.5 * bolt.Thread.D && tap < bolt.Thread.D && bolt.HoleDepth > bolt.ThreadDepth, $"seed {seed}: {bolt}");
        }
    }

    private static void Pictures(PressCheck check, uint seed)
    {
        foreach (UnitSystem units in Enum.GetValues<UnitSystem>())
        {
            foreach (Sheet sheet in (Sheet[])[HydraulicSchematic.Of(check, units).Sheet, GaugeChart.Of(check, units), RatingPlate.Of(check, null, units)])
            {
                string svg = SvgSheet.Write(sheet);
                Assert.False(svg.Contains("NaN", StringComparison.Ordinal) || svg.Contains("Infinity", StringComparison.Ordinal), string.Create(CultureInfo.InvariantCulture, $"seed {seed}: {sheet.Title}"));
                Assert.True(sheet.Marks.Count < 3000, $"seed {seed}: {sheet.Title}");
            }
        }
    }
}
