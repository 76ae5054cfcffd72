using Ramwright.Fabrication.Plates;
using Ramwright.Files;
using Ramwright.Files.Dossier;
using Ramwright.Files.Drawings;
using Ramwright.Ladders;
using Ramwright.Quantities;
using UglyToad.PdfPig;

namespace Ramwright.Tests.Dossier;

public class PlateAndChartTest
{
    public static TheoryData<string> Examples() => DossierTest.Examples();

    [Fact]
    public void AGaugeReadingAsForceByHand()
    {
        PressCheck check = Tests.Presses.Check("wherry-yard");
        // bore 125 mm, 3 % to the seals: 200 bar is 20e6·π/4·0.125²·0.97
        new Reference("MW-06", "pressure on a piston less seal friction, by hand", Trust.OwnNumbers)
            .Near("200 bar on 125 mm, kN", 20e6 * Math.PI / 4 * .125 * .125 * .97 / 1e3, GaugeChart.Force(check, 20e6) / 1e3, 1e-9);
        Near.Relative(20e6, GaugeChart.Reading(check, GaugeChart.Force(check, 20e6)), 1e-12);
    }

    [Theory, MemberData(nameof(Examples))]
    public void TheChartAgreesWithTheTrueForceOfThePress(string example)
    {
        PressCheck check = Tests.Presses.Check(example);
        Near.Relative(check.Power.TrueForce, GaugeChart.Force(check, check.Power.TruePressure), 1e-9);
    }

    [Theory, MemberData(nameof(Examples))]
    public void MarksStandWhereTheirFiguresSay(string example)
    {
        foreach (UnitSystem units in Enum.GetValues<UnitSystem>())
        {
            PressCheck check = Tests.Presses.Check(example);
            Sheet chart = GaugeChart.Of(check, units);
            double top = GaugeChart.Most(check, units);
            Unit unit = Readout.UnitFor(Dimension.Pressure, units);
            Lettering[] figures = [.. chart.Marks.OfType<Lettering>().Where(l => l.At == Anchor.Right && double.TryParse(l.Text, System.Globalization.CultureInfo.InvariantCulture, out _))];
            Assert.True(figures.Length > 4);
            double foot = figures.Min(f => f.Y);
            foreach (Lettering figure in figures)
            {
                double p = unit.ToSi(double.Parse(figure.Text, System.Globalization.CultureInfo.InvariantCulture));
                Near.Absolute(150 * p / top, figure.Y - foot, 0.01, figure.Text);
            }

            Assert.All(chart.Marks.OfType<Lettering>(), l => Assert.InRange(l.X + (l.At == Anchor.Left ? l.Width : l.At == Anchor.Middle ? l.Width / 2 : 0), 0, chart.Width + 3));
        }
    }

    [Theory, MemberData(nameof(Examples))]
    public void ThePlateNeverSaysMoreThanTheLadder(string example)
    {
        foreach (UnitSystem units in Enum.GetValues<UnitSystem>())
        {
            PressCheck check = Tests.Presses.Check(example);
            Sheet plate = RatingPlate.Of(check, 300, units);
            string said = plate.Marks.OfType<Lettering>().First(l => l.Height == 5).Text;
            Assert.True(QuantityText.TryRead(said.Split('(')[0].Trim(), Dimension.Force, out Quantity force, out _), said);
            Assert.True(force.Si <= check.Ladder.SafeRating * (1 + 1e-9) && force.Si >= 0.98 * Math.Min(check.Ladder.SafeRating, check.Power.MostPossibleForce), said);
        }
    }

