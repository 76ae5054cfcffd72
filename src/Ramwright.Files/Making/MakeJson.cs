using System.Text.Json;
using Ramwright.Fabrication;
using Ramwright.Fabrication.Bars;
using Ramwright.Fabrication.Nesting;
using Ramwright.Files.Dossier;
using Ramwright.Geometry;
using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Files.Making;

/// <summary>What is to be made as one JSON object with stable names; lengths in mm, masses in kg.</summary>
public static class MakeJson
{
    /// <summary>Writes it.</summary>
    /// <param name="of">The press.</param>
    /// <param name="written">The files that were written.</param>
    public static string Text(MakeOf of, IReadOnlyList<OutFile> written)
    {
        ArgumentNullException.ThrowIfNull(of);
        ArgumentNullException.ThrowIfNull(written);
        return JsonText.Object(json => Write(json, of, written));
    }

    private static void Write(Utf8JsonWriter json, MakeOf of, IReadOnlyList<OutFile> written)
    {
        PartList list = of.Parts;
        json.WriteString("press", of.Rig.Name);
        json.WriteString("verdict", CheckJson.Word(of.Check.Verdict));
        json.WriteString("fileSha256", of.Hash);
        json.List("parts", list.Parts, Write);
        json.List("bars", of.Bars.Groups, Write);
        json.List("nests", NestFiles.Named(of.Nests), Write);
        json.List("platesWithoutSheet", of.Nests.Groups.SelectMany(g => g.Without), (w, without) =>
        {
            w.WriteString("mark", without.Part.Mark);
            w.WriteNumber("count", without.Count);
        });
        PaperJson.Write(json, new Papers(of));
        json.WriteNumber("massKg", JsonText.Round(list.Mass));
        json.Object("lifting", lifting =>
        {
            Point(lifting, "centreOfGravity", list.Lifting.Centre);
            lifting.WriteNumber("heightMm", JsonText.Round(list.Lifting.Height * 1e3));
            Point(lifting, "eye", list.Lifting.Eye);
            lifting.WriteNumber("placedKg", JsonText.Round(list.Lifting.Placed));
            lifting.List("cautions", list.Lifting.Cautions);
        });
        json.List("assumed", list.Assumed, (a, assumed) =>
        {
            a.WriteString("what", assumed.What);
            a.WriteString("value", assumed.Value(UnitSystem.Metric));
            a.WriteString("why", assumed.Why.Text());
        });
        json.List("misfits", list.Misfits);
        json.List("builderToDecide", list.Undecided);
        json.List("files", written.Select(f => f.Name));
    }

