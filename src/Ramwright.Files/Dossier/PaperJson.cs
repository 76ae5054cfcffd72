using System.Text.Json;
using Ramwright.Fabrication.Costs;
using Ramwright.Fabrication.Drilling;
using Ramwright.Fabrication.Welding;
using Ramwright.Files.Drawings;

namespace Ramwright.Files.Dossier;

/// <summary>Weld plan, drilling, circuit and costs in JSON with stable names; millimetres, kilograms, °C, N·m, kN.</summary>
internal static class PaperJson
{
    public static void Write(Utf8JsonWriter json, Papers papers)
    {
        json.List("welds", papers.Welds.Lines, Weld);
        json.List("weldsWithoutSize", papers.Welds.Open);
        json.List("weldSequence", papers.Welds.Sequence);
        json.List("bolts", papers.Drilling.Bolts, Bolt);
        json.List("pins", papers.Drilling.Pins, (w, pin) =>
        {
            w.WriteString("where", pin.Where);
            w.WriteNumber("count", pin.Count);
            w.WriteNumber("diameterMm", JsonText.Round(1000 * pin.Diameter));
            w.WriteNumber("holeMm", JsonText.Round(1000 * pin.Hole));
        });
        json.List("circuit", papers.Circuit.Components, (w, c) =>
        {
            w.WriteNumber("number", c.Number);
            w.WriteString("what", c.What);
            w.WriteString("setting", c.Setting);
        });
        json.Object("costs", w => Costs(w, papers.Costs));
    }

    private static void Weld(Utf8JsonWriter json, WeldLine line)
    {
        json.WriteString("seam", line.Seam.Name);
        json.WriteString("key", line.Seam.Key);
        json.WriteString("kind", line.Seam.Kind == Presses.WeldKind.Fillet ? "fillet" : "butt");
        json.WriteNumber("throatMm", JsonText.Round(1000 * line.Seam.Throat));
        json.WriteNumber("lengthMm", JsonText.Round(1000 * line.Seam.Length));
        json.WriteNumber("places", line.Seam.Count);
        json.WriteNumber("runs", line.Runs);
        json.WriteNumber("heatInputKJPerMm", JsonText.Round(line.HeatInput));
        json.WriteNumber("depositKg", JsonText.Round(line.Deposit));
        json.WriteNumber("fillerKg", JsonText.Round(line.Filler));
        json.WriteNumber("arcSeconds", JsonText.Round(line.ArcTime));
        json.WriteString("advice", Presses.KeyNames.Written(line.Preheating.Advice.ToString()));
        json.WriteString("why", line.Preheating.Why);
        Maybe(json, "ce", line.Preheating.Ce);
        Maybe(json, "cet", line.Preheating.Cet);
        Maybe(json, "pcm", line.Preheating.Pcm);
        Maybe(json, "methodBC", line.Preheating.ByB);
        Maybe(json, "methodAColdUpToMm", line.Preheating.ColdUpTo);
        Maybe(json, "byThicknessC", line.Preheating.ByThickness);
        Maybe(json, "preheatC", line.Preheating.Temperature);
        Maybe(json, "t85Seconds", line.CoolingTime);
        json.List("notes", line.Notes);
    }

    private static void Bolt(Utf8JsonWriter json, BoltRow bolt)
    {
        json.WriteString("where", bolt.Where);
        json.WriteString("thread", bolt.Thread.Name);
        json.WriteString("class", bolt.Grade);
        json.WriteNumber("count", bolt.Count);
        Maybe(json, "holeMm", 1000 * bolt.Hole);
        Maybe(json, "tapDrillMm", 1000 * bolt.TapDrill);
        Maybe(json, "threadDepthMm", 1000 * bolt.ThreadDepth);
        Maybe(json, "torqueNm", bolt.Setting?.Torque);
        Maybe(json, "preloadLeastKn", bolt.Setting?.Least / 1000);
        Maybe(json, "preloadUsualKn", bolt.Setting?.Usual / 1000);
        Maybe(json, "preloadMostKn", bolt.Setting?.Most / 1000);
        json.List("notes", bolt.Notes);
    }

    private static void Costs(Utf8JsonWriter json, CostSheet sheet)
    {
        json.WriteString("currency", sheet.Currency);
        json.List("lines", sheet.Lines, (w, l) =>
        {
            w.WriteString("group", l.Group.ToString().ToLowerInvariant());
            w.WriteString("what", l.What);
            w.WriteNumber("quantity", JsonText.Round(l.Quantity));
            w.WriteString("unit", l.Unit);
            Maybe(w, "each", l.Each);
            Maybe(w, "total", l.Total);
            w.WriteString("note", l.Note);
        });
        if (sheet.OutlayWhole is { } whole)
            json.WriteNumber("outlayInWholeBars", JsonText.Round(whole));
        json.WriteNumber("outlay", JsonText.Round(sheet.Outlay));
        json.WriteNumber("total", JsonText.Round(sheet.Total));
        json.WriteNumber("withoutPrice", sheet.WithoutPrice.Count);
        Maybe(json, "saved", sheet.Saved);
    }

    private static void Maybe(Utf8JsonWriter json, string name, double? value)
    {
        if (value is { } v)
            json.WriteNumber(name, JsonText.Round(v));
        else
            json.WriteNull(name);
    }
}
