using System.Globalization;
using System.Text;
using Ramwright.Fabrication.Costs;
using Ramwright.Fabrication.Drilling;
using Ramwright.Fabrication.Welding;
using Ramwright.Files.Drawings;
using Ramwright.Files.Making;

namespace Ramwright.Files.Dossier;

/// <summary>The dossier, the plans as tables, rating plate, gauge chart and circuit as files.</summary>
public static class PaperFiles
{
    /// <summary>Makes them.</summary>
    public static IEnumerable<OutFile> Make(MakeOf of)
    {
        ArgumentNullException.ThrowIfNull(of);
        var papers = new Papers(of);
        Book book = DossierBook.Of(papers);
        yield return new OutFile("dossier.pdf", PdfBook.Write(book, of.Day));
        yield return OutFile.OfText("dossier.html", HtmlBook.Write(book));
        if (papers.Welds.Lines.Count > 0)
            yield return OutFile.OfText("weld-plan.csv", Welds(papers.Welds));
        yield return OutFile.OfText("drilling.csv", Drilling(papers.Drilling));
        yield return OutFile.OfText("costs.csv", Costs(papers.Costs));
        yield return OutFile.OfText("circuit.svg", SvgSheet.Write(papers.Circuit.Sheet));
        Sheet plate = RatingPlate.Of(of.Check, of.Parts.Mass, of.Units), chart = GaugeChart.Of(of.Check, of.Units);
        yield return OutFile.OfText("rating-plate.svg", SvgSheet.Write(plate));
        yield return OutFile.OfText("rating-plate.dxf", Dxf.Write(SheetCut.Of(plate)));
        yield return new OutFile("rating-plate.pdf", PdfBook.Write(plate, of.Day));
        yield return OutFile.OfText("gauge-chart.svg", SvgSheet.Write(chart));
        yield return new OutFile("gauge-chart.pdf", PdfBook.Write(chart, of.Day));
    }

    /// <summary>The seams as a table: millimetres, kilograms, degrees Celsius, kJ/mm.</summary>
    public static string Welds(WeldPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var text = new StringBuilder("seam,where,kind,leg mm,throat mm,preparation,length mm,places,runs,travel mm/s,heat input kJ/mm,deposit kg,filler kg,arc min,CE %,CET %,Pcm %,thickest mm,combined mm,method B C,method A cold up to mm,by thickness C,preheat C,t8/5 s,advice,notes\n");
        foreach (WeldLine l in plan.Lines)
        {
            Row(text,
                l.Seam.Name, l.Seam.Where, l.Seam.Kind.ToString().ToLowerInvariant(), l.Seam.Kind == Presses.WeldKind.Fillet ? F(1000 * l.Seam.Leg) : "", F(1000 * l.Seam.Throat), l.Seam.Preparation.Text(),
                F(1000 * l.Seam.Length), $"{l.Seam.Count}", $"{l.Runs}", F(1000 * l.Travel), F(l.HeatInput), F(l.Deposit), F(l.Filler), F(l.ArcTime / 60), F(l.Preheating.Ce), F(l.Preheating.Cet), F(l.Preheating.Pcm),
                F(1000 * l.Seam.Thicker), F(1000 * l.Seam.Combined), F(l.Preheating.ByB), F(l.Preheating.ColdUpTo), F(l.Preheating.ByThickness), F(l.Preheating.Temperature), F(l.CoolingTime), l.Preheating.Why, string.Join("; ", l.Notes));
        }

        return text.ToString();
    }

    /// <summary>Bolts and pins as a table: millimetres, newton metres, kilonewtons.</summary>
    public static string Drilling(DrillingTable table)
    {
        ArgumentNullException.ThrowIfNull(table);
        var text = new StringBuilder("where,count,thread or pin,class or steel,hole mm,tap drill mm,thread deep mm,drilled deep mm,torque Nm,preload least kN,preload usual kN,preload most kN,notes\n");
        foreach (BoltRow b in table.Bolts)
        {
            Row(text, b.Where, $"{b.Count}", b.Thread.Name, b.Grade, F(1000 * b.Hole), F(1000 * b.TapDrill), F(1000 * b.ThreadDepth), F(1000 * b.HoleDepth), F(b.Setting?.Torque), F(b.Setting?.Least / 1000),
                F(b.Setting?.Usual / 1000), F(b.Setting?.Most / 1000), string.Join("; ", b.Notes));
        }

        foreach (PinRow pin in table.Pins)
            Row(text, pin.Where, $"{pin.Count}", $"pin {F(1000 * pin.Diameter)}", pin.Steel, F(1000 * pin.Hole), "", "", "", "", "", "", "", "");
        return text.ToString();
    }

    /// <summary>The bill of materials as a table; kilograms, litres, cubic metres, hours.</summary>
    public static string Costs(CostSheet sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        var text = new StringBuilder("group,what,quantity,unit,each,total,currency,note\n");
        foreach (CostLine l in sheet.Lines)
            Row(text, l.Group.ToString().ToLowerInvariant(), l.What, F(l.Quantity), l.Unit, F(l.Each), F(l.Total), sheet.Currency, l.Note);
        if (sheet.OutlayWhole is { } whole)
            Row(text, "sum", "without hours, unlisted bars bought whole", "", "", "", F(whole), sheet.Currency, "");
        Row(text, "sum", "without hours", "", "", "", F(sheet.Outlay), sheet.Currency, sheet.WithoutPrice.Count > 0 ? $"{sheet.WithoutPrice.Count} lines have no price" : "");
        Row(text, "sum", "with hours", "", "", "", F(sheet.Total), sheet.Currency, "");
        return text.ToString();
    }

    private static void Row(StringBuilder text, params IEnumerable<string> cells) => text.AppendJoin(',', cells.Select(PartFiles.Quoted)).Append('\n');

    private static string F(double? value) => value is { } v ? Math.Round(v, 3).ToString(CultureInfo.InvariantCulture) : "";
}