    private static void Write(Utf8JsonWriter json, Part part)
    {
        json.WriteString("mark", part.Mark);
        json.WriteString("name", part.Name);
        json.WriteString("of", part.Of);
        json.WriteNumber("count", part.Count);
        if (part.Steel is { } steel)
            json.WriteString("steel", steel.Name);
        if (part.Mass is { } mass)
            json.WriteNumber("massKg", JsonText.Round(mass));
        json.WriteString("dimensionsFrom", PartFiles.Words(part.Origin));
        if (part.Rule.Length > 0)
            json.WriteString("rule", part.Rule);
        switch (part)
        {
            case PlatePart plate:
                Extents e = plate.Outline.Extents();
                json.WriteString("kind", "plate");
                json.WriteNumber("thicknessMm", Mm(plate.Thickness));
                json.WriteNumber("widthMm", Mm(e.Width));
                json.WriteNumber("heightMm", Mm(e.Height));
                json.WriteNumber("areaMm2", JsonText.Round(plate.Outline.Area() * 1e6));
                json.List("holes", plate.Holes, (h, hole) =>
                {
                    h.WriteNumber("xMm", Mm(hole.Y - e.Left));
                    h.WriteNumber("yMm", Mm(hole.Z - e.Bottom));
                    h.WriteNumber("diameterMm", Mm(hole.Diameter));
                    h.WriteString("for", hole.For);
                });
                json.List("bends", plate.Bends, (b, bend) =>
                {
                    b.WriteNumber("angleDeg", JsonText.Round(bend.Angle * 180 / Math.PI));
                    b.WriteNumber("insideRadiusMm", Mm(bend.Radius));
                    b.WriteString("way", bend.Up ? "up" : "down");
                });
                break;
            case LengthPart length:
                json.WriteString("kind", "length");
                json.WriteString("section", length.Section.Name);
                json.WriteNumber("lengthMm", Mm(length.Length));
                json.WriteString("firstEnd", length.First.Words);
                json.WriteString("secondEnd", length.Second.Words);
                json.List("holes", length.Holes, (h, hole) =>
                {
                    h.WriteNumber("alongMm", Mm(hole.Along));
                    h.WriteNumber("asideMm", Mm(hole.Aside));
                    h.WriteString("through", hole.Face);
                    h.WriteNumber(hole.Across > 0 ? "slotAlongMm" : "diameterMm", Mm(hole.Diameter));
                    if (hole.Across > 0)
                        h.WriteNumber("slotAcrossMm", Mm(hole.Across));
                    h.WriteString("for", hole.For);
                });
                break;
            case BoughtPart bought:
                json.WriteString("kind", "bought");
                json.WriteString("ask", bought.Ask);
                break;
        }

        var working = new Working();
        part.Work?.Invoke(working);
        json.List("working", working.Steps, (s, step) =>
        {
            s.WriteString("symbol", step.Symbol);
            s.WriteString("meaning", step.Meaning);
            s.WriteString("formula", step.Formula);
            s.WriteNumber("si", JsonText.Round(step.Si));
            s.WriteString("source", step.Source.ToString());
        });
        json.List("notes", part.Notes);
    }

    private static void Write(Utf8JsonWriter json, BarGroup group)
    {
        json.WriteString("section", group.Section.Name);
        json.WriteString("steel", group.Steel?.Name ?? "");
        json.WriteBoolean("lengthAssumed", group.Assumed);
        json.WriteBoolean("provenLeast", group.Proven);
        json.WriteNumber("boughtMm", Mm(group.Bought));
        json.WriteNumber("fromRackMm", Mm(group.Used));
        json.List("sawn", group.Bars, (b, bar) =>
        {
            b.WriteNumber("barMm", Mm(bar.Bar.Length));
            b.WriteBoolean("bought", bar.Bar.Buy);
            b.List("pieces", bar.Pieces.Select(p => p.Mark));
            b.WriteNumber("leftMm", Mm(bar.Left));
        });
        json.List("without", group.Without, (w, without) =>
        {
            w.WriteString("mark", without.Part.Mark);
            w.WriteNumber("count", without.Count);
        });
    }

    private static void Write(Utf8JsonWriter json, (string Name, Nest Nest) named)
    {
        (string name, Nest nest) = named;
        json.WriteString("name", name);
        json.WriteNumber("thicknessMm", Mm(nest.Sheet.Thickness));
        json.WriteBoolean("bought", nest.Sheet.Buy);
        json.WriteNumber("filled", JsonText.Round(nest.Filled));
        json.WriteNumber("filledWithGaps", JsonText.Round(nest.Taken));
        json.List("parts", nest.Parts, (p, part) =>
        {
            p.WriteString("mark", part.Part.Mark);
            p.WriteNumber("turnedDeg", JsonText.Round(part.Turn.Angle * 180 / Math.PI));
            p.WriteNumber("rightMm", Mm(part.Turn.Y));
            p.WriteNumber("upMm", Mm(part.Turn.Z));
        });
    }

    private static void Point(Utf8JsonWriter json, string name, Vector at) => json.Object(name, point =>
    {
        point.WriteNumber("rightMm", Mm(at.X));
        point.WriteNumber("backMm", Mm(at.Y));
        point.WriteNumber("upMm", Mm(at.Z));
    });

    private static double Mm(double metres) => JsonText.Round(Math.Abs(metres) < 1e-9 ? 0 : metres * 1000);
}
