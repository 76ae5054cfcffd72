using Ramwright.Ladders;
using Ramwright.Quantities;
using Spectre.Console;

namespace Ramwright.Cli;

/// <summary>The allowed force against the offset on a terminal: a table each way, with a bar beside each number.</summary>
internal static class OffsetView
{
    private const int LongestBar = 20;

    public static void Show(PressCheck check, OffCentre curve, UnitSystem units, IAnsiConsole screen)
    {
        screen.Heading("Off centre", " " + check.Rig.Name);
        screen.WriteLine();
        foreach (OffCentreWay way in Enum.GetValues<OffCentreWay>())
        {
            screen.Heading(Heading(way));
            screen.Paragraph(InWords(curve, way, check, units));
            Rows(curve, way, units, screen);
            screen.WriteLine();
        }

        screen.Paragraph(
            "Work may stand anywhere up to the offset. One way at a time; side push, dies and all else as the file says. "
            + "The pressure gauge does not know where the work stands: watch the offset yourself.");
        screen.Bullet("!", "Work off centre is the work that is thrown out. Stand to the side it cannot fly to, shield the rest, nothing loose under the ram.");
    }

    private static string Heading(OffCentreWay way) => way == OffCentreWay.Across ? "To one side" : "To the front";

    private static string InWords(OffCentre curve, OffCentreWay way, PressCheck check, UnitSystem units)
    {
        string wanted = $"the wanted {Force.Text(check.Rig.Wanted, units)}";
        if (curve.Reach(way, check.Rig.Wanted) is not { } far)
            return $"The press is not safe to {wanted}, not even centred.";
        string at = Readout.Text(far, Dimension.Length, units);
        return far >= curve.Points.Last(p => p.Way == way).Offset
            ? $"Safe to {wanted} as far off as this table goes, {at}."
            : $"Safe to {wanted} up to {at} off.";
    }

    private static void Rows(OffCentre curve, OffCentreWay way, UnitSystem units, IAnsiConsole screen)
    {
        var table = new Table { Border = TableBorder.None, ShowHeaders = true };
        Unit length = Readout.UnitFor(Dimension.Length, units), force = Readout.UnitFor(Dimension.Force, units);
        table.AddColumn(Column($"off, {length.Symbol}", right: true));
        table.AddColumn(Column($"safe to, {force.Symbol}", right: true));
        table.AddColumn(Column("of centred", right: true));
        table.AddColumn(Column("", right: false));
        table.AddColumn(Column("lowest rung", right: false));
        double centred = double.NaN;
        foreach (OffCentrePoint point in curve.Points)
        {
            if (point.Way != way)
                continue;
            if (double.IsNaN(centred))
                centred = point.SafeTo;
            double share = point.SafeTo / centred;
            table.AddRow(
                new Text(Readout.Number(length.FromSi(point.Offset), 3)),
                new Text(Readout.Number(force.FromSi(point.SafeTo), 3)),
                new Text($"{share * 100:0} %"),
                new Text(new string('█', (int)Math.Round(share * LongestBar))),
                new Text(point.Governing.Id));
        }

        screen.Write(table);
    }

    private static TableColumn Column(string title, bool right) => new(new Text(title, new Style(decoration: Decoration.Dim)))
    {
        Padding = new Padding(1, 0, 1, 0),
        Alignment = right ? Justify.Right : Justify.Left,
        NoWrap = true,
    };
}
