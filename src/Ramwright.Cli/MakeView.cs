using Ramwright.Fabrication;
using Ramwright.Files.Dossier;
using Ramwright.Files.Making;
using Ramwright.Geometry;
using Ramwright.Ladders;
using Ramwright.Quantities;
using Spectre.Console;

namespace Ramwright.Cli;

/// <summary>What is to be made, on a terminal.</summary>
internal static class MakeView
{
    public static void Show(MakeOf of, IReadOnlyList<OutFile> files, MakeSettings settings, IAnsiConsole screen)
    {
        UnitSystem units = of.Units;
        PartList list = of.Parts;
        screen.Heading("To be made", " " + of.Rig.Name);
        screen.WriteLine();
        if (of.Check.Verdict == Verdict.DoesNotHold || !of.Check.MeetsWanted)
            screen.Bullet("!", $"{Headline.Wanted(of.Check, units)} Change it before you cut: lift says what.");
        foreach (string misfit in list.Misfits)
            screen.Bullet("!", misfit);
        if (list.Misfits.Count > 0)
            screen.WriteLine();
        Plates(list, units, screen);
        Lengths(list, units, screen);
        StockView.Show(of, screen);
        Bought(list, screen);
        PaperView.Show(new Papers(of), screen);
        screen.Heading("Mass", "and lifting");
        screen.Paragraph($"{Readout.Text(list.Mass, Dimension.Mass, units)} of listed parts. Centre of gravity of what is placed: {Point(list.Lifting, units)}. A lifting eye stands straight above it, {Readout.Text(list.Lifting.Eye.Z - list.Lifting.Centre.Z, Dimension.Length, units)} higher.");
        foreach (string caution in list.Lifting.Cautions)
            screen.Bullet("!", caution);
        screen.WriteLine();
        if (list.Assumed.Count > 0)
        {
            screen.Heading("Taken", "because the file does not say");
            foreach (Presses.Assumed assumed in list.Assumed)
                screen.Bullet("·", $"{assumed.What}: {assumed.Value(units)}; {assumed.Why.Text(units)}");
            screen.WriteLine();
        }

        if (list.Undecided.Count > 0)
        {
            screen.Heading("Builder to decide");
            foreach (string what in list.Undecided)
                screen.Bullet("?", what);
            screen.WriteLine();
        }

        if (settings.Out is null)
        {
            JsonOut.Write(screen, $"Nothing is written. The files: ramwright make {settings.File} --out FOLDER");
            return;
        }

        JsonOut.Write(screen, $"{files.Count} files are in {settings.Out}:");
        screen.Paragraph(string.Join(", ", files.GroupBy(f => f.Name.Contains('/', StringComparison.Ordinal) ? f.Name.Split('/')[0] : f.Name)
            .Select(g => g.Count() == 1 && g.Key == g.First().Name ? g.Key : $"{g.Key} ({g.Count()})")) + ".", 2);
    }

    private static void Plates(PartList list, UnitSystem units, IAnsiConsole screen)
    {
        if (!list.Plates.Any())
            return;
        screen.Heading("Plates", "mark, how many, size, thickness, holes");
        foreach (PlatePart plate in list.Plates)
        {
            Extents e = plate.Outline.Extents();
            string holes = plate.Holes.Count == 0 ? "" : $", {plate.Holes.Count} {(plate.Holes.Count == 1 ? "hole" : "holes")}";
            string bends = plate.Bends.Count == 0 ? "" : $", {plate.Bends.Count} {(plate.Bends.Count == 1 ? "bend" : "bends")}";
            Line(plate, $"{Mm(e.Width, units)} x {Mm(e.Height, units)} x {Mm(plate.Thickness, units)}{holes}{bends}", units, screen);
        }

        screen.WriteLine();
    }

    private static void Lengths(PartList list, UnitSystem units, IAnsiConsole screen)
    {
        if (!list.Lengths.Any())
            return;
        screen.Heading("Lengths", "mark, how many, section, finished length, ends, holes");
        foreach (LengthPart length in list.Lengths)
        {
            string ends = length.First == length.Second ? $"both ends {length.First.Words}" : $"ends {length.First.Words}, {length.Second.Words}";
            string holes = length.Holes.Count == 0 ? "" : $", {length.Holes.Count} holes";
            Line(length, $"{length.Section.Name}, {Mm(length.Length, units)}, {ends}{holes}", units, screen);
        }

        screen.WriteLine();
    }

    private static void Bought(PartList list, IAnsiConsole screen)
    {
        if (!list.Bought.Any())
            return;
        screen.Heading("Bought");
        foreach (BoughtPart bought in list.Bought)
            screen.Paragraph($"{bought.Mark,-4}{bought.Count,3} x {bought.Ask}", 2);
        screen.WriteLine();
    }

    private static void Line(Part part, string what, UnitSystem units, IAnsiConsole screen)
    {
        string steel = part.Steel is { } s ? $", {s.Name}" : "", proposed = part.Origin == PartOrigin.Proposed ? " (proposed)" : "";
        string mass = part.Mass is { } m ? $", {Readout.Text(m * part.Count, Dimension.Mass, units)}" : "";
        screen.Paragraph($"{part.Mark,-4}{part.Count,3} x {part.Name}: {what}{steel}{mass}{proposed}", 2);
    }

    private static string Point(Lifting lifting, UnitSystem units) =>
        $"{Off(lifting.Centre.X, "left", "right", "on the ram's line across", units)}, {Off(lifting.Centre.Y, "to the front", "to the back", "on the frame's middle plane", units)}, "
        + $"{Readout.Text(lifting.Height, Dimension.Length, units)} above the underside of its lowest steel, which it stands on";

    private static string Off(double metres, string less, string more, string none, UnitSystem units) =>
        Math.Abs(metres) < 5e-4 ? none : $"{Readout.Text(Math.Abs(metres), Dimension.Length, units)} {(metres < 0 ? less : more)}";

    private static string Mm(double metres, UnitSystem units) => Readout.Text(metres, Dimension.Length, units, 5);
}
