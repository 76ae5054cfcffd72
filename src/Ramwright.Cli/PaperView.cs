using Ramwright.Fabrication.Costs;
using Ramwright.Fabrication.Drilling;
using Ramwright.Fabrication.Welding;
using Ramwright.Files.Dossier;
using Ramwright.Quantities;
using Spectre.Console;

namespace Ramwright.Cli;

/// <summary>Weld plan, bolts and costs on a terminal.</summary>
internal static class PaperView
{
    public static void Show(Papers papers, IAnsiConsole screen)
    {
        Welds(papers, screen);
        Bolts(papers, screen);
        Costs(papers, screen);
    }

    private static void Welds(Papers p, IAnsiConsole screen)
    {
        WeldPlan plan = p.Welds;
        if (plan.Lines.Count == 0 && plan.Open.Count == 0)
            return;
        screen.Heading("Welds", $"{WeldChapter.Process(plan.Welder.Process)}, hydrogen {Readout.Number(plan.Welder.Hydrogen)} mL/100 g");
        foreach (WeldLine line in plan.Lines)
        {
            string places = line.Seam.Count > 1 ? $"{line.Seam.Count} x " : "";
            screen.Paragraph($"{line.Seam.Name}: {WeldChapter.Size(p, line.Seam)}; {places}{p.T(line.Seam.Length, Dimension.Length)} {line.Seam.Where}; {line.Runs} {(line.Runs == 1 ? "run" : "runs")}, {WeldChapter.Heat(p, line.HeatInput)}; {p.T(line.Filler, Dimension.Mass, 2)} of filler", 2);
            screen.Bullet(line.Preheating.Advice is WeldAdvice.Weld or WeldAdvice.Preheat ? " " : "!", WeldChapter.Advice(p, line));
            foreach (string note in line.Notes)
                screen.Bullet("·", note);
        }

        foreach (string open in plan.Open)
            screen.Bullet("?", $"{open}: builder to decide");
        screen.Paragraph($"{p.T(plan.Filler, Dimension.Mass, 2)} of filler in all, {WeldChapter.Hours(plan.ArcTime)} of arc, about {WeldChapter.Hours(plan.WorkTime)} of work. The order of welding{(plan.AsksForTests ? " and the tests to make first are" : " is")} in the dossier.");
        screen.WriteLine();
    }

    private static void Bolts(Papers p, IAnsiConsole screen)
    {
        if (p.Drilling.Bolts.Count + p.Drilling.Pins.Count == 0)
            return;
        screen.Heading("Holes and torque", "hole, tap drill and depth, torque lightly oiled, preload from least to most");
        foreach (BoltRow b in p.Drilling.Bolts)
        {
            string hole = b.Hole is { } h ? $"; hole {p.T(h, Dimension.Length, 4)}" : "";
            string tap = b.TapDrill is { } d && b.ThreadDepth is { } deep && b.HoleDepth is { } bottom ? $"; tap drill {p.T(d, Dimension.Length, 4)}, thread {p.T(deep, Dimension.Length)} deep, blind hole {p.T(bottom, Dimension.Length)}" : "";
            string torque = b.Setting is { } s ? $"; {p.Torque(s.Torque)}, {p.T(s.Least, Dimension.Force)} to {p.T(s.Most, Dimension.Force)}" : "";
            screen.Paragraph($"{b.Count} x {b.Thread.Name} {b.Grade}, {b.Where}{hole}{tap}{torque}", 2);
        }

        foreach (PinRow pin in p.Drilling.Pins)
            screen.Paragraph($"{pin.Count} x pin {p.T(pin.Diameter, Dimension.Length)} {pin.Steel}, {pin.Where}; hole {p.T(pin.Hole, Dimension.Length, 4)}", 2);
        screen.WriteLine();
    }

    private static void Costs(Papers p, IAnsiConsole screen)
    {
        CostSheet sheet = p.Costs;
        if (sheet.Lines.All(l => l.Each is null))
            return;
        screen.Heading("Costs", sheet.Currency.Length > 0 ? "in " + sheet.Currency : "");
        foreach (CostGroup group in Enum.GetValues<CostGroup>())
        {
            if (sheet.Lines.Any(l => l.Group == group && l.Each is not null))
                screen.Fact(group.ToString().ToLowerInvariant(), CostChapter.Money(sheet, sheet.Of(group)), group == CostGroup.Work ? $"{sheet.Hours:0.0} h" : "");
        }

        screen.Fact("to pay", CostChapter.Money(sheet, sheet.Outlay), sheet.OutlayWhole is null ? "hours not counted" : "hours not counted; bars the file does not list are cut to size by the merchant");
        if (sheet.OutlayWhole is { } whole)
            screen.Fact("in whole bars", CostChapter.Money(sheet, whole), $"the same, those bars bought whole as under Bars: {p.T(sheet.OverIfWhole, Dimension.Mass)} more steel, left over and yours");
        if (sheet.Saved is { } saved)
            screen.Fact(saved >= 0 ? "saved" : "dearer by", CostChapter.Money(sheet, Math.Abs(saved)), $"against {sheet.Instead?.Name ?? "a finished press"}{CostChapter.Short(sheet)}");
        if (sheet.WithoutPrice.Count > 0)
            screen.Bullet("!", $"{sheet.WithoutPrice.Count} lines have no price; the sums are short by them: {string.Join("; ", sheet.WithoutPrice.Take(4).Select(l => l.What))}{(sheet.WithoutPrice.Count > 4 ? " ..." : "")}");
        screen.WriteLine();
    }
}