    [Theory, MemberData(nameof(Examples))]
    public void ThePlateNamesAReliefSettingThatKeepsWhatCanBreakSafe(string example)
    {
        PressCheck check = Tests.Presses.Check(example);
        string said = RatingPlate.Of(check, 300).Marks.OfType<Lettering>().SkipWhile(l => l.Text != "relief valve").Skip(1).First().Text;
        double safe = check.Ladder.Rungs.Where(r => r.MustSurvive).Min(r => r.SafeTo) / check.Power.Areas.Force;
        Assert.Matches("bar|____", said);
        if (check.AgainstMostPossible == Verdict.Holds)
            return;
        Assert.StartsWith("set and seal at or below", said, StringComparison.Ordinal);
        Assert.True(QuantityText.TryRead(said["set and seal at or below ".Length..], Dimension.Pressure, out Quantity p, out _));
        Assert.True(p.Si <= safe * (1 + 1e-9) && p.Si > 0.98 * safe);
    }

    [Fact]
    public void ThePlateIsCutOnceAllRoundAndDrilledFourTimes()
    {
        PressCheck check = Tests.Presses.Check("wherry-yard");
        Sheet plate = RatingPlate.Of(check, 300);
        CutSheet cut = SheetCut.Of(plate);
        Assert.Single(cut.Moves, m => m.Layer == CutLayer.CutOutside);
        Assert.Equal(4, cut.Moves.Count(m => m.Layer == CutLayer.CutInside));
        Assert.True(cut.Moves.Count(m => m.Layer == CutLayer.Mark) > 100);
        // every cut comes after every mark, the edge last
        CutLayer[] order = [.. cut.Moves.Select(m => m.Layer).Distinct()];
        Assert.Equal([CutLayer.Mark, CutLayer.CutInside, CutLayer.CutOutside], order);
        foreach (CutMove move in cut.Moves)
            Assert.All(move.Points, p => Assert.True(p.Y >= -1e-9 && p.Y <= plate.Width / 1000 + 1e-9 && p.Z >= -1e-9 && p.Z <= plate.Height / 1000 + 1e-9));
    }

    [Fact]
    public void ASheetOfItsOwnIsAtTrueSize()
    {
        PressCheck check = Tests.Presses.Check("wherry-yard");
        Sheet chart = GaugeChart.Of(check);
        using PdfDocument pdf = PdfDocument.Open(PdfBook.Write(chart, new DateOnly(2026, 1, 2)));
        Near.Absolute(chart.Width / 25.4 * 72, pdf.GetPage(1).Width, 0.02);
        Near.Absolute(chart.Height / 25.4 * 72, pdf.GetPage(1).Height, 0.02);
        Assert.Contains("50 mm: measure it on the print", pdf.GetPage(1).Text, StringComparison.Ordinal);
    }

    [Theory, MemberData(nameof(Examples))]
    public void TheCircuitNumbersEveryComponentItDraws(string example)
    {
        Circuit circuit = HydraulicSchematic.Of(Tests.Presses.Check(example));
        int[] drawn = [.. circuit.Sheet.Marks.OfType<Lettering>().Where(l => int.TryParse(l.Text, out _)).Select(l => int.Parse(l.Text, System.Globalization.CultureInfo.InvariantCulture))];
        Assert.Equal(drawn.Distinct().Count(), drawn.Length);
        Assert.All(drawn, n => Assert.InRange(n, 1, circuit.Components.Count));
        Assert.Equal(Enumerable.Range(1, circuit.Components.Count), circuit.Components.Select(c => c.Number));
        Assert.All(circuit.Components, c => Assert.NotEmpty(c.Setting));
    }

    [Theory]
    [InlineData("centre: closed"), InlineData("centre: float"), InlineData("centre: tandem"), InlineData("centre: open"), InlineData("handle: detent"), InlineData("holding: counterbalance"), InlineData("holding: none"), InlineData("hose-burst: yes")]
    public void EveryValveIsDrawnOtherwise(string valve)
    {
        PressCheck bare = Tests.Presses.Check("salvage"), said = Tests.Presses.Check("salvage", ("oil: {", $"valves: {{ {valve} }}\noil: {{"));
        Assert.NotEqual(SvgSheet.Write(HydraulicSchematic.Of(bare).Sheet), SvgSheet.Write(HydraulicSchematic.Of(said).Sheet));
    }
}
